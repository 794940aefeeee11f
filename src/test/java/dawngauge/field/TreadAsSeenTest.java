package dawngauge.field;

import static org.assertj.core.api.Assertions.assertThat;

import dawngauge.problem.Outcome;
import dawngauge.quantity.Entered;
import dawngauge.quantity.QuantityKind;
import dawngauge.quantity.TreadDepth;
import dawngauge.quantity.UnitSystem;
import java.util.function.BiFunction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Tread that nobody measured, as it is seen by the wear bars or by a coin. */
class TreadAsSeenTest {

  private static final BiFunction<UnitSystem, String, Outcome<Entered<TreadDepth>>> TYPED =
      TireFields.TREAD.codec().typed();

  /** 49 CFR 571.119 S6.4: the indicators show where tread is worn to 1.6 mm (2/32 in). */
  @ParameterizedTest
  @ValueSource(strings = {"wear bars", "at the wear bars", " Wear bars "})
  void atTheWearBarsItIsTwoThirtySeconds(String said) {
    for (UnitSystem units : UnitSystem.values()) {
      Entered<TreadDepth> tread = TYPED.apply(units, said).get();
      assertThat(tread.text()).isEqualTo("2/32 in");
      assertThat(tread.value().meters() * 1000).isBetween(1.58, 1.6);
    }
  }

  /** Common practice, no source: the least that still covers the head on the coin. */
  @ParameterizedTest
  @CsvSource({"penny, 2/32 in", "Penny, 2/32 in", "quarter, 4/32 in", "' QUARTER ', 4/32 in"})
  void byACoinItIsTheLeastThatCoversItsHead(String said, String depth) {
    for (UnitSystem units : UnitSystem.values()) {
      assertThat(TYPED.apply(units, said).get())
          .isEqualTo(Entered.of(QuantityKind.TREAD_DEPTH, depth));
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"dime", "two pennies", "penny 4/32 in", "quarter inch"})
  void anotherCoinIsRefused(String said) {
    assertThat(TYPED.apply(UnitSystem.US, said).problems().get(0).message()).contains(said);
  }

  @Test
  void anotherWordIsRefusedAsBefore() {
    assertThat(TYPED.apply(UnitSystem.US, "bald").problems().get(0).message()).contains("bald");
    assertThat(TYPED.apply(UnitSystem.US, "6/32 in").get().text()).isEqualTo("6/32 in");
  }

  /** In the file a figure stands, never a word. */
  @Test
  void theFileHasFigures() {
    assertThat(TireFields.TREAD.codec().parse().apply("wear bars").hasValue()).isFalse();
    assertThat(TireFields.TREAD.codec().parse().apply("penny").hasValue()).isFalse();
  }
}

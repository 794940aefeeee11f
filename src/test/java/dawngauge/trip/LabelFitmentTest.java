package dawngauge.trip;

import static org.assertj.core.api.Assertions.assertThat;

import dawngauge.quantity.Entered;
import dawngauge.quantity.QuantityKind;
import dawngauge.tire.TireClass;
import dawngauge.tire.TireSpec;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** Which line of a certification label speaks for a tire. */
class LabelFitmentTest {

  private static LabelFitment line(
      String size, @Nullable TireClass tireClass, @Nullable String range) {
    return new LabelFitment(
        size, tireClass, range, Entered.of(QuantityKind.GAUGE_PRESSURE, "80 psi"), Remarks.NONE);
  }

  private static TireSpec tire(
      @Nullable String size, @Nullable TireClass tireClass, @Nullable String range) {
    return new TireSpec(
        "any", size, tireClass, null, range, null, null, null, null, null, null, null, null);
  }

  @Test
  void spacesAndSmallLettersAreNoDifference() {
    assertThat(line("ST235/80R16", null, null).speaksFor(tire("st 235/80 r16", null, null)))
        .isTrue();
    assertThat(line("ST235/80R16", null, null).speaksFor(tire("ST235/85R16", null, null)))
        .isFalse();
  }

  @Test
  void aTireWithoutASizeIsNotSpokenFor() {
    assertThat(line("ST235/80R16", null, null).speaksFor(tire(null, null, null))).isFalse();
  }

  /** What one of the two does not tell cannot contradict the other. */
  @Test
  void classAndRangeCountWhereBothTell() {
    LabelFitment trailer = line("235/80R16", TireClass.SPECIAL_TRAILER, "E");

    assertThat(trailer.speaksFor(tire("235/80R16", null, null))).isTrue();
    assertThat(trailer.speaksFor(tire("235/80R16", TireClass.SPECIAL_TRAILER, "e"))).isTrue();
    assertThat(trailer.speaksFor(tire("235/80R16", TireClass.LIGHT_TRUCK, "E"))).isFalse();
    assertThat(trailer.speaksFor(tire("235/80R16", TireClass.SPECIAL_TRAILER, "G"))).isFalse();
    assertThat(
            line("235/80R16", null, null).speaksFor(tire("235/80R16", TireClass.LIGHT_TRUCK, "E")))
        .isTrue();
  }

  @Test
  void theFirstLineThatSpeaksIsTaken() {
    LabelFitment other = line("225/75R16", null, null);
    LabelFitment first = line("235/80R16", null, "E");
    LabelFitment second = line("235/80R16", null, null);
    Axle axle =
        new Axle(
            false,
            null,
            List.of(other, first, second),
            null,
            null,
            null,
            null,
            null,
            Map.of(),
            Remarks.NONE);

    assertThat(axle.labelFor(tire("235/80R16", null, "E"))).contains(first);
    assertThat(axle.labelFor(tire("235/80R16", null, "F"))).contains(second);
    assertThat(axle.labelFor(tire("215/75R17.5", null, "F"))).isEmpty();
  }
}

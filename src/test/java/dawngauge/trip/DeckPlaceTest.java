package dawngauge.trip;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dawngauge.quantity.Distance;
import dawngauge.testdata.Forecasts;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** Moments about the hitch. */
class DeckPlaceTest {
  private static final AxleRef FIRST = new AxleRef("trailer", 1);
  private static final AxleRef SECOND = new AxleRef("trailer", 2);

  /**
   * A load 12 ft behind the hitch of a trailer whose axles' middle is 16 ft behind it: 12/16 = 75 %
   * stand on the axles, 37.5 % on each of two, 25 % on the hitch.
   */
  @Test
  void threeQuartersOfTheWayBackThreeQuartersStandOnTheAxles() {
    DeckPlace.Shares shares =
        new DeckPlace(new Distance(12 * 0.3048), new Distance(16 * 0.3048))
            .shares(List.of(FIRST, SECOND))
            .orElseThrow();
    assertThat(Forecasts.known(shares.axles().get(FIRST)).text()).isEqualTo("37.5 %");
    assertThat(Forecasts.known(shares.axles().get(SECOND)).text()).isEqualTo("37.5 %");
    assertThat(shares.hitch().text()).isEqualTo("25 %");
  }

  @Test
  void overTheHitchItTakesAllAndOverTheAxlesNothing() {
    Distance axles = new Distance(5);
    assertThat(new DeckPlace(new Distance(0), axles).shares(List.of(FIRST)).orElseThrow().hitch())
        .extracting(share -> share.text())
        .isEqualTo("100 %");
    assertThat(new DeckPlace(axles, axles).shares(List.of(FIRST)).orElseThrow().hitch().text())
        .isEqualTo("0 %");
  }

  @Test
  void whatWouldLiftTheHitchIsNotTold() {
    assertThat(new DeckPlace(new Distance(5.1), new Distance(5)).shares(List.of(FIRST))).isEmpty();
    assertThat(new DeckPlace(new Distance(1), new Distance(0)).shares(List.of(FIRST))).isEmpty();
    assertThat(new DeckPlace(new Distance(1), new Distance(5)).shares(List.of())).isEmpty();
  }

  @Test
  void thePartsAreWhole() {
    SplittableRandom random = new SplittableRandom(4);
    for (int i = 0; i < 500; i++) {
      double axles = random.nextDouble(1, 12);
      List<AxleRef> all = List.of(FIRST, SECOND, new AxleRef("trailer", 3));
      DeckPlace.Shares shares =
          new DeckPlace(new Distance(random.nextDouble() * axles), new Distance(axles))
              .shares(all.subList(0, random.nextInt(1, 4)))
              .orElseThrow();
      double sum =
          shares.hitch().value().value()
              + shares.axles().values().stream().mapToDouble(s -> s.value().value()).sum();
      assertThat(sum).isCloseTo(1, within(0.0011));
    }
    double three =
        DeckPlace.evenly(List.of(FIRST, SECOND, new AxleRef("trailer", 3))).values().stream()
            .mapToDouble(share -> share.value().value())
            .sum();
    assertThat(three).isCloseTo(1, within(0.005));
  }
}

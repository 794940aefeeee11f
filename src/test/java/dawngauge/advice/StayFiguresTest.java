package dawngauge.advice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dawngauge.quantity.Unit;
import dawngauge.trip.WheelPosition;
import dawngauge.trip.WheelSlot;
import java.time.Instant;
import java.time.LocalTime;
import java.util.Objects;
import org.junit.jupiter.api.Test;

/** One filling has another figure every few minutes. */
class StayFiguresTest {

  private static final WheelPosition LEFT = new WheelPosition(Scenario.AXLE, WheelSlot.LEFT);
  private static final Instant ARRIVAL = Instant.parse("2027-04-06T08:00:00Z");

  private static Scenario lowTire(double stayHours, String limit) {
    return Scenario.from("Home", "41 °F")
        .weighing("6500 lb")
        .maxCold(limit)
        .allRead("74 psi")
        .to("Stop", stayHours, "41 °F")
        .air()
        .to("End", 1, "41 °F");
  }

  private static StayFigures stay(Scenario scenario) {
    FigureNow now = FigureNow.of(scenario.forecaster(), LEFT, 1).orElseThrow();
    return Objects.requireNonNull(now.stay());
  }

  private static double psi(StayFigures stay, int minutes) {
    return stay.at(ARRIVAL.plusSeconds(60L * minutes)).orElseThrow().figure().in(Unit.PSI);
  }

  /**
   * By hand, from the method page alone. Air 41 °F = 278.15 K at sea level, 14.696 psi. The tire
   * holds 74 psi at 41 °F: at 68 °F (74 + 14.696)·293.15/278.15 − 14.696 = 78.78 psi. Rated 3,520
   * lb: R₆₀ 38 K, τ rolling 18.5 min, τ standing 46.1 min. R = 38·3250/3520·(78.78/80)^−0.4·
   * (50/60)^0.5·e^(0.00954·15) = 37.19 K, the air being 15 K under 20 °C; after two hours at 50 mph
   * 37.13 K over the air, so that it reads (74 + 14.696)·(278.15 + 37.13)/278.15 − 14.696 = 85.8
   * psi. What is 80 psi cold is (80 + 14.696)·(278.15 + 37.13·e^(−m/46.1))/278.15 − 14.696 after m
   * minutes: 92.64 on arrival, 89.13 after 15, 86.60 after 30, 84.77 after 45.
   */
  @Test
  void theFigureFallsAsTheTireCools() {
    StayFigures stay = stay(lowTire(1, "110 psi"));
    double[] byHand = {92.64, 89.13, 86.60, 84.77};
    for (int i = 0; i < byHand.length; i++) {
      assertThat(psi(stay, 15 * i)).isCloseTo(Math.rint(byHand[i]), within(1e-6));
    }
    assertThat(stay.cold().figure().in(Unit.PSI)).isCloseTo(80, within(1e-6));
  }

  @Test
  void onArrivalItIsTheSameWhateverTheStay() {
    for (double hours : new double[] {0.25, 0.5, 1, 2, 2.9}) {
      assertThat(psi(stay(lowTire(hours, "110 psi")), 0)).isCloseTo(93, within(1e-6));
    }
  }

  /** 91.5 psi, where the whole psi changes: 94.696·(278.15 + x)/278.15 − 14.696 for x = 33.78 K. */
  @Test
  void itHoldsUntilTheWholePsiChanges() {
    StayFigures stay = stay(lowTire(1, "110 psi"));
    double minutes = 46.14 * Math.log(37.13 / 33.78);
    assertThat(minutes).isBetween(4.3, 4.4);
    assertThat(stay.until(ARRIVAL.plusSeconds(120))).isEqualTo(ARRIVAL.plusSeconds(4 * 60));
    assertThat(psi(stay, 8)).isCloseTo(91, within(1e-6));
  }

  @Test
  void outsideOfTheStayThereIsNone() {
    StayFigures stay = stay(lowTire(1, "110 psi"));
    assertThat(stay.at(ARRIVAL.minusSeconds(60))).isEmpty();
    assertThat(stay.at(ARRIVAL.plusSeconds(3600))).isPresent();
    // Clocks show whole minutes: the one that is shown for either end is within.
    assertThat(stay.at(ARRIVAL.minusSeconds(40))).isEqualTo(stay.at(ARRIVAL));
    assertThat(stay.at(ARRIVAL.plusSeconds(3640))).isEqualTo(stay.at(ARRIVAL.plusSeconds(3600)));
    assertThat(stay.at(ARRIVAL.plusSeconds(3660))).isEmpty();
  }

  @Test
  void aClockTimeIsTheFirstOneOfTheStay() {
    StayFigures stay = stay(lowTire(20, "110 psi"));
    assertThat(stay.next(LocalTime.of(8, 20))).isEqualTo(ARRIVAL.plusSeconds(1200));
    assertThat(stay.next(LocalTime.of(1, 0))).isEqualTo("2027-04-07T01:00:00Z");
  }

  /** The forecast's three figures are those of their minutes. */
  @Test
  void itAgreesWithTheForecast() {
    for (String limit : new String[] {"110 psi", "80 psi"}) {
      Scenario scenario = lowTire(1.5, limit);
      StayFigures stay = stay(scenario);
      TimedFigures timed = Objects.requireNonNull(Seen.at(scenario.advise(), 1).timed());
      assertThat(stay.at(ARRIVAL)).contains(Objects.requireNonNull(timed.onArrival()));
      assertThat(stay.at(Instant.ofEpochSecond((long) timed.seconds()))).contains(timed.at());
      assertThat(stay.cold().figure()).isEqualTo(timed.cold().figure());
    }
  }

  @Test
  void afterThreeHoursTheFigureIsACold() {
    StayFigures stay = stay(lowTire(20, "110 psi"));
    assertThat(stay.at(ARRIVAL.plusSeconds(3 * 3600 - 60)).orElseThrow().warm()).isTrue();
    assertThat(stay.at(ARRIVAL.plusSeconds(3 * 3600)).orElseThrow().warm()).isFalse();
    assertThat(stay.at(ARRIVAL.plusSeconds(12 * 3600)).orElseThrow().warm()).isFalse();
  }

  @Test
  void beforeTheFirstStartItIsColdAtAnyMinute() {
    Scenario home = lowTire(1, "110 psi").air();
    FigureNow now = FigureNow.of(home.forecaster(), LEFT, 0).orElseThrow();
    StayFigures stay = Objects.requireNonNull(now.stay());
    Instant start = Scenario.START.toInstant();
    assertThat(stay.at(start).orElseThrow().warm()).isFalse();
    assertThat(stay.zone()).isEqualTo(Scenario.START.getZone());
  }
}

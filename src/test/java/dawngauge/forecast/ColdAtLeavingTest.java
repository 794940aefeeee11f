package dawngauge.forecast;

import static dawngauge.testdata.StopBuilder.stop;
import static org.assertj.core.api.Assertions.assertThat;

import dawngauge.testdata.Forecasts;
import dawngauge.testdata.RigBuilder;
import dawngauge.testdata.Trips;
import java.time.Duration;
import org.junit.jupiter.api.Test;

/** Tires are cold parked three hours, less than one mile driven since (NHTSA consumer text). */
class ColdAtLeavingTest {

  private static final String START = "2027-06-01T06:00Z";

  /** Far to a stop, a stay there, then a short way to a second stay. */
  private static Trips moved(Duration first, String way, Duration second) {
    return Trips.of(RigBuilder.trailer())
        .stop(stop("home").leaves(START).steady("60 °F"))
        .leg("60 mi", "60 mph")
        .stop(stop("gate").stays(first).steady("60 °F"))
        .leg(way, "10 mph")
        .stop(stop("barn").stays(second).steady("60 °F"))
        .readAll("2027-06-01T05:50Z", "80 psi");
  }

  private static boolean cold(Trips haul, int visit) {
    return Forecasts.first(haul.trip()).get(visit).cold();
  }

  @Test
  void atTheStartTheyAre() {
    assertThat(cold(moved(Duration.ofHours(1), "60 mi", Duration.ofHours(1)), 0)).isTrue();
  }

  @Test
  void afterThreeHoursNotAMinuteBefore() {
    assertThat(cold(moved(Duration.ofMinutes(179), "60 mi", Duration.ofHours(1)), 1)).isFalse();
    assertThat(cold(moved(Duration.ofHours(3), "60 mi", Duration.ofHours(1)), 1)).isTrue();
  }

  @Test
  void aMoveOfAMileWarmsThemAShorterOneDoesNot() {
    Duration four = Duration.ofHours(4);
    assertThat(cold(moved(four, "0.9 mi", Duration.ofMinutes(30)), 2)).isTrue();
    assertThat(cold(moved(four, "1 mi", Duration.ofMinutes(30)), 2)).isFalse();
  }

  /** 90 min, six minutes for 0.9 mi at 10 mph (5.4 min), and the rest of three hours. */
  @Test
  void theTimeOnAShortMoveCounts() {
    Duration half = Duration.ofMinutes(90);
    assertThat(cold(moved(half, "0.9 mi", Duration.ofMinutes(84)), 2)).isFalse();
    assertThat(cold(moved(half, "0.9 mi", Duration.ofMinutes(85)), 2)).isTrue();
  }

  /** Two moves that are a mile together, without a cold stand between. */
  @Test
  void shortMovesAddUp() {
    Trips haul =
        moved(Duration.ofHours(4), "0.6 mi", Duration.ofMinutes(30))
            .leg("0.6 mi", "10 mph")
            .stop(stop("ring").stays(Duration.ofMinutes(30)).steady("60 °F"));
    assertThat(cold(haul, 2)).isTrue();
    assertThat(cold(haul, 3)).isFalse();
    Trips rested =
        moved(Duration.ofHours(4), "0.6 mi", Duration.ofHours(3))
            .leg("0.6 mi", "10 mph")
            .stop(stop("ring").stays(Duration.ofMinutes(30)).steady("60 °F"));
    assertThat(cold(rested, 3)).isTrue();
  }

  /** A place passed on a way of 1.2 miles does not make two short moves of it. */
  @Test
  void aPlaceThatIsPassedCutsNoDrive() {
    Trips haul =
        Trips.of(RigBuilder.trailer())
            .stop(stop("home").leaves(START).steady("60 °F"))
            .leg("0.6 mi", "10 mph")
            .stop(stop("gate"))
            .leg("0.6 mi", "10 mph")
            .stop(stop("barn").stays(Duration.ofMinutes(30)).steady("60 °F"))
            .readAll("2027-06-01T05:50Z", "80 psi");
    assertThat(cold(haul, 2)).isFalse();
  }
}

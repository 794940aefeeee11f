package dawngauge.advice;

import static dawngauge.testdata.StopBuilder.stop;
import static org.assertj.core.api.Assertions.assertThat;

import dawngauge.forecast.HeatFit;
import dawngauge.forecast.ReadingCheck;
import dawngauge.ledger.LiveLines;
import dawngauge.quantity.UnitSystem;
import dawngauge.testdata.Forecasts;
import dawngauge.testdata.RigBuilder;
import dawngauge.testdata.Trips;
import dawngauge.trip.Descents;
import dawngauge.trip.LogEvent;
import dawngauge.trip.ProfilePoint;
import dawngauge.trip.ReadingState;
import dawngauge.trip.Trip;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * By hand: 5 % of two miles (10,560 ft) are 528 ft. A pass of 3,000 ft with 2,400 ft two miles on
 * falls by 600 ft; with 2,500 ft by 500 ft.
 */
class DescentsTest {

  private static Trip over(ProfilePoint... points) {
    return Trips.of(RigBuilder.trailer())
        .stop(stop("a").elevation("2000 ft").leaves("2027-06-01T06:00Z").steady("60 °F"))
        .leg("40 mi", "50 mph", points)
        .stop(stop("passed").elevation("2000 ft"))
        .leg("10 mi", "50 mph")
        .stop(stop("b").elevation("2000 ft").stays(Duration.ofHours(1)).steady("60 °F"))
        .leg("10 mi", "50 mph")
        .stop(stop("end").elevation("2000 ft").steady("60 °F"))
        .readAll("2027-06-01T05:50Z", "65 psi")
        .trip();
  }

  private static Trip falling(String after) {
    return over(
        Trips.point("pass", "20 mi", "3000 ft"),
        Trips.point("below", "22 mi", after),
        Trips.point("plain", "30 mi", "2000 ft"));
  }

  private static boolean before(Advice advice, int stop) {
    return Descents.before(
        advice.forecast().trip().route(),
        visit -> advice.stops().get(visit).stop().visit().passes(),
        stop);
  }

  private static Advice advice(Trip trip) {
    return new Adviser(Forecasts.forecaster(trip), Scenario.THRESHOLDS).advise();
  }

  @Test
  void twoMilesOverFivePercentAreToldOnTheLegAndAtTheNextStand() {
    Advice steep = advice(falling("2400 ft"));
    assertThat(steep.stops().get(0).legCautions())
        .extracting(caution -> caution.in(UnitSystem.US))
        .anyMatch(text -> text.contains("let hubs and brakes cool before you gauge"));
    assertThat(before(steep, 2)).isTrue();
    assertThat(before(steep, 3)).isFalse();
  }

  @Test
  void lessIsNotTold() {
    Advice gentle = advice(falling("2500 ft"));
    assertThat(gentle.stops().get(0).legCautions()).isEmpty();
    assertThat(before(gentle, 2)).isFalse();
  }

  /** What climbs as steeply heats no brake. */
  @Test
  void aClimbIsNone() {
    Trip climb =
        over(
            Trips.point("foot", "18 mi", "2000 ft"),
            Trips.point("pass", "20 mi", "3000 ft"),
            Trips.point("plain", "39 mi", "2000 ft"));
    assertThat(advice(climb).stops().get(0).legCautions()).isEmpty();
  }

  /** Also just before the next stop. */
  @Test
  void itIsFoundNearTheEnd() {
    Trip late =
        over(
            Trips.point("pass", "30 mi", "4000 ft"),
            Trips.point("brink", "37 mi", "3700 ft"),
            Trips.point("plain", "38 mi", "2900 ft"),
            Trips.point("near", "39 mi", "2000 ft"));
    assertThat(Descents.onLeg(late.route(), 0)).isTrue();
  }

  /** Warm brakes are no trait of a tire: what it reads after them does not move its heat factor. */
  @Test
  void aWarmReadingAfterOneIsNotLearned() {
    assertThat(HeatFit.of(Forecasts.forecaster(warmAtB("2400 ft")))).isEmpty();
    assertThat(HeatFit.of(Forecasts.forecaster(warmAtB("2500 ft")))).hasSize(1);
  }

  /**
   * How hot brakes make a tire nobody can tell, so the range is open above: 12 psi over what was
   * expected is no news behind a long descent. Under it, it is: brakes take no air.
   */
  @Test
  void behindOneTheRangeOfAWarmReadingIsOpenAbove() {
    ReadingCheck steep = check(warmAtB("2400 ft", "85 psi"));
    ReadingCheck gentle = check(warmAtB("2500 ft", "85 psi"));
    assertThat(steep.deviations()).isGreaterThan(2);
    assertThat(steep.unexpected()).isFalse();
    assertThat(gentle.unexpected()).isTrue();
    assertThat(LiveLines.expected(steep, UnitSystem.US)).endsWith("+");
    assertThat(LiveLines.expected(gentle, UnitSystem.US)).doesNotEndWith("+");
    assertThat(LiveLines.told(steep, UnitSystem.US)).contains(", more where brakes are hot; off");
    assertThat(LiveLines.told(gentle, UnitSystem.US)).doesNotContain("brakes");
    assertThat(asked(warmAtB("2400 ft", "85 psi"))).isFalse();
    assertThat(asked(warmAtB("2500 ft", "85 psi"))).isTrue();
    assertThat(check(warmAtB("2400 ft", "58 psi")).unexpected()).isTrue();
  }

  private static ReadingCheck check(Trip trip) {
    return Forecasts.first(trip).get(2).readings().get(0);
  }

  private static boolean asked(Trip trip) {
    return advice(trip).stops().get(2).tires().get(0).reasons().stream()
        .anyMatch(reason -> reason.text().in(UnitSystem.US).contains("than expected"));
  }

  private static Trip warmAtB(String after) {
    return warmAtB(after, "75 psi");
  }

  private static Trip warmAtB(String after, String read) {
    Trip trip = falling(after);
    List<LogEvent> log = new ArrayList<>(trip.log());
    log.addAll(
        Trips.of(RigBuilder.trailer())
            .read("2027-06-01T07:05Z", "T1", read, "hand", ReadingState.WARM)
            .trip()
            .log());
    return trip.withLog(log);
  }
}

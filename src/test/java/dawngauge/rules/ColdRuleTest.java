package dawngauge.rules;

import static dawngauge.testdata.StopBuilder.stop;
import static org.assertj.core.api.Assertions.assertThat;

import dawngauge.testdata.RigBuilder;
import dawngauge.testdata.Trips;
import dawngauge.trip.Itinerary;
import dawngauge.trip.LogEvent;
import dawngauge.trip.ReadingState;
import dawngauge.trip.Trip;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * Cold is three hours parked, or less than a mile driven (NHTSA consumer text), by noted times.
 * Planned: leave a at 06:00, 100 mi at 50 mph, at b from 08:00 on.
 */
class ColdRuleTest {

  private static Trips haul(String distance) {
    return Trips.of(RigBuilder.trailer())
        .stop(stop("a").leaves("2027-06-01T06:00Z"))
        .leg(distance, "50 mph")
        .stop(stop("b").stays(Duration.ofHours(8)))
        .stop(stop("c"));
  }

  private static ColdRule rule(Trip trip) {
    return new ColdRule(trip, Itinerary.of(trip).get());
  }

  /** State of the last reading in the log. */
  private static ReadingState last(Trips trips) {
    Trip trip = trips.trip();
    List<LogEvent> log = trip.log();
    return rule(trip).stateOf((LogEvent.Reading) log.get(log.size() - 1));
  }

  private static Trips cold(Trips trips, String time) {
    return trips.read("2027-06-01T" + time + "Z", "T1", "80 psi");
  }

  @Test
  void minutesAfterANotedArrivalItIsWarm() {
    Trips trips = haul("100 mi").arrived("2027-06-01T08:10Z", "b");
    assertThat(last(cold(trips, "08:20"))).isEqualTo(ReadingState.WARM);
  }

  @Test
  void threeHoursAfterItIsCold() {
    Trips before = haul("100 mi").arrived("2027-06-01T08:10Z", "b");
    assertThat(last(cold(before, "11:09"))).isEqualTo(ReadingState.WARM);
    Trips after = haul("100 mi").arrived("2027-06-01T08:10Z", "b");
    assertThat(last(cold(after, "11:10"))).isEqualTo(ReadingState.COLD);
  }

  /** Gauged warm tells that it rolled, though nothing was noted. */
  @Test
  void afterAWarmReadingItIsWarm() {
    Trips trips =
        haul("100 mi").read("2027-06-01T08:10Z", "T2", "86 psi", "hand", ReadingState.WARM);
    assertThat(last(cold(trips, "09:00"))).isEqualTo(ReadingState.WARM);
  }

  /** It left at 06:30, so it rolls until 08:30, noted or not. */
  @Test
  void leftWithoutAnArrivalItRolls() {
    Trips rolling = haul("100 mi").left("2027-06-01T06:30Z", "a");
    assertThat(last(cold(rolling, "07:00"))).isEqualTo(ReadingState.WARM);
    Trips there = haul("100 mi").left("2027-06-01T06:30Z", "a");
    assertThat(last(cold(there, "11:29"))).isEqualTo(ReadingState.WARM);
    Trips later = haul("100 mi").left("2027-06-01T06:30Z", "a");
    assertThat(last(cold(later, "11:31"))).isEqualTo(ReadingState.COLD);
  }

  @Test
  void beforeItLeftItIsCold() {
    Trips trips = cold(haul("100 mi"), "05:50").left("2027-06-01T06:00Z", "a");
    Trip trip = trips.trip();
    assertThat(rule(trip).wronglyCold((LogEvent.Reading) trip.log().get(0))).isFalse();
    assertThat(rule(trip).lastRolled(Instant.parse("2027-06-01T05:50:00Z"))).isEmpty();
  }

  /** Nothing noted: they may have left late. */
  @Test
  void plannedTimesAloneMakeNothingWarm() {
    assertThat(last(cold(haul("100 mi"), "07:30"))).isEqualTo(ReadingState.COLD);
    assertThat(last(cold(haul("100 mi"), "08:10"))).isEqualTo(ReadingState.COLD);
  }

  /** 0.9 mi leave a tire cold, 1.1 do not. */
  @Test
  void aMoveUnderAMileLeavesItCold() {
    Trips move = haul("0.9 mi").left("2027-06-01T06:00Z", "a").arrived("2027-06-01T06:05Z", "b");
    assertThat(last(cold(move, "06:10"))).isEqualTo(ReadingState.COLD);
    Trips drive = haul("1.1 mi").left("2027-06-01T06:00Z", "a").arrived("2027-06-01T06:05Z", "b");
    assertThat(last(cold(drive, "06:10"))).isEqualTo(ReadingState.WARM);
  }

  /** Twice 0.6 mi within the hour are more than a mile; after three hours they are not. */
  @Test
  void shortMovesSoonAfterAnotherAddUp() {
    for (int hours = 1; hours <= 3; hours += 2) {
      Trips trips =
          Trips.of(RigBuilder.trailer())
              .stop(stop("a").leaves("2027-06-01T06:00Z"))
              .leg("0.6 mi", "10 mph")
              .stop(stop("b").stays(Duration.ofHours(hours)))
              .leg("0.6 mi", "10 mph")
              .stop(stop("c").stays(Duration.ofHours(8)))
              .stop(stop("d"))
              .left("2027-06-01T06:00Z", "a")
              .arrived("2027-06-01T1" + hours + ":00Z", "c");
      trips = cold(trips, "1" + hours + ":10");
      Instant arrived = Instant.parse("2027-06-01T1" + hours + ":00:00Z");
      Trip trip = trips.trip();
      Itinerary.Visit between = Itinerary.of(trip).get().visits().get(1);
      assertThat(between.stay()).isEqualTo(Duration.ofHours(hours));
      assertThat(rule(trip).lastRolled(arrived.plusSeconds(600)).isPresent()).isEqualTo(hours < 3);
    }
  }

  /** A place passed half a mile before the end does not cut the drive into a short move. */
  @Test
  void aPlacePassedDoesNotCutADrive() {
    Trips trips =
        Trips.of(RigBuilder.trailer())
            .stop(stop("a").leaves("2027-06-01T06:00Z"))
            .leg("100 mi", "50 mph")
            .stop(stop("passed"))
            .leg("0.5 mi", "50 mph")
            .stop(stop("b").stays(Duration.ofHours(8)))
            .stop(stop("c"))
            .arrived("2027-06-01T08:00:36Z", "b");
    assertThat(last(cold(trips, "08:20"))).isEqualTo(ReadingState.WARM);
  }

  /** The reading's own word counts where it says warm, or just filled. */
  @Test
  void onlyColdWordsAreHeldAgainstTheTimes() {
    Trips trips =
        haul("100 mi")
            .arrived("2027-06-01T08:10Z", "b")
            .read("2027-06-01T08:20Z", "T1", "80 psi", "hand", ReadingState.JUST_FILLED);
    assertThat(last(trips)).isEqualTo(ReadingState.JUST_FILLED);
    Trips sun =
        haul("100 mi")
            .arrived("2027-06-01T08:10Z", "b")
            .read("2027-06-01T08:20Z", "T1", "80 psi", "hand", ReadingState.COLD_IN_SUN);
    assertThat(last(sun)).isEqualTo(ReadingState.WARM);
  }
}

package dawngauge.planner;

import static org.assertj.core.api.Assertions.assertThat;

import dawngauge.advice.Advice;
import dawngauge.advice.Mark;
import dawngauge.advice.TireAdvice;
import dawngauge.ledger.CrewLine;
import dawngauge.quantity.UnitSystem;
import dawngauge.settings.SettingsFile;
import dawngauge.trip.CrewPlace;
import dawngauge.trip.Itinerary;
import dawngauge.trip.LogEdits;
import dawngauge.trip.LogEvent;
import dawngauge.trip.Trip;
import dawngauge.trip.TypedTime;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;

/** The demo haul under way. */
class RoadTest {

  private static final int DALHART = 4;

  private static final Planner PLANNER = new Planner(SettingsFile.defaults(), List.of());

  private static Trip demo() {
    return PLANNER.store().open(Path.of("demo-data", "spring-fleece-haul.dawngauge")).get();
  }

  private static Advice advice(Trip trip) {
    return Objects.requireNonNull(PLANNER.plan(trip).advice());
  }

  private static TypedTime at(Trip trip, int stop, boolean leaving, int minutesLate) {
    Itinerary.Visit visit = Itinerary.of(trip).get().visits().get(stop);
    Instant time = leaving ? visit.leave() : visit.arrive();
    return LogEdits.at(time.plus(Duration.ofMinutes(minutesLate)), visit.zone());
  }

  private static long taken(Advice advice, int stop) {
    return advice.stops().get(stop).tires().stream()
        .filter(tire -> tire.tire().setting() != null)
        .count();
  }

  @Test
  void whatIsAskedToBeSetCountsAsDoneOnlyUntilTheRigHasLeft() {
    Trip demo = demo();
    assertThat(taken(advice(demo), DALHART)).isPositive();
    Trip there = LogEdits.arrived(demo, "dalhart", at(demo, DALHART, false, 0));
    assertThat(taken(advice(there), DALHART)).isPositive();
    Trip left = LogEdits.left(there, "dalhart", at(demo, DALHART, true, 0));
    Advice over = advice(left);
    assertThat(taken(over, DALHART)).isZero();
    TireAdvice low = over.stops().get(DALHART + 1).tires().get(9);
    assertThat(low.mark()).as("it is still low at the next stop").isNotEqualTo(Mark.CLEAR);
    // Further on than it: the same.
    Trip further = LogEdits.arrived(demo, "amarillo", at(demo, DALHART + 1, false, 0));
    assertThat(taken(advice(further), DALHART)).isZero();
  }

  @Test
  void thisMorningsPlanIsTheTripAsTheLogKnewItBeforeTheDaysFirstStart() {
    Trip demo = demo();
    Trip late = LogEdits.left(demo, "alamosa", at(demo, 0, true, 45));
    Trip morning = PLANNER.plan(late).thisMorning();
    assertThat(morning.log()).isEqualTo(demo.log());
    CrewPlace place = CrewPlace.of(late, Itinerary.of(late).get());
    assertThat(place.there()).isFalse();
    CrewLine line = CrewLine.of(place, advice(late), advice(morning), UnitSystem.US);
    assertThat(line.where()).isEqualTo("On the way to Walsenburg CO since 06:30");
    assertThat(line.next()).isEqualTo("there about 07:58");
    assertThat(line.changed()).startsWith("45 min later than this morning's plan");
  }

  @Test
  void anArrivalAgainGivesWayAndPlacesThatArePassedAreSkipped() {
    Trip demo = demo();
    Trip once = LogEdits.arrived(demo, "raton", at(demo, 2, false, 10));
    Trip again = LogEdits.arrived(once, "raton", at(demo, 2, false, 25));
    assertThat(again.log().stream().filter(LogEvent.Arrived.class::isInstance)).hasSize(1);
    Itinerary itinerary = Itinerary.of(again).get();
    CrewPlace place = CrewPlace.of(again, itinerary);
    assertThat(place.there()).isTrue();
    // Clayton is a waypoint.
    assertThat(itinerary.visits().get(place.next(itinerary.visits())).stop().id())
        .isEqualTo("dalhart");
  }
}

package dawngauge.trip;

import static org.assertj.core.api.Assertions.assertThat;

import dawngauge.planner.Planner;
import dawngauge.quantity.Entered;
import dawngauge.quantity.QuantityKind;
import dawngauge.settings.SettingsFile;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Which stops the rig has left, by what was noted. */
class CrewLeftTest {

  private static final Trip DEMO =
      new Planner(SettingsFile.defaults(), List.of())
          .store()
          .open(Path.of("demo-data", "autumn-stock-haul.dawngauge"))
          .get();

  private static List<Itinerary.Visit> visits() {
    return Itinerary.of(DEMO).get().visits();
  }

  private static TypedTime at(Instant time) {
    return TypedTime.of(LocalDateTime.ofInstant(time, ZoneOffset.UTC), ZoneOffset.UTC);
  }

  private static Trip with(LogEvent... events) {
    List<LogEvent> log = new ArrayList<>();
    for (LogEvent event : DEMO.log()) {
      if (event.time().instant().isBefore(visits().get(0).leave())) {
        log.add(event);
      }
    }
    log.addAll(List.of(events));
    return DEMO.withLog(log);
  }

  private static LogEvent reading(Instant time) {
    LogEvent.Reading known =
        DEMO.log().stream()
            .filter(LogEvent.Reading.class::isInstance)
            .map(LogEvent.Reading.class::cast)
            .findFirst()
            .orElseThrow();
    return new LogEvent.Reading(
        at(time),
        known.tire(),
        Entered.of(QuantityKind.GAUGE_PRESSURE, "64 psi"),
        known.gauge(),
        known.state(),
        null,
        null,
        Remarks.NONE);
  }

  private static int left(Trip trip) {
    return CrewPlace.left(trip, visits());
  }

  @Test
  void beforeTheStartNoneIsLeft() {
    assertThat(left(with())).isZero();
  }

  /** A late crew that gauges again still stands there: what is to be set there is still asked. */
  @Test
  void aReadingBeforeTheNextArrivalLeavesTheStopOpen() {
    Instant planned = visits().get(0).leave();
    assertThat(left(with(reading(planned.plusSeconds(900))))).isZero();
  }

  /** A reading at a later stop shows that the rig has gone, though nobody noted its leaving. */
  @Test
  void aReadingFurtherOnClosesWhatLiesBefore() {
    assertThat(left(with(reading(visits().get(2).arrive().plusSeconds(60))))).isEqualTo(2);
    assertThat(left(DEMO)).as("a reading at Kamloops BC").isEqualTo(2);
  }

  @Test
  void whatWasNotedCounts() {
    String first = DEMO.route().stops().get(0).id();
    Instant time = visits().get(0).leave().minusSeconds(600);
    assertThat(left(with(new LogEvent.Left(at(time), first, Remarks.NONE)))).isEqualTo(1);
    int last = visits().size() - 1;
    String end = DEMO.route().stops().get(last).id();
    Trip home = with(new LogEvent.Left(at(visits().get(last).leave()), end, Remarks.NONE));
    assertThat(left(home)).isEqualTo(last + 1);
    assertThat(CrewPlace.open(home, visits())).isEqualTo(last);
  }
}

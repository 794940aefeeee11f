package dawngauge.ledger;

import static org.assertj.core.api.Assertions.assertThat;

import dawngauge.planner.Plan;
import dawngauge.planner.Planner;
import dawngauge.quantity.Entered;
import dawngauge.quantity.QuantityKind;
import dawngauge.quantity.UnitSystem;
import dawngauge.settings.SettingsFile;
import dawngauge.trip.LogEvent;
import dawngauge.trip.ReadingState;
import dawngauge.trip.Trip;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What a stop's line says of chances and offered loads. */
class StopLinesTest {

  private static final Planner PLANNER = new Planner(SettingsFile.defaults(), List.of());

  private static Trip demo(String name) {
    return PLANNER.store().open(Path.of("demo-data", name + ".dawngauge")).get();
  }

  private static StopLine at(Trip trip, String place) {
    Plan planned = PLANNER.plan(trip);
    return Ledger.of(
            trip, planned.advice(), planned.problems(), planned.fitness(), UnitSystem.US, null)
        .stops()
        .stream()
        .filter(stop -> stop.place().equals(place))
        .findFirst()
        .orElseThrow();
  }

  /** The air on from Walsenburg is not known: no chance is told, and none is "under 1 %". */
  @Test
  void aLegWithoutAirHasNoChance() {
    Trip trip = demo("gap-haul");
    assertThat(at(trip, "Walsenburg CO").chance())
        .isEqualTo("chance of too little air before the next stop: not known");
    assertThat(at(trip, "Alamosa CO").chance()).endsWith("under 1 %");
  }

  /**
   * What a crew compares first stands together. t2r at Dalhart: 72 psi at 15 °F, 34 °F warmer by
   * the rule of thumb 72 + 3.4 = 75 to 72 + 6.8 = 79; expected 84.3 psi warm, less the 5 psi of 49
   * CFR 393.75 Table 1 for a rated load up to 4,000 lb at 41 to 55 mph: 79.
   */
  @Test
  void theFiguresOfOthersStandBesideOurs() {
    assertThat(at(demo("spring-fleece-haul"), "Dalhart TX").beside())
        .startsWith("cold here by our model, by the rule of thumb (1 to 2 psi a 10 °F")
        .contains("by 49 CFR 393.75 Table 1 (5.0 psi off a warm reading)")
        .contains("t2r 76, 75–79, 79");
  }

  /** A tire read at 60 psi, 80 % of 80 being 64, must not roll: no load is offered to its rig. */
  @Test
  void noLoadIsJudgedWhileATireIsHeld() {
    Trip trip = demo("spring-fleece-haul-logged");
    assertThat(at(trip, "Weatherford TX").loads()).noneMatch(line -> line.contains("not judged"));
    List<LogEvent> log = trip.log().stream().map(StopLinesTest::lowAtWeatherford).toList();
    StopLine held = at(trip.withLog(log), "Weatherford TX");
    assertThat(held.loads())
        .anyMatch(line -> line.endsWith(": not judged while t1l must not roll"))
        .noneMatch(line -> line.contains("could be taken"));
  }

  private static LogEvent lowAtWeatherford(LogEvent event) {
    return event instanceof LogEvent.Reading reading
            && reading.tire().equals("T1")
            && reading.time().text().startsWith("2027-04-08T20")
        ? new LogEvent.Reading(
            reading.time(),
            reading.tire(),
            Entered.of(QuantityKind.GAUGE_PRESSURE, "60 psi"),
            reading.gauge(),
            ReadingState.COLD,
            null,
            null,
            reading.remarks())
        : event;
  }
}

package dawngauge.phone;

import dawngauge.advice.Advice;
import dawngauge.advice.StopReadTables;
import dawngauge.ledger.BreakdownPage;
import dawngauge.ledger.Ledger;
import dawngauge.planner.Plan;
import dawngauge.planner.Planner;
import dawngauge.planner.ReadTrials;
import dawngauge.quantity.UnitSystem;
import dawngauge.report.PhonePage;
import dawngauge.settings.SettingsFile;
import dawngauge.trip.Trip;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;

/** The demo haul with the page for its first day, whose tables are found once. */
final class PhoneDemo {

  static final Planner PLANNER = new Planner(SettingsFile.defaults(), List.of());

  static final Trip TRIP =
      PLANNER.store().open(Path.of("demo-data/spring-fleece-haul.dawngauge")).get();

  private static final Instant MADE = Instant.parse("2027-04-06T02:10:00Z");

  /** What readings on the first day would mean. */
  static final List<StopReadTables> TABLES =
      ReadTrials.ahead(PLANNER.plan(TRIP), 1, MADE, () -> true);

  private PhoneDemo() {}

  /** Writes the page; of another trip with the tables of this one. */
  static Path page(Path file, Trip trip, UnitSystem units) throws IOException {
    return page(file, trip, TABLES, units);
  }

  /** Writes the page of a trip with its own tables. */
  static Path ownPage(Path file, Trip trip, UnitSystem units) throws IOException {
    return page(file, trip, ReadTrials.ahead(PLANNER.plan(trip), 1, MADE, () -> true), units);
  }

  private static Path page(Path file, Trip trip, List<StopReadTables> tables, UnitSystem units)
      throws IOException {
    Plan plan = PLANNER.plan(trip);
    Advice advice = plan.advice();
    String html =
        PhonePage.of(
            new PhonePage.Parts(
                trip,
                advice,
                Ledger.of(trip, advice, plan.problems(), plan.fitness(), units, null),
                tables,
                BreakdownPage.forAll(trip, plan.breakdowns(), plan.tireNeeds(), units),
                PLANNER.store().fingerprint(trip),
                MADE,
                units));
    return Files.writeString(file, html);
  }
}

package dawngauge.cli;

import dawngauge.advice.Advice;
import dawngauge.ledger.BreakdownPage;
import dawngauge.ledger.Ledger;
import dawngauge.planner.Plan;
import dawngauge.planner.Planner;
import dawngauge.planner.ReadTrials;
import dawngauge.planner.WeatherAccess;
import dawngauge.quantity.UnitSystem;
import dawngauge.report.PhonePage;
import dawngauge.trip.Trip;
import java.time.Instant;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Writes the page for the phone. */
@Command(
    name = "take",
    description =
        "Write a page for the phone: the stops ahead, a round to type, what each reading means, a"
            + " flat tire. It opens without a network; what is typed comes back by bring.")
final class TakeCommand extends TripCommand {

  private static final int MOST_DAYS = 60;

  private final WeatherAccess access;

  @Option(
      names = "--out",
      paramLabel = "FILE",
      required = true,
      description = "Write the page there; its name ends in .html.")
  private String out = "";

  @Option(names = "--force", description = "Let --out replace a file that exists.")
  private boolean force;

  @Option(
      names = "--days",
      paramLabel = "N",
      description = "So many days from where the crew is; 1 unless given, each takes seconds.")
  private int days = 1;

  TakeCommand(Planner planner, Console console, WeatherAccess access) {
    super(planner, console);
    this.access = access;
  }

  @Override
  Optional<String> clash() {
    return days < 1 || days > MOST_DAYS
        ? Optional.of("--days " + days + " is not from 1 to " + MOST_DAYS)
        : Optional.empty();
  }

  @Override
  int run(Trip trip, UnitSystem units) {
    Plan plan = planner.plan(trip);
    Advice advice = plan.advice();
    if (advice == null) {
      return untimed(plan.problems());
    }
    Instant now = access.now();
    return write(
        PhonePage.of(
            new PhonePage.Parts(
                trip,
                advice,
                Ledger.of(trip, advice, plan.problems(), plan.fitness(), units, null),
                ReadTrials.ahead(plan, days, now, () -> true),
                BreakdownPage.forAll(trip, plan.breakdowns(), plan.tireNeeds(), units),
                planner.store().fingerprint(trip),
                now,
                units)),
        out,
        force);
  }
}

package dawngauge.cli;

import dawngauge.advice.Advice;
import dawngauge.ledger.BreakdownPage;
import dawngauge.ledger.Ledger;
import dawngauge.planner.Plan;
import dawngauge.planner.Planner;
import dawngauge.planner.ReadTrials;
import dawngauge.planner.WeatherDesk;
import dawngauge.problem.Outcome;
import dawngauge.quantity.UnitSystem;
import dawngauge.report.PhonePage;
import dawngauge.trip.Trip;
import java.time.Instant;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Writes the page for the phone. */
@Command(
    name = "take",
    description =
        "Write a page for the phone: the stops ahead, a round to type, what each reading means, a"
            + " flat tire. It opens without a network; what is typed comes back by bring.")
final class TakeCommand implements Callable<Integer> {

  private static final int MOST_DAYS = 60;

  private final Planner planner;
  private final Console console;
  private final WeatherDesk desk;

  @Parameters(index = "0", paramLabel = "FILE", description = "Trip file; - is standard input.")
  private String file = "";

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

  @Mixin private final UnitsOption unitsOption = new UnitsOption();

  TakeCommand(Planner planner, Console console, WeatherDesk desk) {
    this.planner = planner;
    this.console = console;
    this.desk = desk;
  }

  @Override
  public Integer call() {
    Outcome<Trip> opened = TripArgument.toShow(planner, console, file);
    if (!opened.hasValue()) {
      return TripArgument.refuse(console, file, opened.problems());
    }
    if (days < 1 || days > MOST_DAYS) {
      console.err().println("--days " + days + " is not from 1 to " + MOST_DAYS);
      return ExitCode.USAGE;
    }
    Trip trip = opened.get();
    Plan plan = planner.plan(trip);
    Advice advice = plan.advice();
    if (advice == null) {
      return TripArgument.untimed(console, file, plan.problems());
    }
    UnitSystem units = unitsOption.of(planner, trip);
    Instant now = desk.now();
    String page =
        PhonePage.of(
            new PhonePage.Parts(
                trip,
                advice,
                Ledger.of(trip, advice, plan.problems(), plan.fitness(), units, null),
                ReadTrials.ahead(plan, days, now),
                BreakdownPage.forAll(trip, plan.breakdowns(), plan.tireNeeds(), units),
                planner.store().fingerprint(trip),
                now,
                units));
    return new Output(planner, console).write(page, out, file, force);
  }
}

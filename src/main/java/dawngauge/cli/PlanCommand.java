package dawngauge.cli;

import dawngauge.advice.Adjustment;
import dawngauge.ledger.PlanLines;
import dawngauge.ledger.PlanPage;
import dawngauge.planner.Planner;
import dawngauge.problem.Outcome;
import dawngauge.quantity.UnitSystem;
import dawngauge.report.JsonPlan;
import dawngauge.report.PageText;
import dawngauge.trip.Trip;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Prints at which stops the tires are to be set, and to what. */
@Command(
    name = "plan",
    description =
        "Print the fewest stops at which the tires must be set so that they stay within their limits,"
            + " with the figures, beside other habits.")
final class PlanCommand implements Callable<Integer> {

  private final Planner planner;
  private final Console console;

  @Parameters(index = "0", paramLabel = "FILE", description = "Trip file; - is standard input.")
  private String file = "";

  @Mixin private final FormOption form = new FormOption();

  @Mixin private final UnitsOption unitsOption = new UnitsOption();

  @Option(names = "--why", description = "With why there is no better plan; the text alone.")
  private boolean why;

  @Option(names = "--out", paramLabel = "FILE", description = "Write there instead.")
  private String out = TripArgument.STANDARD;

  @Option(names = "--force", description = "Let --out replace a file that exists.")
  private boolean force;

  PlanCommand(Planner planner, Console console) {
    this.planner = planner;
    this.console = console;
  }

  @Override
  public Integer call() {
    Outcome<Trip> opened = TripArgument.toShow(planner, console, file);
    if (!opened.hasValue()) {
      return TripArgument.refuse(console, file, opened.problems());
    }
    Trip trip = opened.get();
    UnitSystem units = unitsOption.of(planner, trip);
    Outcome<Adjustment> adjustment = planner.plan(trip).adjustment();
    if (!adjustment.hasValue()) {
      return TripArgument.untimed(console, file, adjustment.problems());
    }
    String text =
        form.json()
            ? JsonPlan.of(
                trip, adjustment.get(), TripArgument.problems(opened, adjustment.problems()), units)
            : PageText.of(PlanPage.of(trip, PlanLines.of(trip, adjustment.get(), units)), why);
    return new Output(planner, console).write(text, out, file, force);
  }
}

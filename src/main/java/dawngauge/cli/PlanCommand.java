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
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Prints at which stops the tires are to be set, and to what. */
@Command(
    name = "plan",
    description =
        "Print the fewest stops at which the tires must be set so that they stay within their limits,"
            + " with the figures, beside other habits.")
final class PlanCommand extends TripCommand {

  @Mixin private final FormOption form = new FormOption();

  @Option(names = "--why", description = "With why there is no better plan; the text alone.")
  private boolean why;

  @Option(names = "--out", paramLabel = "FILE", description = "Write there instead.")
  private String out = TripArgument.STANDARD;

  @Option(names = "--force", description = "Let --out replace a file that exists.")
  private boolean force;

  PlanCommand(Planner planner, Console console) {
    super(planner, console);
  }

  @Override
  int run(Trip trip, UnitSystem units) {
    Outcome<Adjustment> adjustment = planner.plan(trip).adjustment();
    if (!adjustment.hasValue()) {
      return untimed(adjustment.problems());
    }
    String text =
        form.json()
            ? JsonPlan.of(trip, adjustment.get(), problems(adjustment.problems()), units)
            : PageText.of(PlanPage.of(trip, PlanLines.of(trip, adjustment.get(), units)), why);
    return write(text, out, force);
  }
}

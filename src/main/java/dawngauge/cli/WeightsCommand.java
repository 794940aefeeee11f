package dawngauge.cli;

import dawngauge.ledger.WorksheetPage;
import dawngauge.planner.Planner;
import dawngauge.problem.Outcome;
import dawngauge.quantity.UnitSystem;
import dawngauge.report.JsonWeights;
import dawngauge.report.PageText;
import dawngauge.trip.Trip;
import dawngauge.weights.ExpectedWeights;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Prints what axles and hitch can be expected to carry. */
@Command(
    name = "weights",
    description =
        "Print what axles and hitch can be expected to carry by the weight worksheet, beside their"
            + " ratings.")
final class WeightsCommand extends TripCommand {

  @Mixin private final FormOption form = new FormOption();

  @Option(names = "--why", description = "With how it is worked out; the text alone.")
  private boolean why;

  WeightsCommand(Planner planner, Console console) {
    super(planner, console);
  }

  @Override
  Outcome<Trip> opened() {
    return whole();
  }

  @Override
  int run(Trip trip, UnitSystem units) {
    ExpectedWeights weights = planner.plan(trip).expectedWeights();
    String text =
        form.json()
            ? JsonWeights.of(trip, weights, units)
            : PageText.of(WorksheetPage.of(trip, weights, units), why);
    return print(text);
  }
}

package dawngauge.cli;

import dawngauge.ledger.WorksheetPage;
import dawngauge.planner.Planner;
import dawngauge.problem.Outcome;
import dawngauge.quantity.UnitSystem;
import dawngauge.report.JsonWeights;
import dawngauge.report.PageText;
import dawngauge.trip.Trip;
import dawngauge.weights.ExpectedWeights;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Prints what axles and hitch can be expected to carry. */
@Command(
    name = "weights",
    description =
        "Print what axles and hitch can be expected to carry by the weight worksheet, beside their"
            + " ratings.")
final class WeightsCommand implements Callable<Integer> {

  private final Planner planner;
  private final Console console;

  @Parameters(index = "0", paramLabel = "FILE", description = "Trip file; - is standard input.")
  private String file = "";

  @Mixin private final FormOption form = new FormOption();

  @Mixin private final UnitsOption unitsOption = new UnitsOption();

  @Option(names = "--why", description = "With how it is worked out; the text alone.")
  private boolean why;

  WeightsCommand(Planner planner, Console console) {
    this.planner = planner;
    this.console = console;
  }

  @Override
  public Integer call() {
    Outcome<Trip> opened = TripArgument.open(planner, console, file);
    if (!opened.hasValue()) {
      return TripArgument.refuse(console, file, opened.problems());
    }
    Trip trip = opened.get();
    UnitSystem units = unitsOption.of(planner, trip);
    ExpectedWeights weights = planner.plan(trip).expectedWeights();
    String text =
        form.json()
            ? JsonWeights.of(trip, weights, units)
            : PageText.of(WorksheetPage.of(trip, weights, units), why);
    return new Output(planner, console).write(text, TripArgument.STANDARD, file, false);
  }
}

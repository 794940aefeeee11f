package dawngauge.cli;

import dawngauge.planner.Land;
import dawngauge.planner.Planner;
import dawngauge.problem.Outcome;
import dawngauge.quantity.UnitSystem;
import dawngauge.report.GroundText;
import dawngauge.trip.Trip;
import java.util.concurrent.Callable;
import java.util.stream.IntStream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** Prints what is known of the ground along a trip. */
@Command(
    name = "ground",
    description =
        "Print the lowest and highest ground of each leg, by estimate, the passes by it, and heights"
            + " of stops that cannot well be right.")
final class GroundCommand implements Callable<Integer> {

  private final Planner planner;
  private final Console console;

  @Parameters(index = "0", paramLabel = "FILE", description = "Trip file; - is standard input.")
  private String file = "";

  @Mixin private final UnitsOption unitsOption = new UnitsOption();

  GroundCommand(Planner planner, Console console) {
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
    var legs =
        IntStream.range(0, trip.route().legs().size()).mapToObj(leg -> Land.of(trip, leg)).toList();
    String text = GroundText.of(trip, legs, Land.doubts(trip), units);
    return new Output(planner, console).write(text, TripArgument.STANDARD, file, false);
  }
}

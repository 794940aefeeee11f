package dawngauge.cli;

import dawngauge.planner.Land;
import dawngauge.planner.Planner;
import dawngauge.quantity.UnitSystem;
import dawngauge.report.GroundText;
import dawngauge.trip.Trip;
import java.util.stream.IntStream;
import picocli.CommandLine.Command;

/** Prints what is known of the ground along a trip. */
@Command(
    name = "ground",
    description =
        "Print the lowest and highest ground of each leg, by estimate, the passes by it, and heights"
            + " of stops that cannot well be right.")
final class GroundCommand extends TripCommand {

  GroundCommand(Planner planner, Console console) {
    super(planner, console);
  }

  @Override
  int run(Trip trip, UnitSystem units) {
    var legs =
        IntStream.range(0, trip.route().legs().size()).mapToObj(leg -> Land.of(trip, leg)).toList();
    return print(GroundText.of(trip, legs, Land.doubts(trip), units));
  }
}

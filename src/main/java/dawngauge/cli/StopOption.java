package dawngauge.cli;

import dawngauge.problem.Outcome;
import dawngauge.trip.Trip;
import picocli.CommandLine.Option;

/** The stop that a command is asked about. */
final class StopOption {

  @Option(
      names = "--stop",
      required = true,
      paramLabel = "N|NAME",
      description = "Number of the stop (1 is the start) or an unambiguous part of its name.")
  private String stop = "";

  /** Its index in a trip. */
  Outcome<Integer> in(Trip trip) {
    return TypedNames.stop(trip, stop);
  }
}

package dawngauge.cli;

import dawngauge.problem.Outcome;
import dawngauge.trip.Trip;
import dawngauge.trip.WheelPosition;
import picocli.CommandLine.Option;

/** The tire that a command is asked about. */
final class TireOption {

  @Option(
      names = "--tire",
      required = true,
      paramLabel = "POSITION",
      description = "The tire: its words (\"trailer axle 2 left\") or short form (t2l).")
  private String tire = "";

  /** Its position on the rig of a trip. */
  Outcome<WheelPosition> in(Trip trip) {
    return TypedNames.position(trip, tire);
  }
}

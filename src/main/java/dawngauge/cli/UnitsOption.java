package dawngauge.cli;

import dawngauge.planner.Planner;
import dawngauge.quantity.UnitSystem;
import dawngauge.trip.Trip;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** The units shown: those asked for, else those of the trip's own pressures. */
final class UnitsOption {

  @Option(
      names = "--units",
      paramLabel = "us|si",
      description = "Units shown; unless given those of the trip's pressures, psi or bar.")
  private @Nullable UnitSystem asked;

  /** What is shown for a trip. */
  UnitSystem of(Planner planner, Trip trip) {
    UnitSystem units = asked;
    return units == null ? planner.store().units(trip) : units;
  }
}

package dawngauge.trip;

import dawngauge.problem.Outcome;
import dawngauge.problem.Problem;
import dawngauge.problem.ProblemCode;
import dawngauge.quantity.Entered;
import dawngauge.quantity.Temperature;
import java.time.LocalDate;
import java.util.Collection;
import org.jspecify.annotations.Nullable;

/** The air of several stops typed at once; see {@link AirEdits}. */
public final class GroupAir {

  private GroupAir() {}

  /** One temperature for the stays at all of some stops. */
  public static Trip withSteady(
      Trip trip, Collection<Integer> rows, Entered<Temperature> temperature) {
    Trip edited = trip;
    for (int row : GroupEdits.within(rows, trip.route().stops().size())) {
      edited = AirEdits.withSteady(edited, trip.route().stops().get(row).id(), temperature);
    }
    return edited;
  }

  /**
   * Low or high, or both, of each day on which the rig stands at some stops. What is null stays
   * what it is at each; where nothing is known of it yet, the other one stands for both.
   *
   * @param alone whether the one that is given has stood for both so far; where it does, it goes on
   *     to
   * @return the trip, or at which stop the low were above the high, or that no day is known
   */
  public static Outcome<Trip> withDays(
      Trip trip,
      Collection<Integer> rows,
      @Nullable Entered<Temperature> low,
      @Nullable Entered<Temperature> high,
      boolean alone) {
    Outcome<Trip> edited = Outcome.of(trip);
    boolean any = false;
    for (int row : GroupEdits.within(rows, trip.route().stops().size())) {
      Stop stop = trip.route().stops().get(row);
      for (LocalDate date : new StopClock(trip, row).days()) {
        StopAir air = StopAir.of(trip, stop.id());
        edited =
            AirEdits.withDay(
                edited.get(),
                stop.id(),
                date,
                low == null ? air.lowBeside(date, alone) : low,
                high == null ? air.highBeside(date, alone) : high);
        any = true;
        if (!edited.hasValue()) {
          return Outcome.failed(edited.problems().get(0).at(stop.place()));
        }
      }
    }
    return any ? edited : Outcome.failed(Problem.of(ProblemCode.NO_DAY_FOR_FIGURES, ""));
  }
}

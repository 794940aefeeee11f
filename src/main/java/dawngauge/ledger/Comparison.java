package dawngauge.ledger;

import dawngauge.advice.Advice;
import dawngauge.advice.Mark;
import dawngauge.quantity.UnitSystem;
import dawngauge.trip.Trip;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A plan held beside another one of the same route, stop by stop.
 *
 * @param summary what differs, in a sentence
 * @param stops every stop of the route
 */
public record Comparison(String summary, List<Line> stops) {

  /**
   * One stop under both plans.
   *
   * @param place its name
   * @param base its mark in the plan as it is
   * @param other its mark in the other one
   * @param baseAir the air there
   * @param otherAir the same in the other plan
   * @param baseMargin the lowest margin up to the next stop
   * @param otherMargin the same in the other plan
   * @param todo what is to be done there in the other plan alone
   * @param differs whether anything that is done differs
   */
  public record Line(
      String place,
      Mark base,
      Mark other,
      String baseAir,
      String otherAir,
      String baseMargin,
      String otherMargin,
      List<StopLine.Task> todo,
      boolean differs) {

    /** Copies the list. */
    public Line {
      todo = List.copyOf(todo);
    }
  }

  /** Copies the list. */
  public Comparison {
    stops = List.copyOf(stops);
  }

  /**
   * Compares.
   *
   * @param trip the route
   * @param base what follows from it as it is, or null where no time is known
   * @param other what would follow
   * @param units the units shown
   */
  public static Comparison of(
      Trip trip, @Nullable Advice base, @Nullable Advice other, UnitSystem units) {
    Ledger one = Ledger.of(trip, base, List.of(), List.of(), units, null);
    Ledger two = Ledger.of(trip, other, List.of(), List.of(), units, null);
    List<Line> lines = new ArrayList<>();
    List<String> changed = new ArrayList<>();
    for (int i = 0; i < one.stops().size(); i++) {
      StopLine was = one.stops().get(i);
      StopLine is = two.stops().get(i);
      List<StopLine.Task> fresh =
          is.tasks().stream()
              .filter(task -> task.mark() == Mark.HOLD || task.mark() == Mark.ADJUST)
              .filter(task -> !was.tasks().contains(task))
              .toList();
      boolean differs = was.mark() != is.mark() || !fresh.isEmpty();
      if (differs) {
        changed.add(was.place());
      }
      lines.add(
          new Line(
              was.place(),
              was.mark(),
              is.mark(),
              was.air(),
              is.air(),
              margin(was),
              margin(is),
              fresh,
              differs));
    }
    return new Comparison(summary(changed), lines);
  }

  private static String margin(StopLine line) {
    StopLine.TireRow tight = line.tightest();
    return tight == null ? "" : tight.margin() + " " + tight.tires();
  }

  private static String summary(List<String> changed) {
    if (changed.isEmpty()) {
      return "Nothing that is done on the way would change.";
    }
    return (changed.size() == 1
            ? "1 stop would change: "
            : changed.size() + " stops would change: ")
        + Wording.list(changed)
        + ".";
  }
}

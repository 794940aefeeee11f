package dawngauge.ledger;

import dawngauge.advice.Adjustment;
import dawngauge.advice.AdjustmentPlan;
import dawngauge.advice.PlanOutcome;
import dawngauge.quantity.Ratio;
import dawngauge.quantity.UnitSystem;
import dawngauge.trip.Itinerary;
import dawngauge.trip.Trip;
import dawngauge.trip.WheelPosition;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * An adjustment plan as it is shown: texts in the chosen units, without a toolkit.
 *
 * @param headline how many stops, and which
 * @param why in one line why there is none better
 * @param clashes limits that cannot be kept
 * @param stops every stop at which something can be set, with what is set there
 * @param leftOut tires that are not planned
 * @param habits the plan beside other ways of setting tires, the plan first
 */
public record PlanLines(
    String headline,
    String why,
    List<String> clashes,
    List<PlanStop> stops,
    List<String> leftOut,
    List<Habit> habits) {

  /**
   * A stop at which something can be set.
   *
   * @param visit index of the stop
   * @param planned whether the plan uses it
   * @param title number and place
   * @param when the latest time for it, in the stop's zone
   * @param lines tires with the same figure together; one without tires where none is set, that
   *     says what could be done
   * @param limits what those that are set are never set above; empty where none is or it is not
   *     known
   * @param minutes how long the crew's own compressor takes; empty where that is not known
   */
  public record PlanStop(
      int visit,
      boolean planned,
      String title,
      String when,
      List<Line> lines,
      String limits,
      String minutes) {

    /** What stands below the lines. */
    public List<String> beneath() {
      return Stream.of(limits, minutes).filter(text -> !text.isEmpty()).toList();
    }
  }

  /**
   * What to set some tires to.
   *
   * @param positions the tires
   * @param tires their short forms
   * @param figure what the gauge is to show
   * @param text what to do, with the tires in it
   * @param why what is expected before and at the next start, and what kept the figure so, for
   *     tires alike in that together
   */
  public record Line(
      List<WheelPosition> positions, String tires, String figure, String text, List<String> why) {}

  /**
   * A way of setting tires, and what it comes to.
   *
   * @param name what it is
   * @param outcome what it comes to
   * @param stops stops with gauge and hose
   * @param margin lowest load margin
   * @param chance highest chance of a tire under its floor
   * @param under time rolled with a tire expected under its floor
   * @param over days started with a cold tire over its limit
   * @param below days started with a tire low for its aim
   */
  public record Habit(
      String name,
      PlanOutcome outcome,
      String stops,
      String margin,
      String chance,
      String under,
      String over,
      String below) {}

  /** Copies the lists. */
  public PlanLines {
    clashes = List.copyOf(clashes);
    stops = List.copyOf(stops);
    leftOut = List.copyOf(leftOut);
    habits = List.copyOf(habits);
  }

  /**
   * The lines of a plan.
   *
   * @param trip the trip
   * @param adjustment the plan beside other habits
   * @param units the units to show
   */
  public static PlanLines of(Trip trip, Adjustment adjustment, UnitSystem units) {
    Itinerary itinerary = adjustment.itinerary();
    AdjustmentPlan plan = adjustment.plan();
    PlanWriter writer = new PlanWriter(trip, itinerary, units);
    List<PlanStop> stops = new ArrayList<>();
    for (int visit : plan.possible()) {
      stops.add(
          plan.stops().stream()
              .filter(planned -> planned.visit() == visit)
              .findFirst()
              .map(writer::stop)
              .orElseGet(() -> writer.unused(visit)));
    }
    List<String> clashes = writer.clashes(plan);
    List<String> leftOut =
        plan.leftOut().stream()
            .map(left -> left.position().words() + ": " + left.why().in(units))
            .toList();
    return new PlanLines(
        headline(plan, itinerary),
        Wording.begun(plan.why().in(units)) + ".",
        clashes,
        stops,
        leftOut,
        List.of(
            habit("this plan", adjustment.outcome()),
            habit("set each cold morning", adjustment.eachMorning()),
            habit("set once, at the first start", adjustment.once()),
            habit("nothing set", adjustment.never())));
  }

  private static String headline(AdjustmentPlan plan, Itinerary itinerary) {
    List<String> places = new ArrayList<>();
    for (AdjustmentPlan.Planned stop : plan.stops()) {
      places.add(itinerary.visits().get(stop.visit()).stop().place());
    }
    String proven = plan.proven() ? "." : "; not proven the fewest.";
    String stops =
        switch (places.size()) {
          case 0 -> "No stop with gauge and hose is needed";
          case 1 -> "One stop with gauge and hose: " + places.get(0);
          default -> places.size() + " stops with gauge and hose: " + Wording.list(places);
        };
    return plan.safe()
        ? stops + proven
        : "No plan keeps every limit. The least bad: " + stops + proven;
  }

  private static Habit habit(String name, PlanOutcome outcome) {
    return new Habit(
        name,
        outcome,
        String.valueOf(outcome.stops()),
        Wording.signedPercent(outcome.worstMargin()),
        Double.isNaN(outcome.worstChance())
            ? "–"
            : outcome.worstChance() < 0.005
                ? "under 1 %"
                : UnitSystem.US.format(new Ratio(outcome.worstChance())),
        outcome.secondsUnderFloor() < 30
            ? "none"
            : Wording.span(Duration.ofSeconds(Math.round(outcome.secondsUnderFloor()))),
        String.valueOf(outcome.startsOverLimit()),
        String.valueOf(outcome.startsUnderAim()));
  }
}

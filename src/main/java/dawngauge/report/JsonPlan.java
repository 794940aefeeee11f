package dawngauge.report;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dawngauge.advice.Adjustment;
import dawngauge.advice.AdjustmentPlan;
import dawngauge.advice.PlanOutcome;
import dawngauge.ledger.PlanLines;
import dawngauge.problem.Problem;
import dawngauge.quantity.Ratio;
import dawngauge.quantity.UnitSystem;
import dawngauge.trip.Itinerary;
import dawngauge.trip.LogEdits;
import dawngauge.trip.Tire;
import dawngauge.trip.Trip;
import dawngauge.trip.WheelPosition;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.OptionalDouble;

/** An adjustment plan beside other habits, as JSON. */
public final class JsonPlan {

  private static final double SECONDS_A_MINUTE = 60;

  private final JsonPage page;
  private final Trip trip;
  private final UnitSystem units;
  private final Adjustment adjustment;

  /** The tires that stand there once all is done that the log tells of. */
  private final Map<WheelPosition, Tire> fitted;

  private JsonPlan(JsonPage page, Trip trip, UnitSystem units, Adjustment adjustment) {
    this.page = page;
    this.trip = trip;
    this.units = units;
    this.adjustment = adjustment;
    this.fitted = LogEdits.fittedAt(trip, Instant.MAX);
  }

  /**
   * The text.
   *
   * @param trip the trip
   * @param adjustment the plan beside other habits
   * @param problems what is missing or assumed
   * @param units units of the sentences in it
   */
  public static String of(
      Trip trip, Adjustment adjustment, List<Problem> problems, UnitSystem units) {
    JsonPage page = new JsonPage("plan", trip, units);
    new JsonPlan(page, trip, units, adjustment).write();
    page.problems(problems);
    return page.text();
  }

  private void write() {
    ObjectNode root = page.root();
    AdjustmentPlan plan = adjustment.plan();
    PlanLines shown = PlanLines.of(trip, adjustment, units);
    root.put("headline", shown.headline());
    page.put(root, "why", plan.why());
    root.put("proven", plan.proven());
    ArrayNode stops = root.putArray("stops");
    plan.possible().forEach(visit -> stop(stops.addObject(), visit));
    ArrayNode clashes = root.putArray("clashes");
    for (AdjustmentPlan.Clash clash : plan.clashes()) {
      ObjectNode node = clashes.addObject();
      tire(node, clash.position());
      node.put("limit", JsonPage.word(clash.limit()));
      node.put("number", clash.visit() + 1);
      page.put(node, "text", clash.text());
    }
    ArrayNode leftOut = root.putArray("notPlanned");
    for (AdjustmentPlan.LeftOut left : plan.leftOut()) {
      ObjectNode node = leftOut.addObject();
      tire(node, left.position());
      page.put(node, "text", left.why());
    }
    ArrayNode ways = root.putArray("ways");
    shown.habits().forEach(habit -> way(ways.addObject(), habit));
  }

  private void tire(ObjectNode node, WheelPosition position) {
    page.tire(node, position, Objects.requireNonNull(fitted.get(position)).id());
  }

  private void stop(ObjectNode node, int index) {
    Itinerary.Visit visit = adjustment.itinerary().visits().get(index);
    JsonPage.stop(node, index, visit.stop());
    JsonPage.times(node, visit);
    Map<WheelPosition, AdjustmentPlan.PlannedSetting> settings = Map.of();
    boolean planned = false;
    for (AdjustmentPlan.Planned stop : adjustment.plan().stops()) {
      if (stop.visit() == index) {
        planned = true;
        settings = stop.settings();
      }
    }
    node.put("planned", planned);
    ArrayNode tires = node.putArray("tires");
    settings.forEach((position, setting) -> setting(tires.addObject(), position, setting));
  }

  private void setting(
      ObjectNode node, WheelPosition position, AdjustmentPlan.PlannedSetting setting) {
    tire(node, position);
    JsonPage.pressure(node, "expected", setting.now());
    TireFigures.set(setting.timed()).forEach((name, figure) -> JsonPage.put(node, name, figure));
    JsonPage.pressure(node, "aim", setting.aim());
    JsonPage.pressure(node, "ceiling", setting.ceiling());
    if (setting.nextStart() < 0) {
      node.putNull("nextStart");
    } else {
      node.put("nextStart", setting.nextStart() + 1);
    }
    JsonPage.pressure(node, "atNextStart", setting.atNextStart());
    OptionalDouble seconds = setting.compressorSeconds();
    if (seconds.isPresent()) {
      node.put("compressorSeconds", Math.round(seconds.getAsDouble()));
    } else {
      node.putNull("compressorSeconds");
    }
  }

  private static void way(ObjectNode node, PlanLines.Habit habit) {
    PlanOutcome outcome = habit.outcome();
    node.put("way", habit.name());
    node.put("stopsUsed", outcome.stops());
    JsonPage.put(node, "margin", outcome.worstMargin(), Ratio::new);
    JsonPage.put(node, "chanceUnderFloor", outcome.worstChance(), Ratio::new);
    node.put("minutesUnderFloor", Math.round(outcome.secondsUnderFloor() / SECONDS_A_MINUTE));
    node.put("startsOverLimit", outcome.startsOverLimit());
    node.put("startsUnderAim", outcome.startsUnderAim());
  }
}

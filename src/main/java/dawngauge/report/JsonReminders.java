package dawngauge.report;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dawngauge.advice.Advice;
import dawngauge.advice.Reminder;
import dawngauge.advice.StopAdvice;
import dawngauge.advice.TireAdvice;
import dawngauge.fitness.Defect;
import dawngauge.forecast.TireSnapshot;
import dawngauge.ledger.ReminderLine;
import dawngauge.problem.Problem;
import dawngauge.quantity.Quantity;
import dawngauge.quantity.UnitSystem;
import dawngauge.rules.FittedTire;
import dawngauge.trip.Itinerary;
import dawngauge.trip.Trip;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** When the crew is to look at the tires, as JSON. */
public final class JsonReminders {

  /** The figures of a tire that the crew needs who stands at it. */
  private static final List<String> FIGURES =
      List.of(
          "arriveReads",
          "arriveReadsSigma",
          "setCold",
          "setOnArrival",
          "setAt",
          "floor",
          "aim",
          "ceiling");

  private final JsonPage page;
  private final Advice advice;

  private JsonReminders(JsonPage page, Advice advice) {
    this.page = page;
    this.advice = advice;
  }

  /**
   * The text.
   *
   * @param trip the trip
   * @param advice what was computed
   * @param reminders in time order
   * @param lines the same reminders as they are shown
   * @param problems what is missing or assumed
   * @param fitness what is wrong with the rig, worst first
   * @param units units of the sentences in it
   */
  public static String of(
      Trip trip,
      Advice advice,
      List<Reminder> reminders,
      List<ReminderLine> lines,
      List<Problem> problems,
      List<Defect> fitness,
      UnitSystem units) {
    JsonPage page = new JsonPage("reminders", trip, units);
    page.fitness(fitness);
    JsonReminders document = new JsonReminders(page, advice);
    ArrayNode array = page.root().putArray("reminders");
    for (int i = 0; i < reminders.size(); i++) {
      document.reminder(array.addObject(), reminders.get(i), lines.get(i));
    }
    page.problems(problems);
    return page.text();
  }

  private void reminder(ObjectNode node, Reminder reminder, ReminderLine line) {
    StopAdvice stop = advice.stops().get(reminder.visit());
    Itinerary.Visit visit = stop.stop().visit();
    boolean before = reminder.reasons().contains(Reminder.Why.BEFORE_START);
    node.put("key", line.key());
    JsonPage.stop(node, visit.index(), visit.stop());
    node.put("start", Times.of(reminder.start(), visit.zone()));
    node.put("end", Times.of(reminder.end(), visit.zone()));
    boolean onTheWay = reminder.reasons().contains(Reminder.Why.WHEEL_CHANGED);
    node.put(
        "when",
        before ? JsonPage.word(Reminder.Why.BEFORE_START) : onTheWay ? "on the way" : "on arrival");
    node.put("cold", reminder.cold());
    JsonPage.strings(
        node, "occasions", reminder.reasons().stream().sorted().map(JsonPage::word).toList());
    ArrayNode alarms = node.putArray("alarmsMinutesBefore");
    line.alarms().stream().map(Duration::toMinutes).forEach(alarms::add);
    node.put("summary", line.summary());
    ArrayNode tires = node.putArray("tires");
    stop.tires().forEach(tire -> tire(tires.addObject(), tire));
  }

  private void tire(ObjectNode node, TireAdvice advised) {
    FittedTire fitted = advised.tire().fitted();
    page.tire(node, fitted.position(), fitted.tire().id());
    node.put("mark", advised.mark().word());
    TireSnapshot check = advised.tire().check();
    JsonPage.pressure(node, "expected", check == null ? Double.NaN : check.reading());
    JsonPage.pressure(node, "expectedSigma", check == null ? Double.NaN : check.readingSigma());
    Map<String, @Nullable Quantity> figures = TireFigures.of(advised);
    FIGURES.forEach(name -> JsonPage.put(node, name, figures.get(name)));
    page.reasons(node, advised.reasons());
  }
}

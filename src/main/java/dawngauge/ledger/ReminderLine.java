package dawngauge.ledger;

import dawngauge.advice.Advice;
import dawngauge.advice.Mark;
import dawngauge.advice.Reminder;
import dawngauge.advice.Reminders;
import dawngauge.explain.Terms;
import dawngauge.quantity.Distance;
import dawngauge.quantity.QuantityKind;
import dawngauge.trip.Itinerary;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;

/**
 * A reminder as it is shown, with the ledger's figures.
 *
 * @param key the same for the same reminder however the trip changes
 * @param summary one line
 * @param place name of the stop
 * @param text all that is to be done, line by line, complete by itself
 * @param start when to begin
 * @param end when to be done
 * @param zone the stop's zone
 * @param alarms how long before the start to be called
 */
public record ReminderLine(
    String key,
    String summary,
    String place,
    String text,
    Instant start,
    Instant end,
    ZoneId zone,
    List<Duration> alarms) {

  /** Copies the list. */
  public ReminderLine {
    alarms = List.copyOf(alarms);
  }

  /** The reminders of a trip with their texts, in the units of the ledger. */
  public static List<ReminderLine> all(Advice advice, List<Reminder> reminders, Ledger ledger) {
    List<ReminderLine> lines = new ArrayList<>();
    for (Reminder reminder : reminders) {
      List<String> first = lines.isEmpty() ? GoLines.few(ledger.go()) : List.of();
      ReminderLine line = of(advice, reminder, ledger, first);
      long before = lines.stream().filter(other -> other.key.startsWith(line.key)).count();
      lines.add(before == 0 ? line : line.again(before + 1));
    }
    return lines;
  }

  /** Another one of its kind on the same leg. */
  private ReminderLine again(long number) {
    return new ReminderLine(key + number, summary, place, text, start, end, zone, alarms);
  }

  private static ReminderLine of(
      Advice advice, Reminder reminder, Ledger ledger, List<String> first) {
    Itinerary.Visit visit = advice.stops().get(reminder.visit()).stop().visit();
    boolean wheel = reminder.reasons().contains(Reminder.Why.WHEEL_CHANGED);
    boolean before = reminder.reasons().contains(Reminder.Why.BEFORE_START);
    List<String> text =
        wheel ? wheelChanged(ledger) : tires(advice, reminder, ledger, first, before);
    List<Duration> alarms =
        before ? List.of(Duration.ofMinutes(15), Duration.ZERO) : List.of(Duration.ZERO);
    StopLine stop = ledger.stops().get(reminder.visit());
    boolean sets = asked(stop, visit, before).stream().anyMatch(line -> line.mark() == Mark.ADJUST);
    String verb = sets ? "Gauge and set" : "Gauge";
    String how = before ? (reminder.cold() ? ", cold: " : ", before the start: ") : " on arrival: ";
    return new ReminderLine(
        visit.stop().id() + (wheel ? "/wheel" : before ? "/start" : "/arrival"),
        wheel
            ? "Check the nuts of the changed wheel: after " + visit.stop().place()
            : verb + how + visit.stop().place(),
        visit.stop().place(),
        String.join("\n", text),
        reminder.start(),
        reminder.end(),
        visit.zone(),
        alarms);
  }

  /** Common practice, no source. */
  private static List<String> wheelChanged(Ledger ledger) {
    return List.of(
        ledger.units().format(Reminders.SOON)
            + " since the wheel change: stop where it is safe, tighten its nuts to the maker's torque"
            + " with a torque wrench, gauge the tire, look for a leak.");
  }

  private static List<String> tires(
      Advice advice, Reminder reminder, Ledger ledger, List<String> first, boolean before) {
    Itinerary.Visit visit = advice.stops().get(reminder.visit()).stop().visit();
    StopLine stop = ledger.stops().get(reminder.visit());
    List<String> text = new ArrayList<>(first);
    text.add(before ? beforeStart(reminder, visit) : onArrival(reminder));
    List<Card.Line> asked = asked(stop, visit, before);
    asked.forEach(line -> text.add(line.text()));
    String soon = soon(advice, reminder.visit(), ledger);
    if (!soon.isEmpty() && asked.stream().anyMatch(line -> line.mark() == Mark.ADJUST)) {
      text.add(soon);
    }
    text.add(capital(stop.air()) + ", " + stop.hose() + ".");
    String unit = ledger.units().unitOf(QuantityKind.GAUGE_PRESSURE).symbol();
    text.add(
        "In "
            + unit
            + ": expected (range), "
            + String.join(", ", Terms.LOWEST_SAFE, Terms.SET_COLD_TO, Terms.NEVER_OVER)
            + " cold.");
    for (StopLine.TireRow row : stop.rows()) {
      text.add(row(row, before));
    }
    text.add(Ledger.AT_THE_VALVE);
    return text;
  }

  /**
   * What is done then. On arrival no air is let out, and what is done cold waits; away from a day's
   * start what is done on arrival is done when the rig leaves.
   */
  private static List<Card.Line> asked(StopLine stop, Itinerary.Visit visit, boolean before) {
    boolean all = before && visit.firstStartOfDay();
    return stop.card().todo().stream()
        .filter(line -> all || line.mark() != Mark.ADJUST || before == line.onlyCold())
        .toList();
  }

  private static String beforeStart(Reminder reminder, Itinerary.Visit visit) {
    String leave = time(visit.leave(), visit.zone());
    return reminder.cold()
        ? "All tires, cold, "
            + Wording.clock(reminder.start(), visit.zone())
            + " to "
            + time(reminder.end(), visit.zone())
            + ", before sun or a mile warm them; start "
            + leave
            + ". Under its range: look for a leak."
        : "All tires, warm: parked under three hours before the start at "
            + leave
            + ". Let no air out. Under its range: look for a leak.";
  }

  private static String onArrival(Reminder reminder) {
    List<String> why = new ArrayList<>();
    if (reminder.reasons().contains(Reminder.Why.FIRST_STOP)) {
      why.add("first stop of the day");
    }
    if (reminder.reasons().contains(Reminder.Why.AFTER_SETTING)) {
      why.add("air was set before");
    }
    if (reminder.reasons().contains(Reminder.Why.SET_HERE)) {
      why.add("some are to be set");
    }
    return "All tires, warm: "
        + String.join(", ", why)
        + ". Let no air out. Under its range: look for a leak.";
  }

  /** Where air was set and the next stop is far. */
  private static String soon(Advice advice, int at, Ledger ledger) {
    Itinerary.Visit here = advice.stops().get(at).stop().visit();
    int next = at + 1;
    while (next < advice.stops().size() - 1 && advice.stops().get(next).stop().visit().passes()) {
      next++;
    }
    double meters =
        next < advice.stops().size()
            ? advice.stops().get(next).stop().visit().meters() - here.meters()
            : 0;
    return meters > Reminders.SOON.meters()
        ? "Next stop in "
            + ledger.units().format(new Distance(meters))
            + ": stop once within "
            + ledger.units().format(Reminders.SOON)
            + " to look at what was set."
        : "";
  }

  /** "t2r: 81 (78–84), 56, 80, 80". */
  private static String row(StopLine.TireRow row, boolean before) {
    String reads = before ? row.checkReads() : row.arriveReads();
    String range = before ? row.checkRange() : row.arriveRange();
    boolean known = before ? row.set() : row.read();
    return row.tires()
        + ": "
        + (known ? (before ? "set " : "read ") : "")
        + reads
        + (range.isEmpty() ? "" : " (" + range + ")")
        + ", "
        + row.floor()
        + ", "
        + row.aim()
        + ", "
        + row.ceiling();
  }

  private static String time(Instant instant, ZoneId zone) {
    return Wording.clock(instant, zone) + " " + Wording.zone(instant, zone);
  }

  private static String capital(String text) {
    return text.isEmpty() ? text : Character.toUpperCase(text.charAt(0)) + text.substring(1);
  }
}

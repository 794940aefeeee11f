package dawngauge.ledger;

import dawngauge.advice.Advice;
import dawngauge.advice.Mark;
import dawngauge.advice.Reminder;
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

  /** The first 50 miles after air was added, a flat or a wheel change. */
  private static final Distance SOON = new Distance(80467.2);

  /** Copies the list. */
  public ReminderLine {
    alarms = List.copyOf(alarms);
  }

  /** The reminders of a trip with their texts, in the units of the ledger. */
  public static List<ReminderLine> all(Advice advice, List<Reminder> reminders, Ledger ledger) {
    List<ReminderLine> lines = new ArrayList<>();
    for (Reminder reminder : reminders) {
      List<String> first = lines.isEmpty() ? GoLines.few(ledger.go()) : List.of();
      lines.add(of(advice, reminder, ledger, first));
    }
    return lines;
  }

  private static ReminderLine of(
      Advice advice, Reminder reminder, Ledger ledger, List<String> first) {
    Itinerary.Visit visit = advice.stops().get(reminder.visit()).stop().visit();
    StopLine stop = ledger.stops().get(reminder.visit());
    boolean before = reminder.reasons().contains(Reminder.Why.BEFORE_START);
    boolean sets = reminder.reasons().contains(Reminder.Why.SET_HERE);
    boolean setBefore = before && stop.rows().stream().anyMatch(StopLine.TireRow::set);
    String verb = sets || setBefore ? "Gauge and set the tires" : "Gauge the tires";
    String how = before ? (reminder.cold() ? " cold" : " before the start") : " on arrival";
    List<String> text = new ArrayList<>(first);
    if (before) {
      text.add(beforeStart(reminder, visit));
    } else {
      text.add(onArrival(advice, reminder, visit, ledger));
    }
    text.add("Air: " + stop.air() + ". " + capital(stop.hose()) + ".");
    text.add("");
    String unit = ledger.units().unitOf(QuantityKind.GAUGE_PRESSURE).symbol();
    text.add("Pressures in " + unit + "; the range holds 9 of 10 readings:");
    for (StopLine.TireRow row : stop.rows()) {
      text.add("- " + tire(row, before, Wording.clock(visit.leave(), visit.zone())));
    }
    if (!stop.tasks().isEmpty()) {
      text.add("");
      stop.tasks()
          .forEach(task -> text.add(task.mark().word() + ", " + task.tires() + ": " + task.text()));
    }
    text.add("");
    text.addAll(Ledger.CAUTIONS);
    text.add("");
    text.addAll(ledger.basis());
    List<Duration> alarms =
        before ? List.of(Duration.ofMinutes(15), Duration.ZERO) : List.of(Duration.ZERO);
    return new ReminderLine(
        visit.stop().id() + (before ? "/start" : "/arrival"),
        verb + how + ": " + visit.stop().place(),
        visit.stop().place(),
        String.join("\n", text),
        reminder.start(),
        reminder.end(),
        visit.zone(),
        alarms);
  }

  private static String beforeStart(Reminder reminder, Itinerary.Visit visit) {
    String leave = time(visit.leave(), visit.zone());
    return reminder.cold()
        ? "Gauge every tire cold from "
            + time(reminder.start(), visit.zone())
            + " and be done by "
            + time(reminder.end(), visit.zone())
            + ", before the sun reaches them. The start is planned for "
            + leave
            + ". The rig must not have been moved a mile. A tire that reads under its range: find"
            + " out why before it rolls."
        : "The tires will be warm: parked under three hours before the start at "
            + leave
            + ", so no cold reading is possible here. Gauge them before the start and compare with"
            + " the range; let no air out.";
  }

  private static String onArrival(
      Advice advice, Reminder reminder, Itinerary.Visit visit, Ledger ledger) {
    List<String> why = new ArrayList<>();
    if (reminder.reasons().contains(Reminder.Why.FIRST_STOP)) {
      why.add("the first stop of the day");
    }
    if (reminder.reasons().contains(Reminder.Why.AFTER_SETTING)) {
      why.add("the first stop after air was set");
    }
    if (reminder.reasons().contains(Reminder.Why.SET_HERE)) {
      why.add("where tires are to be set");
    }
    Itinerary.Visit begun = advice.stops().get(reminder.since()).stop().visit();
    double meters = visit.meters() - begun.meters();
    boolean far = reminder.reasons().contains(Reminder.Why.AFTER_SETTING) && meters > SOON.meters();
    return "On arrival, expected at "
        + time(visit.arrive(), visit.zone())
        + ": "
        + Wording.list(why)
        + ". The tires are warm: add where it is said, let no air out."
        + (far
            ? " It is "
                + ledger.units().format(new Distance(meters))
                + " on: after a flat, added air or a wheel that was off stop once within "
                + ledger.units().format(SOON)
                + "."
            : "");
  }

  private static String tire(StopLine.TireRow row, boolean before, String leave) {
    StringBuilder line = new StringBuilder(row.tires()).append(": ");
    if (before) {
      line.append(row.set() ? "set to " : "expected ").append(row.checkReads());
      line.append(row.checkRange().isEmpty() ? "" : " (" + row.checkRange() + ")");
    } else {
      line.append(row.read() ? "read " : "expected ").append(row.arriveReads());
      line.append(row.arriveRange().isEmpty() ? "" : " (" + row.arriveRange() + ")");
      if (row.set() && row.mark() == Mark.HOLD) {
        line.append(", on hold, see below; once it may roll");
      }
      if (row.set() && row.setOnArrival().isEmpty()) {
        line.append(", not on arrival: set to ").append(row.checkReads()).append(" at ");
        line.append(leave).append(", ").append(row.setCold()).append(" cold");
      } else if (row.set()) {
        line.append(", add to ").append(row.setOnArrival()).append(" on arrival (");
        line.append(row.checkReads()).append(" at ").append(leave);
        line.append(", ").append(row.setCold()).append(" cold)");
      }
    }
    String range = before ? row.checkRange() : row.arriveRange();
    int end = range.indexOf('–');
    line.append(end > 0 ? "; under " + range.substring(0, end) + ": find out why" : "");
    return line.append("; floor ")
        .append(row.floor())
        .append(", aim ")
        .append(row.aim())
        .append(", cold limit ")
        .append(row.ceiling())
        .toString();
  }

  private static String time(Instant instant, ZoneId zone) {
    return Wording.clock(instant, zone) + " " + Wording.zone(instant, zone);
  }

  private static String capital(String text) {
    return text.isEmpty() ? text : Character.toUpperCase(text.charAt(0)) + text.substring(1);
  }
}

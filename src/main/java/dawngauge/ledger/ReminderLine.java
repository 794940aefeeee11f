package dawngauge.ledger;

import dawngauge.advice.Advice;
import dawngauge.advice.Mark;
import dawngauge.advice.Reminder;
import dawngauge.advice.Reminders;
import dawngauge.explain.Terms;
import dawngauge.forecast.StopForecast;
import dawngauge.quantity.Distance;
import dawngauge.quantity.QuantityKind;
import dawngauge.quantity.Temperature;
import dawngauge.trip.Descents;
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
 * @param todo what to do, a line each
 * @param watch what else has to be known there
 * @param figures of the tires; none where it is not about pressures
 * @param start when to begin
 * @param end when to be done
 * @param zone the stop's zone
 * @param alarms how long before the start to be called
 */
public record ReminderLine(
    String key,
    String summary,
    String place,
    List<String> todo,
    List<String> watch,
    Figures figures,
    Instant start,
    Instant end,
    ZoneId zone,
    List<Duration> alarms) {

  /** In place of a range: the figure is to be set, or was read. */
  private static final List<String> KNOWN = List.of("set", "read");

  /**
   * Figures of the tires then.
   *
   * @param unit symbol of their unit
   * @param rows tires, expected, its range or how it is known, lowest safe, set cold to, never over
   */
  public record Figures(String unit, List<List<String>> rows) {

    /** Of a reminder that is not about pressures. */
    public static final Figures NONE = new Figures("", List.of());

    /** Copies the lists. */
    public Figures {
      rows = rows.stream().map(List::copyOf).toList();
    }

    private List<String> lines() {
      List<String> lines = new ArrayList<>();
      if (!rows.isEmpty()) {
        lines.add(
            "In "
                + unit
                + ": expected (range), "
                + String.join(", ", Terms.LOWEST_SAFE, Terms.SET_COLD_TO, Terms.NEVER_OVER)
                + " cold.");
      }
      for (List<String> row : rows) {
        String reads =
            KNOWN.contains(row.get(2))
                ? row.get(2) + " " + row.get(1)
                : row.get(1) + (row.get(2).isEmpty() ? "" : " (" + row.get(2) + ")");
        lines.add(row.get(0) + ": " + reads + ", " + String.join(", ", row.subList(3, 6)));
      }
      return lines;
    }
  }

  /** Copies the lists. */
  public ReminderLine {
    todo = List.copyOf(todo);
    watch = List.copyOf(watch);
    alarms = List.copyOf(alarms);
  }

  /** All that is to be done, line by line, complete by itself. */
  public String text() {
    List<String> lines = new ArrayList<>(todo);
    lines.addAll(watch);
    lines.addAll(figures.lines());
    if (!figures.rows().isEmpty()) {
      lines.add(Ledger.AT_THE_VALVE);
    }
    return String.join("\n", lines);
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
    return new ReminderLine(
        key + number, summary, place, todo, watch, figures, start, end, zone, alarms);
  }

  private static ReminderLine of(
      Advice advice, Reminder reminder, Ledger ledger, List<String> first) {
    StopForecast forecast = advice.stops().get(reminder.visit()).stop();
    Itinerary.Visit visit = forecast.visit();
    String place = visit.stop().place();
    if (reminder.reasons().contains(Reminder.Why.WHEEL_CHANGED)) {
      return new ReminderLine(
          visit.stop().id() + "/wheel",
          "Check the nuts of the changed wheel: after " + place,
          place,
          List.of(wheelChanged(ledger)),
          List.of(),
          Figures.NONE,
          reminder.start(),
          reminder.end(),
          visit.zone(),
          List.of(Duration.ZERO));
    }
    boolean before = reminder.reasons().contains(Reminder.Why.BEFORE_START);
    StopLine stop = ledger.stops().get(reminder.visit());
    List<Card.Line> asked = asked(stop, visit, before);
    boolean sets = asked.stream().anyMatch(line -> line.mark() == Mark.ADJUST);
    List<String> todo = new ArrayList<>(first);
    todo.add(before ? beforeStart(reminder, visit) : onArrival(reminder));
    if (!before
        && Descents.before(
            advice.forecast().trip().route(),
            at -> advice.stops().get(at).stop().visit().passes(),
            reminder.visit())) {
      todo.add("After the long descent " + Descents.HEED + ".");
    }
    asked.forEach(line -> todo.add(line.text()));
    String soon = sets ? soon(advice, reminder.visit(), ledger) : "";
    if (!soon.isEmpty()) {
      todo.add(soon);
    }
    double air = before ? forecast.airOnLeaving() : forecast.airOnArrival();
    String verb = sets ? "Gauge and set" : "Gauge";
    String how = before ? (reminder.cold() ? ", cold: " : ", before the start: ") : " on arrival: ";
    return new ReminderLine(
        visit.stop().id() + (before ? "/start" : "/arrival"),
        verb + how + place,
        place,
        todo,
        List.of(
            (before && reminder.cold() ? "" : "Let no air out. ")
                + "A tire under its range: look for a leak.",
            (Double.isNaN(air)
                    ? "Temperature not known"
                    : (before ? "On leaving " : "On arrival ")
                        + ledger.units().format(new Temperature(air)))
                + ", "
                + stop.hose()
                + "."),
        new Figures(
            ledger.units().unitOf(QuantityKind.GAUGE_PRESSURE).symbol(),
            stop.rows().stream().map(row -> row(row, before)).toList()),
        reminder.start(),
        reminder.end(),
        visit.zone(),
        before ? List.of(Duration.ofMinutes(15), Duration.ZERO) : List.of(Duration.ZERO));
  }

  /** Common practice, no source. */
  private static String wheelChanged(Ledger ledger) {
    return ledger.units().format(Reminders.SOON)
        + " since the wheel change: stop where it is safe, tighten its nuts to the maker's torque"
        + " with a torque wrench, gauge the tire, look for a leak.";
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
            + ", before sun or driving warms them; start "
            + leave
            + "."
        : "All tires, warm: parked under three hours before the start at " + leave + ".";
  }

  private static String onArrival(Reminder reminder) {
    List<String> why = new ArrayList<>();
    if (reminder.reasons().contains(Reminder.Why.FIRST_STOP)) {
      why.add("first stop of the day");
    }
    if (reminder.reasons().contains(Reminder.Why.AFTER_SETTING)) {
      why.add("air was set before");
    }
    return "All tires, warm" + (why.isEmpty() ? "." : ": " + String.join(", ", why) + ".");
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

  private static List<String> row(StopLine.TireRow row, boolean before) {
    boolean known = before ? row.set() : row.read();
    String range = before ? row.checkRange() : row.arriveRange();
    return List.of(
        row.tires(),
        before ? row.checkReads() : row.arriveReads(),
        known ? KNOWN.get(before ? 0 : 1) : range,
        row.floor(),
        row.aim(),
        row.ceiling());
  }

  private static String time(Instant instant, ZoneId zone) {
    return Wording.clock(instant, zone) + " " + Wording.zone(instant, zone);
  }
}

package dawngauge.ledger;

import dawngauge.trip.LogEdits;
import dawngauge.trip.LogEvent;
import dawngauge.trip.Stop;
import dawngauge.trip.Trip;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;

/**
 * One line of the log.
 *
 * @param index its place in the log
 * @param day its day, where it is another than that of the line before; else empty
 * @param time the clock then, with the zone's letters
 * @param what what was noted
 */
public record LogLine(int index, String day, String time, String what) {

  /** The whole log, in time order. */
  public static List<LogLine> of(Trip trip) {
    List<LogLine> lines = new ArrayList<>();
    String before = "";
    for (int i = 0; i < trip.log().size(); i++) {
      LogEvent event = trip.log().get(i);
      ZoneId zone = event.time().time().getZone();
      String day = Wording.day(event.time().instant(), zone);
      lines.add(
          new LogLine(
              i,
              day.equals(before) ? "" : day,
              Wording.clock(event.time().instant(), zone)
                  + " "
                  + Wording.zone(event.time().instant(), zone),
              what(trip, event)));
      before = day;
    }
    return lines;
  }

  private static String what(Trip trip, LogEvent event) {
    String note = event.remarks().note();
    return words(trip, event) + (note == null || note.isBlank() ? "" : " (" + note + ")");
  }

  private static String words(Trip trip, LogEvent event) {
    if (event instanceof LogEvent.Reading reading) {
      return place(trip, event, reading.tire())
          + ": "
          + reading.pressure().text()
          + ", "
          + reading.state().word()
          + ", "
          + reading.gauge()
          + (reading.air() == null ? "" : ", air " + reading.air().text());
    } else if (event instanceof LogEvent.Adjustment adjustment) {
      return place(trip, event, adjustment.tire())
          + ": set "
          + (adjustment.from() == null ? "" : "from " + adjustment.from().text() + " ")
          + "to "
          + adjustment.to().text()
          + ", "
          + adjustment.gauge();
    } else if (event instanceof LogEvent.TireChange change) {
      return change.position().words() + ": " + change.off() + " came off, " + change.on() + " on";
    } else if (event instanceof LogEvent.Arrived arrived) {
      return "arrived at " + stop(trip, arrived.stop());
    } else if (event instanceof LogEvent.Left left) {
      return "left " + stop(trip, left.stop());
    }
    return ((LogEvent.Note) event).text();
  }

  private static String place(Trip trip, LogEvent event, String tire) {
    return LogEdits.positionOf(trip, tire, event.time().instant())
        .map(trip.rig()::shortForm)
        .orElse("tire " + tire);
  }

  private static String stop(Trip trip, String id) {
    return trip.route().stop(id).map(Stop::place).orElse(id);
  }
}

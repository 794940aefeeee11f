package dawngauge.tripfile;

import dawngauge.trip.AmbientEntry;
import dawngauge.trip.LogEvent;
import dawngauge.trip.Rig;
import dawngauge.trip.Trip;
import dawngauge.trip.WheelPosition;
import java.util.List;

/** Holds expected air and log against the rig and the route. */
final class LogCheck {
  private LogCheck() {}

  static void check(Trip trip, Names names, Findings problems) {
    ambient(trip.ambient(), "/ambient/", names, problems);
    ambient(trip.earlierAmbient(), "/earlierAmbient/", names, problems);
    TimeOrder order = new TimeOrder(problems);
    for (int i = 0; i < trip.log().size(); i++) {
      LogEvent event = trip.log().get(i);
      String place = "/log/" + i;
      order.next(event.time(), place + "/time");
      references(event, place, trip.rig(), names, problems);
    }
  }

  private static void ambient(
      List<AmbientEntry> entries, String list, Names names, Findings problems) {
    for (int i = 0; i < entries.size(); i++) {
      AmbientEntry entry = entries.get(i);
      names.require("stop", entry.stop(), list + i + "/stop");
      if (entry.figure() instanceof AmbientEntry.Hourly hourly) {
        TimeOrder order = new TimeOrder(problems);
        for (int h = 0; h < hourly.hours().size(); h++) {
          order.next(hourly.hours().get(h).time(), list + i + "/hours/" + h + "/time");
        }
      }
    }
  }

  private static void references(
      LogEvent event, String place, Rig rig, Names names, Findings problems) {
    if (event instanceof LogEvent.Reading reading) {
      names.require("tire", reading.tire(), place + "/tire");
      names.require("gauge", reading.gauge(), place + "/gauge");
    } else if (event instanceof LogEvent.Adjustment adjustment) {
      names.require("tire", adjustment.tire(), place + "/tire");
      names.require("gauge", adjustment.gauge(), place + "/gauge");
    } else if (event instanceof LogEvent.TireChange change) {
      names.require("tire", change.off(), place + "/off");
      names.require("tire", change.on(), place + "/on");
      position(change.position(), place + "/position", rig, names, problems);
    } else if (event instanceof LogEvent.Arrived arrived) {
      names.require("stop", arrived.stop(), place + "/stop");
    } else if (event instanceof LogEvent.Left left) {
      names.require("stop", left.stop(), place + "/stop");
    }
  }

  private static void position(
      WheelPosition position, String place, Rig rig, Names names, Findings problems) {
    if (names.requireAxle(position.axle(), place)) {
      rig.axle(position.axle())
          .ifPresent(
              axle -> RigCheck.slotFits(position.slot(), axle, position.axle(), place, problems));
    }
  }
}

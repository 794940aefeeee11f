package dawngauge.tripfile;

import dawngauge.field.TripCodecs;
import dawngauge.problem.Problem;
import dawngauge.problem.ProblemCode;
import dawngauge.trip.AmbientEntry;
import dawngauge.trip.LogEvent;
import dawngauge.trip.PlanChoices;
import dawngauge.trip.Rig;
import dawngauge.trip.Trip;
import dawngauge.trip.WheelPosition;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Holds expected air, log and plan against the rig and the route. */
final class LogCheck {
  private LogCheck() {}

  static void check(Trip trip, DeclaredNames names, FileProblems problems) {
    ambient(trip.ambient(), "/ambient/", names, problems);
    ambient(trip.earlierAmbient(), "/earlierAmbient/", names, problems);
    TimeOrder order = new TimeOrder(problems);
    for (int i = 0; i < trip.log().size(); i++) {
      LogEvent event = trip.log().get(i);
      String place = "/log/" + i;
      order.next(event.time(), place + "/time");
      references(event, place, trip.rig(), names, problems);
    }
    plan(trip, names, problems);
  }

  private static void plan(Trip trip, DeclaredNames names, FileProblems problems) {
    Set<String> stops = new HashSet<>();
    for (int i = 0; i < trip.plan().wishes().size(); i++) {
      PlanChoices.Wish wish = trip.plan().wishes().get(i);
      String place = "/plan/stops/" + i;
      names.require("stop", wish.stop(), place + "/stop");
      if (!stops.add(wish.stop())) {
        problems.add(Problem.of(ProblemCode.WISH_TWICE, place + "/stop", wish.stop()));
      }
      if (wish.kind() == PlanChoices.Kind.NOT_HERE && !wish.figures().isEmpty()) {
        problems.add(Problem.of(ProblemCode.FIGURES_NOT_HERE, place + "/figures", wish.stop()));
      }
      for (WheelPosition position : wish.figures().keySet()) {
        String figure =
            ValueReader.under(place + "/figures", TripCodecs.POSITION.text().apply(position));
        position(position, figure, trip.rig(), names, problems);
      }
    }
  }

  private static void ambient(
      List<AmbientEntry> entries, String list, DeclaredNames names, FileProblems problems) {
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
      LogEvent event, String place, Rig rig, DeclaredNames names, FileProblems problems) {
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
      WheelPosition position, String place, Rig rig, DeclaredNames names, FileProblems problems) {
    if (names.requireAxle(position.axle(), place)) {
      rig.axle(position.axle())
          .ifPresent(
              axle -> RigCheck.slotFits(position.slot(), axle, position.axle(), place, problems));
    }
  }
}

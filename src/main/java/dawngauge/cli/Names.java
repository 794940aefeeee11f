package dawngauge.cli;

import dawngauge.problem.Outcome;
import dawngauge.problem.Problem;
import dawngauge.problem.ProblemCode;
import dawngauge.trip.Stop;
import dawngauge.trip.Trip;
import dawngauge.trip.WheelPosition;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** Finds the stops and positions that a person names on the command line. */
final class Names {

  private Names() {}

  /** A position by its words or its short form. */
  static Outcome<WheelPosition> position(Trip trip, String name) {
    for (WheelPosition position : trip.rig().positions()) {
      if (name.equalsIgnoreCase(position.words())
          || name.equalsIgnoreCase(trip.rig().shortForm(position))) {
        return Outcome.of(position);
      }
    }
    String known =
        trip.rig().positions().stream()
            .map(trip.rig()::shortForm)
            .collect(Collectors.joining(", "));
    return Outcome.failed(
        Problem.of(ProblemCode.NO_SUCH_POSITION, "", name, known.isEmpty() ? "none" : known));
  }

  /** Index of a stop by its number (1 first) or an unambiguous part of its name. */
  static Outcome<Integer> stop(Trip trip, String name) {
    List<Stop> stops = trip.route().stops();
    if (name.matches("[0-9]{1,6}")) {
      int number = Integer.parseInt(name);
      return number >= 1 && number <= stops.size()
          ? Outcome.of(number - 1)
          : Outcome.failed(
              Problem.of(ProblemCode.NO_SUCH_STOP_NUMBER, "", name, String.valueOf(stops.size())));
    }
    List<Integer> found = new ArrayList<>();
    String wanted = name.toLowerCase(Locale.ROOT);
    for (int i = 0; i < stops.size(); i++) {
      String place = stops.get(i).place().toLowerCase(Locale.ROOT);
      if (place.equals(wanted) || stops.get(i).id().equals(name)) {
        return Outcome.of(i);
      }
      if (place.contains(wanted)) {
        found.add(i);
      }
    }
    if (found.size() == 1) {
      return Outcome.of(found.get(0));
    }
    String known =
        (found.isEmpty() ? stops : found.stream().map(stops::get).toList())
            .stream().map(Stop::place).collect(Collectors.joining(", "));
    return Outcome.failed(
        Problem.of(
            found.isEmpty() ? ProblemCode.NO_SUCH_STOP : ProblemCode.AMBIGUOUS_STOP,
            "",
            name,
            known));
  }
}

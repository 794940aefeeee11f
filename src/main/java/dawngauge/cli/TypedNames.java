package dawngauge.cli;

import dawngauge.problem.Outcome;
import dawngauge.problem.Problem;
import dawngauge.problem.ProblemCode;
import dawngauge.trip.Stop;
import dawngauge.trip.Trip;
import dawngauge.trip.WheelPosition;
import java.text.Normalizer;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** Finds the stops and positions that a person names on the command line. */
final class TypedNames {

  private TypedNames() {}

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
    List<Integer> whole = new ArrayList<>();
    List<Integer> parts = new ArrayList<>();
    String wanted = plain(name);
    for (int i = 0; i < stops.size(); i++) {
      if (stops.get(i).id().equals(name)) {
        return Outcome.of(i);
      }
      String place = plain(stops.get(i).place());
      if (place.equals(wanted)) {
        whole.add(i);
      }
      if (place.contains(wanted)) {
        parts.add(i);
      }
    }
    List<Integer> found = whole.isEmpty() ? parts : whole;
    if (found.size() == 1) {
      return Outcome.of(found.get(0));
    }
    boolean none = found.isEmpty() || wanted.isEmpty();
    String known =
        IntStream.range(0, stops.size())
            .filter(i -> none || found.contains(i))
            .mapToObj(i -> (i + 1) + " " + stops.get(i).place())
            .collect(Collectors.joining(", "));
    return Outcome.failed(
        Problem.of(none ? ProblemCode.NO_SUCH_STOP : ProblemCode.AMBIGUOUS_STOP, "", name, known));
  }

  /** Small letters, accents always composed. */
  private static String plain(String name) {
    return Normalizer.normalize(name, Normalizer.Form.NFC).strip().toLowerCase(Locale.ROOT);
  }
}

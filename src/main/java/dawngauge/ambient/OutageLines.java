package dawngauge.ambient;

import dawngauge.problem.Problem;
import dawngauge.problem.ProblemCode;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * What services could not do, one line a reason with its places by name: an outage at forty places
 * is one line, also where several services fail alike.
 */
final class OutageLines {

  /** What is the services' fault or that of the way there, not of a place or a date. */
  static final Set<ProblemCode> OF_SERVICES =
      EnumSet.of(
          ProblemCode.FEED_UNREACHABLE,
          ProblemCode.FEED_BUSY,
          ProblemCode.FEED_SLOW,
          ProblemCode.FEED_TIME_OVER,
          ProblemCode.FEED_DENIED,
          ProblemCode.FEED_REJECTED,
          ProblemCode.FEED_FAILED,
          ProblemCode.FEED_NOT_UNDERSTOOD,
          ProblemCode.FEED_TOO_LARGE,
          ProblemCode.FEED_REDIRECTED,
          ProblemCode.FEED_IMPLAUSIBLE);

  private static final int MOST_NAMED = 6;

  private final Map<Problem, Set<String>> places = new LinkedHashMap<>();

  /** Takes the problems of one place. */
  void add(String place, List<Problem> problems) {
    for (Problem problem : problems) {
      places.computeIfAbsent(problem.at(""), p -> new LinkedHashSet<>()).add(place);
    }
  }

  /** Each once, in the order met. */
  List<Problem> problems() {
    Map<Problem, Set<String>> lines = new LinkedHashMap<>();
    places.forEach(
        (problem, where) -> {
          Problem like = merged(lines, problem, where);
          lines.put(like, where);
        });
    List<Problem> all = new ArrayList<>();
    lines.forEach((problem, where) -> all.add(problem.at(named(List.copyOf(where)))));
    return all;
  }

  /** A problem, with the service that cannot be reached likewise at the same places. */
  private static Problem merged(
      Map<Problem, Set<String>> lines, Problem problem, Set<String> where) {
    if (problem.code() != ProblemCode.FEED_UNREACHABLE) {
      return problem;
    }
    for (Map.Entry<Problem, Set<String>> line : lines.entrySet()) {
      List<String> said = line.getKey().arguments();
      boolean alike =
          line.getKey().code() == problem.code()
              && said.get(1).equals(problem.arguments().get(1))
              && line.getValue().equals(where);
      if (alike) {
        lines.remove(line.getKey());
        return Problem.of(
            problem.code(), "", said.get(0) + " and " + problem.arguments().get(0), said.get(1));
      }
    }
    return problem;
  }

  private static String named(List<String> names) {
    int shown = names.size() <= MOST_NAMED + 1 ? names.size() : MOST_NAMED;
    String first = String.join(", ", names.subList(0, shown));
    return shown == names.size()
        ? first
        : first + " and " + (names.size() - shown) + " more places";
  }
}

package dawngauge.cli;

import dawngauge.planner.Planner;
import dawngauge.problem.Outcome;
import dawngauge.problem.Problem;
import dawngauge.problem.ProblemCode;
import dawngauge.trip.Trip;
import java.util.ArrayList;
import java.util.List;

/** Opens the trip file a command names; "-" is standard input. */
final class TripArgument {

  /** Stands for standard input or output. */
  static final String STANDARD = "-";

  private TripArgument() {}

  static Outcome<Trip> open(Planner planner, Console console, String file) {
    if (file.equals(STANDARD)) {
      return told(console, file, planner.store().open(console.in()));
    }
    return told(console, file, FileNames.path(file).then(planner.store()::open));
  }

  /** Whether there is something to read; it may turn out to be no trip. */
  static boolean isThere(Planner planner, String file) {
    return FileNames.path(file).value().flatMap(planner.store()::fingerprint).isPresent();
  }

  /** Says so, beside the result, where a file is of an older version. */
  private static Outcome<Trip> told(Console console, String file, Outcome<Trip> opened) {
    opened.problems().stream()
        .filter(TripArgument::isVersion)
        .forEach(problem -> console.err().println(shown(file) + ": " + problem.text()));
    return opened;
  }

  private static boolean isVersion(Problem problem) {
    return problem.code() == ProblemCode.OLDER_VERSION;
  }

  private static String shown(String file) {
    return file.equals(STANDARD) ? "standard input" : file;
  }

  /** The same for printing: names and notes that are too long are shortened. */
  static Outcome<Trip> toShow(Planner planner, Console console, String file) {
    return open(planner, console, file).map(planner.store()::shown);
  }

  /** What the reader of the file told of the trip and what came up after it, each once. */
  static List<Problem> problems(List<Problem> told, List<Problem> later) {
    List<Problem> problems = new ArrayList<>(told);
    problems.removeIf(TripArgument::isVersion);
    later.stream().filter(problem -> !repeats(problem, told)).forEach(problems::add);
    return problems;
  }

  /** The file's reader tells of a missing departure too, with its place in the file. */
  private static boolean repeats(Problem problem, List<Problem> told) {
    return told.contains(problem)
        || (problem.code() == ProblemCode.NO_DEPARTURE
            && told.stream().anyMatch(other -> other.code() == problem.code()));
  }

  /** Says what keeps the times of a sound trip from being known, and gives the exit code for it. */
  static int untimed(Console console, String file, List<Problem> problems) {
    console
        .err()
        .println(shown(file) + ": no time on the way is known, so there is nothing to plan");
    problems.forEach(problem -> console.err().println(problem.message()));
    return ExitCode.CONTENT;
  }

  /** Prints what is wrong with a file, all of it, and gives the exit code for it. */
  static int refuse(Console console, String file, List<Problem> problems) {
    String name = shown(file);
    List<Problem> shown =
        problems.stream()
            .filter(
                problem ->
                    problem.code().severity() == ProblemCode.Severity.ERROR
                        || problem.code() == ProblemCode.MORE_PROBLEMS)
            .toList();
    int code = ExitCode.CONTENT;
    for (Problem problem : shown) {
      boolean missing =
          problem.code() == ProblemCode.NO_SUCH_FILE
              || problem.code() == ProblemCode.NAME_BEYOND_LOCALE;
      boolean unreadable = problem.code() == ProblemCode.CANNOT_READ;
      console
          .err()
          .println(missing || unreadable ? problem.text() : name + ": " + problem.message());
      if (missing) {
        code = ExitCode.NO_FILE;
      } else if (unreadable) {
        code = ExitCode.CANNOT_READ;
      }
    }
    return code;
  }
}

package dawngauge.cli;

import dawngauge.planner.Planner;
import dawngauge.problem.Outcome;
import dawngauge.problem.Problem;
import dawngauge.problem.ProblemCode;
import dawngauge.trip.Trip;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;

/** Opens the trip file a command names; "-" is standard input. */
final class TripArgument {

  private TripArgument() {}

  static Outcome<Trip> open(Planner planner, Console console, String file) {
    if (file.equals("-")) {
      return planner.open(console.in());
    }
    try {
      return planner.open(Path.of(file));
    } catch (InvalidPathException e) {
      return Outcome.failed(Problem.of(ProblemCode.NO_SUCH_FILE, "", file));
    }
  }

  /** Prints what is wrong with a file and gives the exit code for it. */
  static int refuse(Console console, String file, List<Problem> problems) {
    List<Problem> errors =
        problems.stream().filter(p -> p.code().severity() == ProblemCode.Severity.ERROR).toList();
    for (Problem problem : errors) {
      boolean namesFile =
          problem.code() == ProblemCode.NO_SUCH_FILE || problem.code() == ProblemCode.CANNOT_READ;
      console.err().println(namesFile ? problem.text() : file + " " + problem.message());
    }
    if (errors.size() > 1) {
      console.err().println(errors.size() + " problems; the file was left as it is.");
    }
    if (errors.stream().anyMatch(p -> p.code() == ProblemCode.NO_SUCH_FILE)) {
      return ExitCode.NO_FILE;
    }
    return errors.stream().anyMatch(p -> p.code() == ProblemCode.CANNOT_READ)
        ? ExitCode.CANNOT_READ
        : ExitCode.CONTENT;
  }
}

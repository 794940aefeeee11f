package dawngauge.cli;

import dawngauge.planner.Planner;
import dawngauge.problem.Outcome;
import dawngauge.problem.Problem;
import dawngauge.problem.ProblemCode;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** Puts a result where the user wants it, never over a file without leave. */
final class Output {

  private final Planner planner;
  private final Console console;

  Output(Planner planner, Console console) {
    this.planner = planner;
    this.console = console;
  }

  /**
   * Writes a result.
   *
   * @param text the result
   * @param target name of a file, or "-" for standard output
   * @param trip name of the trip file it comes from, or "-"
   * @param force whether a file that exists may be replaced
   * @return the exit code
   */
  int write(String text, String target, String trip, boolean force) {
    if (target.equals(TripArgument.STANDARD)) {
      console.out().print(text);
      if (console.out().checkError()) {
        if (console.out() instanceof StandardOutput standard && standard.isReaderGone()) {
          return ExitCode.DONE;
        }
        console.err().println("standard output cannot be written");
        return ExitCode.CANNOT_WRITE;
      }
      return ExitCode.DONE;
    }
    return told(target, file -> planner.store().write(text, file, tripPath(trip), force));
  }

  /** The same with a result in bytes, which is never written to standard output. */
  int write(byte[] result, String target, String trip, boolean force) {
    return told(target, file -> planner.store().write(result, file, tripPath(trip), force));
  }

  /** What stands in a file that is to be brought up to date; empty where there is none. */
  Optional<Outcome<String>> existing(String target) {
    Path file = path(target);
    return file == null ? Optional.empty() : planner.store().existing(file);
  }

  private int told(String target, Function<Path, Optional<Problem>> writing) {
    Outcome<Path> file = FileNames.path(target);
    Optional<Problem> problem =
        file.hasValue() ? writing.apply(file.get()) : Optional.of(unwritable(target, file));
    problem.ifPresent(it -> console.err().println(it.text()));
    return problem.isEmpty() ? ExitCode.DONE : ExitCode.CANNOT_WRITE;
  }

  private static @Nullable Path tripPath(String trip) {
    return trip.equals(TripArgument.STANDARD) ? null : path(trip);
  }

  private static Problem unwritable(String target, Outcome<Path> file) {
    Problem problem = file.problems().get(0);
    return problem.code() == ProblemCode.NAME_BEYOND_LOCALE
        ? problem
        : Problem.of(ProblemCode.CANNOT_WRITE, "", target, "no such name can be");
  }

  private static @Nullable Path path(String name) {
    return FileNames.path(name).valueOrNull();
  }
}

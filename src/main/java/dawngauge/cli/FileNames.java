package dawngauge.cli;

import dawngauge.problem.Outcome;
import dawngauge.problem.Problem;
import dawngauge.problem.ProblemCode;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;

/** Names of files as they were typed. */
final class FileNames {

  /** What stands for letters that the locale cannot hold. */
  private static final char LOST = '\uFFFD';

  private FileNames() {}

  /** The file of a name; else why it cannot be one. */
  static Outcome<Path> path(String name) {
    try {
      return Outcome.of(Path.of(name));
    } catch (InvalidPathException impossible) {
      boolean lost = name.chars().anyMatch(letter -> letter == LOST || letter > 0x7F);
      return Outcome.failed(
          lost
              ? Problem.of(
                  ProblemCode.NAME_BEYOND_LOCALE,
                  "",
                  name,
                  System.getProperty("sun.jnu.encoding", "this system"))
              : Problem.of(ProblemCode.NO_SUCH_FILE, "", name));
    }
  }
}

package dawngauge.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;

/** Writes a result where the user wants it, never over a file without leave. */
final class Output {

  private Output() {}

  static int write(Console console, String target, boolean force, String text) {
    if (target.equals("-")) {
      console.out().print(text);
      console.out().flush();
      return console.out().checkError() ? ExitCode.CANNOT_READ : ExitCode.DONE;
    }
    try {
      Path path = Path.of(target);
      if (Files.exists(path) && !force) {
        console.err().println(target + " exists; add --force to replace it, or name another file");
        return ExitCode.CANNOT_WRITE;
      }
      Files.writeString(
          path,
          text,
          StandardCharsets.UTF_8,
          StandardOpenOption.CREATE,
          StandardOpenOption.TRUNCATE_EXISTING,
          StandardOpenOption.WRITE);
      return ExitCode.DONE;
    } catch (IOException | InvalidPathException e) {
      console.err().println(target + " cannot be written; name another file or folder");
      return ExitCode.CANNOT_WRITE;
    }
  }
}

package dawngauge.cli;

import dawngauge.planner.Planner;
import dawngauge.settings.SettingsFile;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/**
 * One run of a command in this process.
 *
 * @param code exit code
 * @param out what it printed
 * @param err its messages
 */
public record Run(int code, String out, String err) {
  static final String DEMO = Path.of("demo-data", "spring-fleece-haul.dawngauge").toString();

  /** Its first hours, with no temperature for Raton NM. */
  static final String GAP = Path.of("demo-data", "gap-haul.dawngauge").toString();

  static final Path SAMPLES = Path.of("src", "test", "resources", "dawngauge", "tripfile");

  static Run of(String... arguments) {
    return with(InputStream.nullInputStream(), arguments);
  }

  /** Runs it with a trip on standard input. */
  public static Run ofText(String trip, String... arguments) {
    return with(new ByteArrayInputStream(trip.getBytes(StandardCharsets.UTF_8)), arguments);
  }

  static Run with(InputStream in, String... arguments) {
    return with(planner(), in, arguments);
  }

  static Run with(Planner planner, InputStream in, String... arguments) {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    Console console = new Console(in, new PrintWriter(out), new PrintWriter(err));
    int code = Cli.run(planner, console, arguments);
    console.out().flush();
    console.err().flush();
    return new Run(code, out.toString(), err.toString());
  }

  static Planner planner() {
    return new Planner(SettingsFile.defaults(), List.of());
  }

  static String sample(String name) {
    return SAMPLES.resolve(name + ".dawngauge").toString();
  }

  static String text(String file) {
    try {
      return Files.readString(Path.of(file));
    } catch (IOException failure) {
      throw new UncheckedIOException(failure);
    }
  }
}

package dawngauge.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Results land where they are wanted, and never over a file without leave. */
class OutputTest {
  private final Path folder;

  OutputTest(@TempDir Path folder) {
    this.folder = folder;
  }

  private static Run write(Path target, String... further) {
    String[] typed =
        Stream.concat(
                Stream.of("forecast", Run.DEMO, "--out", target.toString()), Stream.of(further))
            .toArray(String[]::new);
    return Run.of(typed);
  }

  @Test
  void aNewFileHoldsWhatWouldHaveBeenPrinted() throws IOException {
    Path target = folder.resolve("forecast.txt");
    Run run = write(target);
    assertThat(run).isEqualTo(new Run(0, "", ""));
    assertThat(Files.readString(target)).isEqualTo(Run.of("forecast", Run.DEMO).out());
    assertThat(Run.of("forecast", Run.DEMO, "--out", "-").out())
        .isEqualTo(Files.readString(target));
  }

  @Test
  void aFileThatExistsIsReplacedOnlyWithForceAndWhole() throws IOException {
    Path target = Files.writeString(folder.resolve("forecast.txt"), "x".repeat(1 << 20));
    Run refused = write(target);
    assertThat(refused.code()).isEqualTo(73);
    assertThat(refused.err()).contains("forecast.txt").contains("--force");
    assertThat(Files.size(target)).isEqualTo(1 << 20);
    assertThat(write(target, "--force").code()).isZero();
    assertThat(Files.readString(target)).isEqualTo(Run.of("forecast", Run.DEMO).out());
    assertThat(files()).containsExactly("forecast.txt");
  }

  @Test
  void aFolderOrAMissingOneCannotBeWritten() {
    for (Path target : List.of(folder, folder.resolve("none").resolve("forecast.txt"))) {
      Run run = write(target, "--force");
      assertThat(run.code()).isEqualTo(73);
      assertThat(run.out()).isEmpty();
      assertThat(run.err()).contains("cannot be written").doesNotContain("Exception");
    }
    assertThat(Run.of("forecast", Run.DEMO, "--out", "a\0b").code()).isEqualTo(73);
    assertThat(files()).isEmpty();
  }

  @Test
  void theTripFileItselfIsNeverReplaced() throws IOException {
    Path trip = Files.copy(Path.of(Run.DEMO), folder.resolve("haul.json"));
    Path detour = folder.resolve(".").resolve("haul.json");
    Run run = Run.of("forecast", trip.toString(), "--out", detour.toString(), "--force");
    assertThat(run.code()).isEqualTo(73);
    assertThat(run.err()).contains("the trip file itself");
    assertThat(Files.readString(trip)).isEqualTo(Run.text(Run.DEMO));
  }

  @Test
  void nothingIsWrittenWhenTheTripIsBad() {
    Run run =
        Run.of("forecast", Run.sample("empty"), "--out", folder.resolve("forecast.txt").toString());
    assertThat(run.code()).isEqualTo(65);
    assertThat(files()).isEmpty();
  }

  @Test
  void standardOutputThatFailsIs73() {
    Writer full =
        new Writer() {
          @Override
          public void write(char[] text, int from, int length) throws IOException {
            throw new IOException("no space");
          }

          @Override
          public void flush() {}

          @Override
          public void close() {}
        };
    StringWriter err = new StringWriter();
    Console console =
        new Console(
            InputStream.nullInputStream(), new PrintWriter(full), new PrintWriter(err, true));
    assertThat(Cli.run(Run.planner(), console, "forecast", Run.DEMO)).isEqualTo(73);
    assertThat(err.toString().strip()).isEqualTo("standard output cannot be written");
  }

  @Test
  void csvTellsWhatIsMissingOnStandardError() {
    Run run = Run.of("forecast", Run.GAP, "--format", "csv");
    assertThat(run.code()).isZero();
    assertThat(run.err()).contains("Raton NM: no air temperature");
    assertThat(Run.of("forecast", Run.DEMO, "--format", "json").err()).isEmpty();
  }

  @Test
  void aStarterIsASoundTripFileAndReplacesNothing() throws IOException {
    Path target = folder.resolve("starter.dawngauge");
    assertThat(Run.of("new", target.toString())).isEqualTo(new Run(0, "", ""));
    assertThat(Run.of("forecast", target.toString()).code()).isZero();
    Files.writeString(target, "mine");
    assertThat(Run.of("new", target.toString()).code()).isEqualTo(73);
    assertThat(target).hasContent("mine");
    assertThat(Run.of("new", target.toString(), "--force").code()).isZero();
    assertThat(Run.of("new", "-").out()).isEqualTo(Files.readString(target));
  }

  private List<String> files() {
    String[] names = folder.toFile().list();
    return names == null ? List.of() : List.of(names);
  }
}

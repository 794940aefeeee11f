package dawngauge.cli;

import static org.assertj.core.api.Assertions.assertThat;

import dawngauge.ambient.AmbientSource;
import dawngauge.planner.Planner;
import dawngauge.settings.SettingsFile;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Whatever the file holds, there is a message in words and the right exit code. */
class BadFilesTest {
  private final Path folder;

  BadFilesTest(@TempDir Path folder) {
    this.folder = folder;
  }

  static Stream<String> samples() throws IOException {
    try (Stream<Path> files = Files.list(Run.SAMPLES)) {
      List<String> names =
          files.map(Path::toString).filter(name -> name.endsWith(".dawngauge")).sorted().toList();
      assertThat(names).hasSizeGreaterThan(70);
      return names.stream();
    }
  }

  @ParameterizedTest
  @MethodSource("samples")
  void noFileLeadsToAStackTrace(String file) {
    for (String format : List.of("text", "json", "csv")) {
      Run run = Run.of("forecast", file, "--format", format);
      assertThat(run.code()).as(run.err()).isIn(0, 65);
      assertThat(run.err()).doesNotContain("Exception", "\tat ", "internal error");
      if (run.code() == 65) {
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).contains(file + ": ");
      } else {
        assertThat(run.out()).isNotBlank();
      }
    }
  }

  @Test
  void allProblemsAreListedAtOnceEachWithTheFile() {
    String file = Run.sample("many-faults");
    Run run = Run.of("forecast", file);
    assertThat(run.code()).isEqualTo(65);
    assertThat(run.err().lines().toList())
        .hasSizeGreaterThan(3)
        .allMatch(line -> line.startsWith(file + ": "));
  }

  @Test
  void aMissingFileIs66() {
    for (String[] typed :
        new String[][] {
          {"forecast", "no-such-file.dawngauge"},
          {"explain", "no-such-file.dawngauge", "--stop", "1", "--tire", "t1l"},
          {"no-such-file.dawngauge"}
        }) {
      Run run = Run.of(typed);
      assertThat(run.code()).isEqualTo(66);
      assertThat(run.err()).contains("no-such-file.dawngauge");
    }
    assertThat(Run.of("forecast", "a\0b").code()).isEqualTo(66);
  }

  @Test
  void aFolderCannotBeRead() {
    Run run = Run.of("forecast", folder.toString());
    assertThat(run.code()).isEqualTo(74);
    assertThat(run.err()).contains(folder.toString()).contains("cannot be read");
  }

  @Test
  void standardInputThatFailsCannotBeRead() {
    InputStream broken =
        new InputStream() {
          @Override
          public int read() throws IOException {
            throw new IOException("pulled out");
          }

          @Override
          public int read(byte[] bytes, int from, int length) throws IOException {
            throw new IOException("pulled out");
          }
        };
    Run run = Run.with(broken, "forecast", "-");
    assertThat(run.code()).isEqualTo(74);
    assertThat(run.err()).contains("pulled out");
  }

  @Test
  void standardInputIsReadLikeAFile() {
    Run run = Run.ofText(Run.text(Run.DEMO), "forecast", "-");
    assertThat(run.code()).isZero();
    assertThat(run.out()).isEqualTo(Run.of("forecast", Run.DEMO).out());
    assertThat(Run.ofText("", "forecast", "-").err()).startsWith("standard input: ");
  }

  @Test
  void emptyFilesGarbageAndHugeFilesAreBadContent() throws IOException {
    byte[] garbage = new byte[4096];
    new Random(7).nextBytes(garbage);
    byte[] huge = new byte[17 << 20];
    for (byte[] content : List.of(new byte[0], garbage, huge)) {
      Path file = Files.write(folder.resolve("some.dawngauge"), content);
      for (Run run :
          List.of(
              Run.of("forecast", file.toString()),
              Run.with(new ByteArrayInputStream(content), "forecast", "-"))) {
        assertThat(run.code()).isEqualTo(65);
        assertThat(run.out()).isEmpty();
        assertThat(run.err().lines()).hasSize(1);
      }
    }
    assertThat(Run.of("forecast", folder.resolve("some.dawngauge").toString()).err())
        .contains("16 MiB");
  }

  @Test
  void anErrorOfTheProgramIsOneLineAnd70() {
    AmbientSource failing =
        needs -> {
          throw new IllegalStateException("the weather\nis upside down");
        };
    Planner planner = new Planner(SettingsFile.defaults(), List.of(failing));
    for (String[] typed :
        new String[][] {
          {"forecast", Run.DEMO}, {Run.DEMO}, {"explain", Run.DEMO, "--stop=1", "--tire=t1l"}
        }) {
      Run run = Run.with(planner, InputStream.nullInputStream(), typed);
      assertThat(run.code()).isEqualTo(70);
      assertThat(run.out()).isEmpty();
      List<String> lines = run.err().lines().filter(line -> !line.startsWith("No window")).toList();
      assertThat(lines).hasSize(1);
      assertThat(lines.get(0))
          .startsWith("internal error: ")
          .contains("the weather is upside down")
          .contains("please report");
    }
  }
}

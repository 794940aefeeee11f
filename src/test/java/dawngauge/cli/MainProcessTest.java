package dawngauge.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** The program as a process of its own, on a platform that knows only ASCII. */
class MainProcessTest {
  private final Path folder;

  MainProcessTest(@TempDir Path folder) {
    this.folder = folder;
  }

  /** Both streams read as UTF-8, which fails on anything else. */
  private record Ended(int code, String out, String err) {}

  private Ended run(String... arguments) throws IOException, InterruptedException {
    return runTo(Files.writeString(folder.resolve("out"), ""), arguments);
  }

  private Ended runTo(Path out, String... arguments) throws IOException, InterruptedException {
    List<String> command =
        new ArrayList<>(
            List.of(
                Path.of(System.getProperty("java.home", ""), "bin", "java").toString(),
                "-Dfile.encoding=US-ASCII",
                "-Duser.language=tr",
                "-cp",
                System.getProperty("java.class.path", ""),
                "dawngauge.Main"));
    command.addAll(List.of(arguments));
    Path err = folder.resolve("err");
    ProcessBuilder builder =
        new ProcessBuilder(command)
            .redirectOutput(out.toFile())
            .redirectError(err.toFile())
            .redirectInput(Path.of(Run.DEMO).toFile());
    builder.environment().put("LC_ALL", "C");
    Process process = builder.start();
    assertThat(process.waitFor(2, TimeUnit.MINUTES)).isTrue();
    return new Ended(
        process.exitValue(),
        Files.isRegularFile(out) ? Files.readString(out) : "",
        Files.readString(err));
  }

  @Test
  void resultsAreUtf8AndTheSameAsEverywhere() throws Exception {
    Ended ended = run("forecast", "-", "--check", "--units", "si");
    assertThat(ended.code).isEqualTo(1);
    String here = Run.of("forecast", Run.DEMO, "--units", "si").out();
    assertThat(here).contains("°C").contains("○").contains("→");
    assertThat(ended.out).isEqualTo(here);
  }

  @Test
  void messagesAreUtf8AndTheExitCodeIsPassedOn() throws Exception {
    Path file = folder.resolve("trip.dawngauge");
    Files.writeString(file, Run.text(Run.DEMO).replace("\"41 °F\"", "\"41 °X\""));
    Ended ended = run("forecast", file.toString());
    assertThat(ended.code).isEqualTo(65);
    assertThat(ended.out).isEmpty();
    assertThat(ended.err).contains("41 °X");
  }

  /** Its own defaults cannot be read: the program cannot begin, and says so in a line. */
  @Test
  void aFailureBeforeAnyCommandIsOneLineAnd70() throws Exception {
    Path out = folder.resolve("out");
    Path err = folder.resolve("err");
    Process process =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home", ""), "bin", "java").toString(),
                "-Ddawngauge.folder=" + folder.resolve("own"),
                "-cp",
                withoutSettings(),
                "dawngauge.Main",
                "forecast",
                Run.DEMO)
            .redirectOutput(out.toFile())
            .redirectError(err.toFile())
            .start();
    assertThat(process.waitFor(2, TimeUnit.MINUTES)).isTrue();
    assertThat(Files.readString(err).lines())
        .singleElement()
        .asString()
        .startsWith("internal error: ");
    assertThat(process.exitValue()).isEqualTo(70);
    assertThat(Files.readString(folder.resolve("own").resolve("failures.log")))
        .contains("dawngauge.settings.SettingsFile.");
  }

  /** The class path with a broken file of defaults before the program's own. */
  private String withoutSettings() throws IOException {
    Path broken = folder.resolve("broken");
    Path config = Files.createDirectories(broken.resolve("dawngauge").resolve("config"));
    Files.writeString(config.resolve("defaults.properties"), "confidence = none\n");
    return broken + File.pathSeparator + System.getProperty("java.class.path", "");
  }

  @Test
  void whereAllIsDoneItExitsWithZero() throws Exception {
    Ended ended = run("--version");
    assertThat(ended.code).isZero();
    assertThat(ended.out).startsWith("Dawngauge ");
  }

  @Test
  @EnabledOnOs(OS.LINUX)
  void aFullStandardOutputIsNoSuccess() throws Exception {
    // See full(4) of the Linux manual: every write to it fails for want of space.
    Ended ended = runTo(Path.of("/dev/full"), "forecast", "-");
    assertThat(ended.code).isEqualTo(73);
    assertThat(ended.err.lines()).containsExactly("standard output cannot be written");
  }

  @Test
  @EnabledOnOs(OS.LINUX)
  void aNameBeyondTheLocaleHasAClearWord() throws Exception {
    Ended ended = run("forecast", folder.resolve("Łódź.dawngauge").toString());
    assertThat(ended.code).isEqualTo(66);
    assertThat(ended.err).contains("LC_ALL=C.UTF-8").contains("plain letters");
  }

  /** The reader takes one line and goes, as head does. */
  @Test
  @EnabledOnOs(OS.LINUX)
  void whereTheReaderGoesEarlyNothingIsSaid() throws Exception {
    Path err = folder.resolve("err");
    Process process =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home", ""), "bin", "java").toString(),
                "-cp",
                System.getProperty("java.class.path", ""),
                "dawngauge.Main",
                "forecast",
                Run.DEMO,
                "--format",
                "json")
            .redirectError(err.toFile())
            .start();
    process.getInputStream().close();
    assertThat(process.waitFor(2, TimeUnit.MINUTES)).isTrue();
    assertThat(Files.readString(err)).isEmpty();
    assertThat(process.exitValue()).isZero();
  }
}

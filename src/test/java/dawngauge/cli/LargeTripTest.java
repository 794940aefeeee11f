package dawngauge.cli;

import static org.assertj.core.api.Assertions.assertThat;

import dawngauge.testdata.BenchTrip;
import dawngauge.trip.TripSize;
import dawngauge.tripfile.TripFile;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The largest trip that is taken, fifty days long, read every morning, and with a name of 30,000
 * characters: each command does its work in a process of 256 MB. What is larger is refused.
 */
class LargeTripTest {

  private static final int DAYS = 50;
  private static final int TIRES_A_RIG = 18;

  @TempDir
  @SuppressWarnings("NullAway.Init") // set by JUnit
  static Path folder;

  private record Ended(int code, long bytes, String err) {}

  @BeforeAll
  static void write() throws IOException {
    write("large", TripSize.MOST_STOPS, TripSize.MOST_TIRES / TIRES_A_RIG);
  }

  private static void write(String name, int stops, int rigs) throws IOException {
    String text = TripFile.text(BenchTrip.of(stops, rigs, stops / DAYS, DAYS));
    Files.writeString(
        file(name), text.replaceFirst("\"bench\"", '"' + "long name ".repeat(3000) + "end\""));
  }

  private static Path file(String name) {
    return folder.resolve(name + ".dawngauge");
  }

  private static Ended run(String name, String... typed) throws Exception {
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home", ""), "bin", "java").toString());
    command.add("-Xmx256m");
    command.add("-Ddawngauge.folder=" + folder.resolve("own"));
    command.addAll(
        List.of("-cp", System.getProperty("java.class.path", ""), "dawngauge.Main", typed[0]));
    command.add(file(name).toString());
    command.addAll(List.of(typed).subList(1, typed.length));
    Path out = folder.resolve("out");
    Path err = folder.resolve("err");
    Process process =
        new ProcessBuilder(command)
            .redirectOutput(out.toFile())
            .redirectError(err.toFile())
            .start();
    try {
      assertThat(process.waitFor(5, TimeUnit.MINUTES)).as("it ends").isTrue();
    } finally {
      process.destroyForcibly();
    }
    return new Ended(process.exitValue(), Files.size(out), Files.readString(err));
  }

  @ParameterizedTest
  @ValueSource(strings = {"forecast --format json", "plan", "review"})
  void theLargestTripIsWorkedOutWith256Megabytes(String typed) throws Exception {
    Ended ended = run("large", typed.split(" "));
    assertThat(ended.err).doesNotContain("internal error");
    assertThat(ended.code).isZero();
    assertThat(ended.bytes).isGreaterThan(500);
  }

  @Test
  void itsSheetIsWrittenWith256Megabytes() throws Exception {
    Path sheet = folder.resolve("sheet.pdf");
    Ended ended = run("large", "sheet", "--out", sheet.toString());
    assertThat(ended.err).doesNotContain("internal error");
    assertThat(ended.code).isZero();
    assertThat(Files.size(sheet)).isGreaterThan(100_000);
  }

  @Test
  void aLargerOneIsRefusedWithTheWayOut() throws Exception {
    write("larger", 900, 3);
    Ended ended = run("larger", "plan");
    assertThat(ended.code).isEqualTo(65);
    assertThat(ended.bytes).isZero();
    assertThat(ended.err)
        .contains("900 stops", "200 at most", "split it")
        .contains("54 tires", "40 at most", "a trip of its own")
        .doesNotContain("internal error");
  }
}

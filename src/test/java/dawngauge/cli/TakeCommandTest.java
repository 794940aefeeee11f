package dawngauge.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The page for the phone, and what it sent back, as commands. */
class TakeCommandTest {

  @Test
  void thePageIsWrittenAndNotOverAFile(@TempDir Path folder) throws IOException {
    Path page = folder.resolve("trip.html");
    Run run = Run.of("take", Run.GAP, "--out", page.toString());
    assertThat(run.code()).as(run.err()).isEqualTo(ExitCode.DONE);
    assertThat(Files.readString(page))
        .startsWith("<!DOCTYPE html>")
        .contains("default-src 'none'")
        .doesNotContain("http://")
        .doesNotContain("https://");
    Run again = Run.of("take", Run.GAP, "--out", page.toString());
    assertThat(again.code()).isEqualTo(ExitCode.CANNOT_WRITE);
    assertThat(again.err()).contains("--force");
  }

  @Test
  void aNumberOfDaysThatCannotBeIsNamed(@TempDir Path folder) {
    Run run = Run.of("take", Run.DEMO, "--out", folder.resolve("x").toString(), "--days", "0");
    assertThat(run.code()).isEqualTo(ExitCode.USAGE);
    assertThat(run.err()).contains("--days 0 is not from 1 to 60");
  }

  @Test
  void whatWasSentBackGoesIntoANewFile(@TempDir Path folder) throws IOException {
    Path sent =
        Files.writeString(
            folder.resolve("sent.json"),
            """
            {"format": "dawngauge taken", "version": 1, "fingerprint": "another", "entries": [
             {"kind": "reading", "stop": "quanah", "tire": "T4", "at": "2027-04-06T17:50",
              "figure": "84 psi", "gauge": "cab gauge", "state": "warm"}]}
            """);
    Path out = folder.resolve("new.dawngauge");
    Run run = Run.of("bring", Run.DEMO, sent.toString(), "--out", out.toString());
    assertThat(run.code()).as(run.err()).isEqualTo(ExitCode.DONE);
    assertThat(run.err()).contains("1 thing taken in").contains("make a new one");
    assertThat(Files.readString(out)).contains("2027-04-06T17:50-05:00[America/Chicago]");
  }

  @Test
  void somethingElseIsRefused(@TempDir Path folder) {
    Run run =
        Run.of("bring", Run.DEMO, Run.DEMO, "--out", folder.resolve("new.dawngauge").toString());
    assertThat(run.code()).isEqualTo(ExitCode.CONTENT);
    assertThat(run.err()).contains("that is not what a page for the phone sends back");
    Run missing =
        Run.of("bring", Run.DEMO, "nowhere", "--out", folder.resolve("new.dawngauge").toString());
    assertThat(missing.code()).isEqualTo(ExitCode.NO_FILE);
  }
}

package dawngauge.cli;

import static org.assertj.core.api.Assertions.assertThat;

import dawngauge.testdata.FakeWeatherAccess;
import dawngauge.trip.Provenance;
import dawngauge.trip.Trip;
import java.io.InputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The command that fills in air. */
class WeatherCommandTest {

  private final FakeWeatherAccess weather = new FakeWeatherAccess();

  private Run run(String... arguments) {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    Console console =
        new Console(InputStream.nullInputStream(), new PrintWriter(out), new PrintWriter(err));
    int code = Cli.run(Run.planner(), console, weather, (planner, trip, file) -> false, arguments);
    console.out().flush();
    console.err().flush();
    return new Run(code, out.toString(), err.toString());
  }

  private static Trip opened(Path file) {
    return Run.planner().store().open(file).get();
  }

  @Test
  void withoutConsentNothingIsAskedAndItTellsHowToGiveIt(@TempDir Path folder) {
    Path out = folder.resolve("filled.dawngauge");
    Run run = run("weather", Run.DEMO, "--out", out.toString());
    assertThat(run.code()).isEqualTo(ExitCode.USAGE);
    assertThat(run.err()).contains("sent to a service of this test").contains("--agree");
    assertThat(weather.asked()).isZero();
    assertThat(out).doesNotExist();
    assertThat(run("weather", Run.DEMO, "--out", out.toString(), "--agree", "nobody").code())
        .isEqualTo(ExitCode.USAGE);
  }

  @Test
  void theFilledTripIsWrittenAndTheTripFileStays(@TempDir Path folder) {
    Path out = folder.resolve("filled.dawngauge");
    String before = Run.text(Run.DEMO);
    Run run = run("weather", Run.DEMO, "--out", out.toString(), "--agree", "crew@example.org");
    assertThat(run.code()).isEqualTo(ExitCode.DONE);
    assertThat(run.out())
        .contains("by Test service, issued Tue 6 Apr 2027 06:30 UTC")
        .contains("What is typed stays");
    assertThat(run.err()).contains(": asking, ");
    assertThat(Run.text(Run.DEMO)).isEqualTo(before);
    assertThat(opened(out).ambient())
        .anyMatch(entry -> entry.provenance().kind() == Provenance.Kind.FEED);
    // The trip file stores what was used: the plan is the same where nobody can be asked.
    assertThat(Run.of("forecast", out.toString()).code()).isEqualTo(ExitCode.DONE);
    assertThat(run("weather", Run.DEMO, "--out", Run.DEMO).code()).isEqualTo(ExitCode.CANNOT_WRITE);
    assertThat(Run.text(Run.DEMO)).isEqualTo(before);
  }

  @Test
  void whatWasMeasuredIsAskedForStopsLeftAlone() {
    Run run = run("weather", Run.GAP, "--measured", "--agree", "crew@example.org");
    assertThat(run.code()).isEqualTo(ExitCode.DONE);
    // Raton NM, whose air the trip does not know; the service says 5 °C for the stop's own height.
    assertThat(run.out())
        .contains("Raton NM, Tue 6 Apr 09:05: 41 °F measured by Test service, expected not known")
        .contains("Dalhart TX") // left at 13:14 there, 18:14 UTC; the clock stands at 20:00 UTC
        .contains("Amarillo TX");
    assertThat(run("weather", Run.DEMO, "--measured", "--agree", "crew@example.org").out())
        .contains("Dalhart TX")
        .doesNotContain("Quanah TX");
    assertThat(run("weather", Run.DEMO).code()).isEqualTo(ExitCode.USAGE);
  }

  @Test
  void typicalAirNeedsNobody(@TempDir Path folder) {
    Path out = folder.resolve("filled.dawngauge");
    Run run = run("weather", Run.DEMO, "--out", out.toString(), "--typical");
    assertThat(run.code()).isEqualTo(ExitCode.DONE);
    assertThat(run.out()).contains("typical for the date, not a forecast");
    assertThat(weather.asked()).isZero();
    assertThat(opened(out).ambient())
        .anyMatch(entry -> entry.provenance().kind() == Provenance.Kind.TYPICAL);
  }

  @Test
  void aServiceThatCannotBeReachedIsNamedAndTypicalAirStandsIn(@TempDir Path folder) {
    weather.fail();
    Path out = folder.resolve("filled.dawngauge");
    Run run = run("weather", Run.DEMO, "--out", out.toString(), "--agree", "crew@example.org");
    assertThat(run.code()).isEqualTo(ExitCode.UNAVAILABLE);
    assertThat(run.err().lines().filter(line -> line.contains("Test service cannot be reached")))
        .singleElement()
        .asString()
        .contains("Raton NM, ")
        .contains(" more places: ");
    assertThat(run.out()).contains("typical");
    assertThat(opened(out).ambient()).isNotEmpty();
    assertThat(run("weather", Run.GAP, "--measured").code()).isEqualTo(ExitCode.UNAVAILABLE);
  }
}

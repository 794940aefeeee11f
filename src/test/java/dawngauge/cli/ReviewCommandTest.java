package dawngauge.cli;

import static org.assertj.core.api.Assertions.assertThat;

import dawngauge.testdata.FakeWeatherAccess;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The command that tells why the tires read as they did. */
class ReviewCommandTest {

  private static final String LOGGED = "demo-data/spring-fleece-haul-logged.dawngauge";
  private static final String HEADLINE =
      "Trailer axle 2 right (t2r) leaks steadily, about 2.5 psi a day";

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

  @Test
  void asTextAndAsPdfTheSameIsSaid(@TempDir Path folder) throws IOException {
    assertThat(run("review", LOGGED).out()).contains(HEADLINE).contains("Before the next haul");
    Path file = folder.resolve("review.pdf");
    assertThat(run("review", LOGGED, "--pdf").code()).isEqualTo(ExitCode.USAGE);
    Run run = run("review", LOGGED, "--pdf", "--paper", "a4", "--out", file.toString());
    assertThat(run.code()).isEqualTo(ExitCode.DONE);
    assertThat(words(file))
        .contains(HEADLINE)
        .contains("Never let air out of a warm tire")
        // As the account and the readings of the tire stand in the text and in the window.
        .contains("air lost, or gauge and air -7.1")
        .contains("Wed 7 Apr 08:44, cold 70.0 72.3 69.8 to 74.7 -2.3");
    assertThat(run("review", LOGGED, "--pdf", "--out", file.toString()).code())
        .isEqualTo(ExitCode.CANNOT_WRITE);
  }

  private static String words(Path file) throws IOException {
    try (PDDocument document = Loader.loadPDF(Files.readAllBytes(file))) {
      return new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
    }
  }

  @Test
  void whatStationsMeasuredTellsAirFromGauge() {
    Run refused = run("review", LOGGED, "--measured");
    assertThat(refused.code()).isEqualTo(ExitCode.USAGE);
    assertThat(refused.err()).contains("sent to a service of this test").contains("--agree");
    assertThat(weather.asked()).isZero();
    weather.agree("crew@example.org");
    weather.time(Instant.parse("2027-04-09T12:00:00Z"));
    weather.expects(5);
    Run run = run("review", LOGGED, "--measured");
    assertThat(run.code()).isEqualTo(ExitCode.DONE);
    assertThat(run.out().replaceAll("\\s+", " "))
        .contains("TEMPERATURES THAT WERE MEASURED")
        .contains("measured by Test service")
        .contains("Test service measured")
        .contains("in the file near there:");
    assertThat(weather.asked()).isPositive();
    assertThat(run("review", LOGGED, "--measured", "--format", "json").out())
        .containsPattern("\"airMeasured\" : \\{\\s+\"celsius\" : ")
        .contains("\"source\" : \"Test service\"")
        .contains("Test service measured");
  }
}

package dawngauge.cli;

import static org.assertj.core.api.Assertions.assertThat;

import dawngauge.planner.Planner;
import dawngauge.problem.Outcome;
import dawngauge.testdata.FakeWeatherAccess;
import dawngauge.trip.Trip;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What was typed wrongly is refused with 64, in words, and nothing is printed as a result. */
class UsageTest {
  @ParameterizedTest
  @ValueSource(
      strings = {
        "forecast",
        "explain",
        "explain FILE",
        "fitness",
        "new",
        "explain FILE --stop 1",
        "explain FILE --tire t2l",
        "forecast FILE --frob",
        "forecast FILE FILE",
        "--frob",
        "forecast FILE --format pdf",
        "forecast FILE --units metric",
        "forecast FILE --units us --units si",
        "forecast FILE --tire",
        "explain FILE --stop 1 --tire t2l --when later",
        "forecast FILE --tire t9l",
        "explain FILE --stop 0 --tire t2l",
        "explain FILE --stop 14 --tire t2l",
        "explain FILE --stop Denver --tire t2l"
      })
  void wrongUsageIs64(String typed) {
    Run run = Run.of(typed.replace("FILE", Run.DEMO).split(" "));
    assertThat(run.code()).isEqualTo(64);
    assertThat(run.out()).isEmpty();
    assertThat(run.err()).isNotBlank().doesNotContain("Exception");
  }

  @Test
  void anUnknownOptionIsNamedWithTheHelpToReadOn() {
    Run run = Run.of("forecast", Run.DEMO, "--frob");
    assertThat(run.err()).contains("--frob").contains("See: dawngauge forecast --help");
  }

  @Test
  void whoMistypesACommandOrAnOptionIsAskedWhatWasMeant() {
    assertThat(Run.of("forcast").err()).contains("did you mean \"forecast\"?");
    assertThat(Run.of("forcast", Run.DEMO).err()).contains("did you mean \"forecast\"?");
    assertThat(Run.of("remiders", Run.DEMO, "--calendar", "x").err())
        .contains("did you mean \"reminders\"?");
    assertThat(Run.of("forecast", Run.DEMO, "--unit", "si").err())
        .contains("did you mean \"--units\"?");
    assertThat(Run.of("no-such-file").err()).doesNotContain("did you mean");
  }

  @Test
  void helpIsACommandToo() {
    assertThat(Run.of("help").out()).isEqualTo(Run.of("--help").out());
    assertThat(Run.of("help", "forecast").out()).isEqualTo(Run.of("forecast", "--help").out());
    Run wrong = Run.of("help", "forcast");
    assertThat(wrong.code()).isEqualTo(64);
    assertThat(wrong.err()).contains("did you mean \"forecast\"?");
  }

  /** 60 psi is 4.14 bar. */
  @Test
  void aTripWrittenInBarIsShownInBar() {
    String bar =
        Pattern.compile("\"([0-9.]+) psi\"")
            .matcher(Run.text(Run.DEMO))
            .replaceAll(
                found ->
                    String.format(
                        Locale.ROOT,
                        "\"%.2f bar\"",
                        Double.parseDouble(found.group(1)) * 0.06894757));
    assertThat(Run.ofText(bar, "forecast", "-").out())
        .isEqualTo(Run.ofText(bar, "forecast", "-", "--units", "si").out())
        .contains(" bar");
    assertThat(Run.of("forecast", Run.DEMO).out())
        .isEqualTo(Run.of("forecast", Run.DEMO, "--units", "us").out());
  }

  @Test
  void aWrongChoiceNamesTheChoices() {
    assertThat(Run.of("forecast", Run.DEMO, "--format", "pdf").err())
        .contains("\"pdf\" is none of text, csv, json");
  }

  @Test
  void choicesMayBeInCapitalLetters() {
    assertThat(Run.of("forecast", Run.DEMO, "--units", "SI", "--format", "CSV").code()).isZero();
  }

  @Test
  void helpAndVersionGoToStandardOutput() throws IOException {
    for (String[] typed :
        new String[][] {
          {}, {"--help"}, {"forecast", "-h"}, {"explain", "-h"}, {"new", "-h"}, {"fitness", "-h"}
        }) {
      Run run = Run.of(typed);
      assertThat(run.code()).isZero();
      assertThat(run.err()).isEmpty();
      assertThat(run.out()).startsWith("Usage: dawngauge");
      assertThat(run.out().lines()).allMatch(line -> line.length() <= 100);
    }
    String pom = Files.readString(Path.of("pom.xml"));
    String version = pom.replaceAll("(?s).*?<version>(.*?)</version>.*", "$1");
    assertThat(Run.of("--version").out().strip()).isEqualTo("Dawngauge " + version);
  }

  @Test
  void aNameThatBeginsWithAnAtSignIsAFileNotAListOfArguments() {
    Run run = Run.of("forecast", "@no-such-file");
    assertThat(run.code()).isEqualTo(66);
    assertThat(run.err()).contains("@no-such-file");
  }

  @Test
  void aFileAloneGivesTheForecastAndSaysWhy() {
    Run run = Run.of(Run.DEMO, "--copy");
    assertThat(run.code()).isZero();
    assertThat(run.err()).contains("No window can be opened here");
    assertThat(run.out()).isEqualTo(Run.of("forecast", Run.DEMO).out());
    assertThat(Run.of("no-such-file").code()).isEqualTo(66);
  }

  @Test
  void theWindowIsBegunOnlyWhereThereIsSomethingToShow() {
    assertThat(windowOf(Run.DEMO)).containsExactly("begin", "open");
    assertThat(windowOf()).containsExactly("begin", "open");
    assertThat(windowOf("no-such-file")).isEmpty();
    assertThat(windowOf("forcast")).isEmpty();
    assertThat(windowOf("forecast", Run.DEMO)).isEmpty();
  }

  /** What was asked of the window. */
  private static List<String> windowOf(String... typed) {
    List<String> asked = new ArrayList<>();
    Cli.WindowOpener opener =
        new Cli.WindowOpener() {
          @Override
          public void begin() {
            asked.add("begin");
          }

          @Override
          public boolean open(Planner planner, Outcome<Trip> opened, Optional<Path> file) {
            asked.add("open");
            return true;
          }
        };
    PrintWriter nowhere = new PrintWriter(Writer.nullWriter());
    Console console = new Console(InputStream.nullInputStream(), nowhere, nowhere);
    Cli.run(Run.planner(), console, new FakeWeatherAccess(), opener, typed);
    return asked;
  }

  @Test
  void standardInputIsReadOnceWhereNoWindowOpens() {
    assertThat(Run.ofText(Run.text(Run.DEMO), "-").out())
        .isEqualTo(Run.of("forecast", Run.DEMO).out());
  }

  @Test
  void fitnessTellsAndOnlyWithCheckAnswersByItsExitCode() {
    Run told = Run.of("fitness", Run.DEMO);
    assertThat(told.code()).isZero();
    assertThat(told.out().lines()).allMatch(line -> line.codePoints().count() <= 100);
    Run checked = Run.of("fitness", Run.DEMO, "--check");
    assertThat(checked.out()).isEqualTo(told.out());
    assertThat(checked.code()).isIn(1, 2);
    assertThat(Run.of("fitness", "no-such-file").code()).isEqualTo(66);
  }
}

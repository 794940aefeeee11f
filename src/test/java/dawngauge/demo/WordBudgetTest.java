package dawngauge.demo;

import static org.assertj.core.api.Assertions.assertThat;

import dawngauge.cli.Cli;
import dawngauge.cli.Console;
import dawngauge.planner.Planner;
import dawngauge.settings.SettingsFile;
import java.io.InputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Few words: nobody reads five hundred at a fuel stop. */
class WordBudgetTest {

  private static final Pattern WORD = Pattern.compile("\\b\\p{L}{2,}\\b");
  private static final Pattern REMINDER = Pattern.compile("(?m)^(?=\\d\\d:\\d\\d )");

  private static String text(String command, String trip, String... more) {
    StringWriter out = new StringWriter();
    Console console =
        new Console(
            InputStream.nullInputStream(),
            new PrintWriter(out),
            new PrintWriter(new StringWriter()));
    int code =
        Cli.run(
            new Planner(SettingsFile.defaults(), List.of()),
            console,
            Stream.concat(Stream.of(command, "demo-data/" + trip + ".dawngauge"), Stream.of(more))
                .toArray(String[]::new));
    console.out().flush();
    assertThat(code).isZero();
    return out.toString();
  }

  private static long words(String text) {
    return WORD.matcher(text).results().count();
  }

  @ParameterizedTest
  @CsvSource({"spring-fleece-haul, 800", "autumn-stock-haul, 900"})
  void aForecast(String trip, long most) {
    assertThat(words(text("forecast", trip))).isBetween(most / 2, most);
  }

  @ParameterizedTest
  @CsvSource({"spring-fleece-haul, 1030", "autumn-stock-haul, 900"})
  void allReminders(String trip, long most) {
    assertThat(words(text("reminders", trip))).isBetween(most / 3, most);
  }

  @ParameterizedTest
  @CsvSource({
    "spring-fleece-haul, 183",
    "spring-fleece-haul-logged, 330",
    "autumn-stock-haul, 195",
    "gap-haul, 183"
  })
  void aReview(String trip, long most) {
    assertThat(words(text("review", trip))).isBetween(most / 2, most);
  }

  @ParameterizedTest
  @CsvSource({
    "spring-fleece-haul, 270",
    "spring-fleece-haul-logged, 210",
    "autumn-stock-haul, 280",
    "gap-haul, 210"
  })
  void aPlan(String trip, long most) {
    assertThat(words(text("plan", trip))).isBetween(most / 2, most);
  }

  @ParameterizedTest
  @CsvSource({
    "spring-fleece-haul, 375",
    "spring-fleece-haul-logged, 450",
    "autumn-stock-haul, 180",
    "gap-haul, 375"
  })
  void fitness(String trip, long most) {
    assertThat(words(text("fitness", trip))).isBetween(most / 2, most);
  }

  @ParameterizedTest
  @CsvSource({
    "spring-fleece-haul, 5, t2r, 72 psi, 185",
    "spring-fleece-haul, 10, t1l, 90 psi, 205",
    "autumn-stock-haul, 4, t2r, 66 psi, 160",
    "gap-haul, 1, t1l, 70 psi, 129"
  })
  void aFigure(String trip, String stop, String tire, String reading, long most) {
    String text = text("figure", trip, "--stop", stop, "--tire", tire, "--reading", reading);
    assertThat(words(text)).isBetween(most / 2, most);
  }

  @Test
  void theLongestReminder() {
    List<Long> each =
        Stream.of("spring-fleece-haul", "autumn-stock-haul")
            .flatMap(trip -> REMINDER.splitAsStream(text("reminders", trip)).skip(1))
            .map(part -> part.split("\n\n", 2)[0]) // the cautions of the document stand at its end
            .map(WordBudgetTest::words)
            .toList();
    assertThat(each).hasSizeGreaterThan(12).allMatch(count -> count <= 110);
  }

  /** Figure first: what is to be done takes a dozen words at the most, and is an order. */
  @Test
  void aLineOfACard() {
    Pattern line =
        Pattern.compile("(?m)^(?:  do  | {14})(?= *(?:Add|Let out|Hold|Check|Do not)).*$");
    int lines = 0;
    for (String trip :
        List.of("spring-fleece-haul", "autumn-stock-haul", "spring-fleece-haul-logged")) {
      for (String found :
          line.matcher(text("forecast", trip)).results().map(each -> each.group()).toList()) {
        assertThat(words(found)).as(found).isLessThanOrEqualTo(13); // with the word "do"
        lines++;
      }
    }
    assertThat(lines).isGreaterThan(20);
  }
}

package dawngauge.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** What README and DEVELOPERS show of a command is what the program prints. */
class DocumentedRunsTest {

  private static final String TYPED = "    target/dawngauge/bin/dawngauge ";
  private static final String FIGURE = "## One figure from file to screen";

  @Test
  void theStepsOfTheReadmeAreOfToday() throws IOException {
    Map<String, List<String>> steps = runs(Files.readString(Path.of("README.md")));
    assertThat(steps).hasSize(5);
    steps.forEach(
        (command, shown) ->
            assertThat(printed(command)).as(command).containsSubsequence(shown).isNotEmpty());
    assertThat(steps.values()).noneMatch(List::isEmpty);
  }

  @Test
  void theFigureOfTheWalkIsOfToday() throws IOException {
    String developers = Files.readString(Path.of("DEVELOPERS.md"));
    String section = developers.substring(developers.indexOf(FIGURE)).split("\n## ", 2)[0];
    String explain =
        runs(Files.readString(Path.of("README.md"))).keySet().stream()
            .filter(command -> command.startsWith("explain "))
            .findFirst()
            .orElseThrow();
    String all = String.join("\n", printed(explain));
    List<String> figures =
        Pattern.compile("(?<=\\*)\\d+\\.\\d psi(?=\\*)")
            .matcher(section)
            .results()
            .map(MatchResult::group)
            .toList();
    assertThat(figures)
        .hasSizeGreaterThan(2)
        .allSatisfy(figure -> assertThat(all).contains(figure));
  }

  /** The lines below a command, by the command. */
  private static Map<String, List<String>> runs(String text) {
    Map<String, List<String>> runs = new TreeMap<>();
    List<String> shown = new ArrayList<>();
    for (String line : text.lines().toList()) {
      if (line.startsWith(TYPED)) {
        shown = new ArrayList<>();
        runs.put(line.substring(TYPED.length()), shown);
      } else if (line.startsWith("    ")) {
        shown.add(line.strip());
      } else {
        shown = new ArrayList<>();
      }
    }
    return runs;
  }

  private static List<String> printed(String command) {
    return Run.of(command.split(" ", -1)).out().lines().map(String::strip).toList();
  }
}

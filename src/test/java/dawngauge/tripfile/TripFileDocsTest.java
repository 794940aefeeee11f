package dawngauge.tripfile;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** The description of the file tells the truth. */
class TripFileDocsTest {
  private static final Path DOCS = Path.of("docs", "trip-file.md");

  @Test
  void theExampleIsSound() throws IOException {
    MatchResult example =
        Pattern.compile("```json\\n(.*?)```", Pattern.DOTALL)
            .matcher(Files.readString(DOCS))
            .results()
            .findFirst()
            .orElseThrow();
    assertThat(TripFile.parse(example.group(1)).problems()).isEmpty();
  }

  @Test
  void everyFieldOfTheSchemaIsDescribed() throws IOException {
    assertThat(quoted(Files.readString(DOCS))).containsAll(SchemaTest.fieldNames());
  }

  @Test
  void everyFieldOfATableIsInTheSchema() throws IOException {
    String text = Files.readString(DOCS);
    Set<String> described =
        text.lines()
            .filter(line -> line.startsWith("| `"))
            .flatMap(line -> quoted(line.substring(0, line.indexOf('|', 1))).stream())
            .collect(Collectors.toCollection(TreeSet::new));
    assertThat(described).hasSizeGreaterThan(90);
    assertThat(SchemaTest.fieldNames()).containsAll(described);
  }

  private static Set<String> quoted(String text) {
    return Pattern.compile("`([a-zA-Z]+)`")
        .matcher(text)
        .results()
        .map(match -> match.group(1))
        .collect(Collectors.toCollection(TreeSet::new));
  }
}

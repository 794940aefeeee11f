package dawngauge;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** README and DEVELOPERS are told in short sentences, and each page begins with one. */
class DocumentSentencesTest {

  private static final double MEAN = 20;
  private static final int LONGEST = 40;

  /** Lists that are read as they are. */
  private static final Set<String> LISTS = Set.of("accuracy.md", "decisions.md");

  private static final Pattern ITEM = Pattern.compile("(?:[-*]|\\d+\\.) +(?=\\S)");
  private static final Pattern LINK_ALONE = Pattern.compile("\\[[^]]*]\\([^)]*\\)(?::.*)?");

  @ParameterizedTest
  @ValueSource(strings = {"README.md", "DEVELOPERS.md"})
  void sentencesAreShort(String document) throws IOException {
    List<String> sentences = sentences(Files.readString(Path.of(document)));
    assertThat(sentences).hasSizeGreaterThan(20);
    assertThat(sentences).allSatisfy(one -> assertThat(words(one)).isLessThanOrEqualTo(LONGEST));
    double mean = sentences.stream().mapToInt(DocumentSentencesTest::words).average().orElseThrow();
    assertThat(mean).isLessThanOrEqualTo(MEAN);
  }

  @Test
  void sentencesAreCountedOutsideOfCodeTablesAndLinks() {
    String text =
        """
        # Not a sentence

        One `a b c`, of [two words](docs/a.md). **And
        0.5 psi more.** Is it? Yes

            code is none. Nor this.

        | nor | a table. |
        - an item: it is one; it goes
          on here
        - [docs/a.md](docs/a.md): a link is none
        ```
        none.
        ```
        ![none. at all](a.png)
        """;
    assertThat(sentences(text))
        .containsExactly(
            "One code, of two words.",
            "And 0.5 psi more.",
            "Is it?",
            "Yes",
            "an item: it is one; it goes on here");
    assertThat(sentences(text)).extracting(DocumentSentencesTest::words).endsWith(2, 1, 9);
  }

  @Test
  void eachPageBeginsWithASentence() throws IOException {
    try (Stream<Path> pages = Files.list(Path.of("docs"))) {
      List<Path> looked =
          pages
              .filter(page -> page.toString().endsWith(".md"))
              .filter(page -> !LISTS.contains(page.getFileName().toString()))
              .toList();
      assertThat(looked).hasSizeGreaterThan(15);
      for (Path page : looked) {
        List<String> lines = Files.readAllLines(page);
        assertThat(lines.get(0)).as(page.toString()).startsWith("# ");
        assertThat(lines.get(2)).as(page.toString()).matches("[*`]{0,2}\\p{L}.*");
      }
    }
  }

  private static int words(String sentence) {
    return (int)
        Stream.of(sentence.split("\\s+")).filter(word -> word.matches(".*[\\p{L}\\d].*")).count();
  }

  /** What stands between two full stops, or in a paragraph or an item of a list that has none. */
  private static List<String> sentences(String markdown) {
    List<String> sentences = new ArrayList<>();
    StringBuilder paragraph = new StringBuilder();
    boolean fenced = false;
    for (String line : markdown.lines().toList()) {
      boolean fence = line.startsWith("```");
      fenced ^= fence;
      boolean item = ITEM.matcher(line).lookingAt();
      if (item || fence || line.isBlank() || line.matches("(?:    |\\||#).*")) {
        take(paragraph, sentences);
      }
      String said = item ? ITEM.matcher(line).replaceFirst("") : line.strip();
      boolean told = !fence && !fenced && !line.matches("(?:    |\\||#).*");
      if (told && !LINK_ALONE.matcher(said).matches()) {
        paragraph.append(said).append(' ');
      }
    }
    take(paragraph, sentences);
    return sentences;
  }

  private static void take(StringBuilder paragraph, List<String> sentences) {
    String plain =
        paragraph
            .toString()
            .replaceAll("!\\[[^]]*]\\([^)]*\\)", "")
            .replaceAll("`[^`]*`", "code")
            .replaceAll("\\[([^]]*)]\\([^)]*\\)", "$1")
            .replaceAll("[*_]", "");
    Stream.of(plain.split("(?<=[.!?])\\s+"))
        .map(String::strip)
        .filter(one -> !one.isEmpty())
        .forEach(sentences::add);
    paragraph.setLength(0);
  }
}

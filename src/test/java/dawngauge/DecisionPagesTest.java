package dawngauge;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The pages of decisions are short, alike, and each is reached from its line of the list. */
class DecisionPagesTest {

  private static final Path LIST = Path.of("docs", "decisions.md");
  private static final Path PAGES = Path.of("docs", "decisions");
  private static final int LONGEST = 40;

  private static final Pattern LINK_TO_PAGE =
      Pattern.compile(
          "(?m)^(\\d+)\\. \\*\\*\\[[^]]+]\\(decisions/(\\d+)-[a-z0-9-]+\\.md\\)\\.\\*\\*$");

  private static final Pattern LINK = Pattern.compile("]\\(([^)#]+)[^)]*\\)");

  @Test
  void eachPageStandsInTheListUnderItsNumber() throws IOException {
    List<MatchResult> links = LINK_TO_PAGE.matcher(Files.readString(LIST)).results().toList();
    assertThat(links).hasSameSizeAs(pages());
    assertThat(links).allSatisfy(link -> assertThat(link.group(1)).isEqualTo(link.group(2)));
    for (Path page : pages()) {
      assertThat(Files.readString(LIST)).contains("(decisions/" + page.getFileName() + ")");
    }
  }

  @Test
  void eachPageHasTheSamePartsAndADate() throws IOException {
    for (Path page : pages()) {
      List<String> lines = Files.readAllLines(page);
      assertThat(lines).as(page.toString()).hasSizeLessThanOrEqualTo(LONGEST);
      assertThat(lines.get(0)).startsWith("# ");
      assertThat(lines.get(2)).as(page.toString()).matches("Decided on \\d+ \\p{L}+ \\d{4}\\b.*");
      assertThat(lines.stream().filter(line -> line.startsWith("## ")).toList())
          .as(page.toString())
          .containsExactly("## What was to be decided", "## Options", "## Outcome", "## Held by");
      assertThat(lines.stream().filter(line -> line.startsWith("- **")).count())
          .as(page.toString())
          .isGreaterThanOrEqualTo(2);
    }
  }

  @Test
  void whatAPageOrTheListLinksToIsThere() throws IOException {
    for (Path page : Stream.concat(pages().stream(), Stream.of(LIST)).toList()) {
      LINK.matcher(Files.readString(page))
          .results()
          .map(link -> page.resolveSibling(link.group(1)))
          .forEach(target -> assertThat(target).as(page.toString()).exists());
    }
  }

  private static List<Path> pages() throws IOException {
    try (Stream<Path> pages = Files.list(PAGES)) {
      return pages.sorted().toList();
    }
  }
}

package dawngauge.ledger;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** The words in the window are those of the document. */
class GlossaryTest {

  @Test
  void everyWordOfTheDocumentIsThere() throws IOException {
    String document = Files.readString(Path.of("docs", "glossary.md"));
    assertThat(Glossary.all()).hasSizeGreaterThan(20);
    for (Glossary.Entry entry : Glossary.all()) {
      assertThat(document).contains("- **" + entry.word() + "**: " + entry.meaning());
    }
    assertThat(document.lines().filter(line -> line.startsWith("- **")))
        .hasSize(Glossary.all().size());
  }

  @Test
  void wordsAreFoundByPartsOfTheirMeaning() {
    assertThat(Glossary.with("WARM")).extracting(Glossary.Entry::word).contains("build-up");
    assertThat(Glossary.with("no such word")).isEmpty();
  }
}

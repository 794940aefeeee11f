package dawngauge.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Lines break where a reader would break them. */
class PlainTextTest {
  @Test
  void linesBreakAtBlanksAndLoseNothing() {
    String text = "gauge it cold before the start, before sun reaches it";
    for (int width = 8; width <= text.length(); width++) {
      int most = width;
      List<String> lines = PlainText.split(text, width);
      assertThat(lines).allMatch(line -> line.length() <= most);
      assertThat(String.join(" ", lines)).isEqualTo(text);
    }
    assertThat(PlainText.split(text, text.length())).hasSize(1);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"65 psi", "5.52 bar", "1319 kg", "105 km/h", "16 °F", "+13 %", "1 h 28", "53 min"})
  void aFigureStaysWithItsUnit(String figure) {
    for (int width = 10; width < 40; width++) {
      assertThat(PlainText.split("to be set to " + figure + " when cold", width))
          .anyMatch(line -> line.contains(figure));
    }
  }

  @Test
  void noLineBeginsWithADot() {
    for (int width = 8; width < 30; width++) {
      assertThat(PlainText.split("first · second · third · fourth", width))
          .noneMatch(line -> line.startsWith("·"));
    }
  }

  @Test
  void anAccentStaysWithItsLetterAndAFamilyTogether() {
    assertThat(PlainText.split("ae\u0301o\u0301", 1)).containsExactly("a", "e\u0301", "o\u0301");
    String farmer = "\uD83D\uDC69\u200D\uD83C\uDF3E";
    assertThat(PlainText.split(farmer + farmer, 4)).containsExactly(farmer, farmer);
  }

  @Test
  void aWordWiderThanTheLineBeginsWhereThereIsRoom() {
    assertThat(PlainText.split("2. abcdefghij klm", 8)).containsExactly("2. abcde", "fghij", "klm");
  }

  @Test
  void aCharacterWiderThanTheLineIsBrokenAfterAll() {
    String heap = "a" + "\u0301".repeat(30);
    List<String> lines = PlainText.split(heap, 8);
    assertThat(lines).allMatch(line -> PlainText.length(line) <= 8);
    assertThat(String.join("", lines)).isEqualTo(heap);
  }

  /** Unicode Standard Annex 11: wide letters take two columns, marks on a letter none. */
  @Test
  void aTextIsAsWideAsATerminalShowsIt() {
    assertThat(PlainText.length("Amarillo")).isEqualTo(8);
    assertThat(PlainText.length("Gro\u0308\u00DFe")).isEqualTo(5);
    assertThat(PlainText.length("\u4E4C\u9C81\u6728\u9F50")).isEqualTo(8);
    assertThat(PlainText.length("\u30A2\uFF71\uD55C")).isEqualTo(5);
    assertThat(PlainText.left("\u4E4C", 4)).isEqualTo("\u4E4C  ");
    assertThat(PlainText.split("\u4E4C\u9C81\u6728", 5)).containsExactly("\u4E4C\u9C81", "\u6728");
  }

  @Test
  void codesThatSteerATerminalBecomeBlanks() {
    PlainText text = new PlainText();
    text.wrapped("", "red \u001B[31m, back\u0008, two\nlines, turned \u202E round");
    assertThat(text.toString()).isEqualTo("red  [31m, back , two lines, turned   round\n");
  }
}

package dawngauge.report;

import static org.assertj.core.api.Assertions.assertThat;

import dawngauge.page.Block;
import dawngauge.page.Page;
import dawngauge.testdata.Pages;
import dawngauge.testdata.PdfTree;
import java.io.IOException;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Text and paper show every block of a page; the window is looked at in a test of its own. */
class PagesTest {

  /** Texts up to this stand in one line even in a narrow column of plain text. */
  private static final int SHORT = 7;

  /** The same on paper. */
  private static final int LONG = 70;

  static Stream<Page> pages() {
    return Pages.all().stream();
  }

  /** Without blanks, since lines break elsewhere, and in one case of letters. */
  private static String plain(String text) {
    return text.replaceAll("\\s+", "").toLowerCase(Locale.ROOT);
  }

  /** Every word of every text; those of a cell that is broken have others between them. */
  private static void isIn(String shown, Page page, int whole) {
    String plain = plain(shown);
    for (String text : Pages.said(page)) {
      for (String word : text.length() > whole ? List.of(text.split("\\s+")) : List.of(text)) {
        assertThat(plain).contains(plain(word));
      }
    }
  }

  @ParameterizedTest
  @MethodSource("pages")
  void asTextWithWhy(Page page) {
    String text = PageText.of(page, true);
    assertThat(plain(text)).startsWith(plain(page.title()));
    isIn(text, page, SHORT);
    assertThat(text.lines()).allMatch(line -> line.codePointCount(0, line.length()) <= 100);
  }

  @ParameterizedTest
  @MethodSource("pages")
  void onPaper(Page page) throws IOException {
    byte[] pdf = PagePdf.of(page, "Test", page.title(), List.of(), CrewSheet.Paper.A4);
    try (PDDocument document = Loader.loadPDF(pdf)) {
      PdfTree tree = PdfTree.of(document);
      isIn(tree.words(), page, LONG);
      assertThat(tree.words()).contains(page.title());
      for (int i = 1; i <= document.getNumberOfPages(); i++) {
        int sheet = i;
        assertThat(tree.all().filter(node -> node.page() == sheet).map(PdfTree::text))
            .as("the caution at the foot of sheet " + i)
            .anyMatch(text -> text.contains("Never over the limit"));
      }
    }
  }

  @Test
  void theTreeOfThePaperTellsWhatEachTextIs() throws IOException {
    byte[] pdf = PagePdf.of(Pages.everyBlock(), "Test", "T", List.of(), CrewSheet.Paper.LETTER);
    try (PDDocument document = Loader.loadPDF(pdf)) {
      PdfTree tree = PdfTree.of(document);
      assertThat(tree.all("H2").stream().map(PdfTree::text)).contains("part of the page");
      assertThat(tree.all("H3").stream().map(PdfTree::text)).contains("card title");
      assertThat(tree.all("LI")).hasSize(2);
      PdfTree table = tree.all("Table").get(0);
      assertThat(table.all("TR")).hasSize(3);
      assertThat(table.all("TH").stream().map(PdfTree::text))
          .containsExactly("head of words", "head of figures");
      assertThat(table.all("TH").stream().map(PdfTree::scope)).containsOnly("Column");
      assertThat(table.all("TD")).hasSize(4);
      assertThat(tree.words()).contains("plot in words");
    }
  }

  @Test
  void aHeadingIsOnTheSheetOfItsTable() throws IOException {
    Page page = Pages.dealer(Pages.threeLoads());
    byte[] pdf = PagePdf.of(page, "Test", "T", List.of(), CrewSheet.Paper.LETTER);
    try (PDDocument document = Loader.loadPDF(pdf)) {
      assertThat(document.getNumberOfPages()).isGreaterThan(1);
      PdfTree tree = PdfTree.of(document);
      List<PdfTree> tables = tree.all("Table");
      List<PdfTree> headings = tree.all("H2");
      assertThat(tables).hasSize(4);
      for (int i = 0; i < tables.size(); i++) {
        PdfTree first = tables.get(i).all("TD").get(0);
        PdfTree heading = headings.get(i);
        assertThat(heading.page()).as(heading.text()).isEqualTo(first.page());
      }
    }
  }

  @Test
  void withoutWhyTheTextLacksNothingButWhatStandsBehindTheRest() {
    Page page = Pages.everyBlock();
    assertThat(PageText.of(page, false))
        .doesNotContain("reason of the card", "folded title", "note behind the rest")
        .contains("first thing to do", "thing to watch", "caution of the page", "12.5");
  }

  @Test
  void whatNoPageTakesGoesOnOnTheNextAndNothingLeavesThePaper() throws IOException {
    StringBuilder words = new StringBuilder("w0");
    for (int i = 1; i < 3000; i++) {
      words.append(" w").append(i);
    }
    String whole = "x".repeat(20_000);
    Page page =
        new Page(
            "Long",
            List.of(
                new Block.Card(words.toString(), List.of(whole), List.of(), List.of()),
                Block.Table.ofWords(
                    "t", List.of("a", "b"), List.of(List.of(words.toString(), "end of row")))));
    byte[] pdf = PagePdf.of(page, "Test", "T", List.of(), CrewSheet.Paper.A4);
    try (PDDocument document = Loader.loadPDF(pdf)) {
      String text = PdfTree.of(document).words();
      for (String word : List.of("w0", "w1499", "w2999")) {
        assertThat(text.split("\\b" + word + "\\b", -1)).as(word).hasSize(3);
      }
      assertThat(text.chars().filter(letter -> letter == 'x')).hasSizeGreaterThanOrEqualTo(20_000);
      assertThat(text).contains("end of row");
      new PDFTextStripper() {
        @Override
        protected void writeString(String line, List<TextPosition> positions) {
          for (TextPosition at : positions) {
            assertThat(at.getY()).isBetween(0f, at.getPageHeight());
            assertThat(at.getX()).isBetween(0f, at.getPageWidth());
          }
        }
      }.getText(document);
    }
  }

  @Test
  void placesThatNoFontWritesAreNamedByTheirNumber() throws IOException {
    Page page = new Page("At 𐎠𐎡", List.of(new Block.Note(Block.Weight.PLAIN, "read at 𐎠𐎡")));
    byte[] pdf = PagePdf.of(page, "Test", "Trip", List.of("Here", "𐎠𐎡"), CrewSheet.Paper.A4);
    try (PDDocument document = Loader.loadPDF(pdf)) {
      assertThat(PdfTree.of(document).words())
          .contains("read at stop 2")
          .contains("lack letters of some names");
    }
  }
}

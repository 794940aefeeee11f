package dawngauge.report;

import com.lowagie.text.Chunk;
import com.lowagie.text.Document;
import com.lowagie.text.DocumentException;
import com.lowagie.text.Element;
import com.lowagie.text.Font;
import com.lowagie.text.Phrase;
import com.lowagie.text.Rectangle;
import com.lowagie.text.pdf.ColumnText;
import com.lowagie.text.pdf.PdfContentByte;
import com.lowagie.text.pdf.PdfDictionary;
import com.lowagie.text.pdf.PdfName;
import com.lowagie.text.pdf.PdfStructureElement;
import com.lowagie.text.pdf.PdfTemplate;
import com.lowagie.text.pdf.PdfWriter;
import dawngauge.advice.Mark;
import dawngauge.page.Plot;
import dawngauge.page.PlotDrawing;
import java.util.ArrayDeque;
import java.util.Deque;
import org.jspecify.annotations.Nullable;

/**
 * Draws on the pages of the crew's sheet and tells what each text is: all text belongs to an
 * element of the document's structure, in reading order; lines, boxes and shapes belong to none.
 * Lengths are in points, y is from the bottom of the page.
 */
final class SheetCanvas {

  static final float MM = 72 / 25.4f;

  /** Around each page. */
  static final float MARGIN = 12 * MM;

  /** Distance of lines, in sizes of their letters. */
  static final float LEADING = 1.2f;

  private static final PdfName ARTIFACT = new PdfName("Artifact");

  private final PdfWriter writer;
  private final Document document;
  private final SheetNames names;
  private final Deque<PdfStructureElement> open = new ArrayDeque<>();
  private final SheetPen pen;
  private @Nullable PdfTemplate total;

  SheetCanvas(PdfWriter writer, Document document, SheetPen pen, SheetNames names) {
    this.writer = writer;
    this.document = document;
    this.pen = pen;
    this.names = names;
  }

  /** Begins the structure; once, after the document is opened. */
  void start() {
    open.push(new PdfStructureElement(writer.getStructureTreeRoot(), new PdfName("Document")));
  }

  float left() {
    return MARGIN;
  }

  float right() {
    return document.getPageSize().getWidth() - MARGIN;
  }

  float top() {
    return document.getPageSize().getHeight() - MARGIN;
  }

  float bottom() {
    return MARGIN;
  }

  float width() {
    return right() - left();
  }

  int page() {
    return writer.getPageNumber();
  }

  /** Another page of a size. */
  void newPage(Rectangle size) {
    sized(size);
    document.newPage();
  }

  /** What is measured from here on is of a page of a size, which is still to be begun. */
  void sized(Rectangle size) {
    document.setPageSize(size);
  }

  /** All that is drawn within is an element of a type of the structure, such as "TR". */
  void in(String type, Runnable drawing) {
    open.push(new PdfStructureElement(open.element(), new PdfName(type)));
    drawing.run();
    open.pop();
  }

  /** What is drawn within heads the cells below it. */
  void columnHead(Runnable drawing) {
    heading("Column", drawing);
  }

  /** What is drawn within heads the cells beside it. */
  void rowHead(Runnable drawing) {
    heading("Row", drawing);
  }

  /** ISO 32000-1, 14.8.5.7: the attribute of a heading that tells which cells it speaks of. */
  private void heading(String scope, Runnable drawing) {
    in(
        "TH",
        () -> {
          PdfDictionary attributes = new PdfDictionary();
          attributes.put(PdfName.O, new PdfName("Table"));
          attributes.put(new PdfName("Scope"), new PdfName(scope));
          open.element().put(PdfName.A, attributes);
          drawing.run();
        });
  }

  /** The text as the fonts can write it. */
  String shown(String text) {
    return pen.shown(names.in(text));
  }

  /** Width of a text in one line. */
  float wide(String text, float size, boolean bold) {
    return (bold ? pen.boldFont : pen.plainFont).getWidthPoint(shown(text), size);
  }

  /** A line of text from a baseline; nothing where it is empty. */
  void line(String text, float x, float y, float size, boolean bold) {
    if (!text.isEmpty()) {
      PdfContentByte page = page(open.element());
      page.beginText();
      page.setFontAndSize(bold ? pen.boldFont : pen.plainFont, size);
      page.showTextAligned(Element.ALIGN_LEFT, shown(text), x, y, 0);
      page.endText();
      page.endMarkedContentSequence();
    }
  }

  /** How high a text is in lines of a width. */
  float height(String text, float width, float size, boolean bold) {
    return text.isEmpty() ? 0 : lines(text, width, size, bold) * size * LEADING;
  }

  /** How many lines of a width a text takes. */
  int lines(String text, float width, float size, boolean bold) {
    ColumnText column = column(writer.getDirectContent(), text, size, bold);
    column.setSimpleColumn(0, 0, width, 100_000);
    go(column, true);
    return column.getLinesWritten();
  }

  /**
   * A text in lines of a width, its parts from right to left in their direction.
   *
   * @return its height
   */
  float wrapped(String text, float x, float top, float width, float size, boolean bold) {
    if (text.isEmpty()) {
      return 0;
    }
    PdfContentByte page = page(open.element());
    ColumnText column = column(page, text, size, bold);
    // Slightly lower than the top, for the line that stands above the next one.
    column.setSimpleColumn(x, top - 100_000, x + width, top + size * (LEADING - 1) / 2);
    go(column, false);
    page.endMarkedContentSequence();
    return column.getLinesWritten() * size * LEADING;
  }

  private ColumnText column(PdfContentByte page, String text, float size, boolean bold) {
    String shown = shown(text);
    ColumnText column = new ColumnText(page);
    column.setText(
        new Phrase(new Chunk(shown, new Font(bold ? pen.boldFont : pen.plainFont, size))));
    column.setLeading(size * LEADING);
    if (SheetNames.fromTheRight(shown)) {
      // Its first letter decides the direction; the line stays at the left as its neighbors do.
      boolean whole = SheetNames.beginsFromTheRight(shown);
      column.setRunDirection(whole ? PdfWriter.RUN_DIRECTION_RTL : PdfWriter.RUN_DIRECTION_LTR);
      column.setAlignment(whole ? Element.ALIGN_RIGHT : Element.ALIGN_LEFT);
    }
    return column;
  }

  private static void go(ColumnText column, boolean simulate) {
    try {
      column.go(simulate);
    } catch (DocumentException e) {
      throw new IllegalStateException(e);
    }
  }

  /** A frame without text. */
  void box(float x, float y, float width, float height, float line) {
    PdfContentByte page = artifact();
    page.setLineWidth(line);
    page.rectangle(x, y, width, height);
    page.stroke();
    page.endMarkedContentSequence();
  }

  void rule(float x1, float y1, float x2, float y2, float line) {
    PdfContentByte page = artifact();
    page.setLineWidth(line);
    page.moveTo(x1, y1);
    page.lineTo(x2, y2);
    page.stroke();
    page.endMarkedContentSequence();
  }

  /** The shape of a mark, whose word or figure stands elsewhere. */
  void shape(Mark mark, float x, float y, float size) {
    PdfContentByte page = artifact();
    page.addTemplate(pen.shape(mark, size), x, y);
    page.endMarkedContentSequence();
  }

  /** What, which and of how many at the head of a page. */
  void head(String title, String what) {
    float size = pen.size;
    float y = top() - size;
    String of = "page " + page() + " of ";
    float ofWide = wide(of, size, false);
    float at = right() - ofWide - size * 1.3f;
    float room = at - size - left() - wide(what, size * 1.15f, true) - size;
    in("H1", () -> line(what, left(), y, size * 1.15f, true));
    PdfContentByte page = artifact();
    String name = pen.fitting(names.in(title), room, false, size);
    page.beginText();
    page.setFontAndSize(pen.plainFont, size);
    page.showTextAligned(Element.ALIGN_LEFT, of, at, y, 0);
    page.endText();
    int way =
        SheetNames.beginsFromTheRight(name)
            ? PdfWriter.RUN_DIRECTION_RTL
            : SheetNames.fromTheRight(name)
                ? PdfWriter.RUN_DIRECTION_LTR
                : PdfWriter.RUN_DIRECTION_NO_BIDI;
    Phrase phrase = new Phrase(new Chunk(name, new Font(pen.plainFont, size)));
    ColumnText.showTextAligned(page, Element.ALIGN_RIGHT, phrase, at - size, y, 0, way, 0);
    if (total == null) {
      total = page.createTemplate(size * 4, size * 2);
    }
    page.addTemplate(total, at + ofWide, y);
    page.endMarkedContentSequence();
  }

  /** A caution on one line under all that stands on the page. */
  void foot(String text) {
    float size = pen.size * 0.8f;
    float room = width() / wide(text, size, false);
    in("P", () -> line(text, left(), bottom() - size * 1.3f, size * Math.min(1, room), false));
  }

  /** A plot in a box, whose words stand elsewhere. */
  void plot(Plot plot, float x, float y, float width, float height) {
    PdfContentByte page = artifact();
    PdfTemplate drawn = page.createTemplate(width, height);
    PlotDrawing.draw(plot, new SheetPlot(drawn, pen, height), width, height);
    page.addTemplate(drawn, x, y);
    page.endMarkedContentSequence();
  }

  /** How much of a page its head takes. */
  float headHigh() {
    return pen.size * 1.8f;
  }

  /** Fills in how many pages there are. */
  void finish() {
    PdfTemplate count = total;
    if (count != null) {
      count.beginText();
      count.setFontAndSize(pen.plainFont, pen.size);
      count.showTextAligned(Element.ALIGN_LEFT, String.valueOf(page()), 0, 0, 0);
      count.endText();
    }
  }

  private PdfContentByte page(PdfStructureElement element) {
    PdfContentByte page = writer.getDirectContent();
    page.beginMarkedContentSequence(element);
    return page;
  }

  private PdfContentByte artifact() {
    PdfContentByte page = writer.getDirectContent();
    page.beginMarkedContentSequence(ARTIFACT);
    return page;
  }
}

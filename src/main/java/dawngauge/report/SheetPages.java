package dawngauge.report;

import com.lowagie.text.Document;
import com.lowagie.text.pdf.PdfContentByte;
import com.lowagie.text.pdf.PdfPageEventHelper;
import com.lowagie.text.pdf.PdfTemplate;
import com.lowagie.text.pdf.PdfWriter;
import dawngauge.ledger.Ledger;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Head and foot of each page: trip, day, page of how many, the shortest cautions. */
final class SheetPages extends PdfPageEventHelper {

  private static final List<String> CAUTIONS = Ledger.CAUTIONS.subList(1, 3);

  private final SheetPen pen;
  private final String title;
  private final float foot;
  private String day = "";

  /** The day whose page is being filled; a new one holds from the next page on. */
  private String shown = "";

  private boolean continued;
  private @Nullable PdfTemplate total;

  SheetPages(SheetPen pen, String title, float foot) {
    this.pen = pen;
    this.title = title;
    this.foot = foot;
  }

  /** The next page begins a day. */
  void day(String name) {
    day = name;
  }

  @Override
  public void onStartPage(PdfWriter writer, Document document) {
    continued = shown.equals(day);
    shown = day;
  }

  @Override
  public void onEndPage(PdfWriter writer, Document document) {
    PdfContentByte page = writer.getDirectContent();
    if (total == null) {
      total = page.createTemplate(pen.size * 4, pen.size * 2);
    }
    float y = document.top() + pen.size * 0.9f;
    float number = pen.size * 7;
    String right = shown + (continued ? ", continued" : "");
    float rightWide = pen.boldFont.getWidthPoint(pen.shown(right), pen.size);
    float room = document.right() - document.left() - number - rightWide - pen.size;
    text(page, pen.fitting(title, room, true, pen.size), document.left(), y, true);
    text(page, pen.shown(right), document.right() - number - rightWide, y, true);
    String of = "page " + writer.getPageNumber() + " of ";
    float ofWide = pen.plainFont.getWidthPoint(of, pen.size);
    float at = document.right() - ofWide - pen.size * 1.3f;
    text(page, of, at, y, false);
    page.addTemplate(total, at + ofWide, y);
    page.setLineWidth(0.6f);
    page.moveTo(document.left(), y - pen.size * 0.4f);
    page.lineTo(document.right(), y - pen.size * 0.4f);
    page.stroke();
    float small = foot / 5.6f;
    float line = document.bottom() - small * 1.9f;
    for (String caution : CAUTIONS) {
      float size = small;
      float wide = pen.plainFont.getWidthPoint(caution, size);
      size = Math.min(size, size * (document.right() - document.left()) / wide);
      page.beginText();
      page.setFontAndSize(pen.plainFont, size);
      page.showTextAligned(PdfContentByte.ALIGN_LEFT, caution, document.left(), line, 0);
      page.endText();
      line -= small * 1.3f;
    }
  }

  @Override
  public void onCloseDocument(PdfWriter writer, Document document) {
    PdfTemplate count = total;
    if (count != null) {
      count.beginText();
      count.setFontAndSize(pen.plainFont, pen.size);
      count.showTextAligned(
          PdfContentByte.ALIGN_LEFT, String.valueOf(writer.getPageNumber() - 1), 0, 0, 0);
      count.endText();
    }
  }

  private void text(PdfContentByte page, String text, float x, float y, boolean bold) {
    page.beginText();
    page.setFontAndSize(bold ? pen.boldFont : pen.plainFont, pen.size);
    page.showTextAligned(PdfContentByte.ALIGN_LEFT, text, x, y, 0);
    page.endText();
  }
}

package dawngauge.report;

import com.lowagie.text.Document;
import com.lowagie.text.PageSize;
import com.lowagie.text.Rectangle;
import com.lowagie.text.pdf.PdfName;
import com.lowagie.text.pdf.PdfString;
import com.lowagie.text.pdf.PdfWriter;
import dawngauge.advice.Advice;
import dawngauge.ledger.Ledger;
import dawngauge.ledger.PlanLines;
import dawngauge.ledger.SheetNotes;
import dawngauge.page.Page;
import java.io.ByteArrayOutputStream;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The sheet of paper for the cab, as PDF: a front page that tells where to do what, on its back why
 * and on what it rests, then a page a day, last what to do if a tire is flat. Every figure on it is
 * one that the ledger shows. Its text is told as headings, tables, rows and cells to programs that
 * read it aloud.
 */
public final class CrewSheet {

  private static final float BODY = 9;
  private static final float BACK = 7;

  /** The paper. */
  public enum Paper {
    /** 8.5 by 11 inches. */
    LETTER(PageSize.LETTER),
    /** 210 by 297 millimeters (ISO 216). */
    A4(PageSize.A4);

    @SuppressWarnings("ImmutableEnumChecker") // the library's constants are never changed
    private final Rectangle size;

    Paper(Rectangle size) {
      this.size = size;
    }

    Rectangle size() {
      return size;
    }
  }

  /**
   * How it is set.
   *
   * @param paper the paper
   * @param large in larger type, fewer stops on a page
   */
  public record Options(Paper paper, boolean large) {}

  /**
   * What stands in no ledger.
   *
   * @param reaches how far the air reaches from places without a hose, a line each
   * @param flat what to do if a tire is flat
   */
  public record More(List<String> reaches, Page flat) {

    /** Copies the list. */
    public More {
      reaches = List.copyOf(reaches);
    }
  }

  private final Ledger ledger;
  private final Options options;
  private final Document document;
  private final SheetNames names;
  private final SheetCanvas canvas;
  private final SheetTires tires;
  private final float scale;

  private CrewSheet(
      Ledger ledger, @Nullable Advice advice, Options options, ByteArrayOutputStream out) {
    this.ledger = ledger;
    this.options = options;
    this.scale = options.large() ? SheetPen.LARGER : 1;
    this.document = new Document(options.paper().size);
    PdfWriter writer = PdfWriter.getInstance(document, out);
    writer.setPdfVersion(PdfWriter.PDF_VERSION_1_5);
    writer.setTagged();
    SheetPen pen = new SheetPen(writer, options.large());
    this.names = new SheetNames(ledger, pen.plainFont);
    this.canvas = new SheetCanvas(writer, document, pen, names);
    this.tires = new SheetTires(ledger, advice);
    document.addTitle(pen.shown(ledger.title()) + ": tires");
    document.addCreator("Dawngauge");
    writer.getExtraCatalog().put(PdfName.LANG, new PdfString("en"));
  }

  /**
   * Sets the sheet.
   *
   * @param ledger what is shown, in its units
   * @param advice what the ledger was made from, or null where no time is known
   * @param plan what the adjustment plan says, or null where it is not followed
   * @param more what else the cab needs
   * @return the PDF
   */
  public static byte[] of(
      Ledger ledger,
      @Nullable Advice advice,
      @Nullable PlanLines plan,
      More more,
      Options options) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    CrewSheet sheet = new CrewSheet(ledger, advice, options, out);
    sheet.document.open();
    sheet.canvas.start();
    sheet.write(plan, more);
    sheet.document.close();
    return out.toByteArray();
  }

  private void write(@Nullable PlanLines plan, More more) {
    Rectangle page = options.paper().size;
    SheetFlow front =
        new SheetFlow(canvas, page, ledger.title(), "Where to do what", BODY * scale, 1);
    new SheetFront(canvas, front, ledger, tires, options.large()).draw();
    canvas.newPage(page);
    Page notes = SheetNotes.of(ledger, plan, more.reaches(), tires.words(), names.said());
    SheetFlow back = new SheetFlow(canvas, page, ledger.title(), notes.title(), BACK * scale, 2);
    PagePdf behind = new PagePdf(canvas, back);
    behind.draw(notes.blocks());
    behind.whereItFits(SheetNotes.WALK_ROUND);
    for (SheetPart part : SheetPart.all(ledger.stops(), tires.vehicles(), options.large())) {
      day(part);
    }
    canvas.newPage(page);
    SheetFlow flat =
        new SheetFlow(canvas, page, ledger.title(), more.flat().title(), BODY * scale, 1);
    new PagePdf(canvas, flat).draw(more.flat().blocks());
    canvas.finish();
  }

  private void day(SheetPart part) {
    Rectangle upright = options.paper().size;
    Rectangle page =
        part.sideways() ? new Rectangle(upright.getHeight(), upright.getWidth()) : upright;
    canvas.sized(page);
    SheetDay day = new SheetDay(canvas, tires, part, options.large());
    if (!day.fits() && part.stops().size() > 1) {
      part.halves().forEach(this::day);
      return;
    }
    canvas.newPage(page);
    List<String> more = day.draw(ledger.title());
    if (!more.isEmpty()) {
      canvas.newPage(upright);
      String what = part.day() + ", continued";
      SheetFlow flow = new SheetFlow(canvas, upright, ledger.title(), what, BODY * scale, 1);
      more.forEach(line -> flow.text(line, false));
    }
  }
}

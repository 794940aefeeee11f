package dawngauge.report;

import com.lowagie.text.Document;
import com.lowagie.text.Element;
import com.lowagie.text.PageSize;
import com.lowagie.text.Paragraph;
import com.lowagie.text.Rectangle;
import com.lowagie.text.pdf.PdfPCell;
import com.lowagie.text.pdf.PdfPTable;
import com.lowagie.text.pdf.PdfWriter;
import dawngauge.advice.Advice;
import dawngauge.ledger.AxleLine;
import dawngauge.ledger.Ledger;
import dawngauge.ledger.PlanPage;
import dawngauge.ledger.StopLine;
import dawngauge.ledger.Trace;
import dawngauge.quantity.QuantityKind;
import java.io.ByteArrayOutputStream;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The sheet of paper for the cab, as PDF: a front page with rig, cold settings, route, trace,
 * walk-round and cautions; then one page a day with each stop's figures, boxes to write readings
 * in, and what to do. Every figure on it is one that the ledger shows.
 */
public final class CrewSheet {

  private static final float MARGIN = 34;

  /** Common practice, no source. */
  private static final List<String> WALK_ROUND =
      List.of(
          "Each stop, walk round: look for a cut, bulge, cord, nail, missing tread, an object between"
              + " duals; feel with the back of the hand: one tire or hub hotter than its mates: stop"
              + " and find out (low, overloaded, brake, bearing).",
          "Wheel nuts · hub warmth · valve caps on · spare · tread and sidewalls.",
          "Each cold morning: gauge every tire, inner duals too; a thump is not a reading.",
          "Start of the trip: spare (pressure, age, fits where it may serve), jack and wrench that fit"
              + " the trailer, a gauge that reaches the pressure.",
          "After a wheel has been off: nuts again after the first 50 miles, then at the next stop.",
          "After a flat, added air or a tire found at 80 % or less: look again at the first stop within"
              + " 50 miles; lost again: do not roll.");

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
   * @param large in larger type, on paper turned sideways
   */
  public record Options(Paper paper, boolean large) {}

  private final Ledger ledger;
  private final @Nullable Advice advice;
  private final Document document;
  private final SheetPen pen;
  private final SheetPages pages;

  private CrewSheet(
      Ledger ledger, @Nullable Advice advice, Options options, ByteArrayOutputStream out) {
    this.ledger = ledger;
    this.advice = advice;
    float foot = options.large() ? 58 : 46;
    Rectangle page = options.large() ? options.paper().size.rotate() : options.paper().size;
    this.document = new Document(page, MARGIN, MARGIN, MARGIN + 20, foot + 12);
    PdfWriter writer = PdfWriter.getInstance(document, out);
    this.pen = new SheetPen(writer, options.large());
    this.pages = new SheetPages(pen, ledger.title(), foot);
    writer.setPageEvent(pages);
    writer.setPdfVersion(PdfWriter.PDF_VERSION_1_5);
    document.addTitle(pen.shown(ledger.title()) + ": tires");
    document.addCreator("Dawngauge");
    document.addHeader("Lang", "en");
  }

  /**
   * Sets the sheet.
   *
   * @param ledger what is shown, in its units
   * @param advice what the ledger was made from, or null where no time is known
   * @param plan what the adjustment plan says, or null where it is not followed
   * @return the PDF
   */
  public static byte[] of(
      Ledger ledger, @Nullable Advice advice, @Nullable PlanPage plan, Options options) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    CrewSheet sheet = new CrewSheet(ledger, advice, options, out);
    sheet.pages.day("Rig and route");
    sheet.document.open();
    sheet.front(plan);
    sheet.days();
    sheet.document.close();
    return out.toByteArray();
  }

  private void front(@Nullable PlanPage plan) {
    add(pen.paragraph(pen.heading(ledger.title())));
    add(pen.paragraph(pen.plain(ledger.when())));
    add(spaced(pen.paragraph(pen.bold(ledger.summary()))));
    for (String line : ledger.go()) {
      add(pen.paragraph(pen.bold("■ " + line)));
    }
    if (plan != null) {
      add(
          spaced(
              pen.paragraph(
                  pen.bold("The plan: " + plan.headline() + " "), pen.plain(plan.why()))));
    }
    rig();
    settings();
    pictures();
    section(
        "Cautions", Ledger.CAUTIONS.stream().map(text -> pen.paragraph(pen.bold(text))).toList());
    if (!ledger.putRight().isEmpty()) {
      section(
          "Check of the rig's fitness: to be put right before leaving",
          ledger.putRight().stream().map(text -> pen.paragraph(pen.plain("□ " + text))).toList());
    }
    section(
        "Walk-round (common practice)",
        WALK_ROUND.stream().map(text -> pen.paragraph(pen.plain("□ " + text))).toList());
    section(
        "How to read the day pages",
        List.of(
            pen.paragraph(
                pen.plain(
                    "Pressures in "
                        + ledger.units().unitOf(QuantityKind.GAUGE_PRESSURE).symbol()
                        + ". reads: what the gauge shows then; range: 9 of 10 readings lie in it, under"
                        + " it: find out why before the rig rolls; settled: once as cool as the air;"
                        + " ahead: lowest on the leg ahead; floor: what the load needs, never roll below;"
                        + " aim: what is set cold; limit: never set above; margin: lowest load margin"
                        + " until the next stop, e by estimate."))));
    section(
        "What the figures rest on",
        ledger.basis().stream().map(text -> pen.paragraph(pen.plain(text))).toList());
    if (!ledger.problems().isEmpty()) {
      section(
          "Missing or assumed",
          ledger.problems().stream().map(text -> pen.paragraph(pen.plain("– " + text))).toList());
    }
  }

  /** Lines under a title, not parted where they fit on one page. */
  private void section(String name, List<Paragraph> lines) {
    PdfPCell cell = new PdfPCell();
    cell.setBorder(Rectangle.NO_BORDER);
    cell.setPadding(0);
    cell.setPaddingTop(pen.size * 0.6f);
    cell.addElement(pen.paragraph(pen.heading(name)));
    lines.forEach(cell::addElement);
    PdfPTable table = new PdfPTable(1);
    table.setWidthPercentage(100);
    table.addCell(cell);
    add(table);
  }

  private static Paragraph spaced(Paragraph paragraph) {
    paragraph.setSpacingAfter(4);
    return paragraph;
  }

  private void add(Element element) {
    SheetPen.add(document, element);
  }

  private void title(String text) {
    Paragraph title = pen.paragraph(pen.heading(text));
    title.setSpacingBefore(pen.size * 0.7f);
    title.setSpacingAfter(pen.size * 0.2f);
    title.setKeepTogether(true);
    add(title);
  }

  private void rig() {
    title("Rig and weights");
    PdfPTable table = new PdfPTable(new float[] {18, 17, 22, 15, 28});
    table.setWidthPercentage(100);
    for (String head : List.of("tires", "axle", "kind", "label", "load at the start")) {
      table.addCell(pen.cell(pen.plain(head), false));
    }
    for (AxleLine axle : ledger.rig()) {
      table.addCell(pen.cell(pen.bold(axle.positions()), false));
      for (String text : List.of(axle.axle(), axle.tires(), axle.label(), axle.load())) {
        table.addCell(pen.cell(pen.plain(text), false));
      }
    }
    add(table);
  }

  /** What is set cold at the first start, by the figures of the first stop. */
  private void settings() {
    StopLine first = ledger.stops().isEmpty() ? null : ledger.stops().get(0);
    if (first == null || first.rows().isEmpty()) {
      return;
    }
    title(
        "Cold settings for the first leg, "
            + ledger.units().unitOf(QuantityKind.GAUGE_PRESSURE).symbol());
    PdfPTable table = new PdfPTable(new float[] {30, 14, 14, 14, 28});
    table.setWidthPercentage(100);
    for (String head : List.of("tires", "aim", "limit", "floor", "")) {
      table.addCell(pen.cell(pen.plain(head), head.length() > 0 && !head.equals("tires")));
    }
    for (StopLine.TireRow row : first.rows()) {
      table.addCell(pen.cell(pen.bold(row.tires()), false));
      table.addCell(pen.cell(pen.bold(row.aim()), true));
      table.addCell(pen.cell(pen.plain(row.ceiling()), true));
      table.addCell(pen.cell(pen.plain(row.floor()), true));
      table.addCell(pen.cell(pen.plain(row.set() ? "set to " + row.checkReads() : ""), false));
    }
    add(table);
  }

  /** Outline of the route and the trace of the tightest tire, beside each other. */
  private void pictures() {
    Advice known = advice;
    if (known == null || known.tracks().isEmpty()) {
      return;
    }
    float wide = document.right() - document.left();
    float high = pen.size * 15;
    boolean map = SheetMap.draws(known.forecast().trip());
    float mapWide = map ? wide * 0.34f : 0;
    Trace trace = Trace.of(known, Trace.tightest(known), ledger.units());
    if (!SheetTrace.draws(trace)) {
      return;
    }
    PdfPTable table = new PdfPTable(map ? new float[] {66, 34} : new float[] {100});
    table.setWidthPercentage(100);
    table.setSpacingBefore(pen.size * 0.8f);
    table.setKeepTogether(true);
    String whose = known.forecast().trip().rig().shortForm(trace.position());
    table.addCell(
        picture(
            whose
                + ", the tire of the lowest margin: thick settled, thin as read with its range, dashed"
                + " floor, bracket cold limit, shaded night; numbers are stops",
            SheetPen.image(SheetTrace.of(pen, trace, known, wide - mapWide - 12, high))));
    if (map) {
      table.addCell(
          picture(
              "route in outline, not a map to drive by",
              SheetPen.image(
                  SheetMap.of(pen, known.forecast().trip(), ledger.units(), mapWide - 6, high))));
    }
    add(table);
  }

  private PdfPCell picture(String caption, Element image) {
    PdfPCell cell = new PdfPCell();
    cell.setBorder(Rectangle.NO_BORDER);
    cell.setPadding(2);
    cell.addElement(image);
    cell.addElement(pen.paragraph(pen.plain(caption)));
    return cell;
  }

  private void days() {
    SheetStop setter = new SheetStop(pen);
    for (StopLine stop : ledger.stops()) {
      if (!stop.newDay().isEmpty()) {
        pages.day(stop.newDay());
        document.newPage();
      }
      add(setter.of(stop));
    }
  }
}

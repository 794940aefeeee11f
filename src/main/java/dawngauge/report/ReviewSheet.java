package dawngauge.report;

import com.lowagie.text.Document;
import com.lowagie.text.Element;
import com.lowagie.text.Paragraph;
import com.lowagie.text.Rectangle;
import com.lowagie.text.pdf.PdfPCell;
import com.lowagie.text.pdf.PdfPTable;
import com.lowagie.text.pdf.PdfTemplate;
import com.lowagie.text.pdf.PdfWriter;
import dawngauge.advice.Advice;
import dawngauge.ambient.MeasuredAir;
import dawngauge.ledger.AccountLines;
import dawngauge.ledger.Ledger;
import dawngauge.ledger.ReadingsTrace;
import dawngauge.ledger.ReviewLines;
import dawngauge.ledger.WeatherSummary;
import dawngauge.quantity.UnitSystem;
import dawngauge.review.PressureAccount;
import dawngauge.review.TireReview;
import dawngauge.review.TripReview;
import dawngauge.trip.Trip;
import java.io.ByteArrayOutputStream;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/**
 * A review on paper, as PDF: what was found, what to do, a line a tire; then each tire that is not
 * sound with its readings beside what a sound one would have read, and its account.
 */
public final class ReviewSheet {

  private static final float MARGIN = 34;
  private static final float FOOT = 46;

  private final Trip trip;
  private final TripReview review;
  private final List<MeasuredAir> measured;
  private final @Nullable Advice sound;
  private final UnitSystem units;
  private final Document document;
  private final SheetPen pen;
  private final float wide;

  private ReviewSheet(
      Trip trip,
      TripReview review,
      List<MeasuredAir> measured,
      @Nullable Advice sound,
      UnitSystem units,
      CrewSheet.Paper paper,
      ByteArrayOutputStream out) {
    this.trip = trip;
    this.review = review;
    this.measured = measured;
    this.sound = sound;
    this.units = units;
    this.document = new Document(paper.size(), MARGIN, MARGIN, MARGIN + 20, FOOT + 12);
    PdfWriter writer = PdfWriter.getInstance(document, out);
    this.pen = new SheetPen(writer, false);
    SheetPages pages = new SheetPages(pen, trip.name(), FOOT);
    pages.day("Review");
    writer.setPageEvent(pages);
    writer.setStrictImageSequence(true);
    writer.setPdfVersion(PdfWriter.PDF_VERSION_1_5);
    document.addTitle(pen.shown(trip.name()) + ": review");
    document.addCreator("Dawngauge");
    document.addHeader("Lang", "en");
    this.wide = document.right() - document.left();
  }

  /**
   * Sets the review.
   *
   * @param measured the air that stations measured at the stops
   * @param sound the trip as it would have gone with sound tires; null where it is not known
   * @return the PDF
   */
  public static byte[] of(
      Trip trip,
      TripReview review,
      List<MeasuredAir> measured,
      @Nullable Advice sound,
      UnitSystem units,
      CrewSheet.Paper paper) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ReviewSheet sheet = new ReviewSheet(trip, review, measured, sound, units, paper, out);
    sheet.document.open();
    sheet.write();
    sheet.document.close();
    return out.toByteArray();
  }

  private void write() {
    ReviewLines lines = ReviewLines.of(trip, review, measured, units);
    add(pen.paragraph(pen.heading(trip.name() + ": why the tires read as they did")));
    add(spaced(pen.paragraph(pen.bold(lines.headline()))));
    lines.findings().forEach(text -> add(spaced(pen.paragraph(pen.plain("– " + text)))));
    if (!lines.next().isEmpty()) {
      title("Before the next haul");
      lines.next().forEach(text -> add(spaced(pen.paragraph(pen.plain("□ " + text)))));
    }
    title("Cautions");
    Ledger.CAUTIONS.forEach(text -> add(pen.paragraph(pen.bold(text))));
    title("Tire by tire");
    PdfPTable table = table(new float[] {14, 22, 14, 22, 28});
    heads(table, List.of("position", "tire", "cold readings", "off, last cold", "found"));
    for (ReviewLines.TireLine line : lines.tires()) {
      table.addCell(pen.cell(pen.bold(line.name()), false));
      for (String text :
          List.of(line.tire(), String.valueOf(line.rounds()), line.off(), line.found())) {
        table.addCell(pen.cell(pen.plain(text), false));
      }
    }
    add(table);
    if (!measured.isEmpty()) {
      title("Air that was measured");
      WeatherSummary.of(measured, units)
          .lines()
          .forEach(text -> add(pen.paragraph(pen.plain(text))));
    }
    for (TireReview tire : review.tires()) {
      if (!tire.sound() && tire.all().size() > 1) {
        tire(tire);
      }
    }
  }

  private void tire(TireReview tire) {
    String name = trip.rig().shortForm(tire.position()) + ", " + tire.position().words();
    Advice known = sound;
    ReadingsTrace trace = known == null ? null : ReadingsTrace.of(known, tire, units);
    if (known != null && trace != null && SheetTrace.draws(trace.trace())) {
      plot(name, trace, known);
      readings(trace);
    } else {
      title(name);
    }
    PressureAccount account = tire.account();
    if (account != null) {
      account(AccountLines.of(account, units));
    }
  }

  /** Title, plot and what it shows, on one page. */
  private void plot(String name, ReadingsTrace trace, Advice known) {
    PdfTemplate plot =
        SheetTrace.of(pen, trace.trace(), trace.dots(), known, wide - 4, pen.size * 14);
    PdfPCell cell = new PdfPCell();
    cell.setBorder(Rectangle.NO_BORDER);
    cell.setPadding(0);
    Paragraph title = pen.paragraph(pen.heading(name));
    title.setSpacingAfter(pen.size * 0.8f);
    cell.addElement(title);
    cell.addElement(SheetPen.image(plot));
    cell.addElement(pen.paragraph(pen.plain("in " + trace.unit() + "; " + ReadingsTrace.WHAT)));
    PdfPTable table = table(new float[] {1});
    table.setSpacingBefore(pen.size);
    table.setKeepTogether(true);
    table.addCell(cell);
    add(table);
  }

  private void readings(ReadingsTrace trace) {
    PdfPTable table = table(new float[] {34, 16, 16, 20, 14});
    heads(table, List.of("read", trace.unit(), "if sound", "9 of 10 within", "off"));
    for (ReadingsTrace.Dot dot : trace.dots()) {
      table.addCell(pen.cell(pen.plain(dot.words()), false));
      table.addCell(pen.cell(pen.plain(trace.shown(dot.read())), false));
      table.addCell(pen.cell(pen.plain(trace.shown(dot.expected())), false));
      String range = trace.shown(dot.low()) + " to " + trace.shown(dot.high());
      table.addCell(pen.cell(pen.plain(range), false));
      table.addCell(pen.cell(pen.plain(trace.off(dot)), false));
    }
    add(table);
  }

  private void account(AccountLines lines) {
    PdfPTable table = table(new float[] {70, 30});
    row(
        table,
        lines.from(),
        String.format(Locale.ROOT, "%.2f", lines.start()).replaceAll("0$", ""));
    lines.parts().forEach(part -> row(table, "    " + part.words(), part.text()));
    row(
        table,
        lines.to(),
        String.format(Locale.ROOT, "%.2f", lines.end()).replaceAll("0$", "") + " " + lines.unit());
    add(table);
    lines.notes().forEach(note -> add(pen.paragraph(pen.plain(note))));
  }

  private void row(PdfPTable table, String words, String figure) {
    table.addCell(pen.cell(pen.plain(words), false));
    table.addCell(pen.cell(pen.plain(figure), false));
  }

  private PdfPTable table(float[] widths) {
    PdfPTable table = new PdfPTable(widths);
    table.setWidthPercentage(100);
    table.setSpacingBefore(pen.size * 0.4f);
    table.setSpacingAfter(pen.size * 0.4f);
    return table;
  }

  private void heads(PdfPTable table, List<String> heads) {
    heads.forEach(head -> table.addCell(pen.cell(pen.bold(head), false)));
  }

  private void title(String text) {
    Paragraph title = pen.paragraph(pen.heading(text));
    title.setSpacingBefore(pen.size * 0.7f);
    title.setSpacingAfter(pen.size * 0.2f);
    title.setKeepTogether(true);
    add(title);
  }

  private static Paragraph spaced(Paragraph paragraph) {
    paragraph.setSpacingAfter(3);
    return paragraph;
  }

  private void add(Element element) {
    SheetPen.add(document, element);
  }
}

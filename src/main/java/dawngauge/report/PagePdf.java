package dawngauge.report;

import com.lowagie.text.Document;
import com.lowagie.text.pdf.PdfName;
import com.lowagie.text.pdf.PdfString;
import com.lowagie.text.pdf.PdfWriter;
import dawngauge.ledger.Ledger;
import dawngauge.page.Block;
import dawngauge.page.Page;
import dawngauge.page.PageRenderer;
import dawngauge.page.Plot;
import java.io.ByteArrayOutputStream;
import java.util.List;

/**
 * Any page as PDF, for paper and for programs that read it aloud: headings, cards, tables and notes
 * are elements of its structure. What a window folds stands open at its place.
 */
public final class PagePdf implements PageRenderer {

  private static final float BODY = 9;
  private static final float SMALL = 7.5f;
  private static final float GAP = 4;

  /** Height of a plot by the size of body text. */
  private static final float PLOT = 15;

  /** No column is made narrower than this, in points. */
  private static final float LEAST = 30;

  /** A table is kept on one page where it takes no more of it than this. */
  private static final float KEPT = 0.4f;

  private static final String TICK = "□ ";

  private final SheetCanvas canvas;
  private final SheetFlow flow;

  /** Draws where the flow is. */
  PagePdf(SheetCanvas canvas, SheetFlow flow) {
    this.canvas = canvas;
    this.flow = flow;
  }

  /**
   * Sets a page.
   *
   * @param page what is shown
   * @param what it is, in a word, at the head of each sheet
   * @param trip name of the trip
   * @param places its stops, in order
   * @return the PDF
   */
  public static byte[] of(
      Page page, String what, String trip, List<String> places, CrewSheet.Paper paper) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    Document document = new Document(paper.size());
    PdfWriter writer = PdfWriter.getInstance(document, out);
    writer.setPdfVersion(PdfWriter.PDF_VERSION_1_5);
    writer.setTagged();
    SheetPen pen = new SheetPen(writer, false);
    SheetNames names = new SheetNames(trip, places, pen.plainFont);
    SheetCanvas canvas = new SheetCanvas(writer, document, pen, names);
    document.addTitle(pen.shown(page.title()));
    document.addCreator("Dawngauge");
    writer.getExtraCatalog().put(PdfName.LANG, new PdfString("en"));
    document.open();
    canvas.start();
    SheetFlow flow =
        new SheetFlow(canvas, paper.size(), trip, what, BODY, 1).withFoot(Ledger.AT_THE_VALVE);
    PagePdf sheet = new PagePdf(canvas, flow);
    flow.text(page.title(), true, BODY * 1.3f);
    sheet.draw(page.blocks());
    if (!names.said().isEmpty()) {
      flow.text(names.said(), true);
    }
    canvas.finish();
    document.close();
    return out.toByteArray();
  }

  /** In order; a heading goes to the next sheet with a table that is kept whole there. */
  void draw(List<Block> blocks) {
    for (int i = 0; i < blocks.size(); i++) {
      if (blocks.get(i) instanceof Block.Heading
          && i + 1 < blocks.size()
          && blocks.get(i + 1) instanceof Block.Table table
          && kept(table) > 0) {
        flow.room(kept(table) + 3 * flow.size());
      }
      blocks.get(i).draw(this);
    }
  }

  /** Height of a table that is not parted; 0 where it may be. */
  private float kept(Block.Table table) {
    float[] widths = widths(table);
    List<String> heads = table.columns().stream().map(Block.Column::head).toList();
    float whole = table.headed() ? high(heads, widths, true) : 0;
    for (List<String> row : table.rows()) {
      whole += high(row, widths, false);
    }
    return whole < KEPT * canvas.top() ? whole : 0;
  }

  /** Draws a card only where there is room for the whole of it. */
  void whereItFits(Block.Card card) {
    float high = flow.size() * 3;
    for (String line : card.todo()) {
      high += canvas.height(TICK + line, flow.width(), flow.size(), false) + 1;
    }
    if (flow.fits(high)) {
      flow.room(high);
      card(card);
    }
  }

  @Override
  public void heading(Block.Heading heading) {
    if (heading.level() == 1) {
      flow.title(heading.text());
    } else {
      title("H3", heading.text());
    }
  }

  private float small() {
    return Math.min(SMALL, flow.size());
  }

  /** A smaller heading, kept with the first lines of what follows. */
  private void title(String type, String text) {
    flow.down(GAP);
    float high = canvas.height(text, flow.width(), flow.size(), true);
    flow.room(Math.min(high + flow.size() * 3, flow.wholeHigh()));
    flow.text(text, true, flow.size(), type);
  }

  @Override
  public void card(Block.Card card) {
    title("H3", card.title());
    card.todo().forEach(line -> flow.text(TICK + line, false));
    card.watch().forEach(line -> flow.text(line, false));
    card.why().forEach(line -> flow.text(line, false, small()));
  }

  @Override
  public void note(Block.Note note) {
    switch (note.weight()) {
      case MAIN -> flow.text(note.text(), true);
      case CAUTION -> flow.text(note.text(), true, small());
      case PLAIN -> flow.text(note.text(), false);
      case LESSER -> flow.text(note.text(), false, small());
    }
  }

  @Override
  public void bullets(Block.Bullets bullets) {
    canvas.in(
        "L",
        () -> bullets.lines().forEach(line -> flow.text("– " + line, false, flow.size(), "LI")));
  }

  @Override
  public void why(Block.Why why) {
    title("H2", why.title());
    draw(why.blocks());
  }

  @Override
  public void table(Block.Table table) {
    flow.down(GAP);
    float[] widths = widths(table);
    canvas.in(
        "Table",
        () -> {
          List<String> heads = table.columns().stream().map(Block.Column::head).toList();
          float headHigh = table.headed() ? high(heads, widths, true) : 0;
          flow.room(Math.max(kept(table), headHigh));
          int page = -1;
          for (List<String> row : table.rows()) {
            float high = high(row, widths, false);
            if (high + headHigh > flow.wholeHigh()) { // no page takes it: cell by cell
              canvas.in("TR", () -> row.forEach(text -> flow.text(text, false, flow.size(), "TD")));
              continue;
            }
            flow.room(high + (page < 0 ? headHigh : 0));
            if (canvas.page() != page && table.headed()) {
              row(table, heads, widths, headHigh, true);
            }
            page = canvas.page();
            row(table, row, widths, high, false);
          }
        });
    flow.down(GAP);
  }

  /** As wide as what stands in them; the widest give way where that is too much. */
  private float[] widths(Block.Table table) {
    float[] widths = new float[table.columns().size()];
    for (int i = 0; i < widths.length; i++) {
      widths[i] = canvas.wide(table.columns().get(i).head(), flow.size(), true);
      for (List<String> row : table.rows()) {
        widths[i] = Math.max(widths[i], canvas.wide(row.get(i), flow.size(), false));
      }
      widths[i] += 1; // else a text that just fits may be broken by rounding
    }
    float room = flow.width() - (widths.length - 1) * 2 * GAP;
    for (float over = sum(widths) - room; over > 0; over = sum(widths) - room) {
      int widest = 0;
      for (int i = 1; i < widths.length; i++) {
        widest = widths[i] > widths[widest] ? i : widest;
      }
      if (widths[widest] <= LEAST) {
        break;
      }
      widths[widest] = Math.max(LEAST, widths[widest] - Math.min(over, 5));
    }
    return widths;
  }

  private static float sum(float[] widths) {
    float sum = 0;
    for (float width : widths) {
      sum += width;
    }
    return sum;
  }

  private float high(List<String> cells, float[] widths, boolean bold) {
    float high = 0;
    for (int i = 0; i < widths.length; i++) {
      high = Math.max(high, canvas.height(cells.get(i), widths[i], flow.size(), bold));
    }
    return high + 1;
  }

  private void row(
      Block.Table table, List<String> cells, float[] widths, float high, boolean heads) {
    canvas.in(
        "TR",
        () -> {
          float x = flow.x();
          for (int i = 0; i < widths.length; i++) {
            String text = cells.get(i);
            float wide = canvas.wide(text, flow.size(), heads);
            boolean right = table.columns().get(i).side() == Block.Side.RIGHT && wide < widths[i];
            float at = right ? x + widths[i] - wide - 1 : x;
            float room = right ? wide + 1 : widths[i];
            Runnable drawing = () -> canvas.wrapped(text, at, flow.y(), room, flow.size(), heads);
            if (heads) {
              canvas.columnHead(drawing);
            } else {
              canvas.in("TD", drawing);
            }
            x += widths[i] + 2 * GAP;
          }
        });
    flow.down(high);
  }

  @Override
  public void plot(Plot plot) {
    if (plot.isKnown()) {
      float high = flow.size() * PLOT;
      float words = canvas.height(plot.spoken(), flow.width(), SMALL, false);
      flow.room(high + words + 2 * GAP);
      canvas.plot(plot, flow.x(), flow.y() - high, flow.width(), high);
      flow.down(high + GAP);
      flow.text(plot.spoken(), false, SMALL);
    }
  }
}

package dawngauge.report;

import com.lowagie.text.Chunk;
import com.lowagie.text.Paragraph;
import com.lowagie.text.Phrase;
import com.lowagie.text.Rectangle;
import com.lowagie.text.pdf.PdfPCell;
import com.lowagie.text.pdf.PdfPTable;
import dawngauge.ledger.StopLine;
import java.util.ArrayList;
import java.util.List;

/** One stop on the sheet: head, figures of the tires, boxes to write in, what to do, leg ahead. */
final class SheetStop {

  private static final String[] HEADS = {
    "tires", "reads", "range", "settled", "reads", "range", "ahead", "floor", "aim", "limit",
    "margin", "mark"
  };

  private static final float[] WIDTHS = {16, 7, 10, 8, 7, 10, 8, 7, 7, 7, 10, 16};

  /** Boxes beside each other. */
  private static final int BOXES = 5;

  private final SheetPen pen;

  SheetStop(SheetPen pen) {
    this.pen = pen;
  }

  /** A table that is not cut by the end of a page where it fits on one, and never within a line. */
  PdfPTable of(StopLine stop) {
    PdfPTable table = new PdfPTable(1);
    table.setWidthPercentage(100);
    table.setKeepTogether(true);
    table.setSplitRows(false);
    PdfPCell top = row();
    top.setBorder(Rectangle.TOP);
    top.setBorderWidthTop(1.2f);
    top.setPaddingTop(pen.size * 0.35f);
    head(stop).forEach(top::addElement);
    if (!stop.rows().isEmpty()) {
      top.addElement(figures(stop));
      if (!stop.chance().isEmpty()) {
        top.addElement(pen.paragraph(pen.plain(stop.chance())));
      }
    }
    table.addCell(top);
    if (!stop.rows().isEmpty()) {
      PdfPCell read = row();
      read.addElement(boxes(stop));
      table.addCell(read);
    }
    for (StopLine.Task task : stop.tasks()) {
      line(
          table,
          pen.paragraph(
              pen.mark(task.mark()),
              pen.bold(" " + task.mark().word() + " " + task.tires() + ": "),
              pen.plain(task.text())));
    }
    for (String habit : stop.routine()) {
      line(table, pen.paragraph(pen.bold("□ gauge "), pen.plain(habit)));
    }
    PdfPCell end = row();
    end.setPaddingBottom(pen.size * 0.7f);
    if (!stop.leg().isEmpty()) {
      Paragraph leg = pen.paragraph(pen.bold("▼ "), pen.plain(stop.leg()));
      leg.setSpacingBefore(pen.size * 0.3f);
      end.addElement(leg);
      stop.cautions().forEach(text -> end.addElement(pen.paragraph(pen.bold("  " + text))));
    }
    table.addCell(end);
    return table;
  }

  private void line(PdfPTable table, Paragraph line) {
    line.setIndentationLeft(pen.size * 1.2f);
    line.setFirstLineIndent(-pen.size * 1.2f);
    PdfPCell cell = row();
    cell.addElement(line);
    table.addCell(cell);
  }

  private static PdfPCell row() {
    PdfPCell cell = new PdfPCell();
    cell.setBorder(Rectangle.NO_BORDER);
    cell.setPadding(0);
    return cell;
  }

  private List<Paragraph> head(StopLine stop) {
    String clock =
        stop.arrive().isEmpty()
            ? stop.leave().isEmpty() ? "" : "leave " + stop.leave()
            : stop.leave().isEmpty()
                ? "arrive " + stop.arrive()
                : stop.arrive() + " → " + stop.leave();
    String zone = stop.zone().isEmpty() ? "" : " " + stop.zone();
    List<Paragraph> lines = new ArrayList<>();
    lines.add(
        pen.paragraph(
            pen.heading(stop.number() + ". " + stop.place() + "   "),
            pen.heading(clock + zone),
            pen.plain("   " + stop.kind())));
    if (!stop.timed()) {
      lines.add(pen.paragraph(pen.plain("time not known")));
      return lines;
    }
    lines.add(
        pen.paragraph(
            pen.bold(stop.air()), pen.plain(" · " + stop.elevation() + " · " + stop.hose())));
    for (String load : stop.loads()) {
      lines.add(pen.paragraph(pen.bold(load)));
    }
    return lines;
  }

  private PdfPTable figures(StopLine stop) {
    PdfPTable table = new PdfPTable(WIDTHS);
    table.setWidthPercentage(100);
    table.setSpacingBefore(pen.size * 0.3f);
    group(table, "", 1);
    group(table, stop.arrive().isEmpty() ? "here" : "on arrival, warm", 3);
    group(table, "before leaving", 2);
    group(table, "", 6);
    for (int i = 0; i < HEADS.length; i++) {
      PdfPCell head = pen.cell(pen.plain(HEADS[i]), right(i));
      head.setPaddingLeft(i == HEADS.length - 1 ? pen.size * 0.7f : pen.size * 0.14f);
      head.setBorder(Rectangle.BOTTOM);
      head.setBorderWidthBottom(0.5f);
      table.addCell(head);
    }
    for (StopLine.TireRow row : stop.rows()) {
      String[] cells = {
        row.tires(),
        row.arriveReads(),
        row.read() ? "read" : row.arriveRange(),
        row.arriveSettled(),
        row.checkReads(),
        row.set() ? "SET" : row.checkRange(),
        row.lowest(),
        row.floor(),
        row.aim(),
        row.ceiling(),
        row.margin() + (row.byEstimate() ? " e" : "")
      };
      for (int i = 0; i < cells.length; i++) {
        boolean strong = i == 0 || i == 1 || i == 4 || (i == 5 && row.set());
        Chunk text = strong ? pen.bold(cells[i]) : pen.plain(cells[i]);
        table.addCell(pen.cell(text, right(i)));
      }
      Phrase mark = new Phrase(pen.size * 1.2f);
      mark.add(pen.mark(row.mark()));
      mark.add(pen.bold(" " + row.mark().word()));
      PdfPCell last = new PdfPCell(mark);
      last.setBorder(Rectangle.NO_BORDER);
      last.setPadding(pen.size * 0.14f);
      last.setPaddingLeft(pen.size * 0.7f);
      last.setNoWrap(true);
      table.addCell(last);
    }
    return table;
  }

  private static boolean right(int column) {
    return column != 0 && column != 2 && column != 5 && column != HEADS.length - 1;
  }

  private void group(PdfPTable table, String text, int columns) {
    PdfPCell cell = pen.cell(pen.bold(text), false);
    cell.setColspan(columns);
    table.addCell(cell);
  }

  /** Two empty boxes a tire: what it reads, and what it was set to. */
  private PdfPTable boxes(StopLine stop) {
    List<String> tires = new ArrayList<>();
    stop.rows().forEach(row -> tires.addAll(List.of(row.tires().split(" ", -1))));
    int columns = Math.min(BOXES, tires.size());
    PdfPTable table = new PdfPTable(columns);
    table.setWidthPercentage(100f * columns / BOXES);
    table.setHorizontalAlignment(PdfPTable.ALIGN_LEFT);
    table.setSpacingBefore(pen.size * 0.35f);
    table.setSpacingAfter(pen.size * 0.35f);
    for (String tire : tires) {
      PdfPTable one = new PdfPTable(new float[] {11, 11, 11});
      PdfPCell name = pen.cell(pen.bold(tire), true);
      name.setNoWrap(true);
      name.setVerticalAlignment(PdfPCell.ALIGN_MIDDLE);
      one.addCell(name);
      one.addCell(box("read"));
      one.addCell(box("set"));
      PdfPCell cell = new PdfPCell(one);
      cell.setBorder(Rectangle.NO_BORDER);
      cell.setPadding(1.5f);
      cell.setPaddingRight(pen.size * 0.4f);
      table.addCell(cell);
    }
    for (int i = tires.size(); i % columns != 0; i++) {
      table.addCell(pen.cell(pen.plain(" "), false));
    }
    return table;
  }

  /** A box with its name small in the corner. */
  private PdfPCell box(String name) {
    PdfPCell box = new PdfPCell(new Phrase(pen.small(name)));
    box.setFixedHeight(pen.size * 2.1f);
    box.setBorderWidth(0.7f);
    box.setPadding(1);
    return box;
  }
}

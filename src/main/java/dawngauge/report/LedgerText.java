package dawngauge.report;

import static dawngauge.report.PlainText.left;
import static dawngauge.report.PlainText.length;
import static dawngauge.report.PlainText.right;

import dawngauge.ledger.AxleLine;
import dawngauge.ledger.Ledger;
import dawngauge.ledger.StopLine;
import dawngauge.quantity.QuantityKind;
import java.util.List;
import java.util.Locale;

/** The ledger as plain text, at most 100 columns, without escape codes. */
public final class LedgerText {

  /** Room for the clocks and the marks' words before the text of a stop. */
  private static final int INDENT = 14;

  private static final List<String> COLUMNS =
      List.of(
          "reads    what the gauge shows then; the range behind it holds 9 of 10 readings; \"read\": it"
              + " was gauged at this stop; \"set\": it is to be set here",
          "settled  what it shows once the tire is as cool as the air",
          "ahead    lowest pressure on the leg ahead; warmth is not credited",
          "floor    what the load needs, rounded up: never roll below it",
          "aim      what is set when cold",
          "limit    lowest maximum of tire, wheel and valve: never set above it",
          "margin   lowest load margin until the next stop, rounded down; e: by estimate");

  private final PlainText out = new PlainText();

  private LedgerText() {}

  /** The whole ledger. */
  public static String of(Ledger ledger) {
    LedgerText text = new LedgerText();
    text.head(ledger);
    TireTable table = new TireTable(ledger);
    for (StopLine stop : ledger.stops()) {
      text.stop(stop, table);
    }
    text.foot(ledger);
    return text.out.toString();
  }

  private void head(Ledger ledger) {
    out.spread("", ledger.title(), ledger.when());
    out.wrapped("", ledger.summary());
    for (String line : ledger.go()) {
      out.wrapped("  ", line);
    }
    out.line("");
    int widest = ledger.rig().stream().mapToInt(axle -> length(axle.positions())).max().orElse(0);
    for (AxleLine axle : ledger.rig()) {
      out.wrapped(
          "  " + left(axle.positions(), widest) + "  ",
          String.join(" · ", axle.axle(), axle.tires(), axle.label(), axle.load()));
    }
    if (ledger.rig().isEmpty()) {
      out.line("  No tire of the rig is forecast.");
    }
    out.line("");
    out.wrapped(
        "",
        "Pressures in "
            + ledger.units().unitOf(QuantityKind.GAUGE_PRESSURE).symbol()
            + ". What the columns mean stands at the end, with the cautions.");
  }

  private void stop(StopLine stop, TireTable table) {
    if (!stop.newDay().isEmpty()) {
      out.line("");
      String day = stop.newDay().toUpperCase(Locale.ROOT) + " ";
      out.line(day + "─".repeat(PlainText.WIDTH - length(day)));
    }
    out.line("");
    String indent = " ".repeat(INDENT);
    String clock = right(stop.arrive(), 5) + " " + left(stop.leave(), 7) + " ";
    String title =
        stop.number()
            + ". "
            + stop.place()
            + (stop.zone().isEmpty() ? "" : " (" + stop.zone() + ")")
            + " · "
            + stop.kind();
    out.spread(
        clock,
        title,
        stop.timed()
            ? String.join(" · ", stop.air(), stop.elevation(), stop.hose())
            : "time not known");
    if (!stop.airFrom().isEmpty()) {
      out.wrapped(indent, stop.airFrom());
    }
    for (String load : stop.loads()) {
      out.wrapped(indent, load);
    }
    table.print(out, stop);
    if (!stop.chance().isEmpty()) {
      out.wrapped(indent, stop.chance());
    }
    for (StopLine.Task task : stop.tasks()) {
      out.wrapped(left("  " + task.mark().word(), INDENT), task.tires() + ": " + task.text());
    }
    for (String habit : stop.routine()) {
      out.wrapped(left("  gauge", INDENT), habit);
    }
    if (!stop.leg().isEmpty()) {
      String rail = left("      │", INDENT);
      out.wrapped(rail, stop.leg());
      for (String caution : stop.cautions()) {
        out.wrapped(rail, caution);
      }
    }
  }

  private void foot(Ledger ledger) {
    out.line("");
    out.line("─".repeat(PlainText.WIDTH));
    for (String basis : ledger.basis()) {
      out.wrapped("", basis);
    }
    if (!ledger.problems().isEmpty()) {
      out.line("");
      out.line("Missing or assumed");
      for (String problem : ledger.problems()) {
        out.wrapped("  - ", problem);
      }
    }
    out.line("");
    out.line("Columns");
    for (String column : COLUMNS) {
      out.wrapped("  " + column.substring(0, 9), column.substring(9));
    }
    out.wrapped(
        "  ",
        "Tires whose figures agree to half a psi share a line, with the figures of the one of the"
            + " lowest margin. \"Before leaving\" is when the rig leaves or, before the first start of"
            + " a day, half an hour after sunrise if that is earlier. A leaving time with +1 is on the"
            + " next day.");
    out.line("");
    out.line("Cautions");
    for (String caution : Ledger.CAUTIONS) {
      out.wrapped("  - ", caution);
    }
  }
}

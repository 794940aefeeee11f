package dawngauge.report;

import static dawngauge.report.PlainText.left;
import static dawngauge.report.PlainText.length;
import static dawngauge.report.PlainText.right;

import dawngauge.explain.Terms;
import dawngauge.ledger.AxleLine;
import dawngauge.ledger.Card;
import dawngauge.ledger.Ledger;
import dawngauge.ledger.StopLine;
import dawngauge.quantity.QuantityKind;
import dawngauge.trip.Itinerary;
import java.util.List;
import java.util.Locale;

/** The ledger as plain text, at most 100 columns, without escape codes. */
public final class LedgerText {

  /** Room for the clocks and the marks' words before the text of a stop. */
  private static final int INDENT = 14;

  private static final int COLUMN_NAME = 13;

  private static final List<String> COLUMNS =
      List.of(
          "reads        what the gauge shows then; the range behind it holds 9 of 10 readings; \"read\":"
              + " it was gauged at this stop; \"set\": it is to be set here",
          left(Terms.COLD_HERE, COLUMN_NAME) + "what it shows once the tire is as cool as the air",
          left(Terms.LOWEST_AHEAD, COLUMN_NAME)
              + "lowest pressure on the leg ahead; warmth is not credited",
          left(Terms.LOWEST_SAFE, COLUMN_NAME)
              + "what the load needs, rounded up: never roll below it",
          left(Terms.SET_COLD_TO, COLUMN_NAME) + "what is set when cold",
          left(Terms.NEVER_OVER, COLUMN_NAME)
              + "lowest maximum of tire, wheel and valve, cold: never set above it",
          "margin       lowest load margin until the next stop, rounded down; e: by estimate");

  private final PlainText out = new PlainText();
  private final boolean why;

  private LedgerText(boolean why) {
    this.why = why;
  }

  /**
   * The whole ledger.
   *
   * @param why whether with reasons and sources
   */
  public static String of(Ledger ledger, boolean why) {
    LedgerText text = new LedgerText(why);
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
            + "; ○: nothing to do. Under its range: look for a leak. Unless told: chance of too little"
            + " air under 1 %, top speed "
            + ledger.units().format(Itinerary.LEAST_ASSUMED_TOP)
            + "."
            + (why ? "" : " More by --why."));
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
    if (why && !stop.airFrom().isEmpty()) {
      out.wrapped(indent, stop.airFrom());
    }
    for (String load : stop.loads()) {
      out.wrapped(indent, load);
    }
    table.print(out, stop, !stop.newDay().isEmpty());
    String first = "  do";
    for (Card.Line line : why ? stop.card().todo() : stop.card().first()) {
      out.wrapped(left(first, INDENT), line.text());
      first = "";
    }
    if (!why && stop.card().more() > 0) {
      out.wrapped(indent, "and " + stop.card().more() + " more: see --why");
    }
    for (String line : stop.card().watch()) {
      out.wrapped(indent, line);
    }
    if (why ? !stop.chance().isEmpty() : !stop.slightChance()) {
      out.wrapped(indent, stop.chance());
    }
    first = "  why";
    for (StopLine.Task task : why ? stop.tasks() : List.<StopLine.Task>of()) {
      out.wrapped(
          left(first, INDENT), task.mark().word() + ", " + task.tires() + ": " + task.text());
      first = "";
    }
    if (why && !stop.beside().isEmpty()) {
      out.wrapped(left(first, INDENT), stop.beside());
      first = "";
    }
    for (String habit : why ? stop.routine() : List.<String>of()) {
      out.wrapped(left(first, INDENT), "gauge " + habit);
      first = "";
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
    for (String basis : why ? ledger.basis() : List.<String>of()) {
      out.wrapped("", basis);
    }
    if (!ledger.problems().isEmpty()) {
      out.line("");
      out.line("Missing or assumed");
      for (String problem : ledger.problems()) {
        out.wrapped("  - ", problem);
      }
    }
    if (why) {
      columns();
    }
    out.line("");
    out.line("Cautions");
    for (String caution : Ledger.CAUTIONS) {
      out.wrapped("  - ", caution);
    }
  }

  private void columns() {
    out.line("");
    out.line("Columns");
    for (String column : COLUMNS) {
      out.wrapped("  " + column.substring(0, COLUMN_NAME), column.substring(COLUMN_NAME));
    }
    out.wrapped(
        "  ",
        "Tires whose figures agree to half a psi share a line, with the figures of the one of the"
            + " lowest margin. \"Leaving\" is when the rig leaves or, before the first start of a day,"
            + " half an hour after sunrise if that is earlier. A leaving time with +1 is on the next"
            + " day.");
  }
}

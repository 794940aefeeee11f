package dawngauge.report;

import dawngauge.ledger.AxleLine;
import dawngauge.ledger.Ledger;
import dawngauge.ledger.StopLine;
import dawngauge.quantity.QuantityKind;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** The ledger as plain text, at most {@value #WIDTH} columns, without escape codes. */
public final class LedgerText {

  /** Widest line. */
  public static final int WIDTH = 100;

  private static final int INDENT = 13;

  /** Width of the column of tires. */
  private static final int NAMES = 19;

  /** Room for the range behind a reading. */
  private static final int RANGE = 10;

  private final StringBuilder out = new StringBuilder();

  private LedgerText() {}

  /** The whole ledger. */
  public static String of(Ledger ledger) {
    LedgerText text = new LedgerText();
    text.head(ledger);
    for (StopLine stop : ledger.stops()) {
      text.stop(stop);
    }
    text.foot(ledger);
    return text.out.toString();
  }

  private void head(Ledger ledger) {
    String when = ledger.when();
    int gap = Math.max(1, WIDTH - length(ledger.title()) - length(when));
    line(ledger.title() + " ".repeat(gap) + when);
    wrapped("", ledger.summary());
    line("");
    for (AxleLine axle : ledger.rig()) {
      String names = String.format(Locale.ROOT, "  %-20s ", axle.positions());
      wrapped(names, String.join(" · ", axle.axle(), axle.tires(), axle.label(), axle.load()));
    }
    line("");
    String unit = ledger.units().unitOf(QuantityKind.GAUGE_PRESSURE).symbol();
    wrapped(
        "",
        "Pressures in "
            + unit
            + ". Reads: as the gauge shows it then, 9 of 10 readings in the range behind it."
            + " Settled: once as cool as the air. Ahead: lowest on the leg ahead, warmth not"
            + " credited. Floor: what the load needs, never roll below it. Aim: to be set cold."
            + " Limit: never set above it. Margin: lowest load margin until the next stop; e: by"
            + " estimate.");
  }

  private void stop(StopLine stop) {
    if (!stop.newDay().isEmpty()) {
      line("");
      String day = stop.newDay().toUpperCase(Locale.ROOT);
      line(day + " " + "─".repeat(Math.max(0, WIDTH - length(day) - 1)));
    }
    line("");
    String clock = String.format(Locale.ROOT, "%5s %5s  ", stop.arrive(), stop.leave());
    String title =
        stop.place()
            + (stop.zone().isEmpty() ? "" : " (" + stop.zone() + ")")
            + " · "
            + stop.kind();
    String facts = String.join(" · ", stop.air(), stop.elevation(), stop.hose());
    int gap = WIDTH - INDENT - length(title) - length(facts);
    if (gap > 0) {
      line(clock + title + " ".repeat(gap) + facts);
    } else {
      wrapped(clock, title + " · " + facts);
    }
    if (!stop.airFrom().isEmpty()) {
      wrapped(" ".repeat(INDENT), stop.airFrom());
    }
    for (String load : stop.loads()) {
      wrapped(" ".repeat(INDENT), load);
    }
    if (!stop.rows().isEmpty()) {
      table(stop);
    }
    for (StopLine.Task task : stop.tasks()) {
      String word = task.mark().word();
      wrapped(String.format(Locale.ROOT, "  %-10s ", word), task.tires() + ": " + task.text());
    }
    if (!stop.leg().isEmpty()) {
      wrapped("      │      ", stop.leg());
      for (String caution : stop.cautions()) {
        wrapped("      │      ", caution);
      }
    }
  }

  private void table(StopLine stop) {
    boolean last = stop.leg().isEmpty();
    boolean read = stop.rows().stream().anyMatch(StopLine.TireRow::read);
    line(
        row(
            "",
            read ? "read" : "arriving",
            "",
            last ? "" : "leaving",
            "",
            "",
            "",
            "",
            "",
            "",
            "",
            ""));
    line(
        row(
            "tires",
            read ? "" : reads("reads", "range"),
            "settled",
            last ? "" : reads("reads", "range"),
            last ? "" : "settled",
            last ? "" : "ahead",
            "floor",
            "aim",
            "limit",
            "margin",
            "",
            "mark"));
    for (StopLine.TireRow tire : stop.rows()) {
      List<String> names = split(tire.tires(), NAMES);
      for (int i = 0; i < names.size() - 1; i++) {
        line("  " + names.get(i));
      }
      line(
          row(
              names.get(names.size() - 1),
              reads(tire.arriveReads(), tire.arriveRange()),
              tire.read() ? "" : tire.arriveSettled(),
              last ? "" : reads(tire.checkReads(), tire.checkRange()),
              last ? "" : tire.checkSettled(),
              last ? "" : tire.lowest(),
              tire.floor(),
              tire.aim(),
              tire.ceiling(),
              tire.margin(),
              tire.byEstimate() ? "e" : "",
              tire.mark().word()));
    }
  }

  /** A reading with the range behind it, so that the readings stand under one another. */
  private static String reads(String reading, String range) {
    return range.isEmpty()
        ? reading + " ".repeat(RANGE)
        : reading + " " + String.format(Locale.ROOT, "%-" + (RANGE - 1) + "s", range);
  }

  private static String row(Object... cells) {
    return String.format(
            Locale.ROOT, "  %-19s %14s %7s %14s %7s %5s %5s %4s %5s %6s%1s %-9s", cells)
        .stripTrailing();
  }

  private void foot(Ledger ledger) {
    line("");
    line("─".repeat(WIDTH));
    for (String basis : ledger.basis()) {
      wrapped("", basis);
    }
    if (!ledger.problems().isEmpty()) {
      line("");
      line("Missing or assumed");
      for (String problem : ledger.problems()) {
        wrapped("  - ", problem);
      }
    }
    line("");
    line("Cautions");
    for (String caution : Ledger.CAUTIONS) {
      wrapped("  - ", caution);
    }
  }

  private void wrapped(String first, String text) {
    String indent = " ".repeat(length(first));
    List<String> lines = split(text, WIDTH - length(first));
    for (int i = 0; i < lines.size(); i++) {
      line((i == 0 ? first : indent) + lines.get(i));
    }
  }

  /** Breaks at blanks; a word wider than the line is broken where it must. */
  static List<String> split(String text, int width) {
    List<String> lines = new ArrayList<>();
    StringBuilder current = new StringBuilder();
    for (String word : text.split(" ", -1)) {
      String rest = word;
      if (current.length() > 0 && length(current) + 1 + length(rest) > width) {
        lines.add(current.toString());
        current.setLength(0);
      }
      while (length(rest) > width) {
        int end = rest.offsetByCodePoints(0, width);
        lines.add(rest.substring(0, end));
        rest = rest.substring(end);
      }
      if (current.length() > 0) {
        current.append(' ');
      }
      current.append(rest);
    }
    lines.add(current.toString());
    return lines;
  }

  private static int length(CharSequence text) {
    return (int) text.codePoints().count();
  }

  private void line(String text) {
    out.append(text.stripTrailing()).append('\n');
  }
}

package dawngauge.ledger;

import dawngauge.advice.Mark;
import dawngauge.advice.Reason;
import dawngauge.advice.TireAdvice;
import dawngauge.explain.Terms;
import dawngauge.trip.WheelPosition;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What is said of the grid's cells and stops, to who points at one or cannot see it.
 *
 * @param grid the grid
 */
record GridWords(StopGrid grid) {

  /**
   * A tire at a stop as it is read out: "Weatherford TX, trailer axle 2 right, reads 73 to 79, set
   * 85 on arrival".
   */
  String spoken(int row, int column) {
    TireAdvice advised = grid.worst(row, grid.columns().get(column));
    String place = grid.place(row);
    if (advised == null) {
      return place + ", " + grid.columns().get(column).words() + ", " + Mark.UNKNOWN.word();
    }
    WheelPosition position = advised.tire().fitted().position();
    StopLine line = grid.line(row);
    StopLine.TireRow figures = line.row(grid.name(advised));
    String said = place + ", " + position.words();
    if (figures == null) {
      return said + ", " + (advised.mark() == Mark.UNKNOWN ? Mark.UNKNOWN.word() : "passed");
    }
    StopGrid.Cell cell = grid.cell(row, column);
    String text =
        switch (grid.display()) {
          case READS -> readsSpoken(figures);
          case COLD_HERE -> Terms.COLD_HERE + " " + spelled(StopGrid.coldHere(figures));
          case MARGIN -> "load margin " + spelled(StopGrid.known(figures.margin()));
        };
    boolean sets = figures.sets() && advised.mark() == Mark.ADJUST;
    String mark = advised.mark() == Mark.CLEAR || cell.framed() ? "" : ", " + advised.mark().word();
    String change = grid.change(row, column);
    return said
        + ", "
        + text
        + mark
        + (sets ? ", " + setSpoken(line, figures, cell) : "")
        + (change.isEmpty() ? "" : ", what if: " + change.replace("→", "set to "));
  }

  private static String setSpoken(StopLine line, StopLine.TireRow figures, StopGrid.Cell cell) {
    return line.conditional(cell.tire())
        ? "set it only as the stop tells"
        : "set " + figures.figure() + " " + figures.when();
  }

  private static String readsSpoken(StopLine.TireRow figures) {
    String range = range(figures);
    return figures.read()
        ? "was read " + figures.arriveReads()
        : "reads "
            + (range.isEmpty() ? spelled(StopGrid.reads(figures)) : range.replace("–", " to "));
  }

  private static String range(StopLine.TireRow figures) {
    return figures.arriveRange().isEmpty() && !figures.set()
        ? figures.checkRange()
        : figures.arriveRange();
  }

  private static String spelled(String figure) {
    return figure.equals(StopGrid.NOT_KNOWN) ? Mark.UNKNOWN.word() : figure;
  }

  /** Two lines about a cell: all its figures with their range, and the strongest reason. */
  String tip(int row, int column) {
    TireAdvice advised = grid.worst(row, grid.columns().get(column));
    StopLine line = grid.line(row);
    StopLine.TireRow figures = advised == null ? null : line.row(grid.name(advised));
    if (advised == null || figures == null) {
      return spoken(row, column);
    }
    String range = range(figures);
    String said =
        Stream.of(
                advised.tire().fitted().position().words(),
                (figures.read() ? "read " : "reads ")
                    + spelled(StopGrid.reads(figures))
                    + (range.isEmpty() ? "" : " (" + range + ")"),
                Terms.COLD_HERE + " " + spelled(StopGrid.coldHere(figures)),
                "margin "
                    + spelled(StopGrid.known(figures.margin()))
                    + (figures.byEstimate() ? " by estimate" : ""),
                advised.mark() == Mark.ADJUST && figures.sets()
                    ? setSpoken(line, figures, grid.cell(row, column))
                    : "")
            .filter(part -> !part.isEmpty())
            .collect(Collectors.joining(" · "));
    return said
        + "\n"
        + advised.reasons().stream()
            .findFirst()
            .map(Reason::text)
            .map(text -> advised.mark().word() + ": " + text.in(grid.ledger().units()))
            .orElse(advised.mark().word());
  }

  /** Two lines about a stop: its place and facts, the leg ahead. */
  String tip(int row) {
    StopLine line = grid.line(row);
    String facts =
        Stream.of(
                line.place(),
                line.kind(),
                line.arrive().isEmpty() || line.leave().isEmpty()
                    ? grid.clock(row)
                    : line.arrive() + " to " + line.leave(),
                line.zone(),
                line.air(),
                line.elevation(),
                line.hose())
            .filter(fact -> !fact.isEmpty())
            .collect(Collectors.joining(" · "));
    return line.leg().isEmpty() ? facts : facts + "\n" + line.leg();
  }

  /** A whole stop as it is read out: its strongest mark, what to do, what to watch. */
  String spoken(int row) {
    StopLine stop = grid.line(row);
    StringBuilder text = new StringBuilder();
    text.append("Stop ").append(stop.number()).append(", ").append(stop.place());
    text.append(", ").append(grid.mark(row).word());
    for (Card.Line line : stop.card().todo()) {
      text.append(". ").append(line.mark().word()).append(". ").append(line.text());
    }
    stop.card().watch().forEach(line -> text.append(". ").append(line));
    if (!stop.slightChance()) {
      text.append(". ").append(stop.chance());
    }
    return text.toString();
  }
}

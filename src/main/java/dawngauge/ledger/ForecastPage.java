package dawngauge.ledger;

import dawngauge.advice.Mark;
import dawngauge.explain.Terms;
import dawngauge.page.Block;
import dawngauge.page.Block.Column;
import dawngauge.page.Block.Side;
import dawngauge.page.Page;
import dawngauge.quantity.QuantityKind;
import dawngauge.trip.Itinerary;
import java.util.ArrayList;
import java.util.List;

/** A forecast as a page: under each day a card a stop, its tires in a table, the leg ahead. */
public final class ForecastPage {

  private static final String READS = "reads";
  private static final String RANGE = "range";

  private static final List<Column> COLUMNS =
      List.of(
          new Column("tires", Side.LEFT),
          new Column("arrives " + READS, Side.RIGHT),
          new Column(RANGE, Side.LEFT),
          new Column(Terms.COLD_HERE, Side.RIGHT),
          new Column("leaves " + READS, Side.RIGHT),
          new Column(RANGE, Side.LEFT),
          new Column(Terms.LOWEST_AHEAD, Side.RIGHT),
          new Column(Terms.LOWEST_SAFE, Side.RIGHT),
          new Column(Terms.SET_COLD_TO, Side.RIGHT),
          new Column(Terms.NEVER_OVER, Side.RIGHT),
          new Column("margin", Side.LEFT),
          new Column("mark", Side.LEFT));

  private static final List<List<String>> MEANING =
      List.of(
          List.of(
              READS,
              "what the gauge shows then; the range behind it holds 9 of 10 readings; \"read\": it"
                  + " was gauged at this stop; \"set\": it is to be set here"),
          List.of(Terms.COLD_HERE, "what it shows once the tire is as cool as the air"),
          List.of(Terms.LOWEST_AHEAD, "lowest pressure on the leg ahead; warmth is not credited"),
          List.of(Terms.LOWEST_SAFE, "what the load needs, rounded up: never roll below it"),
          List.of(Terms.SET_COLD_TO, "what is set when cold"),
          List.of(
              Terms.NEVER_OVER,
              "lowest maximum of tire, wheel and valve, cold: never set above it"),
          List.of(
              "margin", "lowest load margin until the next stop, rounded down; e: by estimate"));

  private static final String SHARED =
      "Tires whose figures agree to half a psi share a line, with the figures of the one of the"
          + " lowest margin. \"Leaving\" is when the rig leaves or, before the first start of a day,"
          + " half an hour after sunrise if that is earlier. A leaving time with +1 is on the next"
          + " day.";

  private final Ledger ledger;
  private final List<Block> blocks = new ArrayList<>();

  private ForecastPage(Ledger ledger) {
    this.ledger = ledger;
  }

  /** The page of a ledger. */
  public static Page of(Ledger ledger) {
    ForecastPage page = new ForecastPage(ledger);
    page.head();
    ledger.stops().forEach(page::stop);
    page.foot();
    String when = ledger.when().isEmpty() ? "" : " · " + ledger.when();
    return new Page(ledger.title() + when, page.blocks);
  }

  private void note(Block.Weight weight, String text) {
    blocks.add(new Block.Note(weight, text));
  }

  private void head() {
    note(Block.Weight.MAIN, ledger.summary());
    ledger.go().forEach(line -> note(Block.Weight.CAUTION, line));
    List<List<String>> rig = new ArrayList<>();
    ledger.rig().forEach(axle -> rig.add(List.of(axle.positions(), axle.words())));
    if (rig.isEmpty()) {
      note(Block.Weight.PLAIN, "No tire of the rig is forecast.");
    } else {
      blocks.add(Block.Table.ofWords("The rig, a line an axle", List.of("", ""), rig));
    }
    note(
        Block.Weight.MAIN,
        "Pressures in "
            + ledger.units().unitOf(QuantityKind.GAUGE_PRESSURE).symbol()
            + "; ○: nothing to do. Under its range: look for a leak. Unless told: chance of too"
            + " little air under 1 %, top speed "
            + ledger.units().format(Itinerary.LEAST_ASSUMED_TOP)
            + "."
            + (ledger.assumes().isEmpty() ? "" : " " + ledger.assumes()));
  }

  private void stop(StopLine stop) {
    if (!stop.newDay().isEmpty()) {
      blocks.add(new Block.Heading(stop.newDay(), 1));
    }
    blocks.add(card(stop));
    if (!stop.rows().isEmpty()) {
      blocks.add(
          new Block.Table(
              "Tires at " + stop.place(),
              COLUMNS,
              stop.rows().stream().map(ForecastPage::row).toList()));
    }
    if (!stop.leg().isEmpty()) {
      note(Block.Weight.PLAIN, "Then " + stop.leg());
      stop.cautions().forEach(caution -> note(Block.Weight.CAUTION, caution));
    }
  }

  private static Block card(StopLine stop) {
    return card(stop, title(stop));
  }

  /** What to do at a stop, with what it rests on. */
  static Block card(StopLine stop, String title) {
    Card card = stop.card();
    List<String> todo = new ArrayList<>(card.first().stream().map(Card.Line::text).toList());
    List<String> watch = new ArrayList<>(stop.loads());
    List<String> why = new ArrayList<>();
    if (card.more() > 0) {
      todo.add("and " + card.more() + " more: see why");
      card.todo().stream().skip(card.first().size()).forEach(line -> why.add(line.text()));
    }
    watch.addAll(card.watch());
    if (!stop.chance().isEmpty()) {
      (stop.slightChance() ? why : watch).add(stop.chance());
    }
    for (StopLine.Task task : stop.tasks()) {
      why.add(task.mark().word() + ", " + task.told());
    }
    if (!stop.beside().isEmpty()) {
      why.add(stop.beside());
    }
    stop.routine().forEach(habit -> why.add("gauge " + habit));
    if (!stop.airFrom().isEmpty()) {
      why.add(stop.airFrom());
    }
    return new Block.Card(title, todo, watch, why);
  }

  /** "2. Walsenburg CO · rest · 07:13 to 07:33 · 28 → 29 °F · 6171 ft · no hose". */
  private static String title(StopLine stop) {
    return place(stop) + " · " + when(stop);
  }

  /** "2. Walsenburg CO". */
  static String place(StopLine stop) {
    return stop.number()
        + ". "
        + stop.place()
        + (stop.zone().isEmpty() ? "" : " (" + stop.zone() + ")");
  }

  /** "rest · 07:13 to 07:33 · 28 → 29 °F · 6171 ft · no hose". */
  static String when(StopLine stop) {
    if (!stop.timed()) {
      return stop.kind() + " · time not known";
    }
    String when =
        stop.arrive().isEmpty()
            ? "leaves " + stop.leave()
            : stop.leave().isEmpty() ? stop.arrive() : stop.arrive() + " to " + stop.leave();
    return String.join(" · ", stop.kind(), when, stop.air(), stop.elevation(), stop.hose());
  }

  private static List<String> row(StopLine.TireRow row) {
    return List.of(
        row.tires(),
        row.arriveReads(),
        row.read() ? "read" : row.arriveRange(),
        row.arriveSettled(),
        row.checkReads(),
        row.set() ? "set" : row.checkRange(),
        row.lowest(),
        row.floor(),
        row.aim(),
        row.ceiling(),
        row.margin() + (row.byEstimate() ? " e" : ""),
        mark(row.mark()));
  }

  private static String mark(Mark mark) {
    return switch (mark) {
      case CLEAR -> "○";
      case RECHECK -> "check";
      case ADJUST, HOLD, UNKNOWN -> mark.word();
    };
  }

  private void foot() {
    if (!ledger.problems().isEmpty()) {
      blocks.add(new Block.Heading("Missing or assumed", 1));
      blocks.add(new Block.Bullets(ledger.problems()));
    }
    blocks.add(
        new Block.Why(
            "What the figures rest on",
            ledger.basis().stream()
                .map(basis -> (Block) new Block.Note(Block.Weight.PLAIN, basis))
                .toList()));
    blocks.add(
        new Block.Why(
            "Columns",
            List.of(
                Block.Table.ofWords("What the columns mean", List.of("", ""), MEANING),
                new Block.Note(Block.Weight.LESSER, SHARED))));
    blocks.addAll(Ledger.cautions());
  }
}

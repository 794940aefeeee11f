package dawngauge.ledger;

import dawngauge.explain.Terms;
import dawngauge.page.Block;
import dawngauge.page.Block.Column;
import dawngauge.page.Block.Side;
import dawngauge.page.Page;
import dawngauge.trip.Trip;
import java.util.ArrayList;
import java.util.List;

/** Reminders as a page: under each day a card a reminder, with the figures of the tires then. */
public final class ReminderPage {

  private static final List<Column> COLUMNS =
      List.of(
          new Column("tires", Side.LEFT),
          new Column("expected", Side.RIGHT),
          new Column("range", Side.LEFT),
          new Column(Terms.LOWEST_SAFE, Side.RIGHT),
          new Column(Terms.SET_COLD_TO, Side.RIGHT),
          new Column(Terms.NEVER_OVER + " cold", Side.RIGHT));

  private ReminderPage() {}

  /**
   * The page.
   *
   * @param trip the trip
   * @param reminders in time order
   */
  public static Page of(Trip trip, List<ReminderLine> reminders) {
    List<Block> blocks = new ArrayList<>();
    if (reminders.isEmpty()) {
      blocks.add(new Block.Note(Block.Weight.MAIN, "Nothing is left to be reminded of."));
    }
    String unit =
        reminders.stream()
            .map(reminder -> reminder.figures().unit())
            .filter(symbol -> !symbol.isEmpty())
            .findFirst()
            .orElse("");
    if (!unit.isEmpty()) {
      blocks.add(
          new Block.Note(
              Block.Weight.MAIN,
              "Pressures in " + unit + ". Short forms: " + TireNames.of(trip.rig()).key() + "."));
    }
    String day = "";
    for (ReminderLine reminder : reminders) {
      String now = Wording.day(reminder.start(), reminder.zone());
      if (!now.equals(day)) {
        blocks.add(new Block.Heading(now, 1));
        day = now;
      }
      blocks.addAll(blocks(reminder));
    }
    blocks.addAll(Ledger.cautions());
    return new Page(trip.name() + ": when to look at the tires", blocks);
  }

  private static List<Block> blocks(ReminderLine reminder) {
    List<Block> blocks = new ArrayList<>();
    String when =
        Wording.clock(reminder.start(), reminder.zone())
            + " "
            + Wording.zone(reminder.start(), reminder.zone());
    blocks.add(
        new Block.Card(
            when + " · " + reminder.summary(), reminder.todo(), reminder.watch(), List.of()));
    List<List<String>> rows = reminder.figures().rows();
    if (!rows.isEmpty()) {
      String spoken = "Figures of the tires at " + reminder.place();
      blocks.add(new Block.Table(spoken, COLUMNS, rows, true));
      blocks.add(new Block.Note(Block.Weight.CAUTION, Ledger.AT_THE_VALVE));
    }
    return blocks;
  }
}

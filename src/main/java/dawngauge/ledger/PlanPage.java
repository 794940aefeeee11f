package dawngauge.ledger;

import dawngauge.explain.Terms;
import dawngauge.page.Block;
import dawngauge.page.Page;
import dawngauge.trip.Trip;
import java.util.ArrayList;
import java.util.List;

/** An adjustment plan as a page: a card each stop that it uses, then other habits beside it. */
public final class PlanPage {

  private static final String MEANING =
      "From here on. Margin: lowest load margin; chance: highest one of a tire under what its load"
          + " needs; too low: time rolled with a tire expected under that; starts over limit: days"
          + " started with a cold tire over its limit; starts low: days started with a tire low for"
          + " what it is "
          + Terms.SET_COLD_TO
          + ".";

  private PlanPage() {}

  /** The whole page. */
  public static Page of(Trip trip, PlanLines lines) {
    List<Block> blocks = new ArrayList<>(blocks(trip, lines));
    for (PlanLines.PlanStop stop : lines.stops()) {
      if (stop.planned()) {
        blocks.add(card(stop));
      }
    }
    blocks.addAll(foot(lines));
    blocks.addAll(Ledger.cautions());
    return page(trip, blocks);
  }

  /** What stands above the stops. */
  public static Page head(Trip trip, PlanLines lines) {
    return page(trip, blocks(trip, lines));
  }

  /** What stands below them. */
  public static Page foot(Trip trip, PlanLines lines) {
    List<Block> blocks = new ArrayList<>(foot(lines));
    blocks.addAll(Ledger.atTheHose());
    return page(trip, blocks);
  }

  private static Page page(Trip trip, List<Block> blocks) {
    return TireNames.of(trip.rig())
        .spelled(new Page(trip.name() + ": where to set the tires", blocks));
  }

  private static List<Block> blocks(Trip trip, PlanLines lines) {
    List<Block> blocks = new ArrayList<>();
    blocks.add(new Block.Note(Block.Weight.MAIN, lines.headline()));
    blocks.add(new Block.Note(Block.Weight.LESSER, Ledger.assumes(trip)));
    blocks.add(
        new Block.Why("Why not fewer", List.of(new Block.Note(Block.Weight.PLAIN, lines.why()))));
    if (!lines.clashes().isEmpty()) {
      blocks.add(new Block.Card("Cannot be kept", List.of(), lines.clashes(), List.of()));
    }
    return blocks;
  }

  private static Block card(PlanLines.PlanStop stop) {
    List<String> todo = new ArrayList<>();
    List<String> why = new ArrayList<>();
    for (PlanLines.Line line : stop.lines()) {
      todo.add(Wording.begun(line.text()));
      why.addAll(line.why());
    }
    return new Block.Card(stop.title() + " · " + stop.when(), todo, stop.beneath(), why);
  }

  private static List<Block> foot(PlanLines lines) {
    List<Block> blocks = new ArrayList<>();
    if (!lines.leftOut().isEmpty()) {
      blocks.add(new Block.Heading("Not planned", 1));
      blocks.add(new Block.Bullets(lines.leftOut()));
    }
    List<List<String>> rows = new ArrayList<>();
    for (PlanLines.Habit habit : lines.habits()) {
      rows.add(
          List.of(
              habit.name(),
              habit.stops(),
              habit.margin(),
              habit.chance(),
              habit.under(),
              habit.over(),
              habit.below()));
    }
    blocks.add(
        Block.Table.ofFigures(
            "The plan beside other habits",
            List.of(
                "from here on",
                "stops",
                "margin",
                "chance",
                "too low",
                "starts over limit",
                "starts low"),
            rows));
    blocks.add(
        new Block.Why(
            "What the columns mean", List.of(new Block.Note(Block.Weight.LESSER, MEANING))));
    return blocks;
  }
}

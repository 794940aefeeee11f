package dawngauge.ledger;

import dawngauge.page.Block;
import dawngauge.page.Block.Weight;
import dawngauge.page.Page;
import dawngauge.quantity.QuantityKind;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * The back of the crew's sheet: how to read it, reasons, what the figures rest on, what is missing.
 */
public final class SheetNotes {

  private static final String TITLE = "Why, and what it rests on";

  /** What to look at on foot; common practice, no source. */
  public static final Block.Card WALK_ROUND =
      new Block.Card(
          "Walk-round (common practice)",
          List.of(
              "Each stop, walk round: look for a cut, bulge, cord, nail, missing tread, an object"
                  + " between duals; feel with the back of the hand: one tire or hub hotter than its"
                  + " mates: stop and find out (low, overloaded, brake, bearing).",
              "Wheel nuts · hub warmth · valve caps on · spare · tread and sidewalls.",
              "Each cold morning: gauge every tire, inner duals too; a thump is not a reading.",
              "Start of the trip: spare (pressure, age, fits where it may serve), jack and wrench"
                  + " that fit the trailer, a gauge that reaches the pressure.",
              "After a wheel has been off: nuts again after the first 50 miles, then at the next"
                  + " stop.",
              "After a flat, added air or a tire found at 80 % or less: look again at the first stop"
                  + " within 50 miles; lost again: do not roll."),
          List.of(),
          List.of());

  private SheetNotes() {}

  /**
   * The page.
   *
   * @param plan what the adjustment plan says, or null where it is not followed
   * @param reaches how far the air reaches from places without a hose, a line each
   * @param tires short forms with their words
   * @param names what stands for names that cannot be written; empty where all can
   */
  public static Page of(
      Ledger ledger, @Nullable PlanLines plan, List<String> reaches, String tires, String names) {
    List<Block> blocks = new ArrayList<>();
    section(
        blocks,
        "How to read the day pages",
        List.of(
            "Pressures in "
                + ledger.units().unitOf(QuantityKind.GAUGE_PRESSURE).symbol()
                + ". In bold: 9 of 10 readings on arrival lie in it; under the low figure: look for a"
                + " leak. In the empty box: write what you read.",
            "In a frame: set it to this, on arrival or cold as is said above it; under the frame: what"
                + " the same filling reads when leaving, and cold.",
            "→: range when leaving, before anything is set. cold: what it reads once cooled at this"
                + " stop. –: not known. ?: a letter that the fonts of this sheet lack.",
            "lowest safe: what the load needs, rounded up: never roll below it. set cold to: what is"
                + " set when cold. never over: lowest maximum of tire, wheel and valve, cold.",
            tires));
    if (!names.isEmpty()) {
      blocks.add(new Block.Note(Weight.MAIN, names));
    }
    if (plan != null) {
      section(blocks, "The plan: " + plan.headline(), List.of(plan.why()));
    }
    section(blocks, "How far the air reaches as it is", reaches);
    section(blocks, "Why", reasons(ledger));
    section(
        blocks,
        "Lowest load margin until the next stop (e: by estimate)",
        List.of(margins(ledger)));
    section(blocks, "What the figures rest on", ledger.basis());
    if (!ledger.problems().isEmpty()) {
      blocks.add(new Block.Heading("Missing or assumed", 1));
      blocks.add(new Block.Bullets(ledger.problems()));
    }
    return new Page(TITLE, blocks);
  }

  private static void section(List<Block> blocks, String title, List<String> lines) {
    if (lines.stream().anyMatch(line -> !line.isEmpty())) {
      blocks.add(new Block.Heading(title, 1));
      lines.forEach(line -> blocks.add(new Block.Note(Weight.PLAIN, line)));
    }
  }

  /** Every reason with the stops it holds at, the same reason once. */
  private static List<String> reasons(Ledger ledger) {
    Map<String, List<Integer>> same = new LinkedHashMap<>();
    for (StopLine stop : ledger.stops()) {
      for (StopLine.Task task : stop.tasks()) {
        add(same, task.mark().word() + ", " + task.told(), stop);
      }
      stop.routine().forEach(habit -> add(same, "gauge " + habit, stop));
    }
    List<String> lines = new ArrayList<>();
    same.forEach(
        (text, stops) ->
            lines.add(
                String.join(", ", stops.stream().map(String::valueOf).toList()) + " · " + text));
    return lines;
  }

  private static void add(Map<String, List<Integer>> same, String text, StopLine stop) {
    same.computeIfAbsent(text, key -> new ArrayList<>()).add(stop.number());
  }

  private static String margins(Ledger ledger) {
    List<String> margins = new ArrayList<>();
    for (StopLine stop : ledger.stops()) {
      StopLine.TireRow tightest = stop.tightest();
      if (tightest != null) {
        margins.add(
            stop.number()
                + ": "
                + tightest.margin()
                + (tightest.byEstimate() ? " e " : " ")
                + tightest.tires());
      }
    }
    return String.join("; ", margins);
  }
}

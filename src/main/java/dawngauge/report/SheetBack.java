package dawngauge.report;

import dawngauge.ledger.Ledger;
import dawngauge.ledger.PlanLines;
import dawngauge.ledger.StopLine;
import dawngauge.quantity.QuantityKind;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** The back of the front page: legend, reasons, what the figures rest on, what is missing. */
final class SheetBack {

  /** Common practice, no source. */
  private static final List<String> WALK_ROUND =
      List.of(
          "Each stop, walk round: look for a cut, bulge, cord, nail, missing tread, an object between"
              + " duals; feel with the back of the hand: one tire or hub hotter than its mates: stop"
              + " and find out (low, overloaded, brake, bearing).",
          "Wheel nuts · hub warmth · valve caps on · spare · tread and sidewalls.",
          "Each cold morning: gauge every tire, inner duals too; a thump is not a reading.",
          "Start of the trip: spare (pressure, age, fits where it may serve), jack and wrench that fit"
              + " the trailer, a gauge that reaches the pressure.",
          "After a wheel has been off: nuts again after the first 50 miles, then at the next stop.",
          "After a flat, added air or a tire found at 80 % or less: look again at the first stop within"
              + " 50 miles; lost again: do not roll.");

  private final SheetCanvas canvas;
  private final SheetFlow flow;
  private final Ledger ledger;
  private final SheetTires tires;

  SheetBack(SheetCanvas canvas, SheetFlow flow, Ledger ledger, SheetTires tires) {
    this.canvas = canvas;
    this.flow = flow;
    this.ledger = ledger;
    this.tires = tires;
  }

  void draw(@Nullable PlanLines plan, String names) {
    section(
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
            tires.words()));
    if (!names.isEmpty()) {
      flow.text(names, true);
    }
    if (plan != null) {
      section("The plan: " + plan.headline(), List.of(plan.why()));
    }
    section("Why", reasons());
    section("Lowest load margin until the next stop (e: by estimate)", List.of(margins()));
    section("What the figures rest on", ledger.basis());
    section("Missing or assumed", ledger.problems().stream().map(text -> "– " + text).toList());
    walkRound();
  }

  private void section(String title, List<String> lines) {
    if (lines.stream().anyMatch(line -> !line.isEmpty())) {
      flow.title(title);
      lines.forEach(line -> flow.text(line, false));
    }
  }

  /** Every reason with the stops it holds at, the same reason once. */
  private List<String> reasons() {
    Map<String, List<Integer>> same = new LinkedHashMap<>();
    for (StopLine stop : ledger.stops()) {
      for (StopLine.Task task : stop.tasks()) {
        add(same, task.mark().word() + ", " + task.tires() + ": " + task.text(), stop);
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

  private String margins() {
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

  /** Only where there is room left. */
  private void walkRound() {
    float high = flow.size() * 3;
    for (String line : WALK_ROUND) {
      high += canvas.height("□ " + line, flow.width(), flow.size(), false) + 1;
    }
    if (flow.fits(high)) {
      flow.room(high);
      section(
          "Walk-round (common practice)", WALK_ROUND.stream().map(text -> "□ " + text).toList());
    }
  }
}

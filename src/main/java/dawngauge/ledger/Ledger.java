package dawngauge.ledger;

import dawngauge.advice.Advice;
import dawngauge.fitness.Defect;
import dawngauge.page.Block;
import dawngauge.problem.Problem;
import dawngauge.quantity.UnitSystem;
import dawngauge.trip.Trip;
import dawngauge.trip.WheelPosition;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * A forecast as it is shown: texts in the chosen units, in order, without a toolkit.
 *
 * @param title name of the trip
 * @param when its days
 * @param summary one line: stops, distance, strongest mark
 * @param go whether the rig may go, a line each thing that stands against it
 * @param putRight what is to be put right before leaving, a line each, that {@code go} counts
 * @param rig one line an axle: what stands there and how its load is known
 * @param stops every stop of the route, in order; each line is made when it is first asked for
 * @param assumes why a plan may name other figures to set; empty where nothing is forecast
 * @param basis what the figures rest on
 * @param problems what is missing or assumed
 * @param units the units
 */
public record Ledger(
    String title,
    String when,
    String summary,
    List<String> go,
    List<String> putRight,
    List<AxleLine> rig,
    List<StopLine> stops,
    String assumes,
    List<String> basis,
    List<String> problems,
    UnitSystem units) {

  /** The cautions shown where a person acts on a figure. */
  public static final List<String> CAUTIONS =
      List.of(
          "A forecast replaces no gauge. The certification label, the tire and wheel makers' tables"
              + " and local law come first; where figures disagree or a tire looks wrong, ask a"
              + " qualified tire technician.",
          "Never set above the tire's, wheel's or valve's limit. Never let air out of a warm tire.",
          "A tire that ran at or below 80 % of its recommended pressure may be damaged inside: do"
              + " not just pump it up and go; have it inspected by a qualified technician.",
          "Inflating: clip-on chuck and in-line gauge; stand clear of the path of tread and"
              + " sidewall.");

  /** The same as the end of a page. */
  static List<Block> cautions() {
    List<Block> blocks = new ArrayList<>();
    blocks.add(new Block.Heading("Cautions", 1));
    CAUTIONS.forEach(text -> blocks.add(new Block.Note(Block.Weight.CAUTION, text)));
    return blocks;
  }

  /** Those of them that belong beside a figure to set. */
  static List<Block> atTheHose() {
    return CAUTIONS.subList(1, 3).stream()
        .map(text -> (Block) new Block.Note(Block.Weight.CAUTION, text))
        .toList();
  }

  /** The cautions in one line, where a hand goes to a valve. */
  public static final String AT_THE_VALVE =
      "Never over the limit. 20 % low after rolling: do not pump it up, have it inspected. Stand"
          + " clear. Label and technician come first.";

  /** Why a plan may name other figures than a forecast; stands in both. */
  static String assumes(Trip trip) {
    return trip.plan().followed()
        ? "The forecast takes what it asks for as done; the plan starts from what is noted."
        : "The forecast sets a low tire to its cold figure at that stop and takes that as done; the"
            + " plan starts from what is noted, looks ahead to colder mornings, may set more.";
  }

  /** Copies the lists. */
  public Ledger {
    go = List.copyOf(go);
    putRight = List.copyOf(putRight);
    rig = List.copyOf(rig);
    stops = stops instanceof LazyLines ? stops : List.copyOf(stops);
    basis = List.copyOf(basis);
    problems = List.copyOf(problems);
  }

  /**
   * The ledger of a trip.
   *
   * @param trip the trip
   * @param advice what was computed, or null where no time is known
   * @param problems what is missing or assumed
   * @param fitness what is wrong with the rig, worst first
   * @param units the units to show
   * @param only the one position to show, or null for all
   */
  public static Ledger of(
      Trip trip,
      @Nullable Advice advice,
      List<Problem> problems,
      List<Defect> fitness,
      UnitSystem units,
      @Nullable WheelPosition only) {
    return new Ledger(
        trip.name(),
        advice == null ? "" : Summary.days(advice),
        Summary.line(trip, advice, units, only),
        GoLines.of(fitness, units),
        GoLines.putRight(fitness, units),
        AxleLine.all(trip, advice, units),
        LazyLines.of(trip, advice, units, only),
        advice == null ? "" : assumes(trip),
        Summary.basis(trip, advice, units),
        messages(problems),
        units);
  }

  /** Each text once, with all its places before it. */
  private static List<String> messages(List<Problem> problems) {
    Map<String, List<String>> places = new LinkedHashMap<>();
    for (Problem problem : problems) {
      places.computeIfAbsent(problem.text(), key -> new ArrayList<>()).add(problem.where());
    }
    List<String> messages = new ArrayList<>();
    places.forEach(
        (text, where) -> {
          String at = Wording.list(where.stream().filter(place -> !place.isEmpty()).toList());
          messages.add(at.isEmpty() ? text : at + ": " + text);
        });
    return messages;
  }
}

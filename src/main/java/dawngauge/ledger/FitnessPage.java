package dawngauge.ledger;

import dawngauge.fitness.Defect;
import dawngauge.fitness.Severity;
import dawngauge.page.Block;
import dawngauge.page.Page;
import dawngauge.quantity.UnitSystem;
import dawngauge.trip.Trip;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** What was found about the rig before the trip, as a page: a card each thing, worst first. */
public final class FitnessPage {

  private FitnessPage() {}

  /**
   * The page.
   *
   * @param trip the trip
   * @param defects what was found, worst first
   * @param units the units to show
   */
  public static Page of(Trip trip, List<Defect> defects, UnitSystem units) {
    List<Block> blocks = new ArrayList<>();
    blocks.add(new Block.Note(Block.Weight.MAIN, summary(defects)));
    for (Severity severity : Severity.values()) {
      List<Block> cards = cards(defects, severity, units);
      if (!cards.isEmpty()) {
        blocks.add(new Block.Heading(Wording.begun(severity.word()), 1));
        blocks.addAll(cards);
      }
    }
    blocks.addAll(Ledger.cautions());
    return new Page(trip.name() + ": is the rig fit to go?", blocks);
  }

  /** What was found. */
  private record Found(String what, String toDo, String authority) {}

  /** Each thing with where it was found. */
  private static Map<Found, List<String>> found(List<Defect> defects, UnitSystem units) {
    Map<Found, List<String>> places = new LinkedHashMap<>();
    for (Defect defect : defects) {
      Found found =
          new Found(defect.what().in(units), defect.toDo().in(units), defect.authority().text());
      places.computeIfAbsent(found, key -> new ArrayList<>()).add(defect.where());
    }
    return places;
  }

  /** How many things were found; what is alike in several places is one, as its card. */
  static int count(List<Defect> defects) {
    return found(defects, UnitSystem.US).size();
  }

  /** A line each thing: where and what. */
  static List<String> places(List<Defect> defects, UnitSystem units) {
    List<String> lines = new ArrayList<>();
    found(defects, units)
        .forEach((found, where) -> lines.add(String.join(", ", where) + ": " + found.what));
    return lines;
  }

  /** A card each thing; what is found alike in several places stands once. */
  private static List<Block> cards(List<Defect> defects, Severity severity, UnitSystem units) {
    List<Block> cards = new ArrayList<>();
    found(defects.stream().filter(defect -> defect.severity() == severity).toList(), units)
        .forEach(
            (found, where) ->
                cards.add(
                    new Block.Card(
                        Wording.begun(String.join(", ", where)),
                        List.of(Wording.begun(found.toDo)),
                        List.of(Wording.begun(found.what)),
                        List.of(found.authority))));
    return cards;
  }

  /** How many of each severity, worst first. */
  public static String summary(List<Defect> defects) {
    List<String> counts = new ArrayList<>();
    for (Severity severity : Severity.values()) {
      int count = count(defects.stream().filter(each -> each.severity() == severity).toList());
      if (count > 0) {
        counts.add(count + " " + severity.word());
      }
    }
    return counts.isEmpty()
        ? "Nothing was found in the figures of the file. Walk round and look all the same."
        : String.join(" · ", counts);
  }
}

package dawngauge.geo;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;

/**
 * One search through the names. Every text is read as a name, and in each way as a name with a
 * state or country behind it.
 */
final class PlaceSearch {

  /** Distance at which a place counts half of its inhabitants. */
  private static final double HALF_WEIGHT_METERS = 50_000;

  /** A pass counts as the smallest town. */
  private static final int LEAST_WEIGHT = 1000;

  private static final int LONGEST_TEXT = 200;

  private final PlaceTable table;
  private final int[] ranks;
  private final List<Integer> found = new ArrayList<>();

  private PlaceSearch(PlaceTable table) {
    this.table = table;
    ranks = new int[table.size()];
  }

  /** The best places first. */
  static List<Gazetteer.Found> find(
      PlaceTable table, String text, @Nullable Coordinate near, int most) {
    String folded = text.length() > LONGEST_TEXT ? "" : FoldedText.of(text);
    if (folded.isEmpty()) {
      return List.of();
    }
    PlaceSearch search = new PlaceSearch(table);
    search.read(List.of(folded.split(" ", -1)));
    return search.best(near, most);
  }

  private void read(List<String> words) {
    table.keys().find(words, (index, match) -> note(index, match.rank(false)));
    readWithDivision(words, Division::isCalled);
    if (found.isEmpty()) {
      readWithDivision(words, Division::mayBecome);
    }
  }

  private void readWithDivision(List<String> words, Call call) {
    for (int nameWords = words.size() - 1; nameWords > 0; nameWords--) {
      String behind = String.join(" ", words.subList(nameWords, words.size()));
      BitSet within = divisions(division -> call.fits(division, behind));
      if (!within.isEmpty()) {
        table
            .keys()
            .find(
                words.subList(0, nameWords),
                (index, match) -> {
                  if (within.get(table.division(index))) {
                    note(index, match.rank(true));
                  }
                });
      }
    }
  }

  private interface Call {
    boolean fits(Division division, String text);
  }

  private BitSet divisions(Predicate<Division> wanted) {
    BitSet within = new BitSet();
    for (int i = 0; i < table.divisions().size(); i++) {
      within.set(i, wanted.test(table.divisions().get(i)));
    }
    return within;
  }

  /** Keeps the better of two ranks; zero in the array means not found. */
  private void note(int index, int rank) {
    if (ranks[index] == 0) {
      found.add(index);
      ranks[index] = rank;
    } else {
      ranks[index] = Math.min(ranks[index], rank);
    }
  }

  private List<Gazetteer.Found> best(@Nullable Coordinate near, int most) {
    return found.stream()
        .map(index -> new Ranked(index, ranks[index], weight(index, near)))
        .sorted(
            Comparator.comparingInt(Ranked::rank)
                .thenComparing(Comparator.comparingDouble(Ranked::weight).reversed())
                .thenComparingInt(Ranked::index))
        .limit(most)
        .map(
            ranked ->
                new Gazetteer.Found(
                    table.place(ranked.index()),
                    ranked.rank() <= PlaceNames.Match.WHOLE.rank(true)))
        .toList();
  }

  private record Ranked(int index, int rank, double weight) {}

  private double weight(int index, @Nullable Coordinate near) {
    double inhabitants = Math.max(LEAST_WEIGHT, table.population(index));
    if (near == null) {
      return inhabitants;
    }
    double away = GreatCircle.between(near, table.coordinate(index)).meters() / HALF_WEIGHT_METERS;
    return inhabitants / (1 + away * away);
  }
}

package dawngauge.contract;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * Rows of values, one a dimension, in which every combination of values of any few dimensions
 * occurs at least once: a greedy covering array, the same in every run.
 */
final class Covering {

  private static final int FREE = -1;

  private final int[] sizes;
  private final List<int[]> choices;
  private final Set<List<Integer>> open = new LinkedHashSet<>();

  private Covering(int[] sizes, int strength) {
    this.sizes = sizes.clone();
    this.choices = choices(sizes.length, strength);
    for (int[] dimensions : choices) {
      open(dimensions, new int[strength], 0);
    }
  }

  /**
   * The rows.
   *
   * @param sizes how many values each dimension has
   * @param strength of how many dimensions every combination is to occur
   */
  static List<int[]> rows(int[] sizes, int strength) {
    Covering covering = new Covering(sizes, strength);
    List<int[]> rows = new ArrayList<>();
    while (!covering.open.isEmpty()) {
      rows.add(covering.next());
    }
    return rows;
  }

  /**
   * Some of the rows, in which every combination of values of fewer dimensions still occurs.
   *
   * @param strength of how many dimensions
   */
  static List<int[]> some(List<int[]> rows, int[] sizes, int strength) {
    Covering covering = new Covering(sizes, strength);
    List<int[]> some = new ArrayList<>();
    while (!covering.open.isEmpty()) {
      int[] best = rows.get(0);
      long most = -1;
      for (int[] row : rows) {
        long closes =
            covering.choices.stream().filter(d -> covering.open.contains(keyOf(row, d))).count();
        if (closes > most) {
          most = closes;
          best = row;
        }
      }
      for (int[] dimensions : covering.choices) {
        covering.open.remove(keyOf(best, dimensions));
      }
      some.add(best);
    }
    return some;
  }

  /** Every way to take some of the dimensions, each in rising order. */
  static List<int[]> choices(int count, int taken) {
    List<int[]> all = new ArrayList<>();
    int[] chosen = new int[taken];
    choose(all, chosen, 0, 0, count);
    return all;
  }

  private static void choose(List<int[]> all, int[] chosen, int depth, int from, int count) {
    if (depth == chosen.length) {
      all.add(chosen.clone());
      return;
    }
    for (int i = from; i < count; i++) {
      chosen[depth] = i;
      choose(all, chosen, depth + 1, i + 1, count);
    }
  }

  private void open(int[] dimensions, int[] values, int depth) {
    if (depth == dimensions.length) {
      open.add(key(dimensions, values));
      return;
    }
    for (int value = 0; value < sizes[dimensions[depth]]; value++) {
      values[depth] = value;
      open(dimensions, values, depth + 1);
    }
  }

  private static List<Integer> key(int[] dimensions, int[] values) {
    List<Integer> key = new ArrayList<>();
    for (int i = 0; i < dimensions.length; i++) {
      key.add(dimensions[i]);
      key.add(values[i]);
    }
    return key;
  }

  /** Begins with what is open first, and then takes the value that closes most, one by one. */
  private int[] next() {
    int[] row = new int[sizes.length];
    Arrays.fill(row, FREE);
    List<Integer> first = open.iterator().next();
    for (int i = 0; i < first.size(); i += 2) {
      row[first.get(i)] = first.get(i + 1);
    }
    for (int dimension = 0; dimension < sizes.length; dimension++) {
      if (row[dimension] == FREE) {
        row[dimension] = best(row, dimension);
      }
    }
    for (int[] dimensions : choices) {
      open.remove(keyOf(row, dimensions));
    }
    return row;
  }

  private int best(int[] row, int dimension) {
    int best = 0;
    int most = -1;
    for (int step = 0; step < sizes[dimension]; step++) {
      // Turned round from row to row, or what is worth the same would always be the first.
      int value = (step + open.size()) % sizes[dimension];
      row[dimension] = value;
      int closed = 0;
      for (int[] dimensions : choices) {
        closed +=
            Arrays.stream(dimensions).anyMatch(d -> d == dimension)
                    && Arrays.stream(dimensions).noneMatch(d -> row[d] == FREE)
                    && open.contains(keyOf(row, dimensions))
                ? 1
                : 0;
      }
      if (closed > most) {
        most = closed;
        best = value;
      }
    }
    row[dimension] = FREE;
    return best;
  }

  private static List<Integer> keyOf(int[] row, int[] dimensions) {
    return key(dimensions, Arrays.stream(dimensions).map(d -> row[d]).toArray());
  }
}

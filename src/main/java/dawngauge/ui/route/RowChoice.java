package dawngauge.ui.route;

import java.util.Collections;
import java.util.List;
import java.util.NavigableSet;
import java.util.TreeSet;
import java.util.stream.IntStream;

/** Which row is chosen, and which are taken with it to be changed together; 0 is the first. */
final class RowChoice {

  private NavigableSet<Integer> taken = new TreeSet<>();
  private int rows;
  private int chosen;

  /** The row from which others are taken along. */
  private int anchor;

  /**
   * There are so many rows now, one of them chosen; what was taken stays where that is as before.
   */
  void show(int count, int row) {
    boolean same = row == chosen && count == rows;
    rows = count;
    chosen = Math.max(0, Math.min(row, count - 1));
    if (!same) {
      only(chosen);
    }
  }

  int rows() {
    return rows;
  }

  int chosen() {
    return chosen;
  }

  /** All rows that are taken, the chosen one among them. */
  NavigableSet<Integer> taken() {
    return Collections.unmodifiableNavigableSet(taken);
  }

  /** Takes one row and no other. */
  void only(int row) {
    take(row, rows == 0 ? new TreeSet<>() : new TreeSet<>(List.of(row)));
  }

  /** Takes the rows from where the taking began to another one. */
  void to(int row) {
    int from = Math.min(anchor, rows - 1);
    NavigableSet<Integer> span = new TreeSet<>();
    IntStream.rangeClosed(Math.min(from, row), Math.max(from, row)).forEach(span::add);
    take(row, span);
    anchor = from;
  }

  /** Takes a row besides the others, or leaves it; one always stays. */
  void toggle(int row) {
    NavigableSet<Integer> other = new TreeSet<>(taken);
    if (!other.remove(row) || other.isEmpty()) {
      other.add(row);
    }
    take(other.contains(row) ? row : other.first(), other);
  }

  /** Chooses a row; if it is one of several that are taken, they stay so. */
  void within(int row) {
    if (taken.contains(row) && taken.size() > 1) {
      take(row, taken);
    } else {
      only(row);
    }
  }

  /** The rows that are dragged with one: all that are taken, if it is one of them. */
  NavigableSet<Integer> with(int row) {
    return taken.contains(row) ? taken() : new TreeSet<>(List.of(row));
  }

  /**
   * Before which row the taken ones stand after a step up or down; negative where there is none.
   */
  int shifted(int by) {
    int before = taken.isEmpty() ? -1 : by < 0 ? taken.first() - 1 : taken.last() + 2;
    return before <= rows ? before : -1;
  }

  private void take(int row, NavigableSet<Integer> all) {
    chosen = row;
    anchor = row;
    taken = new TreeSet<>(all);
  }
}

package dawngauge.trip;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntToDoubleFunction;

/** As few points of a line as keep near to all of it (Douglas and Peucker 1973). */
final class Thinning {

  private static final double WIDER = 1.5;

  private Thinning() {}

  /** How far points lie off what is straight between two of them. */
  interface Offs {
    /** For the points between two, by their index. */
    IntToDoubleFunction between(int first, int last);
  }

  /**
   * Indexes of the points kept, rising, without the ends.
   *
   * @param size how many points there are
   * @param span how far off a point may be that is not kept; wider where too many would be kept
   * @param most so many are kept at most
   */
  static List<Integer> kept(int size, Offs offs, double span, int most) {
    double wide = span;
    List<Integer> kept = kept(size, offs, wide);
    while (kept.size() > most) {
      wide *= WIDER;
      kept = kept(size, offs, wide);
    }
    return kept;
  }

  private static List<Integer> kept(int size, Offs offs, double span) {
    List<Integer> kept = new ArrayList<>();
    List<int[]> open = new ArrayList<>();
    open.add(new int[] {0, size - 1});
    while (!open.isEmpty()) {
      int[] part = open.remove(open.size() - 1);
      IntToDoubleFunction off = offs.between(part[0], part[1]);
      int furthest = -1;
      double most = span;
      for (int i = part[0] + 1; i < part[1]; i++) {
        double here = off.applyAsDouble(i);
        if (here > most) {
          most = here;
          furthest = i;
        }
      }
      if (furthest > 0) {
        kept.add(furthest);
        open.add(new int[] {part[0], furthest});
        open.add(new int[] {furthest, part[1]});
      }
    }
    kept.sort(Integer::compare);
    return kept;
  }
}

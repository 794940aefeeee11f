package dawngauge.tire;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalInt;

/**
 * The load range of a sidewall: a letter that stands for a ply rating. It does not fix the pressure
 * at which the rated load holds.
 */
public final class LoadRange {
  private static final Map<String, List<String>> ROWS =
      BundledTable.byFirstColumn("load-range.tsv");

  private LoadRange() {}

  /** The ply rating a letter stands for, in either case; empty if the letter is not used. */
  public static OptionalInt plyRating(String letter) {
    List<String> row = ROWS.get(letter.strip().toUpperCase(Locale.ROOT));
    return row == null ? OptionalInt.empty() : OptionalInt.of(Integer.parseInt(row.get(1)));
  }
}

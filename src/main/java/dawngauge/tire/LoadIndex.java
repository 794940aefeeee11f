package dawngauge.tire;

import dawngauge.explain.Authority;
import dawngauge.quantity.Mass;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The load index of a sidewall: a number that stands for the load the tire may carry at its rated
 * pressure (ISO 4000-1; UN R30 and R54). The table holds all of them, {@value #LEAST} to {@value
 * #MOST}; the rows that were not checked against a source say so.
 */
public final class LoadIndex {
  /** The lowest index of the table. */
  public static final int LEAST = 0;

  /** The highest index of the table. */
  public static final int MOST = 279;

  private static final Map<String, List<String>> ROWS =
      BundledTable.byFirstColumn("load-index.tsv");

  private LoadIndex() {}

  /** The load an index stands for; empty outside the table. */
  public static Optional<Mass> mass(int index) {
    List<String> row = ROWS.get(Integer.toString(index));
    return row == null ? Optional.empty() : Optional.of(new Mass(Double.parseDouble(row.get(1))));
  }

  /** On whose word a row of the table rests; some rows are from memory and say so. */
  public static Authority authority(int index) {
    List<String> row = ROWS.get(Integer.toString(index));
    return row != null && "published".equals(row.get(2))
        ? new Authority(Authority.Kind.STANDARD, "ISO 4000-1, UN R30 and R54: load index")
        : Authority.inferred("load index table of ISO 4000-1, this row from memory");
  }
}

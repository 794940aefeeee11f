package dawngauge.tire;

import dawngauge.quantity.Entered;
import dawngauge.quantity.GaugePressure;
import dawngauge.quantity.Mass;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Rows of a maker's load and inflation table, as the user typed them.
 *
 * @param rows at least two; pressures rise from row to row and loads do not fall
 */
public record LoadInflationTable(List<Row> rows) {

  /**
   * One row.
   *
   * @param pressure cold inflation pressure
   * @param single load of the tire alone on its side of the axle
   * @param dual load of each tire of a dual pair, or null if the table gives none
   */
  public record Row(
      Entered<GaugePressure> pressure, Entered<Mass> single, @Nullable Entered<Mass> dual) {}

  /** Refuses rows out of order; readers report that as a problem before they get here. */
  public LoadInflationTable {
    rows = List.copyOf(rows);
    if (rows.size() < 2) {
      throw new IllegalArgumentException("a load/inflation table needs at least two rows");
    }
    for (int i = 1; i < rows.size(); i++) {
      if (!rises(rows.get(i - 1), rows.get(i))) {
        throw new IllegalArgumentException("load/inflation row " + (i + 1) + " falls");
      }
    }
  }

  /** Whether a row may follow another: higher pressure, and no load lower than before. */
  public static boolean rises(Row row, Row next) {
    if (next.pressure.value().compareTo(row.pressure.value()) <= 0
        || next.single.value().compareTo(row.single.value()) < 0) {
      return false;
    }
    Entered<Mass> dual = row.dual;
    Entered<Mass> nextDual = next.dual;
    return dual == null || nextDual == null || nextDual.value().compareTo(dual.value()) >= 0;
  }
}

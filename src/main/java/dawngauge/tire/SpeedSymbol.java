package dawngauge.tire;

import dawngauge.quantity.Speed;
import dawngauge.quantity.Unit;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * The speed symbol of a sidewall: a letter, also with a figure, that stands for the highest speed
 * of the tire (ISO 4000-1; UN R30 and R54). The table holds A1 to A8, B to Y, and (Y); A1 to E and
 * (Y) are from memory.
 */
public final class SpeedSymbol {
  private static final Map<String, List<String>> ROWS =
      BundledTable.byFirstColumn("speed-symbol.tsv");

  private SpeedSymbol() {}

  /** The highest speed a symbol stands for, in either case of letter; empty if not in the table. */
  public static Optional<Speed> top(String symbol) {
    List<String> row = ROWS.get(symbol.strip().toUpperCase(Locale.ROOT));
    return row == null
        ? Optional.empty()
        : Optional.of(Speed.of(Double.parseDouble(row.get(1)), Unit.KILOMETER_PER_HOUR));
  }
}

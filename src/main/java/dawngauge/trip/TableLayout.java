package dawngauge.trip;

import dawngauge.quantity.Unit;
import java.time.ZoneId;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * What stands in which column of a table of readings.
 *
 * @param columns index of each column that is read
 * @param tires tires that have a column of pressures each, by its index; empty where a column names
 *     the tire
 * @param zone whose clock times without an offset show
 * @param pressure unit of pressures without one
 * @param temperature unit of temperatures without one
 * @param gauge name of the gauge that read, where no column names it
 * @param recorder whether rows come from a recorder, many a minute: then only what it showed after
 *     each arrival and before each departure is taken
 */
public record TableLayout(
    Map<Column, Integer> columns,
    Map<Integer, String> tires,
    ZoneId zone,
    Unit pressure,
    Unit temperature,
    String gauge,
    boolean recorder) {

  /** What is read. */
  public enum Column {
    /** When. */
    TIME("time"),
    /** Which tire: its id, its position or the position's short form. */
    TIRE("tire"),
    /** What the gauge showed. */
    PRESSURE("pressure"),
    /** Cold, cold in sun, warm or just filled; cold where it is empty. */
    STATE("state"),
    /** Which gauge. */
    GAUGE("gauge"),
    /** Temperature of the air as measured. */
    AIR("air"),
    /** What the tire was set to right after it. */
    SET_TO("set to"),
    /** A note. */
    NOTE("note");

    private final String word;

    Column(String word) {
      this.word = word;
    }

    /** Its name in our own header. */
    public String word() {
      return word;
    }
  }

  /** Copies the maps. */
  public TableLayout {
    columns = Map.copyOf(columns);
    tires = Map.copyOf(tires);
  }

  /** The columns of our own header; empty where time, tire or pressure is not among them. */
  public static Optional<Map<Column, Integer>> own(List<String> header) {
    Map<Column, Integer> found = new EnumMap<>(Column.class);
    for (int i = 0; i < header.size(); i++) {
      String name = header.get(i).strip().toLowerCase(Locale.ROOT);
      for (Column column : Column.values()) {
        if (column.word().equals(name)) {
          found.putIfAbsent(column, i);
        }
      }
    }
    boolean whole =
        found.containsKey(Column.TIME)
            && found.containsKey(Column.TIRE)
            && found.containsKey(Column.PRESSURE);
    return whole ? Optional.of(found) : Optional.empty();
  }
}

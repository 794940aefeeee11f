package dawngauge.trip;

import java.util.List;

/**
 * How a table of readings begins.
 *
 * @param separator what stands between two fields
 * @param columns names of the columns
 * @param sample the first rows
 */
public record TableHead(char separator, List<String> columns, List<List<String>> sample) {

  /** Copies the lists. */
  public TableHead {
    columns = List.copyOf(columns);
    sample = List.copyOf(sample);
  }

  /** The names of the columns as one text, by which a layout is remembered. */
  public String signature() {
    return String.join("|", columns);
  }
}

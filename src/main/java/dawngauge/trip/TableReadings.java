package dawngauge.trip;

import java.util.List;

/**
 * What was taken from a table of readings.
 *
 * @param events readings and settings, in the order of the table
 * @param rows rows of the table
 * @param between rows of a recorder that lie between arrivals and departures: read, and not taken
 * @param leftOut rows that could not be taken, the first of them
 * @param leftOutRows how many could not be taken
 * @param whole whether the table was read to its end
 */
public record TableReadings(
    List<LogEvent> events,
    long rows,
    long between,
    List<LeftOut> leftOut,
    long leftOutRows,
    boolean whole) {

  /**
   * A row that could not be taken.
   *
   * @param line its line in the file, 1 first
   * @param why why not
   */
  public record LeftOut(long line, String why) {}

  /** Copies the lists. */
  public TableReadings {
    events = List.copyOf(events);
    leftOut = List.copyOf(leftOut);
  }

  /** Is told how far the reading is. */
  public interface Progress {

    /**
     * Goes on, or not.
     *
     * @param rows rows read
     * @param part of the file that is read, about, 0 to 1
     * @return false to end here
     */
    boolean goesOn(long rows, double part);
  }
}

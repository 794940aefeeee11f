package dawngauge.advice;

import dawngauge.trip.ReadingState;
import java.util.List;

/**
 * What readings at one stop would mean.
 *
 * @param visit index of the stop
 * @param usual how warm the tires usually are when they are gauged there
 * @param tables one a state in which they can be; none where nothing can be told
 */
public record StopReadTables(int visit, ReadingState usual, List<ReadTable> tables) {

  /** Copies the list. */
  public StopReadTables {
    tables = List.copyOf(tables);
  }
}

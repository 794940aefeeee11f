package dawngauge.forecast;

import dawngauge.rules.GaugeErrors;
import dawngauge.rules.RanLow;
import dawngauge.trip.LogEvent;
import dawngauge.trip.ReadingState;

/**
 * A reading from which no air in the tire follows, because the air around or the tire's warmth then
 * is not known. It can be judged all the same: a cold one is its own settled pressure, one of a
 * warm or just filled tire an upper bound of it.
 *
 * @param reading the reading
 * @param pascals gauge pressure as an open gauge shows it; as read where the height is not known
 * @param errors how sure its gauge is
 * @param rolledSinceSound whether the tire rolled since it was last read, or that is not known
 */
public record BareReading(
    LogEvent.Reading reading, double pascals, GaugeErrors errors, boolean rolledSinceSound) {

  /** Whether it tells of a tire that ran low, had it rolled so. */
  public RanLow ranLow(double reference) {
    return RanLow.of(pascals, errors.sigma(), reference);
  }

  /** Whether it is the settled pressure; else no more than a bound from above. */
  public boolean cold() {
    return reading.state() == ReadingState.COLD;
  }
}

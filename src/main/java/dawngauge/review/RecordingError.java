package dawngauge.review;

import dawngauge.forecast.ReadingCheck;
import dawngauge.trip.WheelPosition;
import org.jspecify.annotations.Nullable;

/**
 * A cold reading that was most likely noted wrongly; the review leaves it out.
 *
 * @param position whose reading it is
 * @param check the reading
 * @param kind how it went wrong
 * @param expected what that tire should have read, in pascal
 * @param other the tire whose reading it seems to be; null where none is known
 */
public record RecordingError(
    WheelPosition position,
    ReadingCheck check,
    Kind kind,
    double expected,
    @Nullable WheelPosition other) {

  /** How a reading goes wrong. */
  public enum Kind {
    /** Noted in another unit than it was read in, such as bar for psi. */
    UNIT,
    /** Noted beside another tire. */
    TIRE,
    /** Far off, and back at the next round without air being noted. */
    ALONE
  }
}

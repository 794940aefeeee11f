package dawngauge.review;

import dawngauge.rules.Quantile;
import dawngauge.trip.WheelPosition;
import java.util.Map;

/**
 * How far the cold readings of the tires on one side lie about what fits each best: a steady leak
 * or one loss. Where that is more than the gauge explains, something came over that side at some
 * rounds, mostly the sun on tires that were noted as cold; then its readings are less sure.
 *
 * @param left whether it is the left side, looking forward
 * @param squares left over by the tires with four cold readings or more, each in deviations of a
 *     reading by the gauge
 * @param free readings more than were needed for the fits
 * @param pascals one standard deviation of a reading by the gauge, the middle of the tires
 */
public record SideScatter(boolean left, double squares, int free, double pascals) {

  /** As if so many readings had been found as far off as the gauge makes; ours. */
  private static final double BELIEVED = 2;

  /** With so many readings of a tire nothing is left over: where it changed, and both levels. */
  private static final int FITTED = 3;

  /** Told where the gauge alone would do it once in so many sides. */
  private static final double CHANCE = 0.001;

  static SideScatter of(boolean left, Map<WheelPosition, ColdRow> all) {
    double squares = 0;
    int free = 0;
    double pascals = 0;
    int tires = 0;
    for (Map.Entry<WheelPosition, ColdRow> entry : all.entrySet()) {
      ColdRow row = entry.getValue();
      if (entry.getKey().slot().isLeft() == left && row.days.length > FITTED) {
        squares += LossFit.rest(row.days, row.lost, row.each);
        free += row.days.length - FITTED;
        pascals += row.each * row.absolute;
        tires++;
      }
    }
    return new SideScatter(left, squares, free, pascals / tires);
  }

  /** By what the readings are less sure than the gauge makes them, 1 or more. */
  double wider() {
    return Math.max(1, Math.sqrt((BELIEVED + squares) / (BELIEVED + free)));
  }

  /** One standard deviation of a reading as found, in pascal. */
  public double found() {
    return pascals * Math.sqrt(squares / free);
  }

  /** Whether the gauge alone hardly explains it. */
  public boolean beyondGauge() {
    return free > 0 && Quantile.squaresBeyond(squares, free) < CHANCE;
  }
}

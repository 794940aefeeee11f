package dawngauge.rules;

import dawngauge.quantity.Entered;
import dawngauge.quantity.GaugePressure;
import dawngauge.quantity.Ratio;
import dawngauge.quantity.Unit;
import dawngauge.trip.Gauge;
import org.jspecify.annotations.Nullable;

/**
 * How sure a gauge is, and within which band of a figure a tire counts as set to it. Pascal.
 *
 * @param step smallest step it shows
 * @param repeat repeatability of a reading, one standard deviation
 * @param offset constant error, one standard deviation
 */
public record GaugeErrors(double step, double repeat, double offset) {

  /**
   * Repeatability of a reading, one standard deviation in pascal, unless half a division is more;
   * inferred.
   */
  public static final double REPEATABILITY = GaugePressure.of(0.5, Unit.PSI).pascals();

  /** Limit of error taken for a gauge without a grade, in pascal; ours, no source. */
  private static final double UNGRADED_LIMIT = GaugePressure.of(2, Unit.PSI).pascals();

  /** Step of a gauge that is not listed; ours. */
  private static final double DEFAULT_STEP = GaugePressure.of(1, Unit.PSI).pascals();

  /** The dead band is never more than this part of the figure; ours. */
  private static final double MOST_OF_FIGURE = 0.04;

  /** Of a gauge as listed, or of one that is not. */
  public static GaugeErrors of(@Nullable Gauge gauge) {
    if (gauge == null) {
      return new GaugeErrors(DEFAULT_STEP, REPEATABILITY, UNGRADED_LIMIT / Math.sqrt(3));
    }
    Entered<GaugePressure> span = gauge.span();
    Entered<Ratio> grade = gauge.grade();
    double limit =
        span == null || grade == null
            ? UNGRADED_LIMIT
            : span.value().pascals() * grade.value().value();
    double step = gauge.step().value().pascals();
    return new GaugeErrors(step, Math.max(REPEATABILITY, step / 2), limit / Math.sqrt(3));
  }

  /** Both errors together, one standard deviation. */
  public double sigma() {
    return Math.sqrt(repeat * repeat + offset * offset);
  }

  /**
   * Within so much of a figure a tire counts as set to it: the larger of one step and what the
   * gauge may err by in nine of ten cases, never over 4 % of the figure.
   */
  public double deadBand(double figure) {
    double wanted = Math.max(step, Quantile.NINETY_UNDER * sigma());
    return Math.min(wanted, MOST_OF_FIGURE * Math.abs(figure));
  }

  /** Whether a finer gauge is wanted to tell a figure. */
  public boolean tooCoarse(double figure) {
    return step > MOST_OF_FIGURE * Math.abs(figure);
  }
}

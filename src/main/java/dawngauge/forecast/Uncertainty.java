package dawngauge.forecast;

import dawngauge.quantity.Entered;
import dawngauge.quantity.GaugePressure;
import dawngauge.quantity.Ratio;
import dawngauge.quantity.Unit;
import dawngauge.rules.Limits;
import dawngauge.trip.Gauge;
import org.jspecify.annotations.Nullable;

/** Spreads and how they join, by linear propagation. */
final class Uncertainty {

  /**
   * Repeatability of a reading, one standard deviation in pascal, unless half a division is more;
   * inferred.
   */
  private static final double REPEATABILITY = GaugePressure.of(0.5, Unit.PSI).pascals();

  /** Limit of error taken for a gauge without a grade, in pascal; ours, no source. */
  private static final double UNGRADED_LIMIT = GaugePressure.of(2, Unit.PSI).pascals();

  /** Half-width of what the weather's own air pressure does, taken as even, in pascal. */
  private static final double BAROMETER = GaugePressure.of(0.3, Unit.PSI).pascals() / Math.sqrt(3);

  /** Over such times errors of the expected air fade into new ones, in seconds; inferred. */
  private static final double AIR_MEMORY = 12 * 3600.0;

  /** The same for the weather's air pressure, in seconds; inferred. */
  private static final double BAROMETER_MEMORY = 24 * 3600.0;

  /** Part of the air lost by permeation, or by a typed leak, that may be wrong; ours. */
  private static final double LOSS_SIGMA = 0.4;

  private Uncertainty() {}

  /** Repeatability of a gauge, one standard deviation in pascal. */
  static double repeatability(@Nullable Gauge gauge) {
    return gauge == null
        ? REPEATABILITY
        : Math.max(REPEATABILITY, gauge.step().value().pascals() / 2);
  }

  /** Constant error of a gauge, one standard deviation in pascal: its grade over √3. */
  static double offset(@Nullable Gauge gauge) {
    Entered<GaugePressure> span = gauge == null ? null : gauge.span();
    Entered<Ratio> grade = gauge == null ? null : gauge.grade();
    double limit =
        span == null || grade == null
            ? UNGRADED_LIMIT
            : span.value().pascals() * grade.value().value();
    return limit / Math.sqrt(3);
  }

  /**
   * A tire at one moment with its spreads.
   *
   * @param origin what the fill is known from
   * @param fill fill now
   * @param timeline the trip
   * @param node where
   * @param tireKelvins temperature in the tire
   * @param warmKelvins one standard deviation of how much warmer than the air the tire is
   */
  static Moment moment(
      FillOrigin origin,
      double fill,
      Timeline timeline,
      int node,
      double tireKelvins,
      double warmKelvins) {
    double air = timeline.air[node];
    double pressure = timeline.pressure[node];
    double seconds = timeline.seconds[node];
    double settled = fill * air - pressure;
    double reading = fill * tireKelvins - pressure;
    double judged = fill * Math.min(tireKelvins, air) - pressure;

    double age = Math.max(0, seconds - origin.seconds());
    double memory = origin.airExpected() ? Math.exp(-age / AIR_MEMORY) : 0;
    double growth = air / origin.tireKelvins();
    double lost = (origin.fill() - fill) * air * LOSS_SIGMA;
    double weather = 2 * BAROMETER * BAROMETER * (1 - Math.exp(-age / BAROMETER_MEMORY));
    double airThen = fill * growth * origin.airSigma();
    double airNow = fill * timeline.sigma[node];
    double warmThen = fill * growth * origin.warmSigma();
    double shared =
        sq(growth * origin.repeatSigma())
            + sq(airThen)
            + sq(airNow)
            - 2 * memory * airThen * airNow
            + sq(warmThen)
            + sq(lost)
            + weather;
    double warm = fill * warmKelvins;
    return new Moment(
        seconds,
        air,
        pressure,
        timeline.elevation[node],
        tireKelvins,
        fill,
        origin,
        settled,
        reading,
        judged,
        Math.sqrt(shared + sq(warm) + sq(origin.repeatSigma())),
        Math.sqrt(shared + sq(origin.repeatSigma())),
        Math.sqrt(shared + sq(growth * origin.offsetSigma())),
        fill * timeline.coldSide[node] * (1 - memory),
        warm);
  }

  /**
   * How far the floor lies above the cautious pressure, in standard deviations; NaN without a floor
   * or a moment.
   */
  static double deviations(Limits limits, @Nullable Moment moment) {
    double floor = limits.floor();
    if (moment == null || Double.isNaN(floor)) {
      return Double.NaN;
    }
    double load = limits.load().kilograms();
    double loadPart = load > 0 ? limits.load().sigma() / load * floor : 0;
    double sigma = Math.sqrt(sq(moment.limitSigma()) + sq(loadPart));
    return (floor - (moment.judged() - moment.coldSide())) / sigma;
  }

  private static double sq(double number) {
    return number * number;
  }
}

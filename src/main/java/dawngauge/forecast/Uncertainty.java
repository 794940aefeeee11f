package dawngauge.forecast;

import dawngauge.quantity.GaugePressure;
import dawngauge.quantity.Unit;
import dawngauge.rules.GaugeErrors;

/** Spreads and how they join, by linear propagation. */
final class Uncertainty {

  /** Half-width of what the weather's own air pressure does, taken as even, in pascal. */
  private static final double BAROMETER = GaugePressure.of(0.3, Unit.PSI).pascals() / Math.sqrt(3);

  /** Over such times errors of the expected air fade into new ones, in seconds; inferred. */
  private static final double AIR_MEMORY = 12 * 3600.0;

  /** The same for the weather's air pressure, in seconds; inferred. */
  private static final double BAROMETER_MEMORY = 24 * 3600.0;

  /** Part of the air lost by permeation, or by a typed leak, that may be wrong; ours. */
  private static final double LOSS_SIGMA = 0.4;

  private Uncertainty() {}

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
  static TireSnapshot moment(
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
    double airThen = airThen(origin, fill, air);
    double airNow = fill * timeline.sigma[node];
    double warmThen = fill * growth * origin.warmSigma();
    double byAir = sq(airThen) + sq(airNow) - 2 * memory * airThen * airNow;
    double repeat = sq(growth * origin.repeatSigma());
    double fine = sq(growth * Math.min(origin.repeatSigma(), GaugeErrors.REPEATABILITY));
    double shared = repeat + byAir + sq(warmThen) + sq(lost) + weather;
    double constant = sq(growth * origin.offsetSigma());
    double warm = fill * warmKelvins;
    return new TireSnapshot(
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
        Math.sqrt(shared + constant),
        Math.sqrt(shared + constant - repeat + fine),
        growth * origin.offsetSigma(),
        Math.sqrt(byAir),
        fill * timeline.coldSide[node] * (1 - memory),
        warm);
  }

  /** What the error of the air at a reading makes of the settled pressure in other air, pascal. */
  static double airThen(FillOrigin origin, double fill, double airKelvins) {
    return fill * airKelvins / origin.tireKelvins() * origin.airSigma();
  }

  private static double sq(double number) {
    return number * number;
  }
}

package dawngauge.forecast;

import dawngauge.rules.GaugeErrors;
import dawngauge.rules.RanLow;
import dawngauge.trip.LogEvent;

/**
 * A reading in the log against what was expected of it before it was known. Gauge pressures in
 * pascal.
 *
 * @param reading the reading
 * @param expected what the forecast expected; NaN for the first reading of a tire
 * @param sigma one standard deviation of that; NaN for the first
 * @param coldEquivalent what the reading means for the tire as cool as the air around, by the model
 * @param coldSigma one standard deviation of that
 * @param rolledSinceSound whether the tire rolled since its last reading
 * @param fillExpected fill expected just before it, in pascal per kelvin; NaN for the first
 * @param fillRead fill by the reading alone
 * @param fillKnown fill that is known from it on
 * @param airKelvins temperature of the air around, measured or expected
 * @param airPressure pressure of the air around, in pascal
 * @param errors how sure the gauge is
 * @param airSigma of the air's temperature then, in kelvin
 * @param tireKelvins temperature of the air in the tire, by the model where it was not noted
 * @param warmSigma of how much warmer than the air the tire was, one standard deviation in kelvin
 * @param braked whether it was not cold after a long steep descent: brakes may have heated it, by
 *     how much is not known
 */
public record ReadingCheck(
    LogEvent.Reading reading,
    double expected,
    double sigma,
    double coldEquivalent,
    double coldSigma,
    boolean rolledSinceSound,
    double fillExpected,
    double fillRead,
    double fillKnown,
    double airKelvins,
    double airPressure,
    GaugeErrors errors,
    double airSigma,
    double tireKelvins,
    double warmSigma,
    boolean braked) {

  /** Off by more deviations than this, a reading is not explained by the weather. */
  private static final double UNEXPECTED = 2;

  /** Whether it was the tire's first, so that nothing was expected. */
  public boolean first() {
    return Double.isNaN(expected);
  }

  /** What an open gauge shows. */
  public double shown() {
    return fillRead * tireKelvins - airPressure;
  }

  /** Repeatability of the gauge, one standard deviation in pascal. */
  public double repeatSigma() {
    return errors.repeat();
  }

  /** Whether it tells of a tire that ran low, had it rolled so. */
  public RanLow ranLow(double reference) {
    return RanLow.ofReading(reading.state(), shown(), coldEquivalent, coldSigma, errors, reference);
  }

  /** How much more than expected the gauge showed; NaN for the first. */
  public double off() {
    return reading.pressure().value().pascals() - expected;
  }

  /**
   * How much warmer than the air the tire was by this reading and the air that was in it before it;
   * in kelvin, NaN for the first.
   */
  public double warmthRead() {
    return (reading.pressure().value().pascals() + airPressure) / fillExpected - airKelvins;
  }

  /**
   * Whether it is off by more than weather and gauge explain, and brakes where they may have heated
   * the tire.
   */
  public boolean unexpected() {
    double read = reading.pressure().value().pascals();
    return read < leastExpected() || read > mostExpected();
  }

  /** A reading below it is unexpected, in pascal; NaN for the first. */
  public double leastExpected() {
    return expected - UNEXPECTED * sigma;
  }

  /** A reading above it is unexpected, in pascal; infinite after brakes, NaN for the first. */
  public double mostExpected() {
    return braked ? Double.POSITIVE_INFINITY : expected + UNEXPECTED * sigma;
  }

  /** How far it lies from what was expected, in standard deviations; 0 for the first. */
  public double deviations() {
    return first() ? 0 : off() / sigma;
  }
}

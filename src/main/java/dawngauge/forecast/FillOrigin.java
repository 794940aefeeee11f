package dawngauge.forecast;

import dawngauge.rules.GaugeErrors;

/**
 * The reading or setting from which a tire's fill is known, with what may be wrong about it.
 *
 * @param kind reading, adjustment or assumed setting
 * @param gauge name of the gauge
 * @param errors how sure it is
 * @param seconds epoch seconds
 * @param gaugePascals gauge pressure then, as an open gauge shows it
 * @param tireKelvins temperature of the air in the tire then
 * @param airKelvins temperature of the air around then
 * @param airPressure pressure of the air around then, in pascal
 * @param elevation height of the ground then, in meter
 * @param fill fill then, in pascal per kelvin
 * @param repeatSigma repeatability of the gauge, one standard deviation in pascal
 * @param offsetSigma constant error of the gauge, one standard deviation in pascal
 * @param airSigma of the air's temperature then, in kelvin
 * @param airExpected whether that was the expected temperature, whose error is still much the same
 *     soon after; false where air or tire were measured
 * @param warmSigma of how much warmer than the air the tire was, in kelvin
 */
public record FillOrigin(
    Kind kind,
    String gauge,
    GaugeErrors errors,
    double seconds,
    double gaugePascals,
    double tireKelvins,
    double airKelvins,
    double airPressure,
    double elevation,
    double fill,
    double repeatSigma,
    double offsetSigma,
    double airSigma,
    boolean airExpected,
    double warmSigma) {

  /** What the fill is known from. */
  public enum Kind {
    /** A reading in the log. */
    READING,
    /** An adjustment in the log. */
    ADJUSTMENT,
    /** An adjustment that the advice asks for and the forecast takes as done. */
    ASSUMED
  }
}

package dawngauge.forecast;

import dawngauge.physics.GasLaw;
import dawngauge.quantity.GaugePressure;
import dawngauge.quantity.Unit;

/**
 * What the rule of thumb makes of a change of the air's temperature: 1 to 2 psi for each 10 °F
 * (common practice, no source). It stands beside ours, since crews compare the two first, and is
 * never used. Gauge pressures in pascal, of a tire as cool as the air; no loss, no height.
 *
 * @param low the lower end
 * @param high the upper end
 */
public record RuleOfThumb(double low, double high) {

  private static final double PSI = GaugePressure.of(1, Unit.PSI).pascals();

  /** Ten degrees Fahrenheit, in kelvin. */
  private static final double TEN = 10 / 1.8;

  /** From the reading or setting that the fill is known from to a moment. */
  public static RuleOfThumb of(TireSnapshot moment) {
    FillOrigin origin = moment.origin();
    double then = GasLaw.gauge(origin.fill(), origin.airKelvins(), origin.airPressure());
    double tens = (moment.airKelvins() - origin.airKelvins()) / TEN;
    double one = then + tens * PSI;
    double two = then + 2 * tens * PSI;
    return new RuleOfThumb(Math.min(one, two), Math.max(one, two));
  }
}

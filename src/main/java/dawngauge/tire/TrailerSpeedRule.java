package dawngauge.tire;

import dawngauge.quantity.GaugePressure;
import dawngauge.quantity.Speed;
import dawngauge.quantity.Unit;

/**
 * What high speed asks of special trailer tires that carry no speed symbol (Tire and Rim
 * Association, as reproduced in the trade). The extra pressure carries no more load, and does not
 * lift the limit of tire, wheel or valve: where it does not fit under them, the speed must come
 * down.
 */
public final class TrailerSpeedRule {

  /**
   * What a top speed asks for.
   *
   * @param extraPascals cold pressure to add for the same load, in pascal
   * @param loadFactor what is left of the load the tire may carry, 1 for all of it
   * @param allowed whether the tire may run at this speed at all; if not, the other two figures are
   *     those of the last speed allowed
   */
  public record Effect(double extraPascals, double loadFactor, boolean allowed) {}

  /** Forgives the rounding of unit conversions, in miles per hour. */
  private static final double ROUNDING = 1e-6;

  /** Up to here the rule asks for nothing. */
  public static final Speed FREE = Speed.of(65, Unit.MILE_PER_HOUR);

  /** The fastest that the rule allows at all. */
  public static final Speed MOST = Speed.of(85, Unit.MILE_PER_HOUR);

  /** Cold pressure that is added above the speed that is free. */
  public static final GaugePressure EXTRA = GaugePressure.of(10, Unit.PSI);

  private static final Speed EXTRA_ONLY = Speed.of(75, Unit.MILE_PER_HOUR);

  private TrailerSpeedRule() {}

  /**
   * The rule: up to 65 mph nothing; to 75 mph 10 psi more; to 85 mph also 10 % less load; above
   * that not allowed. The source's rows run "66 to 75" and "76 to 85": a speed between two rows
   * belongs to the faster one.
   */
  public static Effect at(Speed top) {
    if (upTo(FREE, top)) {
      return new Effect(0, 1, true);
    } else if (upTo(EXTRA_ONLY, top)) {
      return new Effect(EXTRA.pascals(), 1, true);
    }
    return new Effect(EXTRA.pascals(), 0.9, upTo(MOST, top));
  }

  private static boolean upTo(Speed most, Speed top) {
    return top.in(Unit.MILE_PER_HOUR) <= most.in(Unit.MILE_PER_HOUR) + ROUNDING;
  }
}

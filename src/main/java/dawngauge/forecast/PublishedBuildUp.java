package dawngauge.forecast;

import dawngauge.quantity.GaugePressure;
import dawngauge.quantity.Mass;
import dawngauge.quantity.Speed;
import dawngauge.quantity.Unit;
import java.util.Optional;

/**
 * The build-up that 49 CFR 393.75(i)(2), Table 1, subtracts from the reading of a warm tire to
 * estimate its cold pressure. An enforcement figure, beside our model and never mixed with it.
 *
 * @param pressure what is subtracted
 */
public record PublishedBuildUp(GaugePressure pressure) {

  /** Lowest average speed of the previous hour for which the table speaks: 66 km/h (41 mph). */
  public static final Speed LOWEST = Speed.of(41, Unit.MILE_PER_HOUR);

  /** Highest: 88.5 km/h (55 mph). */
  public static final Speed HIGHEST = Speed.of(55, Unit.MILE_PER_HOUR);

  /** Tires with a maximum load rating up to this: 1,814 kg (4,000 lb). */
  public static final Mass SMALL = Mass.of(4000, Unit.POUND);

  private static final PublishedBuildUp UP_TO_SMALL =
      new PublishedBuildUp(GaugePressure.of(5, Unit.PSI));
  private static final PublishedBuildUp ABOVE_SMALL =
      new PublishedBuildUp(GaugePressure.of(15, Unit.PSI));

  /** Forgives the rounding of unit conversions. */
  private static final double ROUNDING = 1e-6;

  /**
   * The table's figure.
   *
   * @param ratedLoad the tire's maximum load rating
   * @param previousHour average speed over the hour before
   * @return empty outside the table's speeds: no factor is published there
   */
  public static Optional<PublishedBuildUp> of(Mass ratedLoad, Speed previousHour) {
    double speed = previousHour.metersPerSecond();
    if (speed < LOWEST.metersPerSecond() - ROUNDING
        || speed > HIGHEST.metersPerSecond() + ROUNDING) {
      return Optional.empty();
    }
    return Optional.of(
        ratedLoad.kilograms() <= SMALL.kilograms() + ROUNDING ? UP_TO_SMALL : ABOVE_SMALL);
  }
}

package dawngauge.forecast;

import dawngauge.physics.GasLaw;

/**
 * A tire at one moment. Pressures are gauge pressures in pascal, temperatures kelvin.
 *
 * @param seconds epoch seconds
 * @param airKelvins temperature of the air around
 * @param airPressure pressure of the air around
 * @param elevation height of the ground in meter
 * @param tireKelvins temperature of the air in the tire
 * @param fill air in the tire, in pascal per kelvin
 * @param origin what the fill is known from
 * @param settled what the gauge would read with the tire as cool as the air
 * @param reading what the gauge reads
 * @param judged pressure judged against the floor: warmth above the air is not credited, a tire
 *     still colder than the air is judged as cold as it is
 * @param readingSigma one standard deviation of the reading with the gauge of the origin
 * @param settledSigma one standard deviation of a settled reading with the gauge of the origin
 * @param limitSigma one standard deviation of the true settled pressure
 * @param fineSigma the same if the gauge had no step
 * @param gaugeSigma the part of it that is the gauge's constant error
 * @param airSigma the part of it that is the air's temperature, then and now
 * @param coldSide how much further the low side of the settled pressure reaches
 * @param warmSigma one standard deviation of the build-up
 */
public record TireSnapshot(
    double seconds,
    double airKelvins,
    double airPressure,
    double elevation,
    double tireKelvins,
    double fill,
    FillOrigin origin,
    double settled,
    double reading,
    double judged,
    double readingSigma,
    double settledSigma,
    double limitSigma,
    double fineSigma,
    double gaugeSigma,
    double airSigma,
    double coldSide,
    double warmSigma) {

  /**
   * The part of the settled pressure's spread that is the air's when it was read or set, pascal.
   */
  public double airReadSigma() {
    return Math.min(airSigma, Uncertainty.airThen(origin, fill, airKelvins));
  }

  /** The rest of what is the air's, in pascal. */
  public double airNowSigma() {
    double read = airReadSigma();
    return Math.sqrt(airSigma * airSigma - read * read);
  }

  /** How much the tire reads above its settled pressure; negative while it lags warming air. */
  public double buildUp() {
    return reading - settled;
  }

  /** The cautious side of the judged pressure. */
  public double low() {
    return judged - coldSide;
  }

  /**
   * The fill as people are shown it: the gauge pressure it has at 68 °F at sea level, in pascal.
   */
  public double atReference() {
    return GasLaw.atReference(fill);
  }

  /**
   * The same tire at a time between this and a later moment, as if all went evenly.
   *
   * @param at epoch seconds
   */
  public TireSnapshot towards(TireSnapshot later, double at) {
    double span = later.seconds - seconds;
    double part = span > 0 ? (at - seconds) / span : 0;
    double there = 1 - part;
    return new TireSnapshot(
        at,
        there * airKelvins + part * later.airKelvins,
        there * airPressure + part * later.airPressure,
        there * elevation + part * later.elevation,
        there * tireKelvins + part * later.tireKelvins,
        there * fill + part * later.fill,
        origin,
        there * settled + part * later.settled,
        there * reading + part * later.reading,
        there * judged + part * later.judged,
        there * readingSigma + part * later.readingSigma,
        there * settledSigma + part * later.settledSigma,
        there * limitSigma + part * later.limitSigma,
        there * fineSigma + part * later.fineSigma,
        there * gaugeSigma + part * later.gaugeSigma,
        there * airSigma + part * later.airSigma,
        there * coldSide + part * later.coldSide,
        there * warmSigma + part * later.warmSigma);
  }

  /** The same air in the tire, as warm and as high as it was at another moment. */
  public TireSnapshot inAirOf(TireSnapshot other) {
    return new TireSnapshot(
        other.seconds,
        other.airKelvins,
        other.airPressure,
        other.elevation,
        other.tireKelvins,
        fill,
        origin,
        GasLaw.gauge(fill, other.airKelvins, other.airPressure),
        GasLaw.gauge(fill, other.tireKelvins, other.airPressure),
        GasLaw.gauge(fill, Math.min(other.tireKelvins, other.airKelvins), other.airPressure),
        readingSigma,
        settledSigma,
        limitSigma,
        fineSigma,
        gaugeSigma,
        airSigma,
        coldSide,
        other.warmSigma);
  }

  /** The same tire once as cool as the air around. */
  public TireSnapshot cooled() {
    return new TireSnapshot(
        seconds,
        airKelvins,
        airPressure,
        elevation,
        airKelvins,
        fill,
        origin,
        settled,
        settled,
        settled,
        settledSigma,
        settledSigma,
        limitSigma,
        fineSigma,
        gaugeSigma,
        airSigma,
        coldSide,
        0);
  }

  /** The same where the tire's warmth is not known: settled figures only. */
  TireSnapshot withoutReading() {
    return new TireSnapshot(
        seconds,
        airKelvins,
        airPressure,
        elevation,
        tireKelvins,
        fill,
        origin,
        settled,
        Double.NaN,
        judged,
        Double.NaN,
        settledSigma,
        limitSigma,
        fineSigma,
        gaugeSigma,
        airSigma,
        coldSide,
        Double.NaN);
  }
}

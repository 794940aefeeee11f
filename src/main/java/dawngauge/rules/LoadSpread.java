package dawngauge.rules;

/**
 * What a load may be: normally distributed about a middle, nothing above a cut, nothing under zero.
 * Kilogram.
 *
 * @param middle middle before the cut; NaN where the load is not known
 * @param deviation one standard deviation before the cut
 * @param cut highest it can be; infinite where nothing says so
 */
public record LoadSpread(double middle, double deviation, double cut) {

  /** Further than this above the middle a cut takes nothing away, in standard deviations. */
  private static final double FAR = 8;

  /** A load about a middle, without a cut. */
  static LoadSpread about(double middle, double deviation) {
    return new LoadSpread(middle, deviation, Double.POSITIVE_INFINITY);
  }

  /** The likely load: the mean of what lies under the cut; NaN if not known. */
  public double mean() {
    return Math.max(0, cuts() ? middle - deviation * lift() : middle);
  }

  /** One standard deviation of what lies under the cut; NaN if not known. */
  public double sigma() {
    if (!cuts()) {
      return deviation;
    }
    double at = (cut - middle) / deviation;
    return deviation * Math.sqrt(Math.max(0, 1 - at * lift() - lift() * lift()));
  }

  /** Mean of a normal distribution cut at a point: Johnson, Kotz, Balakrishnan 1994, 13.10. */
  private double lift() {
    double at = (cut - middle) / deviation;
    return Math.exp(-at * at / 2) / Math.sqrt(2 * Math.PI) / Quantile.under(at);
  }

  private boolean cuts() {
    return deviation > 0 && cut < middle + FAR * deviation;
  }

  /** Chance that the load is more than a figure; NaN if not known. */
  public double chanceOver(double kilograms) {
    if (kilograms >= cut) {
      return 0;
    } else if (!(deviation > 0)) {
      return Double.isNaN(middle) ? Double.NaN : middle > kilograms ? 1 : 0;
    }
    double under = Quantile.under((kilograms - middle) / deviation);
    return 1 - (cuts() ? under / Quantile.under((cut - middle) / deviation) : under);
  }

  /** The load that is not passed with a chance, 0 to 1. */
  double quantile(double chance) {
    double part = cuts() ? chance * Quantile.under((cut - middle) / deviation) : chance;
    double load = deviation > 0 ? middle + deviation * Quantile.deviations(part) : middle;
    return Math.max(0, Math.min(load, cut));
  }

  /** Both together, taken as heavy together: that one load is high tells the same of the other. */
  LoadSpread plus(LoadSpread other) {
    return new LoadSpread(middle + other.middle, deviation + other.deviation, cut + other.cut);
  }

  /** A part of it, such as one tire's of an axle. */
  LoadSpread times(double part) {
    return new LoadSpread(middle * part, deviation * part, cut * part);
  }
}

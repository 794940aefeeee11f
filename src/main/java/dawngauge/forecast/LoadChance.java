package dawngauge.forecast;

import dawngauge.rules.Carrying;
import dawngauge.rules.GaugeErrors;
import dawngauge.rules.Limits;
import org.jspecify.annotations.Nullable;

/**
 * Chances that a tire does not carry its load at one moment. 0 to 1; NaN where load, capacity or
 * pressure are not known.
 *
 * @param underFloor that the load is over the likely curve
 * @param notShown that it is over the cautious curve: that it cannot be shown to be carried
 * @param asCertified whether the tire is at its label's pressure, at which it is certified to carry
 *     its share, so that neither chance asks for anything
 */
public record LoadChance(double underFloor, double notShown, boolean asCertified) {

  /** Nothing is known. */
  static final LoadChance UNKNOWN = new LoadChance(Double.NaN, Double.NaN, false);

  /**
   * The chances at a moment. With a coarse gauge the larger of the chance with and without its step
   * counts, so that a coarser gauge never loosens.
   */
  public static LoadChance of(Limits limits, @Nullable TireSnapshot moment) {
    Carrying carrying = limits.carrying();
    if (moment == null || carrying == null) {
      return UNKNOWN;
    }
    double low = moment.low();
    double coarse = moment.limitSigma();
    double fine = moment.fineSigma();
    double under = carrying.underFloor(low, coarse);
    double notShown = carrying.notShown(low, coarse);
    if (fine < coarse) {
      under = Math.max(under, carrying.underFloor(low, fine));
      notShown = Math.max(notShown, carrying.notShown(low, fine));
    }
    return new LoadChance(under, notShown, asCertified(limits, moment));
  }

  /**
   * Whether the tire was read or set at the label's pressure, and is expected near it still: under
   * it by no more than what its gauge cannot tell.
   */
  private static boolean asCertified(Limits limits, TireSnapshot moment) {
    double label = limits.certified();
    FillOrigin origin = moment.origin();
    GaugeErrors errors = origin.errors();
    double least = label - errors.deadBand(label);
    double then = origin.fill() * origin.airKelvins() - origin.airPressure();
    return moment.settled() >= least && then >= least;
  }

  /** Whether the load is likelier to be too much than a chance allows. */
  public boolean tooLikely(double allowed) {
    return !asCertified && underFloor > allowed;
  }

  /** Whether that the load is carried cannot be shown with a chance. */
  public boolean cannotBeShown(double allowed) {
    return !asCertified && notShown > allowed;
  }

  /** Whether both curves say the same within a point: neither rows nor a scale would change it. */
  public boolean firm() {
    return Math.abs(notShown - underFloor) < 0.01;
  }
}

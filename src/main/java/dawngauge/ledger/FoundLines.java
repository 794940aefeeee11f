package dawngauge.ledger;

import dawngauge.forecast.HeatFit;
import dawngauge.forecast.TireLoss;
import dawngauge.quantity.GaugePressure;
import dawngauge.quantity.UnitSystem;
import dawngauge.rules.Quantile;
import dawngauge.trip.Trip;
import java.util.Locale;

/** What the readings tell of single tires, in words. */
public final class FoundLines {

  private FoundLines() {}

  /** A tire that goes down. */
  public static String of(Trip trip, TireLoss loss, UnitSystem units) {
    int decimals = units == UnitSystem.US ? 1 : 2;
    return trip.rig().shortForm(loss.position())
        + " goes down: it lost "
        + units.format(new GaugePressure(loss.pascals()), decimals)
        + " (± "
        + units.format(new GaugePressure(Quantile.NINETY_WITHIN * loss.sigma()), decimals)
        + ") between "
        + trip.route().stops().get(loss.from()).place()
        + " and "
        + trip.route().stops().get(loss.to()).place()
        + ", "
        + units.format(new GaugePressure(loss.perDay()), decimals)
        + " a day, at most "
        + units.format(new GaugePressure(loss.fastPerDay()), decimals)
        + (loss.compared() > 0
            ? "; held against " + loss.compared() + " other tires"
            : "; no other tires were read with it, so the air may share in it")
        + ". Look at valve core and stem, bead, tread and wheel.";
  }

  /** How much a tire warms up. */
  public static String of(Trip trip, HeatFit fit, String change) {
    String words =
        trip.rig().shortForm(fit.position())
            + " warms up by "
            + factor(fit.factor())
            + " (± "
            + factor(Quantile.NINETY_WITHIN * fit.sigma())
            + ") times the model, by "
            + (fit.readings() == 1 ? "one warm reading" : fit.readings() + " warm readings")
            + "; the trip has "
            + factor(fit.before())
            + ".";
    if (fit.beyond()) {
      return words
          + " So far off, a brake, a bearing, the load or the pressure is likelier than a trait of"
          + " the tire: look before going on. It is not offered.";
    }
    String alike =
        fit.asOthers()
            ? " The other tires are alike, so it is no fault of this one; if the load may be more than"
                + " typed, weigh it."
            : "";
    return words + alike + (change.isEmpty() ? "" : " With it: " + change);
  }

  /** A factor in two decimals. */
  public static String factor(double factor) {
    return String.format(Locale.ROOT, "%.2f", factor);
  }
}

package dawngauge.ledger;

import dawngauge.forecast.HeatFit;
import dawngauge.forecast.TireLoss;
import dawngauge.physics.WarmUp;
import dawngauge.quantity.GaugePressure;
import dawngauge.quantity.UnitSystem;
import dawngauge.rules.Quantile;
import dawngauge.trip.HeatRecord;
import dawngauge.trip.Tire;
import dawngauge.trip.Trip;
import dawngauge.trip.WheelPosition;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

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

  /** What is asked before it is kept how warm the tires ran; empty where nothing is to be kept. */
  public static String toKeep(Trip trip, List<HeatFit> fits) {
    return told(
        trip,
        fits.stream()
            .flatMap(fit -> fit.record().map(record -> new Known(fit.position(), record)).stream())
            .toList(),
        "By their warm readings these tires run so many times as warm as modelled: {0}. Keep that"
            + " with the rig? On the next trip the ranges of their warm readings are then {1} as"
            + " wide. It stands under Rig below each heat factor, and is dropped there.");
  }

  /** What earlier trips told of the tires; empty where nothing is kept. */
  public static String kept(Trip trip) {
    List<Known> known = new ArrayList<>();
    for (WheelPosition position : trip.rig().positions()) {
      trip.rig()
          .fittedAt(position)
          .map(Tire::heatRecord)
          .ifPresent(record -> known.add(new Known(position, record)));
    }
    return told(
        trip,
        known,
        "By earlier trips these tires run so many times as warm as modelled: {0}. The ranges of"
            + " their warm readings are {1} as wide by it.");
  }

  private record Known(WheelPosition position, HeatRecord heat) {}

  private static String told(Trip trip, List<Known> known, String sentence) {
    if (known.isEmpty()) {
      return "";
    }
    String each =
        known.stream()
            .map(one -> trip.rig().shortForm(one.position()) + " " + factor(one.heat().factor()))
            .collect(Collectors.joining(", "));
    double part =
        known.stream().mapToDouble(one -> HeatFit.riseSpread(one.heat())).average().orElse(0)
            / WarmUp.RISE_SPREAD;
    String percent = Math.round(100 * part) + " %";
    return sentence.replace("{0}", each).replace("{1}", percent);
  }

  /** A factor in two decimals. */
  public static String factor(double factor) {
    return String.format(Locale.ROOT, "%.2f", factor);
  }
}

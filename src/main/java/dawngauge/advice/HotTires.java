package dawngauge.advice;

import dawngauge.explain.Phrase;
import dawngauge.forecast.ReadingCheck;
import dawngauge.quantity.Median;
import dawngauge.quantity.TemperatureDifference;
import dawngauge.trip.ReadingState;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A tire that ran much hotter than the others of its vehicle by its warm reading: a brake that
 * drags, a bearing, an overload, too little air. Never taken for a trait of the tire.
 */
final class HotTires {

  /** Over the median of its mates by this part, it is a finding; ours, no source. */
  private static final double HOTTER = 1.25;

  /** Smaller differences are the gauge's, in kelvin; ours. */
  private static final double LEAST = 5;

  /** A difference of so many deviations of the readings is no chance. */
  private static final double BEYOND = 3;

  private static final int LEAST_MATES = 2;

  private HotTires() {}

  /** The tires of a stop, with the finding where there is one. */
  static List<TireAdvice> told(List<TireAdvice> tires) {
    boolean none = true;
    for (TireAdvice tire : tires) {
      none = none && warm(tire) == null;
    }
    if (none) {
      return tires;
    }
    List<TireAdvice> told = new ArrayList<>();
    for (TireAdvice tire : tires) {
      told.add(told(tire, tires));
    }
    return told;
  }

  private static TireAdvice told(TireAdvice tire, List<TireAdvice> tires) {
    ReadingCheck own = warm(tire);
    double[] mates =
        tires.stream()
            .filter(other -> !other.equals(tire) && sameVehicle(other, tire))
            .map(HotTires::warm)
            .filter(check -> check != null)
            .mapToDouble(ReadingCheck::warmthRead)
            .toArray();
    if (own == null || mates.length < LEAST_MATES) {
      return tire;
    }
    double middle = Median.of(mates);
    double over = own.warmthRead() - middle;
    double sigma = own.repeatSigma() * Math.sqrt(2 + 2.0 / mates.length) / own.fillExpected();
    boolean hot =
        middle > 0 && own.warmthRead() > HOTTER * middle && over > LEAST && over > BEYOND * sigma;
    return hot
        ? tire.with(
            new Reason(
                Mark.RECHECK,
                Phrase.of("hotter than its mates: feel tire, brake and bearing"),
                Phrase.of(
                    "runs hotter than its mates, by about {0}: pressure, load, brake or bearing;"
                        + " look and feel with the back of the hand before going on",
                    new TemperatureDifference(over)),
                0))
        : tire;
  }

  private static boolean sameVehicle(TireAdvice one, TireAdvice other) {
    return one.tire()
        .fitted()
        .position()
        .axle()
        .vehicle()
        .equals(other.tire().fitted().position().axle().vehicle());
  }

  /** The last warm reading at the stop that says how warm the tire was; null without one. */
  private static @Nullable ReadingCheck warm(TireAdvice tire) {
    ReadingCheck found = null;
    for (ReadingCheck check : tire.tire().readings()) {
      if (check.reading().state() == ReadingState.WARM && !check.first()) {
        found = check;
      }
    }
    return found;
  }
}

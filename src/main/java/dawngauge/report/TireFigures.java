package dawngauge.report;

import dawngauge.advice.SetFigure;
import dawngauge.advice.TimedFigures;
import dawngauge.advice.TireAdvice;
import dawngauge.forecast.LoadChance;
import dawngauge.forecast.TireAtStop;
import dawngauge.forecast.TireSnapshot;
import dawngauge.quantity.GaugePressure;
import dawngauge.quantity.Mass;
import dawngauge.quantity.Quantity;
import dawngauge.quantity.Ratio;
import dawngauge.tire.Capacity;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import org.jspecify.annotations.Nullable;

/**
 * The figures of a tire at a stop that go to other programs, by name, in a fixed order. The same
 * names are used in every machine-readable form.
 */
final class TireFigures {

  private TireFigures() {}

  /** Name to figure; null where it is not known. */
  static Map<String, @Nullable Quantity> of(TireAdvice advice) {
    TireAtStop at = advice.tire();
    TireSnapshot arrival = at.arrival();
    TireSnapshot leaving = at.leaving();
    Map<String, @Nullable Quantity> figures = new LinkedHashMap<>();
    figures.put("arriveReads", arrival == null ? null : pressure(arrival.reading()));
    figures.put("arriveReadsSigma", arrival == null ? null : pressure(arrival.readingSigma()));
    figures.put("arriveSettled", arrival == null ? null : pressure(arrival.settled()));
    figures.put("leaveReads", leaving == null ? null : pressure(leaving.reading()));
    figures.put("leaveReadsSigma", leaving == null ? null : pressure(leaving.readingSigma()));
    figures.put("leaveSettled", leaving == null ? null : pressure(leaving.settled()));
    figures.putAll(set(advice.timed()));
    figures.put("lowestAhead", at.low() == null ? null : pressure(at.low().moment().judged()));
    figures.put("floor", pressure(at.limits().floor()));
    figures.put("aim", pressure(at.limits().aim()));
    figures.put("ceiling", pressure(at.limits().ceiling()));
    figures.put("publishedBuildUp", at.published() == null ? null : at.published().pressure());
    figures.put("load", BothUnits.known(at.limits().load().kilograms(), Mass::new));
    figures.put("margin", ratio(at.worstMargin()));
    figures.put("chanceUnderFloor", ratio(chance(advice, LoadChance::underFloor)));
    figures.put("chanceNotShown", ratio(chance(advice, LoadChance::notShown)));
    return figures;
  }

  /** The figures to set, by the minute at which the crew stands at the tire. */
  static Map<String, @Nullable Quantity> set(@Nullable TimedFigures timed) {
    SetFigure onArrival = timed == null ? null : timed.onArrival();
    Map<String, @Nullable Quantity> figures = new LinkedHashMap<>();
    figures.put("setCold", timed == null ? null : timed.cold().figure());
    figures.put("setOnArrival", onArrival == null ? null : onArrival.figure());
    figures.put("setAt", timed == null ? null : timed.at().figure());
    return figures;
  }

  /** The larger of a chance when leaving and on the leg ahead; NaN if the leg is not known. */
  private static double chance(TireAdvice advice, ToDoubleFunction<LoadChance> which) {
    if (advice.aheadUnknown()) {
      return Double.NaN;
    }
    TireAtStop at = advice.tire();
    double here = which.applyAsDouble(at.leavingChance());
    double ahead = at.low() == null ? Double.NaN : which.applyAsDouble(at.low().chance());
    return Double.isNaN(here) ? ahead : Double.isNaN(ahead) ? here : Math.max(here, ahead);
  }

  /** Words about a tire that go to other programs, by name; null where not known. */
  static Map<String, @Nullable String> words(TireAtStop at) {
    Map<String, @Nullable String> words = new LinkedHashMap<>();
    words.put("loadBasis", at.limits().load().axle().basis().word());
    Capacity.Basis basis = at.limits().capacityBasis();
    words.put("capacityBasis", basis == null ? null : basis.word());
    return words;
  }

  /** Whether both chances say the same: rows or a scale would not change it. */
  static boolean firm(TireAdvice advice) {
    TireAtStop at = advice.tire();
    return !advice.aheadUnknown()
        && at.leavingChance().firm()
        && (at.low() == null || at.low().chance().firm());
  }

  private static @Nullable Quantity pressure(double pascals) {
    return BothUnits.known(pascals, GaugePressure::new);
  }

  private static @Nullable Quantity ratio(double value) {
    return BothUnits.known(value, Ratio::new);
  }
}

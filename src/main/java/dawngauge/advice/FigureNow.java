package dawngauge.advice;

import dawngauge.forecast.Forecaster;
import dawngauge.forecast.Moment;
import dawngauge.forecast.PublishedBuildUp;
import dawngauge.forecast.TireAtStop;
import dawngauge.forecast.Track;
import dawngauge.quantity.GaugePressure;
import dawngauge.trip.Air;
import dawngauge.trip.ReadingState;
import dawngauge.trip.WheelPosition;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * What a tire is to be set to at one stop, cold and warm, and what a reading there means as a cold
 * one. Nothing is set by it.
 *
 * @param at the tire at the stop
 * @param cold figure for a tire as cool as the air, by the air when leaving; null where nothing is
 *     known
 * @param warm figure for a tire as warm as it arrives; null where it does not arrive warm
 * @param air whether air is to be had
 * @param nextStart index of the stop from which a day is next started; −1 where there is none
 * @param nextAir air there in kelvin
 * @param nextAfterCold what the gauge will show there after the cold figure, in pascal
 * @param nextAfterWarm the same after the warm figure
 */
public record FigureNow(
    TireAtStop at,
    @Nullable SetFigure cold,
    @Nullable SetFigure warm,
    boolean air,
    int nextStart,
    double nextAir,
    double nextAfterCold,
    double nextAfterWarm) {

  /** Two-sided 90 %. */
  private static final double NINETY = 1.6449;

  /** How much warmer than the air the sun may make a tire, in kelvin; inferred. */
  private static final double SUN = 15;

  /** Warmer than the air by this, in kelvin, a tire is warm; ours. */
  private static final double WARM = 2;

  /** 29 CFR 1910.177(f)(2): run at 80 % or less of the recommended pressure. */
  private static final double RAN_LOW = 0.8;

  /**
   * What a reading means.
   *
   * @param low lower end of the cold pressure behind it in 9 of 10 cases, in pascal
   * @param likely the cold pressure behind it; in the sun NaN, since it may be anywhere between
   * @param high upper end
   * @param published the cold pressure by 49 CFR 393.75 Table 1; NaN where its only row does not
   *     apply
   * @param expected what the gauge was expected to show; NaN where not known
   * @param low80 whether the cautious side is at or below 80 % of the label's pressure
   */
  public record Meaning(
      double low, double likely, double high, double published, double expected, boolean low80) {}

  /**
   * The figures for a tire at a stop; empty where nothing is known of it there.
   *
   * @param visit index of the stop
   */
  public static Optional<FigureNow> of(Forecaster forecaster, WheelPosition position, int visit) {
    Track track = forecaster.track(position).orElse(null);
    TireAtStop at = track == null ? null : track.stops().get(visit);
    Moment check = at == null ? null : at.check();
    if (track == null || at == null || check == null || Double.isNaN(at.limits().aim())) {
      return Optional.empty();
    }
    Chances chances = new Chances(forecaster);
    Air air = Chances.airAt(forecaster, visit);
    double needed = chances.needed(chances.until(visit, track.stops()), check);
    double wanted = Math.max(at.limits().aim(), needed);
    SetFigure.Bounds bounds =
        new SetFigure.Bounds(
            needed,
            at.limits().ceiling(),
            air == null ? Double.POSITIVE_INFINITY : Chances.reach(air),
            chances.step(check));
    SetFigure cold = SetFigure.of(check.cooled(), wanted, false, bounds);
    Moment arrival = at.arrival();
    boolean warmHere =
        arrival != null
            && !Double.isNaN(arrival.reading())
            && arrival.tireKelvins() > arrival.airKelvins() + WARM;
    SetFigure warm =
        warmHere && arrival != null ? SetFigure.of(arrival, wanted, true, bounds) : null;
    int count = forecaster.itinerary().visits().size();
    int next = visit + 1;
    while (next < count - 1 && !chances.firstStart(next)) {
      next++;
    }
    Moment dawn = next < count - 1 ? track.stops().get(next).check() : null;
    return Optional.of(
        new FigureNow(
            at,
            cold,
            warm,
            air != null,
            dawn == null ? -1 : next,
            dawn == null ? Double.NaN : dawn.airKelvins(),
            later(check.cooled(), cold, dawn),
            warm == null || arrival == null ? Double.NaN : later(arrival, warm, dawn)));
  }

  /** What the gauge shows at a later moment after a figure was set at an earlier one. */
  private static double later(Moment set, SetFigure figure, @Nullable Moment later) {
    if (later == null) {
      return Double.NaN;
    }
    double fill =
        (figure.figure().pascals() + set.airPressure())
            / set.tireKelvins()
            * (later.fill() / set.fill());
    double kelvins = Double.isNaN(later.reading()) ? later.airKelvins() : later.tireKelvins();
    return fill * kelvins - later.airPressure();
  }

  /**
   * What a reading at the stop means as a cold one.
   *
   * @param state how the tire was; one just filled tells nothing yet
   * @return empty where the tire's warmth is not known
   */
  public Optional<Meaning> meaning(GaugePressure reading, ReadingState state) {
    Moment moment = state == ReadingState.WARM ? at.arrival() : at.check();
    if (moment == null || state == ReadingState.JUST_FILLED) {
      return Optional.empty();
    }
    double shown = reading.pascals();
    double around = moment.airPressure();
    double repeat = moment.origin().repeatSigma();
    double likely;
    double low;
    double high;
    if (state == ReadingState.WARM) {
      if (Double.isNaN(moment.reading())) {
        return Optional.empty();
      }
      double fill = (shown + around) / moment.tireKelvins();
      double growth = moment.airKelvins() / moment.tireKelvins();
      double kelvins = moment.warmSigma() / moment.fill();
      double sigma = Math.hypot(growth * repeat, fill * kelvins);
      likely = fill * moment.airKelvins() - around;
      low = likely - NINETY * sigma;
      high = likely + NINETY * sigma;
    } else if (state == ReadingState.COLD_IN_SUN) {
      likely = Double.NaN;
      double air = moment.airKelvins();
      low = (shown + around) / (air + SUN) * air - around - NINETY * repeat;
      high = shown + NINETY * repeat;
    } else {
      likely = shown;
      low = shown - NINETY * repeat;
      high = shown + NINETY * repeat;
    }
    PublishedBuildUp published = state == ReadingState.WARM ? at.published() : null;
    double label = at.fitted().labelPascals();
    return Optional.of(
        new Meaning(
            low,
            likely,
            high,
            published == null ? Double.NaN : shown - published.pressure().pascals(),
            state == ReadingState.COLD_IN_SUN ? Double.NaN : moment.reading(),
            low <= RAN_LOW * label));
  }
}

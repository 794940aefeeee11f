package dawngauge.advice;

import dawngauge.forecast.Forecaster;
import dawngauge.forecast.PublishedBuildUp;
import dawngauge.forecast.Readings;
import dawngauge.forecast.TireAtStop;
import dawngauge.forecast.TireSnapshot;
import dawngauge.forecast.Track;
import dawngauge.quantity.GaugePressure;
import dawngauge.rules.ColdRule;
import dawngauge.rules.GaugeErrors;
import dawngauge.rules.Quantile;
import dawngauge.rules.RanLow;
import dawngauge.trip.Gauge;
import dawngauge.trip.ReadingState;
import dawngauge.trip.WheelPosition;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * What a tire is to be set to at one stop, cold and warm, and what a reading there means as a cold
 * one. Nothing is set by it.
 *
 * @param at the tire at the stop
 * @param errors how sure its gauge is
 * @param justRolled whether the rig rolled less than three hours before, by noted times
 * @param cold figure for a tire as cool as the air, by the air when leaving; null where nothing is
 *     known
 * @param warm figure for a tire as warm as it arrives; null where it does not arrive warm
 * @param stay figures for every minute of the stay; null where nothing is known
 * @param ranLow whether it was found run low here or before, so that only a look inside clears it
 * @param air whether air is to be had
 * @param nextStart index of the stop from which a day is next started; −1 where there is none
 * @param nextAir air there in kelvin
 * @param nextAfterCold what the gauge will show there after the cold figure, in pascal
 * @param nextAfterWarm the same after the warm figure
 */
public record FigureNow(
    TireAtStop at,
    GaugeErrors errors,
    boolean justRolled,
    @Nullable SetFigure cold,
    @Nullable SetFigure warm,
    @Nullable StayFigures stay,
    boolean ranLow,
    boolean air,
    int nextStart,
    double nextAir,
    double nextAfterCold,
    double nextAfterWarm) {

  /** Warmer than the air by this, in kelvin, a tire is warm; ours. */
  private static final double WARM = 2;

  /**
   * What a reading means.
   *
   * @param low lower end of the cold pressure behind it in 9 of 10 cases, in pascal
   * @param likely the cold pressure behind it: of a warm tire that shows more than expected that
   *     which was known before; in the sun NaN, since it may be anywhere between
   * @param high upper end
   * @param published the cold pressure by 49 CFR 393.75 Table 1; NaN where its only row does not
   *     apply
   * @param expected what the gauge was expected to show; NaN where not known
   * @param warmth whether it is so far above what is expected that its warmth is to be looked into
   * @param ranLow whether it tells of a tire that ran low, had it rolled so
   */
  public record Meaning(
      double low,
      double likely,
      double high,
      double published,
      double expected,
      boolean warmth,
      RanLow ranLow) {}

  /**
   * The figures for a tire at a stop; empty where none is fitted.
   *
   * @param visit index of the stop
   */
  public static Optional<FigureNow> of(Forecaster forecaster, WheelPosition position, int visit) {
    return forecaster.track(position).map(track -> of(forecaster, track, visit, null));
  }

  /**
   * The same as it is advised: what is asked to be set at earlier stops taken as done, and here
   * what a plan sets that is followed.
   */
  public static Optional<FigureNow> of(
      Forecaster forecaster, Advice advice, WheelPosition position, int visit) {
    Track track = advice.tracks().get(position);
    TimedFigures planned = null;
    for (TireAdvice tire : advice.stops().get(visit).tires()) {
      boolean follows = forecaster.trip().plan().followed();
      if (follows && tire.tire().fitted().position().equals(position)) {
        planned = tire.timed();
      }
    }
    return track == null ? Optional.empty() : Optional.of(of(forecaster, track, visit, planned));
  }

  /**
   * The same with what is asked to be set at earlier stops taken as done.
   *
   * @param whole the tire; what it takes as set at the stop itself and later does not count
   * @param planned what a plan that is followed sets here; null where it sets nothing or none is
   */
  static FigureNow of(
      Forecaster forecaster, Track whole, int visit, @Nullable TimedFigures planned) {
    Track track = whole.before(visit);
    TireAtStop at = track.stops().get(visit);
    TireSnapshot check = at.check();
    boolean air = Lookahead.airAt(forecaster, visit) != null;
    boolean justRolled = justRolled(forecaster, visit, check);
    boolean ranLow = HoldRules.foundLowByNow(visit, track.stops());
    GaugeErrors errors = check == null ? gaugeOf(forecaster, at) : check.origin().errors();
    if (check == null || Double.isNaN(at.limits().aim())) {
      return new FigureNow(
          at,
          errors,
          justRolled,
          null,
          null,
          null,
          ranLow,
          air,
          -1,
          Double.NaN,
          Double.NaN,
          Double.NaN);
    }
    Lookahead lookahead = new Lookahead(forecaster);
    FigureRule figures = new FigureRule(forecaster, lookahead);
    FigureRule.Wanted wanted =
        planned == null
            ? figures.wanted(visit, track, check)
            : figures.wantedBy(at, check, planned.at().figure().pascals());
    ZoneId zone = forecaster.itinerary().visits().get(visit).zone();
    SetFigure cold = wanted.at(check.cooled(), false);
    TireSnapshot arrival = at.arrival();
    boolean warmHere =
        arrival != null
            && !Double.isNaN(arrival.reading())
            && arrival.tireKelvins() > arrival.airKelvins() + WARM;
    SetFigure warm = warmHere && arrival != null ? wanted.at(arrival, true) : null;
    int count = forecaster.itinerary().visits().size();
    int next = visit + 1;
    while (next < count - 1 && !lookahead.firstStart(next)) {
      next++;
    }
    TireSnapshot dawn = next < count - 1 ? track.stops().get(next).check() : null;
    return new FigureNow(
        at,
        errors,
        justRolled,
        cold,
        warm,
        new StayFigures(track.stay(visit), wanted, visit == 0 && at.cold(), zone, cold),
        ranLow,
        air,
        dawn == null ? -1 : next,
        dawn == null ? Double.NaN : dawn.airKelvins(),
        later(check.cooled(), cold, dawn),
        warm == null || arrival == null ? Double.NaN : later(arrival, warm, dawn));
  }

  /** Whether the rig rolled less than three hours ago when the tire is gauged, by noted times. */
  private static boolean justRolled(
      Forecaster forecaster, int visit, @Nullable TireSnapshot check) {
    Instant time =
        check == null
            ? forecaster.itinerary().visits().get(visit).leave()
            : Instant.ofEpochSecond(Math.round(check.seconds()));
    return new ColdRule(forecaster.trip(), forecaster.itinerary()).justRolled(time);
  }

  /** The gauge that the tire was last read with at the stop, else the first of the rig. */
  private static GaugeErrors gaugeOf(Forecaster forecaster, TireAtStop at) {
    if (!at.bare().isEmpty()) {
      return at.bare().get(at.bare().size() - 1).errors();
    }
    List<Gauge> gauges = forecaster.trip().rig().gauges();
    return GaugeErrors.of(gauges.isEmpty() ? null : gauges.get(0));
  }

  /**
   * Whether a reading at the stop tells of a tire that ran low, had it rolled so; also where
   * nothing else is known of it.
   */
  public RanLow ranLow(GaugePressure reading, ReadingState word) {
    return meaning(reading, word)
        .map(Meaning::ranLow)
        .orElseGet(() -> RanLow.of(reading.pascals(), errors.sigma(), at.limits().reference()));
  }

  /** What the gauge shows at a later moment after a figure was set at an earlier one. */
  private static double later(TireSnapshot set, SetFigure figure, @Nullable TireSnapshot later) {
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

  /** How the tire is: warm, whatever the word, where it rolled less than three hours ago. */
  public ReadingState stateOf(ReadingState word) {
    boolean saysCold = word == ReadingState.COLD || word == ReadingState.COLD_IN_SUN;
    return saysCold && justRolled ? ReadingState.WARM : word;
  }

  /**
   * What a reading at the stop means as a cold one.
   *
   * @param word how the tire was, by the crew's own word; just filled tells nothing yet
   * @return empty where the tire's warmth is not known
   */
  public Optional<Meaning> meaning(GaugePressure reading, ReadingState word) {
    ReadingState state = stateOf(word);
    TireSnapshot moment = state == ReadingState.WARM ? at.arrival() : at.check();
    if (moment == null || state == ReadingState.JUST_FILLED) {
      return Optional.empty();
    }
    double shown = reading.pascals();
    double around = moment.airPressure();
    double repeat = errors.repeat();
    double over = 0;
    double overSigma = 0;
    if (state == ReadingState.WARM) {
      if (Double.isNaN(moment.reading())) {
        return Optional.empty();
      }
      over = moment.tireKelvins() - moment.airKelvins();
      overSigma = moment.warmSigma() / moment.fill();
    } else if (state == ReadingState.COLD_IN_SUN) {
      over = Readings.SUN_MIDDLE;
      overSigma = Readings.SUN_SIGMA;
    }
    double kelvins = moment.airKelvins() + over;
    double fill = (shown + around) / kelvins;
    double settled = fill * moment.airKelvins() - around;
    double sigma = Math.hypot(moment.airKelvins() / kelvins * repeat, fill * overSigma);
    double likely = state == ReadingState.COLD_IN_SUN ? Double.NaN : settled;
    double low = settled - Quantile.NINETY_WITHIN * sigma;
    double high = settled + Quantile.NINETY_WITHIN * sigma;
    boolean more = state == ReadingState.WARM && settled > moment.settled();
    boolean warmth =
        more && Readings.isWarmth(shown - moment.reading(), moment.settledSigma(), sigma);
    if (more) { // air does not come by itself: the forecast goes on with what was known
      likely = moment.settled();
      low = likely - Quantile.NINETY_WITHIN * moment.settledSigma();
      high = likely + Quantile.NINETY_WITHIN * moment.settledSigma();
    }
    if (state == ReadingState.COLD_IN_SUN) {
      double air = moment.airKelvins();
      double hottest = (shown + around) / (air + 2 * Readings.SUN_MIDDLE) * air - around;
      low = hottest - Quantile.NINETY_WITHIN * repeat;
      high = shown + Quantile.NINETY_WITHIN * repeat;
    }
    PublishedBuildUp published = state == ReadingState.WARM ? at.published() : null;
    return Optional.of(
        new Meaning(
            low,
            likely,
            high,
            published == null ? Double.NaN : shown - published.pressure().pascals(),
            state == ReadingState.COLD_IN_SUN ? Double.NaN : moment.reading(),
            warmth,
            RanLow.ofReading(state, shown, settled, sigma, errors, at.limits().reference())));
  }
}

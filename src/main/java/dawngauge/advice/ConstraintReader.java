package dawngauge.advice;

import dawngauge.forecast.Forecaster;
import dawngauge.forecast.Setting;
import dawngauge.forecast.TireAtStop;
import dawngauge.forecast.TireSnapshot;
import dawngauge.forecast.Track;
import dawngauge.physics.GasLaw;
import dawngauge.rules.SettingBand;
import dawngauge.trip.Air;
import dawngauge.trip.Itinerary;
import java.util.Arrays;
import java.util.List;

/** Reads off a forecast what each tire must and may hold from stop to stop. */
final class ConstraintReader {

  /** Forgives rounding, in steps of the gauge. */
  private static final double WHOLE = 1e-6;

  /** A difference of fills small enough to be a straight line, as a part. */
  private static final double SMALL = 0.05;

  private final Forecaster forecaster;
  private final Lookahead lookahead;
  private final double mostUnderAim;
  private final double shortStopSeconds;

  /**
   * Ways through the trip of a forecaster.
   *
   * @param thresholds among them how far under its aim a tire may start a day
   */
  ConstraintReader(Forecaster forecaster, Thresholds thresholds) {
    this.forecaster = forecaster;
    this.lookahead = new Lookahead(forecaster);
    this.mostUnderAim = thresholds.planUnderAim();
    this.shortStopSeconds = thresholds.shortStopSeconds();
  }

  /**
   * The way of a tire from a stop on, at which its air must be known.
   *
   * @param track the tire as it is
   * @param first index of the first stop at which something may still be set
   */
  TireConstraints of(Track track, int first) {
    List<TireAtStop> base = track.stops();
    int count = base.size();
    TireSnapshot start = check(base, first);
    double step = start.origin().errors().step();
    TireConstraints.Stop[] stops = new TireConstraints.Stop[count];
    Arrays.fill(stops, TireConstraints.Stop.NOTHING);
    double[] most = new double[count];
    Arrays.fill(most, Double.POSITIVE_INFINITY);
    double[] growth = growth(track, first);
    double[][] example = new double[count + 1][count];
    RequiredFill asked = new RequiredFill(count);
    example[0] = follow(base, first, start.fill(), growth, asked, 0);
    for (int at = first; at < count; at++) {
      TireAtStop tire = base.get(at);
      TireSnapshot check = tire.check();
      if (check == null) {
        continue;
      }
      double ceiling = tire.limits().ceiling();
      if (startsCold(tire) && !Double.isNaN(ceiling)) {
        double letOut =
            SettingBand.letOutAbove(tire.limits(), tire.fitted(), check.origin().errors());
        most[at] = settledFill(check, letOut);
      }
      stops[at] = stop(tire, check, step);
      if (stops[at].acts()) {
        double figure = SetFigure.shown(check, tire.limits().aim());
        List<TireAtStop> set = track.with(at, new Setting(figure)).stops();
        double fill = GasLaw.fill(figure, check.airPressure(), SetFigure.kelvins(check));
        example[1 + at] = follow(set, at, fill, growth, asked, 1 + at);
      }
    }
    return new TireConstraints(
        base.get(first).fitted().position(), first, step, stops, example, growth, asked, most);
  }

  private static TireSnapshot check(List<TireAtStop> stops, int at) {
    TireSnapshot check = stops.get(at).check();
    if (check == null) {
      throw new IllegalArgumentException("nothing known of the tire at stop " + at);
    }
    return check;
  }

  /**
   * How a difference of fills at the first stop grows to each later one. A reading on the way may
   * end it, or be taken another way with more air in the tire; from there on it is kept as it was.
   */
  private static double[] growth(Track track, int first) {
    TireSnapshot check = check(track.stops(), first);
    double much = check.fill() * SMALL;
    List<TireAtStop> more = track.with(first, holding(check, check.fill() + much)).stops();
    List<TireAtStop> same = track.with(first, holding(check, check.fill())).stops();
    double[] growth = new double[more.size()];
    Arrays.fill(growth, 1);
    for (int at = first + 1; at < growth.length; at++) {
      TireSnapshot high = more.get(at).check();
      TireSnapshot low = same.get(at).check();
      double grown = high != null && low != null ? (high.fill() - low.fill()) / much : 0;
      growth[at] = grown > 0 ? grown : growth[at - 1];
    }
    return growth;
  }

  private static Setting holding(TireSnapshot check, double fill) {
    return new Setting(GasLaw.gauge(fill, SetFigure.kelvins(check), check.airPressure()));
  }

  /**
   * Fills of an example at the stops.
   *
   * @param asked takes what each of them must be at the least
   */
  private double[] follow(
      List<TireAtStop> track,
      int from,
      double start,
      double[] growth,
      RequiredFill asked,
      int origin) {
    double[] fills = new double[track.size()];
    double fill = start;
    int known = from;
    for (int at = from; at < track.size(); at++) {
      TireAtStop tire = track.get(at);
      TireSnapshot check = tire.check();
      fill = at > from && check != null ? check.fill() : fill;
      fills[at] = fill;
      if (at == track.size() - 1) {
        continue;
      }
      if (check == null) {
        // Its air here is not known, that of the leg may be: asked of the stop before it.
        for (Lookahead.Judged judged : lookahead.judgedAt(at, tire)) {
          asked.floor(origin, known, fill + lookahead.needed(judged) - judged.moment().fill());
        }
        continue;
      }
      known = at;
      if (firstStart(at) && !Double.isNaN(tire.limits().aim())) {
        double least = tire.limits().aim() * (1 - mostUnderAim);
        asked.aim(at, settledFill(check, least));
      }
      for (Lookahead.Judged judged : lookahead.judgedAt(at, tire)) {
        double part = (judged.moment().seconds() - check.seconds()) / secondsToNext(at, check);
        double growing = Math.pow(growth[at + 1] / growth[at], Math.min(1, Math.max(0, part)));
        double now = judged.moment().fill();
        double kept = fill + (lookahead.needed(judged) - now) / growing;
        asked.floor(origin, at, kept);
      }
    }
    return fills;
  }

  private double secondsToNext(int at, TireSnapshot check) {
    double next = forecaster.itinerary().visits().get(at + 1).leave().toEpochMilli() / 1000.0;
    return Math.max(1, next - check.seconds());
  }

  private boolean firstStart(int at) {
    return forecaster.itinerary().visits().get(at).firstStartOfDay();
  }

  private boolean startsCold(TireAtStop tire) {
    return tire.cold() && firstStart(tire.visit());
  }

  /** What can be done with a tire at a stop. */
  private TireConstraints.Stop stop(TireAtStop tire, TireSnapshot check, double step) {
    int at = tire.visit();
    Itinerary.Visit visit = forecaster.itinerary().visits().get(at);
    boolean last = at == forecaster.itinerary().visits().size() - 1;
    double aim = tire.limits().aim();
    boolean warm = !tire.cold();
    boolean tooShort = visit.stay().toMillis() < shortStopSeconds * 1000 && !firstStart(at);
    if (visit.passes() || last || tooShort || Double.isNaN(aim)) {
      return TireConstraints.Stop.NOTHING;
    }
    Air air = Lookahead.airAt(forecaster, at);
    boolean canAdd = air != null && !(warm && Double.isNaN(check.reading()));
    double ceiling = tire.limits().ceiling();
    SetFigure.Bounds bounds =
        new SetFigure.Bounds(
            Double.NEGATIVE_INFINITY,
            Double.isNaN(ceiling) ? aim : ceiling,
            Double.POSITIVE_INFINITY,
            step);
    double figure = SetFigure.shown(check, SetFigure.highestSettled(check, warm, bounds));
    figure = warm ? figure : Math.min(figure, bounds.ceiling());
    double hose = air == null ? figure : Math.min(figure, Lookahead.reach(air));
    int to = (int) Math.floor(figure / step + WHOLE);
    int addTo = (int) Math.floor(hose / step + WHOLE);
    int nearest = (int) Math.floor(SetFigure.shown(check, aim) / step + 0.5 + WHOLE);
    int aimed = Math.min(nearest, to);
    double low = SettingBand.lowUnder(tire.limits(), check.origin().errors());
    return new TireConstraints.Stop(
        canAdd,
        startsCold(tire),
        Math.min(aimed, addTo),
        addTo,
        aimed,
        to,
        check.airPressure(),
        SetFigure.kelvins(check),
        SetFigure.shown(check, aim),
        firstStart(at) ? settledFill(check, low) : Double.NEGATIVE_INFINITY);
  }

  /** The fill whose settled pressure at a moment is the given one. */
  private static double settledFill(TireSnapshot check, double settled) {
    return GasLaw.fill(settled, check.airPressure(), check.airKelvins());
  }
}

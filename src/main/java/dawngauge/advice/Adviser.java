package dawngauge.advice;

import dawngauge.explain.Phrase;
import dawngauge.forecast.Forecast;
import dawngauge.forecast.Forecaster;
import dawngauge.forecast.Setting;
import dawngauge.forecast.StopForecast;
import dawngauge.forecast.Track;
import dawngauge.trip.LoadChange;
import dawngauge.trip.WheelPosition;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Says what to do about each tire at each stop. Works forward: what it asks to be set at a stop is
 * taken as done from there on.
 */
public final class Adviser {

  private final Forecaster forecaster;
  private final Thresholds thresholds;

  /** Advises on the trip of a forecaster. */
  public Adviser(Forecaster forecaster, Thresholds thresholds) {
    this.forecaster = forecaster;
    this.thresholds = thresholds;
  }

  /** The forecast with what to do. */
  public Advice advise() {
    Judgement judgement = Judgement.of(forecaster, thresholds);
    Forecast forecast = forecaster.forecast(judgement.tracks());
    List<StopAdvice> stops = new ArrayList<>();
    for (StopForecast stop : forecast.stops()) {
      List<TireAdvice> tires = judgement.byStop().get(stop.visit().index());
      if (stop.ahead() != null && !stop.airAheadKnown()) {
        Reason unknown = new Reason(Mark.UNKNOWN, Phrase.of("air on the leg ahead not known"), 0);
        tires = tires.stream().map(tire -> tire.with(unknown)).toList();
      }
      stops.add(new StopAdvice(stop, tires, offers(stop, judgement), LegCautions.of(stop, tires)));
    }
    return new Advice(forecast, stops, judgement.tracks());
  }

  private List<OfferAdvice> offers(StopForecast stop, Judgement judgement) {
    List<OfferAdvice> offers = new ArrayList<>();
    for (LoadChange change : stop.visit().stop().loadChanges()) {
      if (change.offered()) {
        OfferJudge judge = new OfferJudge(forecaster, thresholds, judgement, stop.visit().index());
        offers.add(judge.judge(change));
      }
    }
    return offers;
  }

  /**
   * All tires at all stops, judged forward.
   *
   * @param tracks the tires with every setting that is asked for
   * @param byStop the tires stop by stop, in walking order
   */
  record Judgement(Map<WheelPosition, Track> tracks, List<List<TireAdvice>> byStop) {

    static Judgement of(Forecaster forecaster, Thresholds thresholds) {
      Map<WheelPosition, Track> tracks = new LinkedHashMap<>();
      Map<WheelPosition, TireJudge> judges = new LinkedHashMap<>();
      for (WheelPosition position : forecaster.trip().rig().positions()) {
        forecaster
            .track(position)
            .ifPresent(
                track -> {
                  tracks.put(position, track);
                  judges.put(position, new TireJudge(forecaster, thresholds));
                });
      }
      List<List<TireAdvice>> byStop = new ArrayList<>();
      int count = forecaster.itinerary().visits().size();
      for (int visit = 0; visit < count; visit++) {
        List<TireAdvice> tires = new ArrayList<>();
        for (Map.Entry<WheelPosition, TireJudge> entry : judges.entrySet()) {
          tires.add(judge(visit, entry.getKey(), entry.getValue(), tracks));
        }
        byStop.add(tires);
      }
      return new Judgement(tracks, byStop);
    }

    private static TireAdvice judge(
        int visit, WheelPosition position, TireJudge judge, Map<WheelPosition, Track> tracks) {
      Track track = tracks.get(position);
      if (track == null) {
        throw new IllegalStateException("no track of " + position.words());
      }
      Track mate = tracks.get(new WheelPosition(position.axle(), position.slot().mate()));
      TireAdvice advice =
          judge.judge(visit, track.stops(), mate == null ? List.of() : mate.stops());
      SetFigure set = advice.set();
      if (set == null) {
        return advice;
      }
      Track after = track.with(visit, new Setting(set.figure().pascals()));
      tracks.put(position, after);
      return judge.afterSetting(visit, after.stops(), advice);
    }
  }
}

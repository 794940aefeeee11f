package dawngauge.advice;

import dawngauge.explain.Phrase;
import dawngauge.forecast.Forecast;
import dawngauge.forecast.Forecaster;
import dawngauge.forecast.Setting;
import dawngauge.forecast.StopForecast;
import dawngauge.forecast.TireAtStop;
import dawngauge.trip.LoadChange;
import dawngauge.trip.WheelPosition;
import java.util.ArrayList;
import java.util.HashMap;
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
    return new Advice(forecast, stops);
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
  record Judgement(Map<WheelPosition, List<TireAtStop>> tracks, List<List<TireAdvice>> byStop) {

    static Judgement of(Forecaster forecaster, Thresholds thresholds) {
      Map<WheelPosition, List<TireAtStop>> tracks = new LinkedHashMap<>();
      Map<WheelPosition, Map<Integer, Setting>> settings = new HashMap<>();
      Map<WheelPosition, TireJudge> judges = new LinkedHashMap<>();
      for (WheelPosition position : forecaster.trip().rig().positions()) {
        List<TireAtStop> track = forecaster.follow(position, Map.of());
        tracks.put(position, track);
        if (!track.isEmpty()) {
          judges.put(position, new TireJudge(forecaster, thresholds));
        }
      }
      List<List<TireAdvice>> byStop = new ArrayList<>();
      int count = forecaster.itinerary().visits().size();
      for (int visit = 0; visit < count; visit++) {
        List<TireAdvice> tires = new ArrayList<>();
        for (Map.Entry<WheelPosition, TireJudge> entry : judges.entrySet()) {
          WheelPosition position = entry.getKey();
          List<TireAtStop> track = tracks.getOrDefault(position, List.of());
          WheelPosition beside = new WheelPosition(position.axle(), position.slot().mate());
          List<TireAtStop> mate = tracks.getOrDefault(beside, List.of());
          TireAdvice advice = entry.getValue().judge(visit, track, mate);
          SetFigure set = advice.set();
          if (set != null) {
            Map<Integer, Setting> done = settings.computeIfAbsent(position, key -> new HashMap<>());
            done.put(visit, new Setting(set.figure().pascals()));
            List<TireAtStop> after = forecaster.follow(position, done);
            tracks.put(position, after);
            advice = entry.getValue().afterSetting(visit, after, advice);
          }
          tires.add(advice);
        }
        byStop.add(tires);
      }
      return new Judgement(tracks, byStop);
    }
  }
}

package dawngauge.advice;

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
    Map<WheelPosition, List<TireAtStop>> tracks = new LinkedHashMap<>();
    Map<WheelPosition, Map<Integer, Setting>> settings = new HashMap<>();
    for (WheelPosition position : forecaster.trip().rig().positions()) {
      settings.put(position, new HashMap<>());
      tracks.put(position, forecaster.follow(position, Map.of()));
    }
    Map<WheelPosition, TireJudge> judges = new LinkedHashMap<>();
    tracks.forEach(
        (position, track) -> {
          if (!track.isEmpty()) {
            judges.put(position, new TireJudge(forecaster, thresholds));
          }
        });
    List<List<TireAdvice>> byStop = new ArrayList<>();
    int count = forecaster.itinerary().visits().size();
    for (int visit = 0; visit < count; visit++) {
      List<TireAdvice> tires = new ArrayList<>();
      for (Map.Entry<WheelPosition, TireJudge> entry : judges.entrySet()) {
        WheelPosition position = entry.getKey();
        List<TireAtStop> track = tracks.getOrDefault(position, List.of());
        List<TireAtStop> mate =
            tracks.getOrDefault(
                new WheelPosition(position.axle(), position.slot().mate()), List.of());
        TireAdvice advice = entry.getValue().judge(visit, track, mate);
        SetFigure set = advice.set();
        if (set != null) {
          Map<Integer, Setting> done = settings.getOrDefault(position, new HashMap<>());
          done.put(visit, new Setting(set.figure().pascals()));
          List<TireAtStop> after = forecaster.follow(position, done);
          tracks.put(position, after);
          advice = entry.getValue().afterSetting(visit, after, advice);
        }
        tires.add(advice);
      }
      byStop.add(tires);
    }
    return assemble(forecaster.forecast(tracks), byStop);
  }

  private Advice assemble(Forecast forecast, List<List<TireAdvice>> byStop) {
    List<StopAdvice> stops = new ArrayList<>();
    for (int visit = 0; visit < byStop.size(); visit++) {
      StopForecast stop = forecast.stops().get(visit);
      List<OfferAdvice> offers = new ArrayList<>();
      for (LoadChange change : stop.visit().stop().loadChanges()) {
        if (change.offered()) {
          offers.add(new OfferJudge(forecaster, visit).judge(change));
        }
      }
      stops.add(
          new StopAdvice(stop, byStop.get(visit), offers, LegCautions.of(stop, byStop.get(visit))));
    }
    return new Advice(forecast, stops);
  }
}

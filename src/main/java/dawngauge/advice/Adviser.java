package dawngauge.advice;

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
        tires.add(advise(visit, entry.getKey(), entry.getValue(), tracks));
      }
      byStop.add(tires);
    }
    return assemble(tracks, byStop);
  }

  private static TireAdvice advise(
      int visit, WheelPosition position, TireJudge judge, Map<WheelPosition, Track> tracks) {
    Track track = tracks.get(position);
    if (track == null) {
      throw new IllegalStateException("no track of " + position.words());
    }
    Track mate = tracks.get(new WheelPosition(position.axle(), position.slot().mate()));
    TireAdvice advice = judge.judge(visit, track.stops(), mate == null ? List.of() : mate.stops());
    SetFigure set = advice.set();
    if (set == null) {
      return advice;
    }
    Track after = track.with(visit, new Setting(set.figure().pascals()));
    tracks.put(position, after);
    return judge.afterSetting(visit, after.stops(), advice);
  }

  private Advice assemble(Map<WheelPosition, Track> tracks, List<List<TireAdvice>> byStop) {
    Forecast forecast = forecaster.forecast(tracks);
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
    return new Advice(forecast, stops, tracks);
  }
}

package dawngauge.advice;

import dawngauge.forecast.Forecast;
import dawngauge.forecast.Track;
import dawngauge.trip.WheelPosition;
import java.util.List;
import java.util.Map;

/**
 * A forecast with what to do about it. Each adjustment that is asked for is taken as done, so that
 * one low tire does not mark every later stop.
 *
 * @param forecast the forecast under that policy
 * @param stops what to do, stop by stop
 * @param tracks each tire along the whole way under that policy
 */
public record Advice(Forecast forecast, List<StopAdvice> stops, Map<WheelPosition, Track> tracks) {

  /** Copies list and map. */
  public Advice {
    stops = List.copyOf(stops);
    tracks = Map.copyOf(tracks);
  }

  /** The strongest mark of the trip. */
  public Mark mark() {
    return stops.stream().map(StopAdvice::mark).reduce(Mark.CLEAR, Mark::stronger);
  }
}

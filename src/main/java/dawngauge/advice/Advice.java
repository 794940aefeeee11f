package dawngauge.advice;

import dawngauge.forecast.Forecast;
import java.util.List;

/**
 * A forecast with what to do about it. Each adjustment that is asked for is taken as done, so that
 * one low tire does not mark every later stop.
 *
 * @param forecast the forecast under that policy
 * @param stops what to do, stop by stop
 */
public record Advice(Forecast forecast, List<StopAdvice> stops) {

  /** Copies the list. */
  public Advice {
    stops = List.copyOf(stops);
  }

  /** The strongest mark of the trip. */
  public Mark mark() {
    return stops.stream().map(StopAdvice::mark).reduce(Mark.CLEAR, Mark::stronger);
  }
}

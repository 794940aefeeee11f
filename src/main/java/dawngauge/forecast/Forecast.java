package dawngauge.forecast;

import dawngauge.problem.Problem;
import dawngauge.trip.Trip;
import java.util.List;

/**
 * What each tire reads and carries at each stop whose time is known.
 *
 * @param trip the trip
 * @param options how limits were judged
 * @param stops in order
 * @param problems what is missing or assumed
 */
public record Forecast(
    Trip trip, ForecastOptions options, List<StopForecast> stops, List<Problem> problems) {

  /** Copies the lists. */
  public Forecast {
    stops = List.copyOf(stops);
    problems = List.copyOf(problems);
  }
}

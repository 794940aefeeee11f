package dawngauge.ambient;

import dawngauge.geo.Coordinate;
import dawngauge.problem.Outcome;

/**
 * An open weather service. Calls wait for the answer, never throw, can be interrupted, and may come
 * from several threads.
 */
public interface WeatherService {

  /**
   * A refresh of all places of a trip begins: what a service may take of the user's time counts
   * from here. Without it each question has all that time for itself.
   */
  default void begin() {}

  /** Its name, as its terms want it credited. */
  String name();

  /** Whether a place may lie in its area; only its answer tells for sure. */
  boolean covers(Coordinate place);

  /**
   * Forecast temperatures. Values that cannot be are left out and named among the problems; where
   * nothing is left, or the service could not be asked, there is no value and the problems say why.
   */
  Outcome<WeatherAnswer> forecast(WeatherQuery query);

  /** Temperatures that were measured near the place, by the same rules. */
  Outcome<WeatherAnswer> observed(WeatherQuery query);
}

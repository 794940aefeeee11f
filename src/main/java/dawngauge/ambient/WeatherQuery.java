package dawngauge.ambient;

import dawngauge.geo.Coordinate;
import java.time.Instant;

/**
 * What a weather service is asked: one place and a span of time. Nothing else of the trip leaves.
 *
 * @param place where
 * @param elevationMeters height of the ground there; NaN if not known
 * @param from first instant wanted
 * @param to last instant wanted
 */
public record WeatherQuery(Coordinate place, double elevationMeters, Instant from, Instant to) {

  /** Refuses a span that runs backwards. */
  public WeatherQuery {
    if (to.isBefore(from)) {
      throw new IllegalArgumentException("from " + from + " to " + to + " runs backwards");
    }
  }
}

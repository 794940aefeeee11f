package dawngauge.feed;

import dawngauge.ambient.WeatherAnswer;
import dawngauge.ambient.WeatherQuery;
import dawngauge.ambient.WeatherService;
import dawngauge.geo.Coordinate;
import dawngauge.problem.Outcome;
import dawngauge.problem.Problem;
import dawngauge.problem.ProblemCode;

/** A service of no place. */
final class Nowhere implements WeatherService {

  @Override
  public String name() {
    return "nowhere";
  }

  @Override
  public boolean covers(Coordinate place) {
    return false;
  }

  @Override
  public Outcome<WeatherAnswer> forecast(WeatherQuery query) {
    return Outcome.failed(Problem.of(ProblemCode.FEED_NO_OBSERVATIONS, "", name()));
  }

  @Override
  public Outcome<WeatherAnswer> observed(WeatherQuery query) {
    return forecast(query);
  }
}

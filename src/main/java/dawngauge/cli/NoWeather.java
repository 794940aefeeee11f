package dawngauge.cli;

import dawngauge.ambient.WeatherService;
import dawngauge.planner.WeatherAccess;
import dawngauge.problem.Outcome;
import dawngauge.problem.Problem;
import dawngauge.problem.ProblemCode;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/** No way to any weather service. */
final class NoWeather implements WeatherAccess {

  @Override
  public List<String> told() {
    return List.of();
  }

  @Override
  public Optional<String> contact() {
    return Optional.empty();
  }

  @Override
  public Optional<Problem> agree(String contact) {
    return Optional.of(Problem.of(ProblemCode.NO_CONSENT, ""));
  }

  @Override
  public Instant now() {
    return Instant.EPOCH;
  }

  @Override
  public void withdraw() {}

  @Override
  public Outcome<WeatherService> service() {
    return Outcome.failed(Problem.of(ProblemCode.NO_CONSENT, ""));
  }
}

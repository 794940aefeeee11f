package dawngauge.testdata;

import dawngauge.ambient.WeatherAnswer;
import dawngauge.ambient.WeatherQuery;
import dawngauge.geo.Coordinate;
import dawngauge.problem.Outcome;
import dawngauge.problem.Problem;
import dawngauge.problem.ProblemCode;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;

/** A weather service whose air is a function of the time; it notes what it was asked. */
public final class FakeWeather implements Function<WeatherQuery, Outcome<WeatherAnswer>> {

  private final Instant issued;
  private final ToDoubleFunction<Instant> celsius;
  private double elevation = Double.NaN;
  private Duration horizon = Duration.ofDays(7);
  private Coordinate broken = new Coordinate(0, 0);
  private final List<WeatherQuery> asked = new ArrayList<>();

  /** A service that issued its forecast at a time. */
  public FakeWeather(String issued, ToDoubleFunction<Instant> celsius) {
    this.issued = Instant.parse(issued);
    this.celsius = celsius;
  }

  /** Its cells lie at this height. */
  public FakeWeather atElevation(double meters) {
    elevation = meters;
    return this;
  }

  /** It looks so far ahead. */
  public FakeWeather lookingAhead(Duration span) {
    horizon = span;
    return this;
  }

  /** It has no answer at a place. */
  public FakeWeather brokenAt(Coordinate place) {
    broken = place;
    return this;
  }

  /** What it was asked, in order. */
  public List<WeatherQuery> asked() {
    return asked;
  }

  @Override
  public Outcome<WeatherAnswer> apply(WeatherQuery query) {
    asked.add(query);
    if (query.place().equals(broken)) {
      return Outcome.failed(Problem.of(ProblemCode.NO_AMBIENT, "a broken place"));
    }
    List<WeatherAnswer.At> hours = new ArrayList<>();
    for (Instant time = issued;
        !time.isAfter(issued.plus(horizon));
        time = time.plus(Duration.ofHours(1))) {
      hours.add(new WeatherAnswer.At(time, 273.15 + celsius.applyAsDouble(time)));
    }
    return Outcome.of(new WeatherAnswer("fake service", issued, elevation, hours));
  }
}

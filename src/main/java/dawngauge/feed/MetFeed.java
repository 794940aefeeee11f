package dawngauge.feed;

import com.fasterxml.jackson.databind.JsonNode;
import dawngauge.ambient.WeatherAnswer;
import dawngauge.ambient.WeatherQuery;
import dawngauge.ambient.WeatherService;
import dawngauge.geo.Coordinate;
import dawngauge.problem.Outcome;
import dawngauge.problem.Problem;
import dawngauge.problem.ProblemCode;
import java.time.Duration;
import okhttp3.HttpUrl;

/**
 * Locationforecast 2.0 of MET Norway, the short form ("compact"); anywhere on earth. The height of
 * the ground is passed, so what it answers holds for that height.
 */
final class MetFeed implements WeatherService {

  /** As its licence (CC BY 4.0) wants it named. */
  static final String NAME = "MET Norway";

  /** It looks 9 to 10 days ahead. */
  private static final Duration HORIZON = Duration.ofDays(10);

  /** Heights that it is asked for, in meter: no road lies lower or higher. */
  private static final double LOWEST = -500;

  private static final double HIGHEST = 6000;

  private final ServiceAccess access;
  private final RecentAnswers<Series> recent;

  MetFeed(ServiceAddress address, HttpJson http) {
    access = new ServiceAccess(http, NAME, address, "application/json");
    recent = new RecentAnswers<>(http);
  }

  @Override
  public String name() {
    return NAME;
  }

  @Override
  public boolean covers(Coordinate place) {
    return true;
  }

  @Override
  public Outcome<WeatherAnswer> forecast(WeatherQuery query) {
    return access.at(query, () -> access.dated(ask(query)));
  }

  @Override
  public Outcome<WeatherAnswer> observed(WeatherQuery query) {
    return access.at(
        query, () -> Outcome.failed(Problem.of(ProblemCode.FEED_NO_OBSERVATIONS, "", NAME)));
  }

  private Outcome<WeatherAnswer> ask(WeatherQuery query) throws InterruptedException {
    if (!access.mayForesee(query, HORIZON)) {
      return access.nothing(query);
    }
    double height = query.elevationMeters();
    boolean passed = height >= LOWEST && height <= HIGHEST;
    long altitude = passed ? Math.round(height) : 0;
    HttpUrl.Builder url =
        access
            .address()
            .path("compact")
            .addQueryParameter("lat", ServiceAccess.degrees(query.place().latitude()))
            .addQueryParameter("lon", ServiceAccess.degrees(query.place().longitude()));
    if (passed) {
      url.addQueryParameter("altitude", String.valueOf(altitude));
    }
    HttpUrl asked = url.build();
    return recent
        .get(
            asked.toString(),
            () -> access.get(asked, answer -> read(answer, passed ? altitude : Double.NaN)))
        .then(series -> series.answer(query));
  }

  /** Reads an answer; the height is the one that was passed, or NaN. */
  Outcome<Series> read(JsonNode answer, double passed) {
    JsonNode properties = answer.path("properties");
    JsonNode steps = properties.path("timeseries");
    JsonNode meta = properties.path("meta");
    String unit = meta.path("units").path("air_temperature").asText();
    if (!steps.isArray()) {
      return Outcome.failed(access.notUnderstood("JSON without a time series"));
    }
    Spans spans = new Spans();
    for (JsonNode step : steps) {
      JsonNode details = step.path("data").path("instant").path("details");
      spans.addMoment(step.path("time"), details.path("air_temperature"), unit);
    }
    double height =
        Double.isNaN(passed)
            ? AirJson.number(answer.path("geometry").path("coordinates").path(2)).orElse(Double.NaN)
            : passed;
    return Outcome.of(
        spans.series(NAME, IsoTime.instant(meta.path("updated_at").asText()).orElse(null), height));
  }
}

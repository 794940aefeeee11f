package dawngauge.feed;

import com.fasterxml.jackson.databind.JsonNode;
import dawngauge.ambient.WeatherAnswer;
import dawngauge.ambient.WeatherQuery;
import dawngauge.geo.Coordinate;
import dawngauge.problem.Outcome;
import dawngauge.problem.Problem;
import dawngauge.problem.ProblemCode;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.function.Function;
import okhttp3.HttpUrl;

/**
 * How one service is asked.
 *
 * @param http the way out
 * @param service name of the service
 * @param address where it is
 * @param accept kinds of answer that are understood
 */
record ServiceAccess(HttpJson http, String service, ServiceAddress address, String accept) {

  /** Forecasts begin with the hours just past; longer ago they hold nothing. */
  private static final Duration PAST = Duration.ofDays(1);

  /** How an answer is had. */
  interface Asking {
    Outcome<WeatherAnswer> ask() throws InterruptedException;
  }

  /** Runs a question; its problems get the place. */
  Outcome<WeatherAnswer> at(WeatherQuery query, Asking asking) {
    Outcome<WeatherAnswer> outcome;
    try {
      outcome = asking.ask();
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
      outcome = Outcome.failed(Problem.of(ProblemCode.FEED_CANCELLED, "", service));
    }
    String place = place(query.place());
    return new Outcome<>(
        outcome.valueOrNull(),
        outcome.problems().stream().map(problem -> problem.at(place)).toList());
  }

  /** A forecast older than this is told: the services make new ones several times a day. */
  private static final Duration OLD = Duration.ofHours(36);

  /** An answer with a word on its age, where it is old. */
  Outcome<WeatherAnswer> dated(Outcome<WeatherAnswer> outcome) {
    WeatherAnswer answer = outcome.valueOrNull();
    Duration age = answer == null ? Duration.ZERO : Duration.between(answer.issued(), now());
    if (answer == null || age.compareTo(OLD) <= 0) {
      return outcome;
    }
    return outcome.with(
        List.of(
            Problem.of(
                ProblemCode.FEED_OLD,
                "",
                service,
                UtcText.of(answer.issued()),
                age.toDays() < 3 ? age.toHours() + " h" : age.toDays() + " days")));
  }

  /** Now. */
  Instant now() {
    return http.clock().instant();
  }

  /** How often a question is asked at most. */
  int attempts() {
    return http.limits().attempts();
  }

  /** Whether a forecast that looks so far ahead may hold some of the time asked. */
  boolean mayForesee(WeatherQuery query, Duration horizon) {
    return !query.from().isAfter(now().plus(horizon)) && !query.to().isBefore(now().minus(PAST));
  }

  /** No temperature for any of the time asked. */
  Outcome<WeatherAnswer> nothing(WeatherQuery query) {
    return Outcome.failed(
        Problem.of(
            ProblemCode.FEED_NO_TEMPERATURE,
            "",
            service,
            UtcText.of(query.from()),
            UtcText.of(query.to())));
  }

  /** What the service sent is no answer. */
  Problem notUnderstood(String how) {
    return Problem.of(ProblemCode.FEED_NOT_UNDERSTOOD, "", service, how);
  }

  /** Asks as usual and reads the answer. */
  <T> Outcome<T> get(HttpUrl url, Function<JsonNode, Outcome<T>> reading)
      throws InterruptedException {
    return get(url, attempts(), false, reading);
  }

  /** Asks and reads the answer; notes on the answer are kept. */
  <T> Outcome<T> get(
      HttpUrl url, int attempts, boolean anew, Function<JsonNode, Outcome<T>> reading)
      throws InterruptedException {
    Outcome<JsonNode> answer =
        http.get(new Question(service, address, url, accept, attempts, anew));
    JsonNode tree = answer.valueOrNull();
    Outcome<T> read = tree == null ? Outcome.failed(answer.problems()) : reading.apply(tree);
    http.tell(service, url, read.hasValue() ? null : read.problems().get(0));
    return tree == null ? read : read.with(answer.problems());
  }

  /** Latitude and longitude with a comma between. */
  static String place(Coordinate place) {
    return degrees(place.latitude()) + "," + degrees(place.longitude());
  }

  /** At most four decimals, about 11 m, without zeros behind: the services turn others away. */
  static String degrees(double degrees) {
    BigDecimal rounded = new BigDecimal(degrees).setScale(4, RoundingMode.HALF_EVEN);
    return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
  }
}

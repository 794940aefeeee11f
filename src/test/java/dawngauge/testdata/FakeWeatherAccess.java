package dawngauge.testdata;

import dawngauge.ambient.WeatherAnswer;
import dawngauge.ambient.WeatherQuery;
import dawngauge.ambient.WeatherService;
import dawngauge.geo.Coordinate;
import dawngauge.planner.TileAccess;
import dawngauge.planner.WeatherAccess;
import dawngauge.problem.Outcome;
import dawngauge.problem.Problem;
import dawngauge.problem.ProblemCode;
import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;

/** A weather service of one steady temperature, and the consent to ask it. */
public final class FakeWeatherAccess implements WeatherAccess, WeatherService {

  /** When it says that it made its forecast. */
  public static final Instant ISSUED = Instant.parse("2027-04-06T06:30:00Z");

  private volatile Instant now = Instant.parse("2027-04-06T20:00:00Z");
  private volatile double celsius = 5;
  private volatile int asked;
  private volatile CountDownLatch gate = new CountDownLatch(0);
  private volatile boolean fails;
  private String contact = "";

  /** The map server beside it, without pictures until a test brings some. */
  public volatile FakeTiles tiles = new FakeTiles(new byte[0]);

  @Override
  public TileAccess map() {
    return tiles;
  }

  /** Expects another temperature everywhere. */
  public void expects(double degrees) {
    celsius = degrees;
  }

  /** Answers nothing before the gate is open. */
  public CountDownLatch wait(int opens) {
    gate = new CountDownLatch(opens);
    return gate;
  }

  /** Cannot be reached from now on. */
  public void fail() {
    fails = true;
  }

  /** How often it was asked. */
  public int asked() {
    return asked;
  }

  @Override
  public List<String> told() {
    return List.of("Places are sent to a service of this test.");
  }

  @Override
  public Optional<String> contact() {
    return contact.isEmpty() ? Optional.empty() : Optional.of(contact);
  }

  @Override
  public Optional<Problem> agree(String given) {
    if (!given.contains("@")) {
      return Optional.of(Problem.of(ProblemCode.NOT_A_CONTACT, "", given));
    }
    contact = given;
    return Optional.empty();
  }

  @Override
  public Instant now() {
    return now;
  }

  /** It is another time now. */
  public void time(Instant other) {
    now = other;
  }

  @Override
  public void withdraw() {
    contact = "";
  }

  @Override
  public Outcome<WeatherService> service() {
    return contact.isEmpty()
        ? Outcome.failed(Problem.of(ProblemCode.NO_CONSENT, ""))
        : Outcome.of(this);
  }

  @Override
  public String name() {
    return "Test service";
  }

  @Override
  public boolean covers(Coordinate place) {
    return true;
  }

  @Override
  public synchronized Outcome<WeatherAnswer> forecast(WeatherQuery query) {
    asked++;
    try {
      gate.await();
    } catch (InterruptedException stopped) {
      throw new IllegalStateException(stopped);
    }
    if (fails) {
      return Outcome.failed(Problem.of(ProblemCode.FEED_UNREACHABLE, "", name(), "no connection"));
    }
    List<WeatherAnswer.At> hours = new ArrayList<>();
    Instant last = query.to().plus(Duration.ofHours(2));
    for (Instant at = query.from().truncatedTo(ChronoUnit.HOURS);
        at.isBefore(last);
        at = at.plus(Duration.ofHours(1))) {
      hours.add(new WeatherAnswer.At(at, celsius + 273.15));
    }
    return Outcome.of(new WeatherAnswer(name(), ISSUED, query.elevationMeters(), hours));
  }

  @Override
  public Outcome<WeatherAnswer> observed(WeatherQuery query) {
    return forecast(query);
  }
}

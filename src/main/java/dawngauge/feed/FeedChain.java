package dawngauge.feed;

import dawngauge.ambient.PlausibleAir;
import dawngauge.ambient.WeatherAnswer;
import dawngauge.ambient.WeatherQuery;
import dawngauge.ambient.WeatherService;
import dawngauge.geo.Coordinate;
import dawngauge.problem.Outcome;
import dawngauge.problem.Problem;
import dawngauge.problem.ProblemCode;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Several services as one: the first that covers a place is asked, and where it has nothing for the
 * place or cannot be had, the next.
 */
public final class FeedChain implements WeatherService, AutoCloseable {

  /** Where the first service says this, another would not help. */
  private static final Set<ProblemCode> FINAL =
      EnumSet.of(
          ProblemCode.FEED_NO_TEMPERATURE, ProblemCode.FEED_CANCELLED, ProblemCode.FEED_TIME_OVER);

  private final List<WeatherService> services;
  private final Runnable beginning;
  private final Runnable closing;

  /** Services that are asked in this order; at least one. */
  public FeedChain(List<WeatherService> services) {
    this(services, () -> services.forEach(WeatherService::begin), () -> {});
  }

  private FeedChain(List<WeatherService> services, Runnable beginning, Runnable closing) {
    this.services = List.copyOf(services);
    this.beginning = beginning;
    this.closing = closing;
    if (services.isEmpty()) {
      throw new IllegalArgumentException("a chain has at least one service");
    }
  }

  /**
   * The services over HTTP. Nothing leaves before the first question.
   *
   * @param options which, where and how
   * @param consent somebody's agreement, and the contact that the services see
   * @param program name and version of this program, such as "Dawngauge/0.1.0"
   * @param cacheFolder where answers are kept; made if there is none; nothing is kept if it cannot
   *     be had or another program has it
   * @param clock tells the time
   * @param pause lets time pass
   */
  public static FeedChain open(
      FeedOptions options,
      Consent consent,
      String program,
      Path cacheFolder,
      Clock clock,
      Pause pause) {
    HttpJson http = new HttpJson(consent, program, options.limits(), cacheFolder, clock, pause);
    List<WeatherService> services = new ArrayList<>();
    for (String name : options.order()) {
      ServiceAddress address = options.address(name);
      services.add(
          name.equals(FeedOptions.NWS) ? new NwsFeed(address, http) : new MetFeed(address, http));
    }
    return new FeedChain(services, http::begin, http::close);
  }

  @Override
  public void begin() {
    beginning.run();
  }

  @Override
  public String name() {
    return services.stream().map(WeatherService::name).collect(Collectors.joining(", "));
  }

  @Override
  public boolean covers(Coordinate place) {
    return services.stream().anyMatch(service -> service.covers(place));
  }

  @Override
  public Outcome<WeatherAnswer> forecast(WeatherQuery query) {
    return first(query, service -> service.forecast(query));
  }

  @Override
  public Outcome<WeatherAnswer> observed(WeatherQuery query) {
    return first(query, service -> service.observed(query));
  }

  private interface Asking {
    Outcome<WeatherAnswer> ask(WeatherService service);
  }

  private Outcome<WeatherAnswer> first(WeatherQuery query, Asking asking) {
    List<Problem> before = new ArrayList<>();
    for (WeatherService service : services) {
      if (service.covers(query.place())) {
        Outcome<WeatherAnswer> outcome = plausible(query, asking.ask(service));
        if (outcome.hasValue()) {
          before.removeIf(problem -> problem.code() == ProblemCode.FEED_OUTSIDE_AREA);
          return outcome.with(before);
        }
        before.addAll(outcome.problems());
        if (outcome.problems().stream().map(Problem::code).anyMatch(FINAL::contains)) {
          break;
        }
      }
    }
    return before.isEmpty()
        ? Outcome.failed(
            Problem.of(
                ProblemCode.FEED_OUTSIDE_AREA,
                ServiceAccess.place(query.place()),
                name(),
                "not asked"))
        : Outcome.failed(before);
  }

  /** An answer that can be the air of the place; else why not, and the next service is asked. */
  private static Outcome<WeatherAnswer> plausible(
      WeatherQuery query, Outcome<WeatherAnswer> outcome) {
    return outcome
        .value()
        .flatMap(answer -> PlausibleAir.doubt(query, answer))
        .map(doubt -> doubt.at(ServiceAccess.place(query.place())))
        .<Outcome<WeatherAnswer>>map(Outcome::failed)
        .orElse(outcome);
  }

  /** Stops what is under way and lets go of the folder. */
  @Override
  public void close() {
    closing.run();
  }
}

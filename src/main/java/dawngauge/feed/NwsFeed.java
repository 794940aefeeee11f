package dawngauge.feed;

import dawngauge.ambient.WeatherAnswer;
import dawngauge.ambient.WeatherQuery;
import dawngauge.ambient.WeatherService;
import dawngauge.geo.Coordinate;
import dawngauge.problem.Outcome;
import dawngauge.problem.Problem;
import dawngauge.problem.ProblemCode;
import java.time.Duration;
import java.util.List;

/**
 * The U.S. National Weather Service: from the place to the cell of its grid, and from there to the
 * detailed forecast, else to the hourly one, or to the stations nearby.
 */
final class NwsFeed implements WeatherService {

  /** Its name. */
  static final String NAME = "U.S. National Weather Service";

  /** The detailed forecast looks 7 to 8 days ahead. */
  private static final Duration HORIZON = Duration.ofDays(8);

  private final ServiceAccess access;
  private final RecentAnswers<NwsCell> cells;
  private final RecentAnswers<Series> forecasts;
  private final NwsStations stations;

  NwsFeed(ServiceAddress address, HttpJson http) {
    access = new ServiceAccess(http, NAME, address, "application/geo+json");
    cells = new RecentAnswers<>(http);
    forecasts = new RecentAnswers<>(http);
    stations = new NwsStations(access);
  }

  @Override
  public String name() {
    return NAME;
  }

  @Override
  public boolean covers(Coordinate place) {
    return NwsArea.mayHold(place);
  }

  @Override
  public Outcome<WeatherAnswer> forecast(WeatherQuery query) {
    return access.at(query, () -> access.dated(foreseen(query)));
  }

  @Override
  public Outcome<WeatherAnswer> observed(WeatherQuery query) {
    return access.at(query, () -> measured(query));
  }

  private Outcome<WeatherAnswer> foreseen(WeatherQuery query) throws InterruptedException {
    if (!access.mayForesee(query, HORIZON)) {
      return access.nothing(query);
    }
    Outcome<NwsCell> cell = cell(query.place(), false);
    Outcome<Series> series = forecast(cell);
    if (cell.hasValue() && isUnknown(series)) {
      series = forecast(cell(query.place(), true)); // the grid was drawn anew
    }
    return series.then(found -> found.answer(query));
  }

  private Outcome<WeatherAnswer> measured(WeatherQuery query) throws InterruptedException {
    if (query.from().isAfter(access.now())) {
      return access.nothing(query);
    }
    Outcome<NwsCell> outcome = cell(query.place(), false);
    NwsCell cell = outcome.valueOrNull();
    return cell == null
        ? Outcome.failed(outcome.problems())
        : stations.measured(cell, query).with(outcome.problems());
  }

  private Outcome<NwsCell> cell(Coordinate place, boolean anew) throws InterruptedException {
    String shown = ServiceAccess.place(place);
    RecentAnswers.Ask<NwsCell> ask =
        () ->
            access.get(
                access.address().path("points/" + shown).build(),
                access.attempts(),
                anew,
                answer -> NwsCell.read(answer, access));
    return anew ? cells.anew(shown, ask) : cells.get(shown, ask);
  }

  private Outcome<Series> forecast(Outcome<NwsCell> outcome) throws InterruptedException {
    NwsCell cell = outcome.valueOrNull();
    return cell == null
        ? Outcome.failed(outcome.problems())
        : forecasts
            .get(cell.grid().toString(), () -> detailedOrHourly(cell))
            .with(outcome.problems());
  }

  /** The detailed forecast has a second behind it, so it is asked once less. */
  private Outcome<Series> detailedOrHourly(NwsCell cell) throws InterruptedException {
    Outcome<Series> detailed =
        access.get(
            cell.grid(),
            Math.max(1, access.attempts() - 1),
            false,
            answer -> NwsForecast.detailed(answer, access));
    Series found = detailed.valueOrNull();
    boolean any = found != null && !found.isEmpty();
    if (any || isUnknown(detailed)) {
      return detailed;
    }
    Outcome<Series> hourly =
        access.get(cell.hourly(), answer -> NwsForecast.hourly(answer, access));
    Series coarser = hourly.valueOrNull();
    if (coarser != null && coarser.isEmpty() && found != null) {
      return Outcome.failed(access.notUnderstood("two answers without a single temperature"));
    }
    return coarser != null && !coarser.isEmpty()
        ? hourly.with(List.of(Problem.of(ProblemCode.FEED_COARSER, "", NAME)))
        : detailed;
  }

  private static boolean isUnknown(Outcome<?> outcome) {
    return !outcome.hasValue()
        && outcome.problems().stream()
            .anyMatch(problem -> problem.code() == ProblemCode.FEED_OUTSIDE_AREA);
  }
}

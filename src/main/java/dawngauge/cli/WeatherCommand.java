package dawngauge.cli;

import dawngauge.ambient.MeasuredAir;
import dawngauge.ambient.WeatherFill;
import dawngauge.ambient.WeatherService;
import dawngauge.ledger.WeatherSummary;
import dawngauge.planner.Planner;
import dawngauge.planner.WeatherAccess;
import dawngauge.problem.Outcome;
import dawngauge.problem.Problem;
import dawngauge.quantity.UnitSystem;
import dawngauge.trip.Trip;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Fills a trip with the air that weather services expect along it. */
@Command(
    name = "weather",
    description =
        "Fill a trip with the air that open weather services expect along it, and with typical air"
            + " where they do not reach; what is typed stays.")
final class WeatherCommand extends TripCommand {

  private final WeatherAccess weather;

  @Option(
      names = "--out",
      paramLabel = "FILE",
      description = "Write the filled trip there; - is standard output.")
  private String out = "";

  @Option(names = "--force", description = "Let --out replace a file that exists.")
  private boolean force;

  @Option(
      names = "--agree",
      paramLabel = "CONTACT",
      description = "Agree, from now on, to what is sent where; an e-mail or web address of yours.")
  private @Nullable String agree;

  @Option(names = "--typical", description = "Ask nobody; typical air for the dates alone.")
  private boolean typical;

  @Option(
      names = "--measured",
      description =
          "Write nothing; print what stations measured at the stops left, about a week back.")
  private boolean measured;

  WeatherCommand(Planner planner, Console console, WeatherAccess weather) {
    super(planner, console);
    this.weather = weather;
  }

  @Override
  Outcome<Trip> opened() {
    return whole();
  }

  @Override
  int run(Trip opened, UnitSystem units) {
    if (out.isEmpty() && !measured) {
      return misused("Missing required option: '--out=FILE'");
    }
    if (agree != null) {
      Optional<Problem> wrong = weather.agree(agree);
      if (wrong.isPresent()) {
        return misused(wrong.get().text());
      }
    }
    if (measured) {
      return measured(opened, units);
    }
    Optional<WeatherFill.Result> result = filled(opened);
    if (result.isEmpty()) {
      return ExitCode.USAGE;
    }
    Trip trip = result.get().trip();
    int written = write(planner.store().text(trip), out, force);
    if (written == ExitCode.DONE) {
      tell(WeatherSummary.of(result.get(), planner.temperatures().changes(trip), 0, units));
      return result.get().isOutage() ? ExitCode.UNAVAILABLE : ExitCode.DONE;
    }
    return written;
  }

  private int measured(Trip trip, UnitSystem units) {
    Optional<WeatherService> service = service();
    if (service.isEmpty()) {
      return ExitCode.USAGE;
    }
    List<MeasuredAir> air =
        planner.temperatures().measured(trip, service.get(), weather.now(), this::asking);
    WeatherSummary summary = WeatherSummary.of(air, units);
    summary.lines().forEach(console.out()::println);
    summary.problems().forEach(console.err()::println);
    boolean none = !air.isEmpty() && air.stream().allMatch(one -> one.source().isEmpty());
    return none ? ExitCode.UNAVAILABLE : ExitCode.DONE;
  }

  private boolean asking(int done, int all, String place) {
    console.err().println(place + ": asking, " + done + " of " + all + " places known");
    return true;
  }

  private Optional<WeatherService> service() {
    Outcome<WeatherService> service = weather.service();
    if (!service.hasValue()) {
      weather.told().forEach(console.err()::println);
      service.problems().forEach(problem -> console.err().println(problem.text()));
      console.err().println("To agree: --agree you@example.org; without: --typical");
    }
    return service.value();
  }

  private Optional<WeatherFill.Result> filled(Trip trip) {
    if (typical) {
      return Optional.of(planner.temperatures().typical(trip));
    }
    return service().map(service -> planner.temperatures().ask(trip, service, this::asking));
  }

  /** The trip may go to standard output: words then do not. */
  private void tell(WeatherSummary summary) {
    var words = out.equals(TripArgument.STANDARD) ? console.err() : console.out();
    summary.lines().forEach(words::println);
    List<String> problems = summary.problems();
    problems.forEach(console.err()::println);
  }
}

package dawngauge.cli;

import dawngauge.ambient.MeasuredAir;
import dawngauge.ambient.WeatherService;
import dawngauge.ledger.ReviewPage;
import dawngauge.page.Page;
import dawngauge.planner.Plan;
import dawngauge.planner.Planner;
import dawngauge.planner.WeatherDesk;
import dawngauge.problem.Outcome;
import dawngauge.quantity.UnitSystem;
import dawngauge.report.CrewSheet;
import dawngauge.report.JsonReview;
import dawngauge.report.PagePdf;
import dawngauge.report.PageText;
import dawngauge.review.TripReview;
import dawngauge.trip.Stop;
import dawngauge.trip.Trip;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Prints why the tires of a trip read as they did. */
@Command(
    name = "review",
    description = "Print why the tires read as they did, and what to do before the next haul.")
final class ReviewCommand implements Callable<Integer> {

  private final Planner planner;
  private final Console console;
  private final WeatherDesk weather;

  @Parameters(index = "0", paramLabel = "FILE", description = "Trip file; - is standard input.")
  private String file = "";

  @Mixin private final FormOption form = new FormOption();

  @Mixin private final UnitsOption unitsOption = new UnitsOption();

  @Option(
      names = "--out",
      paramLabel = "FILE",
      description = "Write there instead of to standard output; - is standard output.")
  private String out = TripArgument.STANDARD;

  @Option(names = "--force", description = "Let --out replace a file that exists.")
  private boolean force;

  @Option(
      names = "--measured",
      description =
          "Ask the weather services, once agreed to, what was measured at the stops left.")
  private boolean measured;

  @Option(names = "--why", description = "With what each finding rests on; the text alone.")
  private boolean why;

  @Option(names = "--pdf", description = "As PDF; needs --out.")
  private boolean pdf;

  @Option(
      names = "--paper",
      paramLabel = "letter|a4",
      description = "Paper of the PDF; letter unless given.")
  private CrewSheet.Paper paper = CrewSheet.Paper.LETTER;

  ReviewCommand(Planner planner, Console console, WeatherDesk weather) {
    this.planner = planner;
    this.console = console;
    this.weather = weather;
  }

  @Override
  public Integer call() {
    if (form.json() && pdf) {
      console.err().println("--pdf writes a PDF; leave it or --format json away");
      return ExitCode.USAGE;
    }
    Outcome<Trip> opened = TripArgument.toShow(planner, console, file);
    if (!opened.hasValue()) {
      return TripArgument.refuse(console, file, opened.problems());
    }
    if (pdf && out.equals(TripArgument.STANDARD)) {
      console.err().println("a PDF is not written to standard output; name a file with --out");
      return ExitCode.USAGE;
    }
    Trip trip = opened.get();
    UnitSystem units = unitsOption.of(planner, trip);
    Plan plan = planner.plan(trip);
    Optional<TripReview> review = plan.review();
    if (review.isEmpty()) {
      console.err().println("nothing can be reviewed, since too little is known:");
      plan.gaps().forEach(gap -> console.err().println("  " + gap));
      return ExitCode.CONTENT;
    }
    List<MeasuredAir> air = List.of();
    if (measured) {
      Outcome<WeatherService> service = weather.service();
      if (!service.hasValue()) {
        weather.told().forEach(console.err()::println);
        service.problems().forEach(problem -> console.err().println(problem.text()));
        console
            .err()
            .println("To agree: dawngauge weather FILE --measured --agree you@example.org");
        return ExitCode.USAGE;
      }
      air =
          planner
              .temperatures()
              .measured(trip, service.get(), weather.now(), (done, all, place) -> true);
    }
    Output output = new Output(planner, console);
    if (form.json()) {
      return output.write(JsonReview.of(trip, review.get(), air, units), out, file, force);
    }
    Page page = ReviewPage.of(trip, review.get(), air, plan.asSound().orElse(null), units);
    if (!pdf) {
      return output.write(PageText.of(page, why), out, file, force);
    }
    List<String> places = trip.route().stops().stream().map(Stop::place).toList();
    return output.write(PagePdf.of(page, "Review", trip.name(), places, paper), out, file, force);
  }
}

package dawngauge.cli;

import dawngauge.ambient.MeasuredAir;
import dawngauge.ambient.WeatherService;
import dawngauge.ledger.ReviewPage;
import dawngauge.page.Page;
import dawngauge.planner.Plan;
import dawngauge.planner.Planner;
import dawngauge.planner.WeatherAccess;
import dawngauge.problem.Outcome;
import dawngauge.quantity.UnitSystem;
import dawngauge.report.JsonReview;
import dawngauge.report.PagePdf;
import dawngauge.report.PageText;
import dawngauge.review.TripReview;
import dawngauge.trip.Stop;
import dawngauge.trip.Trip;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Prints why the tires of a trip read as they did. */
@Command(
    name = "review",
    description = "Print why the tires read as they did, and what to do before the next haul.")
final class ReviewCommand extends TripCommand {

  private final WeatherAccess weather;

  @Mixin private final FormOption form = new FormOption();

  @Mixin private final OutOption out = new OutOption();

  @Option(
      names = "--measured",
      description =
          "Ask the weather services, once agreed to, what was measured at the stops left.")
  private boolean measured;

  @Option(names = "--why", description = "With what each finding rests on; the text alone.")
  private boolean why;

  @Mixin private final PdfOption pdf = new PdfOption();

  ReviewCommand(Planner planner, Console console, WeatherAccess weather) {
    super(planner, console);
    this.weather = weather;
  }

  @Override
  Optional<String> clash() {
    return form.json() && pdf.pdf()
        ? Optional.of("--pdf writes a PDF; leave it or --format json away")
        : Optional.empty();
  }

  @Override
  int run(Trip trip, UnitSystem units) {
    if (pdf.lacksFile(out)) {
      return misused(PdfOption.NEEDS_FILE);
    }
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
        return misused("To agree: dawngauge weather FILE --measured --agree you@example.org");
      }
      air =
          planner
              .temperatures()
              .measured(trip, service.get(), weather.now(), (done, all, place) -> true);
    }
    if (form.json()) {
      return write(JsonReview.of(trip, review.get(), air, units), out);
    }
    Page page = ReviewPage.of(trip, review.get(), air, plan.asSound().orElse(null), units);
    if (!pdf.pdf()) {
      return write(PageText.of(page, why), out);
    }
    List<String> places = trip.route().stops().stream().map(Stop::place).toList();
    return write(PagePdf.of(page, "Review", trip.name(), places, pdf.paper()), out);
  }
}

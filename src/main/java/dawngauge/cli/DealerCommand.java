package dawngauge.cli;

import dawngauge.ledger.DealerPage;
import dawngauge.page.Page;
import dawngauge.planner.Planner;
import dawngauge.problem.Outcome;
import dawngauge.quantity.UnitSystem;
import dawngauge.report.PagePdf;
import dawngauge.report.PageText;
import dawngauge.trip.Trip;
import dawngauge.trip.WheelPosition;
import dawngauge.weights.TireNeed;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Prints what the tires are and have to carry, for the talk with a tire dealer. */
@Command(
    name = "dealer",
    description = "Print what the tires are and have to carry, for the talk with a tire dealer.")
final class DealerCommand extends TripCommand {

  @Option(
      names = "--tire",
      paramLabel = "POSITION",
      description = "Only the tires of this one's axle; its words or short form (t2l).")
  private @Nullable String tire;

  @Mixin private final OutOption out = new OutOption();

  @Mixin private final PdfOption pdf = new PdfOption();

  DealerCommand(Planner planner, Console console) {
    super(planner, console);
  }

  @Override
  Optional<String> clash() {
    return pdf.lacksFile(out) ? Optional.of(PdfOption.NEEDS_FILE) : Optional.empty();
  }

  @Override
  Outcome<Trip> opened() {
    return whole();
  }

  @Override
  int run(Trip trip, UnitSystem units) {
    List<TireNeed> needs = planner.plan(trip).tireNeeds();
    if (tire != null) {
      Outcome<WheelPosition> position = TypedNames.position(trip, tire);
      if (isMistyped(position)) {
        return ExitCode.USAGE;
      }
      needs = needs.stream().filter(need -> need.axle().equals(position.get().axle())).toList();
    }
    Page page = DealerPage.of(trip, needs, units);
    return pdf.pdf()
        ? write(PagePdf.of(page, "For the tire dealer", trip.name(), List.of(), pdf.paper()), out)
        : write(PageText.of(page, false), out);
  }
}

package dawngauge.cli;

import dawngauge.ledger.DealerPage;
import dawngauge.page.Page;
import dawngauge.planner.Planner;
import dawngauge.problem.Outcome;
import dawngauge.report.CrewSheet;
import dawngauge.report.PagePdf;
import dawngauge.report.PageText;
import dawngauge.trip.Trip;
import dawngauge.trip.WheelPosition;
import dawngauge.weights.TireNeed;
import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Prints what the tires are and have to carry, for the talk with a tire dealer. */
@Command(
    name = "dealer",
    description = "Print what the tires are and have to carry, for the talk with a tire dealer.")
final class DealerCommand implements Callable<Integer> {

  private final Planner planner;
  private final Console console;

  @Parameters(index = "0", paramLabel = "FILE", description = "Trip file; - is standard input.")
  private String file = "";

  @Option(
      names = "--tire",
      paramLabel = "POSITION",
      description = "Only the tires of this one's axle; its words or short form (t2l).")
  private @Nullable String tire;

  @Mixin private final UnitsOption unitsOption = new UnitsOption();

  @Option(
      names = "--out",
      paramLabel = "FILE",
      description = "Write there instead of to standard output; - is standard output.")
  private String out = TripArgument.STANDARD;

  @Option(names = "--force", description = "Let --out replace a file that exists.")
  private boolean force;

  @Option(names = "--pdf", description = "As PDF; needs --out.")
  private boolean pdf;

  @Option(
      names = "--paper",
      paramLabel = "letter|a4",
      description = "Paper of the PDF; letter unless given.")
  private CrewSheet.Paper paper = CrewSheet.Paper.LETTER;

  DealerCommand(Planner planner, Console console) {
    this.planner = planner;
    this.console = console;
  }

  @Override
  public Integer call() {
    if (pdf && out.equals(TripArgument.STANDARD)) {
      console.err().println("a PDF is not written to standard output; name a file with --out");
      return ExitCode.USAGE;
    }
    Outcome<Trip> opened = TripArgument.open(planner, console, file);
    if (!opened.hasValue()) {
      return TripArgument.refuse(console, file, opened.problems());
    }
    Trip trip = opened.get();
    List<TireNeed> needs = planner.plan(trip).tireNeeds();
    if (tire != null) {
      Outcome<WheelPosition> position = Names.position(trip, tire);
      if (!position.hasValue()) {
        position.problems().forEach(problem -> console.err().println(problem.text()));
        return ExitCode.USAGE;
      }
      needs = needs.stream().filter(need -> need.axle().equals(position.get().axle())).toList();
    }
    Page page = DealerPage.of(trip, needs, unitsOption.of(planner, trip));
    Output output = new Output(planner, console);
    return pdf
        ? output.write(
            PagePdf.of(page, "For the tire dealer", trip.name(), List.of(), paper),
            out,
            file,
            force)
        : output.write(PageText.of(page, false), out, file, force);
  }
}

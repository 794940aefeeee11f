package dawngauge.cli;

import dawngauge.advice.Advice;
import dawngauge.ledger.BreakdownPage;
import dawngauge.ledger.Ledger;
import dawngauge.ledger.PlanLines;
import dawngauge.ledger.ReachPage;
import dawngauge.planner.Plan;
import dawngauge.planner.Planner;
import dawngauge.problem.Outcome;
import dawngauge.quantity.UnitSystem;
import dawngauge.report.CrewSheet;
import dawngauge.trip.Trip;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Writes the crew's sheet of paper. */
@Command(
    name = "sheet",
    description = "Write the crew's sheet for the cab as PDF: a front page, then one page a day.")
final class SheetCommand implements Callable<Integer> {

  private final Planner planner;
  private final Console console;

  @Parameters(index = "0", paramLabel = "FILE", description = "Trip file; - is standard input.")
  private String file = "";

  @Option(
      names = "--out",
      paramLabel = "FILE",
      required = true,
      description = "Write the PDF there.")
  private String out = "";

  @Option(names = "--force", description = "Let --out replace a file that exists.")
  private boolean force;

  @Option(names = "--paper", paramLabel = "letter|a4", description = "letter unless given.")
  private CrewSheet.Paper paper = CrewSheet.Paper.LETTER;

  @Option(names = "--large", description = "Larger type.")
  private boolean large;

  @Mixin private final UnitsOption unitsOption = new UnitsOption();

  SheetCommand(Planner planner, Console console) {
    this.planner = planner;
    this.console = console;
  }

  @Override
  public Integer call() {
    Outcome<Trip> opened = TripArgument.toShow(planner, console, file);
    if (!opened.hasValue()) {
      return TripArgument.refuse(console, file, opened.problems());
    }
    if (out.equals(TripArgument.STANDARD)) {
      console.err().println("a PDF is not written to standard output; name a file with --out");
      return ExitCode.USAGE;
    }
    Trip trip = opened.get();
    UnitSystem units = unitsOption.of(planner, trip);
    Plan planned = planner.plan(trip);
    Advice advice = planned.advice();
    Ledger ledger = Ledger.of(trip, advice, planned.problems(), planned.fitness(), units, null);
    PlanLines plan =
        trip.plan().followed()
            ? planner
                .plan(trip)
                .adjustment()
                .value()
                .map(adjustment -> PlanLines.of(trip, adjustment, units))
                .orElse(null)
            : null;
    CrewSheet.More more =
        new CrewSheet.More(
            ReachPage.starts(trip, advice, planned::reach, units),
            BreakdownPage.forAll(trip, planned.breakdowns(), planned.tireNeeds(), units));
    byte[] sheet = CrewSheet.of(ledger, advice, plan, more, new CrewSheet.Options(paper, large));
    return new Output(planner, console).write(sheet, out, file, force);
  }
}

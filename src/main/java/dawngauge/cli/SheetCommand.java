package dawngauge.cli;

import dawngauge.advice.Advice;
import dawngauge.ledger.BreakdownPage;
import dawngauge.ledger.Ledger;
import dawngauge.ledger.PlanLines;
import dawngauge.ledger.ReachPage;
import dawngauge.planner.Plan;
import dawngauge.planner.Planner;
import dawngauge.quantity.UnitSystem;
import dawngauge.report.CrewSheet;
import dawngauge.trip.Trip;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Writes the crew's sheet of paper. */
@Command(
    name = "sheet",
    description = "Write the crew's sheet for the cab as PDF: a front page, then one page a day.")
final class SheetCommand extends TripCommand {

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

  SheetCommand(Planner planner, Console console) {
    super(planner, console);
  }

  @Override
  int run(Trip trip, UnitSystem units) {
    if (out.equals(TripArgument.STANDARD)) {
      return misused(PdfOption.NEEDS_FILE);
    }
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
    return write(sheet, out, force);
  }
}

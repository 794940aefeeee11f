package dawngauge.cli;

import dawngauge.advice.Breakdown;
import dawngauge.ledger.BreakdownPage;
import dawngauge.page.Page;
import dawngauge.planner.Plan;
import dawngauge.planner.Planner;
import dawngauge.problem.Outcome;
import dawngauge.problem.Problem;
import dawngauge.problem.ProblemCode;
import dawngauge.report.PageText;
import dawngauge.trip.Trip;
import dawngauge.trip.WheelPosition;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Prints what to do where a tire is flat. */
@Command(
    name = "breakdown",
    description =
        "Print what to do where a tire is flat: what carries for it, which spare fits and to what it"
            + " is set, and what to ask a road service for.")
final class BreakdownCommand implements Callable<Integer> {

  private final Planner planner;
  private final Console console;

  @Parameters(index = "0", paramLabel = "FILE", description = "Trip file; - is standard input.")
  private String file = "";

  @Option(
      names = "--tire",
      required = true,
      paramLabel = "POSITION",
      description = "The tire: its words (\"trailer axle 2 left\") or short form (t2l).")
  private String tire = "";

  @Option(
      names = "--stop",
      required = true,
      paramLabel = "N|NAME",
      description =
          "Number of the stop where it is, or that was left last (1 is the start), or an unambiguous"
              + " part of its name.")
  private String stop = "";

  @Mixin private final UnitsOption unitsOption = new UnitsOption();

  BreakdownCommand(Planner planner, Console console) {
    this.planner = planner;
    this.console = console;
  }

  @Override
  public Integer call() {
    Outcome<Trip> opened = TripArgument.toShow(planner, console, file);
    if (!opened.hasValue()) {
      return TripArgument.refuse(console, file, opened.problems());
    }
    Trip trip = opened.get();
    Outcome<WheelPosition> position = Names.position(trip, tire);
    Outcome<Integer> index = Names.stop(trip, stop);
    List<Problem> wrong = new ArrayList<>(position.problems());
    wrong.addAll(index.problems());
    if (!wrong.isEmpty()) {
      wrong.forEach(problem -> console.err().println(problem.text()));
      return ExitCode.USAGE;
    }
    Plan plan = planner.plan(trip);
    Optional<Breakdown> breakdown = plan.breakdown(index.get(), position.get());
    if (breakdown.isEmpty()) {
      String words = position.get().words();
      console.err().println(Problem.of(ProblemCode.NO_TIRE_FITTED, words).message());
      return ExitCode.CONTENT;
    }
    Page page =
        BreakdownPage.of(trip, breakdown.get(), plan.tireNeeds(), unitsOption.of(planner, trip));
    return new Output(planner, console)
        .write(PageText.of(page, false), TripArgument.STANDARD, file, false);
  }
}

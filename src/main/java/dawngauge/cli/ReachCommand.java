package dawngauge.cli;

import dawngauge.advice.Advice;
import dawngauge.advice.Reach;
import dawngauge.ledger.ReachPage;
import dawngauge.planner.Plan;
import dawngauge.planner.Planner;
import dawngauge.problem.Outcome;
import dawngauge.problem.Problem;
import dawngauge.problem.ProblemCode;
import dawngauge.quantity.UnitSystem;
import dawngauge.report.JsonReach;
import dawngauge.report.PageText;
import dawngauge.trip.Trip;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Prints how far the air in the tires reaches from a stop. */
@Command(
    name = "reach",
    description =
        "Print how far the air in the tires reaches from a stop, and the least that each must leave"
            + " with for the next hose and for the end.")
final class ReachCommand implements Callable<Integer> {

  private final Planner planner;
  private final Console console;

  @Parameters(index = "0", paramLabel = "FILE", description = "Trip file; - is standard input.")
  private String file = "";

  @Option(
      names = "--stop",
      required = true,
      paramLabel = "N|NAME",
      description = "Number of the stop (1 is the start) or an unambiguous part of its name.")
  private String stop = "";

  @Mixin private final FormOption form = new FormOption();

  @Mixin private final UnitsOption unitsOption = new UnitsOption();

  ReachCommand(Planner planner, Console console) {
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
    Outcome<Integer> index = Names.stop(trip, stop);
    if (!index.hasValue()) {
      index.problems().forEach(problem -> console.err().println(problem.text()));
      return ExitCode.USAGE;
    }
    Plan plan = planner.plan(trip);
    Optional<Reach> reach = plan.reach(index.get());
    Advice advice = plan.advice();
    if (reach.isEmpty() || advice == null) {
      String place = trip.route().stops().get(index.get()).place();
      console.err().println(Problem.of(ProblemCode.NOTHING_AHEAD, "", place).text());
      return ExitCode.CONTENT;
    }
    UnitSystem units = unitsOption.of(planner, trip);
    String text =
        form.json()
            ? JsonReach.of(trip, reach.get(), TripArgument.problems(opened, plan.problems()), units)
            : PageText.of(ReachPage.of(trip, advice, reach.get(), units), false);
    return new Output(planner, console).write(text, TripArgument.STANDARD, file, false);
  }
}

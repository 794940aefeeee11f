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
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** Prints how far the air in the tires reaches from a stop. */
@Command(
    name = "reach",
    description =
        "Print how far the air in the tires reaches from a stop, and the least that each must leave"
            + " with for the next hose and for the end.")
final class ReachCommand extends TripCommand {

  @Mixin private final StopOption stop = new StopOption();

  @Mixin private final FormOption form = new FormOption();

  ReachCommand(Planner planner, Console console) {
    super(planner, console);
  }

  @Override
  int run(Trip trip, UnitSystem units) {
    Outcome<Integer> index = stop.in(trip);
    if (isMistyped(index)) {
      return ExitCode.USAGE;
    }
    Plan plan = planner.plan(trip);
    Optional<Reach> reach = plan.reach(index.get());
    Advice advice = plan.advice();
    if (reach.isEmpty() || advice == null) {
      String place = trip.route().stops().get(index.get()).place();
      return unknown(Problem.of(ProblemCode.NOTHING_AHEAD, "", place).text());
    }
    String text =
        form.json()
            ? JsonReach.of(trip, reach.get(), problems(plan.problems()), units)
            : PageText.of(ReachPage.of(trip, advice, reach.get(), units), false);
    return print(text);
  }
}

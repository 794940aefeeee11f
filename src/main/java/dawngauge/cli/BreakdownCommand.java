package dawngauge.cli;

import dawngauge.advice.Breakdown;
import dawngauge.ledger.BreakdownPage;
import dawngauge.planner.Plan;
import dawngauge.planner.Planner;
import dawngauge.problem.Outcome;
import dawngauge.problem.Problem;
import dawngauge.problem.ProblemCode;
import dawngauge.quantity.UnitSystem;
import dawngauge.report.JsonBreakdown;
import dawngauge.report.PageText;
import dawngauge.trip.Trip;
import dawngauge.trip.WheelPosition;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Prints what to do where a tire is flat. */
@Command(
    name = "breakdown",
    description =
        "Print what to do where a tire is flat: what carries for it, which spare fits and to what it"
            + " is set, and what to ask a road service for.")
final class BreakdownCommand extends TripCommand {

  @Mixin private final TireOption tire = new TireOption();

  @Option(
      names = "--stop",
      required = true,
      paramLabel = "N|NAME",
      description =
          "Number of the stop where it is, or that was left last (1 is the start), or an unambiguous"
              + " part of its name.")
  private String stop = "";

  @Mixin private final FormOption form = new FormOption();

  BreakdownCommand(Planner planner, Console console) {
    super(planner, console);
  }

  @Override
  int run(Trip trip, UnitSystem units) {
    Outcome<WheelPosition> position = tire.in(trip);
    Outcome<Integer> index = TypedNames.stop(trip, stop);
    if (isMistyped(position, index)) {
      return ExitCode.USAGE;
    }
    Plan plan = planner.plan(trip);
    Optional<Breakdown> breakdown = plan.breakdown(index.get(), position.get());
    if (breakdown.isEmpty()) {
      String words = position.get().words();
      return unknown(Problem.of(ProblemCode.NO_TIRE_FITTED, words).message());
    }
    return print(
        form.json()
            ? JsonBreakdown.of(trip, breakdown.get(), units)
            : PageText.of(BreakdownPage.of(trip, breakdown.get(), plan.tireNeeds(), units), false));
  }
}

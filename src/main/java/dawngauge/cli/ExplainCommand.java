package dawngauge.cli;

import dawngauge.advice.Advice;
import dawngauge.ledger.ExplainPage;
import dawngauge.page.Page;
import dawngauge.planner.Plan;
import dawngauge.planner.Planner;
import dawngauge.problem.Outcome;
import dawngauge.problem.Problem;
import dawngauge.problem.ProblemCode;
import dawngauge.quantity.UnitSystem;
import dawngauge.report.PageText;
import dawngauge.trip.Trip;
import dawngauge.trip.WheelPosition;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Prints how the figures of one tire at one stop came about. */
@Command(
    name = "explain",
    description = "Print, step by step, how the figures of one tire at one stop came about.")
final class ExplainCommand extends TripCommand {

  /** Arriving or leaving. */
  enum When {
    /** On arrival. */
    ARRIVE,
    /** On leaving. */
    LEAVE
  }

  @Mixin private final StopOption stop = new StopOption();

  @Mixin private final TireOption tire = new TireOption();

  @Option(
      names = "--when",
      paramLabel = "arrive|leave",
      description = "On arrival or on leaving; unless given leave, at the last stop arrive.")
  private @Nullable When when;

  ExplainCommand(Planner planner, Console console) {
    super(planner, console);
  }

  @Override
  int run(Trip trip, UnitSystem units) {
    Outcome<WheelPosition> position = tire.in(trip);
    Outcome<Integer> index = stop.in(trip);
    if (isMistyped(position, index)) {
      return ExitCode.USAGE;
    }
    Plan planned = planner.plan(trip);
    Advice advice = planned.advice();
    if (advice == null || index.get() >= advice.stops().size()) {
      String place = trip.route().stops().get(index.get()).place();
      console.err().println(Problem.of(ProblemCode.TIME_NOT_KNOWN, "", place).text());
      planned.problems().forEach(problem -> console.err().println(problem.message()));
      return ExitCode.CONTENT;
    }
    boolean last = index.get() == trip.route().stops().size() - 1;
    boolean arriving = when == null ? last : when == When.ARRIVE;
    Page page =
        ExplainPage.of(trip, advice.stops().get(index.get()), position.get(), arriving, units);
    return print(PageText.of(page, true));
  }
}

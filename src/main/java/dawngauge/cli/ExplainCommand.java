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
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Prints how the figures of one tire at one stop came about. */
@Command(
    name = "explain",
    description = "Print, step by step, how the figures of one tire at one stop came about.")
final class ExplainCommand implements Callable<Integer> {

  /** Arriving or leaving. */
  enum When {
    /** On arrival. */
    ARRIVE,
    /** On leaving. */
    LEAVE
  }

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

  @Option(
      names = "--tire",
      required = true,
      paramLabel = "POSITION",
      description = "The tire: its words (\"trailer axle 2 left\") or short form (t2l).")
  private String tire = "";

  @Option(
      names = "--when",
      paramLabel = "arrive|leave",
      description = "On arrival or on leaving; unless given leave, at the last stop arrive.")
  private @Nullable When when;

  @Mixin private final UnitsOption unitsOption = new UnitsOption();

  ExplainCommand(Planner planner, Console console) {
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
    UnitSystem units = unitsOption.of(planner, trip);
    Outcome<WheelPosition> position = Names.position(trip, tire);
    Outcome<Integer> index = Names.stop(trip, stop);
    if (!position.hasValue() || !index.hasValue()) {
      position.problems().forEach(problem -> console.err().println(problem.text()));
      index.problems().forEach(problem -> console.err().println(problem.text()));
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
    return new Output(planner, console)
        .write(PageText.of(page, true), TripArgument.STANDARD, file, false);
  }
}

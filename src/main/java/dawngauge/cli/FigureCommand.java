package dawngauge.cli;

import dawngauge.advice.FigureNow;
import dawngauge.ledger.FigurePage;
import dawngauge.page.Page;
import dawngauge.planner.Planner;
import dawngauge.problem.Outcome;
import dawngauge.problem.Problem;
import dawngauge.problem.ProblemCode;
import dawngauge.quantity.Entered;
import dawngauge.quantity.GaugePressure;
import dawngauge.quantity.QuantityKind;
import dawngauge.quantity.UnitSystem;
import dawngauge.report.PageText;
import dawngauge.trip.ReadingState;
import dawngauge.trip.Trip;
import dawngauge.trip.WheelPosition;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Prints what a tire is to be set to at a stop, and what a reading there means. */
@Command(
    name = "figure",
    description =
        "Print what one tire is to be set to at a stop, cold and warm, and what a reading means cold.")
final class FigureCommand implements Callable<Integer> {

  /** How the tire was when it was read. */
  enum State {
    /** Cold. */
    COLD(ReadingState.COLD),
    /** Cold, in the sun. */
    SUN(ReadingState.COLD_IN_SUN),
    /** Warm. */
    WARM(ReadingState.WARM),
    /** Just filled. */
    FILLED(ReadingState.JUST_FILLED);

    private final ReadingState state;

    State(ReadingState state) {
      this.state = state;
    }
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
      names = "--reading",
      paramLabel = "PRESSURE",
      description = "What the gauge shows there, such as \"84 psi\".")
  private @Nullable String reading;

  @Option(
      names = "--state",
      paramLabel = "cold|sun|warm|filled",
      description = "How the tire is then; warm unless given.")
  private State state = State.WARM;

  @Option(
      names = "--at",
      paramLabel = "HH:MM",
      description = "The minute of the stay at which it is set, by the clock of the place.")
  private @Nullable LocalTime minute;

  @Option(names = "--why", description = "With what follows from it, and the published figure.")
  private boolean why;

  @Mixin private final UnitsOption unitsOption = new UnitsOption();

  FigureCommand(Planner planner, Console console) {
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
    Outcome<Entered<GaugePressure>> typed =
        reading == null ? null : QuantityKind.GAUGE_PRESSURE.parse(reading);
    List<Problem> wrong = new ArrayList<>(position.problems());
    wrong.addAll(index.problems());
    if (typed != null && !typed.hasValue()) {
      wrong.addAll(typed.problems());
    }
    if (!wrong.isEmpty()) {
      wrong.forEach(problem -> console.err().println(problem.text()));
      return ExitCode.USAGE;
    }
    Optional<FigureNow> figures = planner.plan(trip).figureNow(index.get(), position.get());
    String place = trip.route().stops().get(index.get()).place();
    if (figures.isEmpty() || (figures.get().cold() == null && typed == null)) {
      console.err().println(Problem.of(ProblemCode.NOTHING_KNOWN_HERE, "", place).text());
      return ExitCode.CONTENT;
    }
    FigurePage.Asked asked =
        new FigurePage.Asked(typed == null ? null : typed.get().value(), state.state, minute);
    Page page = FigurePage.of(trip, index.get(), position.get(), figures.get(), asked, units);
    return new Output(planner, console)
        .write(PageText.of(page, why), TripArgument.STANDARD, file, false);
  }
}

package dawngauge.cli;

import dawngauge.advice.FigureNow;
import dawngauge.ledger.FigurePage;
import dawngauge.page.Page;
import dawngauge.planner.Planner;
import dawngauge.problem.Outcome;
import dawngauge.problem.Problem;
import dawngauge.problem.ProblemCode;
import dawngauge.quantity.GaugePressure;
import dawngauge.quantity.QuantityKind;
import dawngauge.quantity.UnitSystem;
import dawngauge.report.PageText;
import dawngauge.trip.ReadingState;
import dawngauge.trip.Trip;
import dawngauge.trip.WheelPosition;
import java.time.LocalTime;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Prints what a tire is to be set to at a stop, and what a reading there means. */
@Command(
    name = "figure",
    description =
        "Print what one tire is to be set to at a stop, cold and warm, and what a reading means cold.")
final class FigureCommand extends TripCommand {

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

  @Mixin private final StopOption stop = new StopOption();

  @Mixin private final TireOption tire = new TireOption();

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

  FigureCommand(Planner planner, Console console) {
    super(planner, console);
  }

  @Override
  int run(Trip trip, UnitSystem units) {
    Outcome<WheelPosition> position = tire.in(trip);
    Outcome<Integer> index = stop.in(trip);
    Outcome<Optional<GaugePressure>> typed = typed();
    if (isMistyped(position, index, typed)) {
      return ExitCode.USAGE;
    }
    Optional<FigureNow> figures = planner.plan(trip).figureNow(index.get(), position.get());
    String place = trip.route().stops().get(index.get()).place();
    if (figures.isEmpty() || (figures.get().cold() == null && typed.get().isEmpty())) {
      return unknown(Problem.of(ProblemCode.NOTHING_KNOWN_HERE, "", place).text());
    }
    FigurePage.Asked asked = new FigurePage.Asked(typed.get().orElse(null), state.state, minute);
    Page page = FigurePage.of(trip, index.get(), position.get(), figures.get(), asked, units);
    return print(PageText.of(page, why));
  }

  /** The reading asked about, if any. */
  private Outcome<Optional<GaugePressure>> typed() {
    return reading == null
        ? Outcome.of(Optional.empty())
        : QuantityKind.GAUGE_PRESSURE.parse(reading).map(entered -> Optional.of(entered.value()));
  }
}

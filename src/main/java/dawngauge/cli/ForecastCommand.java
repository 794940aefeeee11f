package dawngauge.cli;

import dawngauge.advice.Advice;
import dawngauge.advice.Mark;
import dawngauge.advice.StopAdvice;
import dawngauge.advice.TireAdvice;
import dawngauge.ledger.ForecastPage;
import dawngauge.ledger.Ledger;
import dawngauge.planner.Plan;
import dawngauge.planner.Planner;
import dawngauge.problem.Outcome;
import dawngauge.problem.Problem;
import dawngauge.quantity.UnitSystem;
import dawngauge.report.CsvTable;
import dawngauge.report.JsonResult;
import dawngauge.report.PageText;
import dawngauge.trip.Trip;
import dawngauge.trip.WheelPosition;
import java.util.List;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Prints the forecast of a trip. */
@Command(
    name = "forecast",
    description =
        "Print what each tire will read at each stop, its load margin, and what to do there.")
final class ForecastCommand extends TripCommand {

  /** Forms of output. */
  enum Format {
    /** A timetable to read. */
    TEXT,
    /** One row a tire and stop. */
    CSV,
    /** For programs. */
    JSON
  }

  @Option(
      names = "--format",
      paramLabel = "text|csv|json",
      description = "Form of the output; text unless given.")
  private Format format = Format.TEXT;

  @Option(
      names = "--tire",
      paramLabel = "POSITION",
      description = "Only this tire: its words (\"trailer axle 2 left\") or short form (t2l).")
  private @Nullable String tire;

  @Mixin private final OutOption out = new OutOption();

  @Option(
      names = "--check",
      description = "Exit with 1 if some tire must be adjusted, 2 if some tire is on hold.")
  private boolean check;

  @Option(
      names = "--raw",
      description = "CSV for programs: no apostrophe before what a spreadsheet would run.")
  private boolean raw;

  @Option(names = "--why", description = "With reasons and sources; the text alone.")
  private boolean why;

  ForecastCommand(Planner planner, Console console) {
    super(planner, console);
  }

  @Override
  int run(Trip trip, UnitSystem units) {
    WheelPosition only = null;
    if (tire != null) {
      Outcome<WheelPosition> found = TypedNames.position(trip, tire);
      if (isMistyped(found)) {
        return ExitCode.USAGE;
      }
      only = found.get();
    }
    Plan planned = planner.plan(trip);
    List<Problem> problems = problems(planned.problems());
    String text =
        switch (format) {
          case TEXT ->
              PageText.of(
                  ForecastPage.of(
                      Ledger.of(trip, planned.advice(), problems, planned.fitness(), units, only)),
                  why);
          case CSV ->
              raw
                  ? CsvTable.raw(trip, planned.advice(), only)
                  : CsvTable.of(trip, planned.advice(), only);
          case JSON ->
              JsonResult.of(trip, planned.advice(), problems, planned.fitness(), units, only);
        };
    int written = write(text, out);
    if (written != ExitCode.DONE) {
      return written;
    }
    if (format == Format.CSV) {
      problems.forEach(problem -> console.err().println(problem.message()));
    }
    return check ? verdict(trip, planned.advice(), only) : ExitCode.DONE;
  }

  /** What --check answers; it says where it has nothing to go by. */
  private int verdict(Trip trip, @Nullable Advice advice, @Nullable WheelPosition only) {
    Mark strongest = Mark.CLEAR;
    int known = 0;
    int unknown = 0;
    for (StopAdvice stop : advice == null ? List.<StopAdvice>of() : advice.stops()) {
      for (TireAdvice each : stop.tires()) {
        if (only == null || each.tire().fitted().position().equals(only)) {
          strongest = Mark.stronger(strongest, each.mark());
          if (each.mark() == Mark.UNKNOWN) {
            unknown++;
          } else {
            known++;
          }
        }
      }
    }
    int untimed = trip.route().stops().size() - (advice == null ? 0 : advice.stops().size());
    if (known == 0) {
      return unknown("--check: nothing is known of any tire at any stop");
    }
    if (unknown > 0 || untimed > 0) {
      console
          .err()
          .println(
              "--check: the exit code does not speak of what is not known: "
                  + unknown
                  + " of "
                  + (known + unknown)
                  + " marks, stops without a known time: "
                  + untimed);
    }
    return switch (strongest) {
      case HOLD -> ExitCode.HOLD;
      case ADJUST -> ExitCode.ADJUST;
      case RECHECK, UNKNOWN, CLEAR -> ExitCode.DONE;
    };
  }
}

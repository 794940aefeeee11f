package dawngauge.cli;

import dawngauge.fitness.Defect;
import dawngauge.ledger.FitnessPage;
import dawngauge.planner.Plan;
import dawngauge.planner.Planner;
import dawngauge.quantity.UnitSystem;
import dawngauge.report.JsonFitness;
import dawngauge.report.PageText;
import dawngauge.trip.Trip;
import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Prints what is wrong with the rig before the trip. */
@Command(
    name = "fitness",
    description = "Print what is wrong or missing about the rig before it goes, worst first.")
final class FitnessCommand extends TripCommand {

  @Mixin private final FormOption form = new FormOption();

  @Option(names = "--why", description = "With who says so; the text alone.")
  private boolean why;

  @Option(
      names = "--check",
      description =
          "Exit with 1 if something must be put right before leaving, 2 if the rig must not go, 65"
              + " if too little is known to say.")
  private boolean check;

  FitnessCommand(Planner planner, Console console) {
    super(planner, console);
  }

  @Override
  int run(Trip trip, UnitSystem units) {
    Plan plan = planner.plan(trip);
    List<Defect> defects = plan.fitness();
    List<String> unknown = check || form.json() ? plan.gaps() : List.of();
    String text =
        form.json()
            ? JsonFitness.of(trip, defects, unknown, units)
            : PageText.of(FitnessPage.of(trip, defects, units), why);
    int written = print(text);
    if (!check || written != ExitCode.DONE) {
      return written;
    }
    int code = code(defects);
    if (code == ExitCode.DONE && !unknown.isEmpty()) {
      return unknown("too little is known to say: " + String.join("; ", unknown));
    }
    return code;
  }

  private static int code(List<Defect> defects) {
    int code = ExitCode.DONE;
    for (Defect defect : defects) {
      code =
          Math.max(
              code,
              switch (defect.severity()) {
                case STOP -> ExitCode.HOLD;
                case MEND -> ExitCode.ADJUST;
                case KNOW -> ExitCode.DONE;
              });
    }
    return code;
  }
}

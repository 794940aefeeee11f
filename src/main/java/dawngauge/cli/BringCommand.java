package dawngauge.cli;

import dawngauge.planner.Planner;
import dawngauge.planner.SentBack;
import dawngauge.problem.Outcome;
import dawngauge.problem.Problem;
import dawngauge.trip.Taken;
import dawngauge.trip.Trip;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Takes what a page for the phone sent back into a trip. */
@Command(
    name = "bring",
    description =
        "Take what the page for the phone sent back into a trip: each reading once, nothing that was"
            + " noted already is changed.")
final class BringCommand implements Callable<Integer> {

  private final Planner planner;
  private final Console console;

  @Parameters(index = "0", paramLabel = "FILE", description = "Trip file; - is standard input.")
  private String file = "";

  @Parameters(index = "1", paramLabel = "SENT", description = "The file that the page saved.")
  private String sent = "";

  @Option(
      names = "--out",
      paramLabel = "FILE",
      required = true,
      description = "Write the trip with it there.")
  private String out = "";

  @Option(names = "--force", description = "Let --out replace a file that exists.")
  private boolean force;

  BringCommand(Planner planner, Console console) {
    this.planner = planner;
    this.console = console;
  }

  @Override
  public Integer call() {
    Outcome<Trip> opened = TripArgument.open(planner, console, file);
    if (!opened.hasValue()) {
      return TripArgument.refuse(console, file, opened.problems());
    }
    Outcome<Taken> taken = FileNames.path(sent).then(planner.store()::sentBack);
    if (!taken.hasValue()) {
      return TripArgument.refuse(console, sent, taken.problems());
    }
    SentBack back = planner.store().with(opened.get(), taken.get());
    int written =
        new Output(planner, console).write(planner.store().text(back.trip()), out, file, force);
    if (written == ExitCode.DONE) {
      back.problems().stream().map(Problem::text).forEach(console.err()::println);
      console.err().println(back.told());
    }
    return written;
  }
}

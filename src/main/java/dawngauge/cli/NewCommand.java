package dawngauge.cli;

import dawngauge.planner.Planner;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Writes a starter trip file. */
@Command(
    name = "new",
    description =
        "Write a starter trip file whose notes say where each figure is read: label, sidewall, scale"
            + " ticket.")
final class NewCommand implements Callable<Integer> {

  private final Planner planner;
  private final Console console;

  @Parameters(
      index = "0",
      paramLabel = "FILE",
      description = "Where to write it; - is standard output.")
  private String file = "";

  @Option(names = "--force", description = "Replace a file that exists.")
  private boolean force;

  NewCommand(Planner planner, Console console) {
    this.planner = planner;
    this.console = console;
  }

  @Override
  public Integer call() {
    return new Output(planner, console)
        .write(planner.store().starter(), file, TripArgument.STANDARD, force);
  }
}

package dawngauge.cli;

import dawngauge.planner.Planner;
import dawngauge.problem.Outcome;
import dawngauge.trip.Trip;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** The program as it is typed: a trip file, or a command. */
@Command(
    name = "dawngauge",
    description =
        "Forecasts tire pressure and load margin along a haul from the morning's cold reading.",
    mixinStandardHelpOptions = true,
    version = "Dawngauge 0.1.0",
    footer = {
      "",
      "With no command it opens the window, or prints the forecast where none can be opened.",
      "A forecast replaces no gauge; label, makers' tables and local law come first."
    })
public final class CommandLineFace implements Callable<Integer> {

  private final Planner planner;
  private final Console console;
  private final WindowOpener opener;

  @Spec private CommandSpec spec = CommandSpec.create();

  @Parameters(
      index = "0",
      arity = "0..1",
      paramLabel = "FILE",
      description = "Trip file; - is standard input.")
  private String file = "";

  @Option(
      names = "--copy",
      description = "Take the file as an unsaved copy, so that it is never written over.")
  private boolean copy;

  private CommandLineFace(Planner planner, Console console, WindowOpener opener) {
    this.opener = opener;
    this.planner = planner;
    this.console = console;
  }

  /** Opens the window on a trip. */
  @FunctionalInterface
  public interface WindowOpener {
    /**
     * Opens it and waits until it is closed.
     *
     * @param planner the use cases
     * @param trip the trip to show
     * @param file its file, or empty where it has none
     * @return false where no window can be opened
     */
    boolean open(Planner planner, Trip trip, Optional<Path> file);
  }

  /**
   * Runs what was typed, where there is no window.
   *
   * @return the exit code
   */
  public static int run(Planner planner, Console console, String... arguments) {
    return run(planner, console, (use, trip, path) -> false, arguments);
  }

  /**
   * Runs what was typed.
   *
   * @param opener opens the window
   * @return the exit code
   */
  public static int run(
      Planner planner, Console console, WindowOpener opener, String... arguments) {
    CommandLineFace face = new CommandLineFace(planner, console, opener);
    CommandLine line = new CommandLine(face);
    line.addSubcommand(new ForecastCommand(planner, console));
    line.addSubcommand(new ExplainCommand(planner, console));
    line.addSubcommand(new FitnessCommand(planner, console));
    line.addSubcommand(new NewCommand(planner, console));
    line.setCaseInsensitiveEnumValuesAllowed(true);
    line.setOut(console.out());
    line.setErr(console.err());
    line.setColorScheme(CommandLine.Help.defaultColorScheme(CommandLine.Help.Ansi.OFF));
    line.getCommandSpec().usageMessage().width(LINE_WIDTH);
    line.setParameterExceptionHandler(
        (problem, typed) -> {
          console.err().println(problem.getMessage());
          console.err().println("See: dawngauge --help");
          return ExitCode.USAGE;
        });
    return line.execute(arguments);
  }

  private static final int LINE_WIDTH = 100;

  @Override
  public Integer call() {
    Outcome<Trip> opened =
        file.isEmpty() ? planner.starterTrip() : TripArgument.open(planner, console, file);
    if (!opened.hasValue()) {
      return TripArgument.refuse(console, file, opened.problems());
    }
    boolean unsaved = copy || file.isEmpty() || file.equals("-");
    Optional<Path> path = unsaved ? Optional.empty() : Optional.of(Path.of(file));
    if (opener.open(planner, opened.get(), path)) {
      return ExitCode.DONE;
    }
    if (file.isEmpty()) {
      spec.commandLine().usage(console.out());
      return ExitCode.DONE;
    }
    console.err().println("No window can be opened here, so this is the forecast as text.");
    CommandLine forecast = new CommandLine(new ForecastCommand(planner, console));
    return forecast.execute(file);
  }
}

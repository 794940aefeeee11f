package dawngauge.cli;

import dawngauge.planner.Planner;
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
      "With a FILE and no command it prints the forecast.",
      "A forecast replaces no gauge; label, makers' tables and local law come first."
    })
public final class CommandLineFace implements Runnable {

  private final Planner planner;
  private final Console console;

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

  private CommandLineFace(Planner planner, Console console) {
    this.planner = planner;
    this.console = console;
  }

  /**
   * Runs what was typed.
   *
   * @return the exit code
   */
  public static int run(Planner planner, Console console, String... arguments) {
    CommandLineFace face = new CommandLineFace(planner, console);
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
    face.code = ExitCode.DONE;
    int code = line.execute(arguments);
    return code == ExitCode.DONE ? face.code : code;
  }

  private static final int LINE_WIDTH = 100;

  private int code;

  @Override
  public void run() {
    if (file.isEmpty()) {
      spec.commandLine().usage(console.out());
      return;
    }
    console
        .err()
        .println(
            "This version has no window yet: here is the forecast" + (copy ? " of a copy." : "."));
    CommandLine forecast = new CommandLine(new ForecastCommand(planner, console));
    code = forecast.execute(file);
  }
}

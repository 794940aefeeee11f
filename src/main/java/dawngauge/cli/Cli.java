package dawngauge.cli;

import dawngauge.ledger.ProgramVersion;
import dawngauge.planner.Planner;
import dawngauge.planner.WeatherAccess;
import dawngauge.problem.Outcome;
import dawngauge.problem.Problem;
import dawngauge.problem.ProblemCode;
import dawngauge.quantity.UnitSystem;
import dawngauge.report.CrewSheet;
import dawngauge.trip.Trip;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ScopeType;
import picocli.CommandLine.UnmatchedArgumentException;

/** The program as it is typed: a trip file, or a command. */
@Command(
    name = "dawngauge",
    description =
        "Forecasts tire pressure and load margin along a haul from the morning's cold reading.",
    versionProvider = Cli.Version.class,
    footer = {
      "",
      "With no command it opens the window, or prints the forecast where none can be opened.",
      "A forecast replaces no gauge; label, makers' tables and local law come first."
    })
public final class Cli implements Callable<Integer> {

  private static final int LINE_WIDTH = 100;

  private final Planner planner;
  private final Console console;
  private final WindowOpener opener;

  @Parameters(
      index = "0",
      arity = "0..1",
      paramLabel = "FILE",
      description = "Trip file; - is standard input.")
  private @Nullable String file;

  @Option(
      names = "--copy",
      description = "Take the file as an unsaved copy, so that it is never written over.")
  private boolean copy;

  @Option(
      names = {"-h", "--help"},
      usageHelp = true,
      scope = ScopeType.INHERIT,
      description = "Show this help and exit.")
  @SuppressWarnings("UnusedVariable") // acted on by picocli
  private boolean help;

  @Option(
      names = {"-V", "--version"},
      versionHelp = true,
      description = "Print the version and exit.")
  @SuppressWarnings("UnusedVariable") // acted on by picocli
  private boolean version;

  /** What {@code --version} prints. */
  static final class Version implements CommandLine.IVersionProvider {
    @Override
    public String[] getVersion() {
      return new String[] {"Dawngauge " + ProgramVersion.NUMBER};
    }
  }

  private Cli(Planner planner, Console console, WindowOpener opener) {
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
     * @param opened the trip to show, and what reading it told
     * @param file its file, or empty where it has none
     * @return false where no window can be opened
     */
    boolean open(Planner planner, Outcome<Trip> opened, Optional<Path> file);

    /** Told before the trip is read that a window is to be opened on it. */
    default void begin() {}
  }

  /**
   * Runs what was typed, where there is no window.
   *
   * @return the exit code
   */
  public static int run(Planner planner, Console console, String... arguments) {
    return run(planner, console, new NoWeather(), (use, trip, path) -> false, arguments);
  }

  /**
   * Runs what was typed.
   *
   * @param weather the way to the weather services
   * @param opener opens the window
   * @return the exit code
   */
  public static int run(
      Planner planner,
      Console console,
      WeatherAccess weather,
      WindowOpener opener,
      String... arguments) {
    try {
      return commands(planner, console, weather, opener).execute(arguments);
    } catch (RuntimeException | Error e) {
      return internalError(console, e);
    }
  }

  /** Every command with its options. */
  static CommandLine commands(
      Planner planner, Console console, WeatherAccess weather, WindowOpener opener) {
    CommandLine line = new CommandLine(new Cli(planner, console, opener));
    line.addSubcommand(new ForecastCommand(planner, console));
    line.addSubcommand(new ExplainCommand(planner, console));
    line.addSubcommand(new PlanCommand(planner, console));
    line.addSubcommand(new RemindersCommand(planner, console, weather));
    line.addSubcommand(new SheetCommand(planner, console));
    line.addSubcommand(new TakeCommand(planner, console, weather));
    line.addSubcommand(new BringCommand(planner, console));
    line.addSubcommand(new FigureCommand(planner, console));
    line.addSubcommand(new ReachCommand(planner, console));
    line.addSubcommand(new BreakdownCommand(planner, console));
    line.addSubcommand(new FitnessCommand(planner, console));
    line.addSubcommand(new WeightsCommand(planner, console));
    line.addSubcommand(new DealerCommand(planner, console));
    line.addSubcommand(new GroundCommand(planner, console));
    line.addSubcommand(new ReviewCommand(planner, console, weather));
    line.addSubcommand(new NewCommand(planner, console));
    line.addSubcommand(new WeatherCommand(planner, console, weather));
    line.addSubcommand(new HelpCommand(line, console));
    line.registerConverter(
        ForecastCommand.Format.class, new Choice<>(ForecastCommand.Format.class));
    line.registerConverter(FormOption.Form.class, new Choice<>(FormOption.Form.class));
    line.registerConverter(ExplainCommand.When.class, new Choice<>(ExplainCommand.When.class));
    line.registerConverter(CrewSheet.Paper.class, new Choice<>(CrewSheet.Paper.class));
    line.registerConverter(FigureCommand.State.class, new Choice<>(FigureCommand.State.class));
    line.registerConverter(UnitSystem.class, new Choice<>(UnitSystem.class));
    line.setExpandAtFiles(false);
    line.setUsageHelpWidth(LINE_WIDTH);
    line.setOut(console.out());
    line.setErr(console.err());
    line.setColorScheme(CommandLine.Help.defaultColorScheme(CommandLine.Help.Ansi.OFF));
    line.setParameterExceptionHandler(
        (problem, typed) -> {
          console.err().println(problem.getMessage() + meant(line, problem, typed));
          console
              .err()
              .println(
                  "See: " + problem.getCommandLine().getCommandSpec().qualifiedName() + " --help");
          return ExitCode.USAGE;
        });
    line.setExecutionExceptionHandler(
        (unexpected, command, parsed) -> internalError(console, unexpected));
    return line;
  }

  /** What may have been meant by a wrong option, or by a word before a file; empty if unclear. */
  private static String meant(
      CommandLine line, CommandLine.ParameterException problem, String[] typed) {
    if (!(problem instanceof UnmatchedArgumentException unmatched)) {
      return "";
    }
    Optional<String> meant = Suggestions.option(unmatched);
    if (meant.isEmpty() && problem.getCommandLine() == line && typed.length > 0) {
      meant = Suggestions.command(line, typed[0]);
    }
    return meant.map(Suggestions::question).orElse("");
  }

  /**
   * Tells of an error of the program itself, in one line, and has it kept.
   *
   * @return the exit code
   */
  public static int internalError(Console console, Throwable error) {
    console.failures().accept(error);
    StackTraceElement[] trace = error.getStackTrace();
    console
        .err()
        .println(
            "internal error: "
                + String.valueOf(error).replaceAll("\\s+", " ")
                + (trace.length == 0 ? "" : " at " + trace[0])
                + "; please report it with what was typed and the trip file");
    return ExitCode.INTERNAL;
  }

  /** A word that is no file may have been meant as a command. */
  private void tellMeant(String typed, List<Problem> problems) {
    CommandLine line = commands(planner, console, new NoWeather(), opener);
    boolean missing = problems.stream().anyMatch(p -> p.code() == ProblemCode.NO_SUCH_FILE);
    if (missing && Suggestions.command(line, typed).isPresent()) {
      console.err().println(Suggestions.noCommand(line, typed));
    }
  }

  @Override
  public Integer call() {
    if (file == null || TripArgument.isThere(planner, file)) {
      opener.begin();
    }
    Outcome<Trip> opened =
        file == null ? planner.store().starterTrip() : TripArgument.open(planner, console, file);
    if (!opened.hasValue()) {
      if (file != null) {
        tellMeant(file, opened.problems());
      }
      return TripArgument.refuse(console, file == null ? "the starter" : file, opened.problems());
    }
    boolean unsaved = copy || file == null || file.equals(TripArgument.STANDARD);
    Optional<Path> path = unsaved ? Optional.empty() : Optional.ofNullable(file).map(Path::of);
    if (opener.open(planner, opened, path)) {
      return ExitCode.DONE;
    }
    if (file == null) {
      commands(planner, console, new NoWeather(), opener).usage(console.out());
      return ExitCode.DONE;
    }
    console.err().println("No window can be opened here, so this is the forecast as text.");
    return new ForecastCommand(planner, console).answer(file, opened.map(planner.store()::shown));
  }
}

package dawngauge;

import dawngauge.cli.Cli;
import dawngauge.cli.Console;
import dawngauge.cli.ExitCode;
import dawngauge.cli.StandardOutput;
import dawngauge.ledger.ProgramVersion;
import dawngauge.planner.FeedAccess;
import dawngauge.planner.Planner;
import dawngauge.planner.UserFolder;
import dawngauge.planner.WeatherAccess;
import dawngauge.problem.Outcome;
import dawngauge.settings.FailureLog;
import dawngauge.settings.FeedSettings;
import dawngauge.settings.SettingsFile;
import dawngauge.settings.SystemTheme;
import dawngauge.trip.Trip;
import dawngauge.ui.WindowStart;
import dev.dirs.ProjectDirectories;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicBoolean;

/** Starts Dawngauge: wires the parts together and runs what was typed. */
public final class Main {

  private Main() {}

  /** Runs one command. Ends the process with its exit code, unless that is 0. */
  public static void main(String[] args) {
    PrintWriter out = new StandardOutput(new FileOutputStream(FileDescriptor.out));
    PrintWriter err = new StandardOutput(new FileOutputStream(FileDescriptor.err));
    Path folder = folder();
    FailureLog failures = new FailureLog(folder, Clock.systemUTC());
    AtomicBoolean failed = new AtomicBoolean();
    Console console =
        new Console(
            System.in,
            out,
            err,
            wrong -> {
              failed.set(true);
              failures.keep(wrong);
            });
    Thread.setDefaultUncaughtExceptionHandler((thread, wrong) -> Cli.internalError(console, wrong));
    int code;
    try {
      code = run(folder, failures, console, args);
    } catch (RuntimeException | Error wrong) {
      code = Cli.internalError(console, wrong);
    }
    out.flush();
    err.flush();
    if (code == 0 && failed.get()) {
      code = ExitCode.INTERNAL;
    }
    if (code != 0) {
      System.exit(code);
    }
  }

  private static int run(Path folder, FailureLog failures, Console console, String[] args) {
    Planner planner = new Planner(SettingsFile.defaults(), List.of());
    UserFolder userFolder =
        new UserFolder(
            folder,
            Clock.system(ZoneId.systemDefault()),
            run(ProcessHandle.current()),
            Main::isRunning,
            failures);
    WeatherAccess weather =
        new FeedAccess(
            userFolder,
            FeedSettings.of(folder),
            cache(folder),
            "Dawngauge/" + ProgramVersion.NUMBER,
            Clock.systemUTC());
    return Cli.run(planner, console, weather, new Opener(userFolder, weather), args);
  }

  private record Opener(UserFolder userFolder, WeatherAccess weather) implements Cli.WindowOpener {

    @Override
    public void begin() {
      WindowStart.begin(userFolder);
    }

    @Override
    public boolean open(Planner planner, Outcome<Trip> opened, Optional<Path> file) {
      boolean dark =
          SystemTheme.isDark(System.getenv(), Path.of(System.getProperty("user.home", ".")));
      return WindowStart.open(planner, userFolder, weather, dark, opened, file);
    }
  }

  /** One run of the program: its process and when that began, since numbers come again. */
  private static String run(ProcessHandle process) {
    return process.pid() + " " + process.info().startInstant().map(Instant::toString).orElse("");
  }

  private static boolean isRunning(String run) {
    String number = run.replaceFirst(" .*", "");
    return number.matches("\\d{1,18}")
        && ProcessHandle.of(Long.parseLong(number)).filter(p -> run(p).equals(run)).isPresent();
  }

  /** The user's own folder; a packager or test may name another. */
  private static Path folder() {
    String named = System.getProperty("dawngauge.folder", "");
    return Path.of(
        named.isEmpty() ? ProjectDirectories.from("", "", "dawngauge").dataLocalDir : named);
  }

  /** The folder for answers of weather services, which anybody may empty. */
  private static Path cache(Path folder) {
    boolean named = !System.getProperty("dawngauge.folder", "").isEmpty();
    return named
        ? folder.resolve("cache")
        : Path.of(ProjectDirectories.from("", "", "dawngauge").cacheDir);
  }
}

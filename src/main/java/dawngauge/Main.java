package dawngauge;

import dawngauge.cli.CommandLineFace;
import dawngauge.cli.Console;
import dawngauge.planner.Planner;
import dawngauge.planner.UserDesk;
import dawngauge.settings.SettingsFile;
import dawngauge.settings.SystemTheme;
import dawngauge.trip.Trip;
import dawngauge.ui.WindowStart;
import dev.dirs.ProjectDirectories;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.OutputStreamWriter;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;

/** Starts Dawngauge: wires the parts together and runs what was typed. */
public final class Main {

  private Main() {}

  /** Runs one command. Ends the process with its exit code, unless that is 0. */
  public static void main(String[] args) {
    PrintWriter out = utf8(FileDescriptor.out);
    PrintWriter err = utf8(FileDescriptor.err);
    Planner planner = new Planner(SettingsFile.defaults(), List.of());
    int code = CommandLineFace.run(planner, new Console(System.in, out, err), Main::open, args);
    out.flush();
    err.flush();
    if (code != 0) {
      System.exit(code);
    }
  }

  private static boolean open(Planner planner, Trip trip, Optional<Path> file) {
    UserDesk desk =
        new UserDesk(
            folder(),
            Clock.system(ZoneId.systemDefault()),
            ProcessHandle.current().pid(),
            process -> ProcessHandle.of(process).isPresent());
    boolean dark =
        SystemTheme.isDark(System.getenv(), Path.of(System.getProperty("user.home", ".")));
    return WindowStart.open(planner, desk, dark, trip, file);
  }

  /** The user's own folder; a packager or test may name another. */
  private static Path folder() {
    String named = System.getProperty("dawngauge.folder", "");
    return Path.of(
        named.isEmpty() ? ProjectDirectories.from("", "", "dawngauge").dataLocalDir : named);
  }

  /** Straight to the stream: {@code System.out} would hide that it cannot be written. */
  private static PrintWriter utf8(FileDescriptor stream) {
    return new PrintWriter(
        new OutputStreamWriter(new FileOutputStream(stream), StandardCharsets.UTF_8), true);
  }
}

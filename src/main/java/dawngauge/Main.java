package dawngauge;

import dawngauge.cli.CommandLineFace;
import dawngauge.cli.Console;
import dawngauge.planner.Planner;
import dawngauge.settings.SettingsFile;
import dawngauge.ui.WindowStart;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.OutputStreamWriter;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** Starts Dawngauge: wires the parts together and runs what was typed. */
public final class Main {

  private Main() {}

  /** Runs one command. Ends the process with its exit code, unless that is 0. */
  public static void main(String[] args) {
    PrintWriter out = utf8(FileDescriptor.out);
    PrintWriter err = utf8(FileDescriptor.err);
    Planner planner = new Planner(SettingsFile.defaults(), List.of());
    int code =
        CommandLineFace.run(planner, new Console(System.in, out, err), WindowStart::open, args);
    out.flush();
    err.flush();
    if (code != 0) {
      System.exit(code);
    }
  }

  /** Straight to the stream: {@code System.out} would hide that it cannot be written. */
  private static PrintWriter utf8(FileDescriptor stream) {
    return new PrintWriter(
        new OutputStreamWriter(new FileOutputStream(stream), StandardCharsets.UTF_8), true);
  }
}

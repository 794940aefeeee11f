package dawngauge.contract;

import dawngauge.cli.Cli;
import dawngauge.cli.Console;
import dawngauge.planner.Planner;
import dawngauge.settings.SettingsFile;
import java.io.ByteArrayInputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/** What a command prints of a trip that it reads from standard input. */
final class Page {

  static final Planner PLANNER = new Planner(SettingsFile.defaults(), List.of());

  /** What commands answer where nothing is known. */
  private static final int NOTHING_KNOWN = 65;

  private Page() {}

  /**
   * Its text; empty where the command says that nothing is known.
   *
   * @param command the name of the command
   * @param more what follows the file
   */
  static String of(Grid.Haul haul, String command, String... more) {
    List<String> arguments = new ArrayList<>(List.of(command, "-"));
    arguments.addAll(List.of(more));
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    byte[] trip = haul.text().getBytes(StandardCharsets.UTF_8);
    try (PrintWriter result = new PrintWriter(out);
        PrintWriter messages = new PrintWriter(err)) {
      int code =
          Cli.run(
              PLANNER,
              new Console(new ByteArrayInputStream(trip), result, messages),
              arguments.toArray(new String[0]));
      if (code == NOTHING_KNOWN) {
        return "";
      }
      if (code != 0) {
        throw new IllegalStateException(arguments + " of " + haul.cell() + ": " + code + " " + err);
      }
    }
    return out.toString();
  }

  /** The same in the units of the trip, for pages that show one system. */
  static String inUnits(Grid.Haul haul, String command, String... more) {
    List<String> all = new ArrayList<>(List.of(more));
    all.add("--units");
    all.add(haul.cell().units() == Cell.Units.BAR ? "si" : "us");
    return of(haul, command, all.toArray(new String[0]));
  }
}

package dawngauge.ui.common;

import dawngauge.planner.Planner;
import dawngauge.planner.UserFolder;
import dawngauge.settings.FailureLog;
import dawngauge.settings.SettingsFile;
import dawngauge.trip.Trip;
import java.io.PrintStream;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Optional;

/**
 * A program that edits, keeps a copy, saves, drops the copy and remembers the file, as the window
 * does, and says after each step that it is done; until it is killed.
 */
public final class SavesUntilKilled {

  private static final PrintStream SAID = System.out;

  private SavesUntilKilled() {}

  /** The arguments are the trip's file and the user's own folder. */
  public static void main(String[] args) {
    Path file = Path.of(args[0]);
    Path folder = Path.of(args[1]);
    Planner planner = new Planner(SettingsFile.defaults(), List.of());
    UserFolder userFolder =
        new UserFolder(
            folder,
            Clock.systemUTC(),
            "run " + ProcessHandle.current().pid(),
            run -> false,
            new FailureLog(folder, Clock.systemUTC()));
    TripDocument document = new TripDocument(planner, planner.store().open(file).get());
    document.replace(document.trip(), Optional.of(file));
    for (int i = number(document.trip()) + 1; ; i++) {
      document.edit(named(document.trip(), i));
      require(userFolder.keep(document.trip(), Optional.of(file), List.of()).isEmpty());
      SAID.println("kept " + i);
      require(document.save(file).isEmpty());
      SAID.println("saved " + i);
      userFolder.drop();
      userFolder.remember(state -> state.withRecent(file.toString()));
      SAID.println("remembered " + i);
    }
  }

  private static void require(boolean done) {
    if (!done) {
      throw new IllegalStateException("a step was refused");
    }
  }

  /** The trip with a number for its name. */
  static Trip named(Trip trip, int number) {
    return new Trip(
        "" + number,
        trip.rig(),
        trip.route(),
        trip.ambient(),
        trip.earlierAmbient(),
        trip.log(),
        trip.plan(),
        trip.remarks());
  }

  /** The number of a trip. */
  static int number(Trip trip) {
    return Integer.parseInt(trip.name());
  }
}

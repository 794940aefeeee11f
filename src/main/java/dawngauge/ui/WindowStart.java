package dawngauge.ui;

import dawngauge.planner.Plan;
import dawngauge.planner.Planner;
import dawngauge.planner.UserFolder;
import dawngauge.planner.WeatherAccess;
import dawngauge.problem.Outcome;
import dawngauge.trip.Trip;
import dawngauge.ui.common.Look;
import dawngauge.ui.common.Tasks;
import dawngauge.ui.common.TripDocument;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Consumer;
import javafx.application.Application;
import javafx.application.Platform;
import javafx.stage.Stage;
import org.jspecify.annotations.Nullable;

/** Opens the window, where one can be opened. */
public final class WindowStart {

  /** The toolkit makes the program itself, so what it is to show waits here for it. */
  private static @Nullable Consumer<Stage> filler;

  /** Whether the toolkit came so far that what goes wrong then is a fault of the program. */
  private static boolean begun;

  private static boolean shown;

  /** Whether the window could not be filled. */
  private static boolean broken;

  private static final AtomicReference<Tasks.@Nullable Begun> TOOLKIT = new AtomicReference<>();

  private static final List<String> SCALES = List.of("glass.gtk.uiScale", "glass.win.uiScale");

  private WindowStart() {}

  /**
   * Opens the window and waits until it is closed.
   *
   * @param planner the use cases
   * @param userFolder what is kept in the user's own folder
   * @param weather the way to the weather services
   * @param systemDark whether the system's windows are dark
   * @param opened the trip to show, and what reading it told
   * @param file its file; empty for a copy that has none
   * @return false where no window can be opened: no display, a dead one, no toolkit
   */
  public static boolean open(
      Planner planner,
      UserFolder userFolder,
      WeatherAccess weather,
      boolean systemDark,
      Outcome<Trip> opened,
      Optional<Path> file) {
    Trip trip = opened.get();
    Plan plan = planner.plan(trip);
    Tasks.ahead(plan::computed);
    boolean starter = planner.store().starterTrip().value().filter(trip::equals).isPresent();
    boolean first = file.isEmpty() && starter;
    Consumer<Stage> fill =
        stage -> {
          TripDocument document = new TripDocument(planner, plan, file);
          file.ifPresent(
              path -> userFolder.remember(s -> s.withRecent(path.toAbsolutePath().toString())));
          PlannerWindow window =
              new PlannerWindow(
                  stage,
                  planner,
                  userFolder,
                  weather,
                  document,
                  new DialogAsker(stage),
                  systemDark);
          Tasks.onUncaught(
              wrong -> {
                userFolder.failures().keep(wrong);
                Platform.runLater(() -> window.tellFault(wrong));
              });
          window.tell(opened.problems());
          if (first) {
            window.showFirst();
          }
        };
    filler =
        stage -> {
          Look.show(userFolder.state().theme().dark(systemDark));
          OpeningFrame.show(
              stage,
              first ? null : trip,
              userFolder.state().window(),
              () -> filled(stage, fill, userFolder));
        };
    if (!begin(userFolder).isDone()) {
      return false;
    }
    try {
      Application.launch(Program.class);
      return !broken;
    } catch (RuntimeException | LinkageError e) {
      if (shown) {
        throw e;
      }
      if (begun) {
        userFolder.failures().keep(e);
      }
      return false;
    }
  }

  /** Fills the frame; where that cannot be done there is no window. */
  private static void filled(Stage stage, Consumer<Stage> fill, UserFolder userFolder) {
    try {
      fill.accept(stage);
      shown = true;
    } catch (RuntimeException | LinkageError e) {
      userFolder.failures().keep(e);
      broken = true;
      stage.close();
    }
  }

  /** Has the toolkit start, beside what is to be done before a window is opened. */
  public static Tasks.Begun begin(UserFolder userFolder) {
    return TOOLKIT.updateAndGet(known -> known == null ? started(userFolder) : known);
  }

  private static Tasks.Begun started(UserFolder userFolder) {
    scale(userFolder.state().size().percent());
    return Tasks.begin(() -> Platform.startup(() -> {}));
  }

  /**
   * Has the toolkit show everything larger: it reads this once, before its first window. On macOS
   * it does not; there the system scales.
   */
  private static void scale(int percent) {
    for (String property : SCALES) {
      if (percent > 0 && System.getProperty(property) == null) {
        System.setProperty(property, percent + "%");
      }
    }
  }

  /** What the toolkit starts. */
  public static final class Program extends Application {
    @Override
    public void start(Stage stage) {
      Consumer<Stage> fill = filler;
      if (fill == null) {
        throw new IllegalStateException("the window is opened by WindowStart.open");
      }
      begun = true;
      fill.accept(stage);
    }
  }
}

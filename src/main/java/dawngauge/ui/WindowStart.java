package dawngauge.ui;

import dawngauge.planner.Planner;
import dawngauge.trip.Trip;
import dawngauge.ui.common.TripDocument;
import java.nio.file.Path;
import java.util.Optional;
import javafx.application.Application;
import javafx.stage.Stage;
import org.jspecify.annotations.Nullable;

/** Opens the window, where one can be opened. */
public final class WindowStart {

  private static @Nullable Planner planner;
  private static @Nullable Trip trip;
  private static Optional<Path> file = Optional.empty();
  private static boolean shown;

  private WindowStart() {}

  /**
   * Opens the window and waits until it is closed.
   *
   * @param use the use cases
   * @param first the trip to show
   * @param path its file; empty for a copy that has none
   * @return false where no window can be opened: no display, a dead one, no toolkit
   */
  public static boolean open(Planner use, Trip first, Optional<Path> path) {
    planner = use;
    trip = first;
    file = path;
    try {
      Application.launch(Program.class);
      return true;
    } catch (RuntimeException | LinkageError e) {
      if (shown) {
        throw e;
      }
      return false;
    }
  }

  /** What the toolkit starts. */
  public static final class Program extends Application {
    @Override
    public void start(Stage stage) {
      Planner use = planner;
      Trip first = trip;
      if (use == null || first == null) {
        throw new IllegalStateException("the window is opened by WindowStart.open");
      }
      TripDocument document = new TripDocument(use, first);
      document.replace(first, file);
      new PlannerWindow(stage, use, document);
      stage.show();
      shown = true;
    }
  }
}

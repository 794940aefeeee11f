package dawngauge.ui;

import static org.assertj.core.api.Assertions.assertThat;

import dawngauge.planner.Planner;
import dawngauge.planner.UserFolder;
import dawngauge.settings.FailureLog;
import dawngauge.settings.SettingsFile;
import dawngauge.settings.UserState;
import dawngauge.trip.Trip;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Queue;
import java.util.concurrent.ConcurrentLinkedQueue;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.api.parallel.Execution;
import org.junit.jupiter.api.parallel.ExecutionMode;

/**
 * A test with real windows. Each waits on conditions, never for a fixed time, and gives up late
 * enough for a busy machine; whatever is thrown on the toolkit's thread fails it.
 */
@ExtendWith(NeedsDisplay.class)
@Execution(ExecutionMode.SAME_THREAD)
@Timeout(240)
abstract class WindowTest {

  static final Path DEMO = Path.of("demo-data", "spring-fleece-haul.dawngauge");

  private final Queue<Throwable> thrown = new ConcurrentLinkedQueue<>();

  /** The user's own folder. */
  Path folder = Path.of("");

  private final List<OpenWindow> open = new ArrayList<>();

  @BeforeEach
  void listen(@TempDir Path own) {
    folder = own;
    OpenWindow.onToolkit(
        () -> {
          Thread.currentThread().setUncaughtExceptionHandler((thread, e) -> thrown.add(e));
          return true;
        });
  }

  @AfterEach
  void close() {
    open.forEach(OpenWindow::close);
    assertThat(thrown).as("thrown on the toolkit's thread").isEmpty();
  }

  /** A window on a trip without a file. */
  OpenWindow open(Trip trip) {
    return open(trip, userFolder(1));
  }

  /** A window of a program with its own place in the user's folder. */
  OpenWindow open(Trip trip, UserFolder userFolder) {
    return open(planner(), trip, userFolder);
  }

  /** A window that plans by a planner of its own. */
  OpenWindow open(Planner planner, Trip trip, UserFolder userFolder) {
    OpenWindow window = OpenWindow.on(planner, userFolder, trip);
    open.add(window);
    return window;
  }

  /** The desk of a process; only those with numbers below 100 still run. */
  UserFolder userFolder(long process) {
    UserFolder userFolder =
        new UserFolder(
            folder,
            Clock.fixed(Instant.parse("2027-04-06T12:00:00Z"), ZoneOffset.UTC),
            "" + process,
            run -> run.matches("\\d{1,2}"),
            new FailureLog(folder, Clock.systemUTC()));
    userFolder.remember(UserState::withCautionsSeen);
    return userFolder;
  }

  static Planner planner() {
    return new Planner(SettingsFile.defaults(), List.of());
  }

  static Trip demo() {
    return planner().store().open(DEMO).get();
  }

  /** The first hours of the demo haul, with no temperature for Raton NM. */
  static Trip gap() {
    return planner().store().open(Path.of("demo-data", "gap-haul.dawngauge")).get();
  }
}

package dawngauge.ui;

import static org.assertj.core.api.Assertions.assertThat;

import dawngauge.planner.Planner;
import dawngauge.settings.SettingsFile;
import dawngauge.trip.Trip;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Queue;
import java.util.concurrent.ConcurrentLinkedQueue;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.extension.ExtendWith;

/**
 * A test with real windows. Each waits on conditions, never for a fixed time, and ends within 20
 * seconds; whatever is thrown on the toolkit's thread fails it.
 */
@ExtendWith(NeedsDisplay.class)
@Timeout(20)
abstract class WindowTest {

  static final Path DEMO = Path.of("demo-data", "spring-fleece-haul.dawngauge");

  private final Queue<Throwable> thrown = new ConcurrentLinkedQueue<>();
  private final List<OpenWindow> open = new ArrayList<>();

  @BeforeEach
  void listen() {
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
    OpenWindow window = OpenWindow.on(planner(), trip);
    open.add(window);
    return window;
  }

  static Planner planner() {
    return new Planner(SettingsFile.defaults(), List.of());
  }

  static Trip demo() {
    return planner().open(DEMO).get();
  }
}

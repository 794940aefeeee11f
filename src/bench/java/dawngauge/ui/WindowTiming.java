package dawngauge.ui;

import atlantafx.base.theme.PrimerLight;
import dawngauge.planner.Plan;
import dawngauge.planner.Planner;
import dawngauge.planner.UserFolder;
import dawngauge.planner.WeatherAccess;
import dawngauge.settings.FailureLog;
import dawngauge.settings.SettingsFile;
import dawngauge.testdata.BenchTrip;
import dawngauge.trip.Stop;
import dawngauge.trip.Trip;
import dawngauge.ui.common.Look;
import dawngauge.ui.common.Tasks;
import dawngauge.ui.common.TripDocument;
import dawngauge.ui.map.MapTiming;
import dawngauge.ui.route.StopGridPane;
import java.lang.management.ManagementFactory;
import java.lang.reflect.Proxy;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.IntConsumer;
import javafx.application.Application;
import javafx.application.Platform;
import javafx.scene.Scene;
import javafx.scene.control.Label;
import javafx.scene.layout.StackPane;
import javafx.stage.Stage;
import org.jspecify.annotations.Nullable;

/**
 * Times the window: {@code edits FILE|STOPSxRIGS} (a rig has 18 tires), {@code scroll}, {@code
 * stops} and {@code tires} (going to the next one), {@code first FILE}, {@code bare}, {@code map}.
 * Needs a display. Edits are timed from the edit to the end of the layout pulse that shows its
 * figures; what the window's thread does for it, without its waiting for the forecast and for the
 * pulse, which comes 60 times a second, is told apart. The first pictures, of the frame and of all
 * figures, count from the start of the process.
 */
public final class WindowTiming {

  private static final int WARMING = 100;
  private static final int TIMED = 500;
  private static final double MILLION = 1e6;

  private static String[] asked = {};

  private WindowTiming() {}

  /** Runs one timing and prints it. */
  public static void main(String[] args) {
    asked = args.clone();
    if (args.length > 0 && args[0].equals("map")) {
      System.out.println(MapTiming.line());
      return;
    }
    if (!asked[0].equals("bare")) {
      Tasks.Begun toolkit = Tasks.begin(() -> Platform.startup(() -> {}));
      planBeside();
      toolkit.isDone();
    }
    Application.launch(Program.class);
  }

  private static @Nullable Plan early;

  /** When the figures of an edit began to be shown, and how long that took since the edit, ns. */
  private static long answering;

  private static long answered;

  /** As the program does: plans while the toolkit starts. */
  private static void planBeside() {
    Planner planner = new Planner(SettingsFile.defaults(), List.of());
    Plan plan = planner.plan(trip(planner, asked.length > 1 ? asked[1] : "60x1"));
    early = plan;
    new Thread(plan::computed).start();
  }

  private static Trip trip(Planner planner, String what) {
    int cross = what.indexOf('x');
    return what.endsWith(".dawngauge")
        ? planner.store().open(Path.of(what)).get()
        : BenchTrip.of(
            Integer.parseInt(what.substring(0, cross)),
            Integer.parseInt(what.substring(cross + 1)));
  }

  /** What the toolkit starts. */
  public static final class Program extends Application {

    @Override
    public void start(Stage stage) throws Exception {
      if (asked[0].equals("bare")) {
        Scene scene = new Scene(new StackPane(new Label("one label")), 1280, 820);
        scene.getStylesheets().add(new PrimerLight().getUserAgentStylesheet());
        firstPulse(scene, "bare", Platform::exit);
        stage.setScene(scene);
        stage.show();
        return;
      }
      Planner planner = new Planner(SettingsFile.defaults(), List.of());
      Plan plan = Objects.requireNonNull(early);
      Trip trip = plan.trip();
      Path folder = Files.createTempDirectory("timing");
      UserFolder userFolder =
          new UserFolder(
              folder,
              Clock.systemUTC(),
              "1",
              run -> true,
              new FailureLog(folder, Clock.systemUTC()));
      userFolder.remember(state -> state.withCautionsSeen());
      if (asked[0].equals("first")) {
        Look.show(false);
        OpeningFrame.show(
            stage,
            trip,
            userFolder.state().window(),
            () -> {
              fill(stage, planner, userFolder, plan);
              firstPulse(stage.getScene(), "all figures", Platform::exit);
            });
        firstPulse(stage.getScene(), "frame", () -> {});
        return;
      }
      TripDocument document = fill(stage, planner, userFolder, plan);
      stage.show();
      Platform.runLater(
          () -> {
            if (asked[0].equals("edits")) {
              new Steps(
                      stage.getScene(),
                      i -> edit(document, trip, i),
                      () -> document.shown() == document.planned())
                  .run();
            } else {
              StopGridPane grid = (StopGridPane) stage.getScene().getRoot().lookup(".stop-grid");
              new Steps(stage.getScene(), step(asked[0], grid), () -> true).run();
            }
          });
    }

    private static TripDocument fill(
        Stage stage, Planner planner, UserFolder userFolder, Plan plan) {
      TripDocument document = new TripDocument(planner, plan, Optional.empty());
      document.shownProperty().addListener(change -> answering = System.nanoTime());
      new PlannerWindow(
          stage,
          planner,
          userFolder,
          none(WeatherAccess.class),
          document,
          none(FileAsker.class),
          false);
      document
          .shownProperty()
          .addListener(change -> answered += System.nanoTime() - answering); // after all others
      return document;
    }

    /** Scrolling, or going to the next stop or tire by keyboard. */
    private static IntConsumer step(String what, StopGridPane grid) {
      return switch (what) {
        case "scroll" -> i -> grid.scrollPart((i % 100) / 100.0);
        case "stops" -> i -> grid.choose((i + 1) % grid.stops());
        case "tires" -> i -> grid.goTo(4 + i % (grid.columnCount() - 6));
        default -> throw new IllegalArgumentException("edits, scroll, stops, tires: not " + what);
      };
    }

    /** A longer or shorter stay at the second stop: all after it changes. */
    private static void edit(TripDocument document, Trip trip, int i) {
      Stop second = trip.route().stops().get(1);
      Trip next =
          dawngauge.trip.RouteEdits.withStop(
              document.trip(), 1, second.withStay(Duration.ofMinutes(10 + i % 50)));
      document.edit(next);
      if (!document.trip().equals(next)) {
        System.err.println("The edit was refused: only a trip within the limits can be timed.");
        System.exit(1);
      }
    }

    private static <T> T none(Class<T> type) {
      return type.cast(
          Proxy.newProxyInstance(
              type.getClassLoader(),
              new Class<?>[] {type},
              (proxy, method, args) ->
                  method.getReturnType() == java.util.Optional.class
                      ? java.util.Optional.empty()
                      : method.getReturnType() == List.class
                          ? List.of()
                          : method.getReturnType() == boolean.class
                              ? (Object) false
                              : method.getReturnType() == java.time.Instant.class
                                  ? java.time.Instant.EPOCH
                                  : null));
    }

    private static void firstPulse(Scene scene, String what, Runnable after) {
      scene.addPostLayoutPulseListener(
          new Runnable() {
            private boolean told;

            @Override
            public void run() {
              if (!told) {
                told = true;
                System.out.printf(
                    Locale.ROOT,
                    "%s: first pulse after %d ms%n",
                    what,
                    System.currentTimeMillis()
                        - ManagementFactory.getRuntimeMXBean().getStartTime());
                after.run();
              }
            }
          });
    }
  }

  /** One step after another, each in the frame after the one before was shown. */
  private static final class Steps {
    private final Scene scene;
    private final IntConsumer step;
    private final BooleanSupplier told;
    private final List<Double> whole = new ArrayList<>();
    private final List<Double> work = new ArrayList<>();
    private final Runnable after = this::shown;
    private final Runnable before = this::begins;
    private int done;
    private long started;
    private long worked;
    private long pulse;

    Steps(Scene scene, IntConsumer step, BooleanSupplier told) {
      this.scene = scene;
      this.step = step;
      this.told = told;
      scene.addPostLayoutPulseListener(after);
      scene.addPreLayoutPulseListener(before);
    }

    void run() {
      answered = 0;
      started = System.nanoTime();
      step.accept(done);
      worked = System.nanoTime() - started - answered; // a step that waits shows within itself
      Platform.requestNextPulse();
    }

    private void begins() {
      pulse = System.nanoTime();
    }

    private void shown() {
      if (started == 0) {
        return;
      }
      long now = System.nanoTime();
      worked += now - pulse;
      if (!told.getAsBoolean()) {
        Platform.requestNextPulse();
        return;
      }
      if (done >= WARMING) {
        whole.add((now - started) / MILLION);
        work.add((worked + answered) / MILLION);
      }
      started = 0;
      done++;
      if (done < WARMING + TIMED) {
        Platform.runLater(this::run);
      } else {
        System.out.println(String.join(" ", asked) + ": " + told("to the end of the pulse", whole));
        System.out.println(String.join(" ", asked) + ": " + told("our work alone", work));
        Platform.exit();
      }
    }

    private static String told(String what, List<Double> figures) {
      double[] sorted = figures.stream().mapToDouble(Double::doubleValue).sorted().toArray();
      long over = Arrays.stream(sorted).filter(ms -> ms > 33).count();
      return String.format(
          Locale.ROOT,
          "%s: p50 %.1f ms, p99 %.1f ms, over 33 ms %.1f %%, n %d",
          what,
          sorted[sorted.length / 2],
          sorted[(int) (sorted.length * 0.99)],
          100.0 * over / sorted.length,
          sorted.length);
    }
  }
}

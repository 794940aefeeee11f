package dawngauge.ui;

import dawngauge.planner.FeedAccess;
import dawngauge.planner.Planner;
import dawngauge.planner.UserFolder;
import dawngauge.settings.FailureLog;
import dawngauge.settings.FeedSettings;
import dawngauge.settings.SettingsFile;
import dawngauge.trip.RouteEdits;
import dawngauge.trip.Stop;
import dawngauge.trip.Trip;
import dawngauge.ui.common.Tasks;
import dawngauge.ui.common.TripDocument;
import dawngauge.ui.route.StopGridPane;
import java.lang.reflect.Proxy;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Queue;
import java.util.Random;
import java.util.concurrent.ConcurrentLinkedQueue;
import javafx.animation.PauseTransition;
import javafx.application.Application;
import javafx.application.Platform;
import javafx.scene.Node;
import javafx.scene.control.Menu;
import javafx.scene.control.MenuBar;
import javafx.scene.control.MenuItem;
import javafx.stage.Stage;

/**
 * The window at work for minutes on end: scripted edits, undo, page changes, files opened, air
 * asked of a service that fails at times. Every hundredth state is saved and must be read back as
 * the same. Tells the memory that is left after collecting, once a minute; ends with 1 where
 * anything went wrong, or where the last third of the minutes holds over 10 % more than the third
 * before it. Its arguments: {@code MINUTES FILE}. Needs a display.
 */
public final class WindowSoak {

  private static final double MOST_GROWTH = 0.10;
  private static final javafx.util.Duration STEP = javafx.util.Duration.millis(60);

  private static String[] asked = {"10", "demo-data/spring-fleece-haul.dawngauge"};

  private WindowSoak() {}

  /** Runs and prints. */
  public static void main(String[] args) {
    if (args.length == asked.length) {
      asked = args.clone();
    }
    Application.launch(Program.class);
  }

  /** What the toolkit starts. */
  public static final class Program extends Application {

    private final Queue<String> wrong = new ConcurrentLinkedQueue<>();
    private final Random random = new Random(24);
    private final List<Double> megabytes = new ArrayList<>();
    private final Planner planner = new Planner(SettingsFile.defaults(), List.of());
    private final Path demo = Path.of(asked[1]);
    private final long end = System.nanoTime() + Duration.ofMinutes(minutes()).toNanos();
    private long minute = System.nanoTime();
    private int steps;
    private int saved;
    private Optional<Script> script = Optional.empty();

    private static long minutes() {
      return Long.parseLong(asked[0]);
    }

    /** What the steps work on. */
    private record Script(
        PlannerWindow window,
        TripDocument document,
        Stage stage,
        FlakyWeather weather,
        Path file) {}

    @Override
    public void start(Stage stage) throws Exception {
      Path folder = Files.createTempDirectory("soak");
      Trip trip = planner.store().open(demo).get();
      Instant leaves = trip.route().stops().get(0).leave().instant();
      FlakyWeather weather = new FlakyWeather(leaves.minus(Duration.ofDays(1)));
      Files.writeString(
          folder.resolve("feeds.properties"),
          "order = met\nmet = "
              + weather.address()
              + "\nreuseSeconds = 1\nrestSeconds = 5\nrefreshSeconds = 20\nretryPauseMillis = 100\n");
      Clock clock =
          Clock.offset(Clock.system(ZoneOffset.UTC), Duration.between(Instant.now(), leaves));
      FailureLog failures = new FailureLog(folder, clock);
      UserFolder userFolder = new UserFolder(folder, clock, "1", run -> true, failures);
      userFolder.remember(state -> state.withCautionsSeen().withContact("crew@example.org"));
      TripDocument document = new TripDocument(planner, trip);
      Path file = folder.resolve("haul.dawngauge");
      PlannerWindow window =
          new PlannerWindow(
              stage,
              planner,
              userFolder,
              new FeedAccess(
                  userFolder,
                  FeedSettings.of(folder),
                  folder.resolve("cache"),
                  "Dawngauge/soak",
                  clock),
              document,
              dropping(),
              false);
      Tasks.keepFailures(failure -> wrong.add("work: " + failure));
      Tasks.onUncaught(failure -> wrong.add("uncaught: " + failure));
      stage.show();
      script = Optional.of(new Script(window, document, stage, weather, file));
      next();
    }

    /** Drops what is not saved, says yes, names no file. */
    private static FileAsker dropping() {
      return (FileAsker)
          Proxy.newProxyInstance(
              FileAsker.class.getClassLoader(),
              new Class<?>[] {FileAsker.class},
              (proxy, method, args) ->
                  method.getReturnType() == FileAsker.Leave.class
                      ? FileAsker.Leave.DROP
                      : method.getReturnType() == boolean.class ? (Object) true : Optional.empty());
    }

    private void next() {
      PauseTransition pause = new PauseTransition(STEP);
      pause.setOnFinished(
          event -> {
            try {
              step(script.orElseThrow());
            } catch (RuntimeException failure) {
              wrong.add("step " + steps + ": " + failure);
            }
            if (System.nanoTime() < end) {
              next();
            } else {
              tell();
            }
          });
      pause.play();
    }

    private void step(Script on) {
      steps++;
      if (System.nanoTime() - minute > Duration.ofMinutes(1).toNanos()) {
        minute = System.nanoTime();
        measure();
      }
      if (steps % 100 == 0) {
        save(on);
      } else if (steps % 230 == 0) {
        on.window.open(demo);
      } else if (steps % 45 == 0) {
        choose(on.stage, "Weather", WeatherActions.GET);
      } else {
        small(on, random.nextInt(12));
      }
    }

    private void small(Script on, int which) {
      switch (which) {
        case 0 -> on.window.showRoute();
        case 1 -> on.window.showRig();
        case 2 -> on.window.showReadings();
        case 3 -> on.window.showReview();
        case 4 -> on.document.undo();
        case 5 -> on.document.redo();
        case 6 -> on.window.switchUnits();
        case 7 -> on.window.switchTheme();
        case 8 -> {
          on.window.showRoute();
          Node grid = on.stage.getScene().getRoot().lookup(".stop-grid");
          if (grid instanceof StopGridPane stops) {
            stops.choose(random.nextInt(stops.stops()));
          }
        }
        case 9 -> duplicateOrRemove(on.document);
        default -> stay(on.document);
      }
    }

    private void stay(TripDocument document) {
      int row = 1 + random.nextInt(document.trip().route().stops().size() - 2);
      Stop stop = document.trip().route().stops().get(row);
      document.edit(
          RouteEdits.withStop(
              document.trip(), row, stop.withStay(Duration.ofMinutes(10 + random.nextInt(50)))));
    }

    private void duplicateOrRemove(TripDocument document) {
      Trip trip = document.trip();
      int stops = trip.route().stops().size();
      int row = 1 + random.nextInt(stops - 2);
      document.edit(stops < 16 ? RouteEdits.duplicate(trip, row) : RouteEdits.remove(trip, row));
    }

    private void save(Script on) {
      Trip trip = on.document.trip();
      if (!on.window.saveTo(on.file)) {
        return; // times that run backwards are refused, with a word
      }
      saved++;
      if (!trip.equals(planner.store().open(on.file).valueOrNull())) {
        wrong.add("step " + steps + ": the file is read as another trip");
      }
    }

    private static void choose(Stage stage, String menuName, String itemName) {
      MenuBar bar = (MenuBar) stage.getScene().getRoot().lookup(".menu-bar");
      for (Menu menu : bar.getMenus()) {
        if (menu.getText().equals(menuName)) {
          menu.getItems().stream()
              .filter(item -> itemName.equals(item.getText()) && !item.isDisable())
              .forEach(MenuItem::fire);
        }
      }
    }

    private void measure() {
      for (int i = 0; i < 3; i++) {
        System.gc();
      }
      Runtime runtime = Runtime.getRuntime();
      double used = (runtime.totalMemory() - runtime.freeMemory()) / 1e6;
      megabytes.add(used);
      System.out.printf(
          Locale.ROOT,
          "minute %d: %.1f MB, %d steps, %d saved and read back, %d questions, %d wrong%n",
          megabytes.size(),
          used,
          steps,
          saved,
          script.orElseThrow().weather.asked(),
          wrong.size());
    }

    private void tell() {
      measure();
      script.orElseThrow().weather.close();
      wrong.stream().distinct().limit(20).forEach(System.out::println);
      int third = megabytes.size() / 3;
      double before = mean(megabytes.subList(third, 2 * third));
      double last = mean(megabytes.subList(megabytes.size() - third, megabytes.size()));
      boolean grows = third > 0 && last > before * (1 + MOST_GROWTH);
      System.out.printf(
          Locale.ROOT, "%.1f MB in the middle third, %.1f MB in the last%n", before, last);
      Platform.exit();
      System.exit(grows || !wrong.isEmpty() ? 1 : 0);
    }

    private static double mean(List<Double> figures) {
      return figures.stream().mapToDouble(Double::doubleValue).average().orElse(Double.NaN);
    }
  }
}

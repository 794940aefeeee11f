package dawngauge.ui;

import static org.assertj.core.api.Assertions.assertThat;

import dawngauge.ambient.AirSeries;
import dawngauge.ambient.AmbientNeeds;
import dawngauge.ambient.AmbientSource;
import dawngauge.planner.Planner;
import dawngauge.problem.Outcome;
import dawngauge.settings.SettingsFile;
import dawngauge.trip.RouteEdits;
import dawngauge.trip.Trip;
import dawngauge.ui.common.TripDocument;
import dawngauge.ui.route.StopGridPane;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CountDownLatch;
import java.util.stream.Stream;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import org.junit.jupiter.api.Test;

/** An edit changes the trip at once; its figures follow, and none of another trip stays. */
class BesideWindowTest extends WindowTest {

  /** Air that answers nothing, but not before it may; it may also go wrong. */
  private static final class HeldAir implements AmbientSource {
    private volatile CountDownLatch gate = new CountDownLatch(0);
    private volatile boolean wrong;

    @Override
    public Outcome<Map<AmbientNeeds.Need, AirSeries>> answer(AmbientNeeds needs) {
      try {
        gate.await();
      } catch (InterruptedException stopped) {
        throw new IllegalStateException(stopped);
      }
      if (wrong) {
        throw new IllegalStateException("planted");
      }
      return Outcome.of(Map.of());
    }
  }

  private final HeldAir air = new HeldAir();

  private OpenWindow opened() {
    return open(new Planner(SettingsFile.defaults(), List.of(air)), demo(), userFolder(1));
  }

  private static Trip longerStay(Trip trip, int minutes) {
    return RouteEdits.withStop(
        trip, 1, trip.route().stops().get(1).withStay(Duration.ofMinutes(minutes)));
  }

  /** Edits as a person does; nobody waits for the figures. */
  private static Trip edit(OpenWindow open, int minutes) {
    return OpenWindow.onToolkit(
        () -> {
          Trip next = longerStay(open.document.trip(), minutes);
          open.document.edit(next);
          return next;
        });
  }

  private static List<String> times(StopGridPane grid) {
    return OpenWindow.onToolkit(() -> grid.texts("time"));
  }

  /** What is said of forecasting; empty where nothing is. */
  private static String said(OpenWindow open) {
    return OpenWindow.onToolkit(
        () ->
            open.stage.getScene().getRoot().lookupAll(".derived").stream()
                .filter(node -> node.isVisible() && node instanceof HBox)
                .flatMap(node -> ((HBox) node).getChildren().stream())
                .flatMap(node -> node instanceof Label label ? Stream.of(label.getText()) : null)
                .filter(text -> text.startsWith("Forecasting"))
                .findFirst()
                .orElse(""));
  }

  @Test
  void theTripIsThereAtOnceAndItsFiguresFollow() {
    OpenWindow open = opened();
    StopGridPane grid = open.grid();
    List<String> before = times(grid);
    CountDownLatch gate = new CountDownLatch(1);
    air.gate = gate;
    Trip edited = edit(open, 95);
    assertThat(open.document.trip()).isEqualTo(edited);
    assertThat(open.onTitle()).startsWith("•");
    assertThat(times(grid)).isEqualTo(before);
    open.until("it says what it does", () -> said(open).equals("Forecasting …"));
    Trip newest = edit(open, 125);
    gate.countDown();
    open.until("the figures are those of the newest", () -> shows(open.document, newest));
    assertThat(times(grid)).isNotEqualTo(before).isEqualTo(times(open.grid()));
    assertThat(said(open)).isEmpty();
    OpenWindow.onToolkit(
        () -> {
          open.document.undo();
          open.document.undo();
          return true;
        });
    open.until("the figures are back", () -> times(grid).equals(before));
  }

  private static boolean shows(TripDocument document, Trip trip) {
    return document.shown().trip().equals(trip);
  }

  /** What asks for figures in between has those of the trip as it is. */
  @Test
  void whoAsksForFiguresWaitsForThem() {
    OpenWindow open = opened();
    Trip edited = edit(open, 95);
    assertThat(open.document.planned().trip()).isEqualTo(edited);
    assertThat(open.document.planned().advice()).isNotNull();
  }

  /** Another stop is another row: nothing of the old rows may stand there, even for a moment. */
  @Test
  void otherRowsAreShownWithTheEdit() {
    OpenWindow open = opened();
    Trip fewer =
        OpenWindow.onToolkit(
            () -> {
              open.document.edit(RouteEdits.remove(open.document.trip(), 2));
              return open.document.shown().trip();
            });
    assertThat(fewer.route().stops()).hasSize(demo().route().stops().size() - 1);
  }

  @Test
  void whereTheForecastGoesWrongNoOldFigureStands() {
    OpenWindow open = opened();
    StopGridPane grid = open.grid();
    air.wrong = true;
    Trip edited = edit(open, 95);
    open.until("it is said", () -> said(open).contains("planted"));
    assertThat(open.document.trip()).isEqualTo(edited);
    assertThat(open.document.planned().advice()).isNull();
    assertThat(open.document.planned().gaps()).anyMatch(gap -> gap.contains("Nothing is forecast"));
    assertThat(times(grid)).containsOnly("·");
    air.wrong = false;
    Trip next = edit(open, 125);
    open.until("the next edit is forecast", () -> shows(open.document, next));
    assertThat(open.document.planned().advice()).isNotNull();
    assertThat(said(open)).isEmpty();
  }

  /** An edit that waits for its figures takes the words about an earlier one away too. */
  @Test
  void whatIsSaidOfAForecastGoesWithTheNext() {
    OpenWindow open = opened();
    air.wrong = true;
    edit(open, 95);
    open.until("it is said", () -> said(open).contains("planted"));
    air.wrong = false;
    open.run(() -> open.document.edit(RouteEdits.remove(open.document.trip(), 2)));
    assertThat(open.document.shown().advice()).isNotNull();
    assertThat(said(open)).isEmpty();
  }

  @Test
  void aForecastCanBeStopped() {
    OpenWindow open = opened();
    CountDownLatch gate = new CountDownLatch(1);
    air.gate = gate;
    edit(open, 95);
    open.until("it says what it does", () -> said(open).equals("Forecasting …"));
    Button stop =
        OpenWindow.onToolkit(
            () ->
                open.stage.getScene().getRoot().lookupAll(".small-button").stream()
                    .map(Button.class::cast)
                    .filter(button -> "Stop: Forecasting".equals(button.getAccessibleText()))
                    .findFirst()
                    .orElseThrow());
    OpenWindow.onToolkit(
        () -> {
          stop.fire();
          return true;
        });
    assertThat(said(open)).contains("stopped");
    assertThat(open.document.planned().advice()).isNull();
    gate.countDown();
    Trip next = edit(open, 125);
    open.until("the next edit is forecast", () -> shows(open.document, next));
    assertThat(open.document.planned().advice()).isNotNull();
  }
}

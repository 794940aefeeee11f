package dawngauge.ui;

import dawngauge.settings.UserState;
import dawngauge.trip.Stop;
import dawngauge.trip.Trip;
import dawngauge.ui.common.Look;
import dawngauge.ui.common.Pulses;
import dawngauge.ui.common.Texts;
import javafx.scene.Scene;
import javafx.scene.control.Label;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import javafx.stage.Stage;
import org.jspecify.annotations.Nullable;

/** What the window shows until its first page is made: which trip it is, and its stops. */
final class OpeningFrame extends BorderPane {

  /** More names than on any screen. */
  private static final int MOST = 60;

  /**
   * A frame.
   *
   * @param trip the trip; null for none yet
   */
  private OpeningFrame(@Nullable Trip trip) {
    getStyleClass().add("planner");
    Label name = new Label(trip == null ? "" : Texts.shortened(trip.name()));
    name.getStyleClass().add("opening-name");
    HBox head = new HBox(name);
    head.getStyleClass().addAll("head", "opening-head");
    Label working = new Label(trip == null ? "" : "Working out the figures …");
    working.getStyleClass().add("lesser");
    VBox stops = new VBox(working);
    stops.getStyleClass().add("opening-stops");
    if (trip != null) {
      trip.route().stops().stream()
          .limit(MOST)
          .map(Stop::place)
          .map(place -> new Label(Texts.shortened(place)))
          .forEach(stops.getChildren()::add);
    }
    setTop(head);
    setCenter(stops);
  }

  /**
   * Shows a window with a frame, and has it filled once that is seen.
   *
   * @param stage the window
   * @param trip the trip; null for none yet
   * @param wanted where the window was, or should be
   * @param fill puts what belongs there in its place
   */
  static void show(Stage stage, @Nullable Trip trip, UserState.Window wanted, Runnable fill) {
    Scene scene = Opening.of(stage, new OpeningFrame(trip), wanted);
    Look.rule(scene);
    // The picture of one frame is on the screen before the next is laid out.
    Pulses.after(scene, () -> Pulses.after(scene, fill));
    stage.show();
  }
}

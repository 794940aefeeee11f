package dawngauge.ui.route;

import dawngauge.geo.LegGround;
import dawngauge.geo.PassNear;
import dawngauge.planner.Land;
import dawngauge.trip.Trip;
import dawngauge.ui.common.Tasks;
import java.util.List;
import java.util.Optional;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;

/** What the ground under a leg's straight line says: its heights, and the passes by it, to take. */
final class PassOffers extends VBox {

  /** More would be in the way of what is typed. */
  private static final int MOST = 4;

  private final EditedStop stop;
  private final Label ground = new Label();

  PassOffers(EditedStop stop) {
    super(4);
    this.stop = stop;
    ground.getStyleClass().add("lesser");
    ground.setWrapText(true);
    managedProperty().bind(visibleProperty());
    setVisible(false);
  }

  /** Asks for the ground of the leg as it is now. */
  void refresh() {
    if (!stop.hasLeg()) {
      setVisible(false);
      return;
    }
    Trip asked = stop.trip();
    int leg = stop.index();
    Tasks.compute(
        () -> Land.of(asked, leg),
        found -> {
          if (asked.equals(stop.trip())) {
            show(found);
          }
        });
  }

  private void show(Optional<LegGround> found) {
    getChildren().clear();
    setVisible(found.isPresent());
    found.ifPresent(
        leg -> {
          ground.setText(
              "Ground under the straight line: about "
                  + stop.units().format(leg.lowest().elevation())
                  + " to "
                  + stop.units().format(leg.highest().elevation())
                  + ", an estimate; the road may go round.");
          getChildren().add(ground);
          List<PassNear> passes = leg.passes();
          passes.subList(0, Math.min(MOST, passes.size())).forEach(this::offer);
        });
  }

  private void offer(PassNear pass) {
    Button button = new Button(pass.question(stop.units()));
    button.getStyleClass().addAll("small-button", "pass-offer");
    button.setMnemonicParsing(false);
    button.setWrapText(true);
    button.setOnAction(event -> stop.document().edit(Land.over(stop.trip(), stop.index(), pass)));
    getChildren().add(button);
  }
}

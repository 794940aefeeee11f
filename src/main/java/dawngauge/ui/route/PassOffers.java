package dawngauge.ui.route;

import dawngauge.geo.Coordinate;
import dawngauge.geo.LegGround;
import dawngauge.geo.PassNear;
import dawngauge.planner.Land;
import dawngauge.trip.LegEdits;
import dawngauge.ui.common.Tasks;
import java.util.Optional;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;

/** What the ground under a leg's straight line says: its heights, and the passes by it, to take. */
final class PassOffers extends VBox {

  /** More would be in the way of what is typed. */
  private static final int MOST = 4;

  private record Ends(Coordinate from, Coordinate to) {}

  private final EditedStop stop;
  private final Label words = new Label();
  private @Nullable Ends asked;
  private Optional<LegGround> ground = Optional.empty();

  PassOffers(EditedStop stop) {
    super(4);
    this.stop = stop;
    words.getStyleClass().add("lesser");
    words.setWrapText(true);
    managedProperty().bind(visibleProperty());
    setVisible(false);
  }

  /** Shows what is known of the leg as it is now; asks for its ground where its ends are others. */
  void refresh() {
    Ends ends = ends();
    if (ends != null && !ends.equals(asked)) {
      ground = Optional.empty();
      Tasks.compute(() -> LegGround.between(ends.from, ends.to), found -> take(ends, found));
    } else if (ends == null) {
      ground = Optional.empty();
    }
    asked = ends;
    show();
  }

  private @Nullable Ends ends() {
    Coordinate from = stop.hasLeg() ? stop.stop().coordinate() : null;
    Coordinate to = stop.hasLeg() ? stop.next().coordinate() : null;
    return from == null || to == null || from.equals(to) ? null : new Ends(from, to);
  }

  private void take(Ends ends, Optional<LegGround> found) {
    if (ends.equals(asked)) {
      ground = found;
      show();
    }
  }

  private void show() {
    getChildren().clear();
    LegGround known = stop.hasLeg() ? ground.orElse(null) : null;
    setVisible(known != null);
    if (known != null) {
      words.setText(
          "Ground under the straight line: about "
              + stop.units().format(known.lowest().elevation())
              + " to "
              + stop.units().format(known.highest().elevation())
              + ", an estimate; the road may go round.");
      getChildren().add(words);
      known.passes().stream()
          .filter(pass -> !LegEdits.isOver(stop.leg(), pass))
          .limit(MOST)
          .forEach(this::offer);
    }
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

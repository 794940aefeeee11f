package dawngauge.ui.route;

import dawngauge.geo.Coordinate;
import dawngauge.geo.LegGround;
import dawngauge.geo.PassNear;
import dawngauge.planner.Land;
import dawngauge.trip.Leg;
import dawngauge.trip.Stop;
import dawngauge.trip.TrackMark;
import dawngauge.ui.common.Tasks;
import dawngauge.ui.common.Texts;
import java.util.List;
import java.util.Optional;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;

/** What the ground of a leg says: its heights, and the passes by it, to take. */
final class PassOffers extends VBox {

  /** More would be in the way of what is typed. */
  private static final int MOST = 4;

  /** What the ground of a leg hangs on. */
  private record Way(@Nullable Coordinate from, @Nullable Coordinate to, List<TrackMark> track) {}

  private final EditedStop stop;
  private final Label words = new Label();
  private @Nullable Way asked;
  private Optional<LegGround> ground = Optional.empty();

  PassOffers(EditedStop stop) {
    super(4);
    this.stop = stop;
    words.getStyleClass().add("lesser");
    words.setWrapText(true);
    managedProperty().bind(visibleProperty());
    setVisible(false);
  }

  /** Shows what is known of the leg as it is now; asks for its ground where its way is another. */
  void refresh() {
    Way way = way();
    if (way == null) {
      ground = Optional.empty();
    } else if (!way.equals(asked)) {
      ground = Optional.empty();
      Stop from = stop.stop();
      Leg leg = stop.leg();
      Stop to = stop.next();
      Tasks.compute(
          () -> Land.under(from, leg, to), found -> take(way, found), wrong -> failed(way, wrong));
    }
    asked = way;
    show();
  }

  private @Nullable Way way() {
    return stop.hasLeg()
        ? new Way(stop.stop().coordinate(), stop.next().coordinate(), stop.leg().track())
        : null;
  }

  private void take(Way way, Optional<LegGround> found) {
    if (way.equals(asked)) {
      ground = found;
      show();
    }
  }

  private void failed(Way way, RuntimeException wrong) {
    if (way.equals(asked)) {
      getChildren().setAll(words);
      words.setText(Texts.fault("Looking at the ground of the leg", wrong));
      setVisible(true);
    }
  }

  private void show() {
    getChildren().clear();
    LegGround known = stop.hasLeg() ? ground.orElse(null) : null;
    setVisible(known != null);
    if (known != null) {
      words.setText(words(known));
      getChildren().add(words);
      Land.offered(known, stop.leg()).passes().stream().limit(MOST).forEach(this::offer);
    }
  }

  private String words(LegGround known) {
    String lowest = stop.units().format(known.lowest().elevation());
    String highest = stop.units().format(known.highest().elevation());
    if (known.under() == LegGround.Under.LINE) {
      return "Ground under the straight line: about "
          + lowest
          + " to "
          + highest
          + ", an estimate; the road may go round.";
    }
    return known.estimated()
        ? "Ground under the track: about " + lowest + " to " + highest + ", an estimate."
        : "Ground by the track's elevations: " + lowest + " to " + highest + ".";
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

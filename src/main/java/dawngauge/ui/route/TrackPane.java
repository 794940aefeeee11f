package dawngauge.ui.route;

import dawngauge.geo.Spot;
import dawngauge.geo.TrackLine;
import dawngauge.problem.Problem;
import dawngauge.quantity.Distance;
import dawngauge.trip.RouteOfTrack;
import dawngauge.ui.common.Tasks;
import dawngauge.ui.common.Texts;
import dawngauge.ui.common.TripDocument;
import java.util.ArrayList;
import java.util.List;
import javafx.scene.control.Button;
import javafx.scene.control.CheckBox;
import javafx.scene.control.ChoiceBox;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** A route from somebody else's file: which line of it, and which of its points become stops. */
public final class TrackPane extends BorderPane {

  private final TripDocument document;
  private final Runnable done;
  private final ChoiceBox<String> which = new ChoiceBox<>();
  private final VBox points = new VBox(4);
  private final Label state = new Label();
  private final Label left = new Label();
  private final Button replace = new Button("Make this the route");
  private List<TrackLine> lines = List.of();
  private List<Problem> ofFile = List.of();
  private List<Spot> spots = List.of();
  private List<TrackLine.Offer> offers = List.of();

  /**
   * A pane without a file.
   *
   * @param document where the route goes
   * @param done told when the pane is no longer wanted
   */
  public TrackPane(TripDocument document, Runnable done) {
    this.document = document;
    this.done = done;
    getStyleClass().add("place-list");
    Label title = new Label("A route from a file");
    title.getStyleClass().add("chosen-stop");
    which.setAccessibleText("Which line of the file");
    which.setOnAction(event -> offer());
    HBox head = new HBox(10, title, which);
    head.getStyleClass().add("bar");
    left.getStyleClass().addAll("lesser", "left-out");
    left.setWrapText(true);
    left.managedProperty().bind(left.visibleProperty());
    points.getStyleClass().add("edited-rows");
    ScrollPane scroll = new ScrollPane(new VBox(left, points));
    scroll.setFitToWidth(true);
    Button close = new Button("Close");
    close.setCancelButton(true);
    close.setOnAction(event -> done.run());
    replace.setOnAction(event -> put());
    close.setMinWidth(USE_PREF_SIZE);
    replace.setMinWidth(USE_PREF_SIZE);
    state.getStyleClass().add("lesser");
    state.setWrapText(true);
    state.setMaxWidth(Double.MAX_VALUE);
    HBox.setHgrow(state, Priority.ALWAYS);
    HBox bar = new HBox(8, state, close, replace);
    bar.getStyleClass().add("bar");
    setTop(head);
    setCenter(scroll);
    setBottom(bar);
    document.unitsProperty().addListener(change -> offer());
  }

  /** Shows the lines of a file, and what was left out of it. */
  public void open(List<TrackLine> found, List<Problem> leftOut) {
    lines = found;
    ofFile = leftOut;
    which.getItems().setAll(found.stream().map(this::named).toList());
    which.getSelectionModel().select(0);
    offer();
    which.requestFocus();
  }

  private String named(TrackLine line) {
    double[] meters = line.meters();
    return Texts.shortened(line.words())
        + ", "
        + line.points().size()
        + " points, "
        + document.units().format(new Distance(meters[meters.length - 1]));
  }

  private void offer() {
    int index = which.getSelectionModel().getSelectedIndex();
    points.getChildren().clear();
    if (index < 0 || index >= lines.size()) {
      return;
    }
    TrackLine line = lines.get(index);
    List<Problem> told = new ArrayList<>(ofFile);
    told.addAll(line.told());
    left.setText(String.join("\n", told.stream().map(Problem::message).toList()));
    left.setVisible(!told.isEmpty());
    offers = line.offers();
    spots = List.of();
    tell();
    List<TrackLine.Offer> asked = offers;
    Tasks.compute(
        () -> document.planner().places().spots(line, asked),
        found -> {
          if (asked.equals(offers)) {
            spots = found;
            show();
          }
        },
        wrong -> {
          if (asked.equals(offers)) {
            left.setText(Texts.fault("Naming the places along the line", wrong));
            left.setVisible(true);
          }
        });
  }

  private void show() {
    points.getChildren().clear();
    for (int i = 0; i < offers.size(); i++) {
      TrackLine.Offer offer = offers.get(i);
      CheckBox box =
          new CheckBox(
              document.units().format(new Distance(offer.meters()))
                  + " · "
                  + Texts.shortened(spots.get(i).name()));
      box.setSelected(offer.usual());
      boolean end = i == 0 || i == offers.size() - 1;
      box.setDisable(end);
      box.getStyleClass().add("fixed-choice");
      box.setMnemonicParsing(false);
      box.setOnAction(event -> tell());
      points.getChildren().add(box);
    }
    tell();
  }

  private List<RouteOfTrack.OnLine> chosen() {
    List<RouteOfTrack.OnLine> chosen = new ArrayList<>();
    for (int i = 0; i < spots.size() && i < points.getChildren().size(); i++) {
      if (points.getChildren().get(i) instanceof CheckBox box && box.isSelected()) {
        chosen.add(new RouteOfTrack.OnLine(offers.get(i).index(), spots.get(i)));
      }
    }
    return chosen;
  }

  private void tell() {
    int count = chosen().size();
    replace.setDisable(count < 2);
    state.setText(
        count
            + " stops. Making this the route removes the stops that are there; undo takes it back.");
  }

  private void put() {
    List<RouteOfTrack.OnLine> stops = chosen();
    int index = which.getSelectionModel().getSelectedIndex();
    if (stops.size() > 1 && index >= 0) {
      document.edit(
          document
              .planner()
              .temperatures()
              .withoutGaps(RouteOfTrack.replace(document.trip(), lines.get(index), stops)));
      done.run();
    }
  }
}

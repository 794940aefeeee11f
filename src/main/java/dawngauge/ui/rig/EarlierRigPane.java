package dawngauge.ui.rig;

import dawngauge.ledger.RigChanges;
import dawngauge.planner.Plan;
import dawngauge.ui.common.TripDocument;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;

/** The rig beside the same rig on an earlier trip; follows every edit. */
final class EarlierRigPane extends VBox {

  private static final double MOST_HEIGHT = 240;

  private final TripDocument document;
  private final Label summary = new Label();
  private final GridPane grid = new GridPane();
  private @Nullable Plan earlier;

  /**
   * A pane that is not seen until a trip is compared.
   *
   * @param document the trip of this rig
   * @param another asks for another trip to compare with
   */
  EarlierRigPane(TripDocument document, Runnable another) {
    this.document = document;
    summary.getStyleClass().add("rig-heading");
    summary.setWrapText(true);
    Button other = new Button("Another trip…");
    other.setOnAction(event -> another.run());
    Button close = new Button("Close");
    close.setAccessibleText("Close the comparison with an earlier trip");
    close.setOnAction(event -> show(null));
    for (Button button : new Button[] {other, close}) {
      button.getStyleClass().add("small-button");
      button.setMinWidth(USE_PREF_SIZE);
    }
    FlowPane head = new FlowPane(10, 4, summary, other, close);
    head.setAlignment(Pos.CENTER_LEFT);
    grid.setHgap(18);
    grid.setVgap(2);
    grid.getStyleClass().add("earlier-grid");
    ScrollPane scroll = new ScrollPane(grid);
    scroll.setFitToWidth(true);
    scroll.setMaxHeight(MOST_HEIGHT);
    scroll.getStyleClass().add("page-scroll");
    scroll.setAccessibleText("What differs from the earlier trip");
    getStyleClass().add("earlier-rig");
    getChildren().addAll(head, scroll);
    managedProperty().bind(visibleProperty());
    setVisible(false);
    document.shownProperty().addListener(change -> fill());
    document.unitsProperty().addListener(change -> fill());
  }

  /** Shows the rig beside that of an earlier trip; null closes the comparison. */
  void show(@Nullable Plan other) {
    earlier = other;
    setVisible(other != null);
    fill();
  }

  private void fill() {
    Plan was = earlier;
    grid.getChildren().clear();
    if (was == null) {
      return;
    }
    RigChanges changes =
        RigChanges.of(
            was.trip(),
            was.advice(),
            document.trip(),
            document.planned().advice(),
            document.units());
    summary.setText(changes.summary());
    int row = 0;
    if (!changes.lines().isEmpty()) {
      grid.addRow(row++, lesser(""), lesser(""), lesser("then"), lesser("now"));
    }
    for (RigChanges.Line line : changes.lines()) {
      grid.addRow(
          row++, text(line.part()), lesser(line.what()), text(line.then()), text(line.now()));
    }
  }

  private static Label text(String words) {
    Label label = new Label(words);
    label.setWrapText(true);
    label.setMinHeight(USE_PREF_SIZE);
    return label;
  }

  private static Label lesser(String words) {
    Label label = text(words);
    label.getStyleClass().add("lesser");
    return label;
  }
}

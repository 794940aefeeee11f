package dawngauge.ui.route;

import dawngauge.ledger.Found;
import dawngauge.ledger.StopGrid;
import java.util.HashSet;
import java.util.List;
import java.util.function.Supplier;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.HBox;

/**
 * Looks for stops and tires: the others are dimmed, Enter goes to the next, with Shift to the one
 * before, Escape ends it.
 */
final class FindBar extends HBox {

  private static final String NAME = "Find a stop or tire";

  private final StopGridPane grid;
  private final TextField field = new TextField();
  private final Label said = new Label();
  private Found found = new Found(List.of(), List.of());
  private Supplier<Found> search = () -> found;
  private int at = -1;

  /**
   * A bar that is not seen until it is asked for.
   *
   * @param ended told that the search ended
   */
  FindBar(StopGridPane grid, Runnable ended) {
    super(8);
    this.grid = grid;
    getStyleClass().add("find-bar");
    field.setPromptText(NAME);
    field.setAccessibleText(NAME);
    field.setPrefColumnCount(18);
    said.getStyleClass().add("lesser");
    said.setLabelFor(field);
    getChildren().addAll(field, said);
    managedProperty().bind(visibleProperty());
    setVisible(false);
    field.textProperty().addListener(change -> look());
    addEventFilter(
        KeyEvent.KEY_PRESSED,
        event -> {
          if (event.getCode() == KeyCode.ENTER) {
            go(event.isShiftDown() ? -1 : 1);
          } else if (event.getCode() == KeyCode.ESCAPE) {
            setVisible(false);
            ended.run();
          } else {
            return;
          }
          event.consume();
        });
  }

  /** Begins a search, by what the grid shows at each time. */
  void open(Supplier<StopGrid> shown) {
    search = () -> Found.in(shown.get(), field.getText());
    setVisible(true);
    field.requestFocus();
    field.selectAll();
    look();
  }

  private void look() {
    found = search.get();
    at = -1;
    said.setText(field.getText().isBlank() ? "" : found.words() + "; Enter goes on");
    grid.brighten(new HashSet<>(found.stops()));
  }

  /** Goes on among what is found: stops first, then tires. */
  private void go(int by) {
    found = search.get();
    if (found.count() == 0) {
      return;
    }
    at = Math.floorMod(at < 0 && by < 0 ? -1 : at + by, found.count());
    if (at < found.stops().size()) {
      grid.choose(found.stops().get(at));
    } else {
      grid.goToTire(found.tires().get(at - found.stops().size()));
    }
  }
}

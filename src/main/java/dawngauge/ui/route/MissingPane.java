package dawngauge.ui.route;

import java.util.List;
import javafx.scene.control.Label;
import javafx.scene.control.TitledPane;

/** What is missing or assumed, folded: the first of it is named, and how much there is. */
final class MissingPane extends TitledPane {

  private final Label all = new Label();

  MissingPane() {
    getStyleClass().add("missing");
    managedProperty().bind(visibleProperty());
    setExpanded(false);
    setMinWidth(0); // a long first sentence is cut short, and pushes nothing aside
    setPrefWidth(0);
    setMaxWidth(Double.MAX_VALUE);
    setAnimated(false);
    all.setWrapText(true);
    setContent(all);
  }

  /** Shows sentences; none at all hides it. */
  void show(List<String> sentences) {
    setVisible(!sentences.isEmpty());
    if (!sentences.isEmpty()) {
      int count = sentences.size();
      setText(
          "Missing or assumed" + (count == 1 ? "" : " (" + count + ")") + ": " + sentences.get(0));
    }
    all.setText(String.join("\n", sentences));
  }
}

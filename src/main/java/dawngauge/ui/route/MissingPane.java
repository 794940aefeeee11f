package dawngauge.ui.route;

import java.util.List;
import javafx.scene.control.Label;
import javafx.scene.control.TitledPane;

/** What is missing or assumed, folded: the first of it is named, and how much there is. */
final class MissingPane extends TitledPane {

  /** More of the first sentence is not seen on any screen. */
  private static final int LONGEST = 300;

  private final Label all = new Label();
  private List<String> told = List.of();

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
    setVisible(false);
    expandedProperty().addListener(change -> write());
  }

  /** Shows sentences; none at all hides it. */
  void show(List<String> sentences) {
    if (sentences.equals(told)) {
      return;
    }
    told = List.copyOf(sentences);
    setVisible(!told.isEmpty());
    if (!told.isEmpty()) {
      int count = told.size();
      String first =
          "Missing or assumed" + (count == 1 ? "" : " (" + count + ")") + ": " + told.get(0);
      setText(first.substring(0, Math.min(LONGEST, first.length())));
    }
    write();
  }

  /** A long text takes long to lay out, also where it is folded away. */
  private void write() {
    all.setText(isExpanded() ? String.join("\n", told) : "");
  }
}

package dawngauge.ui.rig;

import dawngauge.ui.common.PageDrafts;
import dawngauge.ui.fields.FormFields;
import java.util.Set;
import java.util.function.Supplier;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** A part under its heading that folds away; what is in it is made when it is first unfolded. */
final class Fold extends VBox {

  private final ToggleButton toggle = new ToggleButton();
  private final Supplier<? extends Node> content;
  private final String key;

  /**
   * A fold.
   *
   * @param book takes what follows the trip
   * @param open keys of what is unfolded; it follows
   * @param key by which it stays unfolded where the page is laid out anew
   * @param title its heading
   * @param summary what is in it, seen where it is folded
   * @param content makes what is in it
   * @param buttons at the end of its heading
   */
  Fold(
      FormFields book,
      Set<String> open,
      String key,
      Supplier<String> title,
      Supplier<String> summary,
      Supplier<? extends Node> content,
      Node... buttons) {
    this.key = key;
    this.content = content;
    PageDrafts.mark(this, key);
    getStyleClass().add("rig-axle");
    toggle.getStyleClass().add("rig-fold");
    toggle.setMinWidth(USE_PREF_SIZE);
    setMinWidth(0);
    Label few = new Label();
    few.getStyleClass().addAll("lesser", "fold-summary");
    few.setMinWidth(0);
    few.setMaxWidth(Double.MAX_VALUE);
    HBox.setHgrow(few, Priority.ALWAYS);
    HBox head = new HBox(8, toggle, few);
    head.getChildren().addAll(buttons);
    head.setAlignment(Pos.CENTER_LEFT);
    head.getStyleClass().add("rig-subheading");
    getChildren().add(head);
    book.onRefresh(
        () -> {
          boolean unfolded = toggle.isSelected();
          toggle.setText((unfolded ? "▾ " : "▸ ") + title.get());
          toggle.setAccessibleText(title.get() + (unfolded ? ", unfolded" : ", folded"));
          few.setText(unfolded ? "" : summary.get());
        });
    toggle
        .selectedProperty()
        .addListener(
            (property, was, is) -> {
              if (is) {
                open.add(key);
              } else {
                open.remove(key);
              }
              fill();
              book.refresh();
            });
    toggle.setSelected(open.contains(key));
  }

  /** By which it stays unfolded. */
  String key() {
    return key;
  }

  /** Unfolds it. */
  void unfold() {
    toggle.setSelected(true);
  }

  private void fill() {
    if (toggle.isSelected() && getChildren().size() == 1) {
      getChildren().add(content.get());
    } else if (getChildren().size() > 1) {
      getChildren().get(1).setVisible(toggle.isSelected());
      getChildren().get(1).setManaged(toggle.isSelected());
    }
  }
}

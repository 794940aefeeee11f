package dawngauge.ui.route;

import dawngauge.problem.Problem;
import dawngauge.quantity.Entered;
import dawngauge.ui.common.FigureField;
import dawngauge.ui.common.Texts;
import java.util.ArrayList;
import java.util.List;
import java.util.function.BooleanSupplier;
import java.util.function.Function;
import java.util.function.Supplier;
import javafx.geometry.Insets;
import javafx.scene.Node;
import javafx.scene.control.ChoiceBox;
import javafx.scene.control.Label;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Priority;
import javafx.util.StringConverter;
import org.jspecify.annotations.Nullable;

/**
 * Labels and fields in two columns. They stay while the figures behind them change, so that focus,
 * drafts and pressed buttons stay too.
 */
class EditorGrid extends GridPane {

  private static final double LABELS = 116;
  private static final double GAP = 5;
  private static final int LONGEST_NOTE = 400;

  private final List<Runnable> refreshers = new ArrayList<>();
  private boolean filling;

  EditorGrid() {
    getStyleClass().add("editor-grid");
    ColumnConstraints labels = new ColumnConstraints(LABELS, LABELS, LABELS);
    ColumnConstraints fields = new ColumnConstraints();
    fields.setHgrow(Priority.ALWAYS);
    fields.setMinWidth(0);
    getColumnConstraints().addAll(labels, fields);
  }

  /** Shows the trip as it is now. */
  void refresh() {
    filling = true;
    refreshers.forEach(Runnable::run);
    filling = false;
  }

  /** Whether fields are being filled: what changes then is no edit. */
  boolean filling() {
    return filling;
  }

  final void onRefresh(Runnable refresher) {
    refreshers.add(refresher);
  }

  /** A heading over both columns. */
  final void heading(Supplier<String> text) {
    Label label = new Label();
    label.getStyleClass().add("editor-heading");
    label.setMaxWidth(Double.MAX_VALUE);
    onRefresh(() -> label.setText(Texts.shortened(text.get())));
    wide(label);
  }

  /** A lesser line below the field before it; gone where it is empty. */
  final void note(Supplier<String> text) {
    note("lesser", 1, text);
  }

  /** A lesser line over both columns; gone where it is empty. */
  final void wideNote(Supplier<String> text) {
    note("lesser", 0, text);
  }

  /** What must be said of the field before it, as by the check of what is typed there. */
  final void findings(Supplier<List<Problem>> findings) {
    note("field-note", 1, () -> texts(findings.get()));
  }

  /** The same over both columns. */
  final void wideFindings(Supplier<List<Problem>> findings) {
    note("field-note", 0, () -> texts(findings.get()));
  }

  private static String texts(List<Problem> problems) {
    return String.join("\n", problems.stream().map(Problem::text).toList());
  }

  private void note(String style, int column, Supplier<String> text) {
    Label label = new Label();
    label.getStyleClass().add(style);
    label.setWrapText(true);
    label.managedProperty().bind(label.visibleProperty());
    onRefresh(
        () -> {
          label.setText(Texts.shortened(text.get(), LONGEST_NOTE));
          label.setVisible(!label.getText().isEmpty());
        });
    place(label);
    add(label, column, getRowCount(), 2 - column, 1);
  }

  /** The gap goes with the node: where that is gone, there is none. */
  private static void place(Node node) {
    setMargin(node, new Insets(GAP, 0, 0, 0));
  }

  /** A node over both columns. */
  final void wide(Node node) {
    place(node);
    add(node, 0, getRowCount(), 2, 1);
  }

  /** A label and what stands beside it. */
  final Label row(Supplier<String> name, Node beside) {
    Label label = new Label();
    label.setLabelFor(beside instanceof FigureField<?> field ? field.field() : beside);
    label.setWrapText(true);
    onRefresh(() -> label.setText(name.get()));
    place(label);
    place(beside);
    addRow(getRowCount(), label, beside);
    return label;
  }

  /** A label and a field that follows the trip. */
  final <T> FigureField<T> field(
      Supplier<String> name, FigureField<T> field, Supplier<String> shown) {
    row(name, field);
    onRefresh(() -> field.show(shown.get()));
    return field;
  }

  /** Has nodes gone where there is nothing to type. */
  final void onlyWhere(BooleanSupplier told, Node... nodes) {
    for (Node node : nodes) {
      node.managedProperty().bind(node.visibleProperty());
      onRefresh(() -> node.setVisible(told.getAsBoolean()));
    }
  }

  /** A label and a choice that follows the trip. */
  final <T> ChoiceBox<T> choice(
      String label, String spoken, List<T> items, Function<T, String> word) {
    ChoiceBox<T> box = new ChoiceBox<>();
    box.getItems().setAll(items);
    box.setAccessibleText(spoken);
    box.setConverter(
        new StringConverter<>() {
          @Override
          public String toString(@Nullable T item) {
            return item == null ? "" : word.apply(item);
          }

          @Override
          public T fromString(String text) {
            throw new UnsupportedOperationException("a choice is not typed");
          }
        });
    row(() -> label, box);
    return box;
  }

  /** A figure as it was typed, or nothing. */
  static String text(@Nullable Entered<?> typed) {
    return typed == null ? "" : typed.text();
  }
}

package dawngauge.ui.common;

import dawngauge.problem.Outcome;
import java.text.DecimalFormatSymbols;
import java.util.Locale;
import java.util.function.Consumer;
import java.util.function.Function;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;

/**
 * A field that keeps what is typed until it can be taken: the trip keeps its last valid figure, the
 * draft stays with its error below it. Enter or leaving the field finishes an edit, Escape drops
 * the draft.
 *
 * @param <T> what is typed
 */
public final class FigureField<T> extends VBox {

  private final TextField field = new TextField();
  private final Label error = new Label();
  private final Function<String, Outcome<T>> parser;
  private final Consumer<T> taker;
  private final String name;
  private String valid = "";

  /**
   * A field.
   *
   * @param name what is typed, read out and shown as prompt
   * @param parser reads a text
   * @param taker takes a finished, valid figure
   */
  public FigureField(String name, Function<String, Outcome<T>> parser, Consumer<T> taker) {
    this.name = name;
    this.parser = parser;
    this.taker = taker;
    getStyleClass().add("figure-field");
    field.setAccessibleText(name);
    error.getStyleClass().add("field-error");
    error.setWrapText(true);
    error.managedProperty().bind(error.visibleProperty());
    error.setVisible(false);
    getChildren().addAll(field, error);
    field.setOnAction(event -> finish());
    field
        .focusedProperty()
        .addListener(
            (property, was, is) -> {
              if (!is) {
                finish();
              }
            });
    field.setOnKeyPressed(
        event -> {
          if (event.getCode() == KeyCode.ESCAPE) {
            show(valid);
            event.consume();
          }
        });
  }

  /** What is typed here. */
  public String name() {
    return name;
  }

  /** What is typed but could not be taken, or null. */
  public @Nullable String draft() {
    String text = field.getText().strip();
    return text.equals(valid) || parser.apply(withPoint(text)).hasValue() ? null : text;
  }

  /** Shows a draft again, with its error. */
  public void restore(@Nullable String draft) {
    if (draft != null) {
      field.setText(draft);
      finish();
    }
  }

  /** The text field itself. */
  public TextField field() {
    return field;
  }

  /** Shows the valid text. */
  public void show(String text) {
    valid = text;
    field.setText(text);
    error.setVisible(false);
  }

  private void finish() {
    String text = field.getText().strip();
    if (text.equals(valid)) {
      error.setVisible(false);
      return;
    }
    Outcome<T> outcome = parser.apply(withPoint(text));
    T value = outcome.valueOrNull();
    if (value == null) {
      String last = valid.isEmpty() ? "nothing so far" : valid;
      error.setText(outcome.problems().get(0).text() + " (last valid: " + last + ")");
      error.setVisible(true);
      return;
    }
    error.setVisible(false);
    valid = text;
    taker.accept(value);
  }

  /** Where the system writes a decimal comma, one between digits is taken as the point. */
  private static String withPoint(String text) {
    boolean comma =
        DecimalFormatSymbols.getInstance(Locale.getDefault(Locale.Category.FORMAT))
                .getDecimalSeparator()
            == ',';
    return comma ? text.replaceAll("(?<=\\d),(?=\\d)", ".") : text;
  }
}

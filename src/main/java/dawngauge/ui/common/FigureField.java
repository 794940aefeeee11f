package dawngauge.ui.common;

import dawngauge.problem.Outcome;
import dawngauge.problem.Problem;
import dawngauge.problem.ProblemCode;
import dawngauge.quantity.UnitSystem;
import java.text.DecimalFormatSymbols;
import java.util.Locale;
import java.util.function.Consumer;
import java.util.function.Function;
import javafx.beans.binding.Bindings;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;

/**
 * A field that keeps what is typed until it can be taken: the trip keeps its last valid figure, the
 * draft stays with its error below it. Enter or leaving the field finishes an edit, Escape drops
 * the draft. A draft is never overwritten by what the trip shows meanwhile.
 *
 * @param <T> what is typed
 */
public final class FigureField<T> extends VBox {

  private static final int LONGEST_MESSAGE = 320;

  private final TextField field = new TextField();
  private final Label message = new Label();
  private final Function<String, Outcome<T>> parser;
  private final Consumer<T> taker;
  private String name;
  private String valid = "";

  /** The valid text as the field shows it, which has no line breaks. */
  private String shown = "";

  private boolean open = true;
  private boolean confirms;

  /** Whether something was typed since the trip's text was shown. */
  private boolean touched;

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
    message.getStyleClass().add("field-error");
    message.setWrapText(true);
    message.setLabelFor(field);
    message.managedProperty().bind(message.visibleProperty());
    message.setVisible(false);
    getChildren().addAll(field, message);
    field.setOnAction(event -> entered());
    field.textProperty().addListener(change -> touched = touched || !field.getText().equals(shown));
    field
        .focusedProperty()
        .addListener(
            (property, was, is) -> {
              if (!is) {
                finish();
              }
            });
    field.setOnKeyPressed(this::keyed);
  }

  /** Takes what is typed anew as it stood there too, as for an estimate that is found right. */
  public FigureField<T> confirming() {
    confirms = true;
    return this;
  }

  private void entered() {
    boolean same = open && draft() == null && touched && !text().isEmpty();
    T value = confirms && same ? parser.apply(typed()).valueOrNull() : null;
    finish();
    if (value != null) {
      touched = false;
      taker.accept(value);
    }
  }

  private void keyed(KeyEvent event) {
    if (event.getCode() == KeyCode.ESCAPE && draft() != null) {
      drop();
      event.consume();
    }
  }

  /** What is typed here. */
  public String name() {
    return name;
  }

  /** Names what is typed here, where that changes with what stands around it. */
  public void named(String other) {
    name = other;
    field.setAccessibleText(other);
  }

  /** Shows an example while it is empty, in the units that are shown. */
  public void exampled(TripDocument document, String us, String si) {
    field
        .promptTextProperty()
        .bind(
            Bindings.createStringBinding(
                () -> document.units() == UnitSystem.US ? us : si, document.unitsProperty()));
  }

  /** Puts something small beside what is typed. */
  void beside(Node node) {
    HBox.setHgrow(field, Priority.ALWAYS);
    HBox both = new HBox(4);
    both.setAlignment(Pos.CENTER_LEFT);
    getChildren().set(getChildren().indexOf(field), both);
    both.getChildren().addAll(field, node);
  }

  /** The text field itself. */
  public TextField field() {
    return field;
  }

  /** Where its error is told; below the field, unless it is put elsewhere. */
  public Label message() {
    return message;
  }

  /** What is in the field as a parser reads it. */
  public String typed() {
    return withPoint(text());
  }

  /** What is typed and not taken, valid or not, or null. */
  public @Nullable String draft() {
    String text = text();
    return text.equals(shown.strip()) ? null : text;
  }

  /** Shows a draft again, with its error; it is not taken. */
  public void restore(@Nullable String draft) {
    if (draft != null && !draft.equals(text())) {
      field.setText(draft);
    }
    if (draft != null) {
      judge();
    }
  }

  /** Shows the trip's text; a draft stays. */
  public void show(String text) {
    boolean drafted = draft() != null;
    valid = text;
    shown = text;
    if (!drafted) {
      put(text);
    } else if (message.isVisible()) {
      judge();
    }
  }

  /** Shows the trip's text in the place of any draft. */
  public void put(String text) {
    valid = text;
    shown = text;
    if (!field.getText().equals(text)) {
      field.setText(text);
      field.end();
    }
    shown = field.getText();
    touched = false;
    message.setVisible(false);
  }

  /** Drops a draft. */
  public void drop() {
    put(valid);
  }

  /** Ends all editing by this field, as before it leaves the window. */
  public void retire() {
    open = false;
  }

  /** Takes what is typed if it can be taken; whether nothing is left as a draft. */
  public boolean finish() {
    String text = text();
    if (!open || draft() == null) {
      message.setVisible(false);
      return true;
    }
    T value = judge();
    if (value != null) {
      message.setVisible(false);
      valid = text;
      shown = text;
      touched = false;
      taker.accept(value);
    }
    return value != null;
  }

  /** What the draft means, or null; then it is told why it cannot be taken. */
  private @Nullable T judge() {
    Outcome<T> outcome = parser.apply(typed());
    T value = outcome.valueOrNull();
    tell(
        value == null
            ? outcome.problems().get(0)
            : Problem.of(ProblemCode.NOT_TAKEN_YET, "", Texts.shortened(text())));
    return value;
  }

  private void tell(Problem problem) {
    boolean error = problem.code().severity() == ProblemCode.Severity.ERROR;
    String last = valid.isEmpty() ? "nothing so far" : Texts.shortened(valid);
    message.getStyleClass().setAll("label", error ? "field-error" : "lesser");
    message.setText(
        Texts.shortened(problem.message(), LONGEST_MESSAGE)
            + (error ? " (last valid: " + last + ")" : ""));
    message.setVisible(true);
  }

  private String text() {
    return field.getText().strip();
  }

  /** Where the system writes a decimal comma, one between digits is taken as the point. */
  public static String withPoint(String text) {
    boolean comma =
        DecimalFormatSymbols.getInstance(Locale.getDefault(Locale.Category.FORMAT))
                .getDecimalSeparator()
            == ',';
    return comma ? text.replaceAll("(?<=\\d),(?=\\d)", ".") : text;
  }
}

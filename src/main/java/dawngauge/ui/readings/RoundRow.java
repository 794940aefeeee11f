package dawngauge.ui.readings;

import dawngauge.advice.Mark;
import dawngauge.problem.Outcome;
import dawngauge.quantity.Entered;
import dawngauge.quantity.GaugePressure;
import dawngauge.ui.common.FigureField;
import dawngauge.ui.common.MarkShape;
import java.util.Optional;
import java.util.function.Function;
import javafx.css.PseudoClass;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;

/** One tire of a round: what it should read, what it read, what it was set to. */
final class RoundRow {

  /** What a row asks of its round. */
  interface Listener {

    /** A reading is finished, or emptied. */
    void read(RoundRow row, Optional<Entered<GaugePressure>> figure);

    /** Air was added or let out. */
    void set(RoundRow row, Entered<GaugePressure> figure);

    /** Something is being typed, or the keyboard came here. */
    void looking(RoundRow row);

    /** The keyboard is to go to the next tire. */
    void next(RoundRow row);
  }

  /** Room for a pressure with its unit. */
  private static final double LEAST_FIELD = 92;

  /** An error stands below its row, from what it should read on to the mark. */
  private static final int ERROR_FROM = 2;

  private static final int ERROR_OVER = 5;
  private static final double ROOM_FOR_ERROR = 380;

  private static final PseudoClass UNEXPECTED = PseudoClass.getPseudoClass("unexpected");

  final String tire;
  final String words;
  final int order;
  final FigureField<Optional<Entered<GaugePressure>>> reading;
  final FigureField<Optional<Entered<GaugePressure>>> setTo;
  private final Label full = new Label();
  private final Label expected = new Label();
  private final Label off = new Label();
  private final HBox mark = new HBox(5);

  RoundRow(
      String tire,
      String words,
      int order,
      Function<String, Outcome<Optional<Entered<GaugePressure>>>> parser,
      Listener listener) {
    this.tire = tire;
    this.words = words;
    this.order = order;
    reading = new FigureField<>("Reading of " + words, parser, value -> listener.read(this, value));
    setTo =
        new FigureField<>(
            "Set to, " + words,
            parser,
            value -> value.ifPresent(figure -> listener.set(this, figure)));
    for (FigureField<?> field : new FigureField<?>[] {reading, setTo}) {
      field.field().setPrefColumnCount(6);
      field.setMinWidth(LEAST_FIELD);
      field
          .field()
          .focusedProperty()
          .addListener(
              (property, was, is) -> {
                if (is) {
                  listener.looking(this);
                }
              });
    }
    reading
        .field()
        .textProperty()
        .addListener(
            change -> {
              if (reading.field().isFocused()) {
                listener.looking(this);
              }
            });
    mark.setAlignment(Pos.CENTER_LEFT);
    reading
        .field()
        .addEventFilter(
            KeyEvent.KEY_PRESSED,
            event -> {
              if (event.getCode() == KeyCode.ENTER || event.getCode() == KeyCode.DOWN) {
                event.consume();
                if (reading.finish()) {
                  listener.next(this);
                }
              }
            });
    full.setText(words);
    full.managedProperty().bind(full.visibleProperty());
    expected.getStyleClass().add("round-expected");
    off.getStyleClass().add("round-off");
  }

  /** Takes two rows of the grid: one of figures, one for what is wrong with them. */
  void addTo(GridPane grid, int row, String shortForm) {
    Label name = new Label(shortForm);
    name.getStyleClass().add("tire-name");
    name.setMinWidth(Label.USE_PREF_SIZE);
    full.getStyleClass().add("lesser");
    full.setMinWidth(Label.USE_PREF_SIZE);
    expected.setMinWidth(Label.USE_PREF_SIZE);
    off.setMinWidth(Label.USE_PREF_SIZE);
    grid.addRow(row, name, full, expected, reading, off, setTo, mark);
    VBox wrong = new VBox(reading.message(), setTo.message());
    wrong.setPrefWidth(ROOM_FOR_ERROR);
    grid.add(wrong, ERROR_FROM, row + 1, ERROR_OVER, 1);
  }

  /** Names the position in full, where there is room for it. */
  void inFull(boolean room) {
    full.setVisible(room);
  }

  /** Shows figures. */
  void show(String band, String offBy, boolean unexpected) {
    expected.setText(band.isEmpty() ? "–" : band);
    off.setText(offBy);
    off.pseudoClassStateChanged(UNEXPECTED, unexpected);
  }

  /** Shows a mark. */
  void show(Mark is) {
    Label word = new Label(is.word());
    word.setMinWidth(Label.USE_PREF_SIZE);
    mark.getChildren().setAll(new MarkShape(is), word);
  }
}

package dawngauge.ui.common;

import java.time.DateTimeException;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.YearMonth;
import java.time.format.DateTimeFormatter;
import java.time.format.TextStyle;
import java.time.temporal.ChronoUnit;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javafx.geometry.Bounds;
import javafx.geometry.HPos;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.control.Tooltip;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import javafx.stage.Popup;
import org.jspecify.annotations.Nullable;

/**
 * A month below a field for a time, to choose its day from. Alt with Down opens it, arrows and Page
 * Up, Page Down move, Enter or a click takes the day, Escape closes it. The day is written into the
 * field as it is typed there, "2027-04-06 05:45"; the time behind it stays, and where there is none
 * yet it is that of the field's example.
 */
public final class DayChooser {

  private static final Pattern WITH_DAY = Pattern.compile("(\\d{4}-\\d\\d-\\d\\d)\\s*(.*)");
  private static final Pattern ONE_DIGIT_HOUR = Pattern.compile("\\d:\\d\\d.*");

  private static final DateTimeFormatter MONTH =
      DateTimeFormatter.ofPattern("MMMM uuuu", Locale.ENGLISH);
  private static final DateTimeFormatter DAY =
      DateTimeFormatter.ofPattern("EEE d MMM uuuu", Locale.ENGLISH);

  private static final String PLAIN = "-fx-padding: 3 0 3 0; -fx-alignment: center;";
  private static final String CHOSEN =
      PLAIN
          + " -fx-background-color: -color-fg-default; -fx-text-fill: -color-bg-default;"
          + " -fx-font-weight: bold;";
  private static final double DAY_WIDTH = 34;
  private static final int WEEK = 7;
  private static final int WEEKS = 6;

  private final FigureField<?> field;
  private final Label month = new Label();
  private final Label foot = new Label();
  private final Label[] days = new Label[WEEK * WEEKS];
  private final Popup popup = new Popup();
  private LocalDate day = LocalDate.EPOCH;

  private DayChooser(FigureField<?> field) {
    this.field = field;
    TextField text = field.field();
    text.setAccessibleHelp("Alt with Down shows a month to choose the day from");
    month.setMaxWidth(Double.MAX_VALUE);
    month.setAlignment(Pos.CENTER);
    month.setStyle("-fx-font-weight: bold;");
    HBox.setHgrow(month, Priority.ALWAYS);
    HBox head =
        new HBox(
            4,
            button("‹", "the month before", () -> months(-1)),
            month,
            button("›", "the next month", () -> months(1)));
    head.setAlignment(Pos.CENTER);
    foot.setStyle("-fx-font-size: 11.5px;");
    VBox box = new VBox(4, head, weeks(), foot);
    box.setStyle(
        "-fx-padding: 6 8 6 8; -fx-background-color: -color-bg-default;"
            + " -fx-border-color: -color-border-default;");
    popup.getContent().add(box);
    popup.setAutoHide(true);
    popup.setHideOnEscape(false);
    field.beside(button("▾", "Choose the day", this::open));
    text.textProperty().addListener(change -> popup.hide());
    text.focusedProperty()
        .addListener(
            (property, was, is) -> {
              if (!is) {
                popup.hide();
              }
            });
    text.addEventFilter(KeyEvent.KEY_PRESSED, this::keyed);
  }

  /** Gives a field for a time, whose example is one with its day, a month to choose from. */
  public static void on(FigureField<?> field) {
    new DayChooser(field);
  }

  private static Button button(String sign, String name, Runnable work) {
    Button button = new Button(sign);
    button.getStyleClass().add("small-button");
    button.setAccessibleText(name);
    button.setTooltip(new Tooltip(name));
    button.setFocusTraversable(false);
    button.setMinWidth(HBox.USE_PREF_SIZE);
    button.setOnAction(event -> work.run());
    return button;
  }

  private GridPane weeks() {
    GridPane grid = new GridPane();
    for (int i = 0; i < WEEK; i++) {
      DayOfWeek weekday = DayOfWeek.SUNDAY.plus(i);
      Label name = new Label(weekday.getDisplayName(TextStyle.SHORT, Locale.ENGLISH));
      name.setStyle("-fx-font-size: 11.5px;");
      GridPane.setHalignment(name, HPos.CENTER);
      grid.add(name, i, 0);
    }
    for (int i = 0; i < days.length; i++) {
      Label label = new Label();
      label.setPrefWidth(DAY_WIDTH);
      int place = i;
      label.setOnMouseClicked(
          event -> {
            if (!label.getText().isEmpty()) {
              day = first().plusDays(place);
              take();
            }
          });
      days[i] = label;
      grid.add(label, i % WEEK, 1 + i / WEEK);
    }
    return grid;
  }

  /** The Sunday on or before the first of the month. */
  private LocalDate first() {
    LocalDate first = day.withDayOfMonth(1);
    return first.minusDays(first.getDayOfWeek().getValue() % WEEK);
  }

  private void show() {
    month.setText(MONTH.format(day));
    LocalDate first = first();
    for (int i = 0; i < days.length; i++) {
      LocalDate each = first.plusDays(i);
      boolean within = YearMonth.from(each).equals(YearMonth.from(day));
      days[i].setText(within ? "" + each.getDayOfMonth() : "");
      days[i].setStyle(each.equals(day) ? CHOSEN : PLAIN);
    }
    foot.setText(DAY.format(day) + " · Enter takes it, Escape closes");
  }

  private void open() {
    TextField text = field.field();
    text.requestFocus();
    LocalDate typed = dayIn(text.getText());
    LocalDate shown = typed == null ? dayIn(text.getPromptText()) : typed;
    if (shown != null) {
      day = shown;
      show();
      Bounds bounds = text.localToScreen(text.getBoundsInLocal());
      popup.show(text, bounds.getMinX(), bounds.getMaxY());
    }
  }

  private void keyed(KeyEvent event) {
    if (!popup.isShowing()) {
      if (event.isAltDown() && event.getCode() == KeyCode.DOWN) {
        open();
        event.consume();
      }
      return;
    }
    boolean done = true;
    switch (event.getCode()) {
      case LEFT -> move(-1, ChronoUnit.DAYS);
      case RIGHT -> move(1, ChronoUnit.DAYS);
      case UP -> move(-1, ChronoUnit.WEEKS);
      case DOWN -> move(1, ChronoUnit.WEEKS);
      case PAGE_UP -> months(-1);
      case PAGE_DOWN -> months(1);
      case ESCAPE -> popup.hide();
      case ENTER -> take();
      default -> done = false;
    }
    if (done) {
      event.consume();
    }
  }

  private void months(int more) {
    move(more, ChronoUnit.MONTHS);
  }

  private void move(int more, ChronoUnit unit) {
    day = day.plus(more, unit);
    show();
  }

  private void take() {
    TextField text = field.field();
    String rest = behindDay(text.getText());
    String time = rest.isEmpty() ? behindDay(text.getPromptText()) : rest;
    popup.hide();
    text.setText(day + " " + (ONE_DIGIT_HOUR.matcher(time).matches() ? "0" + time : time));
    text.end();
    field.finish();
  }

  private static @Nullable LocalDate dayIn(String text) {
    Matcher found = WITH_DAY.matcher(text);
    try {
      return found.find() ? LocalDate.parse(found.group(1)) : null;
    } catch (DateTimeException noSuchDay) {
      return null;
    }
  }

  /** What stands behind the day, all of it where there is none. */
  private static String behindDay(String text) {
    Matcher found = WITH_DAY.matcher(text);
    return (found.find() ? found.group(2) : text).strip();
  }
}

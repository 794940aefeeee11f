package dawngauge.ui.route;

import dawngauge.advice.Mark;
import dawngauge.ledger.Ledger;
import dawngauge.ledger.StopLine;
import dawngauge.ui.common.MarkShape;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.IntConsumer;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javafx.beans.binding.Bindings;
import javafx.geometry.Pos;
import javafx.scene.AccessibleRole;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.scene.text.TextAlignment;

/** The stop ledger: a heading a day, a row a stop, and the leg between two stops. */
public final class LedgerPane extends VBox {

  private final List<Region> stopRows = new ArrayList<>();
  private final IntConsumer onSelect;
  private final IntConsumer onInsertAfter;
  private int selected;

  /**
   * A ledger.
   *
   * @param onSelect told the index of the stop that is chosen
   * @param onInsertAfter told the index of the stop after which one is to be added
   */
  public LedgerPane(IntConsumer onSelect, IntConsumer onInsertAfter) {
    this.onSelect = onSelect;
    this.onInsertAfter = onInsertAfter;
    getStyleClass().add("ledger");
  }

  /** The rows of the stops, in order, for drawing beside them. */
  public List<Region> stopRows() {
    return List.copyOf(stopRows);
  }

  /** Shows a ledger with one stop chosen. */
  public void show(Ledger ledger, int chosen) {
    boolean hadFocus = selected < stopRows.size() && stopRows.get(selected).isFocused();
    stopRows.clear();
    getChildren().clear();
    selected = Math.max(0, Math.min(chosen, ledger.stops().size() - 1));
    for (StopLine stop : ledger.stops()) {
      if (!stop.newDay().isEmpty()) {
        Label day = new Label(stop.newDay());
        day.getStyleClass().add("day-heading");
        day.setMaxWidth(Double.MAX_VALUE);
        getChildren().add(day);
      }
      Region row = stopRow(stop, stop.number() - 1);
      row.setUserData(!stop.newDay().isEmpty());
      stopRows.add(row);
      getChildren().add(row);
      if (!stop.leg().isEmpty()) {
        getChildren().add(legRow(stop));
      }
    }
    mark();
    if (hadFocus && !stopRows.isEmpty()) {
      stopRows.get(selected).requestFocus();
    }
  }

  /** Chooses a stop. */
  public void select(int index) {
    if (index >= 0 && index < stopRows.size()) {
      selected = index;
      mark();
      onSelect.accept(index);
    }
  }

  private void mark() {
    for (int i = 0; i < stopRows.size(); i++) {
      stopRows.get(i).pseudoClassStateChanged(Styles.CHOSEN, i == selected);
    }
  }

  private Region stopRow(StopLine stop, int index) {
    GridPane row = new GridPane();
    row.getStyleClass().add("stop-row");
    row.setFocusTraversable(true);
    row.setAccessibleRole(AccessibleRole.BUTTON);
    row.setAccessibleText(spoken(stop));
    row.getColumnConstraints().addAll(fixed(44), growing(), fixed(94), fixed(72), fixed(98));
    row.add(times(stop), 0, 0);
    row.add(place(stop), 1, 0);
    row.add(pressures(stop), 2, 0);
    row.add(margin(stop), 3, 0);
    row.add(markOf(stop.mark()), 4, 0);
    VBox tasks = tasks(stop);
    row.add(tasks, 1, 1, 4, 1);
    row.setOnMousePressed(
        event -> {
          select(index);
          row.requestFocus();
        });
    row.setOnKeyPressed(
        event -> {
          if (event.getCode() == KeyCode.ENTER || event.getCode() == KeyCode.SPACE) {
            select(index);
            event.consume();
          } else if (event.getCode() == KeyCode.DOWN && index + 1 < stopRows.size()) {
            select(index + 1);
            stopRows.get(index + 1).requestFocus();
            event.consume();
          } else if (event.getCode() == KeyCode.UP && index > 0) {
            select(index - 1);
            stopRows.get(index - 1).requestFocus();
            event.consume();
          }
        });
    return row;
  }

  private static String spoken(StopLine stop) {
    StringBuilder text = new StringBuilder();
    text.append("Stop ").append(stop.number()).append(", ").append(stop.place());
    text.append(", ").append(stop.mark().word());
    for (StopLine.Task task : stop.tasks()) {
      text.append(". ").append(task.mark().word()).append(' ').append(task.tires());
      text.append(": ").append(task.text());
    }
    return text.toString();
  }

  private static VBox times(StopLine stop) {
    VBox box = new VBox(times(stop.arrive()), times(stop.leave()));
    if (!stop.zone().isEmpty()) {
      Label zone = new Label(stop.zone());
      zone.getStyleClass().add("lesser");
      box.getChildren().add(zone);
    }
    box.setAlignment(Pos.TOP_RIGHT);
    return box;
  }

  private static Label times(String clock) {
    Label label = new Label(clock);
    label.getStyleClass().add("clock");
    return label;
  }

  private static VBox place(StopLine stop) {
    Label name = new Label(stop.place());
    name.getStyleClass().add("place");
    name.setWrapText(true);
    Label facts = new Label(facts(stop));
    facts.getStyleClass().add("lesser");
    facts.setWrapText(true);
    VBox box = new VBox(name, facts);
    for (String load : stop.loads()) {
      Label line = new Label(load);
      line.getStyleClass().add("lesser");
      line.setWrapText(true);
      box.getChildren().add(line);
    }
    return box;
  }

  private static String facts(StopLine stop) {
    return Stream.of(stop.kind(), stop.air(), stop.elevation(), stop.hose())
        .filter(fact -> !fact.isEmpty())
        .collect(Collectors.joining(" · "));
  }

  /** The tightest tire's figures, with its name. */
  private static VBox pressures(StopLine stop) {
    StopLine.TireRow tight = stop.tightest();
    if (tight == null) {
      return new VBox();
    }
    String reads = tight.arriveReads() + " → " + tight.checkReads();
    Label first = new Label(stop.leg().isEmpty() ? tight.arriveReads() : reads);
    first.getStyleClass().add("figure");
    Label who = new Label(tight.tires());
    who.getStyleClass().add("lesser");
    who.setTextAlignment(TextAlignment.RIGHT);
    VBox box = new VBox(first, who);
    box.setAlignment(Pos.TOP_RIGHT);
    return box;
  }

  private static VBox margin(StopLine stop) {
    StopLine.TireRow tight = stop.tightest();
    Label label = new Label(tight == null ? "" : tight.margin());
    label.getStyleClass().add("figure");
    Label estimate = new Label(tight != null && tight.byEstimate() ? "by estimate" : "");
    estimate.getStyleClass().add("lesser");
    VBox box = new VBox(label, estimate);
    box.setAlignment(Pos.TOP_RIGHT);
    return box;
  }

  private static HBox markOf(Mark mark) {
    Label word = new Label(mark.word());
    word.getStyleClass().addAll("mark-word", "mark-word-" + mark.name().toLowerCase(Locale.ROOT));
    HBox box = new HBox(6, new MarkShape(mark), word);
    box.setAlignment(Pos.TOP_LEFT);
    return box;
  }

  private static VBox tasks(StopLine stop) {
    VBox box = new VBox();
    box.getStyleClass().add("tasks");
    for (StopLine.Task task : stop.tasks()) {
      Label text = new Label(task.tires() + ": " + task.text());
      text.setWrapText(true);
      HBox.setHgrow(text, Priority.ALWAYS);
      HBox line = new HBox(6, new MarkShape(task.mark()), text);
      line.getStyleClass().addAll("task", "task-" + task.mark().name().toLowerCase(Locale.ROOT));
      box.getChildren().add(line);
    }
    box.managedProperty().bind(Bindings.isNotEmpty(box.getChildren()));
    return box;
  }

  private Region legRow(StopLine stop) {
    Label text = new Label(stop.leg());
    text.getStyleClass().add("leg");
    text.setWrapText(true);
    VBox lines = new VBox(text);
    for (String caution : stop.cautions()) {
      Label line = new Label(caution);
      line.getStyleClass().add("leg-caution");
      line.setWrapText(true);
      lines.getChildren().add(line);
    }
    HBox.setHgrow(lines, Priority.ALWAYS);
    Button insert = new Button("+ stop");
    insert.getStyleClass().add("insert");
    insert.setAccessibleText("Insert a stop after " + stop.place());
    insert.setOnAction(event -> onInsertAfter.accept(stop.number() - 1));
    HBox row = new HBox(10, lines, insert);
    row.setAlignment(Pos.CENTER_LEFT);
    row.getStyleClass().add("leg-row");
    return row;
  }

  private static ColumnConstraints fixed(double width) {
    ColumnConstraints column = new ColumnConstraints(width, width, width);
    return column;
  }

  private static ColumnConstraints growing() {
    ColumnConstraints column = new ColumnConstraints(96, 260, Double.MAX_VALUE);
    column.setHgrow(Priority.ALWAYS);
    return column;
  }
}

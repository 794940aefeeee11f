package dawngauge.ui.route;

import dawngauge.ledger.Ledger;
import dawngauge.ledger.StopLine;
import dawngauge.ui.common.Texts;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.NavigableSet;
import java.util.Objects;
import java.util.TreeSet;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseButton;
import javafx.scene.input.MouseEvent;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;

/**
 * The stop ledger: a heading a day, a row a stop, and the leg between two stops. One row is chosen;
 * others may be taken with it, to be changed together. Rows are moved by dragging and by keyboard.
 */
public final class LedgerPane extends VBox {

  /** What is done with the rows of the ledger; rows are counted from 0. */
  public interface Hands {

    /** The chosen row, and all that are taken with it, itself among them. */
    void choose(int row, NavigableSet<Integer> taken);

    /** A stop is wanted after a row. */
    void insertAfter(int row);

    /** Rows are to stand together before a row, or at the end where that is their number. */
    void move(NavigableSet<Integer> rows, int before);

    /** Rows are to go. */
    void remove(NavigableSet<Integer> rows);

    /** The fields of the chosen row are wanted. */
    void open();
  }

  /** Heading of a day, row of a stop and of the leg after it. */
  private record Parts(StopLine line, @Nullable Label day, Region row, @Nullable Region leg) {}

  private final List<Region> stopRows = new ArrayList<>();

  /** What stands for each stop now; it stays where its line stays the same. */
  private final List<Parts> shown = new ArrayList<>();

  private final Hands hands;
  private final RowDrag drag;
  private NavigableSet<Integer> taken = new TreeSet<>();
  private int chosen;

  /** The row from which others are taken along. */
  private int anchor;

  /** A ledger without rows. */
  public LedgerPane(Hands hands) {
    this.hands = hands;
    this.drag = new RowDrag(this, (row, before) -> hands.move(with(row), before));
    getStyleClass().add("ledger");
  }

  /** The rows of the stops, in order, for drawing beside them. */
  public List<Region> stopRows() {
    return List.copyOf(stopRows);
  }

  /** All rows that are taken, the chosen one among them. */
  public NavigableSet<Integer> taken() {
    return Collections.unmodifiableNavigableSet(taken);
  }

  /** Shows a ledger with one stop chosen; where it is the same as before, with those beside it. */
  public void show(Ledger ledger, int row) {
    boolean hadFocus = chosen < stopRows.size() && stopRows.get(chosen).isFocused();
    int last = ledger.stops().size() - 1;
    boolean same = row == chosen && last == stopRows.size() - 1;
    List<Parts> before = List.copyOf(shown);
    stopRows.clear();
    shown.clear();
    List<Node> all = new ArrayList<>();
    chosen = Math.max(0, Math.min(row, last));
    if (!same) {
      taken = new TreeSet<>(List.of(chosen));
      anchor = chosen;
    }
    for (StopLine stop : ledger.stops()) {
      int index = stop.number() - 1;
      boolean known = index < before.size() && before.get(index).line().equals(stop);
      Parts parts = known ? before.get(index) : parts(stop, index);
      shown.add(parts);
      stopRows.add(parts.row());
      Stream.of(parts.day(), parts.row(), parts.leg()).filter(Objects::nonNull).forEach(all::add);
    }
    replaceChanged(all);
    mark();
    if (hadFocus && !stopRows.isEmpty()) {
      stopRows.get(chosen).requestFocus();
    }
  }

  private Parts parts(StopLine stop, int index) {
    Label day = null;
    if (!stop.newDay().isEmpty()) {
      day = new Label(stop.newDay());
      day.getStyleClass().add("day-heading");
      day.setMaxWidth(Double.MAX_VALUE);
    }
    Region row = new StopRow(stop);
    listen(row, index);
    return new Parts(stop, day, row, stop.leg().isEmpty() ? null : legRow(stop));
  }

  /** Leaves what stays where it is: a row that is taken out and put back is laid out anew. */
  private void replaceChanged(List<Node> all) {
    List<Node> now = getChildren();
    if (now.size() != all.size()) {
      getChildren().setAll(all);
      return;
    }
    for (int i = 0; i < all.size(); i++) {
      if (now.get(i) != all.get(i)) {
        now.set(i, all.get(i));
      }
    }
  }

  /** Chooses one row, as if it had been pressed; the keyboard stays where it is. */
  public void choose(int row) {
    if (row < stopRows.size()) {
      take(row, new TreeSet<>(List.of(row)));
    }
  }

  private void listen(Region row, int index) {
    row.setOnMousePressed(event -> pressed(event, index));
    row.setOnMouseClicked(
        event -> {
          if (event.getClickCount() == 2) {
            hands.open();
          }
        });
    row.setOnKeyPressed(event -> keyed(event, index));
    drag.listen(row, index);
  }

  private void pressed(MouseEvent event, int index) {
    if (event.getButton() != MouseButton.PRIMARY) {
      return;
    }
    event.consume(); // the page around the rows would take the keyboard
    stopRows.get(index).requestFocus();
    if (event.isShiftDown()) {
      takeTo(index);
    } else if (event.isShortcutDown()) {
      NavigableSet<Integer> other = new TreeSet<>(taken);
      if (!other.remove(index) || other.isEmpty()) {
        other.add(index);
      }
      take(other.contains(index) ? index : other.first(), other);
    } else if (!taken.contains(index) || taken.size() == 1) {
      take(index, new TreeSet<>(List.of(index)));
    } else {
      take(index, taken);
    }
  }

  private static NavigableSet<Integer> span(int a, int b) {
    NavigableSet<Integer> rows = new TreeSet<>();
    IntStream.rangeClosed(Math.min(a, b), Math.max(a, b)).forEach(rows::add);
    return rows;
  }

  private void keyed(KeyEvent event, int index) {
    int by =
        switch (event.getCode()) {
          case UP -> -1;
          case DOWN -> 1;
          default -> 0;
        };
    boolean done = true;
    if (by != 0 && event.isAltDown()) {
      shift(by);
    } else if (by != 0) {
      step(index + by, event.isShiftDown());
    } else {
      switch (event.getCode()) {
        case HOME -> step(0, event.isShiftDown());
        case END -> step(stopRows.size() - 1, event.isShiftDown());
        case DELETE -> hands.remove(taken());
        case INSERT -> hands.insertAfter(chosen);
        case ENTER -> hands.open();
        case SPACE -> take(index, new TreeSet<>(List.of(index)));
        default -> done = false;
      }
    }
    if (done) {
      event.consume();
    }
  }

  /** Goes to a row; with Shift the rows in between are taken along. */
  private void step(int to, boolean along) {
    if (to < 0 || to >= stopRows.size()) {
      return;
    }
    stopRows.get(to).requestFocus();
    if (along) {
      takeTo(to);
    } else {
      take(to, new TreeSet<>(List.of(to)));
    }
  }

  /** Takes the rows from where the taking began to another one. */
  private void takeTo(int row) {
    int from = Math.min(anchor, stopRows.size() - 1);
    take(row, span(from, row));
    anchor = from;
  }

  /** Moves the taken rows up or down by one. */
  private void shift(int by) {
    int before = by < 0 ? taken.first() - 1 : taken.last() + 2;
    if (before >= 0 && before <= stopRows.size()) {
      hands.move(taken(), before);
    }
  }

  /** The rows that are dragged with one: all that are taken, if it is one of them. */
  private NavigableSet<Integer> with(int row) {
    return taken.contains(row) ? taken() : new TreeSet<>(List.of(row));
  }

  private void take(int row, NavigableSet<Integer> rows) {
    chosen = row;
    anchor = row;
    taken = new TreeSet<>(rows);
    mark();
    hands.choose(row, taken());
  }

  private void mark() {
    for (int i = 0; i < stopRows.size(); i++) {
      stopRows.get(i).setFocusTraversable(i == chosen);
      stopRows.get(i).pseudoClassStateChanged(Styles.CHOSEN, i == chosen);
      stopRows.get(i).pseudoClassStateChanged(Styles.TAKEN, taken.contains(i));
    }
  }

  private Region legRow(StopLine stop) {
    Label text = Texts.twoLines(stop.leg());
    text.getStyleClass().add("leg");
    VBox lines = new VBox(text);
    for (String caution : stop.cautions()) {
      Label line = Texts.twoLines(caution);
      line.getStyleClass().add("leg-caution");
      lines.getChildren().add(line);
    }
    HBox.setHgrow(lines, Priority.ALWAYS);
    Button insert = new Button("+ stop");
    insert.getStyleClass().add("insert");
    insert.setAccessibleText("Insert a stop after " + Texts.shortened(stop.place()));
    insert.setOnAction(event -> hands.insertAfter(stop.number() - 1));
    insert.addEventFilter(MouseEvent.MOUSE_PRESSED, event -> insertBy(event, insert, stop));
    HBox row = new HBox(10, lines, insert);
    row.setAlignment(Pos.CENTER_LEFT);
    row.getStyleClass().add("leg-row");
    return row;
  }

  /**
   * A press takes the keyboard from a field, whose edit makes these rows anew: a button that waits
   * for the release would be gone by then.
   */
  private void insertBy(MouseEvent event, Button insert, StopLine stop) {
    if (event.getButton() == MouseButton.PRIMARY) {
      insert.requestFocus();
      hands.insertAfter(stop.number() - 1);
      event.consume();
    }
  }
}

package dawngauge.ui.route;

import dawngauge.field.RouteFields;
import dawngauge.problem.Outcome;
import dawngauge.trip.Stop;
import dawngauge.trip.Trip;
import dawngauge.ui.common.FigureField;
import java.util.List;
import java.util.NavigableSet;
import java.util.TreeSet;
import javafx.geometry.Bounds;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;

/**
 * A text field over a cell of the grid. It knows its stops by their ids, so that it stays theirs
 * when rows move. What is refused stays in it, with the error across the rows below.
 */
final class CellField {

  private static final double LEAST_WIDTH = 132;
  private static final double MARGIN = 4;

  private final StopGridPane grid;
  private final GridHands hands;
  private final GridColumns.Kind kind;
  private final int column;
  private final List<String> ids;
  private final FigureField<Trip> field;

  /**
   * A field, with what is typed there so far.
   *
   * @param rows the stops it is for; shown over the first
   */
  CellField(StopGridPane grid, GridHands hands, int column, NavigableSet<Integer> rows) {
    this.grid = grid;
    this.hands = hands;
    this.column = column;
    this.kind = grid.kindOf(column);
    List<Stop> stops = hands.typing().trip().route().stops();
    this.ids = rows.stream().map(row -> stops.get(row).id()).toList();
    String where = ids.size() == 1 ? stops.get(rows.first()).place() : ids.size() + " stops";
    this.field = new FigureField<>(name() + ", " + where, this::read, hands::write);
    field.put(hands.typing().text(rows.first(), kind));
    field.getChildren().remove(field.message());
    field.addEventFilter(KeyEvent.KEY_PRESSED, this::keyed);
    field
        .field()
        .focusedProperty()
        .addListener(
            (property, was, is) -> {
              if (!is) {
                grid.writing().end(this, false);
              }
            });
  }

  private String name() {
    return switch (kind) {
      case TIME -> "Stay, or when it leaves";
      case PLACE -> "Place";
      case AIR -> "Temperature, or low/high";
      default -> RouteFields.STOP_AIR.label();
    };
  }

  private Outcome<Trip> read(String text) {
    return hands.typing().written(rows(), kind, text);
  }

  private NavigableSet<Integer> rows() {
    NavigableSet<Integer> rows = new TreeSet<>();
    List<Stop> stops = hands.typing().trip().route().stops();
    for (int i = 0; i < stops.size(); i++) {
      if (ids.contains(stops.get(i).id())) {
        rows.add(i);
      }
    }
    return rows;
  }

  private void keyed(KeyEvent event) {
    KeyCode code = event.getCode();
    if (code == KeyCode.ESCAPE) {
      field.drop();
      grid.writing().end(this, true);
    } else if (code == KeyCode.ENTER) {
      if (field.finish()) {
        grid.writing().end(this, true);
      }
    } else if (code == KeyCode.TAB) {
      on(0, event.isShiftDown() ? -1 : 1);
    } else if (code == KeyCode.DOWN || code == KeyCode.UP) {
      on(code == KeyCode.DOWN ? 1 : -1, 0);
    } else {
      return;
    }
    event.consume();
  }

  /** Takes what is typed and goes on to another cell that is typed, if there is one. */
  private void on(int down, int right) {
    if (!field.finish()) {
      return;
    }
    NavigableSet<Integer> rows = rows();
    grid.writing().end(this, true);
    if (rows.isEmpty()) {
      return;
    }
    int row = rows.first() + down;
    int next = column + right;
    if (row < grid.stops() && row >= 0 && next >= 0 && grid.isTyped(next)) {
      grid.choose(row);
      grid.goTo(next);
      grid.writing().edit();
    }
  }

  /** Begins with a text in the place of what is there. */
  void begin(String text) {
    field.field().setText(text);
    field.field().requestFocus();
    field.field().end();
  }

  /** Begins with what is there, all of it marked. */
  void begin() {
    field.field().requestFocus();
    field.field().selectAll();
  }

  FigureField<Trip> field() {
    return field;
  }

  Label message() {
    return field.message();
  }

  /** Whether nothing is left of what was typed. */
  boolean isDone() {
    return field.draft() == null || rows().isEmpty();
  }

  /** Lays field and error over the grid's cells. */
  void layOut(double width) {
    NavigableSet<Integer> rows = rows();
    boolean seen = !rows.isEmpty() && grid.sees(rows.first());
    field.setVisible(seen);
    if (!seen) {
      return;
    }
    Bounds at = grid.bounds(rows.first(), column);
    double wide = Math.min(width, Math.max(LEAST_WIDTH, at.getWidth()));
    double x = Math.min(at.getMinX(), width - wide);
    double high = field.prefHeight(wide);
    double y = at.getCenterY() - high / 2;
    field.resizeRelocate(x, y, wide, high);
    double across = width - 2 * MARGIN;
    Label message = field.message();
    message.resizeRelocate(MARGIN, y + high + 1, across, message.prefHeight(across));
  }
}

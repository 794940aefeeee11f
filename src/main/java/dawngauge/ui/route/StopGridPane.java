package dawngauge.ui.route;

import dawngauge.ledger.StopGrid;
import dawngauge.ui.common.Palette;
import java.util.HashSet;
import java.util.List;
import java.util.NavigableSet;
import java.util.Set;
import java.util.TreeSet;
import javafx.geometry.Bounds;
import javafx.scene.AccessibleAttribute;
import javafx.scene.AccessibleRole;
import javafx.scene.Node;
import javafx.scene.canvas.Canvas;
import javafx.scene.control.Label;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.Region;
import org.jspecify.annotations.Nullable;

/**
 * The stops as rows and the tires as columns, and beside them the trace of one tire in the same
 * rows. One control, drawn on one canvas: only what is seen is drawn, and a figure's text is made
 * when it is seen. One row is chosen; others may be taken with it, to be changed together. Rows are
 * moved by dragging and by keyboard.
 */
public final class StopGridPane extends Region {

  private static final double WHEEL = 1.2;
  private static final double TIP = 520;

  private final Canvas canvas = new Canvas(10, 10);
  private final GridBar bar = new GridBar();
  private final Label probe = new Label("0");
  private final Tooltip tip = new Tooltip();
  private final CutTexts texts = new CutTexts();
  private final RowChoice choice = new RowChoice();
  private final GridAccess access = new GridAccess(this);
  private final GridHands hands;
  private final TracePane trace;
  private final GridMenu menu;
  private final GridWriting writing;
  private final GridFrame frame;
  private Palette palette = Palette.LIGHT;
  private Set<Integer> bright = Set.of();
  private boolean traceShown = true;
  private int column = -1;
  private int traced = -1;
  private int hoverRow = -1;
  private int hoverColumn = -1;
  private int drop = -1;
  private boolean revealing;

  /** A grid beside a trace. */
  StopGridPane(StopGrid first, GridHands hands, TracePane trace) {
    this.hands = hands;
    this.trace = trace;
    this.frame = new GridFrame(first, probe.getFont());
    getStyleClass().add("stop-grid");
    setFocusTraversable(true);
    setAccessibleRole(AccessibleRole.TABLE_VIEW);
    setAccessibleText("Stops and tires");
    canvas.setMouseTransparent(true);
    probe.getStyleClass().add("grid-type");
    probe.setManaged(false);
    probe.setVisible(false);
    tip.setWrapText(true);
    tip.setMaxWidth(TIP);
    getChildren().addAll(canvas, trace, bar, probe);
    bar.valueProperty().addListener(change -> scrollTo(bar.getValue()));
    probe
        .fontProperty()
        .addListener(
            change -> {
              frame.show(frame.grid(), probe.getFont());
              requestLayout();
            });
    focusedProperty().addListener(change -> requestLayout());
    GridKeys keys = new GridKeys(this, hands);
    setOnKeyPressed(keys::keyed);
    setOnKeyTyped(keys::typed);
    menu = new GridMenu(this, hands);
    writing = new GridWriting(this, hands);
    setOnContextMenuRequested(
        event -> {
          if (!event.isKeyboardTrigger()) {
            int row = rowAt(event.getY());
            press(choice.taken().contains(row) ? -1 : row, columnAt(event.getX()), false, false);
          }
          menu.show(event.getScreenX(), event.getScreenY());
          event.consume();
        });
    new GridMouse(this).listen();
    setOnScroll(
        event -> {
          scrollTo(frame.scroll() - event.getDeltaY() * WHEEL);
          frame.scrollAside(-event.getDeltaX());
          requestLayout();
          event.consume();
        });
    show(first, 0, -1);
  }

  /**
   * Shows a grid with one stop chosen; where it is the same as before, with those beside it.
   *
   * @param tracedTire the column whose trace is shown, by its number among the tires; -1 for none
   */
  void show(StopGrid next, int row, int tracedTire) {
    boolean other = frame.grid().columns().size() != next.columns().size();
    frame.show(next, probe.getFont());
    choice.show(next.rows(), row);
    boolean first = traced < 0;
    trace(tracedTire);
    if (column < 0 || other || (first && traced >= 0)) {
      column = traced >= 0 ? traced : 1;
    }
    bright = Set.of();
    access.forget();
    writing.shown();
    requestLayout();
  }

  /** Marks the column of a tire, by its number among those, as the one whose trace is shown. */
  void trace(int tire) {
    traced = tire < 0 ? -1 : frame.columns().ofTire(tire);
    requestLayout();
  }

  /** Colours to draw in. */
  void color(Palette other) {
    palette = other;
    requestLayout();
  }

  /** Shows or folds away the trace. */
  void showTrace(boolean shown) {
    traceShown = shown;
    requestLayout();
  }

  /** Dims all rows but some; none at all dims nothing. */
  void brighten(Set<Integer> some) {
    bright = Set.copyOf(some);
    requestLayout();
  }

  /** Number of the stops. */
  public int stops() {
    return choice.rows();
  }

  /** The chosen row. */
  public int chosen() {
    return choice.chosen();
  }

  /** All rows that are taken, the chosen one among them. */
  public NavigableSet<Integer> taken() {
    return choice.taken();
  }

  /** The rows that are not dimmed while others are; empty where none is. */
  public Set<Integer> brightRows() {
    return bright;
  }

  /** Number of the columns. */
  public int columnCount() {
    return frame.columns().count();
  }

  /** The column that has the keyboard. */
  public int column() {
    return column;
  }

  /** The texts of all stops in a column: "time", "stop", "air", a tire's short form and so on. */
  public List<String> texts(String head) {
    return frame.cells().texts(head);
  }

  /** What stands in the cells. */
  GridCells cells() {
    return frame.cells();
  }

  /** A cell as it is read out. */
  public String spoken(int row, int at) {
    return frame.cells().spoken(row, at);
  }

  /** Where a cell is, in this control; also where it is not in sight. */
  public Bounds bounds(int row, int at) {
    return frame.bounds(row, at);
  }

  /** Whether a row is seen whole. */
  public boolean sees(int row) {
    return frame.sees(row);
  }

  /** Scrolls: 0 to the first row, 1 to the last. */
  public void scrollPart(double part) {
    scrollTo(part * frame.over(getHeight()));
  }

  private void scrollTo(double y) {
    if (frame.scrollTo(y)) {
      requestLayout();
    }
  }

  /** Chooses one row, as if it had been pressed; the keyboard stays where it is. */
  public void choose(int row) {
    if (row < stops()) {
      choice.only(row);
      chose();
    }
  }

  /** What was chosen is told, and comes in sight. */
  private void chose() {
    reveal();
    writing.hush();
    access.moved();
    hands.choose(choice.chosen(), choice.taken());
  }

  /** Scrolls so far that the chosen row is seen whole. */
  void reveal() {
    revealing = true;
    requestLayout();
  }

  /** Goes to a row; with Shift the rows in between are taken along. */
  void step(int to, boolean along) {
    if (to >= 0 && to < stops()) {
      if (along) {
        choice.to(to);
      } else {
        choice.only(to);
      }
      chose();
    }
  }

  /** Moves the taken rows up or down by one. */
  void shift(int by) {
    int before = choice.shifted(by);
    if (before >= 0) {
      hands.move(taken(), before);
    }
  }

  /** How many rows are seen, less one. */
  int page() {
    return frame.page();
  }

  /** Goes to the next column. */
  void aside(int by) {
    if (column + by >= 0 && column + by < columnCount()) {
      goTo(column + by);
    }
  }

  /** Goes to a column; that of a tire shows its trace. */
  public void goTo(int next) {
    column = next;
    writing.hush();
    frame.revealColumn(next);
    int tire = frame.columns().get(next).tire();
    if (tire >= 0 && next != traced) {
      hands.trace(frame.grid().columns().get(tire));
    }
    access.moved();
    requestLayout();
  }

  /** Goes to the column of a tire, by its number among those. */
  void goToTire(int tire) {
    int at = frame.columns().ofTire(tire);
    if (at >= 0) {
      goTo(at);
    }
  }

  /** Gives the tires of an axle a column each, or one together. */
  void fold(int at, boolean each) {
    int tire = at < 0 ? -1 : frame.columns().get(at).tire();
    if (tire >= 0) {
      hands.unfold(frame.grid().columns().get(tire).axle(), each);
    }
  }

  /** The head of a column is pressed twice. */
  void turn(int at) {
    int tire = at < 0 ? -1 : frame.columns().get(at).tire();
    if (tire >= 0) {
      fold(at, frame.grid().columns().get(tire).folded());
    }
  }

  /** A row and a column are pressed; either may be none. */
  void press(int row, int at, boolean along, boolean besides) {
    requestFocus();
    if (at >= 0) {
      goTo(at);
    }
    if (row < 0) {
      return;
    }
    if (along) {
      choice.to(row);
    } else if (besides) {
      choice.toggle(row);
    } else {
      choice.within(row);
    }
    chose();
  }

  void open() {
    hands.open();
  }

  /** What a column shows. */
  GridColumns.Kind kindOf(int at) {
    return frame.columns().get(at).kind();
  }

  /** Whether a column is one that is typed. */
  boolean isTyped(int at) {
    return at >= 0 && at < columnCount() && TypedCells.COLUMNS.contains(kindOf(at));
  }

  /** Whether a column is that of a tire. */
  boolean isTire(int at) {
    return at >= 0 && kindOf(at) == GridColumns.Kind.TIRE;
  }

  /** Shows what can be done with the cell that has the keyboard. */
  void menu() {
    Bounds cell = localToScreen(bounds(chosen(), Math.max(0, column)));
    menu.show(cell.getMinX(), cell.getMaxY());
  }

  /** Typing, copying and pasting in the cells. */
  GridWriting writing() {
    return writing;
  }

  /** The row at a height, or -1. */
  int rowAt(double y) {
    return frame.rowAt(y);
  }

  /** The column at a place, or -1. */
  int columnAt(double x) {
    return frame.columns().at(x);
  }

  /** Tells what is pointed at, in two lines. */
  void hover(int row, int at) {
    if (row != hoverRow || at != hoverColumn) {
      hoverRow = row;
      hoverColumn = at;
      Tooltip.uninstall(this, tip);
      if (row >= 0 && at >= 0) {
        tip.setText(frame.cells().tip(row, at));
        Tooltip.install(this, tip);
      }
      requestLayout();
    }
  }

  /** Shows where what is dragged would stand; a negative height shows it no more. */
  void dragged(double y) {
    drop = y < 0 ? -1 : frame.before(y);
    requestLayout();
  }

  /** Rows were dragged to a height. */
  void dropped(int row, double y) {
    dragged(-1);
    if (row >= stops()) {
      return;
    }
    int before = frame.before(y);
    NavigableSet<Integer> moved = new TreeSet<>(choice.with(row));
    boolean together = moved.size() == moved.last() - moved.first() + 1;
    boolean stays = together && before >= moved.first() && before <= moved.last() + 1;
    if (!stays) {
      hands.move(moved, before);
    }
  }

  @Override
  protected void layoutChildren() {
    probe.resize(1, 1);
    double height = getHeight();
    if (getWidth() < 1 || height < 1) {
      return;
    }
    double over = frame.over(height);
    double barWidth = bar.room(over);
    double room = getWidth() - barWidth;
    frame.layOut(room, height, traceShown && traced >= 0);
    if (revealing) {
      revealing = false;
      frame.revealRow(chosen(), height);
    }
    double head = frame.sizes().head();
    double seen = frame.seen();
    bar.place(frame, over, room, head);
    double wide = Math.max(1, room - frame.trace());
    canvas.setWidth(wide);
    canvas.setHeight(height);
    trace.setVisible(frame.trace() > 0);
    trace.stay(head);
    trace.beside(frame.rows());
    trace.see(frame.scroll(), seen);
    trace.resizeRelocate(wide, 0, frame.trace(), height);
    new GridPainter(
            canvas.getGraphicsContext2D(),
            frame.grid(),
            frame.rows(),
            frame.columns(),
            frame.sizes(),
            palette,
            texts,
            state())
        .paint(frame.scroll(), height);
    access.laidOut();
    writing.layOut(room - frame.trace());
  }

  private GridPainter.State state() {
    return new GridPainter.State(
        chosen(),
        new HashSet<>(taken()),
        column,
        traced,
        isFocused(),
        hoverRow,
        hoverColumn,
        bright,
        drop);
  }

  @Override
  public @Nullable Object queryAccessibleAttribute(
      AccessibleAttribute attribute, Object... parameters) {
    Object answer = access.answer(attribute, parameters);
    return answer == null ? super.queryAccessibleAttribute(attribute, parameters) : answer;
  }

  @Override
  protected double computeMinWidth(double height) {
    return frame.sizes().whole(320);
  }

  @Override
  protected double computePrefWidth(double height) {
    return frame.natural();
  }

  @Override
  protected double computePrefHeight(double width) {
    return frame.sizes().head() + frame.rows().height();
  }

  /** Puts a node among the children, for what is read out or typed. */
  void hold(Node cell) {
    getChildren().add(cell);
  }

  /** Takes it away. */
  void release(Node cell) {
    getChildren().remove(cell);
  }
}

package dawngauge.ui.route;

import dawngauge.problem.Outcome;
import dawngauge.problem.Problem;
import dawngauge.problem.ProblemCode;
import dawngauge.trip.Trip;
import java.util.ArrayList;
import java.util.List;
import java.util.NavigableSet;
import java.util.TreeSet;
import javafx.scene.control.Label;
import javafx.scene.input.Clipboard;
import javafx.scene.input.ClipboardContent;
import org.jspecify.annotations.Nullable;

/** Typing, copying and pasting in the cells of the grid; one cell at a time is open. */
final class GridWriting {

  private static final double MARGIN = 4;

  private final StopGridPane grid;
  private final GridHands hands;
  private final Label said = new Label();
  private @Nullable CellField open;

  GridWriting(StopGridPane grid, GridHands hands) {
    this.grid = grid;
    this.hands = hands;
    said.getStyleClass().add("cell-said");
    said.setWrapText(true);
    said.setManaged(false);
    said.setVisible(false);
    said.setMouseTransparent(true);
    grid.hold(said);
  }

  private NavigableSet<Integer> taken() {
    return new TreeSet<>(grid.taken());
  }

  void edit() {
    CellField field = opened();
    if (field != null) {
      field.begin();
    }
  }

  void type(String text) {
    CellField field = opened();
    if (field != null) {
      field.begin(text);
    }
  }

  /** A field over the cell; null where the column is not typed or another text waits. */
  private @Nullable CellField opened() {
    CellField other = open;
    if (other != null) {
      other.begin();
      return null;
    }
    if (grid.stops() == 0 || !grid.isTyped(grid.column())) {
      say(Problem.of(ProblemCode.FORECAST_NOT_TYPED, ""));
      return null;
    }
    hush();
    CellField field = new CellField(grid, hands, grid.column(), taken());
    open = field;
    grid.hold(field.field());
    grid.hold(field.message());
    field.field().setManaged(false);
    grid.applyCss();
    layOut(grid.getWidth());
    return field;
  }

  void end(CellField field, boolean back) {
    if (open == field && field.isDone()) {
      open = null;
      grid.release(field.field());
      grid.release(field.message());
      if (back) {
        grid.requestFocus();
      }
      grid.requestLayout();
    }
  }

  /** The grid shows another trip: what was typed stays while its stops do. */
  void shown() {
    CellField field = open;
    if (field != null && field.isDone()) {
      end(field, false);
    }
    hush();
  }

  void copy() {
    if (grid.stops() == 0) {
      return;
    }
    String text =
        grid.isTyped(grid.column())
            ? hands.typing().copied(taken(), grid.kindOf(grid.column()))
            : rows();
    ClipboardContent content = new ClipboardContent();
    content.putString(text);
    Clipboard.getSystemClipboard().setContent(content);
  }

  /** The taken rows as they are shown, under their headings. */
  private String rows() {
    List<String> lines = new ArrayList<>(List.of(grid.cells().heads()));
    taken().forEach(row -> lines.add(grid.cells().line(row)));
    return String.join("\n", lines) + "\n";
  }

  void paste() {
    String table = Clipboard.getSystemClipboard().getString();
    if (table == null || table.isBlank() || grid.stops() == 0) {
      return;
    }
    Outcome<Trip> pasted = hands.typing().pasted(taken(), grid.kindOf(grid.column()), table);
    Trip trip = pasted.valueOrNull();
    if (trip == null) {
      say(pasted.problems().get(0));
    } else {
      hands.write(trip);
    }
  }

  private void say(Problem problem) {
    said.setText(problem.message());
    said.setVisible(true);
    grid.requestLayout();
  }

  /** What was said is said no more. */
  void hush() {
    said.setVisible(false);
  }

  void layOut(double width) {
    CellField field = open;
    if (field != null) {
      field.layOut(width);
    }
    if (said.isVisible()) {
      double across = width - 2 * MARGIN;
      double below = grid.bounds(grid.chosen(), 0).getMaxY() + 1;
      said.resizeRelocate(MARGIN, below, across, said.prefHeight(across));
    }
  }
}

package dawngauge.ui;

import static org.assertj.core.api.Assertions.assertThat;

import dawngauge.ledger.StopGrid;
import dawngauge.planner.Plan;
import dawngauge.trip.Trip;
import dawngauge.ui.route.StopGridPane;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import javafx.scene.AccessibleAttribute;
import javafx.scene.AccessibleRole;
import javafx.scene.Node;
import javafx.scene.control.TextArea;
import javafx.scene.control.ToggleButton;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.Region;
import org.junit.jupiter.api.Test;

/** The grid of stops and tires: walked over, taken together, read out, dimmed. */
class GridWindowTest extends WindowTest {

  private static final int FIRST_TIRE = 4;

  private static Trip autumn() {
    return planner().store().open(Path.of("demo-data", "autumn-stock-haul.dawngauge")).get();
  }

  private static StopGrid figures(OpenWindow open) {
    Plan planned = open.document.planned();
    return StopGrid.of(
        planned.trip(),
        dawngauge.ledger.Ledger.of(
            planned.trip(),
            planned.advice(),
            planned.problems(),
            planned.fitness(),
            open.document.units(),
            null),
        planned.advice(),
        StopGrid.Display.READS,
        Set.of());
  }

  private static Object asked(StopGridPane grid, AccessibleAttribute what, Object... parameters) {
    return OpenWindow.onToolkit(() -> grid.queryAccessibleAttribute(what, parameters));
  }

  private static Node cell(StopGridPane grid, int row, int column) {
    return (Node) asked(grid, AccessibleAttribute.CELL_AT_ROW_COLUMN, row, column);
  }

  private static Object of(Node cell, AccessibleAttribute what) {
    return OpenWindow.onToolkit(() -> cell.queryAccessibleAttribute(what));
  }

  /** Every figure can be asked for by row and column, and says whose it is. */
  @Test
  void everyCellIsReadOutByRowAndColumn() {
    OpenWindow open = open(demo());
    StopGridPane grid = open.grid();
    StopGrid figures = figures(open);
    assertThat(grid.getAccessibleRole()).isEqualTo(AccessibleRole.TABLE_VIEW);
    assertThat(asked(grid, AccessibleAttribute.ROW_COUNT)).isEqualTo(13);
    assertThat(asked(grid, AccessibleAttribute.COLUMN_COUNT)).isEqualTo(16);
    for (int row = 0; row < 13; row++) {
      for (int tire = 0; tire < 10; tire++) {
        Node cell = cell(grid, row, FIRST_TIRE + tire);
        assertThat(cell.getAccessibleRole()).isEqualTo(AccessibleRole.TABLE_CELL);
        assertThat(of(cell, AccessibleAttribute.TEXT)).isEqualTo(figures.spoken(row, tire));
        assertThat(of(cell, AccessibleAttribute.ROW_INDEX)).isEqualTo(row);
        assertThat(of(cell, AccessibleAttribute.COLUMN_INDEX)).isEqualTo(FIRST_TIRE + tire);
      }
      assertThat(String.valueOf(of(cell(grid, row, 0), AccessibleAttribute.TEXT)))
          .contains(figures.clock(row));
      assertThat(of(cell(grid, row, 1), AccessibleAttribute.TEXT)).isEqualTo(figures.spoken(row));
      assertThat(String.valueOf(of(cell(grid, row, 15), AccessibleAttribute.TEXT)))
          .endsWith(figures.mark(row).word());
    }
    assertThat(asked(grid, AccessibleAttribute.CELL_AT_ROW_COLUMN, 13, 0)).isNull();
    assertThat(asked(grid, AccessibleAttribute.CELL_AT_ROW_COLUMN, 0, 16)).isNull();
  }

  @Test
  void theCellThatHasTheKeyboardIsToldWhenItMoves() {
    OpenWindow open = open(demo());
    StopGridPane grid = open.grid();
    open.focusStop(0);
    Node before = (Node) asked(grid, AccessibleAttribute.FOCUS_ITEM);
    open.keys(KeyCode.DOWN);
    open.keys(KeyCode.RIGHT);
    Node now = (Node) asked(grid, AccessibleAttribute.FOCUS_ITEM);
    assertThat(now).isNotSameAs(before);
    assertThat(of(now, AccessibleAttribute.ROW_INDEX)).isEqualTo(1);
    assertThat(of(now, AccessibleAttribute.COLUMN_INDEX)).isEqualTo(FIRST_TIRE + 1);
    assertThat(of(now, AccessibleAttribute.SELECTED)).isEqualTo(true);
    assertThat(String.valueOf(of(now, AccessibleAttribute.TEXT)))
        .startsWith("Walsenburg CO, pickup axle 1 right, reads ");
    var bounds = OpenWindow.onToolkit(now::getBoundsInParent);
    assertThat(bounds).isEqualTo(OpenWindow.onToolkit(() -> grid.bounds(1, FIRST_TIRE + 1)));
    open.keys(KeyCode.SHIFT, KeyCode.DOWN);
    assertThat((List<?>) asked(grid, AccessibleAttribute.SELECTED_ITEMS)).hasSize(2);
  }

  /** A cell out of sight keeps no node, but for the one that has the keyboard. */
  @Test
  void nodesOfCellsOutOfSightGo() {
    OpenWindow open = open(demo());
    StopGridPane grid = open.grid();
    open.run(() -> open.stage.setHeight(480));
    open.until("not all rows are seen", () -> !grid.sees(12));
    open.focusStop(0);
    open.run(
        () -> {
          for (int row = 0; row < 13; row++) {
            grid.queryAccessibleAttribute(AccessibleAttribute.CELL_AT_ROW_COLUMN, row, 1);
          }
        });
    open.run(() -> grid.scrollPart(1));
    open.until("the last row is seen", () -> grid.sees(12));
    open.until(
        "only cells in sight have a node",
        () ->
            grid.getChildrenUnmodifiable().stream()
                .filter(node -> node.getAccessibleRole() == AccessibleRole.TABLE_CELL)
                .allMatch(
                    node ->
                        grid.sees(
                            (int) node.queryAccessibleAttribute(AccessibleAttribute.ROW_INDEX))));
    Node focused = (Node) asked(grid, AccessibleAttribute.FOCUS_ITEM);
    assertThat(of(focused, AccessibleAttribute.ROW_INDEX)).isEqualTo(0);
  }

  @Test
  void arrowsGoOverTheTiresAndTheTraceFollows() {
    OpenWindow open = open(demo());
    StopGridPane grid = open.grid();
    open.focusStop(0);
    assertThat(grid.column()).as("the tire with the lowest margin").isEqualTo(FIRST_TIRE);
    for (int i = 0; i < 9; i++) {
      open.keys(KeyCode.RIGHT);
    }
    open.until("the last tire has the keyboard", () -> grid.column() == FIRST_TIRE + 9);
    open.focus(open.nodes(dawngauge.ui.route.TracePane.class, pane -> true).get(0));
    open.keys(KeyCode.DOWN);
    open.until("a figure is explained", () -> !open.texts("steps-heading").isEmpty());
    assertThat(open.texts("steps-heading").get(0)).startsWith("trailer axle 2 right, ");
    open.focus(grid);
    for (int i = 0; i < 20; i++) {
      open.keys(KeyCode.LEFT);
    }
    assertThat(grid.column()).isZero();
  }

  @Test
  void stopsAreTakenTogetherByMouse() {
    OpenWindow open = open(demo());
    StopGridPane grid = open.grid();
    open.clickStop(1);
    open.until("it is chosen", () -> open.chosen() == 1);
    open.clickStop(3, KeyCode.SHIFT);
    assertThat(grid.taken()).containsExactly(1, 2, 3);
    open.clickStop(2, KeyCode.CONTROL);
    assertThat(grid.taken()).containsExactly(1, 3);
    open.clickStop(6, KeyCode.CONTROL);
    assertThat(grid.taken()).containsExactly(1, 3, 6);
    assertThat(open.texts("chosen-stop")).containsExactly("3 stops");
    open.clickStop(3);
    assertThat(grid.taken()).as("several stay taken, to be dragged").containsExactly(1, 3, 6);
    open.keys(KeyCode.SPACE);
    open.until("one is taken", () -> grid.taken().equals(new TreeSet<>(Set.of(3))));
  }

  @Test
  void aStopIsInsertedAndRemovedByKeyboard() {
    OpenWindow open = open(demo());
    open.focusStop(2);
    open.keys(KeyCode.INSERT);
    open.until("a stop came", () -> open.stops() == 14);
    assertThat(open.column("stop").get(3)).isEqualTo("New stop");
    open.until("its place has the keyboard", () -> open.field("Place").isFocused());
    open.focus(open.grid());
    assertThat(open.chosen()).isEqualTo(3);
    open.keys(KeyCode.DELETE);
    open.until("it is gone", () -> open.stops() == 13);
    open.press(open.buttons("Undo").get(0));
    open.press(open.buttons("Undo").get(0));
    assertThat(open.document.trip().equals(demo())).isTrue();
  }

  private static ToggleButton part(OpenWindow open, String kind) {
    return open.nodes(ToggleButton.class, b -> b.getStyleClass().contains("verdict-" + kind))
        .get(0);
  }

  @Test
  void theVerdictDimsAndWalks() {
    OpenWindow open = open(demo());
    StopGridPane grid = open.grid();
    ToggleButton set = part(open, "set");
    assertThat(set.getText()).isEqualTo("3 to set");
    open.run(set::fire);
    assertThat(grid.brightRows()).containsExactlyInAnyOrder(4, 9, 10);
    assertThat(open.chosen()).isEqualTo(4);
    open.run(set::fire);
    assertThat(open.chosen()).isEqualTo(9);
    open.run(set::fire);
    assertThat(open.chosen()).isEqualTo(10);
    open.run(set::fire);
    assertThat(open.chosen()).as("around again").isEqualTo(4);
    assertThat(set.isSelected()).isTrue();
    open.run(part(open, "least")::fire);
    assertThat(grid.brightRows()).containsExactly(0);
    assertThat(open.chosen()).isZero();
    assertThat(set.isSelected()).isFalse();
    open.focus(grid);
    open.keys(KeyCode.ESCAPE);
    open.until("nothing is dimmed", () -> grid.brightRows().isEmpty());
    open.run(part(open, "unknown")::fire);
    assertThat(grid.brightRows()).as("all is known: nothing to go to").isEmpty();
    assertThat(open.chosen()).isZero();
  }

  @Test
  void otherFiguresAreShownInAllCells() {
    OpenWindow open = open(demo());
    StopGrid figures = figures(open);
    for (StopGrid.Display display : StopGrid.Display.values()) {
      ToggleButton button =
          open.nodes(ToggleButton.class, b -> display.word().equals(b.getText())).get(0);
      open.run(button::fire);
      StopGrid shown = figures.shown(display);
      for (int tire = 0; tire < 10; tire++) {
        List<String> texts = open.column(shown.columns().get(tire).head());
        for (int row = 0; row < 13; row++) {
          assertThat(texts.get(row)).isEqualTo(shown.cell(row, tire).text());
        }
      }
      assertThat(button.isSelected()).isTrue();
    }
  }

  @Test
  void anAxleIsUnfoldedAndFolded() {
    OpenWindow open = open(autumn());
    StopGridPane grid = open.grid();
    open.focusStop(0);
    assertThat(grid.columnCount()).isEqualTo(4 + 6 + 2);
    open.run(() -> grid.goTo(FIRST_TIRE + 5));
    open.keys(KeyCode.SHORTCUT, KeyCode.RIGHT);
    open.until("a column a tire", () -> grid.columnCount() == 4 + 9 + 2);
    assertThat(open.column("h2lo")).hasSize(10);
    open.run(() -> grid.goTo(FIRST_TIRE + 6));
    open.keys(KeyCode.SHORTCUT, KeyCode.LEFT);
    open.until("one column again", () -> grid.columnCount() == 4 + 6 + 2);
  }

  @Test
  void theForecastIsAPlainTextOneKeyAway() {
    OpenWindow open = open(demo());
    open.focusStop(0);
    open.keys(KeyCode.SHORTCUT, KeyCode.T);
    open.until("it is there", () -> open.nodes(TextArea.class, area -> true).size() == 1);
    TextArea area = open.nodes(TextArea.class, known -> true).get(0);
    open.until("it has the keyboard", area::isFocused);
    assertThat(area.isEditable()).isFalse();
    assertThat(area.getText()).contains("Dalhart TX", "Add: ", "trailer axle 2");
    assertThat(area.getAccessibleText()).isNotBlank();
    open.keys(KeyCode.ESCAPE);
    open.until("the grid is back", () -> open.stops() == 13);
    open.until("it has the keyboard", () -> open.grid().isFocused());
  }

  /** Sizes follow the type. */
  @Test
  void aLargerTypeMakesLargerRows() {
    OpenWindow open = open(demo());
    StopGridPane grid = open.grid();
    double row = OpenWindow.<Double>onToolkit(() -> grid.bounds(0, 0).getHeight());
    assertThat(row).isEqualTo(24);
    Region type = (Region) OpenWindow.onToolkit(() -> grid.lookup(".grid-type"));
    open.run(() -> type.setStyle("-fx-font-size: 26px"));
    open.until("it is twice as high", () -> grid.bounds(0, 0).getHeight() == 48);
  }

  @Test
  void aFigureReadThereAndOneToSetAreToldApart() {
    OpenWindow open = open(demo());
    StopGrid figures = figures(open);
    assertThat(figures.cell(0, 0).read()).isTrue();
    assertThat(figures.cell(1, 0).read()).isFalse();
    assertThat(open.grid().spoken(0, FIRST_TIRE)).contains("was read 60");
  }

  /** What is looked for stays bright; Enter goes on through stops and tires, Escape ends it. */
  @Test
  void stopsAndTiresAreFound() {
    OpenWindow open = open(demo());
    open.focusStop(0);
    open.keys(KeyCode.SHORTCUT, KeyCode.F);
    open.until("the search is there", () -> open.field("Find a stop or tire").isFocused());
    open.write("Find a stop or tire", "ra");
    assertThat(OpenWindow.onToolkit(() -> open.grid().brightRows())).contains(2).doesNotContain(0);
    open.keys(KeyCode.ENTER);
    assertThat(open.chosen()).isEqualTo(2);
    open.write("Find a stop or tire", "t2r");
    open.keys(KeyCode.ENTER);
    assertThat(OpenWindow.onToolkit(() -> open.grid().column())).isEqualTo(FIRST_TIRE + 9);
    open.keys(KeyCode.ESCAPE);
    open.until("the grid has the keyboard", () -> open.grid().isFocused());
    assertThat(OpenWindow.onToolkit(() -> open.grid().brightRows())).isEmpty();
  }

  /** The verdict line leaves out what has no room, never widens the page, and then stands still. */
  @Test
  void theVerdictFitsAnyWidthAndStandsStill() {
    OpenWindow open = open(gap());
    for (double width : new double[] {1280, 900, 700, 1280}) {
      open.run(() -> open.stage.setWidth(width));
      open.until("it has its width", () -> open.stage.getScene().getWidth() == width);
      Region line =
          OpenWindow.onToolkit(() -> (Region) open.stage.getScene().getRoot().lookup(".verdict"));
      open.until("it stands still", () -> !line.isNeedsLayout());
      open.until("it fits", () -> line.getWidth() <= width);
      String go =
          OpenWindow.onToolkit(
              () -> ((ToggleButton) line.getChildrenUnmodifiable().get(0)).getText());
      assertThat(go).startsWith("go, as far as it is known");
    }
  }
}

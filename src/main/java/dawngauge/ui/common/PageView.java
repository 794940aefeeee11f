package dawngauge.ui.common;

import dawngauge.page.Block;
import dawngauge.page.Page;
import dawngauge.page.PageRenderer;
import dawngauge.page.Plot;
import java.util.List;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.value.ObservableBooleanValue;
import javafx.geometry.HPos;
import javafx.geometry.VPos;
import javafx.scene.AccessibleRole;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.TitledPane;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;

/**
 * Any page in a window, without its title, which the window has elsewhere. Its text is selected by
 * mouse or keyboard and copied; what stands behind the rest is folded.
 */
public final class PageView extends StackPane {

  private final VBox content = new VBox(4);
  private final TextSelection selection;
  private final ObservableBooleanValue dark;

  /**
   * An empty view of pages without plots.
   *
   * @param name what is shown, to be read out
   */
  public PageView(String name) {
    this(name, new ReadOnlyBooleanWrapper(false));
  }

  /**
   * An empty view.
   *
   * @param name what is shown, to be read out
   * @param dark whether the window is dark
   */
  public PageView(String name, ObservableBooleanValue dark) {
    this.dark = dark;
    this.selection = new TextSelection(this, content);
    getStyleClass().add("page-view");
    content.getStyleClass().add("page-blocks");
    setAccessibleRole(AccessibleRole.PARENT);
    setAccessibleText(name);
    getChildren().addAll(content, selection.shade());
    setMinHeight(Region.USE_PREF_SIZE);
  }

  /** Shows a page. */
  public void show(Page page) {
    show(page.blocks());
  }

  /** Shows parts of a page. */
  public void show(List<Block> blocks) {
    selection.clear();
    fill(content, blocks);
  }

  private void fill(VBox box, List<Block> blocks) {
    box.getChildren().clear();
    blocks.forEach(block -> block.draw(new Drawing(box)));
  }

  private static Label label(String text, String styleClass) {
    Label label = new Label(text);
    label.getStyleClass().add(styleClass);
    label.setWrapText(true);
    label.setMinHeight(Region.USE_PREF_SIZE);
    return label;
  }

  /** Reasons, folded. */
  public static TitledPane why(List<String> reasons) {
    VBox lines = new VBox(2);
    reasons.forEach(text -> lines.getChildren().add(label(text, "figure-line")));
    return folded("Why", lines);
  }

  private static TitledPane folded(String title, Node content) {
    TitledPane pane = new TitledPane(title, content);
    pane.setExpanded(false);
    pane.setAnimated(false);
    pane.getStyleClass().add("folded");
    pane.setMinHeight(Region.USE_PREF_SIZE);
    return pane;
  }

  /** Adds blocks to a box. */
  private final class Drawing implements PageRenderer {
    private final VBox box;

    Drawing(VBox box) {
      this.box = box;
    }

    private void add(Node node) {
      box.getChildren().add(node);
    }

    @Override
    public void heading(Block.Heading heading) {
      Label label = label(heading.text(), heading.level() == 1 ? "rig-heading" : "rig-subheading");
      label.setMaxWidth(Double.MAX_VALUE);
      add(label);
    }

    @Override
    public void card(Block.Card card) {
      VBox lines = new VBox(2, label(card.title(), "card-title"));
      lines.getStyleClass().add("page-card");
      card.todo().forEach(text -> lines.getChildren().add(label(text, "card-do")));
      card.watch().forEach(text -> lines.getChildren().add(label(text, "figure-line")));
      if (!card.why().isEmpty()) {
        lines.getChildren().add(PageView.why(card.why()));
      }
      add(lines);
    }

    @Override
    public void table(Block.Table table) {
      GridPane grid = new GridPane();
      grid.getStyleClass().add("compared");
      grid.setAccessibleText(table.spoken());
      for (Block.Column column : table.columns()) {
        ColumnConstraints constraints = new ColumnConstraints();
        boolean right = column.side() == Block.Side.RIGHT;
        constraints.setHalignment(right ? HPos.RIGHT : HPos.LEFT);
        constraints.setHgrow(right ? Priority.NEVER : Priority.SOMETIMES);
        if (right && !table.headed()) {
          constraints.setMinWidth(Region.USE_PREF_SIZE); // a figure is not broken
        }
        grid.getColumnConstraints().add(constraints);
      }
      grid.setMaxWidth(Region.USE_PREF_SIZE);
      int row = 0;
      if (table.headed()) {
        List<String> heads = table.columns().stream().map(Block.Column::head).toList();
        row(grid, row++, heads, "table-head");
      }
      for (List<String> cells : table.rows()) {
        row(grid, row++, cells, "figure-line");
      }
      add(grid);
    }

    private void row(GridPane grid, int row, List<String> cells, String styleClass) {
      for (int i = 0; i < cells.size(); i++) {
        Label cell = label(cells.get(i), styleClass);
        GridPane.setValignment(cell, VPos.TOP); // a figure stands beside the first of its words
        grid.add(cell, i, row);
      }
    }

    @Override
    public void note(Block.Note note) {
      add(
          label(
              note.text(),
              switch (note.weight()) {
                case MAIN -> "page-main";
                case PLAIN -> "figure-line";
                case CAUTION, LESSER -> "lesser";
              }));
    }

    @Override
    public void bullets(Block.Bullets bullets) {
      bullets.lines().forEach(text -> add(label(text, "figure-line")));
    }

    @Override
    public void why(Block.Why why) {
      VBox inside = new VBox(4);
      fill(inside, why.blocks());
      add(folded(why.title(), inside));
    }

    @Override
    public void plot(Plot plot) {
      if (plot.isKnown()) {
        add(new PlotView(plot, dark));
        add(label(plot.spoken(), "lesser"));
      }
    }
  }
}

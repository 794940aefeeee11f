package dawngauge.ui.route;

import dawngauge.advice.Advice;
import dawngauge.ledger.Ledger;
import dawngauge.ledger.Trace;
import dawngauge.planner.Plan;
import dawngauge.quantity.UnitSystem;
import dawngauge.trip.WheelPosition;
import dawngauge.ui.common.Look;
import java.util.ArrayList;
import java.util.List;
import javafx.scene.Group;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Pane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import javafx.scene.shape.Rectangle;
import javafx.scene.transform.Scale;
import org.jspecify.annotations.Nullable;

/** Ledger and trace on paper: dark on white, broken between rows, headed and numbered. */
public final class LedgerPrint {

  /** Width on which ledger and trace are laid out; scaled to the paper's. */
  private static final double WIDE = 800;

  private static final double HEAD = 82;

  private static final double TRACE = 300;

  private final PrintedRows ledger;
  private final TracePane trace = new TracePane((heading, steps) -> {});
  private final HBox content = new HBox();
  private final Pane window = new Pane(content);
  private final Label head = new Label();
  private final VBox sheet = new VBox(head, window);
  private final Group page = new Group(sheet);
  private final String title;
  private final double scale;
  private final List<double[]> parts = new ArrayList<>();

  /**
   * Lays a trip out on paper.
   *
   * @param position the tire whose trace is shown; none is where nothing is known
   * @param width what can be printed on, points
   * @param height of the same
   */
  public LedgerPrint(
      Plan planned,
      UnitSystem units,
      @Nullable WheelPosition position,
      double width,
      double height) {
    scale = width / WIDE;
    Ledger shown =
        Ledger.of(
            planned.trip(), planned.advice(), planned.problems(), planned.fitness(), units, null);
    title =
        planned.trip().name()
            + (position == null ? "" : " · trace of " + position.words())
            + "\n"
            + Ledger.CAUTIONS.get(0)
            + " "
            + Ledger.CAUTIONS.get(1);
    head.setWrapText(true);
    head.setMinHeight(HEAD);
    head.setMaxHeight(HEAD);
    head.setPrefWidth(WIDE);
    head.getStyleClass().add("printed-head");
    sheet.getStyleClass().addAll("planner", "printed");
    ledger = new PrintedRows(shown);
    content.getChildren().addAll(ledger, trace);
    HBox.setHgrow(ledger, Priority.ALWAYS);
    trace.setPrefWidth(TRACE);
    trace.setMinWidth(TRACE);
    Scene unseen = new Scene(new Group(page));
    Look.ruleOnPaper(unseen);
    page.getTransforms().add(new Scale(scale, scale));
    content.setPrefWidth(WIDE);
    settle();
    Advice advice = planned.advice();
    boolean traced = position != null && advice != null && advice.tracks().containsKey(position);
    trace.setVisible(traced);
    trace.setManaged(traced);
    settle();
    if (traced && advice != null && position != null) {
      trace.show(
          Trace.of(advice, position, units),
          advice,
          units,
          planned.trip().rig().shortForm(position));
      trace.beside(new RegionRows(ledger.stopRows()));
    }
    settle();
    split(height / scale - HEAD);
  }

  private void settle() {
    sheet.applyCss();
    content.resize(WIDE, content.prefHeight(WIDE));
    sheet.layout();
    content.layout();
  }

  /** Breaks where a row ends; a day's heading stays with its first stop. */
  private void split(double room) {
    List<Node> rows = ledger.getChildren();
    double from = 0;
    double end = 0;
    for (int i = 0; i < rows.size(); i++) {
      boolean heading = rows.get(i).getStyleClass().contains("day-heading");
      int last = heading && i + 1 < rows.size() ? i + 1 : i;
      double bottom = rows.get(last).getBoundsInParent().getMaxY();
      if (bottom - from > room && end > from) {
        parts.add(new double[] {from, end});
        from = end;
      }
      if (!heading) {
        end = bottom;
      }
    }
    parts.add(new double[] {from, Math.max(end, from)});
  }

  /** Number of pages. */
  public int pages() {
    return parts.size();
  }

  /** What stands on a page, 0 first; one page at a time, for each takes it from the one before. */
  public Node page(int index) {
    double from = parts.get(index)[0];
    double to = parts.get(index)[1];
    int newline = title.indexOf('\n');
    head.setText(
        title.substring(0, newline)
            + " · page "
            + (index + 1)
            + " of "
            + parts.size()
            + title.substring(newline));
    content.setTranslateY(-from);
    window.setClip(new Rectangle(0, 0, WIDE, to - from));
    window.setMinHeight(to - from);
    window.setMaxHeight(to - from);
    settle();
    trace.see(from, to - from);
    settle();
    return page;
  }
}

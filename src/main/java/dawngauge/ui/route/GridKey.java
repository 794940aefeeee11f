package dawngauge.ui.route;

import dawngauge.advice.Mark;
import dawngauge.ui.common.Palette;
import java.util.ArrayList;
import java.util.List;
import javafx.geometry.VPos;
import javafx.scene.canvas.Canvas;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.control.Label;
import javafx.scene.layout.FlowPane;
import javafx.scene.paint.Color;
import javafx.scene.text.Font;
import javafx.scene.text.FontWeight;
import javafx.scene.text.TextAlignment;

/** What the cells of the grid and the lines of the trace are: each drawn, its name beside it. */
final class GridKey extends FlowPane {

  private static final double WIDE = 24;
  private static final double HIGH = 15;

  /** A cell as it is drawn in the grid. */
  private interface Sample {
    void draw(GraphicsContext g, Palette palette);
  }

  private final TraceKey trace = new TraceKey();
  private final List<Runnable> drawn = new ArrayList<>();
  private Palette palette = Palette.LIGHT;

  GridKey() {
    super(9, 1);
    getStyleClass().add("grid-key");
    add(
        "set to",
        (g, p) -> {
          figure(g, p.accent(), true);
          g.setStroke(p.accent());
          g.setLineWidth(1.6);
          g.strokeRect(1, 1, WIDE - 2, HIGH - 2);
        });
    add(
        Mark.RECHECK.word(),
        (g, p) -> {
          figure(g, p.ink(), false);
          g.setFill(p.ink());
          g.fillPolygon(new double[] {WIDE - 7, WIDE, WIDE}, new double[] {0, 0, 7}, 3);
        });
    add(
        Mark.HOLD.word(),
        (g, p) -> {
          g.setFill(p.hold());
          g.fillRect(0, 0, WIDE, HIGH);
          figure(g, p.paper(), true);
        });
    add(
        "read there",
        (g, p) -> {
          figure(g, p.lesser(), false);
          g.setStroke(p.lesser());
          g.setLineWidth(1);
          g.strokeLine(5, HIGH - 0.5, WIDE - 5, HIGH - 0.5);
        });
    add(
        Mark.UNKNOWN.word(),
        (g, p) -> {
          g.setFill(p.lesser());
          g.fillText("·", WIDE / 2, HIGH / 2);
        });
    getChildren().addAll(trace.entries());
  }

  private static void figure(GraphicsContext g, Color color, boolean bold) {
    Font usual = Font.getDefault();
    g.setFont(Font.font(usual.getFamily(), bold ? FontWeight.BOLD : FontWeight.NORMAL, 11));
    g.setFill(color);
    g.fillText("85", WIDE / 2, HIGH / 2);
  }

  private void add(String name, Sample sample) {
    Canvas canvas = new Canvas(WIDE, HIGH);
    var g = canvas.getGraphicsContext2D();
    g.setTextAlign(TextAlignment.CENTER);
    g.setTextBaseline(VPos.CENTER);
    Label label = new Label(name, canvas);
    label.setGraphicTextGap(5);
    label.setMinWidth(USE_PREF_SIZE);
    label.getStyleClass().add("lesser");
    drawn.add(
        () -> {
          g.clearRect(0, 0, WIDE, HIGH);
          sample.draw(g, palette);
        });
    getChildren().add(label);
  }

  /** Draws in the colours of the grid. */
  void color(Palette other) {
    palette = other;
    drawn.forEach(Runnable::run);
    trace.color(other);
  }
}

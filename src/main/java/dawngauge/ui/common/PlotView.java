package dawngauge.ui.common;

import dawngauge.page.Plot;
import dawngauge.page.PlotCanvas;
import dawngauge.page.PlotDrawing;
import javafx.beans.value.ChangeListener;
import javafx.beans.value.ObservableBooleanValue;
import javafx.beans.value.WeakChangeListener;
import javafx.geometry.VPos;
import javafx.scene.canvas.Canvas;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.layout.Region;
import javafx.scene.paint.Color;
import javafx.scene.text.Font;
import javafx.scene.text.Text;
import javafx.scene.text.TextAlignment;

/** A plot as wide as there is room, in the colors of the theme. */
final class PlotView extends Region {

  private static final double HEIGHT = 210;
  private static final double LEAST_WIDTH = 130;
  private static final double LETTER = 11;

  private final Canvas canvas = new Canvas();
  private final Plot plot;
  private final ObservableBooleanValue dark;

  /** Held here, so that it lives as long as the plot and no longer. */
  private final ChangeListener<Boolean> themed = (value, was, is) -> draw();

  PlotView(Plot plot, ObservableBooleanValue dark) {
    this.plot = plot;
    this.dark = dark;
    getChildren().add(canvas);
    setMinHeight(HEIGHT);
    setPrefHeight(HEIGHT);
    setAccessibleText("Plot: " + plot.spoken());
    sceneProperty().addListener(change -> draw());
    widthProperty().addListener(change -> draw());
    dark.addListener(new WeakChangeListener<>(themed));
  }

  private void draw() {
    canvas.setWidth(getWidth());
    canvas.setHeight(HEIGHT);
    GraphicsContext g = canvas.getGraphicsContext2D();
    g.clearRect(0, 0, getWidth(), HEIGHT);
    if (getWidth() >= LEAST_WIDTH) {
      Palette palette = dark.get() ? Palette.DARK : Palette.LIGHT;
      PlotDrawing.draw(plot, new Themed(g, palette), getWidth() - 8, HEIGHT);
    }
  }

  /** A canvas in the colors of a theme. */
  private record Themed(GraphicsContext g, Palette palette) implements PlotCanvas {

    private Color color(Ink ink) {
      return switch (ink) {
        case MAIN, THIN -> palette.ink();
        case GRID -> palette.grid();
        case NIGHT -> palette.night();
        case RANGE -> palette.band();
      };
    }

    @Override
    public void fill(Ink ink, double[] xs, double[] ys) {
      g.setFill(color(ink));
      g.fillPolygon(xs, ys, xs.length);
    }

    @Override
    public void line(Ink ink, double wide, boolean dashed, double[] xs, double[] ys) {
      g.setStroke(color(ink));
      g.setLineWidth(wide);
      if (dashed) {
        g.setLineDashes(6, 3);
      }
      g.strokePolyline(xs, ys, xs.length);
      g.setLineDashes();
    }

    @Override
    public void dot(double x, double y, double radius, boolean filled) {
      g.setStroke(palette.ink());
      g.setLineWidth(1);
      g.setFill(filled ? palette.ink() : palette.paper());
      g.fillOval(x - radius, y - radius, 2 * radius, 2 * radius);
      g.strokeOval(x - radius, y - radius, 2 * radius, 2 * radius);
    }

    @Override
    public void text(String text, double x, double y, Anchor anchor) {
      g.setFill(palette.ink());
      g.setFont(Font.font(LETTER));
      g.setTextBaseline(VPos.BASELINE);
      g.setTextAlign(
          switch (anchor) {
            case LEFT -> TextAlignment.LEFT;
            case MIDDLE -> TextAlignment.CENTER;
            case RIGHT -> TextAlignment.RIGHT;
          });
      g.fillText(text, x, y);
    }

    @Override
    public double wide(String text) {
      Text measured = new Text(text);
      measured.setFont(Font.font(LETTER));
      return measured.getLayoutBounds().getWidth();
    }

    @Override
    public double letter() {
      return LETTER;
    }
  }
}

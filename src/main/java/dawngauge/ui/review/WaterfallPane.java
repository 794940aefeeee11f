package dawngauge.ui.review;

import dawngauge.ledger.AccountLines;
import dawngauge.ui.common.Palette;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import javafx.beans.value.ObservableBooleanValue;
import javafx.scene.canvas.Canvas;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.layout.Region;
import javafx.scene.text.Font;
import org.jspecify.annotations.Nullable;

/**
 * A pressure account as falling and rising bars: from the first reading down and up to the last,
 * each part with its words and figure. All of it stands as a table beside it too.
 */
final class WaterfallPane extends Region {

  private static final double HEIGHT = 30;
  private static final double BAR = 16;
  private static final double WORDS = 230;
  private static final double FIGURE = 64;

  /** Least share of the width that the whole difference takes. */
  private static final double LEAST_SPAN = 1e-9;

  private final Canvas canvas = new Canvas();
  private final ObservableBooleanValue dark;
  private @Nullable AccountLines account;

  WaterfallPane(ObservableBooleanValue dark) {
    this.dark = dark;
    getChildren().add(canvas);
    setMinHeight(0);
    dark.addListener(change -> draw());
    widthProperty().addListener(change -> draw());
  }

  /** Shows an account; null shows nothing. */
  void show(@Nullable AccountLines lines) {
    account = lines;
    double rows = lines == null ? 0 : lines.parts().size() + 2;
    setPrefHeight(rows * HEIGHT + 6);
    setMinHeight(rows * HEIGHT + 6);
    setAccessibleText(lines == null ? "No account" : spoken(lines));
    draw();
  }

  private static String spoken(AccountLines lines) {
    StringBuilder text = new StringBuilder(lines.from());
    lines
        .parts()
        .forEach(part -> text.append("; ").append(part.words()).append(' ').append(part.text()));
    return text.append("; ").append(lines.to()).toString();
  }

  private void draw() {
    AccountLines lines = account;
    canvas.setWidth(getWidth());
    canvas.setHeight(getPrefHeight() < 0 ? 0 : getPrefHeight());
    GraphicsContext g = canvas.getGraphicsContext2D();
    g.clearRect(0, 0, canvas.getWidth(), canvas.getHeight());
    if (lines == null || getWidth() < WORDS + 2 * FIGURE) {
      return;
    }
    List<double[]> bars = new ArrayList<>();
    double at = lines.start();
    double low = Math.min(lines.start(), lines.end());
    double high = Math.max(lines.start(), lines.end());
    for (AccountLines.Part part : lines.parts()) {
      bars.add(new double[] {at, at + part.figure()});
      at += part.figure();
      low = Math.min(low, at);
      high = Math.max(high, at);
    }
    double span = Math.max(high - low, LEAST_SPAN);
    double left = WORDS;
    double scale = (getWidth() - WORDS - FIGURE - 12) / (span * 1.1);
    double from = low - span * 0.05;
    Palette palette = dark.get() ? Palette.DARK : Palette.LIGHT;
    g.setFont(Font.font(12));
    row(g, palette, 0, lines.from(), number(lines.start()), true);
    tick(g, palette, 0, left + (lines.start() - from) * scale);
    for (int i = 0; i < bars.size(); i++) {
      AccountLines.Part part = lines.parts().get(i);
      double y = (i + 1) * HEIGHT;
      double begin = left + (bars.get(i)[0] - from) * scale;
      double end = left + (bars.get(i)[1] - from) * scale;
      g.setFill(part.figure() < 0 ? palette.warm() : palette.limit());
      g.fillRect(
          Math.min(begin, end), y + (HEIGHT - BAR) / 2, Math.max(1, Math.abs(end - begin)), BAR);
      g.setStroke(palette.ink());
      g.strokeRect(
          Math.min(begin, end) + 0.5,
          y + (HEIGHT - BAR) / 2 + 0.5,
          Math.max(1, Math.abs(end - begin)),
          BAR);
      g.setLineDashes(2, 3);
      g.strokeLine(begin, y - HEIGHT / 2 + BAR / 2, begin, y + HEIGHT / 2);
      g.setLineDashes();
      row(g, palette, i + 1, part.words(), part.text(), false);
    }
    row(g, palette, bars.size() + 1, lines.to(), number(lines.end()), true);
    tick(g, palette, bars.size() + 1, left + (lines.end() - from) * scale);
  }

  private void row(
      GraphicsContext g, Palette palette, int row, String words, String figure, boolean main) {
    g.setFill(palette.ink());
    double y = row * HEIGHT + HEIGHT / 2 + 4;
    g.fillText(words, main ? 0 : 14, y, WORDS - 20);
    g.fillText(figure, getWidth() - FIGURE, y, FIGURE);
  }

  private static void tick(GraphicsContext g, Palette palette, int row, double x) {
    g.setStroke(palette.ink());
    g.setLineWidth(2);
    g.strokeLine(x, row * HEIGHT + 4, x, (row + 1) * HEIGHT - 4);
    g.setLineWidth(1);
  }

  private static String number(double figure) {
    return String.format(Locale.ROOT, "%.2f", figure).replaceAll("0$", "");
  }
}

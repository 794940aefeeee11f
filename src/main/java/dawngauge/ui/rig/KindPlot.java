package dawngauge.ui.rig;

import dawngauge.quantity.GaugePressure;
import dawngauge.quantity.Mass;
import dawngauge.quantity.UnitSystem;
import dawngauge.tire.Capacity;
import dawngauge.tire.Fitment;
import dawngauge.tire.LoadInflationTable;
import dawngauge.tire.TireSpec;
import dawngauge.ui.common.Palette;
import java.util.function.DoubleUnaryOperator;
import javafx.beans.value.ObservableBooleanValue;
import javafx.scene.canvas.Canvas;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.layout.StackPane;
import javafx.scene.text.Font;
import org.jspecify.annotations.Nullable;

/**
 * Load over cold pressure of one kind of tire, fitted alone: the straight line that the sidewall
 * gives, and the maker's rows beside it where they are typed.
 */
final class KindPlot extends StackPane {

  private static final double WIDTH = 320;
  private static final double HEIGHT = 150;
  private static final double LEFT = 8;
  private static final double BOTTOM = 34;
  private static final double TOP = 18;
  private static final int STEPS = 120;

  private final Canvas canvas = new Canvas(WIDTH, HEIGHT);
  private final ObservableBooleanValue dark;
  private @Nullable TireSpec spec;
  private UnitSystem units = UnitSystem.US;

  KindPlot(ObservableBooleanValue dark) {
    this.dark = dark;
    getStyleClass().add("kind-plot");
    getChildren().add(canvas);
    managedProperty().bind(visibleProperty());
    dark.addListener(change -> draw());
  }

  /** Shows a kind; nothing where its rated load or pressure is not known. */
  void show(TireSpec shown, UnitSystem shownUnits) {
    if (shown.equals(spec) && shownUnits.equals(units)) {
      return;
    }
    spec = shown;
    units = shownUnits;
    draw();
  }

  private static @Nullable Capacity capacity(TireSpec spec) {
    return Capacity.of(spec, new Fitment(false, true), null).valueOrNull();
  }

  private void draw() {
    TireSpec kind = spec;
    Capacity line = kind == null ? null : capacity(kind.withRows(null));
    setVisible(line != null);
    if (kind == null || line == null) {
      return;
    }
    LoadInflationTable table = kind.rows();
    Capacity rows = table == null ? null : capacity(kind);
    double last =
        table == null ? 0 : table.rows().get(table.rows().size() - 1).pressure().value().si();
    double mostPascals = Math.max(line.ratedPascals(), last) * 1.04;
    double mostKilograms =
        Math.max(line.ratedKilograms(), rows == null ? 0 : rows.mostKilograms()) * 1.08;
    Palette palette = dark.get() ? Palette.DARK : Palette.LIGHT;
    GraphicsContext g = canvas.getGraphicsContext2D();
    g.clearRect(0, 0, WIDTH, HEIGHT);
    g.setFont(Font.font(11));
    g.setStroke(palette.lesser());
    g.strokeLine(LEFT, HEIGHT - BOTTOM + 0.5, WIDTH - 4, HEIGHT - BOTTOM + 0.5);
    g.setLineWidth(1.2);
    g.setStroke(palette.limit());
    g.setLineDashes(4, 3);
    curve(g, line::kilogramsAt, mostPascals, mostKilograms);
    g.setLineDashes();
    g.setFill(palette.limit());
    g.fillText("– – sidewall, straight line", LEFT, TOP - 6);
    if (rows != null && rows.fromRows()) {
      g.setStroke(palette.ink());
      g.setLineWidth(2);
      curve(g, rows::kilogramsAt, mostPascals, mostKilograms);
      g.setFill(palette.ink());
      g.fillText("— maker's rows", LEFT + 160, TOP - 6);
    }
    g.setFill(palette.lesser());
    g.fillText(
        "to "
            + units.format(new GaugePressure(line.ratedPascals()))
            + " cold: "
            + units.format(new Mass(line.ratedKilograms()))
            + ", single",
        LEFT,
        HEIGHT - BOTTOM + 16);
    setAccessibleText(
        "Load over cold pressure: the sidewall's straight line"
            + (rows != null && rows.fromRows() ? ", and the maker's rows" : "")
            + ", to "
            + units.format(new GaugePressure(line.ratedPascals()))
            + " and "
            + units.format(new Mass(line.ratedKilograms())));
  }

  private static void curve(
      GraphicsContext g, DoubleUnaryOperator kilograms, double mostPascals, double mostKilograms) {
    g.beginPath();
    for (int i = 0; i <= STEPS; i++) {
      double pascals = mostPascals * i / STEPS;
      double x = LEFT + (WIDTH - LEFT - 8) * i / STEPS;
      double y =
          HEIGHT
              - BOTTOM
              - (HEIGHT - BOTTOM - TOP) * kilograms.applyAsDouble(pascals) / mostKilograms;
      if (i == 0) {
        g.moveTo(x, y);
      } else {
        g.lineTo(x, y);
      }
    }
    g.stroke();
  }
}

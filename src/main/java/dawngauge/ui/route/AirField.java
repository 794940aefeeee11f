package dawngauge.ui.route;

import dawngauge.problem.Outcome;
import dawngauge.quantity.QuantityKind;
import dawngauge.quantity.UnitSystem;
import dawngauge.trip.Air;
import dawngauge.ui.common.FigureField;
import dawngauge.ui.common.Forms;
import java.util.function.Supplier;

/** Whether air is to be had, as it is typed: "none", "yes", "up to 100 psi". */
final class AirField {

  static final String NAME = "Air to be had";

  private static final String HIGHEST = "up to ";

  private AirField() {}

  static void add(EditorGrid grid, FigureField<Air> field, Supplier<String> shown) {
    field.field().setPromptText("none, yes, or up to 100 psi");
    grid.field(() -> "Air hose", field, shown);
  }

  static Outcome<Air> parse(String text, UnitSystem units) {
    if (text.isEmpty() || text.equals("none")) {
      return Outcome.of(Air.NONE);
    } else if (text.equals("yes")) {
      return Outcome.of(Air.YES);
    }
    String figure = text.startsWith(HIGHEST) ? text.substring(HIGHEST.length()) : text;
    return Forms.positive(QuantityKind.GAUGE_PRESSURE, units)
        .apply(figure)
        .map(upTo -> new Air(true, upTo.orElse(null)));
  }

  static String text(Air air) {
    if (!air.available()) {
      return "none";
    }
    return air.upTo() == null ? "yes" : HIGHEST + air.upTo().text();
  }
}

package dawngauge.report;

import dawngauge.quantity.Quantity;
import dawngauge.quantity.QuantityKind;
import dawngauge.quantity.Unit;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.DoubleFunction;
import org.jspecify.annotations.Nullable;

/** Figures for other programs: SI and U.S. units side by side. */
final class BothUnits {

  private static final int DECIMALS = 3;

  private BothUnits() {}

  /** The units a kind is written in, SI first, by the name each has in a column or field. */
  static Map<String, Unit> unitsOf(QuantityKind<?> kind) {
    Map<String, Unit> units = new LinkedHashMap<>();
    if (kind == QuantityKind.GAUGE_PRESSURE) {
      units.put("kPa", Unit.KILOPASCAL);
      units.put("psi", Unit.PSI);
    } else if (kind == QuantityKind.TEMPERATURE || kind == QuantityKind.TEMPERATURE_DIFFERENCE) {
      units.put("celsius", Unit.CELSIUS);
      units.put("fahrenheit", Unit.FAHRENHEIT);
    } else if (kind == QuantityKind.MASS) {
      units.put("kg", Unit.KILOGRAM);
      units.put("lb", Unit.POUND);
    } else if (kind == QuantityKind.ELEVATION) {
      units.put("m", Unit.METER);
      units.put("ft", Unit.FOOT);
    } else if (kind == QuantityKind.DISTANCE) {
      units.put("km", Unit.KILOMETER);
      units.put("mi", Unit.MILE);
    } else if (kind == QuantityKind.SPEED) {
      units.put("kmPerHour", Unit.KILOMETER_PER_HOUR);
      units.put("milesPerHour", Unit.MILE_PER_HOUR);
    } else if (kind == QuantityKind.RATIO) {
      units.put("percent", Unit.PERCENT);
    } else {
      throw new IllegalArgumentException("no units for " + kind);
    }
    return units;
  }

  /** A quantity by its SI number; null where the number is not known or without end. */
  static @Nullable Quantity known(double si, DoubleFunction<? extends Quantity> maker) {
    return Double.isFinite(si) ? maker.apply(si) : null;
  }

  /** The number in a unit, to three decimals. */
  static BigDecimal number(Quantity quantity, Unit unit) {
    BigDecimal rounded = new BigDecimal(quantity.in(unit)).setScale(DECIMALS, RoundingMode.HALF_UP);
    BigDecimal shortened = rounded.stripTrailingZeros();
    return shortened.scale() < 0 ? shortened.setScale(0, RoundingMode.UNNECESSARY) : shortened;
  }

  /** Kinds of the figures of {@link TireFigures}, by name. */
  static QuantityKind<?> kindOf(String figure) {
    if (figure.equals("load")) {
      return QuantityKind.MASS;
    }
    return List.of("margin", "chanceUnderFloor", "chanceNotShown").contains(figure)
        ? QuantityKind.RATIO
        : QuantityKind.GAUGE_PRESSURE;
  }
}

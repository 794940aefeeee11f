package dawngauge.quantity;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** The units in which figures are shown. What was typed is never changed by it. */
public enum UnitSystem {
  /** psi, °F, mi, ft, lb, mph, 32nds. */
  US,
  /** bar, °C, km, m, kg, km/h, mm. */
  SI;

  private record Shown(Unit unit, int decimals) {}

  /** The unit in which a kind is shown. */
  public Unit unitOf(QuantityKind<?> kind) {
    return shown(kind).unit;
  }

  /** Number and unit, rounded as that kind is shown: "80.0 psi", "5.52 bar", "+12 %". */
  public String format(Quantity quantity) {
    Unit unit = unitOf(quantity.kind());
    String gap = unit == Unit.THIRTY_SECOND_INCH ? "" : " ";
    return number(quantity) + gap + unit.symbol();
  }

  /** The number alone, rounded as that kind is shown. */
  public String number(Quantity quantity) {
    Shown shown = shown(quantity.kind());
    return number(quantity, shown.decimals);
  }

  /** The number alone, with so many decimals. */
  public String number(Quantity quantity, int decimals) {
    Unit unit = unitOf(quantity.kind());
    return fixed(quantity.in(unit), decimals);
  }

  private Shown shown(QuantityKind<?> kind) {
    boolean us = this == US;
    if (kind == QuantityKind.PRESSURE || kind == QuantityKind.GAUGE_PRESSURE) {
      return us ? new Shown(Unit.PSI, 1) : new Shown(Unit.BAR, 2);
    } else if (kind == QuantityKind.TEMPERATURE) {
      return us ? new Shown(Unit.FAHRENHEIT, 0) : new Shown(Unit.CELSIUS, 0);
    } else if (kind == QuantityKind.TEMPERATURE_DIFFERENCE) {
      return us ? new Shown(Unit.FAHRENHEIT, 0) : new Shown(Unit.CELSIUS, 0);
    } else if (kind == QuantityKind.ELEVATION) {
      return us ? new Shown(Unit.FOOT, 0) : new Shown(Unit.METER, 0);
    } else if (kind == QuantityKind.DISTANCE) {
      return us ? new Shown(Unit.MILE, 0) : new Shown(Unit.KILOMETER, 0);
    } else if (kind == QuantityKind.SPEED) {
      return us ? new Shown(Unit.MILE_PER_HOUR, 0) : new Shown(Unit.KILOMETER_PER_HOUR, 0);
    } else if (kind == QuantityKind.MASS) {
      return us ? new Shown(Unit.POUND, 0) : new Shown(Unit.KILOGRAM, 0);
    } else if (kind == QuantityKind.TREAD_DEPTH) {
      return us ? new Shown(Unit.THIRTY_SECOND_INCH, 0) : new Shown(Unit.MILLIMETER, 1);
    }
    return new Shown(Unit.PERCENT, 0);
  }

  /** A number rounded half up to so many decimals, never "-0". */
  static String fixed(double number, int decimals) {
    BigDecimal rounded = new BigDecimal(number).setScale(decimals, RoundingMode.HALF_UP);
    return rounded.signum() == 0 ? rounded.abs().toPlainString() : rounded.toPlainString();
  }

  /** A number with as few decimals as it needs, at most two. */
  static String plain(double number) {
    BigDecimal rounded = new BigDecimal(number).setScale(2, RoundingMode.HALF_UP);
    return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
  }
}

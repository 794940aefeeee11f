package dawngauge.quantity;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/** The units in which figures are shown. What was typed is never changed by it. */
public enum UnitSystem {
  /** psi, °F, mi, ft, lb, mph, 32nds, cfm. */
  US,
  /** bar, °C, km, m, kg, km/h, mm, L/min. */
  SI;

  private static final MathContext TWELVE_DIGITS = new MathContext(12);

  private record Shown(Unit unit, int decimals) {}

  /** The unit in which a kind is shown. */
  public Unit unitOf(QuantityKind<?> kind) {
    return shown(kind).unit;
  }

  /** Number and unit, rounded as that kind is shown: "80.0 psi", "5.52 bar", "12 %". */
  public String format(Quantity quantity) {
    return format(quantity, shown(quantity.kind()).decimals);
  }

  /** Number and unit, with so many decimals. */
  public String format(Quantity quantity, int decimals) {
    return unitOf(quantity.kind()).behind(number(quantity, decimals));
  }

  /** The number alone, rounded as that kind is shown. */
  public String number(Quantity quantity) {
    return number(quantity, shown(quantity.kind()).decimals);
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
    } else if (kind == QuantityKind.AIR_FLOW) {
      return us ? new Shown(Unit.CUBIC_FOOT_PER_MINUTE, 1) : new Shown(Unit.LITER_PER_MINUTE, 0);
    }
    return new Shown(Unit.PERCENT, 0);
  }

  /** A number rounded to so many decimals, a half away from zero; never "-0". */
  static String fixed(double number, int decimals) {
    BigDecimal rounded = decimal(number).setScale(decimals, RoundingMode.HALF_UP);
    return rounded.signum() == 0 ? rounded.abs().toPlainString() : rounded.toPlainString();
  }

  /** A number with as few decimals as it needs, at most two. */
  static String plain(double number) {
    BigDecimal rounded = decimal(number).setScale(2, RoundingMode.HALF_UP);
    return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
  }

  /** A number rounded to hundredths in the given direction. */
  static double hundredths(double number, RoundingMode direction) {
    return decimal(number).setScale(2, direction).doubleValue();
  }

  /** Without the noise that the way to SI and back leaves in the last digits. */
  private static BigDecimal decimal(double number) {
    return new BigDecimal(number).round(TWELVE_DIGITS);
  }
}

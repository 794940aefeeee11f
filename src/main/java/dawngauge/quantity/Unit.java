package dawngauge.quantity;

import java.util.List;

/**
 * Units that crews, labels and scales use. Factors are the exact definitions (NIST SP 811, 2008,
 * appendix B: pound, foot and mile; psi from pound, standard gravity and inch).
 */
public enum Unit {
  /** Pound-force per square inch. */
  PSI(6894.757293168361, 0, "psi"),
  /** Kilopascal. */
  KILOPASCAL(1e3, 0, "kPa", "kpa"),
  /** Bar. */
  BAR(1e5, 0, "bar"),
  /** Degree Celsius; as a difference the same as kelvin. */
  CELSIUS(1, 273.15, "°C", "C", "degC"),
  /** Degree Fahrenheit. */
  FAHRENHEIT(5.0 / 9.0, 459.67 * 5.0 / 9.0, "°F", "F", "degF"),
  /** Statute mile. */
  MILE(1609.344, 0, "mi"),
  /** Kilometer. */
  KILOMETER(1e3, 0, "km"),
  /** Foot. */
  FOOT(0.3048, 0, "ft"),
  /** Meter. */
  METER(1, 0, "m"),
  /** Mile per hour. */
  MILE_PER_HOUR(0.44704, 0, "mph"),
  /** Kilometer per hour. */
  KILOMETER_PER_HOUR(1 / 3.6, 0, "km/h"),
  /** Avoirdupois pound. */
  POUND(0.45359237, 0, "lb", "lbs"),
  /** Kilogram. */
  KILOGRAM(1, 0, "kg"),
  /** Thirty-second of an inch, as tread gauges are divided. */
  THIRTY_SECOND_INCH(0.0254 / 32, 0, "/32 in"),
  /** Millimeter. */
  MILLIMETER(1e-3, 0, "mm"),
  /** Cubic foot per minute. */
  CUBIC_FOOT_PER_MINUTE(0.3048 * 0.3048 * 0.3048 / 60, 0, "cfm", "CFM"),
  /** Liter per minute. */
  LITER_PER_MINUTE(1e-3 / 60, 0, "L/min", "l/min"),
  /** Percent. */
  PERCENT(0.01, 0, "%");

  private final double factor;
  private final double offset;

  @SuppressWarnings("ImmutableEnumChecker") // List.of, never changed
  private final List<String> spellings;

  Unit(double factor, double offset, String... spellings) {
    this.factor = factor;
    this.offset = offset;
    this.spellings = List.of(spellings);
  }

  /** How it is written after a number. */
  public String symbol() {
    return spellings.get(0);
  }

  /** All spellings that are read. */
  public List<String> spellings() {
    return spellings;
  }

  /** Number and unit as they are written together: "80 psi", "6/32 in". */
  String behind(String number) {
    return this == THIRTY_SECOND_INCH ? number + symbol() : number + " " + symbol();
  }

  double toSi(double number, QuantityKind<?> kind) {
    return number * factor + (kind.isPoint() ? offset : 0);
  }

  double fromSi(double si, QuantityKind<?> kind) {
    return (si - (kind.isPoint() ? offset : 0)) / factor;
  }
}

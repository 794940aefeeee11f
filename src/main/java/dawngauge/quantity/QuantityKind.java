package dawngauge.quantity;

import dawngauge.problem.Outcome;
import dawngauge.problem.Problem;
import dawngauge.problem.ProblemCode;
import java.math.RoundingMode;
import java.util.List;
import java.util.function.DoubleFunction;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * What a quantity measures: the units it is written in, the range that is possible at all for a
 * haul, and how its text is read.
 *
 * @param <Q> the type of the quantity
 */
public final class QuantityKind<Q extends Quantity> {

  /** Absolute pressure. */
  public static final QuantityKind<Pressure> PRESSURE =
      new QuantityKind<>(
          "pressure",
          Zero.SHARED,
          Pressure::new,
          0,
          2e6,
          "29 psi",
          Unit.PSI,
          Unit.KILOPASCAL,
          Unit.BAR);

  /** Gauge pressure; the range is that of tires on the road, with room. */
  public static final QuantityKind<GaugePressure> GAUGE_PRESSURE =
      new QuantityKind<>(
          "gauge pressure",
          Zero.SHARED,
          GaugePressure::new,
          0,
          1.4e6,
          "80 psi",
          Unit.PSI,
          Unit.KILOPASCAL,
          Unit.BAR);

  /** Temperature; the range holds every air temperature measured near the ground. */
  public static final QuantityKind<Temperature> TEMPERATURE =
      new QuantityKind<>(
          "temperature",
          Zero.OF_THE_UNIT,
          Temperature::new,
          273.15 - 90,
          273.15 + 60,
          "41 °F",
          Unit.FAHRENHEIT,
          Unit.CELSIUS);

  /** Difference of temperatures. */
  public static final QuantityKind<TemperatureDifference> TEMPERATURE_DIFFERENCE =
      new QuantityKind<>(
          "temperature difference",
          Zero.SHARED,
          TemperatureDifference::new,
          -100,
          100,
          "4 °F",
          Unit.FAHRENHEIT,
          Unit.CELSIUS);

  /** Elevation; from the lowest land to above the highest road. */
  public static final QuantityKind<Elevation> ELEVATION =
      new QuantityKind<>(
          "elevation", Zero.SHARED, Elevation::new, -450, 6000, "7543 ft", Unit.FOOT, Unit.METER);

  /** Distance along a road. */
  public static final QuantityKind<Distance> DISTANCE =
      new QuantityKind<>(
          "distance",
          Zero.SHARED,
          Distance::new,
          0,
          1e7,
          "73 mi",
          Unit.MILE,
          Unit.KILOMETER,
          Unit.FOOT,
          Unit.METER);

  /** Speed. */
  public static final QuantityKind<Speed> SPEED =
      new QuantityKind<>(
          "speed",
          Zero.SHARED,
          Speed::new,
          0,
          70,
          "60 mph",
          Unit.MILE_PER_HOUR,
          Unit.KILOMETER_PER_HOUR);

  /** Mass. */
  public static final QuantityKind<Mass> MASS =
      new QuantityKind<>(
          "weight", Zero.SHARED, Mass::new, -1e5, 1e5, "3520 lb", Unit.POUND, Unit.KILOGRAM);

  /** Depth of tread. */
  public static final QuantityKind<TreadDepth> TREAD_DEPTH =
      new QuantityKind<>(
          "tread depth",
          Zero.SHARED,
          TreadDepth::new,
          0,
          0.04,
          "6/32 in",
          Unit.THIRTY_SECOND_INCH,
          Unit.MILLIMETER);

  /** Free air a minute; up to 500 L/min, since larger compressors do not ride along. */
  public static final QuantityKind<AirFlow> AIR_FLOW =
      new QuantityKind<>(
          "air flow",
          Zero.SHARED,
          AirFlow::new,
          0,
          0.5 / 60,
          "1.6 cfm",
          Unit.CUBIC_FOOT_PER_MINUTE,
          Unit.LITER_PER_MINUTE);

  /** Ratio. */
  public static final QuantityKind<Ratio> RATIO =
      new QuantityKind<>("percentage", Zero.SHARED, Ratio::new, -10, 10, "10 %", Unit.PERCENT);

  /** Number, then unit. Possessive: a long text is read once, and no number lends its end. */
  private static final Pattern TEXT =
      Pattern.compile(
          "([+\\-−]?[0-9]++(?:\\.[0-9]++)?+(?:[eE][+-]?[0-9]++)?+)\\s*+([\\p{L}°%/].*+)");

  /** Where the zero of a kind's units lies. */
  private enum Zero {
    /** Nothing is nothing in every unit. */
    SHARED,
    /** Each unit has its own, as with temperatures. */
    OF_THE_UNIT
  }

  private final String name;
  private final Zero zero;
  private final DoubleFunction<Q> maker;
  private final double lowest;
  private final double highest;
  private final String example;
  private final List<Unit> units;

  private QuantityKind(
      String name,
      Zero zero,
      DoubleFunction<Q> maker,
      double lowest,
      double highest,
      String example,
      Unit... units) {
    this.name = name;
    this.zero = zero;
    this.maker = maker;
    this.lowest = lowest;
    this.highest = highest;
    this.example = example;
    this.units = List.of(units);
  }

  /** Its name in a sentence. */
  public String displayName() {
    return name;
  }

  /** A figure as it is written, such as "80 psi". */
  public String example() {
    return example;
  }

  /** The units it is written in; the first is the U.S. one. */
  public List<Unit> units() {
    return units;
  }

  /** Whether zero in one unit is not zero in another, as with temperatures. */
  boolean isPoint() {
    return zero == Zero.OF_THE_UNIT;
  }

  /** Whether a number in SI units lies within the limits; NaN does not. */
  public boolean holds(double si) {
    return si >= lowest && si <= highest;
  }

  /** The quantity from its SI number. */
  public Q ofSi(double si) {
    return maker.apply(si);
  }

  /**
   * Reads a figure with its unit, such as "80 psi". The decimal mark is the point; there is no mark
   * for thousands. The limits hold as they are named in the problem: rounded inwards to hundredths
   * of the unit.
   */
  public Outcome<Entered<Q>> parse(String text) {
    Matcher matcher = TEXT.matcher(text.strip());
    if (!matcher.matches()) {
      return Outcome.failed(
          Problem.of(ProblemCode.NOT_A_QUANTITY, "", shortened(text), name, example));
    }
    String unitText = matcher.group(2);
    for (Unit unit : units) {
      if (unit.spellings().contains(unitText)) {
        double number = Double.parseDouble(matcher.group(1).replace('−', '-'));
        return inRange(number, unit, text);
      }
    }
    return Outcome.failed(
        Problem.of(
            ProblemCode.UNKNOWN_UNIT,
            "",
            shortened(text),
            name,
            units.stream().map(Unit::symbol).collect(Collectors.joining(", "))));
  }

  private Outcome<Entered<Q>> inRange(double number, Unit unit, String text) {
    double least = UnitSystem.hundredths(unit.fromSi(lowest, this), RoundingMode.CEILING);
    double most = UnitSystem.hundredths(unit.fromSi(highest, this), RoundingMode.FLOOR);
    if (!(number >= least && number <= most)) {
      return Outcome.failed(
          Problem.of(
              ProblemCode.OUT_OF_RANGE,
              "",
              shortened(text),
              unit.behind(UnitSystem.plain(least)),
              unit.behind(UnitSystem.plain(most))));
    }
    return Outcome.of(new Entered<>(maker.apply(unit.toSi(number, this)), text));
  }

  private static String shortened(String text) {
    return text.length() <= 60 ? text : text.substring(0, 57) + "...";
  }

  @Override
  public String toString() {
    return name;
  }
}

package dawngauge.field;

import dawngauge.geo.Coordinate;
import dawngauge.problem.Outcome;
import dawngauge.problem.ProblemCode;
import dawngauge.quantity.Entered;
import dawngauge.quantity.GaugePressure;
import dawngauge.quantity.QuantityKind;
import dawngauge.quantity.UnitSystem;
import dawngauge.trip.Air;
import dawngauge.trip.AxleRef;
import dawngauge.trip.HeatRecord;
import dawngauge.trip.Tire;
import dawngauge.trip.WheelPosition;
import dawngauge.trip.WheelSlot;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** How axles, wheel positions, coordinates and the air at a stop stand in the file, and days. */
public final class TripCodecs {
  private static final Pattern AXLE_TEXT = Pattern.compile("(\\S|\\S.*\\S) ([1-9]\\d{0,2})");
  private static final Pattern POSITION_TEXT =
      Pattern.compile("(\\S|\\S.*\\S) axle ([1-9]\\d{0,2}) (left|right)((?: outer| inner)?)");
  private static final String DATE_EXAMPLE = "\"2027-03-09\"";
  private static final String UP_TO = "up to ";

  /** An axle, such as "trailer 2". */
  public static final Codec<AxleRef> AXLE =
      new Codec<>(
          "an axle",
          "\"trailer 2\"",
          new AxleRef("", 1),
          TripCodecs::parseAxle,
          ref -> ref.vehicle() + " " + ref.number());

  /** A place on an axle. */
  public static final Codec<WheelSlot> SLOT = Codec.choice(WheelSlot.class, WheelSlot::words);

  /** A place on the rig, such as "trailer axle 2 left". */
  public static final Codec<WheelPosition> POSITION =
      new Codec<>(
          "a wheel position",
          "\"trailer axle 2 left\"",
          new WheelPosition(new AxleRef("", 1), WheelSlot.LEFT),
          TripCodecs::parsePosition,
          WheelPosition::words);

  /** Whether air is to be had; in a form nothing is none, and a pressure alone is the highest. */
  public static final Codec<Air> AIR =
      new Codec<Air>(
          "\"none\", \"yes\" or \"up to\" a pressure",
          "\"up to 100 psi\"",
          Air.NONE,
          TripCodecs::parseAir,
          TripCodecs::airText,
          TripCodecs::typedAir,
          (units, air) -> airText(air),
          Codec.Json.TEXT,
          List.of());

  /** A place on the earth: in the file two numbers, in a form as it is copied from a map. */
  public static final Codec<Coordinate> COORDINATE =
      new Codec<Coordinate>(
          "a pair of numbers",
          "[38.54, -106.93]",
          new Coordinate(0, 0),
          TripCodecs::parsePair,
          at -> at.latitude() + ", " + at.longitude(),
          (units, text) ->
              Coordinate.parse(text.replace(";", ", "))
                  .map(Outcome::of)
                  .orElseGet(() -> notOnEarth(text)),
          (units, at) -> at.latitude() + ", " + at.longitude(),
          Codec.Json.PAIR,
          List.of());

  private static final HeatRecord LEAST_HEAT =
      new HeatRecord(Tire.LEAST_HEAT_FACTOR, HeatRecord.LEAST_SPREAD);
  private static final HeatRecord MOST_HEAT =
      new HeatRecord(Tire.MOST_HEAT_FACTOR, HeatRecord.MOST_SPREAD);

  /** A day. */
  public static final Codec<LocalDate> DATE =
      new Codec<>(
          "a date",
          DATE_EXAMPLE,
          LocalDate.EPOCH,
          TripCodecs::parseDate,
          DateTimeFormatter.ISO_LOCAL_DATE::format);

  /** How warm a tire ran on earlier trips. */
  public static final Codec<HeatRecord> HEAT_RECORD =
      new Codec<>(
          "a heat factor and one standard deviation of it",
          "\"1.25 ± 0.08\"",
          new HeatRecord(1, HeatRecord.MOST_SPREAD),
          TripCodecs::parseHeatRecord,
          TripCodecs::heatRecordText);

  private static final Pattern HEAT =
      Pattern.compile(
          "([0-9]{1,3}(?:\\.[0-9]{1,6})?) ?(?:±|\\+-|\\+/-) ?([0-9]{1,3}(?:\\.[0-9]{1,6})?)");

  private TripCodecs() {}

  private static Outcome<HeatRecord> parseHeatRecord(String text) {
    Matcher parts = HEAT.matcher(text);
    if (parts.matches()) {
      double factor = Double.parseDouble(parts.group(1));
      double spread = Double.parseDouble(parts.group(2));
      if (factor >= LEAST_HEAT.factor()
          && factor <= MOST_HEAT.factor()
          && spread >= LEAST_HEAT.spread()
          && spread <= MOST_HEAT.spread()) {
        return Outcome.of(new HeatRecord(factor, spread));
      }
    }
    return Codec.failed(
        ProblemCode.OUT_OF_RANGE,
        Codec.shortened(text),
        heatRecordText(LEAST_HEAT),
        heatRecordText(MOST_HEAT));
  }

  private static String heatRecordText(HeatRecord record) {
    return record.factor() + " ± " + record.spread();
  }

  private static Outcome<LocalDate> parseDate(String text) {
    try {
      return Outcome.of(LocalDate.parse(text));
    } catch (DateTimeException notADate) {
      return Codec.failed(ProblemCode.NOT_A_DATE, Codec.shortened(text), DATE_EXAMPLE);
    }
  }

  private static Outcome<Coordinate> parsePair(String text) {
    String[] degrees = text.split(", ", -1);
    try {
      return degrees.length == 2
          ? Outcome.of(
              new Coordinate(Double.parseDouble(degrees[0]), Double.parseDouble(degrees[1])))
          : notOnEarth(text);
    } catch (IllegalArgumentException noNumberOrTooLarge) {
      return notOnEarth(text);
    }
  }

  private static Outcome<Coordinate> notOnEarth(String text) {
    return Codec.failed(ProblemCode.NOT_A_COORDINATE, Codec.shortened(text));
  }

  private static Outcome<AxleRef> parseAxle(String text) {
    Matcher matcher = AXLE_TEXT.matcher(text);
    return matcher.matches()
        ? Outcome.of(new AxleRef(matcher.group(1), Integer.parseInt(matcher.group(2))))
        : Codec.failed(ProblemCode.NOT_AN_AXLE, Codec.shortened(text), AXLE.example());
  }

  private static Outcome<WheelPosition> parsePosition(String text) {
    Matcher matcher = POSITION_TEXT.matcher(text);
    if (matcher.matches()) {
      String slotWords = matcher.group(3) + matcher.group(4);
      Optional<WheelSlot> slot =
          Arrays.stream(WheelSlot.values()).filter(s -> s.words().equals(slotWords)).findFirst();
      if (slot.isPresent()) {
        AxleRef axle = new AxleRef(matcher.group(1), Integer.parseInt(matcher.group(2)));
        return Outcome.of(new WheelPosition(axle, slot.get()));
      }
    }
    return Codec.failed(ProblemCode.NOT_A_POSITION, Codec.shortened(text), POSITION.example());
  }

  private static Outcome<Air> parseAir(String text) {
    if (text.equals("none")) {
      return Outcome.of(Air.NONE);
    } else if (text.equals("yes")) {
      return Outcome.of(Air.YES);
    } else if (text.startsWith(UP_TO)) {
      Codec<Entered<GaugePressure>> form = Codec.positive(QuantityKind.GAUGE_PRESSURE);
      return form.parse().apply(text.substring(UP_TO.length())).map(top -> new Air(true, top));
    }
    return Codec.failed(ProblemCode.NOT_A_CHOICE, Codec.shortened(text), AIR.what());
  }

  private static Outcome<Air> typedAir(UnitSystem units, String text) {
    if (text.isEmpty() || text.equals("none") || text.equals("yes")) {
      return parseAir(text.isEmpty() ? "none" : text);
    }
    String figure = text.startsWith(UP_TO) ? text.substring(UP_TO.length()) : text;
    return Codec.positive(QuantityKind.GAUGE_PRESSURE)
        .typed()
        .apply(units, figure)
        .map(top -> new Air(true, top));
  }

  private static String airText(Air air) {
    Entered<GaugePressure> top = air.upTo();
    if (!air.available()) {
      return "none";
    }
    return top == null ? "yes" : UP_TO + top.text();
  }
}

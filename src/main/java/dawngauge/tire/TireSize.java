package dawngauge.tire;

import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * What the size text of a sidewall says: metric ("ST235/80R16"), conventional ("7.00-15LT") or
 * flotation ("31X10.50R15LT"). A load range letter and a service description behind it are read
 * over.
 *
 * @param impliedClass class by the letters before or after the size, or null where there are none:
 *     then it may be a passenger-car tire or a commercial one
 * @param construction radial for "R", bias for "D", "B" and "-"
 * @param sectionWidthMillimeters nominal width of the tire's section, in millimeter
 * @param aspectPercent height of the section over its width, in percent, where the size gives it
 * @param rimInches nominal diameter of the rim, in inch
 * @param overallDiameterMillimeters nominal diameter over the tread, in millimeter: as given in a
 *     flotation size, from width, aspect and rim in a metric one; the tire as made may differ
 */
public record TireSize(
    @Nullable TireClass impliedClass,
    Construction construction,
    double sectionWidthMillimeters,
    OptionalDouble aspectPercent,
    double rimInches,
    OptionalDouble overallDiameterMillimeters) {

  static final double MILLIMETERS_PER_INCH = 25.4;
  private static final String CONSTRUCTION_AND_RIM = "(R|D|B|-)(\\d{1,2}(?:\\.5)?)";
  private static final String SERVICE =
      "(?:[ /]+(?:LR ?)?[A-N]|[ /]+\\d{2,3}(?:/\\d{2,3})?[A-Z]\\d?)*";

  private static final Pattern METRIC =
      Pattern.compile(
          "(P|LT|ST)?(\\d{3})/(\\d{2,3})Z?" + CONSTRUCTION_AND_RIM + "(LT|ST|C)?" + SERVICE);
  private static final Pattern CONVENTIONAL =
      Pattern.compile(
          "(ST)?(\\d{1,2}(?:\\.\\d{1,2})?)" + CONSTRUCTION_AND_RIM + "(LT|ST|MH)?" + SERVICE);
  private static final Pattern FLOTATION =
      Pattern.compile(
          "(LT)?(\\d{2}(?:\\.\\d{1,2})?)X(\\d{1,2}(?:\\.\\d{1,2})?)"
              + CONSTRUCTION_AND_RIM
              + "(LT|ST)?"
              + SERVICE);

  /** Reads a size text; empty where it is in none of the three forms. */
  public static Optional<TireSize> parse(String text) {
    String upper = text.strip().toUpperCase(Locale.ROOT).replaceAll("\\s+", " ");
    Matcher metric = METRIC.matcher(upper);
    if (metric.matches()) {
      return Optional.of(metric(metric));
    }
    Matcher conventional = CONVENTIONAL.matcher(upper);
    if (conventional.matches()) {
      return Optional.of(conventional(conventional));
    }
    Matcher flotation = FLOTATION.matcher(upper);
    return flotation.matches() ? Optional.of(flotation(flotation)) : Optional.empty();
  }

  /** A size text without what is only a matter of typing: spaces, small letters. */
  public static String plain(String text) {
    return text.replace(" ", "").toUpperCase(Locale.ROOT);
  }

  private static TireSize metric(Matcher m) {
    double width = number(m, 2);
    double aspect = number(m, 3);
    double rim = number(m, 5);
    return new TireSize(
        classOf(m.group(1), m.group(6)),
        constructionOf(m.group(4)),
        width,
        OptionalDouble.of(aspect),
        rim,
        OptionalDouble.of(rim * MILLIMETERS_PER_INCH + 2 * width * aspect / 100));
  }

  private static TireSize conventional(Matcher m) {
    return new TireSize(
        classOf(m.group(1), m.group(5)),
        constructionOf(m.group(3)),
        number(m, 2) * MILLIMETERS_PER_INCH,
        OptionalDouble.empty(),
        number(m, 4),
        OptionalDouble.empty());
  }

  private static TireSize flotation(Matcher m) {
    return new TireSize(
        classOf(m.group(1), m.group(6)),
        constructionOf(m.group(4)),
        number(m, 3) * MILLIMETERS_PER_INCH,
        OptionalDouble.empty(),
        number(m, 5),
        OptionalDouble.of(number(m, 2) * MILLIMETERS_PER_INCH));
  }

  private static double number(Matcher m, int group) {
    return Double.parseDouble(m.group(group));
  }

  private static Construction constructionOf(String letter) {
    return "R".equals(letter) ? Construction.RADIAL : Construction.BIAS;
  }

  private static @Nullable TireClass classOf(@Nullable String before, @Nullable String after) {
    String letters = after != null ? after : before;
    if (letters == null) {
      return null;
    }
    return switch (letters) {
      case "P" -> TireClass.PASSENGER;
      case "LT" -> TireClass.LIGHT_TRUCK;
      case "ST" -> TireClass.SPECIAL_TRAILER;
      case "C" -> TireClass.COMMERCIAL;
      default -> null;
    };
  }
}

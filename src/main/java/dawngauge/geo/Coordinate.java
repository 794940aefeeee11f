package dawngauge.geo;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A place on the earth, WGS 84.
 *
 * @param latitude degrees north of the equator, −90 to 90
 * @param longitude degrees east of Greenwich, −180 to 180
 */
public record Coordinate(double latitude, double longitude) {

  private static final String DEGREES = "(\\d{1,3}(?:\\.\\d{1,15})?)";
  private static final String SIGNED = "([+-]?" + DEGREES.substring(1);

  private static final Pattern NUMBERS = Pattern.compile(SIGNED + "(\\s*,?\\s+|,)" + SIGNED);
  private static final Pattern LETTERS_BEHIND =
      Pattern.compile(DEGREES + "\\s*([NSEW])[,\\s]*" + DEGREES + "\\s*([NSEW])");
  private static final Pattern LETTERS_BEFORE =
      Pattern.compile("([NSEW])\\s*" + DEGREES + "[,\\s]+([NSEW])\\s*" + DEGREES);

  /** Refuses what is not on the earth. */
  public Coordinate {
    if (!(latitude >= -90 && latitude <= 90)) {
      throw new IllegalArgumentException("latitude " + latitude + " is outside -90 to 90");
    }
    if (!(longitude >= -180 && longitude <= 180)) {
      throw new IllegalArgumentException("longitude " + longitude + " is outside -180 to 180");
    }
  }

  /**
   * Reads decimal degrees as they are typed or copied from a map: "37.469, -105.87", "37.469 N
   * 105.87 W", "N 37.469° W 105.87°". Without letters latitude comes first, and west is negative.
   *
   * @return empty if it is anything else, is not on the earth, or can be read in two ways: a comma
   *     alone between whole numbers may be a decimal mark, a sign with a letter may turn it round
   */
  public static Optional<Coordinate> parse(String text) {
    String plain = text.replace('−', '-').replaceAll("[°º]", "").strip().toUpperCase(Locale.ROOT);
    Matcher numbers = NUMBERS.matcher(plain);
    if (numbers.matches()) {
      boolean decimalComma =
          numbers.group(2).equals(",")
              && !numbers.group(1).contains(".")
              && Character.isDigit(numbers.group(3).charAt(0));
      return decimalComma
          ? Optional.empty()
          : checked(Double.parseDouble(numbers.group(1)), Double.parseDouble(numbers.group(3)));
    }
    Matcher behind = LETTERS_BEHIND.matcher(plain);
    if (behind.matches()) {
      return lettered(behind.group(2), behind.group(1), behind.group(4), behind.group(3));
    }
    Matcher before = LETTERS_BEFORE.matcher(plain);
    return before.matches()
        ? lettered(before.group(1), before.group(2), before.group(3), before.group(4))
        : Optional.empty();
  }

  private static Optional<Coordinate> lettered(
      String letter, String degrees, String otherLetter, String otherDegrees) {
    if ("EW".contains(letter)) {
      return "NS".contains(otherLetter)
          ? lettered(otherLetter, otherDegrees, letter, degrees)
          : Optional.empty();
    }
    return "EW".contains(otherLetter)
        ? checked(signed(letter, degrees), signed(otherLetter, otherDegrees))
        : Optional.empty();
  }

  private static double signed(String letter, String degrees) {
    double number = Double.parseDouble(degrees);
    return "SW".contains(letter) ? -number : number;
  }

  private static Optional<Coordinate> checked(double latitude, double longitude) {
    return Math.abs(latitude) <= 90 && Math.abs(longitude) <= 180
        ? Optional.of(new Coordinate(latitude, longitude))
        : Optional.empty();
  }
}

package dawngauge.explain;

import dawngauge.quantity.Quantity;
import dawngauge.quantity.UnitSystem;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A sentence with figures in it that are written in whichever units the reader chose.
 *
 * @param template the sentence with {0}, {1} … where figures go
 * @param figures quantities, {@link Stated} figures, whole numbers, phrases or words, in order
 */
public record Phrase(String template, List<Object> figures) {

  /** A quantity written with a fixed number of decimals instead of its kind's usual number. */
  public record Stated(Quantity quantity, int usDecimals, int siDecimals) {}

  private static final Pattern PLACEHOLDER = Pattern.compile("\\{(\\d+)}");

  /** Copies the list. */
  public Phrase {
    figures = List.copyOf(figures);
  }

  /** A sentence with its figures. */
  public static Phrase of(String template, Object... figures) {
    return new Phrase(template, List.of(figures));
  }

  /** The sentence in the given units. */
  public String in(UnitSystem units) {
    return PLACEHOLDER
        .matcher(template)
        .replaceAll(
            match ->
                Matcher.quoteReplacement(
                    written(figures.get(Integer.parseInt(match.group(1))), units)));
  }

  private static String written(Object figure, UnitSystem units) {
    if (figure instanceof Quantity quantity) {
      return units.format(quantity);
    } else if (figure instanceof Stated stated) {
      int decimals = units == UnitSystem.US ? stated.usDecimals : stated.siDecimals;
      return units.format(stated.quantity, decimals);
    } else if (figure instanceof Phrase phrase) {
      return phrase.in(units);
    }
    return figure.toString();
  }
}

package dawngauge.geo;

import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.MissingResourceException;
import java.util.function.BiPredicate;

/**
 * A state, province or other first division of a country, and what people call it.
 *
 * @param country two letters by ISO 3166-1
 * @param code its postal code; empty outside the United States and Canada
 * @param name its name; may be empty
 * @param calls code and name, folded
 * @param countryCalls codes and name of the country, folded
 */
record Division(
    String country, String code, String name, List<String> calls, List<String> countryCalls) {

  /** The divisions of the rows: country, code, name. */
  static List<Division> all(List<String> rows) {
    Map<String, List<String>> countries = new HashMap<>();
    return rows.stream()
        .map(row -> row.split("\t", -1))
        .map(
            row ->
                new Division(
                    row[0],
                    row[1],
                    row[2],
                    folded(row[1], row[2]),
                    countries.computeIfAbsent(row[0], Division::countryCalls)))
        .toList();
  }

  private static List<String> countryCalls(String code) {
    Locale country = new Locale("", code);
    return folded(code, threeLetters(country), country.getDisplayCountry(Locale.ENGLISH));
  }

  private static List<String> folded(String... calls) {
    return List.of(calls).stream().map(FoldedText::of).filter(call -> !call.isEmpty()).toList();
  }

  private static String threeLetters(Locale country) {
    try {
      return country.getISO3Country();
    } catch (MissingResourceException noCode) {
      return "";
    }
  }

  /** What stands behind the names of its places. */
  String shown() {
    return code.isEmpty() ? name : code;
  }

  /** Whether a folded text means it or its country: "ks", "kansas", "kansas usa", "mexico". */
  boolean isCalled(String text) {
    return answers(text, String::equals);
  }

  /** Whether a folded text is how such a call begins: "kan". */
  boolean mayBecome(String text) {
    return answers(text, String::startsWith);
  }

  /** Whether the text is a call, a call of the country, or both in this order. */
  private boolean answers(String text, BiPredicate<String, String> fits) {
    return calls.stream()
            .anyMatch(
                call ->
                    fits.test(call, text)
                        || (text.startsWith(call + " ")
                            && isCountry(text.substring(call.length() + 1), fits)))
        || isCountry(text, fits);
  }

  private boolean isCountry(String text, BiPredicate<String, String> fits) {
    return countryCalls.stream().anyMatch(call -> fits.test(call, text));
  }
}

package dawngauge.tripfile;

import java.util.Collection;
import java.util.Comparator;
import java.util.Locale;

/** Finds what somebody probably meant to write. */
final class Nearest {
  private static final int LONGEST = 60;

  private Nearest() {}

  /** The known name that takes the fewest changes of a letter, capitals left aside. */
  static String of(String name, Collection<String> known) {
    String typed = name.length() > LONGEST ? name.substring(0, LONGEST) : name;
    return known.stream()
        .min(Comparator.comparingInt(candidate -> distance(lower(typed), lower(candidate))))
        .orElse("note");
  }

  private static String lower(String text) {
    return text.toLowerCase(Locale.ROOT);
  }

  /** Edit distance (Levenshtein, 1966): letters put in, left out or exchanged. */
  static int distance(String a, String b) {
    int[] previous = new int[b.length() + 1];
    for (int j = 0; j <= b.length(); j++) {
      previous[j] = j;
    }
    for (int i = 1; i <= a.length(); i++) {
      int[] row = new int[b.length() + 1];
      row[0] = i;
      for (int j = 1; j <= b.length(); j++) {
        int exchanged = previous[j - 1] + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
        row[j] = Math.min(exchanged, Math.min(previous[j], row[j - 1]) + 1);
      }
      previous = row;
    }
    return previous[b.length()];
  }
}

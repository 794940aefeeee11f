package dawngauge.fitness;

import java.util.List;

/** Small pieces of sentences. */
final class Words {
  private Words() {}

  /** "1 year", "2 years". */
  static String count(int number, String unit) {
    return number + " " + unit + (number == 1 ? "" : "s");
  }

  /** "a", "a and b", "a, b and c". */
  static String and(List<String> parts) {
    int last = parts.size() - 1;
    return last < 1
        ? String.join("", parts)
        : String.join(", ", parts.subList(0, last)) + " and " + parts.get(last);
  }
}

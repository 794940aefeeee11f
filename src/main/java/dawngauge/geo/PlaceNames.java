package dawngauge.geo;

import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.StringJoiner;

/**
 * The folded names of all places in one text, a line each, so that one search through it finds a
 * word in any of them.
 */
final class PlaceNames {

  /** What is written short on signs and maps. */
  private static final Map<String, String> ABBREVIATIONS =
      Map.of("st", "saint", "ste", "sainte", "ft", "fort", "mt", "mount");

  /** Shorter texts stand in too many names to be looked for inside of them. */
  private static final int SHORTEST_INSIDE = 3;

  private final StringBuilder lines = new StringBuilder("\n");
  private final int[] starts;
  private int size;

  PlaceNames(int capacity) {
    starts = new int[capacity];
  }

  /** How well a name answers to a text, best first. */
  enum Match {
    /** It is the text. */
    WHOLE(1),
    /** It begins with the text. */
    BEGINNING(3),
    /** One of its later words does. */
    WORD(5),
    /** The text stands in it elsewhere. */
    INSIDE(7);

    private final int rank;

    Match(int rank) {
      this.rank = rank;
    }

    /** Rank in a list of findings, from 1; a name that needs a state behind it ranks one lower. */
    int rank(boolean withDivision) {
      return withDivision ? rank + 1 : rank;
    }
  }

  /** Told of each name that was found, by its place; perhaps more than once. */
  interface Finding {
    void found(int index, Match match);
  }

  /** Adds the next place by its name and a second spelling, which may be empty. */
  void add(String name, String spelling) {
    starts[size++] = lines.length();
    lines.append(key(FoldedText.of(name))).append('\n');
    if (!spelling.isEmpty()) {
      lines.append(key(FoldedText.of(spelling))).append('\n');
    }
  }

  private static String key(String folded) {
    StringJoiner words = new StringJoiner(" ");
    for (String word : folded.split(" ", -1)) {
      words.add(ABBREVIATIONS.getOrDefault(word, word));
    }
    return words.toString();
  }

  /** Finds the names in which words stand; the last word may be only begun. */
  void find(List<String> words, Finding finding) {
    String text = String.join(" ", words);
    String last = words.get(words.size() - 1);
    String before = text.substring(0, text.length() - last.length());
    Set<String> keys = new LinkedHashSet<>(List.of(key(text)));
    keys.add(before.isEmpty() ? last : key(before.strip()) + " " + last);
    keys.forEach(key -> findKey(key, finding));
  }

  private void findKey(String key, Finding finding) {
    boolean inside = key.length() >= SHORTEST_INSIDE;
    String sought = inside ? key : "\n" + key;
    int offset = sought.length() - key.length();
    for (int at = lines.indexOf(sought); at >= 0; at = lines.indexOf(sought, at + 1)) {
      finding.found(placeAt(at + offset), match(at + offset, key.length()));
    }
  }

  private Match match(int at, int length) {
    char before = lines.charAt(at - 1);
    if (before == '\n') {
      return lines.charAt(at + length) == '\n' ? Match.WHOLE : Match.BEGINNING;
    }
    return before == ' ' ? Match.WORD : Match.INSIDE;
  }

  private int placeAt(int position) {
    int found = Arrays.binarySearch(starts, 0, size, position);
    return found >= 0 ? found : -found - 2;
  }
}

package dawngauge.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Lines of plain text, at most {@value #WIDTH} columns wide, without escape codes. Figures stay
 * with their units where lines break.
 */
final class PlainText {

  /** Widest line. */
  static final int WIDTH = 100;

  private static final char GLUE = '\u00A0';

  /** A blank before a unit or a separating dot, where no line may begin. */
  private static final Pattern GLUED =
      Pattern.compile(
          "(?<=\\d) (?=(?:psi|bar|kPa|lb|kg|mi|km|mph|km/h|ft|m|°F|°C|%|h|min)(?![\\p{L}/]))"
              + "|(?<=\\d h) (?=\\d\\d\\b)| (?=· )");

  /** From here on letters of those scripts have narrow forms. */
  private static final int NARROW_FORMS = 0xFF61;

  /** Scripts whose letters take two columns. */
  private static final Set<Character.UnicodeScript> WIDE =
      Set.of(
          Character.UnicodeScript.HIRAGANA,
          Character.UnicodeScript.KATAKANA,
          Character.UnicodeScript.HANGUL);

  /** What a person sees as one character: with its accents. */
  private static final Pattern CHARACTER = Pattern.compile("\\X");

  /** Control characters, and those that turn the writing direction of what follows. */
  private static final Pattern CONTROLS =
      Pattern.compile("[\\p{Cc}\u2028\u2029\u202A-\u202E\u2066-\u2069]");

  private final StringBuilder out = new StringBuilder();

  /** Adds one line. */
  void line(String text) {
    out.append(CONTROLS.matcher(text).replaceAll(" ").stripTrailing()).append('\n');
  }

  /** Adds a text that begins behind a first part; further lines are set under it. */
  void wrapped(String first, String text) {
    String indent = " ".repeat(length(first));
    List<String> lines = split(text, WIDTH - length(first));
    for (int i = 0; i < lines.size(); i++) {
      line((i == 0 ? first : indent) + lines.get(i));
    }
  }

  /** Adds a text at the left with another at the right edge, on lines of their own if need be. */
  void spread(String first, String left, String right) {
    int gap = WIDTH - length(first) - length(left) - length(right);
    if (gap > 0) {
      line(first + left + " ".repeat(gap) + right);
      return;
    }
    wrapped(first, left);
    wrapped(" ".repeat(Math.max(length(first), WIDTH - length(right))), right);
  }

  /** All lines. */
  @Override
  public String toString() {
    return out.toString();
  }

  /** Breaks at blanks; a word wider than the line is broken between characters. */
  static List<String> split(String text, int width) {
    List<String> lines = new ArrayList<>();
    StringBuilder current = new StringBuilder();
    String calm = CONTROLS.matcher(text).replaceAll(" ");
    for (String word : GLUED.matcher(calm).replaceAll(String.valueOf(GLUE)).split(" ", -1)) {
      String rest = word;
      if (current.length() > 0 && length(current) + 1 + length(rest) > width) {
        int begun = length(rest) > width ? fitting(rest, width - length(current) - 1) : 0;
        lines.add(begun == 0 ? current.toString() : current + " " + rest.substring(0, begun));
        rest = rest.substring(begun);
        current.setLength(0);
      }
      while (length(rest) > width) {
        int whole = fitting(rest, width);
        int end = whole > 0 ? whole : rest.offsetByCodePoints(0, 1);
        lines.add(rest.substring(0, end));
        rest = rest.substring(end);
      }
      if (current.length() > 0) {
        current.append(' ');
      }
      current.append(rest);
    }
    lines.add(current.toString());
    return lines.stream().map(line -> line.replace(GLUE, ' ')).toList();
  }

  /** End of the longest beginning of whole characters that fits; 0 where not even one does. */
  private static int fitting(String text, int width) {
    int end = 0;
    Matcher characters = CHARACTER.matcher(text);
    while (characters.find() && length(text.substring(0, characters.end())) <= width) {
      end = characters.end();
    }
    return end;
  }

  /**
   * Columns of a text: none for what stands on the letter before it, two for letters of Chinese,
   * Japanese and Korean and for pictures, one for any other.
   */
  static int length(CharSequence text) {
    return text.codePoints().map(PlainText::columns).sum();
  }

  private static int columns(int letter) {
    return switch (Character.getType(letter)) {
      case Character.NON_SPACING_MARK, Character.ENCLOSING_MARK, Character.FORMAT -> 0;
      default -> wide(letter) ? 2 : 1;
    };
  }

  private static boolean wide(int letter) {
    return Character.isIdeographic(letter)
        || (WIDE.contains(Character.UnicodeScript.of(letter)) && letter < NARROW_FORMS)
        || (letter >= 0x3000 && letter <= 0x303F)
        || (letter >= 0xFF01 && letter <= 0xFF60)
        || (letter >= 0x1F300 && letter <= 0x1FAFF);
  }

  /** A text filled up to a width with blanks on its right. */
  static String left(String text, int width) {
    return text + " ".repeat(Math.max(0, width - length(text)));
  }

  /** A text filled up to a width with blanks on its left. */
  static String right(String text, int width) {
    return " ".repeat(Math.max(0, width - length(text))) + text;
  }
}

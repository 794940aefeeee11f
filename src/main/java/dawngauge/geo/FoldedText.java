package dawngauge.geo;

import java.text.Normalizer;
import java.util.Locale;
import java.util.Map;

/**
 * Names as people type them: without accents, capitals and punctuation. "Cañon City" and "canon
 * city" fold to the same, so do "St. John's" and "st johns".
 */
public final class FoldedText {

  /** Letters that Unicode does not take apart into a plain letter and a mark. */
  private static final Map<Integer, String> PLAIN_LETTERS =
      Map.ofEntries(
          Map.entry((int) 'ß', "ss"),
          Map.entry((int) 'æ', "ae"),
          Map.entry((int) 'œ', "oe"),
          Map.entry((int) 'ø', "o"),
          Map.entry((int) 'ł', "l"),
          Map.entry((int) 'đ', "d"),
          Map.entry((int) 'ð', "d"),
          Map.entry((int) 'þ', "th"),
          Map.entry((int) 'ħ', "h"),
          Map.entry((int) 'ŧ', "t"),
          Map.entry((int) 'ı', "i"),
          Map.entry((int) 'ŋ', "n"),
          Map.entry((int) 'ə', "a"));

  /** Marks inside a word; every other mark parts words. */
  private static final String INSIDE_WORDS = "'’‘ʻʼ`´.";

  private FoldedText() {}

  /** Letters and digits in small, unaccented form, words parted by one blank; may be empty. */
  public static String of(String text) {
    String apart = Normalizer.normalize(text.toLowerCase(Locale.ROOT), Normalizer.Form.NFKD);
    StringBuilder folded = new StringBuilder(apart.length());
    for (int i = 0; i < apart.length(); i += Character.charCount(apart.codePointAt(i))) {
      append(folded, apart.codePointAt(i));
    }
    int end = folded.length();
    return end > 0 && folded.charAt(end - 1) == ' '
        ? folded.substring(0, end - 1)
        : folded.toString();
  }

  private static void append(StringBuilder folded, int letter) {
    if (Character.isLetterOrDigit(letter)) {
      String plain = PLAIN_LETTERS.get(letter);
      if (plain == null) {
        folded.appendCodePoint(letter);
      } else {
        folded.append(plain);
      }
    } else if (!isMark(letter) && INSIDE_WORDS.indexOf(letter) < 0) {
      int end = folded.length();
      if (end > 0 && folded.charAt(end - 1) != ' ') {
        folded.append(' ');
      }
    }
  }

  private static boolean isMark(int letter) {
    int type = Character.getType(letter);
    return type == Character.NON_SPACING_MARK
        || type == Character.COMBINING_SPACING_MARK
        || type == Character.ENCLOSING_MARK;
  }
}

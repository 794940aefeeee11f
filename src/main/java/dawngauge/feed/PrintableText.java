package dawngauge.feed;

/** Foreign text as it may be shown: short, on one line, printable. */
final class PrintableText {
  private static final int LONGEST = 60;

  private PrintableText() {}

  static String of(String text) {
    StringBuilder shown = new StringBuilder();
    text.codePoints()
        .limit(LONGEST)
        .map(letter -> isPlain(letter) ? letter : ' ')
        .forEach(shown::appendCodePoint);
    return text.codePointCount(0, text.length()) > LONGEST
        ? shown.append('…').toString()
        : shown.toString();
  }

  /** Neither a control character nor one that turns the direction of writing or is half a pair. */
  private static boolean isPlain(int letter) {
    return switch (Character.getType(letter)) {
      case Character.CONTROL,
          Character.FORMAT,
          Character.SURROGATE,
          Character.LINE_SEPARATOR,
          Character.PARAGRAPH_SEPARATOR ->
          false;
      default -> true;
    };
  }
}

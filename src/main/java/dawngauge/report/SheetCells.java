package dawngauge.report;

import java.util.Locale;
import java.util.regex.Pattern;

/**
 * Cells for spreadsheets. What such a program would run as a formula has an apostrophe before it,
 * the convention that they share (OWASP, "CSV Injection"); characters that cannot be seen, or that
 * turn the writing direction, are shown.
 */
final class SheetCells {

  private static final Pattern NUMBER = Pattern.compile("[+-]?\\d+(\\.\\d+)?");

  /** Pictures of the control characters 0 to 31 begin here (Unicode, "Control Pictures"). */
  private static final int PICTURES = 0x2400;

  private static final int PICTURE_OF_DELETE = 0x2421;

  private SheetCells() {}

  /** A cell as a spreadsheet may have it. */
  static String safe(String cell) {
    if (NUMBER.matcher(cell).matches()) {
      return cell;
    }
    boolean runs =
        !cell.isEmpty() && "=+-@\t\r\n\uFF1D\uFF0B\uFF0D\uFF20".indexOf(cell.charAt(0)) >= 0;
    return (runs ? "'" : "") + shown(cell);
  }

  private static String shown(String text) {
    StringBuilder out = new StringBuilder();
    text.codePoints().forEach(letter -> append(out, letter));
    return out.toString();
  }

  private static void append(StringBuilder out, int letter) {
    if (letter < 0x20) {
      out.appendCodePoint(PICTURES + letter);
    } else if (letter == 0x7F) {
      out.appendCodePoint(PICTURE_OF_DELETE);
    } else if (isUnseen(letter)) {
      out.append(String.format(Locale.ROOT, "\\u%04X", letter));
    } else {
      out.appendCodePoint(letter);
    }
  }

  /** Controls beyond ASCII, line ends, half characters, and what turns the writing direction. */
  private static boolean isUnseen(int letter) {
    return switch (Character.getType(letter)) {
      case Character.CONTROL,
          Character.LINE_SEPARATOR,
          Character.PARAGRAPH_SEPARATOR,
          Character.SURROGATE ->
          true;
      default ->
          (letter >= 0x202A && letter <= 0x202E)
              || (letter >= 0x2066 && letter <= 0x2069)
              || letter == 0x200E
              || letter == 0x200F
              || letter == 0xFEFF;
    };
  }
}

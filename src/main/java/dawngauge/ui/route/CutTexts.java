package dawngauge.ui.route;

import dawngauge.ui.common.Texts;
import java.util.HashMap;
import java.util.Map;
import javafx.scene.text.Font;
import javafx.scene.text.Text;

/** How wide texts are and how much of them there is room for; what was measured is kept. */
final class CutTexts {

  private static final int MOST_KEPT = 4000;

  private record Key(String text, String font, double size, double room) {}

  private final Text measure = new Text();
  private final Map<Key, Double> widths = new HashMap<>();
  private final Map<Key, String> cuts = new HashMap<>();

  /** Width of a text in pixels. */
  double width(String text, Font font) {
    if (widths.size() > MOST_KEPT) {
      widths.clear();
    }
    return widths.computeIfAbsent(
        new Key(text, font.getName(), font.getSize(), 0),
        key -> {
          measure.setFont(font);
          measure.setText(text);
          return measure.getLayoutBounds().getWidth();
        });
  }

  /** A text, or its beginning and three dots where it is too long. */
  String cut(String text, Font font, double room) {
    if (cuts.size() > MOST_KEPT) {
      cuts.clear();
    }
    return cuts.computeIfAbsent(
        new Key(text, font.getName(), font.getSize(), room),
        key -> fitting(Texts.shortened(text), font, room));
  }

  private String fitting(String text, Font font, double room) {
    if (width(text, font) <= room) {
      return text;
    }
    int low = 0;
    int high = text.length();
    while (low < high) {
      int middle = (low + high + 1) / 2;
      if (width(part(text, middle), font) <= room) {
        low = middle;
      } else {
        high = middle - 1;
      }
    }
    return part(text, low);
  }

  /** A beginning of a text that does not end within a character. */
  private static String part(String text, int length) {
    int end =
        length > 0 && Character.isHighSurrogate(text.charAt(length - 1)) ? length - 1 : length;
    return text.substring(0, end).stripTrailing() + "…";
  }
}

package dawngauge.report;

import com.lowagie.text.pdf.BaseFont;
import dawngauge.ledger.Ledger;
import dawngauge.ledger.StopLine;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Names of places that no font of the sheet can write, and what stands for them. */
final class SheetNames {

  private static final String TRIP = "Trip";

  private final Map<String, String> instead = new LinkedHashMap<>();

  /** For the trip and the stops of a ledger. */
  SheetNames(Ledger ledger, BaseFont font) {
    this(ledger.title(), ledger.stops().stream().map(StopLine::place).toList(), font);
  }

  /** For a trip and the places of its stops, in order. */
  SheetNames(String trip, List<String> places, BaseFont font) {
    // Longer names first, since a shorter one may be a part of them.
    places.stream()
        .filter(place -> !writes(place, font))
        .sorted(Comparator.comparingInt((String place) -> -place.length()))
        .forEach(place -> instead.putIfAbsent(place, "stop " + (places.indexOf(place) + 1)));
    if (!writes(trip, font)) {
      instead.putIfAbsent(trip, TRIP);
    }
  }

  /** Whether a font has all letters and digits of a text; other signs may be left out. */
  static boolean writes(String text, BaseFont font) {
    return text.codePoints()
        .filter(Character::isLetterOrDigit)
        .allMatch(point -> Character.isBmpCodePoint(point) && font.charExists(point));
  }

  /** A text with what stands for such names. */
  String in(String text) {
    String shown = text;
    for (Map.Entry<String, String> entry : instead.entrySet()) {
      shown = shown.replace(entry.getKey(), entry.getValue());
    }
    return shown;
  }

  /** What is to be said of them; empty where all names are written. */
  String said() {
    return instead.isEmpty()
        ? ""
        : "The fonts of this sheet lack letters of some names. In their place stands: "
            + String.join(", ", instead.values())
            + ".";
  }

  /** Whether a text has letters that are written from right to left. */
  static boolean fromTheRight(String text) {
    return text.codePoints().anyMatch(SheetNames::right);
  }

  /** Whether its first letter or digit is: "6. " before such a name stays at the left. */
  static boolean beginsFromTheRight(String text) {
    return text.codePoints()
        .filter(Character::isLetterOrDigit)
        .limit(1)
        .anyMatch(SheetNames::right);
  }

  private static boolean right(int point) {
    byte way = Character.getDirectionality(point);
    return way == Character.DIRECTIONALITY_RIGHT_TO_LEFT
        || way == Character.DIRECTIONALITY_RIGHT_TO_LEFT_ARABIC;
  }
}

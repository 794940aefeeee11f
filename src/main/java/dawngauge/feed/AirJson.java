package dawngauge.feed;

import com.fasterxml.jackson.databind.JsonNode;
import dawngauge.quantity.Temperature;
import dawngauge.quantity.Unit;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Pattern;

/** Figures in foreign JSON: numbers, also those written as text, and units by their code. */
final class AirJson {
  private static final Pattern NUMBER =
      Pattern.compile("[+-]?\\d{1,9}(?:\\.\\d{1,20})?(?:[eE][+-]?\\d{1,2})?");

  private AirJson() {}

  /** Kelvin, or nothing if number or unit are not understood; a unit is never guessed. */
  static OptionalDouble kelvins(JsonNode number, String unit) {
    OptionalDouble read = number(number);
    if (read.isEmpty()) {
      return read;
    }
    double figure = read.getAsDouble();
    return switch (code(unit)) {
      case "degc", "c", "celsius" ->
          OptionalDouble.of(Temperature.of(figure, Unit.CELSIUS).kelvins());
      case "degf", "f", "fahrenheit" ->
          OptionalDouble.of(Temperature.of(figure, Unit.FAHRENHEIT).kelvins());
      case "k", "kelvin" -> read;
      default -> OptionalDouble.empty();
    };
  }

  /** Meter of a figure such as {"unitCode": "wmoUnit:m", "value": 1609}; NaN if it is none. */
  static double meters(JsonNode figure) {
    boolean meters = code(figure.path("unitCode").asText()).equals("m");
    return meters ? number(figure.path("value")).orElse(Double.NaN) : Double.NaN;
  }

  /** A finite number. */
  static OptionalDouble number(JsonNode node) {
    boolean readable =
        node.isNumber() || (node.isTextual() && NUMBER.matcher(node.textValue()).matches());
    double number = readable ? Double.parseDouble(node.asText()) : Double.NaN;
    return Double.isFinite(number) ? OptionalDouble.of(number) : OptionalDouble.empty();
  }

  /** A text, if it is one. */
  static Optional<String> text(JsonNode node) {
    return node.isTextual() ? Optional.of(node.textValue()) : Optional.empty();
  }

  /** "degC" of "wmoUnit:degC", "unit:degC" and "http://codes.wmo.int/common/unit/degC". */
  private static String code(String unit) {
    int before = Math.max(unit.lastIndexOf(':'), unit.lastIndexOf('/'));
    return unit.substring(before + 1).toLowerCase(Locale.ROOT);
  }
}

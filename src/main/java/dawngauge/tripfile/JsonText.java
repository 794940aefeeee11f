package dawngauge.tripfile;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.core.exc.StreamConstraintsException;
import com.fasterxml.jackson.core.io.JsonEOFException;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.cfg.JsonNodeFeature;
import com.fasterxml.jackson.databind.exc.MismatchedInputException;
import com.fasterxml.jackson.databind.json.JsonMapper;
import dawngauge.field.Codec;
import dawngauge.problem.Outcome;
import dawngauge.problem.Problem;
import dawngauge.problem.ProblemCode;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** JSON as text: read into a tree within our limits, written for people to read. */
final class JsonText {
  /** Most levels of objects and lists in each other. */
  static final int DEEPEST = 64;

  /** Most names, values and brackets; a full file of 100,000 readings has fewer. */
  static final int MOST_TOKENS = 2_000_000;

  private static final int WIDTH = 100;

  private static final JsonMapper MAPPER =
      JsonMapper.builder(
              JsonFactory.builder()
                  .streamReadConstraints(
                      StreamReadConstraints.builder()
                          .maxNestingDepth(DEEPEST)
                          .maxTokenCount(MOST_TOKENS)
                          .build())
                  .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
                  .build())
          .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
          .enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS)
          .disable(JsonNodeFeature.STRIP_TRAILING_BIGDECIMAL_ZEROES)
          .build();

  private static final Pattern TWICE = Pattern.compile("Duplicate field '(.*)'");

  private JsonText() {}

  /** The tree of a text. */
  static Outcome<JsonNode> tree(String json) {
    try {
      JsonNode tree = MAPPER.readTree(json);
      return tree.isMissingNode()
          ? Codec.failed(ProblemCode.NOT_JSON, "1", "1", "the text is empty")
          : whole(tree);
    } catch (StreamConstraintsException beyond) {
      return Codec.failed(
          ProblemCode.JSON_LIMIT,
          line(beyond),
          column(beyond),
          limit(beyond),
          "" + DEEPEST,
          "" + MOST_TOKENS);
    } catch (MismatchedInputException trailing) {
      return Codec.failed(
          ProblemCode.NOT_JSON,
          line(trailing),
          column(trailing),
          "something follows after the end");
    } catch (JsonProcessingException wrong) {
      return Codec.failed(ProblemCode.NOT_JSON, line(wrong), column(wrong), reason(wrong, json));
    }
  }

  /** The tree of an extra field's text, which is JSON or an error of the program. */
  static JsonNode treeOfExtra(String json) {
    return tree(json).get();
  }

  /** The text of a tree: two spaces a level, short plain objects and lists on one line. */
  static String text(JsonNode tree) {
    StringBuilder text = new StringBuilder();
    append(tree, "", text);
    return text.append('\n').toString();
  }

  private static void append(JsonNode node, String indent, StringBuilder text) {
    int used = text.length() - text.lastIndexOf("\n") - 1;
    if (isFlat(node)) {
      String line = oneLine(node);
      if (node.isValueNode() || node.isEmpty() || used + line.length() < WIDTH) {
        text.append(line);
        return;
      }
    }
    String inner = indent + "  ";
    boolean object = node.isObject();
    String mark = "\n";
    text.append(object ? '{' : '[');
    if (object) {
      for (Map.Entry<String, JsonNode> field : node.properties()) {
        text.append(mark).append(inner).append(quoted(field.getKey())).append(": ");
        append(field.getValue(), inner, text);
        mark = ",\n";
      }
    } else {
      for (JsonNode element : node) {
        text.append(mark).append(inner);
        append(element, inner, text);
        mark = ",\n";
      }
    }
    text.append('\n').append(indent).append(object ? '}' : ']');
  }

  private static boolean isFlat(JsonNode node) {
    for (JsonNode child : node) {
      if (!child.isValueNode()) {
        return false;
      }
    }
    return true;
  }

  private static String oneLine(JsonNode node) {
    if (node.isValueNode()) {
      return node.toString();
    }
    StringBuilder line = new StringBuilder(node.isObject() ? "{" : "[");
    Iterator<String> names = node.fieldNames();
    String mark = "";
    for (JsonNode child : node) {
      line.append(mark);
      if (names.hasNext()) {
        line.append(quoted(names.next())).append(": ");
      }
      line.append(child);
      mark = ", ";
    }
    return line.append(node.isObject() ? '}' : ']').toString();
  }

  private static String quoted(String name) {
    return MAPPER.getNodeFactory().textNode(name).toString();
  }

  private static String line(JsonProcessingException exception) {
    JsonLocation location = exception.getLocation();
    return location == null ? "1" : "" + location.getLineNr();
  }

  private static String column(JsonProcessingException exception) {
    JsonLocation location = exception.getLocation();
    return location == null ? "1" : "" + location.getColumnNr();
  }

  /** What goes too far, in our words. */
  private static String limit(StreamConstraintsException beyond) {
    String message = String.valueOf(beyond.getOriginalMessage());
    if (message.contains("nesting")) {
      return "too many levels in each other";
    } else if (message.contains("Number")) {
      return "a number of too many digits";
    } else if (message.contains("String")) {
      return "a text that is too long";
    }
    return message.contains("name") ? "a name that is too long" : "too many names and values";
  }

  /** What is wrong, in our words; the library's name its own parts. */
  private static String reason(JsonProcessingException wrong, String json) {
    String message = String.valueOf(wrong.getOriginalMessage());
    Matcher twice = TWICE.matcher(message);
    if (twice.find()) {
      return "\"" + Codec.shortened(twice.group(1)) + "\" stands there twice";
    } else if (wrong instanceof JsonEOFException) {
      return "the text ends too early";
    }
    JsonLocation location = wrong.getLocation();
    int at = location == null ? json.length() : (int) location.getCharOffset();
    int shown = at < 0 || at >= json.length() ? -1 : json.codePointAt(at);
    if (shown < 0) {
      return "the text ends too early";
    }
    return Character.isISOControl(shown)
        ? String.format(Locale.ROOT, "a control character, U+%04X", shown)
        : "at \"" + Character.toString(shown) + "\"";
  }

  /** A tree whose texts all have whole characters; else where they have not. */
  private static Outcome<JsonNode> whole(JsonNode tree) {
    List<Problem> halves = new ArrayList<>();
    findHalves(tree, "", halves);
    return halves.isEmpty() ? Outcome.of(tree) : Outcome.failed(halves);
  }

  private static void findHalves(JsonNode node, String place, List<Problem> halves) {
    if (node.isTextual() && hasHalf(node.textValue())) {
      halves.add(Problem.of(ProblemCode.HALF_CHARACTER, place));
    }
    for (Map.Entry<String, JsonNode> field : node.properties()) {
      String under = ValueReader.under(place, field.getKey());
      if (hasHalf(field.getKey())) {
        halves.add(Problem.of(ProblemCode.HALF_CHARACTER, place));
      }
      findHalves(field.getValue(), under, halves);
    }
    for (int i = 0; node.isArray() && i < node.size(); i++) {
      findHalves(node.get(i), place + "/" + i, halves);
    }
  }

  private static boolean hasHalf(String text) {
    return text.codePoints().anyMatch(letter -> letter >= 0xD800 && letter <= 0xDFFF);
  }
}

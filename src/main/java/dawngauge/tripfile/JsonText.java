package dawngauge.tripfile;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.core.exc.StreamConstraintsException;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.cfg.JsonNodeFeature;
import com.fasterxml.jackson.databind.exc.MismatchedInputException;
import com.fasterxml.jackson.databind.json.JsonMapper;
import dawngauge.field.Codec;
import dawngauge.problem.Outcome;
import dawngauge.problem.ProblemCode;
import java.util.Iterator;
import java.util.Map;

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

  private JsonText() {}

  /** The tree of a text. */
  static Outcome<JsonNode> tree(String json) {
    try {
      JsonNode tree = MAPPER.readTree(json);
      return tree.isMissingNode()
          ? Codec.failed(ProblemCode.NOT_JSON, "1", "1", "the text is empty")
          : Outcome.of(tree);
    } catch (StreamConstraintsException beyond) {
      return Codec.failed(
          ProblemCode.JSON_LIMIT,
          line(beyond),
          column(beyond),
          reason(beyond),
          "" + DEEPEST,
          "" + MOST_TOKENS);
    } catch (MismatchedInputException trailing) {
      return Codec.failed(
          ProblemCode.NOT_JSON,
          line(trailing),
          column(trailing),
          "something follows after the end");
    } catch (JsonProcessingException wrong) {
      return Codec.failed(ProblemCode.NOT_JSON, line(wrong), column(wrong), reason(wrong));
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

  private static String reason(JsonProcessingException exception) {
    String message = exception.getOriginalMessage();
    return message == null ? "unreadable" : message.lines().findFirst().orElse("");
  }
}

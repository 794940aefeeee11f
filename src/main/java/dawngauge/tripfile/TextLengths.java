package dawngauge.tripfile;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.databind.node.TextNode;
import dawngauge.problem.Problem;
import dawngauge.problem.ProblemCode;
import dawngauge.trip.Trip;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * How long texts may be: what is longer in an old file is read, kept and told, and only an edit
 * that brings it is refused.
 */
public final class TextLengths {

  /** Most characters of a name or any other short text. */
  public static final int NAME = 200;

  /** Most characters of a note. */
  public static final int NOTE = 2000;

  private TextLengths() {}

  /** Texts of a file that are longer, a note each. */
  static List<Problem> told(JsonNode tree) {
    List<Problem> problems = new ArrayList<>();
    of(tree)
        .forEach((place, text) -> problems.add(problem(ProblemCode.TEXT_TOO_LONG, text).at(place)));
    return problems;
  }

  /** Texts of an edited trip that are longer and that the trip did not hold before. */
  public static List<Problem> refused(Trip before, Trip after) {
    Map<String, Text> now = of(TripJson.write(after));
    if (now.isEmpty()) {
      return List.of();
    }
    List<Text> known = List.copyOf(of(TripJson.write(before)).values());
    return now.values().stream()
        .filter(text -> !known.contains(text))
        .map(text -> problem(ProblemCode.TEXT_NOT_TAKEN, text))
        .toList();
  }

  /**
   * A trip with such texts shortened, as it is shown; the trip itself where there are none, or
   * where two names would become one.
   */
  public static Trip shortened(Trip trip) {
    ObjectNode tree = TripJson.write(trip);
    if (of(tree).isEmpty()) {
      return trip;
    }
    cut(tree, NAME);
    return TripJson.read(tree).value().orElse(trip);
  }

  private static void cut(JsonNode node, int most) {
    if (node instanceof ObjectNode object) {
      for (Map.Entry<String, JsonNode> field : object.properties()) {
        int length = field.getKey().equals("note") ? NOTE : NAME;
        boolean ours = !field.getKey().startsWith("x-");
        if (ours && field.getValue().isTextual()) {
          field.setValue(TextNode.valueOf(cut(field.getValue().textValue(), length)));
        } else if (ours) {
          cut(field.getValue(), length);
        }
      }
    } else if (node instanceof ArrayNode array) {
      for (int i = 0; i < array.size(); i++) {
        if (array.get(i).isTextual()) {
          array.set(i, TextNode.valueOf(cut(array.get(i).textValue(), most)));
        } else {
          cut(array.get(i), most);
        }
      }
    }
  }

  private static String cut(String text, int most) {
    return text.codePointCount(0, text.length()) <= most
        ? text
        : text.substring(0, text.offsetByCodePoints(0, most - 1)).stripTrailing() + "…";
  }

  private record Text(String text, int most) {}

  private static Problem problem(ProblemCode code, Text text) {
    return Problem.of(
        code, "", "" + text.text().codePointCount(0, text.text().length()), "" + text.most());
  }

  /** Texts that are longer, by their places. */
  private static Map<String, Text> of(JsonNode tree) {
    Map<String, Text> found = new LinkedHashMap<>();
    find(tree, "", NAME, found);
    return found;
  }

  private static void find(JsonNode node, String place, int most, Map<String, Text> found) {
    if (node.isTextual()) {
      String text = node.textValue();
      if (text.length() > most && text.codePointCount(0, text.length()) > most) {
        found.put(place, new Text(text, most));
      }
      return;
    }
    for (Map.Entry<String, JsonNode> field : node.properties()) {
      if (!field.getKey().startsWith("x-")) {
        int length = field.getKey().equals("note") ? NOTE : NAME;
        find(field.getValue(), ValueReader.under(place, field.getKey()), length, found);
      }
    }
    for (int i = 0; node.isArray() && i < node.size(); i++) {
      find(node.get(i), place + "/" + i, most, found);
    }
  }
}

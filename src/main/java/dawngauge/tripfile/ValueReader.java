package dawngauge.tripfile;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dawngauge.field.Codec;
import dawngauge.problem.Outcome;
import dawngauge.problem.Problem;
import dawngauge.problem.ProblemCode;
import java.util.LinkedHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * Reads single JSON values. What is wrong is reported at the value's place, a JSON Pointer (RFC
 * 6901, 2013), and read as null.
 *
 * @param problems takes the problems
 */
record ValueReader(FileProblems problems) {

  /** The place of a field in an object. */
  static String under(String place, String name) {
    return place + "/" + name.replace("~", "~0").replace("/", "~1");
  }

  /** Notes a problem. */
  void report(ProblemCode code, String where, String... arguments) {
    problems.add(Problem.of(code, where, arguments));
  }

  /** Notes that a value is of another kind than belongs there. */
  void reportKind(JsonNode value, String where, String expected, String example) {
    report(ProblemCode.WRONG_KIND, where, shown(value), expected, example);
  }

  /** A value of the catalogue. */
  <T> @Nullable T of(JsonNode value, String where, Codec<T> codec) {
    boolean fits =
        switch (codec.json()) {
          case TEXT -> value.isTextual();
          case NUMBER -> value.isNumber();
          case WHOLE -> value.isIntegralNumber();
          case FLAG -> value.isBoolean();
          case PAIR -> value.isArray() && value.size() == 2;
        };
    if (!fits) {
      reportKind(value, where, codec.what(), codec.example());
      return null;
    }
    return codec.json() == Codec.Json.PAIR
        ? pair(value, where, codec)
        : outcome(codec.parse().apply(value.asText()), where);
  }

  /** A text in a form. */
  <T> @Nullable T text(JsonNode value, String where, Codec<T> form) {
    if (!value.isTextual()) {
      reportKind(value, where, form.what(), form.example());
      return null;
    }
    return outcome(form.parse().apply(value.textValue()), where);
  }

  /** A number within limits. */
  private @Nullable Double number(JsonNode value, String where, double lowest, double highest) {
    if (!value.isNumber()) {
      reportKind(value, where, "a number", "" + lowest);
      return null;
    }
    double number = value.doubleValue();
    if (!(number >= lowest && number <= highest)) {
      report(ProblemCode.OUT_OF_RANGE, where, shown(value), "" + lowest, "" + highest);
      return null;
    }
    return number;
  }

  /** Degrees north and east. */
  private <T> @Nullable T pair(JsonNode value, String where, Codec<T> codec) {
    Double north = number(value.path(0), where + "/0", -90, 90);
    Double east = number(value.path(1), where + "/1", -180, 180);
    return north == null || east == null
        ? null
        : outcome(codec.parse().apply(north + ", " + east), where);
  }

  /** An object whose names and values are both texts; what is wrong is left out. */
  <K, V> Map<K, V> map(JsonNode value, String where, Codec<K> keyForm, Codec<V> valueForm) {
    Map<K, V> map = new LinkedHashMap<>();
    if (!(value instanceof ObjectNode object)) {
      reportKind(
          value, where, "an object", "{" + keyForm.example() + ": " + valueForm.example() + "}");
      return map;
    }
    for (Map.Entry<String, JsonNode> entry : object.properties()) {
      String place = under(where, entry.getKey());
      K key = outcome(keyForm.parse().apply(entry.getKey()), place);
      V read = text(entry.getValue(), place, valueForm);
      if (key != null && read != null) {
        map.put(key, read);
      }
    }
    return map;
  }

  private <T> @Nullable T outcome(Outcome<T> outcome, String where) {
    outcome.problems().forEach(problem -> problems.add(problem.at(where)));
    return outcome.valueOrNull();
  }

  private static String shown(JsonNode value) {
    return Codec.shortened(value.toString());
  }
}

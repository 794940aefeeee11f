package dawngauge.tripfile;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dawngauge.problem.Outcome;
import dawngauge.problem.Problem;
import dawngauge.problem.ProblemCode;
import dawngauge.trip.Remarks;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * Reads the fields of one JSON object. Every problem goes to one list with its JSON Pointer, and
 * reading goes on with a stand-in, so that all problems are found at once.
 */
final class FieldReader {
  private final @Nullable ObjectNode node;
  private final String pointer;
  private final Findings problems;
  private final Set<String> known = new LinkedHashSet<>();

  private FieldReader(@Nullable JsonNode given, String pointer, Findings problems) {
    this.node = given instanceof ObjectNode object ? object : null;
    this.pointer = pointer;
    this.problems = problems;
    if (given != null && node == null) {
      report(ProblemCode.WRONG_KIND, pointer, shown(given), "an object", "{\"note\": \"…\"}");
    }
  }

  /** Reads a whole object; fields that nothing asked for are reported. */
  static <T> T read(
      JsonNode node, String pointer, Findings problems, Function<FieldReader, T> reading) {
    return readNullable(node, pointer, problems, reading);
  }

  private static <T> T readNullable(
      @Nullable JsonNode node,
      String pointer,
      Findings problems,
      Function<FieldReader, T> reading) {
    FieldReader reader = new FieldReader(node, pointer, problems);
    T value = reading.apply(reader);
    reader.reportUnknown();
    return value;
  }

  /** The place of a field. */
  String at(String name) {
    return under(pointer, name);
  }

  /** The place of a field in an object (RFC 6901, 2013). */
  static String under(String place, String name) {
    return place + "/" + name.replace("~", "~0").replace("/", "~1");
  }

  /** The place of this object. */
  String place() {
    return pointer;
  }

  /** How many problems have been met so far. */
  int problemCount() {
    return problems.count();
  }

  /** Notes a problem. */
  void report(ProblemCode code, String where, String... arguments) {
    problems.add(Problem.of(code, where, arguments));
  }

  /** Whether the field is there; it is known from now on. */
  boolean has(String name) {
    return field(name) != null;
  }

  /** The value of a field, or null where it is missing or wrong (which is reported). */
  <T> @Nullable T optional(String name, Form<T> form) {
    JsonNode value = field(name);
    return value == null ? null : parsed(value, at(name), form);
  }

  /** The value of a field, or null where it is missing or wrong (both are reported). */
  <T> @Nullable T requiredOrNull(String name, Form<T> form) {
    reportIfMissing(name, form.what() + ", such as " + form.example());
    return optional(name, form);
  }

  /** The value of a field, or the stand-in where it is missing or wrong (both are reported). */
  <T> T required(String name, Form<T> form) {
    T value = requiredOrNull(name, form);
    return value == null ? form.standIn() : value;
  }

  /** The value of a field, null where it is missing, or the stand-in where it is wrong. */
  <T> @Nullable T optionalOrStandIn(String name, Form<T> form) {
    return has(name) ? required(name, form) : null;
  }

  /** A number within limits, or null where it is missing or wrong. */
  @Nullable Double number(String name, double lowest, double highest) {
    JsonNode value = field(name);
    return value == null ? null : inRange(value, at(name), lowest, highest);
  }

  /** A whole number within limits, or null where it is missing or wrong. */
  @Nullable Integer integer(String name, int lowest, int highest) {
    JsonNode value = field(name);
    if (value != null && !value.isIntegralNumber()) {
      report(ProblemCode.WRONG_KIND, at(name), shown(value), "a whole number", "" + lowest);
      return null;
    }
    Double number = number(name, lowest, highest);
    return number == null ? null : number.intValue();
  }

  /** Two numbers, each within ± its limit, or null where they are missing or wrong. */
  double @Nullable [] pair(String name, double firstLimit, double secondLimit, String example) {
    JsonNode value = field(name);
    if (value == null) {
      return null;
    }
    if (!value.isArray() || value.size() != 2) {
      report(ProblemCode.WRONG_KIND, at(name), shown(value), "a pair of numbers", example);
      return null;
    }
    Double first = inRange(value.path(0), at(name) + "/0", -firstLimit, firstLimit);
    Double second = inRange(value.path(1), at(name) + "/1", -secondLimit, secondLimit);
    return first == null || second == null ? null : new double[] {first, second};
  }

  /** Yes or no, or null where it is missing or wrong. */
  @Nullable Boolean flag(String name) {
    JsonNode value = field(name);
    if (value == null || value.isBoolean()) {
      return value == null ? null : value.booleanValue();
    }
    report(ProblemCode.WRONG_KIND, at(name), shown(value), "true or false", "false");
    return null;
  }

  /** Yes or no, which must be there. */
  boolean requiredFlag(String name) {
    reportIfMissing(name, "true or false");
    return Boolean.TRUE.equals(flag(name));
  }

  /** An object, or null where it is missing. */
  <T> @Nullable T object(String name, Function<FieldReader, T> reading) {
    JsonNode value = field(name);
    return value == null ? null : read(value, at(name), problems, reading);
  }

  /** An object that must be there. */
  <T> T requiredObject(String name, Function<FieldReader, T> reading) {
    reportIfMissing(name, "an object");
    return readNullable(field(name), at(name), problems, reading);
  }

  /** Objects in a list; none where it is missing. One for each element, so that places hold. */
  <T> List<T> objects(String name, Function<FieldReader, T> reading) {
    return elements(name, (value, where) -> read(value, where, problems, reading));
  }

  /** Texts in a list; none where it is missing. */
  <T> List<T> texts(String name, Form<T> form) {
    return elements(
        name,
        (value, where) -> {
          T read = parsed(value, where, form);
          return read == null ? form.standIn() : read;
        });
  }

  /** An object whose names and values are both texts; empty where it is missing. */
  <K, V> Map<K, V> map(String name, Form<K> keyForm, Form<V> valueForm) {
    JsonNode value = field(name);
    Map<K, V> map = new LinkedHashMap<>();
    if (value instanceof ObjectNode object) {
      FieldReader inner = new FieldReader(object, at(name), problems);
      object
          .properties()
          .forEach(
              entry -> {
                String where = inner.at(entry.getKey());
                K key = inner.outcome(keyForm.parse().apply(entry.getKey()), where);
                V read = inner.parsed(entry.getValue(), where, valueForm);
                if (key != null && read != null) {
                  map.put(key, read);
                }
              });
    } else if (value != null) {
      report(
          ProblemCode.WRONG_KIND,
          at(name),
          shown(value),
          "an object",
          "{" + keyForm.example() + ": " + valueForm.example() + "}");
    }
    return map;
  }

  /** The note and the fields whose names begin with "x-". */
  Remarks remarks() {
    String note = optional("note", Form.TEXT);
    Map<String, String> extras = new LinkedHashMap<>();
    if (node != null) {
      node.properties()
          .forEach(
              entry -> {
                if (entry.getKey().startsWith("x-")) {
                  known.add(entry.getKey());
                  extras.put(entry.getKey(), entry.getValue().toString());
                }
              });
    }
    return new Remarks(note, extras);
  }

  /** Names that belong here although they are not read now. */
  void knows(String... names) {
    known.addAll(List.of(names));
  }

  /** What belongs here cannot be told: nothing more is reported about this object's names. */
  void skipRest() {
    if (node != null) {
      node.fieldNames().forEachRemaining(known::add);
    }
  }

  private interface ElementReading<T> {
    T read(JsonNode value, String where);
  }

  private <T> List<T> elements(String name, ElementReading<T> reading) {
    JsonNode value = field(name);
    List<T> all = new ArrayList<>();
    if (value != null && value.isArray()) {
      for (int i = 0; i < value.size(); i++) {
        all.add(reading.read(value.path(i), at(name) + "/" + i));
      }
    } else if (value != null) {
      report(ProblemCode.WRONG_KIND, at(name), shown(value), "a list", "[]");
    }
    return all;
  }

  private @Nullable JsonNode field(String name) {
    known.add(name);
    return node == null ? null : node.get(name);
  }

  private void reportIfMissing(String name, String wayOut) {
    if (node != null && !has(name)) {
      report(ProblemCode.MISSING_FIELD, pointer, name, wayOut);
    }
  }

  private <T> @Nullable T parsed(JsonNode value, String where, Form<T> form) {
    if (!value.isTextual()) {
      report(ProblemCode.WRONG_KIND, where, shown(value), form.what(), form.example());
      return null;
    }
    return outcome(form.parse().apply(value.textValue()), where);
  }

  private <T> @Nullable T outcome(Outcome<T> outcome, String where) {
    outcome.problems().forEach(problem -> problems.add(problem.at(where)));
    return outcome.valueOrNull();
  }

  private @Nullable Double inRange(JsonNode value, String where, double lowest, double highest) {
    if (!value.isNumber()) {
      report(ProblemCode.WRONG_KIND, where, shown(value), "a number", "" + lowest);
      return null;
    }
    double number = value.doubleValue();
    if (!(number >= lowest && number <= highest)) {
      report(ProblemCode.OUT_OF_RANGE, where, shown(value), "" + lowest, "" + highest);
      return null;
    }
    return number;
  }

  private void reportUnknown() {
    if (node == null) {
      return;
    }
    node.fieldNames()
        .forEachRemaining(
            name -> {
              if (known.contains(name)) {
                return;
              }
              if (name.equals("note") || name.startsWith("x-")) {
                report(ProblemCode.NOTE_NOT_KEPT, at(name), Form.shortened(name));
              } else {
                String nearest = Nearest.of(name, known);
                report(ProblemCode.UNKNOWN_FIELD, at(name), Form.shortened(name), nearest);
              }
            });
  }

  private static String shown(JsonNode value) {
    return Form.shortened(value.toString());
  }
}

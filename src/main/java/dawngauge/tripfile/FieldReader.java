package dawngauge.tripfile;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dawngauge.field.Codec;
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
 * Reads the fields of one JSON object. Every problem is noted with its place, and reading goes on
 * with a stand-in, so that all problems are found at once.
 */
final class FieldReader {
  /** The one field of an estimate. */
  static final String ESTIMATE = "estimate";

  private final @Nullable ObjectNode node;
  private final String pointer;
  private final ValueReader values;
  private final Set<String> known = new LinkedHashSet<>();

  private FieldReader(@Nullable JsonNode given, String pointer, ValueReader values) {
    this.node = given instanceof ObjectNode object ? object : null;
    this.pointer = pointer;
    this.values = values;
    if (given != null && node == null) {
      values.reportKind(given, pointer, "an object", "{\"note\": \"…\"}");
    }
  }

  /** Reads a whole object, stand-ins where there is none; fields not asked for are reported. */
  static <T> T read(
      @Nullable JsonNode node,
      String pointer,
      ValueReader values,
      Function<FieldReader, T> reading) {
    FieldReader reader = new FieldReader(node, pointer, values);
    T value = reading.apply(reader);
    reader.reportUnknown();
    return value;
  }

  /** The place of this object. */
  String place() {
    return pointer;
  }

  /** The place of a field. */
  String at(String name) {
    return ValueReader.under(pointer, name);
  }

  /** Notes a problem. */
  void report(ProblemCode code, String where, String... arguments) {
    values.report(code, where, arguments);
  }

  /** Notes a problem with its place. */
  void report(Problem problem) {
    values.problems().add(problem);
  }

  /** How many problems have been met so far. */
  int problemCount() {
    return values.problems().count();
  }

  /** Whether the field is there; it is known from now on. */
  boolean has(String name) {
    return field(name) != null;
  }

  /** The value of a field, or null where it is missing or wrong (which is reported). */
  <T> @Nullable T optional(String name, Codec<T> form) {
    JsonNode value = field(name);
    return value == null ? null : values.text(value, at(name), form);
  }

  /** The value of a field, or null where it is missing or wrong (both are reported). */
  <T> @Nullable T requiredOrNull(String name, Codec<T> form) {
    require(name, form);
    return optional(name, form);
  }

  /** Reports a field that is missing. */
  void require(String name, Codec<?> form) {
    reportIfMissing(name, form.what() + ", such as " + form.example());
  }

  /** The value of a field, or the stand-in where it is missing or wrong (both are reported). */
  <T> T required(String name, Codec<T> form) {
    T value = requiredOrNull(name, form);
    return value == null ? form.standIn() : value;
  }

  /**
   * The value of a field of the catalogue: null, or where it must be there the stand-in, if it is
   * missing or wrong; what must be there and what is wrong is reported.
   */
  <T> @Nullable T value(String name, Codec<T> codec, boolean required) {
    JsonNode value = field(name);
    if (required) {
      String what = codec.what();
      boolean example = codec.json() != Codec.Json.FLAG;
      reportIfMissing(name, example ? what + ", such as " + codec.example() : what);
    }
    T read = value == null ? null : values.of(value, at(name), codec);
    return read == null && required ? codec.standIn() : read;
  }

  /** Whether the value of a field is an estimate: an object in the place of the value. */
  boolean isEstimate(String name) {
    return field(name) instanceof ObjectNode;
  }

  /** A value, or an estimate of it; null where it is missing or wrong (which is reported). */
  <T> @Nullable T known(String name, Codec<T> codec) {
    JsonNode value = field(name);
    return isEstimate(name)
        ? read(value, at(name), values, in -> in.requiredOrNull(ESTIMATE, codec))
        : optional(name, codec);
  }

  /** Yes or no; no where it is missing or wrong. */
  boolean flag(String name) {
    JsonNode value = field(name);
    if (value != null && !value.isBoolean()) {
      values.reportKind(value, at(name), "true or false", "false");
    }
    return value != null && value.booleanValue();
  }

  /** Yes or no, which must be there. */
  boolean requiredFlag(String name) {
    reportIfMissing(name, "true or false");
    return flag(name);
  }

  /** An object, or null where it is missing. */
  <T> @Nullable T object(String name, Function<FieldReader, T> reading) {
    JsonNode value = field(name);
    return value == null ? null : read(value, at(name), values, reading);
  }

  /** An object that must be there. */
  <T> T requiredObject(String name, Function<FieldReader, T> reading) {
    reportIfMissing(name, "an object");
    return read(field(name), at(name), values, reading);
  }

  /** Objects in a list; none where it is missing. One for each element, so that places hold. */
  <T> List<T> objects(String name, Function<FieldReader, T> reading) {
    return elements(name, (value, where) -> read(value, where, values, reading));
  }

  /** Texts in a list; none where it is missing. One for each element. */
  <T> List<T> texts(String name, Codec<T> form) {
    return elements(
        name,
        (value, where) -> {
          T read = values.text(value, where, form);
          return read == null ? form.standIn() : read;
        });
  }

  /** An object whose names and values are both texts; empty where it is missing. */
  <K, V> Map<K, V> map(String name, Codec<K> keyForm, Codec<V> valueForm) {
    JsonNode value = field(name);
    return value == null ? Map.of() : values.map(value, at(name), keyForm, valueForm);
  }

  /** The note and the fields whose names begin with "x-". */
  Remarks remarks() {
    String note = optional("note", Codec.TEXT);
    Map<String, String> extras = new LinkedHashMap<>();
    if (node != null) {
      for (Map.Entry<String, JsonNode> entry : node.properties()) {
        if (entry.getKey().startsWith("x-")) {
          known.add(entry.getKey());
          extras.put(entry.getKey(), entry.getValue().toString());
        }
      }
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
      values.reportKind(value, at(name), "a list", "[]");
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

  private void reportUnknown() {
    if (node == null) {
      return;
    }
    for (Map.Entry<String, JsonNode> entry : node.properties()) {
      String name = entry.getKey();
      if (known.contains(name)) {
        continue;
      }
      if (name.equals("note") || name.startsWith("x-")) {
        report(ProblemCode.NOTE_NOT_KEPT, at(name), Codec.shortened(name));
      } else {
        String nearest = Nearest.of(name, known);
        report(ProblemCode.UNKNOWN_FIELD, at(name), Codec.shortened(name), nearest);
      }
    }
  }
}

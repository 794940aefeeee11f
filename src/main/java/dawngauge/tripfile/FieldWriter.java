package dawngauge.tripfile;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dawngauge.field.Codec;
import dawngauge.geo.Coordinate;
import dawngauge.trip.Remarks;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** Builds one JSON object, field by field in the order of the calls. What is null is left out. */
final class FieldWriter {
  private final ObjectNode node = JsonNodeFactory.instance.objectNode();

  /** A value in its text form. */
  <T> FieldWriter put(String name, Codec<T> form, @Nullable T value) {
    if (value != null) {
      node.put(name, form.text().apply(value));
    }
    return this;
  }

  /** A value in its text form, or as an estimate. */
  <T> FieldWriter known(String name, Codec<T> form, @Nullable T value, boolean estimated) {
    return estimated
        ? object(
            name, value, each -> new FieldWriter().put(FieldReader.ESTIMATE, form, each).node())
        : put(name, form, value);
  }

  /** A value of the catalogue. */
  <T> FieldWriter value(String name, Codec<T> codec, @Nullable T value) {
    if (value != null) {
      switch (codec.json()) {
        case TEXT -> node.put(name, codec.text().apply(value));
        case NUMBER -> node.put(name, ((Number) value).doubleValue());
        case WHOLE -> node.put(name, ((Number) value).intValue());
        case FLAG -> node.put(name, (Boolean) value);
        case PAIR -> {
          Coordinate at = (Coordinate) value;
          node.putArray(name).add(at.latitude()).add(at.longitude());
        }
      }
    }
    return this;
  }

  /** A whole number. */
  FieldWriter integer(String name, @Nullable Integer number) {
    if (number != null) {
      node.put(name, number);
    }
    return this;
  }

  /** Yes or no. */
  FieldWriter flag(String name, boolean flag) {
    node.put(name, flag);
    return this;
  }

  /** An object. */
  <T> FieldWriter object(String name, @Nullable T value, Function<T, ObjectNode> writing) {
    if (value != null) {
      node.set(name, writing.apply(value));
    }
    return this;
  }

  /** Objects in a list; left out where there are none. */
  <T> FieldWriter objects(String name, List<T> values, Function<T, ObjectNode> writing) {
    if (!values.isEmpty()) {
      ArrayNode array = node.putArray(name);
      values.forEach(value -> array.add(writing.apply(value)));
    }
    return this;
  }

  /** Texts in a list; left out where there are none. */
  <T> FieldWriter texts(String name, List<T> values, Codec<T> form) {
    if (!values.isEmpty()) {
      ArrayNode array = node.putArray(name);
      values.forEach(value -> array.add(form.text().apply(value)));
    }
    return this;
  }

  /** Names and values that are both texts, in the given order; left out where there are none. */
  <K, V> FieldWriter map(
      String name, List<K> keys, Map<K, V> values, Codec<K> keyForm, Codec<V> valueForm) {
    ObjectNode object = JsonNodeFactory.instance.objectNode();
    for (K key : keys) {
      V value = values.get(key);
      if (value != null) {
        object.put(keyForm.text().apply(key), valueForm.text().apply(value));
      }
    }
    if (!object.isEmpty()) {
      node.set(name, object);
    }
    return this;
  }

  /** The object, with its note and the fields whose names begin with "x-". */
  ObjectNode with(Remarks remarks) {
    put("note", Codec.TEXT, remarks.note());
    new TreeMap<>(remarks.extras())
        .forEach((name, json) -> node.set(name, JsonText.treeOfExtra(json)));
    return node;
  }

  /** The object. */
  ObjectNode node() {
    return node;
  }
}

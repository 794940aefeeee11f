package dawngauge.fitness;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dawngauge.quantity.GaugePressure;
import dawngauge.quantity.Unit;
import dawngauge.trip.Trip;
import dawngauge.tripfile.TripFile;
import java.io.IOException;
import java.io.InputStream;
import java.util.List;

/** A trip with a rig that is sound in everything, and the same with faults planted in it. */
final class SoundRig {
  private static final ObjectMapper JSON = new ObjectMapper();

  private SoundRig() {}

  /**
   * The trip with changes, each a path, "=" and what stands there instead, as JSON with single
   * quotes; nothing behind "=" takes the field out. Elements of lists are named by id, name, tire
   * or, without any, by place from 0.
   */
  static Trip with(String... changes) {
    JsonNode root = read();
    for (String change : changes) {
      int sign = change.indexOf('=');
      put(root, change.substring(0, sign).strip(), change.substring(sign + 1).strip());
    }
    return TripFile.parse(root.toString()).get();
  }

  /** What the check says of a trip, with a reserve of 10 %. */
  static List<Defect> check(Trip trip) {
    return FitnessCheck.of(trip, new FitnessCheck.Options(0.1, 0.9, GaugePressure.of(5, Unit.PSI)));
  }

  private static JsonNode read() {
    try (InputStream in = SoundRig.class.getResourceAsStream("sound-rig.dawngauge")) {
      return JSON.readTree(in);
    } catch (IOException failure) {
      throw new IllegalStateException(failure);
    }
  }

  private static void put(JsonNode root, String path, String json) {
    String[] names = path.split("/", -1);
    JsonNode node = root;
    for (int i = 0; i < names.length - 1; i++) {
      node = node.isArray() ? node.get(place((ArrayNode) node, names[i])) : node.get(names[i]);
      if (node == null) {
        throw new IllegalArgumentException("no " + names[i] + " in " + path);
      }
    }
    String last = names[names.length - 1];
    if (node instanceof ArrayNode list) {
      if (json.isEmpty()) {
        list.remove(place(list, last));
      } else if (last.equals("+")) {
        list.add(value(json));
      } else {
        list.set(place(list, last), value(json));
      }
    } else if (json.isEmpty()) {
      ((ObjectNode) node).remove(last);
    } else {
      ((ObjectNode) node).set(last, value(json));
    }
  }

  private static JsonNode value(String json) {
    try {
      return JSON.readTree(json.replace('\'', '"'));
    } catch (JsonProcessingException failure) {
      throw new IllegalArgumentException(json, failure);
    }
  }

  private static int place(ArrayNode list, String name) {
    for (int i = 0; i < list.size(); i++) {
      for (String field : List.of("id", "name", "tire")) {
        if (list.get(i).path(field).asText().equals(name)) {
          return i;
        }
      }
    }
    return Integer.parseInt(name);
  }
}

package dawngauge.derive;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.BiPredicate;

/**
 * A file in TopoJSON (Bostock and Metcalf, "The TopoJSON Format Specification"): shapes that share
 * their borders. Lines come out as longitude and latitude in degrees.
 */
final class Topology {

  /** Longitude, then latitude, degrees. */
  record Point(double longitude, double latitude) {}

  private final List<List<Point>> arcs = new ArrayList<>();
  private final JsonNode objects;

  private Topology(JsonNode file) {
    JsonNode scale = file.path("transform").path("scale");
    JsonNode translate = file.path("transform").path("translate");
    for (JsonNode arc : file.path("arcs")) {
      long x = 0;
      long y = 0;
      List<Point> points = new ArrayList<>();
      for (JsonNode step : arc) {
        x += step.path(0).asLong();
        y += step.path(1).asLong();
        points.add(
            new Point(
                x * scale.path(0).asDouble() + translate.path(0).asDouble(),
                y * scale.path(1).asDouble() + translate.path(1).asDouble()));
      }
      arcs.add(points);
    }
    objects = file.path("objects");
  }

  static Topology read(Path file) throws IOException {
    return new Topology(new JsonMapper().readTree(file.toFile()));
  }

  /** The shapes of a layer. */
  Iterable<JsonNode> shapes(String layer) throws IOException {
    JsonNode shapes = objects.path(layer).path("geometries");
    if (shapes.isEmpty()) {
      throw new IOException("no layer " + layer);
    }
    return shapes;
  }

  /** The lines or rings of a layer, each joined from its arcs. */
  List<List<Point>> lines(String layer) throws IOException {
    List<List<Point>> lines = new ArrayList<>();
    for (JsonNode shape : shapes(layer)) {
      for (JsonNode chain : chains(shape.path("arcs"), new ArrayList<>())) {
        lines.add(joined(chain));
      }
    }
    return lines;
  }

  /**
   * The lines between two shapes of a layer.
   *
   * @param wanted tells of two neighbors whether the line between them is wanted
   */
  List<List<Point>> between(String layer, BiPredicate<JsonNode, JsonNode> wanted)
      throws IOException {
    SortedMap<Integer, List<JsonNode>> users = new TreeMap<>();
    for (JsonNode shape : shapes(layer)) {
      Set<Integer> own = new HashSet<>();
      for (JsonNode chain : chains(shape.path("arcs"), new ArrayList<>())) {
        chain.forEach(arc -> own.add(plain(arc.asInt())));
      }
      own.forEach(arc -> users.computeIfAbsent(arc, none -> new ArrayList<>()).add(shape));
    }
    List<List<Point>> lines = new ArrayList<>();
    for (Map.Entry<Integer, List<JsonNode>> arc : users.entrySet()) {
      List<JsonNode> sides = arc.getValue();
      if (sides.size() > 1 && wanted.test(sides.get(0), sides.get(1))) {
        lines.add(arcs.get(arc.getKey()));
      }
    }
    return lines;
  }

  /** Arcs stand in lists of lists, as deep as the shape's kind wants. */
  private static List<JsonNode> chains(JsonNode arcs, List<JsonNode> found) {
    if (arcs.path(0).isInt()) {
      found.add(arcs);
    } else {
      arcs.forEach(inner -> chains(inner, found));
    }
    return found;
  }

  private List<Point> joined(JsonNode chain) {
    List<Point> line = new ArrayList<>();
    for (JsonNode index : chain) {
      List<Point> arc = new ArrayList<>(arcs.get(plain(index.asInt())));
      if (index.asInt() < 0) {
        Collections.reverse(arc);
      }
      line.addAll(line.isEmpty() ? arc : arc.subList(1, arc.size()));
    }
    return line;
  }

  /** A reversed arc is written as its complement. */
  private static int plain(int index) {
    return index < 0 ? ~index : index;
  }
}

package dawngauge.derive;

import com.fasterxml.jackson.databind.JsonNode;
import dawngauge.derive.Topology.Point;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.BiPredicate;
import java.util.stream.Stream;

/**
 * Writes the base map, {@code land}, {@code coast}, {@code lakes}, {@code rivers}, {@code borders}
 * and {@code divisions}, from the unpacked packages named in {@link NpmPackage}: North America
 * finer than the rest of the world. The same packages give the same bytes.
 */
public final class DeriveBaseMap {

  private static final String HEADER =
      "# kind\tlatitude and longitude in 1e-4 deg, then the steps from each point to the next";

  private DeriveBaseMap() {}

  /**
   * Derives.
   *
   * @param arguments the folder that holds the unpacked packages, each under its name, and the
   *     folder to write to
   */
  public static void main(String[] arguments) throws IOException {
    if (arguments.length != 2) {
      throw new IllegalArgumentException("arguments: FOLDER-OF-PACKAGES TARGET-FOLDER");
    }
    Path from = Path.of(arguments[0]);
    Path to = Path.of(arguments[1]);
    for (NpmPackage source : NpmPackage.MAP) {
      source.checkVersion(from);
    }
    Topology fine = Topology.read(NpmPackage.NORTH_AMERICA.file(from));
    Topology world = Topology.read(NpmPackage.WORLD.file(from));
    Topology states = Topology.read(NpmPackage.US_STATES.file(from));

    write(
        to,
        "land",
        Stream.concat(
            MapLines.rows("land", fine.lines("land")).stream(),
            MapLines.rows("land", MapLines.areasOutside(world.lines("land"))).stream()));
    for (String layer : List.of("lakes", "rivers")) {
      boolean areas = layer.equals("lakes");
      String kind = layer.substring(0, layer.length() - 1);
      List<List<Point>> far = world.lines(layer);
      write(
          to,
          layer,
          Stream.concat(
              MapLines.rows(kind, fine.lines(layer)).stream(),
              MapLines.rows(kind, areas ? MapLines.areasOutside(far) : MapLines.pieces(far, false))
                  .stream()));
    }
    write(
        to,
        "coast",
        Stream.concat(
            MapLines.rows("coast", MapLines.pieces(fine.lines("coastlines"), true)).stream(),
            MapLines.rows("coast", MapLines.pieces(world.lines("coastlines"), false)).stream()));
    write(to, "borders", borders(fine, world, states));
    Bytes.writeText(to.resolve("divisions.tsv"), "# postal code\tlatitude\tlongitude", names(fine));
    Bytes.writeText(to.resolve("MAP-SOURCES.md"), "# Sources of the base map", sources());
  }

  private static void write(Path to, String layer, Stream<String> rows) throws IOException {
    List<String> sorted = rows.distinct().sorted().toList();
    Bytes.writePacked(to.resolve(layer + ".tsv.gz"), HEADER, sorted);
    System.out.println(layer + ": " + sorted.size());
  }

  private static Stream<String> borders(Topology fine, Topology world, Topology states)
      throws IOException {
    Set<String> fineCountries = new HashSet<>();
    fine.shapes("countries").forEach(shape -> fineCountries.add(id(shape)));
    BiPredicate<JsonNode, JsonNode> notThere =
        (a, b) -> !fineCountries.contains(id(a)) || !fineCountries.contains(id(b));
    List<String> rows = new ArrayList<>();
    rows.addAll(MapLines.rows("country", fine.between("countries", (a, b) -> true)));
    rows.addAll(MapLines.rows("country", world.between("countries", notThere)));
    rows.addAll(MapLines.rows("state", states.between("states", (a, b) -> true)));
    rows.addAll(
        MapLines.rows(
            "state", fine.between("subunits", (a, b) -> isIn(a, "CAN") && isIn(b, "CAN"))));
    rows.addAll(
        MapLines.rows(
            "state",
            world.between(
                "subunits",
                (a, b) -> country(a).equals(country(b)) && !isIn(a, "CAN") && !isIn(a, "USA"))));
    return rows.stream();
  }

  private static String id(JsonNode shape) {
    return shape.path("id").asText();
  }

  private static String country(JsonNode shape) {
    return shape.path("properties").path("gu").asText();
  }

  private static boolean isIn(JsonNode shape, String country) {
    return country(shape).equals(country);
  }

  /** Where the names of states and provinces stand. */
  private static List<String> names(Topology fine) throws IOException {
    Set<String> rows = new TreeSet<>();
    for (JsonNode shape : fine.shapes("subunits")) {
      JsonNode middle = shape.path("properties").path("ct");
      rows.add(id(shape) + "\t" + middle.path(1).asText() + "\t" + middle.path(0).asText());
    }
    return List.copyOf(rows);
  }

  private static List<String> sources() {
    List<String> lines = new ArrayList<>();
    lines.add("");
    lines.add(
        "The lines of `land`, `coast`, `lakes`, `rivers` and `borders` and the middles in"
            + " `divisions.tsv` are derived from Natural Earth (naturalearthdata.com, 1:50 million,"
            + " version 4.1, public domain); those between states of the United States from the"
            + " Census Bureau's cartographic boundary files (1:10 million, public domain); by way of"
            + " the npm packages");
    lines.add("");
    for (NpmPackage source : NpmPackage.MAP) {
      lines.add(source.line().strip());
    }
    lines.add("");
    lines.add("Changed: selected, cut, rounded, joined; see docs/data.md.");
    return lines;
  }
}

package dawngauge.geo;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * The map that comes with the program: land, lakes, rivers, borders (Natural Earth and U.S. Census
 * Bureau, public domain; see {@code docs/data.md}) and names of places and states. No roads.
 */
public final class BaseMap {

  /**
   * A name on the map.
   *
   * @param text the name
   * @param at where it stands
   * @param population inhabitants; 0 for a state or province
   */
  public record Name(String text, Mercator at, int population) {}

  /** Places with fewer inhabitants have no name on the map. */
  private static final int SMALLEST = 1000;

  private final List<MapLine> lines;
  private final List<Name> divisions;
  private final List<Name> places;

  private BaseMap() {
    lines =
        Stream.of("land", "lakes", "rivers", "borders", "coast")
            .flatMap(layer -> BundledLines.of(layer + ".tsv.gz").stream())
            .map(MapLine::parse)
            .toList();
    divisions = divisions(Gazetteer.load().table());
    places = places(Gazetteer.load().table());
  }

  /** Read at the first use. */
  private static final class Bundled {
    static final BaseMap ONE = new BaseMap();
  }

  /** The map; read at the first call, a few tenths of a second, and kept. */
  public static BaseMap load() {
    return Bundled.ONE;
  }

  /** All lines, in the order in which they are to be drawn. */
  public List<MapLine> lines() {
    return lines;
  }

  /** Names of the states of the United States and the provinces of Canada. */
  public List<Name> divisions() {
    return divisions;
  }

  /** Names of places, the most populous first. */
  public List<Name> places() {
    return places;
  }

  private static List<Name> divisions(PlaceTable table) {
    Map<String, String> names = new HashMap<>();
    for (Division division : table.divisions()) {
      if (!division.code().isEmpty()) {
        names.put(division.code(), division.name());
      }
    }
    List<Name> found = new ArrayList<>();
    for (String row : BundledLines.of("divisions.tsv")) {
      String[] columns = row.split("\t", -1);
      String name = names.get(columns[0]);
      if (name != null) {
        Coordinate middle =
            new Coordinate(Double.parseDouble(columns[1]), Double.parseDouble(columns[2]));
        found.add(new Name(name, Mercator.of(middle), 0));
      }
    }
    return List.copyOf(found);
  }

  private static List<Name> places(PlaceTable table) {
    return IntStream.range(0, table.size())
        .filter(i -> table.population(i) >= SMALLEST)
        .boxed()
        .sorted(Comparator.comparingInt(table::population).reversed())
        .map(i -> new Name(table.name(i), Mercator.of(table.coordinate(i)), table.population(i)))
        .toList();
  }
}

package dawngauge.geo;

import dawngauge.quantity.Elevation;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/**
 * The rows of the gazetteer, each column an array, so that tens of thousands stay small: first the
 * towns, then the passes.
 */
final class PlaceTable {

  /** Coordinates are whole numbers of this part of a degree, about 11 m. */
  private static final double STEPS_PER_DEGREE = 10_000;

  /** Inhabitants of a town abroad whose height counts for the ground around it; ours. */
  private static final int LARGE = 15_000;

  private static final Set<String> NORTH_AMERICA = Set.of("US", "CA", "MX");

  private final List<Division> divisions;
  private final List<ZoneId> zones;
  private final String names;
  private final int[] nameEnds;
  private final int[] latitudes;
  private final int[] longitudes;
  private final short[] division;
  private final int[] population;
  private final short[] elevation;
  private final short[] zone;
  private final PlaceNames keys;
  private final List<Boolean> about;

  private PlaceTable(
      List<Division> divisions, List<ZoneId> zones, List<String> rows, List<Boolean> about) {
    this.divisions = divisions;
    this.zones = zones;
    this.about = about;
    int size = rows.size();
    nameEnds = new int[size];
    latitudes = new int[size];
    longitudes = new int[size];
    division = new short[size];
    population = new int[size];
    elevation = new short[size];
    zone = new short[size];
    keys = new PlaceNames(size);
    StringBuilder all = new StringBuilder();
    for (int i = 0; i < size; i++) {
      String[] columns = rows.get(i).split("\t", -1);
      all.append(columns[0]);
      nameEnds[i] = all.length();
      keys.add(columns[0], columns[1]);
      latitudes[i] = Integer.parseInt(columns[2]);
      longitudes[i] = Integer.parseInt(columns[3]);
      division[i] = Short.parseShort(columns[4]);
      population[i] = Integer.parseInt(columns[5]);
      elevation[i] = Short.parseShort(columns[6]);
      zone[i] = Short.parseShort(columns[7]);
    }
    names = all.toString();
  }

  /** The table that comes with the program. */
  static PlaceTable bundled() {
    List<String> divisions = new ArrayList<>(BundledLines.of("states.tsv"));
    List<String> zones = new ArrayList<>(BundledLines.of("zones.txt"));
    List<String> rows = new ArrayList<>(BundledLines.of("places.tsv.gz"));
    PassRows passes = new PassRows(divisions, zones);
    rows.addAll(passes.rows());
    return new PlaceTable(
        Division.all(divisions),
        zones.stream().map(ZoneId::of).toList(),
        rows,
        List.copyOf(passes.about()));
  }

  /** How many rows are towns; the rest are passes. */
  int towns() {
    return size() - about.size();
  }

  int size() {
    return nameEnds.length;
  }

  List<Division> divisions() {
    return divisions;
  }

  /** The folded names. */
  PlaceNames keys() {
    return keys;
  }

  /** Which of the divisions a place is in. */
  int division(int index) {
    return division[index];
  }

  private Place.Kind kind(int index) {
    if (index < towns()) {
      return Place.Kind.TOWN;
    }
    return about.get(index - towns()) ? Place.Kind.PASS_ABOUT : Place.Kind.PASS;
  }

  int population(int index) {
    return population[index];
  }

  /**
   * Whether its height tells of the ground around it: passes, and towns but for the small ones
   * abroad, whose heights are often those of a slope beside them.
   */
  boolean tellsGround(int index) {
    return index >= towns()
        || population[index] >= LARGE
        || NORTH_AMERICA.contains(divisions.get(division[index]).country());
  }

  /** Meter above mean sea level. */
  int elevation(int index) {
    return elevation[index];
  }

  Coordinate coordinate(int index) {
    return new Coordinate(
        latitudes[index] / STEPS_PER_DEGREE, longitudes[index] / STEPS_PER_DEGREE);
  }

  ZoneId zone(int index) {
    return zones.get(zone[index]);
  }

  String name(int index) {
    return names.substring(index == 0 ? 0 : nameEnds[index - 1], nameEnds[index]);
  }

  Place place(int index) {
    Division within = divisions.get(division[index]);
    return new Place(
        name(index),
        within.shown(),
        within.country(),
        coordinate(index),
        new Elevation(elevation[index]),
        zone(index),
        population[index],
        kind(index));
  }
}

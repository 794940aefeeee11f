package dawngauge.derive;

import dawngauge.geo.Coordinate;
import dawngauge.geo.FoldedText;
import java.util.Set;

/**
 * A row of GeoNames' cities500.txt, columns as in GeoNames' readme.txt of the export dump.
 *
 * @param number by which GeoNames knows it
 * @param asciiName empty where it folds to the same as the name
 * @param latitude in 1e-4 degree north
 * @param longitude in 1e-4 degree east
 * @param featureCode what kind of populated place it is
 * @param admin1 code of the first division of its country
 * @param elevation meter above mean sea level
 * @param modified day of the last change, year first
 */
record SourceRow(
    String number,
    String name,
    String asciiName,
    int latitude,
    int longitude,
    String featureCode,
    String country,
    String admin1,
    int population,
    int elevation,
    String zone,
    String modified) {

  private static final Set<String> NORTH_AMERICA = Set.of("US", "CA", "MX");
  private static final int SMALLEST_IN_NORTH_AMERICA = 1_000;
  private static final int SMALLEST_ELSEWHERE = 5_000;

  /** Historical, abandoned, destroyed, and historical capital. */
  private static final Set<String> NO_LONGER_THERE = Set.of("PPLH", "PPLQ", "PPLW", "PPLCH");

  /**
   * Beyond this, typed elevation and elevation model contradict each other: by the look of 70
   * cases, mostly a wrong unit or a wrong place.
   */
  private static final int CONTRADICTION_METERS = 60;

  private static final int NO_MODEL = -9999;

  /** Reads a line. */
  static SourceRow of(String line) {
    String[] column = line.split("\t", -1);
    String ascii = FoldedText.of(column[2]).equals(FoldedText.of(column[1])) ? "" : column[2];
    return new SourceRow(
        column[0],
        column[1],
        ascii,
        steps(column[4]),
        steps(column[5]),
        column[7],
        column[8],
        column[10],
        Integer.parseInt(column[14]),
        elevation(column[15], Integer.parseInt(column[16])),
        column[17],
        column[18]);
  }

  private static int steps(String degrees) {
    return (int) Math.round(Double.parseDouble(degrees) * 10_000);
  }

  /**
   * The typed elevation, or that of the elevation model (column dem) where none is typed or the two
   * contradict each other. The model has none on water: there it is a place on the shore, at 0 m.
   */
  private static int elevation(String typed, int model) {
    int chosen;
    if (typed.isEmpty()) {
      chosen = model == NO_MODEL ? 0 : model;
    } else {
      int meters = Integer.parseInt(typed);
      boolean contradiction = model != NO_MODEL && Math.abs(meters - model) > CONTRADICTION_METERS;
      chosen = contradiction ? model : meters;
    }
    if (chosen < -450 || chosen > 6000) {
      throw new IllegalArgumentException("no town lies at " + chosen + " m");
    }
    return chosen;
  }

  /** Whether it goes into the gazetteer. */
  boolean isWanted() {
    int smallest = NORTH_AMERICA.contains(country) ? SMALLEST_IN_NORTH_AMERICA : SMALLEST_ELSEWHERE;
    return population >= smallest && !NO_LONGER_THERE.contains(featureCode);
  }

  /** Country and first division, such as "US.KS". */
  String division() {
    return country + "." + admin1;
  }

  /** What people read; places that have it in common are hard to tell apart. */
  String label() {
    return division() + "\t" + name;
  }

  /** The same with another time zone. */
  SourceRow withZone(String other) {
    return new SourceRow(
        number,
        name,
        asciiName,
        latitude,
        longitude,
        featureCode,
        country,
        admin1,
        population,
        elevation,
        other,
        modified);
  }

  Coordinate coordinate() {
    return new Coordinate(latitude * 1e-4, longitude * 1e-4);
  }
}

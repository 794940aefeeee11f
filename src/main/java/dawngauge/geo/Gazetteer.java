package dawngauge.geo;

import dawngauge.quantity.Distance;
import dawngauge.quantity.Elevation;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * The populated places that come with the program (GeoNames, CC BY 4.0; see {@code docs/data.md}):
 * found by name, and asked for elevation and time zone of what lies near them. Of the United
 * States, Canada and Mexico places with at least 1000 inhabitants, of the world with 15,000.
 */
public final class Gazetteer {

  /** Farther from any place, neither its zone nor its elevation says anything. */
  private static final double REACH_METERS = 250_000;

  private static final int NEIGHBORS = 5;

  /** Nearer than this, the weights of inverse distance no longer rise. */
  private static final double SAME_SPOT_METERS = 1;

  private final PlaceTable table;
  private final NearestPoints nearest;

  private Gazetteer() {
    table = PlaceTable.bundled();
    nearest = new NearestPoints(table.size(), table::coordinate);
  }

  /** Read at the first use. */
  private static final class Bundled {
    static final Gazetteer ONE = new Gazetteer();
  }

  /** The gazetteer; read at the first call, a few tenths of a second, and kept. */
  public static Gazetteer load() {
    return Bundled.ONE;
  }

  /**
   * Places by what somebody types: a name or the beginning of one, accents, capitals and
   * punctuation left aside, with or without a state, province or country behind it ("springfield
   * il", "Springfield, Illinois", "saltillo mexico").
   *
   * <p>Names that are the text come first, then names that begin with it, then those in which a
   * later word does, then those that contain it. Among these the order is by population, or near a
   * place by population / (1 + (distance / 50 km)²), which far off falls as in the law of retail
   * gravitation (Reilly 1931).
   *
   * @param text anything; over 200 characters it finds nothing
   * @param near where the route is, if that is known
   * @param most how many to give at most, zero or more
   */
  public List<Place> search(String text, @Nullable Coordinate near, int most) {
    return find(text, near, most).stream().map(Found::place).toList();
  }

  /**
   * A place that was found.
   *
   * @param place the place
   * @param whole whether the text is its name, with or without what stands behind it; else the name
   *     only begins with the text or contains it
   */
  public record Found(Place place, boolean whole) {}

  /** The same as {@link #search}, and how well each place answers to the text. */
  public List<Found> find(String text, @Nullable Coordinate near, int most) {
    return PlaceSearch.find(table, text, near, most);
  }

  /** The nearest place; empty if none is within 250 km. */
  public Optional<Place> nearest(Coordinate at) {
    return around(at, 1).stream().findFirst().map(near -> table.place(near.index()));
  }

  /**
   * Rough elevation and time zone of any point: the mean elevation of the five nearest places,
   * weighted by inverse distance, and the zone of the nearest.
   *
   * @return empty if no place is within 250 km: then nothing sound can be said
   */
  public Optional<Estimate> estimateAt(Coordinate at) {
    List<NearestPoints.Near> around = around(at, NEIGHBORS);
    if (around.isEmpty()) {
      return Optional.empty();
    }
    NearestPoints.Near first = around.get(0);
    return Optional.of(
        new Estimate(
            elevation(table, around),
            table.zone(first.index()),
            table.place(first.index()),
            new Distance(first.meters())));
  }

  /** Mean by inverse distance. */
  static Elevation elevation(PlaceTable table, List<NearestPoints.Near> around) {
    double sum = 0;
    double weights = 0;
    for (NearestPoints.Near near : around) {
      double weight = 1 / Math.max(near.meters(), SAME_SPOT_METERS);
      sum += weight * table.elevation(near.index());
      weights += weight;
    }
    return new Elevation(sum / weights);
  }

  private List<NearestPoints.Near> around(Coordinate at, int count) {
    return nearest.around(at, count).stream()
        .filter(near -> near.meters() <= REACH_METERS)
        .toList();
  }

  /** All of it, for tests. */
  PlaceTable table() {
    return table;
  }
}

package dawngauge.geo;

import dawngauge.quantity.Distance;
import dawngauge.quantity.Elevation;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import org.jspecify.annotations.Nullable;

/**
 * The populated places that come with the program (GeoNames, CC BY 4.0; see {@code docs/data.md}),
 * and road passes: found by name, and asked for elevation and time zone of what lies near them. Of
 * the United States, Canada and Mexico places with at least 1000 inhabitants, of the world with
 * 5,000; those abroad of less than 15,000 are found, but tell nothing of the ground around them.
 */
public final class Gazetteer {

  /** Farther from any place, neither its zone nor its elevation says anything. */
  private static final double REACH_METERS = 250_000;

  private static final int NEIGHBORS = 5;

  /**
   * At this distance what the nearest known height tells of the coarse land's error has fallen to
   * 1/e; chosen so that towns held out come out well and passes neither too low nor too high.
   */
  private static final double TELLS_METERS = 25_000;

  /** Nearer than this, the weights of inverse distance no longer rise. */
  private static final double SAME_SPOT_METERS = 1;

  private static final double MILE_METERS = 1609.344;

  /** How far off the line a pass is thought of, as a part of its length; ours, as the next two. */
  private static final double OFF = 0.1;

  private static final double LEAST_OFF_METERS = 10 * MILE_METERS;
  private static final double MOST_OFF_METERS = 25 * MILE_METERS;

  /** How far off a track a pass is thought of: the road is known there; ours. */
  private static final double OFF_TRACK_METERS = 5 * MILE_METERS;

  /** A pass nearer to an end of the way is that end. */
  private static final double AT_END_METERS = 3000;

  /** The ground at a trip's stops is asked for at every edit. */
  private static final int REMEMBERED = 2048;

  private final Map<Coordinate, Optional<Estimate>> known = new ConcurrentHashMap<>();

  private final PlaceTable table;

  /** Towns and passes: points of known height. */
  private final NearestPoints points;

  private Gazetteer() {
    table = PlaceTable.bundled();
    points = new NearestPoints(table.size(), table::coordinate);
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

  /** The nearest town; empty if none is within 250 km. */
  public Optional<Place> nearest(Coordinate at) {
    return around(at, 1).stream().findFirst().map(near -> table.place(near.index()));
  }

  /**
   * Elevation and time zone of any point, as estimates; the zone is that of the nearest town.
   *
   * @return empty if no town is within 250 km: then nothing sound can be said
   */
  public Optional<Estimate> estimateAt(Coordinate at) {
    if (known.size() >= REMEMBERED) {
      known.clear();
    }
    return known.computeIfAbsent(at, this::estimate);
  }

  private Optional<Estimate> estimate(Coordinate at) {
    return around(at, 1).stream()
        .findFirst()
        .map(
            first ->
                new Estimate(
                    elevationAt(at),
                    Estimate.doubt(at),
                    table.zone(first.index()),
                    table.place(first.index()),
                    new Distance(first.meters())));
  }

  /** Height of the ground, an estimate, where a town is within 250 km. */
  Elevation elevationAt(Coordinate at) {
    return elevation(table, at, points.around(at, NEIGHBORS, table::tellsGround));
  }

  /**
   * The coarse land, corrected by what it misses at the known heights around: the mean by inverse
   * squares of distance, which counts the less the farther off the nearest is.
   */
  static Elevation elevation(PlaceTable table, Coordinate at, List<NearestPoints.Near> around) {
    Relief relief = Relief.load();
    double sum = 0;
    double weights = 0;
    for (NearestPoints.Near near : around) {
      double meters = Math.max(near.meters(), SAME_SPOT_METERS);
      double weight = 1 / (meters * meters);
      double missed = table.elevation(near.index()) - relief.at(table.coordinate(near.index()));
      sum += weight * missed;
      weights += weight;
    }
    double away = around.get(0).meters() / TELLS_METERS;
    return new Elevation(relief.at(at) + Math.exp(-away * away) * sum / weights);
  }

  /**
   * Passes by which the straight line between two places runs: not farther off it than a tenth of
   * its length, at least 10 miles and at most 25; and not at its ends. In the order of the way.
   */
  List<PassNear> passesBy(Coordinate from, Coordinate to) {
    double line = GreatCircle.between(from, to).meters();
    double most = Math.max(LEAST_OFF_METERS, Math.min(MOST_OFF_METERS, line * OFF));
    List<PassNear> passes = new ArrayList<>();
    for (int i = table.towns(); i < table.size(); i++) {
      double a = GreatCircle.between(from, table.coordinate(i)).meters();
      double b = GreatCircle.between(to, table.coordinate(i)).meters();
      // A flat triangle of the three sides: within 1 % of the sphere's on legs up to 1,000 km.
      double along = (a * a + line * line - b * b) / (2 * line);
      double off = Math.sqrt(Math.max(0, a * a - along * along));
      if (off <= most && along > AT_END_METERS && along < line - AT_END_METERS) {
        passes.add(
            new PassNear(table.place(i), new Distance(off), along / line, LegGround.Under.LINE));
      }
    }
    passes.sort(Comparator.comparingDouble(PassNear::part));
    return passes;
  }

  /**
   * Passes by which a track runs, not farther off it than 5 miles and not at its ends, in order.
   */
  List<PassNear> passesBy(LineSearch track) {
    List<PassNear> passes = new ArrayList<>();
    for (int i = table.towns(); i < table.size(); i++) {
      LineSearch.Near near = track.nearest(table.coordinate(i));
      if (near.off() <= OFF_TRACK_METERS
          && near.along() > AT_END_METERS
          && near.along() < track.length() - AT_END_METERS) {
        passes.add(
            new PassNear(
                table.place(i),
                new Distance(near.off()),
                near.along() / track.length(),
                LegGround.Under.TRACK));
      }
    }
    passes.sort(Comparator.comparingDouble(PassNear::part));
    return passes;
  }

  /** The nearest towns within reach. */
  private List<NearestPoints.Near> around(Coordinate at, int count) {
    return points.around(at, count, row -> row < table.towns()).stream()
        .filter(near -> near.meters() <= REACH_METERS)
        .toList();
  }

  /** All of it, for tests. */
  PlaceTable table() {
    return table;
  }
}

package dawngauge.geo;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.PriorityQueue;
import java.util.function.IntFunction;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;

/**
 * Finds the points of a list that lie around another one. They are points on a ball of radius 1,
 * ordered from south to north; the search goes from the point to both sides until the next is too
 * far north or south to be among the nearest. So neither the poles nor the date line are special.
 */
public final class NearestPoints {

  private final IntFunction<Coordinate> coordinates;
  private final int[] index;
  private final double[] x;
  private final double[] y;
  private final double[] z;

  /**
   * Makes a list searchable.
   *
   * @param size how many points there are
   * @param coordinates where each of them is, by its row from 0
   */
  public NearestPoints(int size, IntFunction<Coordinate> coordinates) {
    this.coordinates = coordinates;
    double[] latitudes = new double[size];
    for (int row = 0; row < size; row++) {
      latitudes[row] = coordinates.apply(row).latitude();
    }
    index =
        IntStream.range(0, size)
            .boxed()
            .sorted(Comparator.comparingDouble(row -> latitudes[row]))
            .mapToInt(Integer::intValue)
            .toArray();
    x = new double[size];
    y = new double[size];
    z = new double[size];
    for (int i = 0; i < size; i++) {
      Point point = Point.of(coordinates.apply(index[i]));
      x[i] = point.x();
      y[i] = point.y();
      z[i] = point.z();
    }
  }

  /**
   * A point of the list.
   *
   * @param index its row
   * @param meters how far away it is
   */
  public record Near(int index, double meters) {}

  /** A point on the ball; z is to the north. */
  private record Point(double x, double y, double z) {
    static Point of(Coordinate at) {
      double latitude = Math.toRadians(at.latitude());
      double longitude = Math.toRadians(at.longitude());
      return new Point(
          Math.cos(latitude) * Math.cos(longitude),
          Math.cos(latitude) * Math.sin(longitude),
          Math.sin(latitude));
    }
  }

  /** A candidate and the square of its straight distance through the ball. */
  private record Candidate(int index, double chordSquared) {}

  /** The nearest points, the nearest first; fewer where the list is shorter. */
  public List<Near> around(Coordinate at, int count) {
    return around(at, count, row -> true);
  }

  /** The nearest of those points whose rows are wanted, the nearest first. */
  List<Near> around(Coordinate at, int count, IntPredicate wanted) {
    Point here = Point.of(at);
    PriorityQueue<Candidate> kept =
        new PriorityQueue<>(Comparator.comparingDouble(Candidate::chordSquared).reversed());
    int above = firstFrom(here.z());
    int below = above - 1;
    double reach = Double.POSITIVE_INFINITY;
    while (below >= 0 || above < z.length) {
      boolean up = below < 0 || (above < z.length && z[above] - here.z() <= here.z() - z[below]);
      int next = up ? above++ : below--;
      double north = square(z[next] - here.z());
      if (north > reach) {
        break;
      }
      double chord = north + square(x[next] - here.x()) + square(y[next] - here.y());
      if (chord < reach && wanted.test(index[next])) {
        kept.add(new Candidate(index[next], chord));
        if (kept.size() > count) {
          kept.remove();
        }
        if (kept.size() == count) {
          reach = kept.element().chordSquared();
        }
      }
    }
    return kept.stream()
        .sorted(Comparator.comparingDouble(Candidate::chordSquared))
        .map(candidate -> new Near(candidate.index(), meters(at, candidate.index())))
        .toList();
  }

  private int firstFrom(double north) {
    int found = Arrays.binarySearch(z, north);
    return found >= 0 ? found : -found - 1;
  }

  private double meters(Coordinate at, int row) {
    return GreatCircle.between(at, coordinates.apply(row)).meters();
  }

  private static double square(double difference) {
    return difference * difference;
  }
}

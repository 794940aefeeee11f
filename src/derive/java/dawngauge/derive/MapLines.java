package dawngauge.derive;

import dawngauge.derive.Topology.Point;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;

/** Cuts lines and areas along the edge of the finer map, and writes them as rows. */
final class MapLines {

  /** Eastern and southern edge of the finer map, degrees; west and north it ends with the earth. */
  static final double EAST = -45;

  static final double SOUTH = 0;

  private static final double STEPS_PER_DEGREE = 10_000;

  private MapLines() {}

  /** Whether the finer map shows a point. */
  static boolean isFine(Point point) {
    return point.longitude() < EAST && point.latitude() > SOUTH;
  }

  /** The pieces of lines outside of the finer map. */
  static List<List<Point>> outside(List<List<Point>> lines) {
    List<List<Point>> pieces = new ArrayList<>();
    for (List<Point> line : lines) {
      List<Point> piece = new ArrayList<>();
      for (int i = 0; i < line.size(); i++) {
        boolean beside =
            !isFine(line.get(i))
                || (i > 0 && !isFine(line.get(i - 1)))
                || (i + 1 < line.size() && !isFine(line.get(i + 1)));
        if (beside) {
          piece.add(line.get(i));
        } else {
          keep(piece, 2, pieces);
          piece = new ArrayList<>();
        }
      }
      keep(piece, 2, pieces);
    }
    return pieces;
  }

  /** The parts of areas outside of the finer map: east of it, and south of it. */
  static List<List<Point>> areasOutside(List<List<Point>> rings) {
    List<List<Point>> parts = new ArrayList<>();
    for (List<Point> ring : rings) {
      keep(clipped(ring, p -> p.longitude() >= EAST, Point::longitude, EAST), 4, parts);
      List<Point> west = clipped(ring, p -> p.longitude() <= EAST, Point::longitude, EAST);
      keep(clipped(west, p -> p.latitude() <= SOUTH, Point::latitude, SOUTH), 4, parts);
    }
    return parts;
  }

  private static void keep(List<Point> line, int least, List<List<Point>> kept) {
    if (line.size() >= least) {
      kept.add(line);
    }
  }

  /** One side of a straight line, by the method of Sutherland and Hodgman (1974). */
  private static List<Point> clipped(
      List<Point> ring, Predicate<Point> inside, ToDoubleFunction<Point> axis, double edge) {
    List<Point> kept = new ArrayList<>();
    for (int i = 0; i < ring.size(); i++) {
      Point from = ring.get((i + ring.size() - 1) % ring.size());
      Point to = ring.get(i);
      if (inside.test(from) != inside.test(to)) {
        double part =
            (edge - axis.applyAsDouble(from)) / (axis.applyAsDouble(to) - axis.applyAsDouble(from));
        kept.add(
            new Point(
                from.longitude() + part * (to.longitude() - from.longitude()),
                from.latitude() + part * (to.latitude() - from.latitude())));
      }
      if (inside.test(to)) {
        kept.add(to);
      }
    }
    if (!kept.isEmpty() && !kept.get(0).equals(kept.get(kept.size() - 1))) {
      kept.add(kept.get(0));
    }
    return kept;
  }

  /**
   * Rows of whole steps of 1e-4 degree: latitude and longitude, then the steps from each to the
   * next.
   */
  static List<String> rows(String kind, List<List<Point>> lines) {
    List<String> rows = new ArrayList<>();
    for (List<Point> line : lines) {
      StringBuilder row = new StringBuilder(kind);
      int north = 0;
      int east = 0;
      int written = 0;
      for (Point point : line) {
        int toNorth = (int) Math.rint(point.latitude() * STEPS_PER_DEGREE) - north;
        int toEast = (int) Math.rint(point.longitude() * STEPS_PER_DEGREE) - east;
        if (written == 0 || toNorth != 0 || toEast != 0) {
          row.append(written == 0 ? "\t" : " ")
              .append(String.format(Locale.ROOT, "%d %d", toNorth, toEast));
          written++;
        }
        north += toNorth;
        east += toEast;
      }
      if (written > 1) {
        rows.add(row.toString());
      }
    }
    return rows;
  }
}

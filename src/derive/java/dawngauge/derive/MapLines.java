package dawngauge.derive;

import dawngauge.derive.Topology.Point;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;

/** Cuts lines and areas along the edge of the finer map, and writes them as rows. */
final class MapLines {

  /** A part of the earth, degrees. */
  private record Box(double west, double south, double east, double north) {
    boolean holds(Point at) {
      return at.longitude() >= west
          && at.longitude() <= east
          && at.latitude() >= south
          && at.latitude() <= north;
    }
  }

  /** Where the finer map has no land: the Old World, South America, and the tip of Asia. */
  private static final List<Box> COARSE =
      List.of(
          new Box(-45, -90, 180, 90),
          new Box(-180, -90, -45, 7.2),
          new Box(-77.4, 7.2, -45, 13),
          new Box(-180, 64, -168.9, 90));

  private static final double STEPS_PER_DEGREE = 10_000;

  private MapLines() {}

  private static boolean isFine(Point point) {
    return COARSE.stream().noneMatch(box -> box.holds(point));
  }

  /** The pieces of lines within the finer map or outside of it, each with a point beyond. */
  static List<List<Point>> pieces(List<List<Point>> lines, boolean fine) {
    List<List<Point>> pieces = new ArrayList<>();
    for (List<Point> line : lines) {
      List<Point> piece = new ArrayList<>();
      for (int i = 0; i < line.size(); i++) {
        boolean wanted =
            isFine(line.get(i)) == fine
                || (i > 0 && isFine(line.get(i - 1)) == fine)
                || (i + 1 < line.size() && isFine(line.get(i + 1)) == fine);
        if (wanted) {
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

  /** The parts of areas outside of the finer map. */
  static List<List<Point>> areasOutside(List<List<Point>> rings) {
    List<List<Point>> parts = new ArrayList<>();
    for (List<Point> ring : rings) {
      for (Box box : COARSE) {
        List<Point> part =
            clipped(ring, p -> p.longitude() >= box.west(), Point::longitude, box.west());
        part = clipped(part, p -> p.longitude() <= box.east(), Point::longitude, box.east());
        part = clipped(part, p -> p.latitude() >= box.south(), Point::latitude, box.south());
        part = clipped(part, p -> p.latitude() <= box.north(), Point::latitude, box.north());
        keep(part, 4, parts);
      }
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

package dawngauge.ui.route;

import dawngauge.advice.Advice;
import dawngauge.trip.Itinerary;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import javafx.geometry.Bounds;
import javafx.scene.layout.Region;

/**
 * Which time stands at which height beside the ledger's rows: a stop's stay runs down its row, a
 * leg's drive down to the next. Heights are pixels from the top of the ledger.
 */
final class TraceScale {

  private static final double INSET = 10;

  private record Knot(double seconds, double y) {}

  private final List<Knot> knots = new ArrayList<>();
  private final List<Double> headings = new ArrayList<>();
  private final double height;

  TraceScale(List<Region> rows, Advice advice) {
    double before = -100;
    for (int i = 0; i < Math.min(rows.size(), advice.stops().size()); i++) {
      Bounds bounds = rows.get(i).getBoundsInParent();
      Itinerary.Visit visit = advice.stops().get(i).stop().visit();
      double top = bounds.getMinY() + INSET;
      double bottom = Math.max(top + 1, bounds.getMaxY() - INSET);
      if (visit.arrive().equals(visit.leave())) {
        knots.add(new Knot(seconds(visit.arrive()), (top + bottom) / 2));
      } else {
        knots.add(new Knot(seconds(visit.arrive()), top));
        knots.add(new Knot(seconds(visit.leave()), bottom));
      }
      boolean newDay = rows.get(i).getUserData() instanceof Boolean day && day;
      if ((i == 0 || newDay) && bounds.getMinY() - before > 60) {
        headings.add(Math.max(0, bounds.getMinY() - 27));
        before = bounds.getMinY();
      }
    }
    height = rows.isEmpty() ? 0 : rows.get(rows.size() - 1).getBoundsInParent().getMaxY() + INSET;
  }

  boolean isEmpty() {
    return knots.isEmpty();
  }

  /** Height of the whole. */
  double height() {
    return height;
  }

  /** Where the axes are written: beside each day's heading, above its first stop. */
  List<Double> headings() {
    return headings;
  }

  double y(Instant instant) {
    return y(seconds(instant));
  }

  double y(double seconds) {
    for (int i = 1; i < knots.size(); i++) {
      Knot from = knots.get(i - 1);
      Knot to = knots.get(i);
      if (seconds <= to.seconds) {
        double part = (seconds - from.seconds) / Math.max(1, to.seconds - from.seconds);
        return from.y + Math.max(0, part) * (to.y - from.y);
      }
    }
    return knots.get(knots.size() - 1).y;
  }

  private static double seconds(Instant instant) {
    return instant.toEpochMilli() / 1000.0;
  }
}

package dawngauge.ui.route;

import dawngauge.advice.Advice;
import dawngauge.trip.Itinerary;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;

/**
 * Which time stands at which height beside the rows of the stops: a stop's stay runs down its row,
 * a leg's drive down to the next. Heights are pixels from the top of the first row.
 */
final class TraceScale {

  private record Knot(double seconds, double y) {}

  private final List<Knot> knots = new ArrayList<>();
  private final RowSpans rows;

  TraceScale(RowSpans rows, Advice advice) {
    this.rows = rows;
    for (int i = 0; i < Math.min(rows.count(), advice.stops().size()); i++) {
      Itinerary.Visit visit = advice.stops().get(i).stop().visit();
      double top = rows.top(i);
      double bottom = Math.max(top + 1, rows.bottom(i));
      if (visit.arrive().equals(visit.leave())) {
        knots.add(new Knot(seconds(visit.arrive()), (top + bottom) / 2));
      } else {
        knots.add(new Knot(seconds(visit.arrive()), top));
        knots.add(new Knot(seconds(visit.leave()), bottom));
      }
    }
  }

  boolean isEmpty() {
    return knots.isEmpty();
  }

  /** Height of the whole. */
  double height() {
    return rows.height();
  }

  /** Where the axes are written again. */
  List<Double> headings() {
    return rows.headings();
  }

  double y(Instant instant) {
    return y(seconds(instant));
  }

  double y(double seconds) {
    int low = 1;
    int high = knots.size();
    while (low < high) {
      int middle = (low + high) / 2;
      if (knots.get(middle).seconds < seconds) {
        low = middle + 1;
      } else {
        high = middle;
      }
    }
    if (low >= knots.size()) {
      return knots.get(knots.size() - 1).y;
    }
    Knot from = knots.get(low - 1);
    Knot to = knots.get(low);
    double part = (seconds - from.seconds) / Math.max(1, to.seconds - from.seconds);
    return from.y + Math.max(0, part) * (to.y - from.y);
  }

  private static double seconds(Instant instant) {
    return instant.toEpochMilli() / 1000.0;
  }
}

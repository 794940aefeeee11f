package dawngauge.trip;

import dawngauge.geo.PlaceStay;
import dawngauge.geo.Spot;
import dawngauge.geo.TrackLine;
import dawngauge.geo.TrackPoint;
import dawngauge.quantity.Distance;
import dawngauge.quantity.Elevation;
import dawngauge.quantity.Entered;
import dawngauge.quantity.QuantityKind;
import dawngauge.quantity.Speed;
import dawngauge.quantity.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.function.IntToDoubleFunction;
import org.jspecify.annotations.Nullable;

/**
 * A route made from a line of somebody else's file: chosen points become stops. Of a track, what
 * lies between two stops is the leg: its length, its heights as far as they matter, and its shape;
 * of routes and waypoints, which name turns only, legs are guessed as between places.
 */
public final class RouteOfTrack {

  /** Heights between two kept points differ from the line between them by less, in meter; ours. */
  private static final double SMOOTH = 40;

  /** Most points kept on one leg; ours. */
  private static final int MOST_POINTS = 40;

  private RouteOfTrack() {}

  /**
   * A stop on a line.
   *
   * @param index of its point
   * @param spot where it is; its elevation is that of the line where it has one
   */
  public record OnLine(int index, Spot spot) {}

  /** Makes chosen points of a line the route; see {@link RouteOfPlaces#replace}. */
  public static Trip replace(Trip trip, TrackLine line, List<OnLine> stops) {
    List<RouteOfPlaces.Wanted> wanted =
        stops.stream()
            .map(stop -> new RouteOfPlaces.Wanted(stop.spot(), PlaceStay.UNSAID))
            .toList();
    Trip made = RouteOfPlaces.replace(trip, wanted);
    double[] meters = line.meters();
    for (int i = 0; i < stops.size(); i++) {
      Elevation height = line.points().get(stops.get(i).index()).elevation();
      if (height != null) {
        Stop stop = made.route().stops().get(i);
        made = RouteEdits.withStop(made, i, stop.withElevation(typed(height)));
      }
    }
    if (!line.isWay()) {
      return made;
    }
    for (int i = 0; i + 1 < stops.size(); i++) {
      int from = stops.get(i).index();
      int to = stops.get(i + 1).index();
      Distance length = new Distance(meters[to] - meters[from]);
      Entered<Speed> speed = made.route().legs().get(i).averageSpeed();
      made =
          RouteEdits.withLeg(
              made,
              i,
              new Leg(
                  LegGuess.typed(length, Unit.MILE),
                  speed,
                  null,
                  null,
                  profile(line, meters, from, to),
                  TrackMarks.of(line, meters, from, to),
                  false,
                  Remarks.NONE));
    }
    return made;
  }

  /** A height as somebody would type it, in whole meters. */
  static Entered<Elevation> typed(Elevation height) {
    long meters = Math.round(height.meters());
    return Entered.of(QuantityKind.ELEVATION, meters + " m");
  }

  /** Heights between two stops, as few points as keep within a span of the ground. */
  private static List<ProfilePoint> profile(TrackLine line, double[] meters, int from, int to) {
    List<Integer> known = new ArrayList<>();
    for (int i = from; i <= to; i++) {
      if (line.points().get(i).elevation() != null) {
        known.add(i);
      }
    }
    List<ProfilePoint> points = new ArrayList<>();
    if (known.size() < 3) {
      return points;
    }
    List<Integer> kept =
        Thinning.kept(
            known.size(),
            (first, last) -> offStraight(line, meters, known, first, last),
            SMOOTH,
            MOST_POINTS);
    double end =
        LegGuess.typed(new Distance(meters[to] - meters[from]), Unit.MILE).value().meters();
    double before = 0;
    for (int place : kept) {
      int index = known.get(place);
      Entered<Distance> along =
          LegGuess.typed(new Distance(meters[index] - meters[from]), Unit.MILE);
      TrackPoint point = line.points().get(index);
      Elevation height = point.elevation();
      double at = along.value().meters();
      if (at > before && at < end && height != null) {
        String name = point.name().isEmpty() ? null : point.name();
        points.add(new ProfilePoint(name, along, typed(height), null, Remarks.NONE));
        before = at;
      }
    }
    return points;
  }

  /** How far heights lie off the straight line over the way between two of them, in meter. */
  private static IntToDoubleFunction offStraight(
      TrackLine line, double[] meters, List<Integer> known, int first, int last) {
    double a = height(line, known.get(first));
    double b = height(line, known.get(last));
    double begin = meters[known.get(first)];
    double length = Math.max(1, meters[known.get(last)] - begin);
    return i ->
        Math.abs(
            height(line, known.get(i)) - a - (b - a) * (meters[known.get(i)] - begin) / length);
  }

  private static double height(TrackLine line, int index) {
    @Nullable Elevation elevation = line.points().get(index).elevation();
    return elevation == null ? Double.NaN : elevation.meters();
  }
}

package dawngauge.planner;

import dawngauge.geo.Estimate;
import dawngauge.geo.Gazetteer;
import dawngauge.geo.TrackLine;
import dawngauge.geo.TrackPoint;
import dawngauge.problem.Problem;
import dawngauge.problem.ProblemCode;
import dawngauge.quantity.Elevation;
import dawngauge.quantity.Median;
import dawngauge.quantity.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * Heights of a line from somebody else's file against the ground. A recorder without a fix, or with
 * a wrong pressure at sea level, writes heights that are all 0 or all off; taken as they are, the
 * air would be hundreds of meters wrong.
 *
 * @param line the line, without heights where they cannot be those of the ground
 * @param problems what was left out and why
 */
record Heights(TrackLine line, List<Problem> problems) {

  /** So many points are looked at, evenly; ours. */
  private static final int LOOKED_AT = 200;

  /** A line all at one height, lowest to highest in meter, ... */
  private static final double FLAT = 1;

  /** ... is not believed where the ground is this far off, in meter; ours. */
  private static final double FLAT_OFF = 15;

  /** Half of a doubt about one point, which half of all points do not pass by chance; ours. */
  private static final double COMMON_DOUBT = 0.5;

  /** Never less than this, in meter; ours. */
  private static final double LEAST_DOUBT = 150;

  static Heights checked(TrackLine line) {
    List<TrackPoint> known =
        line.points().stream().filter(point -> point.elevation() != null).toList();
    int step = Math.max(1, known.size() / LOOKED_AT);
    List<Double> heights = new ArrayList<>();
    List<Double> grounds = new ArrayList<>();
    List<Double> doubts = new ArrayList<>();
    for (int i = 0; i < known.size(); i += step) {
      Elevation height = known.get(i).elevation();
      Estimate ground = Gazetteer.load().estimateAt(known.get(i).at()).orElse(null);
      if (height != null && ground != null) {
        heights.add(height.meters());
        grounds.add(ground.elevation().meters());
        doubts.add(ground.doubt().meters());
      }
    }
    if (heights.isEmpty()) {
      return new Heights(line, List.of());
    }
    double[] off = new double[heights.size()];
    for (int i = 0; i < off.length; i++) {
      off[i] = heights.get(i) - grounds.get(i);
    }
    double lowest = heights.stream().mapToDouble(h -> h).min().orElseThrow();
    double highest = heights.stream().mapToDouble(h -> h).max().orElseThrow();
    boolean flat = off.length > 1 && highest - lowest < FLAT;
    double common = Median.of(off);
    double doubt = Math.max(LEAST_DOUBT, COMMON_DOUBT * Median.of(plain(doubts)));
    if (Math.abs(common) <= (flat ? FLAT_OFF : doubt)) {
      return new Heights(line, List.of());
    }
    String what =
        flat
            ? "all are at " + words(lowest)
            : "half of them lie more than " + words(Math.abs(common)) + side(common);
    return new Heights(
        without(line),
        List.of(
            Problem.of(
                ProblemCode.GPX_HEIGHTS_LEFT_OUT,
                line.name().isEmpty() ? line.kind().word() : line.name(),
                what,
                words(Median.of(plain(grounds))))));
  }

  private static String side(double off) {
    return off < 0 ? " under the ground" : " over the ground";
  }

  /** In both units, as the reader may use either: "300 m (984 ft)". */
  static String words(double meters) {
    return String.format(
        Locale.ENGLISH, "%.0f m (%,.0f ft)", meters, new Elevation(meters).in(Unit.FOOT));
  }

  private static double[] plain(List<Double> list) {
    return list.stream().mapToDouble(d -> d).toArray();
  }

  private static TrackLine without(TrackLine line) {
    return line.withPoints(
        line.points().stream().map(p -> new TrackPoint(p.at(), null, p.name())).toList());
  }
}

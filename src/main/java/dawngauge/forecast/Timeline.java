package dawngauge.forecast;

import dawngauge.ambient.Air;
import dawngauge.ambient.Ambient;
import dawngauge.physics.StandardAtmosphere;
import dawngauge.trip.Itinerary;
import dawngauge.trip.LogEvent;
import dawngauge.trip.ProfilePoint;
import dawngauge.trip.ReadingState;
import dawngauge.trip.Trip;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;

/**
 * The trip cut into pieces on each of which the air is a straight line in time. Nodes lie at every
 * full ten minutes (absolute time, so that an inserted stop moves none), at stops, at points of a
 * leg's profile, and where typed temperatures change course; times that only need a figure (log
 * events, places passed) are added without changing the lines.
 */
final class Timeline {

  /** Parked so long a tire counts as cold (NHTSA consumer text). */
  static final double COLD_SECONDS = ReadingState.COLD_AFTER.toSeconds();

  /** Spacing of the fixed grid. */
  private static final double GRID_SECONDS = 600;

  /** Epoch seconds of each node. */
  final double[] seconds;

  /** Way from the start of the route at each node, in meter. */
  final double[] meters;

  /** Air at each node in kelvin; NaN where unknown. */
  final double[] air;

  /** One standard deviation of it in kelvin. */
  final double[] sigma;

  /** How much further the cold side reaches, in kelvin. */
  final double[] coldSide;

  /** Height of the ground in meter; NaN where unknown. */
  final double[] elevation;

  /** Air pressure in pascal. */
  final double[] pressure;

  /** Whether the air was taken across a stop without temperature. */
  final boolean[] bridged;

  /**
   * Speed on the piece that begins at a node, in meter per second; 0 while standing, NaN on a leg
   * of unknown length.
   */
  final double[] speed;

  /** Index of the drive on which the piece beginning at a node lies; −1 while standing. */
  final int[] drive;

  /** Node at which each visit begins. */
  final int[] arrive;

  /** Node at which each visit ends. */
  final int[] leave;

  /** Node at which the tires are to be gauged and set at each visit; see {@link CheckTimes}. */
  final int[] check;

  /** First node of each visit at which parked tires count as cold; the node count where none is. */
  final int[] cold;

  private final NodeTimes.Nodes nodes;
  private final Itinerary itinerary;
  private final Ambient ambient;
  private final Ground ground;

  Timeline(Trip trip, Itinerary itinerary, Ambient ambient) {
    this.itinerary = itinerary;
    this.ambient = ambient;
    this.ground = new Ground(itinerary);
    List<Itinerary.Visit> visits = itinerary.visits();
    double[] checks = CheckTimes.of(trip, itinerary);
    nodes = times(trip, checks).inOrder();
    seconds = nodes.seconds;
    int count = seconds.length;
    meters = new double[count];
    air = new double[count];
    sigma = new double[count];
    coldSide = new double[count];
    elevation = new double[count];
    pressure = new double[count];
    bridged = new boolean[count];
    speed = new double[count];
    drive = new int[count];
    arrive = new int[visits.size()];
    leave = new int[visits.size()];
    check = new int[visits.size()];
    cold = new int[visits.size()];
    Arrays.fill(drive, -1);
    for (Itinerary.Visit visit : visits) {
      arrive[visit.index()] = nodeAt(time(visit.arrive()));
      leave[visit.index()] = nodeAt(time(visit.leave()));
      check[visit.index()] = nodeAt(checks[visit.index()]);
      int from = Arrays.binarySearch(seconds, seconds[arrive[visit.index()]] + COLD_SECONDS);
      int first = from >= 0 ? from : -from - 1;
      cold[visit.index()] = first <= leave[visit.index()] ? first : count;
    }
    for (Itinerary.Visit visit : visits) {
      stand(visit);
      if (visit.index() < itinerary.drives().size()) {
        drive(visit, itinerary.drives().get(visit.index()));
      }
    }
    straighten(air);
  }

  /** Lays a figure of the nodes that only need one on the straight lines between the others. */
  void straighten(double[] figure) {
    nodes.straighten(figure);
  }

  private NodeTimes times(Trip trip, double[] checks) {
    List<Itinerary.Visit> visits = itinerary.visits();
    double start = time(visits.get(0).arrive());
    double end = time(visits.get(visits.size() - 1).leave());
    NodeTimes times = new NodeTimes(start, end, GRID_SECONDS);
    for (double breakpoint : ambient.breakpoints()) {
      if (breakpoint > start && breakpoint < end) {
        times.knot(breakpoint);
      }
    }
    for (Itinerary.Visit visit : visits) {
      if (!visit.passes() || ambient.seriesAt(visit.index()) != null || ground.bendsAt(visit)) {
        times.knot(time(visit.arrive()));
        times.knot(time(visit.leave()));
      } else {
        times.extra(time(visit.arrive()));
      }
      if (visit.index() < itinerary.drives().size()) {
        profileTimes(visit, times);
      }
    }
    for (LogEvent event : trip.log()) {
      double t = time(event.time().instant());
      if (t >= start && t <= end) {
        times.extra(t);
      }
    }
    for (double t : checks) {
      times.extra(t);
    }
    return times;
  }

  private void profileTimes(Itinerary.Visit visit, NodeTimes times) {
    Itinerary.Drive after = itinerary.drives().get(visit.index());
    if (after.metersPerSecond() <= 0) {
      return;
    }
    for (ProfilePoint point : after.leg().profile()) {
      double along = point.distance().value().meters();
      if (along > 0 && along < after.meters()) {
        times.knot(time(visit.leave()) + along / after.metersPerSecond());
      }
    }
  }

  /** Nodes. */
  int count() {
    return seconds.length;
  }

  /** The node at a time that is one. */
  int nodeAt(double epochSeconds) {
    int node = Arrays.binarySearch(seconds, epochSeconds);
    if (node < 0) {
      throw new IllegalArgumentException("no node at " + epochSeconds);
    }
    return node;
  }

  /** The last node up to which the air is known all the way; the first one where it is not. */
  int airKnownTo(int from, int to) {
    int node = from;
    while (node <= to && !Double.isNaN(air[node])) {
      node++;
    }
    return Math.max(from, node - 1);
  }

  /** Most pieces of a stay or a leg. */
  int longest() {
    int most = 0;
    for (int i = 0; i < arrive.length; i++) {
      most = Math.max(most, leave[i] - arrive[i]);
      most = i == 0 ? most : Math.max(most, arrive[i] - leave[i - 1]);
    }
    return most;
  }

  /** Seconds of an instant. */
  static double time(Instant instant) {
    return instant.getEpochSecond() + instant.getNano() / 1e9;
  }

  /** Way from the start of the route at a time, in meter. */
  double metersAt(double epochSeconds) {
    int low = 0;
    int high = leave.length - 1;
    while (low < high) {
      int middle = (low + high) >>> 1;
      if (epochSeconds <= seconds[leave[middle]]) {
        high = middle;
      } else {
        low = middle + 1;
      }
    }
    Itinerary.Visit next = itinerary.visits().get(low);
    if (low == 0 || epochSeconds >= seconds[arrive[low]]) {
      return next.meters();
    }
    double gone = epochSeconds - seconds[leave[low - 1]];
    return itinerary.visits().get(low - 1).meters()
        + itinerary.drives().get(low - 1).metersPerSecond() * gone;
  }

  /** Figures of the nodes at which the rig stands at a visit. */
  private void stand(Itinerary.Visit visit) {
    int index = visit.index();
    double height = ground.of(visit);
    double around = pressureAt(height);
    boolean own = ambient.seriesAt(index) != null;
    for (int node = arrive[index]; node <= leave[index]; node++) {
      double t = seconds[node];
      place(node, visit.meters(), height, around);
      air(node, own ? ambient.atStop(index, t) : ambient.onTheWay(visit.meters(), height, t));
    }
  }

  /** Figures of the nodes on the leg that leaves a visit. */
  private void drive(Itinerary.Visit visit, Itinerary.Drive leg) {
    int from = visit.index();
    int first = leave[from];
    int last = arrive[from + 1];
    boolean known = lengthKnown(from);
    double begins = seconds[first];
    double start = known ? Double.NaN : ground.of(visit);
    double end = known ? Double.NaN : ground.of(itinerary.visits().get(from + 1));
    for (int node = first; node < last; node++) {
      drive[node] = from;
      speed[node] = known ? leg.metersPerSecond() : Double.NaN;
    }
    for (int node = first + 1; node < last; node++) {
      double t = seconds[node];
      double way = visit.meters() + speed[node] * (t - begins);
      double part = (t - begins) / (seconds[last] - begins);
      double height = known ? ground.at(way) : start + part * (end - start);
      place(node, way, height, pressureAt(height));
      air(
          node,
          known
              ? ambient.onTheWay(way, height, t)
              : ambient.atStop(from, t).towards(ambient.atStop(from + 1, t), part));
    }
  }

  private void place(int node, double way, double height, double around) {
    meters[node] = way;
    elevation[node] = height;
    pressure[node] = around;
  }

  private void air(int node, Air here) {
    air[node] = here.kelvins();
    sigma[node] = here.sigma();
    coldSide[node] = here.coldSide();
    bridged[node] = here.bridged();
  }

  private static double pressureAt(double height) {
    return Double.isNaN(height) ? Double.NaN : StandardAtmosphere.pressureAt(height);
  }

  /** Whether the length of a leg is known, and with it the speed. */
  boolean lengthKnown(int leg) {
    return itinerary.drives().get(leg).lengthKnown();
  }
}

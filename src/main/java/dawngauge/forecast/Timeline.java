package dawngauge.forecast;

import dawngauge.ambient.Air;
import dawngauge.ambient.Ambient;
import dawngauge.geo.Coordinate;
import dawngauge.geo.Daylight;
import dawngauge.physics.StandardAtmosphere;
import dawngauge.quantity.Elevation;
import dawngauge.quantity.Entered;
import dawngauge.trip.Itinerary;
import dawngauge.trip.LogEvent;
import dawngauge.trip.ProfilePoint;
import dawngauge.trip.Trip;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * The trip cut into pieces on each of which the air is a straight line in time. Nodes lie at every
 * full ten minutes (absolute time, so that an inserted stop moves none), at stops, at points of a
 * leg's profile, and where typed temperatures change course; times that only need a figure (log
 * events, places passed) are added without changing the lines.
 */
final class Timeline {

  /** Parked so long a tire counts as cold (NHTSA consumer text). */
  static final double COLD_SECONDS = 3 * 3600.0;

  /** After sunrise the sun soon reaches the tires; ours, no source. */
  private static final double AFTER_SUNRISE_SECONDS = 30 * 60.0;

  /** Spacing of the fixed grid. */
  private static final double GRID_SECONDS = 600;

  /** A place passed is no node of its own if it lies so close to the line of its neighbours. */
  private static final double ON_THE_LINE_METERS = 0.5;

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

  /**
   * Node at which the tires are to be gauged and set at each visit: when leaving; before the first
   * start of a day not later than half an hour after sunrise, before the sun warms them, unless
   * they were read or set later that morning.
   */
  final int[] check;

  /** Index of the visit at which the rig stands at a node; −1 on the way. */
  private final int[] standing;

  private final Itinerary itinerary;
  private final Ambient ambient;
  private final TreeMap<Double, Double> elevationByMeters = new TreeMap<>();

  Timeline(Trip trip, Itinerary itinerary, Ambient ambient) {
    this.itinerary = itinerary;
    this.ambient = ambient;
    heights();
    TreeSet<Double> knots = new TreeSet<>();
    TreeSet<Double> extras = new TreeSet<>();
    List<Itinerary.Visit> visits = itinerary.visits();
    double start = time(visits.get(0).arrive());
    double end = time(visits.get(visits.size() - 1).leave());
    for (double t = Math.ceil(start / GRID_SECONDS) * GRID_SECONDS; t < end; t += GRID_SECONDS) {
      knots.add(t);
    }
    for (double kink : ambient.kinks()) {
      if (kink > start && kink < end) {
        knots.add(kink);
      }
    }
    for (Itinerary.Visit visit : visits) {
      boolean own = !visit.passes() || ambient.seriesAt(visit.index()) != null || bends(visit);
      (own ? knots : extras).add(time(visit.arrive()));
      knots.addAll(own ? List.of(time(visit.leave())) : List.of());
      if (visit.index() < itinerary.drives().size()) {
        profileTimes(visit, knots);
      }
    }
    for (LogEvent event : trip.log()) {
      double t = time(event.time().instant());
      if (t >= start && t <= end) {
        extras.add(t);
      }
    }
    double[] checks = new double[visits.size()];
    for (Itinerary.Visit visit : visits) {
      checks[visit.index()] = Math.max(checkTime(visit), lastLogged(trip, visit));
      extras.add(checks[visit.index()]);
    }
    extras.removeAll(knots);
    TreeSet<Double> all = new TreeSet<>(knots);
    all.addAll(extras);
    int count = all.size();
    seconds = all.stream().mapToDouble(Double::doubleValue).toArray();
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
    Arrays.fill(drive, -1);
    standing = new int[count];
    Arrays.fill(standing, -1);
    for (Itinerary.Visit visit : visits) {
      arrive[visit.index()] = nodeAt(time(visit.arrive()));
      leave[visit.index()] = nodeAt(time(visit.leave()));
      check[visit.index()] = nodeAt(checks[visit.index()]);
      Arrays.fill(standing, arrive[visit.index()], leave[visit.index()] + 1, visit.index());
    }
    for (int i = 0; i < itinerary.drives().size(); i++) {
      for (int node = leave[i]; node < arrive[i + 1]; node++) {
        drive[node] = i;
        speed[node] = lengthKnown(i) ? itinerary.drives().get(i).metersPerSecond() : Double.NaN;
      }
    }
    for (int node = 0; node < count; node++) {
      fill(node);
    }
    straighten(extras);
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

  /** Seconds of an instant. */
  static double time(Instant instant) {
    return instant.getEpochSecond() + instant.getNano() / 1e9;
  }

  /** Way from the start of the route at a time, in meter. */
  double metersAt(double epochSeconds) {
    List<Itinerary.Visit> visits = itinerary.visits();
    for (int i = 0; i < visits.size(); i++) {
      Itinerary.Visit visit = visits.get(i);
      if (epochSeconds <= time(visit.leave()) || i == visits.size() - 1) {
        return visit.meters();
      }
      Itinerary.Drive after = itinerary.drives().get(i);
      double gone = epochSeconds - time(visit.leave());
      if (gone < after.seconds()) {
        return visit.meters() + after.metersPerSecond() * gone;
      }
    }
    throw new IllegalStateException("a route has stops");
  }

  private void heights() {
    for (Itinerary.Visit visit : itinerary.visits()) {
      Entered<Elevation> typed = visit.stop().elevation();
      if (typed != null) {
        elevationByMeters.put(visit.meters(), typed.value().meters());
      }
      if (visit.index() < itinerary.drives().size()) {
        for (ProfilePoint point : itinerary.drives().get(visit.index()).leg().profile()) {
          elevationByMeters.put(
              visit.meters() + point.distance().value().meters(),
              point.elevation().value().meters());
        }
      }
    }
  }

  private double heightAt(double meters) {
    var before = elevationByMeters.floorEntry(meters);
    var after = elevationByMeters.ceilingEntry(meters);
    if (before == null || after == null) {
      return before != null ? before.getValue() : after != null ? after.getValue() : Double.NaN;
    }
    double way = after.getKey() - before.getKey();
    return way <= 0
        ? before.getValue()
        : before.getValue()
            + (meters - before.getKey()) / way * (after.getValue() - before.getValue());
  }

  private double checkTime(Itinerary.Visit visit) {
    double leaving = time(visit.leave());
    Coordinate place = visit.stop().coordinate();
    if (place == null || !visit.firstStartOfDay()) {
      return leaving;
    }
    LocalDate date = visit.leave().atZone(visit.zone()).toLocalDate();
    double cold = visit.index() == 0 ? time(visit.arrive()) : time(visit.arrive()) + COLD_SECONDS;
    return Daylight.on(date, visit.zone(), place)
        .map(sun -> time(sun.sunrise()) + AFTER_SUNRISE_SECONDS)
        .filter(latest -> latest >= cold && latest < leaving)
        .orElse(leaving);
  }

  /** When a tire was last read or set during a stay: what is still to be set is set after that. */
  private static double lastLogged(Trip trip, Itinerary.Visit visit) {
    return trip.log().stream()
        .filter(event -> event instanceof LogEvent.Reading || event instanceof LogEvent.Adjustment)
        .mapToDouble(event -> time(event.time().instant()))
        .filter(t -> t >= time(visit.arrive()) && t <= time(visit.leave()))
        .max()
        .orElse(Double.NEGATIVE_INFINITY);
  }

  /** Whether the ground bends at a place passed. */
  private boolean bends(Itinerary.Visit visit) {
    Entered<Elevation> typed = visit.stop().elevation();
    var before = elevationByMeters.lowerEntry(visit.meters());
    var after = elevationByMeters.higherEntry(visit.meters());
    if (typed == null || before == null || after == null) {
      return false;
    }
    double part = (visit.meters() - before.getKey()) / (after.getKey() - before.getKey());
    double line = before.getValue() + part * (after.getValue() - before.getValue());
    return Math.abs(typed.value().meters() - line) > ON_THE_LINE_METERS;
  }

  private void profileTimes(Itinerary.Visit visit, Set<Double> knots) {
    Itinerary.Drive after = itinerary.drives().get(visit.index());
    if (after.metersPerSecond() <= 0) {
      return;
    }
    for (ProfilePoint point : after.leg().profile()) {
      double along = point.distance().value().meters();
      if (along > 0 && along < after.meters()) {
        knots.add(time(visit.leave()) + along / after.metersPerSecond());
      }
    }
  }

  private void fill(int node) {
    double t = seconds[node];
    double way = wayAt(node);
    meters[node] = way;
    int visit = standing[node];
    Air here;
    if (visit >= 0) {
      elevation[node] = heightOf(visit);
      here =
          ambient.seriesAt(visit) != null
              ? ambient.atStop(visit, t)
              : ambient.onTheWay(way, elevation[node], t);
    } else if (!lengthKnown(drive[node])) {
      int from = drive[node];
      double part = (t - seconds[leave[from]]) / (seconds[arrive[from + 1]] - seconds[leave[from]]);
      elevation[node] = heightOf(from) + part * (heightOf(from + 1) - heightOf(from));
      here = ambient.atStop(from, t).towards(ambient.atStop(from + 1, t), part);
    } else {
      elevation[node] = heightAt(way);
      here = ambient.onTheWay(way, elevation[node], t);
    }
    air[node] = here.kelvins();
    sigma[node] = here.sigma();
    coldSide[node] = here.coldSide();
    bridged[node] = here.bridged();
    pressure[node] =
        Double.isNaN(elevation[node]) ? Double.NaN : StandardAtmosphere.pressureAt(elevation[node]);
  }

  /** Height of a stop: its own, else between its neighbours. */
  private double heightOf(int visit) {
    Entered<Elevation> typed = itinerary.visits().get(visit).stop().elevation();
    return typed == null
        ? heightAt(itinerary.visits().get(visit).meters())
        : typed.value().meters();
  }

  private boolean lengthKnown(int leg) {
    return itinerary.drives().get(leg).meters() > 0;
  }

  /** Whether the rig rolls at an unknown speed between two times. */
  boolean speedUnknown(double from, double to) {
    for (int node = 0; node + 1 < count(); node++) {
      if (Double.isNaN(speed[node]) && seconds[node] < to && seconds[node + 1] > from) {
        return true;
      }
    }
    return false;
  }

  /** Way from the start of the route at a node, in meter. */
  private double wayAt(int node) {
    int visit = standing[node] >= 0 ? standing[node] : drive[node];
    double start = itinerary.visits().get(visit).meters();
    return standing[node] >= 0
        ? start
        : start + speed[node] * (seconds[node] - seconds[leave[visit]]);
  }

  /** Lays the extra times on the straight lines between their neighbouring knots. */
  private void straighten(Set<Double> extras) {
    for (double t : extras) {
      int node = nodeAt(t);
      int before = node - 1;
      int after = node + 1;
      while (before >= 0 && extras.contains(seconds[before])) {
        before--;
      }
      while (after < seconds.length && extras.contains(seconds[after])) {
        after++;
      }
      if (before < 0 || after >= seconds.length) {
        continue;
      }
      double part = (t - seconds[before]) / (seconds[after] - seconds[before]);
      air[node] = air[before] + part * (air[after] - air[before]);
    }
  }
}

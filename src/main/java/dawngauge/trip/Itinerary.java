package dawngauge.trip;

import dawngauge.problem.Outcome;
import dawngauge.problem.Problem;
import dawngauge.problem.ProblemCode;
import dawngauge.quantity.Speed;
import dawngauge.quantity.Unit;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * When the rig is where. Durations are counted on instants; actual times from the log win over
 * typed ones, typed over computed. The list of visits ends at the first stop whose time is not
 * known.
 *
 * @param visits stops with known times, in order
 * @param drives the drives between them, one fewer
 */
public record Itinerary(List<Visit> visits, List<Drive> drives) {

  /** Average speed plus this is the assumed top speed of a leg; ours, no source. */
  private static final double TOP_ABOVE_AVERAGE = Speed.of(10, Unit.MILE_PER_HOUR).si();

  /** The least assumed top speed of a leg; ours, no source. */
  private static final double LEAST_ASSUMED_TOP = Speed.of(65, Unit.MILE_PER_HOUR).si();

  /**
   * A stop in time.
   *
   * @param index its place in the route, 0 first
   * @param stop the stop
   * @param zone the zone whose clock is shown there
   * @param arrive when the rig comes to stand; at the first stop, when it was there at the latest
   * @param leave when it rolls again; the same as arrive where it passes, and at the last stop
   *     without a typed stay
   * @param meters way from the start of the route
   * @param passes whether the rig passes without standing
   */
  public record Visit(
      int index,
      Stop stop,
      ZoneId zone,
      Instant arrive,
      Instant leave,
      double meters,
      boolean passes) {

    /** How long the rig stands. */
    public Duration stay() {
      return Duration.between(arrive, leave);
    }
  }

  /**
   * A leg in time.
   *
   * @param leg the leg
   * @param meters its length, 0 where it is not known
   * @param seconds driving time
   * @param metersPerSecond average speed; 0 where the length is not known
   * @param topMetersPerSecond top speed
   * @param topAssumed whether the top speed was assumed
   */
  public record Drive(
      Leg leg,
      double meters,
      double seconds,
      double metersPerSecond,
      double topMetersPerSecond,
      boolean topAssumed) {}

  /** Copies the lists. */
  public Itinerary {
    visits = List.copyOf(visits);
    drives = List.copyOf(drives);
  }

  /** The itinerary of a trip; stops without a known time are reported and left out. */
  public static Outcome<Itinerary> of(Trip trip) {
    List<Problem> problems = new ArrayList<>();
    List<Stop> stops = trip.route().stops();
    if (stops.isEmpty()) {
      return Outcome.failed(Problem.of(ProblemCode.NO_STOPS, "route"));
    }
    Stop first = stops.get(0);
    Instant leave = timeLeft(trip, first, null);
    if (leave == null) {
      return Outcome.failed(
          Problem.of(
              ProblemCode.NO_DEPARTURE,
              "",
              first.id(),
              "\"2027-04-13T05:45-06:00[America/Denver]\""));
    }
    Instant arrive = timeArrived(trip, first, null);
    Instant there = arrive == null ? earliestReading(trip, leave) : arrive;
    ZoneId zone = zoneOf(first, ZoneOffset.UTC);
    List<Visit> visits = new ArrayList<>();
    List<Drive> drives = new ArrayList<>();
    visits.add(new Visit(0, first, zone, there.isAfter(leave) ? leave : there, leave, 0, false));
    for (int i = 1; i < stops.size(); i++) {
      Visit before = visits.get(i - 1);
      Stop stop = stops.get(i);
      Leg leg = trip.route().legs().get(i - 1);
      Duration computed = drivingTime(leg);
      Instant reached =
          timeArrived(trip, stop, computed == null ? null : before.leave().plus(computed));
      if (reached == null) {
        problems.add(Problem.of(ProblemCode.NO_DRIVING_TIME, before.stop().place(), stop.place()));
        break;
      }
      if (!reached.isAfter(before.leave())) {
        problems.add(
            Problem.of(
                ProblemCode.ARRIVES_BEFORE_LEAVING,
                stop.place(),
                clock(reached, before.zone()),
                before.stop().place(),
                clock(before.leave(), before.zone())));
        break;
      }
      zone = zoneOf(stop, before.zone());
      Duration stay = stop.stay() == null ? Duration.ZERO : stop.stay();
      Instant goes = timeLeft(trip, stop, reached.plus(stay));
      if (goes == null || goes.isBefore(reached)) {
        problems.add(
            Problem.of(
                ProblemCode.LEAVES_BEFORE_ARRIVING,
                stop.place(),
                goes == null ? "?" : clock(goes, zone),
                clock(reached, zone)));
        break;
      }
      Duration driving = Duration.between(before.leave(), reached);
      Drive drive = drive(leg, driving, driving.equals(computed));
      drives.add(drive);
      boolean passes = goes.equals(reached) && i < stops.size() - 1;
      double meters = before.meters() + drive.meters();
      visits.add(new Visit(i, stop, zone, reached, goes, meters, passes));
    }
    return Outcome.of(new Itinerary(visits, drives), problems);
  }

  /** Whether the rig starts from a stop for the first time that day, by the stop's own clock. */
  public boolean firstStartOfDay(int index) {
    if (index == visits.size() - 1 || visits.get(index).passes()) {
      return false;
    }
    for (int i = index - 1; i >= 0; i--) {
      if (!visits.get(i).passes()) {
        return !startDay(visits.get(i)).equals(startDay(visits.get(index)));
      }
    }
    return true;
  }

  private static LocalDate startDay(Visit visit) {
    return visit.leave().atZone(visit.zone()).toLocalDate();
  }

  private static Drive drive(Leg leg, Duration driving, boolean asPlanned) {
    double seconds = driving.toNanos() / 1e9;
    double meters = leg.distance() == null ? 0 : leg.distance().value().meters();
    boolean typed = asPlanned && leg.averageSpeed() != null && leg.duration() == null;
    double average =
        typed && leg.averageSpeed() != null
            ? leg.averageSpeed().value().metersPerSecond()
            : meters / seconds;
    boolean assumed = leg.topSpeed() == null;
    double top =
        leg.topSpeed() == null
            ? Math.max(LEAST_ASSUMED_TOP, average + TOP_ABOVE_AVERAGE)
            : leg.topSpeed().value().metersPerSecond();
    return new Drive(leg, meters, seconds, average, top, assumed);
  }

  private static @Nullable Duration drivingTime(Leg leg) {
    if (leg.duration() != null) {
      return leg.duration();
    }
    if (leg.distance() == null || leg.averageSpeed() == null) {
      return null;
    }
    double speed = leg.averageSpeed().value().metersPerSecond();
    return speed > 0
        ? Duration.ofNanos(Math.round(leg.distance().value().meters() / speed * 1e9))
        : null;
  }

  private static @Nullable Instant timeArrived(Trip trip, Stop stop, @Nullable Instant computed) {
    Instant actual = null;
    for (LogEvent event : trip.log()) {
      if (event instanceof LogEvent.Arrived arrived && arrived.stop().equals(stop.id())) {
        actual = arrived.time().instant();
      }
    }
    if (actual != null) {
      return actual;
    }
    return stop.arrive() == null ? computed : stop.arrive().instant();
  }

  private static @Nullable Instant timeLeft(Trip trip, Stop stop, @Nullable Instant computed) {
    Instant actual = null;
    for (LogEvent event : trip.log()) {
      if (event instanceof LogEvent.Left left && left.stop().equals(stop.id())) {
        actual = left.time().instant();
      }
    }
    if (actual != null) {
      return actual;
    }
    return stop.leave() == null ? computed : stop.leave().instant();
  }

  private static Instant earliestReading(Trip trip, Instant leave) {
    Instant earliest = leave;
    for (LogEvent event : trip.log()) {
      if (event instanceof LogEvent.Reading && event.time().instant().isBefore(earliest)) {
        earliest = event.time().instant();
      }
    }
    return earliest;
  }

  private static ZoneId zoneOf(Stop stop, ZoneId before) {
    if (stop.zone() != null) {
      return stop.zone();
    }
    TypedTime typed = stop.leave() != null ? stop.leave() : stop.arrive();
    return typed == null ? before : typed.time().getZone();
  }

  private static String clock(Instant instant, ZoneId zone) {
    return instant.atZone(zone).toLocalDateTime().withNano(0).toString().replace('T', ' ');
  }
}

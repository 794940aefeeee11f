package dawngauge.trip;

import dawngauge.problem.Outcome;
import dawngauge.problem.Problem;
import dawngauge.problem.ProblemCode;
import dawngauge.quantity.Distance;
import dawngauge.quantity.Entered;
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

  private static final String DEPARTURE_EXAMPLE = "\"2027-03-09T05:45-07:00[America/Denver]\"";

  /** Times further from the start than this are taken for a slip. */
  private static final Duration LONGEST = Duration.ofDays(60);

  /** The least assumed top speed of a leg; ours, no source. */
  public static final Speed LEAST_ASSUMED_TOP = Speed.of(65, Unit.MILE_PER_HOUR);

  /**
   * A stop in time.
   *
   * @param index its place in the route, 0 first
   * @param stop the stop
   * @param zone the zone whose clock is shown there: the stop's own, else that of its typed times,
   *     else that of the stop before (at the first stop, of the log)
   * @param arrive when the rig comes to stand; at the first stop, when it was there at the latest
   * @param leave when it rolls again; the same as arrive where it passes, and at the last stop
   *     without a typed stay
   * @param meters way from the start of the route
   * @param passes whether the rig passes without standing
   * @param firstStartOfDay whether the rig starts from here for the first time that day, by the
   *     stop's own clock
   */
  public record Visit(
      int index,
      Stop stop,
      ZoneId zone,
      Instant arrive,
      Instant leave,
      double meters,
      boolean passes,
      boolean firstStartOfDay) {

    /** How long the rig stands. */
    public Duration stay() {
      return Duration.between(arrive, leave);
    }

    /** Whether it stands for so many seconds, to the millisecond. */
    public boolean staysFor(double seconds) {
      return leave.toEpochMilli() - arrive.toEpochMilli() >= seconds * 1000;
    }
  }

  /**
   * A leg in time.
   *
   * @param leg the leg
   * @param meters its length, 0 where it is not known; see {@link #lengthKnown}
   * @param seconds driving time; may be 0 on a leg of no length, between stops at one place
   * @param metersPerSecond average speed; 0 where the length is 0 or not known
   * @param topMetersPerSecond top speed, never below the average
   * @param topAssumed whether the top speed was assumed
   */
  public record Drive(
      Leg leg,
      double meters,
      double seconds,
      double metersPerSecond,
      double topMetersPerSecond,
      boolean topAssumed) {

    /** Whether the length is given, be it 0. */
    public boolean lengthKnown() {
      return leg.distance() != null;
    }
  }

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
    ActualTimes actual = new ActualTimes(trip, drivingTimes(trip));
    Instant typedLeave = first.leave() == null ? null : first.leave().instant();
    Instant leftThere = actual.left(first);
    Instant leave =
        leftThere != null
            ? leftThere
            : typedLeave == null ? null : actual.leavingBy(0, first, typedLeave);
    if (leave == null) {
      return Outcome.failed(
          Problem.of(ProblemCode.NO_DEPARTURE, "", first.place(), DEPARTURE_EXAMPLE));
    }
    Instant noted = actual.arrived(first);
    Instant arrive =
        noted != null ? noted : first.arrive() == null ? null : first.arrive().instant();
    Instant there = arrive == null ? earliestReading(trip, leave) : arrive;
    boolean late = actual.tells(first);
    ZoneId zone = zoneOf(first, zoneOfLog(trip));
    Instant lastStart = leave;
    ZoneId lastStartZone = zone;
    List<Visit> visits = new ArrayList<>();
    List<Drive> drives = new ArrayList<>();
    visits.add(
        new Visit(
            0,
            first,
            zone,
            there.isAfter(leave) ? leave : there,
            leave,
            0,
            false,
            stops.size() > 1));
    for (int i = 1; i < stops.size(); i++) {
      Visit before = visits.get(i - 1);
      Stop stop = stops.get(i);
      Leg leg = trip.route().legs().get(i - 1);
      Duration computed = drivingTime(leg);
      Instant planned = computed == null ? null : before.leave().plus(computed);
      Instant reached = actual.arrived(stop);
      if (reached == null) {
        Instant typed = stop.arrive() == null ? null : stop.arrive().instant();
        if (late && typed != null && planned != null && typed.isBefore(planned)) {
          problems.add(clash(stop, "arrival", typed, planned, zoneOf(stop, before.zone())));
          typed = null;
        }
        Instant expected = typed == null ? planned : typed;
        reached = expected == null ? null : actual.arrivalBy(i, expected);
      }
      if (reached == null) {
        problems.add(Problem.of(ProblemCode.NO_DRIVING_TIME, before.stop().place(), stop.place()));
        break;
      }
      boolean noWay = isNoWay(leg) && reached.equals(before.leave());
      if (!noWay && !reached.isAfter(before.leave())) {
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
      late = late || actual.tells(stop);
      Instant goes = actual.left(stop);
      if (goes == null) {
        Instant typed = stop.leave() == null ? null : stop.leave().instant();
        if (late && typed != null && typed.isBefore(reached)) {
          problems.add(clash(stop, "departure", typed, reached.plus(stay), zone));
          typed = null;
        }
        Instant expected = actual.leavingBy(i, stop, typed == null ? reached.plus(stay) : typed);
        goes = typed == null && expected.isBefore(reached) ? reached : expected;
      }
      if (goes.isBefore(reached)) {
        problems.add(
            Problem.of(
                ProblemCode.LEAVES_BEFORE_ARRIVING,
                stop.place(),
                clock(goes, zone),
                clock(reached, zone)));
        break;
      }
      if (Duration.between(leave, goes).compareTo(LONGEST) > 0) {
        problems.add(
            Problem.of(
                ProblemCode.TRIP_TOO_LONG,
                stop.place(),
                clock(goes, zone),
                String.valueOf(LONGEST.toDays())));
        break;
      }
      Duration driving = Duration.between(before.leave(), reached);
      Drive drive = drive(leg, driving, driving.equals(computed));
      drives.add(drive);
      boolean passes = goes.equals(reached) && i < stops.size() - 1;
      double meters = before.meters() + drive.meters();
      boolean starts =
          !passes && i < stops.size() - 1 && !day(lastStart, lastStartZone).equals(day(goes, zone));
      if (!passes) {
        lastStart = goes;
        lastStartZone = zone;
      }
      visits.add(new Visit(i, stop, zone, reached, goes, meters, passes, starts));
    }
    return Outcome.of(new Itinerary(visits, drives), problems);
  }

  private static LocalDate day(Instant instant, ZoneId zone) {
    return instant.atZone(zone).toLocalDate();
  }

  private static Drive drive(Leg leg, Duration driving, boolean asPlanned) {
    double seconds = driving.toNanos() / 1e9;
    Entered<Distance> distance = leg.distance();
    double meters = distance == null ? 0 : distance.value().meters();
    Entered<Speed> typed = leg.duration() == null ? leg.averageSpeed() : null;
    double average =
        !(meters > 0)
            ? 0
            : typed != null && asPlanned ? typed.value().metersPerSecond() : meters / seconds;
    Entered<Speed> typedTop = leg.topSpeed();
    double top =
        typedTop == null
            ? Math.max(LEAST_ASSUMED_TOP.si(), average + TOP_ABOVE_AVERAGE)
            : Math.max(average, typedTop.value().metersPerSecond());
    return new Drive(leg, meters, seconds, average, top, typedTop == null);
  }

  /** Whether a leg joins two stops at one place: its length is given, and is 0. */
  private static boolean isNoWay(Leg leg) {
    Entered<Distance> distance = leg.distance();
    return distance != null && !(distance.value().meters() > 0);
  }

  private static @Nullable Duration drivingTime(Leg leg) {
    if (leg.duration() != null) {
      return leg.duration();
    }
    if (isNoWay(leg)) {
      return Duration.ZERO;
    }
    Entered<Distance> distance = leg.distance();
    Entered<Speed> average = leg.averageSpeed();
    if (distance == null || average == null || !(average.value().metersPerSecond() > 0)) {
      return null;
    }
    double seconds = distance.value().meters() / average.value().metersPerSecond();
    return Duration.ofNanos(Math.round(seconds * 1e9));
  }

  private static List<@Nullable Duration> drivingTimes(Trip trip) {
    List<@Nullable Duration> times = new ArrayList<>();
    trip.route().legs().forEach(leg -> times.add(drivingTime(leg)));
    return times;
  }

  private static Problem clash(
      Stop stop, String what, Instant typed, Instant expected, ZoneId zone) {
    return Problem.of(
        ProblemCode.TYPED_TIME_CLASHES,
        stop.place(),
        what,
        clock(typed, zone),
        clock(expected, zone));
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

  private static ZoneId zoneOfLog(Trip trip) {
    return trip.log().isEmpty() ? ZoneOffset.UTC : trip.log().get(0).time().time().getZone();
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

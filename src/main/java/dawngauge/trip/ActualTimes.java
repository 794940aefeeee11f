package dawngauge.trip;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * What the log tells of when the rig was where: arrivals, departures, and how long it surely stood.
 * Where a later stop was reached already, those before it must have been left in time for that.
 */
final class ActualTimes {

  /** Taken for a leg whose time is not known; ours. */
  private static final Duration UNKNOWN_DRIVE = Duration.ofHours(1);

  private final Map<String, Instant> arrived = new TreeMap<>();
  private final Map<String, Instant> left = new TreeMap<>();
  private final Map<String, Instant> stoodUntil = new TreeMap<>();

  /** Cold readings: tires that are cold stood for hours, wherever the plan has the rig. */
  private final List<Instant> readCold = new ArrayList<>();

  private final List<@Nullable Instant> latestArrival = new ArrayList<>();
  private final List<@Nullable Instant> latestLeaving = new ArrayList<>();
  private final List<@Nullable Duration> driving;

  /**
   * Reads the log.
   *
   * @param driving time of each leg; null where it is not known
   */
  ActualTimes(Trip trip, List<@Nullable Duration> driving) {
    this.driving = new ArrayList<>(driving);
    String at = null;
    for (LogEvent event : trip.log()) {
      Instant time = event.time().instant();
      if (event instanceof LogEvent.Arrived arrival) {
        arrived.put(arrival.stop(), time);
        at = arrival.stop();
      } else if (event instanceof LogEvent.Left leaving) {
        left.put(leaving.stop(), time);
        at = null;
      }
      if (at != null) {
        stoodUntil.put(at, time);
      }
      if (event instanceof LogEvent.Reading reading
          && (reading.state() == ReadingState.COLD
              || reading.state() == ReadingState.COLD_IN_SUN)) {
        readCold.add(time);
      }
    }
    bounds(trip);
  }

  private void bounds(Trip trip) {
    List<Stop> stops = trip.route().stops();
    Instant next = null;
    for (int i = stops.size() - 1; i >= 0; i--) {
      String id = stops.get(i).id();
      Duration drive = i < driving.size() ? driving.get(i) : null;
      Instant leaving = left.get(id);
      if (leaving == null && next != null) {
        leaving = next.minus(drive == null ? Duration.ofMinutes(1) : drive);
      }
      Instant arrival = arrived.get(id);
      next = arrival == null ? leaving : arrival;
      latestLeaving.add(0, leaving);
      latestArrival.add(0, next);
    }
  }

  /** Whether the log tells when the rig arrived at a stop or left it. */
  boolean tells(Stop stop) {
    return arrived.containsKey(stop.id()) || left.containsKey(stop.id());
  }

  /** When the rig arrived; null where that was not noted. */
  @Nullable Instant arrived(Stop stop) {
    return arrived.get(stop.id());
  }

  /** When the rig left; null where that was not noted. */
  @Nullable Instant left(Stop stop) {
    return left.get(stop.id());
  }

  /** An arrival that lets all be true that was noted later. */
  Instant arrivalBy(int index, Instant expected) {
    Instant latest = latestArrival.get(index);
    return latest != null && latest.isBefore(expected) ? latest : expected;
  }

  /**
   * A departure that lets all be true that was noted here and later. What was noted when the rig
   * might have reached the next stop already is no sign that it still stands: a departure that was
   * not noted is likelier.
   */
  Instant leavingBy(int index, Stop stop, Instant expected) {
    Instant latest = latestLeaving.get(index);
    if (latest != null) {
      return latest.isBefore(expected) ? latest : expected;
    }
    Instant late = leftLate(index, expected);
    Instant stood = stoodUntil.get(stop.id());
    if (late != null && (stood == null || late.isAfter(stood))) {
      return late;
    }
    if (stood == null || !stood.isAfter(expected)) {
      return expected;
    }
    if (index >= driving.size()) {
      return stood; // the last stop
    }
    Duration drive = driving.get(index);
    Instant there = expected.plus(drive == null ? UNKNOWN_DRIVE : drive);
    return stood.isBefore(there) ? stood : expected;
  }

  /**
   * When a rig that should have left surely still stood: its tires were read cold within three
   * hours after that, though none is cold so soon after a drive (NHTSA consumer text). Null where
   * nothing says so, or where it is known to have been on the way.
   */
  private @Nullable Instant leftLate(int index, Instant expected) {
    if (index >= driving.size()) {
      return null;
    }
    Instant latest = null;
    for (Instant time : readCold) {
      boolean soon =
          time.isAfter(expected) && !time.isAfter(expected.plus(ReadingState.COLD_AFTER));
      if (soon && !underWay(expected, time)) {
        latest = latest == null || time.isAfter(latest) ? time : latest;
      }
    }
    return latest;
  }

  private boolean underWay(Instant from, Instant to) {
    return Stream.concat(arrived.values().stream(), left.values().stream())
        .anyMatch(time -> !time.isBefore(from) && !time.isAfter(to));
  }
}

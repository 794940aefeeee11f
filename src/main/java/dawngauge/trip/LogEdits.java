package dawngauge.trip;

import dawngauge.quantity.Entered;
import dawngauge.quantity.GaugePressure;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** Changes to the log, each giving a new trip. Events stay in time order. */
public final class LogEdits {

  private static final DateTimeFormatter TEXT =
      DateTimeFormatter.ofPattern("uuuu-MM-dd'T'HH:mmxxx'['VV']'", Locale.ROOT);

  private LogEdits() {}

  /** A time on the clock of a zone, to the minute. */
  public static TypedTime at(Instant instant, ZoneId zone) {
    ZonedDateTime time = instant.truncatedTo(ChronoUnit.MINUTES).atZone(zone);
    return new TypedTime(time, TEXT.format(time));
  }

  /** With one more event, behind those of the same time. */
  public static Trip with(Trip trip, LogEvent event) {
    return withAll(trip, List.of(event));
  }

  /** With more events, each behind those of the same time. */
  public static Trip withAll(Trip trip, List<LogEvent> events) {
    List<LogEvent> log = new ArrayList<>(trip.log());
    for (LogEvent event : events) {
      int place = log.size();
      while (place > 0 && log.get(place - 1).time().instant().isAfter(event.time().instant())) {
        place--;
      }
      log.add(place, event);
    }
    return trip.withLog(log);
  }

  /** Without one event, by its place in the log. */
  public static Trip without(Trip trip, int index) {
    List<LogEvent> log = new ArrayList<>(trip.log());
    log.remove(index);
    return trip.withLog(log);
  }

  /**
   * The rig arrives at a stop: an arrival there that stands in the log already gives way, and so
   * does a departure from it, which would be before the arrival.
   */
  public static Trip arrived(Trip trip, String stop, TypedTime time) {
    List<LogEvent> log =
        trip.log().stream()
            .filter(
                event ->
                    !(event instanceof LogEvent.Arrived arrived && arrived.stop().equals(stop))
                        && !(event instanceof LogEvent.Left left
                            && left.stop().equals(stop)
                            && left.time().instant().isBefore(time.instant())))
            .toList();
    return with(trip.withLog(log), new LogEvent.Arrived(time, stop, Remarks.NONE));
  }

  /** The rig leaves a stop: a departure from it that stands in the log already gives way. */
  public static Trip left(Trip trip, String stop, TypedTime time) {
    List<LogEvent> log =
        trip.log().stream()
            .filter(event -> !(event instanceof LogEvent.Left left && left.stop().equals(stop)))
            .toList();
    return with(trip.withLog(log), new LogEvent.Left(time, stop, Remarks.NONE));
  }

  /**
   * Air added or let out. What the gauge showed before is the last reading within half an hour
   * before, if there is one.
   */
  public static Trip adjusted(
      Trip trip, String tire, Entered<GaugePressure> to, String gauge, TypedTime time) {
    Entered<GaugePressure> from = null;
    for (LogEvent event : trip.log()) {
      Instant then = event.time().instant();
      boolean before =
          !then.isAfter(time.instant()) && then.isAfter(time.instant().minusSeconds(1800));
      if (before && event instanceof LogEvent.Reading reading && reading.tire().equals(tire)) {
        from = reading.gauge().equals(gauge) ? reading.pressure() : null;
      }
    }
    return with(trip, new LogEvent.Adjustment(time, tire, from, to, gauge, Remarks.NONE));
  }

  /** Which tire stands at each position at a time, by what was fitted at the start and changed. */
  public static Map<WheelPosition, Tire> fittedAt(Trip trip, Instant instant) {
    Map<WheelPosition, Tire> fitted = new LinkedHashMap<>();
    for (WheelPosition position : trip.rig().positions()) {
      trip.rig().fittedAt(position).ifPresent(tire -> fitted.put(position, tire));
    }
    for (LogEvent event : trip.log()) {
      if (event instanceof LogEvent.TireChange change && !event.time().instant().isAfter(instant)) {
        trip.rig().tire(change.on()).ifPresent(tire -> fitted.put(change.position(), tire));
      }
    }
    return fitted;
  }

  /** Tires that stand at no position at a time: spares, and what came off. */
  public static List<Tire> looseAt(Trip trip, Instant instant) {
    List<Tire> loose = new ArrayList<>(trip.rig().tires());
    loose.removeAll(fittedAt(trip, instant).values());
    return loose;
  }

  /** Where a tire stands at a time; empty where it stands nowhere. */
  public static Optional<WheelPosition> positionOf(Trip trip, String tire, Instant instant) {
    return fittedAt(trip, instant).entrySet().stream()
        .filter(entry -> entry.getValue().id().equals(tire))
        .map(Map.Entry::getKey)
        .findFirst();
  }
}

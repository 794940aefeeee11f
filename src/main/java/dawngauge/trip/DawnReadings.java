package dawngauge.trip;

import dawngauge.quantity.Entered;
import dawngauge.quantity.GaugePressure;
import java.time.Duration;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** The cold readings taken before the rig leaves its first stop. */
public final class DawnReadings {

  /** The round with the gauge begins so long before leaving, a minute for each tire; ours. */
  private static final int ROUND_MINUTES = 30;

  /** A cold reading longer before leaving is none of this departure; ours. */
  private static final Duration LONGEST_BEFORE = Duration.ofHours(12);

  private static final DateTimeFormatter TEXT =
      DateTimeFormatter.ofPattern("uuuu-MM-dd'T'HH:mmxxx'['VV']'", Locale.ROOT);

  private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT);

  private DawnReadings() {}

  /** When the rig leaves its first stop; empty where that is not typed. */
  private static Optional<ZonedDateTime> leaving(Trip trip) {
    return trip.route().stops().stream()
        .findFirst()
        .flatMap(stop -> Optional.ofNullable(stop.leave()))
        .map(TypedTime::time);
  }

  /** Whether a reading can be noted: departure typed, a gauge there. */
  public static boolean canNote(Trip trip) {
    return leaving(trip).isPresent() && !trip.rig().gauges().isEmpty();
  }

  /** The last cold reading of a tire within 12 hours before the rig leaves. */
  public static Optional<LogEvent.Reading> of(Trip trip, String tire) {
    int index = index(trip, tire);
    return index < 0 ? Optional.empty() : Optional.of((LogEvent.Reading) trip.log().get(index));
  }

  /**
   * When and, where there are several, with which gauge a tire's dawn reading was taken, and what
   * was set after it; or why there is none.
   */
  public static String said(Trip trip, String tire) {
    if (leaving(trip).isEmpty()) {
      return "needs a departure";
    } else if (trip.rig().gauges().isEmpty()) {
      return "needs a gauge";
    }
    int index = index(trip, tire);
    if (index < 0) {
      return "not read";
    }
    LogEvent.Reading reading = (LogEvent.Reading) trip.log().get(index);
    ZonedDateTime leave = leaving(trip).orElseThrow();
    String set =
        trip.log().subList(index + 1, trip.log().size()).stream()
            .filter(event -> !event.time().instant().isAfter(leave.toInstant()))
            .filter(LogEvent.Adjustment.class::isInstance)
            .map(LogEvent.Adjustment.class::cast)
            .filter(adjustment -> adjustment.tire().equals(tire))
            .map(adjustment -> ", then set to " + adjustment.to().text())
            .reduce("", (earlier, later) -> later);
    String gauge = trip.rig().gauges().size() > 1 ? ", " + reading.gauge() : "";
    return CLOCK.format(reading.time().time()) + gauge + set;
  }

  /**
   * Another figure for a tire's dawn reading, or none. A reading that stands in the log keeps its
   * time, gauge and all else; a new one is noted with the first gauge, as on a round in walking
   * order, spares last, that begins 30 minutes before leaving.
   *
   * @throws IllegalStateException if there is none and none can be noted
   */
  public static Trip with(Trip trip, String tire, @Nullable Entered<GaugePressure> pressure) {
    List<LogEvent> log = new ArrayList<>(trip.log());
    int index = index(trip, tire);
    if (index >= 0) {
      LogEvent.Reading old = (LogEvent.Reading) log.remove(index);
      if (pressure != null) {
        log.add(
            index,
            new LogEvent.Reading(
                old.time(),
                tire,
                pressure,
                old.gauge(),
                old.state(),
                old.air(),
                old.tireTemperature(),
                old.remarks()));
      }
    } else if (pressure != null) {
      TypedTime time = roundTime(trip, tire);
      int place = 0;
      while (place < log.size() && !log.get(place).time().instant().isAfter(time.instant())) {
        place++;
      }
      log.add(
          place,
          new LogEvent.Reading(
              time,
              tire,
              pressure,
              trip.rig().gauges().get(0).name(),
              ReadingState.COLD,
              null,
              null,
              Remarks.NONE));
    }
    return trip.withLog(log);
  }

  private static TypedTime roundTime(Trip trip, String tire) {
    if (!canNote(trip)) {
      throw new IllegalStateException("a dawn reading needs a departure and a gauge");
    }
    List<String> round = new ArrayList<>();
    Rig rig = trip.rig();
    rig.positions()
        .forEach(position -> rig.fittedAt(position).ifPresent(fitted -> round.add(fitted.id())));
    rig.spares().forEach(spare -> round.add(spare.tire()));
    int order = round.contains(tire) ? round.indexOf(tire) : round.size();
    ZonedDateTime time =
        leaving(trip)
            .orElseThrow()
            .truncatedTo(ChronoUnit.MINUTES)
            .minusMinutes(ROUND_MINUTES)
            .plusMinutes(Math.min(order, ROUND_MINUTES - 1));
    return new TypedTime(time, TEXT.format(time));
  }

  private static int index(Trip trip, String tire) {
    ZonedDateTime leave = leaving(trip).orElse(null);
    if (leave == null) {
      return -1;
    }
    for (int i = trip.log().size() - 1; i >= 0; i--) {
      LogEvent event = trip.log().get(i);
      if (event instanceof LogEvent.Reading reading
          && reading.tire().equals(tire)
          && reading.state() == ReadingState.COLD) {
        Duration before = Duration.between(reading.time().instant(), leave.toInstant());
        if (!before.isNegative() && before.compareTo(LONGEST_BEFORE) <= 0) {
          return i;
        }
      }
    }
    return -1;
  }
}

package dawngauge.trip;

import dawngauge.problem.Outcome;
import dawngauge.problem.Problem;
import dawngauge.problem.ProblemCode;
import dawngauge.quantity.Speed;
import dawngauge.quantity.UnitSystem;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The clock at one stop of a trip: its zone, the days of the stay, and what must be said of times
 * that are typed there.
 */
public final class StopClock {

  /** Computed times are to the second, typed ones to the minute. */
  private static final Duration SAME = Duration.ofSeconds(59);

  private final Trip trip;
  private final int index;
  private final Stop stop;
  private final Itinerary.@Nullable Visit visit;
  private final List<Problem> problems;

  /** The clock at a stop, counted from 0. */
  public StopClock(Trip trip, int index) {
    this.trip = trip;
    this.index = index;
    this.stop = trip.route().stops().get(index);
    Outcome<Itinerary> times = Itinerary.of(trip);
    this.visit = visit(times);
    this.problems = times.problems();
  }

  private Itinerary.@Nullable Visit visit(Outcome<Itinerary> times) {
    Itinerary known = times.valueOrNull();
    return known == null || index >= known.visits().size() ? null : known.visits().get(index);
  }

  /** Whose clock is shown: that of the stop, else of the nearest one before, else behind; UTC. */
  public ZoneId zone() {
    if (stop.zone() != null) {
      return stop.zone();
    } else if (visit != null && !(visit.zone() instanceof ZoneOffset)) {
      return visit.zone();
    }
    List<Stop> stops = trip.route().stops();
    for (int away = 1; away < stops.size(); away++) {
      for (int other : new int[] {index - away, index + away}) {
        ZoneId zone = other < 0 || other >= stops.size() ? null : stops.get(other).zone();
        if (zone != null) {
          return zone;
        }
      }
    }
    return ZoneOffset.UTC;
  }

  /** When the rig comes, as far as that is known. */
  public @Nullable ZonedDateTime arrives() {
    return visit == null ? null : visit.arrive().atZone(visit.zone());
  }

  /** When the rig goes, as far as that is known. */
  public @Nullable ZonedDateTime leaves() {
    return visit == null ? null : visit.leave().atZone(visit.zone());
  }

  /** The days on which the rig stands here, in order; none where no time is known. */
  public List<LocalDate> days() {
    ZonedDateTime from = arrives();
    ZonedDateTime to = leaves();
    if (from == null || to == null) {
      TypedTime typed = stop.arrive() != null ? stop.arrive() : stop.leave();
      return typed == null ? List.of() : List.of(typed.time().toLocalDate());
    }
    return from.toLocalDate().datesUntil(to.toLocalDate().plusDays(1)).toList();
  }

  /** What must be said of a typed arrival; nothing where none is typed. */
  public List<Problem> ofArrival(UnitSystem units) {
    TypedTime typed = stop.arrive();
    if (typed == null) {
      return List.of();
    }
    List<Problem> said = new ArrayList<>(ofClock(typed));
    clash(ProblemCode.ARRIVES_BEFORE_LEAVING, said);
    Itinerary.Visit driven =
        visit(Itinerary.of(RouteEdits.withStop(trip, index, stop.withTimes(null, stop.leave()))));
    if (index > 0 && visit != null && driven != null) {
      sooner(typed, driven, units, said);
    }
    return said;
  }

  private void sooner(
      TypedTime typed, Itinerary.Visit driven, UnitSystem units, List<Problem> said) {
    Itinerary times = Itinerary.of(trip).get();
    Itinerary.Visit before = times.visits().get(index - 1);
    Duration there = Duration.between(before.leave(), typed.instant());
    double meters = times.drives().get(index - 1).meters();
    if (typed.instant().plus(SAME).isBefore(driven.arrive()) && meters > 0) {
      said.add(
          Problem.of(
              ProblemCode.ARRIVES_SOONER_THAN_DRIVEN,
              "",
              clock(typed.instant()),
              clock(before.leave()),
              clock(driven.arrive()),
              units.format(new Speed(meters / (there.toMillis() / 1000.0)))));
    }
  }

  /** What must be said of a typed departure; nothing where none is typed. */
  public List<Problem> ofDeparture() {
    TypedTime typed = stop.leave();
    if (typed == null) {
      return List.of();
    }
    List<Problem> said = new ArrayList<>(ofClock(typed));
    clash(ProblemCode.LEAVES_BEFORE_ARRIVING, said);
    return said;
  }

  /** The problem that ends the known times at this stop, if it is of that kind. */
  private void clash(ProblemCode code, List<Problem> said) {
    Itinerary known = Itinerary.of(trip).valueOrNull();
    if (known != null && known.visits().size() == index) {
      problems.stream().filter(problem -> problem.code() == code).forEach(said::add);
    }
  }

  private List<Problem> ofClock(TypedTime typed) {
    List<Problem> said = new ArrayList<>();
    ZoneId zone = typed.time().getZone();
    if (stop.zone() == null && zone instanceof ZoneOffset && zone().equals(zone)) {
      said.add(Problem.of(ProblemCode.NO_ZONE_FOR_TIME, ""));
    }
    if (typed.isSkipped()) {
      said.add(
          Problem.of(
              ProblemCode.TIME_IN_GAP,
              "",
              minutes(typed.clock()),
              zone.getId(),
              minutes(typed.time().toLocalDateTime())));
    }
    typed
        .twin()
        .ifPresent(
            twin ->
                said.add(
                    Problem.of(
                        ProblemCode.TIME_COMES_TWICE,
                        "",
                        zone.getId(),
                        withOffset(typed.time()),
                        withOffset(twin))));
    boolean other = !zone().getRules().getOffset(typed.instant()).equals(typed.time().getOffset());
    if (other) {
      said.add(
          Problem.of(ProblemCode.TYPED_BY_OTHER_CLOCKS, "", zone.getId(), clock(typed.instant())));
    }
    return said;
  }

  private String clock(Instant instant) {
    return minutes(instant.atZone(zone()).toLocalDateTime());
  }

  private static String withOffset(ZonedDateTime time) {
    return minutes(time.toLocalDateTime()) + " " + time.getOffset().getId();
  }

  private static String minutes(LocalDateTime time) {
    return time.toLocalDate() + " " + String.format("%02d:%02d", time.getHour(), time.getMinute());
  }
}

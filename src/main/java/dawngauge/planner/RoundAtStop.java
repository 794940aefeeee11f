package dawngauge.planner;

import dawngauge.advice.Advice;
import dawngauge.advice.StopAdvice;
import dawngauge.advice.TireAdvice;
import dawngauge.forecast.ReadingCheck;
import dawngauge.geo.Coordinate;
import dawngauge.geo.Daylight;
import dawngauge.problem.Problem;
import dawngauge.problem.ProblemCode;
import dawngauge.quantity.Entered;
import dawngauge.quantity.GaugePressure;
import dawngauge.quantity.QuantityKind;
import dawngauge.quantity.Temperature;
import dawngauge.trip.CrewPlace;
import dawngauge.trip.Gauge;
import dawngauge.trip.Itinerary;
import dawngauge.trip.LogEdits;
import dawngauge.trip.LogEvent;
import dawngauge.trip.ReadingRound;
import dawngauge.trip.ReadingState;
import dawngauge.trip.Trip;
import dawngauge.trip.TypedTime;
import dawngauge.trip.WheelPosition;
import java.time.Duration;
import java.time.Instant;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * A round with the gauge at one stop of a plan: when it begins, what it read already, and the trip
 * with what is noted next.
 *
 * @param plan the trip and what follows from it
 * @param visit the stop, 0 first; one that is not there is none
 */
public record RoundAtStop(Plan plan, int visit) {

  /** What is expected does not hang on the figure; some figure is needed to ask for it. */
  private static final Entered<GaugePressure> ANY_FIGURE =
      Entered.of(QuantityKind.GAUGE_PRESSURE, "1 psi");

  /** So long after its rise the sun begins to warm a tire; ours, no source. */
  private static final Duration SUN_WARMS = Duration.ofMinutes(15);

  /** No round takes longer: a minute a tire, forty tires at most; ours. */
  private static final Duration A_ROUND = Duration.ofHours(1);

  /** The stops at which a round can be; none where no time on the way is known. */
  public static List<StopAdvice> stops(Plan plan) {
    Advice advice = plan.advice();
    return advice == null ? List.of() : advice.stops();
  }

  /** What those stops are called, with their numbers in the route. */
  public static List<String> names(Plan plan) {
    return stops(plan).stream()
        .map(each -> each.stop().visit())
        .map(at -> (at.index() + 1) + " " + at.stop().place())
        .toList();
  }

  /** The stop at which the crew is, or the next one it comes to; none where no time is known. */
  public static Optional<Integer> nextOf(Trip trip) {
    return Itinerary.of(trip)
        .value()
        .map(
            itinerary -> {
              CrewPlace place = CrewPlace.of(trip, itinerary);
              return place.there() ? place.visit() : place.next(itinerary.visits());
            });
  }

  /** Why a figure cannot be read on a gauge: it is beyond its scale. Zero is a flat tire. */
  public static Optional<Problem> offScale(Entered<GaugePressure> figure, @Nullable Gauge gauge) {
    Entered<GaugePressure> span = gauge == null ? null : gauge.span();
    return span != null && figure.value().pascals() > span.value().pascals()
        ? Optional.of(Problem.of(ProblemCode.OUT_OF_RANGE, "", figure.text(), "0", span.text()))
        : Optional.empty();
  }

  /** What is judged of the stop's tires; nothing where the stop is not there. */
  public List<TireAdvice> tires() {
    List<StopAdvice> stops = stops(plan);
    return visit >= 0 && visit < stops.size() ? stops.get(visit).tires() : List.of();
  }

  /** When the rig stands there. */
  public Optional<Itinerary.Visit> stay() {
    List<StopAdvice> stops = stops(plan);
    return visit >= 0 && visit < stops.size()
        ? Optional.of(stops.get(visit).stop().visit())
        : Optional.empty();
  }

  /** When a round usually begins there. */
  public Optional<TypedTime> usualStart(Instant now) {
    return stay().map(at -> LogEdits.at(ReadingRound.usualStart(at, now), at.zone()));
  }

  /** Tires are cold at the start of the trip and of a day, and after a long enough stay. */
  public ReadingState usualState(Instant now) {
    return stay()
        .filter(
            at ->
                visit == 0
                    || at.firstStartOfDay()
                    || !ReadingRound.usualStart(at, now)
                        .isBefore(at.arrive().plus(ReadingState.COLD_AFTER)))
        .map(at -> ReadingState.COLD)
        .orElse(ReadingState.WARM);
  }

  /** The round there as it is chosen; none while its start or its gauge is missing. */
  public Optional<ReadingRound> round(
      @Nullable TypedTime start,
      ReadingState state,
      @Nullable String gauge,
      @Nullable Entered<Temperature> air,
      ReadingRound.Sun sun) {
    return start == null || gauge == null
        ? Optional.empty()
        : stay().map(at -> new ReadingRound(at.stop().id(), start, state, gauge, air, sun));
  }

  /** The readings of this stop in a state, by tire. */
  public Map<String, ReadingCheck> read(ReadingState state) {
    Map<String, ReadingCheck> all = new LinkedHashMap<>();
    for (TireAdvice advice : tires()) {
      for (ReadingCheck check : advice.tire().readings()) {
        if (check.reading().state() == state) {
          all.put(check.reading().tire(), check);
        }
      }
    }
    return all;
  }

  /** The readings of this stop that are of a round, by tire. */
  public Map<String, ReadingCheck> read(ReadingRound round) {
    Map<String, ReadingCheck> all = new LinkedHashMap<>();
    for (TireAdvice advice : tires()) {
      for (ReadingCheck check : advice.tire().readings()) {
        LogEvent.Reading reading = check.reading();
        if (reading.state() == round.state(round.position(plan.trip(), reading.tire()))) {
          all.put(reading.tire(), check);
        }
      }
    }
    return all;
  }

  /**
   * Whether the sun may stand on tires: it is up when a round begins, or nobody knows whether; it
   * takes a quarter of an hour over the horizon (ours).
   */
  public boolean maySunny(TypedTime start) {
    Itinerary.Visit at = stay().orElse(null);
    Coordinate place = at == null ? null : at.stop().coordinate();
    if (at == null || place == null) {
      return at != null;
    }
    Instant then = start.instant();
    return Daylight.on(then.atZone(at.zone()).toLocalDate(), at.zone(), place)
        .map(sun -> then.isAfter(sun.sunrise().plus(SUN_WARMS)) && then.isBefore(sun.sunset()))
        .orElse(true);
  }

  /**
   * The trip where the cold readings of a round, within an hour of its beginning, are noted as in
   * the sun on its sunny side, and as cold elsewhere.
   */
  public Trip sunny(ReadingRound round) {
    Trip trip = plan.trip();
    List<LogEvent> here =
        tires().stream()
            .flatMap(advice -> advice.tire().readings().stream())
            .map(check -> (LogEvent) check.reading())
            .toList();
    return trip.withLog(
        trip.log().stream()
            .map(
                event ->
                    here.contains(event)
                            && event instanceof LogEvent.Reading reading
                            && isCold(reading.state())
                            && isOf(round, reading)
                        ? reading.in(round.state(round.position(trip, reading.tire())))
                        : event)
            .toList());
  }

  /** The side whose tires alone were read in the sun here; neither where there is no such. */
  public ReadingRound.Sun sunnySide() {
    Set<ReadingRound.Sun> sides = EnumSet.noneOf(ReadingRound.Sun.class);
    for (TireAdvice advice : tires()) {
      WheelPosition position = advice.tire().fitted().position();
      if (advice.tire().readings().stream()
          .anyMatch(check -> check.reading().state() == ReadingState.COLD_IN_SUN)) {
        sides.add(
            ReadingRound.Sun.LEFT.on(position) ? ReadingRound.Sun.LEFT : ReadingRound.Sun.RIGHT);
      }
    }
    return sides.size() == 1 ? sides.iterator().next() : ReadingRound.Sun.NEITHER;
  }

  private static boolean isOf(ReadingRound round, LogEvent.Reading reading) {
    Instant start = round.start().instant();
    Instant time = reading.time().instant();
    return !time.isBefore(start) && time.isBefore(start.plus(A_ROUND));
  }

  private static boolean isCold(ReadingState state) {
    return state == ReadingState.COLD || state == ReadingState.COLD_IN_SUN;
  }

  /** What a tire was last set to here. */
  public Optional<Entered<GaugePressure>> setTo(String tire) {
    Optional<Entered<GaugePressure>> last = Optional.empty();
    Itinerary.Visit at = stay().orElse(null);
    for (LogEvent event : plan.trip().log()) {
      if (at != null
          && event instanceof LogEvent.Adjustment adjustment
          && adjustment.tire().equals(tire)
          && !event.time().instant().isBefore(at.arrive())
          && !event.time().instant().isAfter(at.leave())) {
        last = Optional.of(adjustment.to());
      }
    }
    return last;
  }

  /** No reading of the stop is later than its departure, unless the rig is known to stand there. */
  public @Nullable Instant latest() {
    Itinerary.Visit at = stay().orElse(null);
    if (at == null) {
      return null;
    }
    boolean noted = false;
    for (LogEvent event : plan.trip().log()) {
      if (event instanceof LogEvent.Arrived arrived && arrived.stop().equals(at.stop().id())) {
        noted = true;
      } else if (event instanceof LogEvent.Left left && left.stop().equals(at.stop().id())) {
        noted = false;
      }
    }
    return noted ? null : at.leave();
  }

  /** When a tire is set: now where the crew stands there now, else when it was read. */
  public TypedTime minute(ReadingRound round, int order, Instant now) {
    TypedTime read = round.time(order, latest());
    return stay()
        .filter(at -> !now.isBefore(read.instant()) && !now.isAfter(at.leave()))
        .map(at -> LogEdits.at(now, at.zone()))
        .orElse(read);
  }

  /**
   * A reading of a tire: a new one, or the one that is there with another figure; it keeps all else
   * but the gauge.
   *
   * @param order of the tire in the round, 0 first
   */
  public LogEvent.Reading reading(
      ReadingRound round, String tire, int order, Entered<GaugePressure> figure) {
    ReadingCheck before = read(round).get(tire);
    if (before == null) {
      return round.reading(tire, round.position(plan.trip(), tire), order, figure, latest());
    }
    LogEvent.Reading old = before.reading();
    return new LogEvent.Reading(
        old.time(),
        old.tire(),
        figure,
        round.gauge(),
        old.state(),
        old.air(),
        old.tireTemperature(),
        old.remarks());
  }

  /** The trip with a reading, in the place of the one that is there. */
  public Trip with(ReadingRound round, String tire, int order, Entered<GaugePressure> figure) {
    return LogEdits.with(without(round, tire), reading(round, tire, order, figure));
  }

  /** The trip without the reading of a tire. */
  public Trip without(ReadingRound round, String tire) {
    Trip trip = plan.trip();
    ReadingCheck before = read(round).get(tire);
    return before == null ? trip : LogEdits.without(trip, trip.log().indexOf(before.reading()));
  }

  /** The trip with a tire set to a pressure. */
  public Trip adjusted(
      ReadingRound round, String tire, int order, Entered<GaugePressure> figure, Instant now) {
    return LogEdits.adjusted(plan.trip(), tire, figure, round.gauge(), minute(round, order, now));
  }

  /**
   * What each tire was expected to read, or is where it was not read yet.
   *
   * @param tires in the order of the round
   * @param planner plans the trip with a reading of each
   */
  public Map<String, ReadingCheck> expected(
      ReadingRound round, List<String> tires, Planner planner) {
    Map<String, ReadingCheck> known = read(round);
    Trip trial = plan.trip();
    Map<String, LogEvent.Reading> asked = new LinkedHashMap<>();
    for (int order = 0; order < tires.size(); order++) {
      String tire = tires.get(order);
      if (!known.containsKey(tire)) {
        LogEvent.Reading any =
            round.reading(tire, round.position(plan.trip(), tire), order, ANY_FIGURE, latest());
        asked.put(tire, any);
        trial = LogEdits.with(trial, any);
      }
    }
    Map<String, ReadingCheck> all = new LinkedHashMap<>(known);
    List<ReadingCheck> checks = planner.plan(trial).checks(visit);
    asked.forEach(
        (tire, reading) ->
            checks.stream()
                .filter(check -> check.reading().equals(reading))
                .findFirst()
                .ifPresent(check -> all.put(tire, check)));
    return all;
  }
}

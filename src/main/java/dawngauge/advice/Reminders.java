package dawngauge.advice;

import dawngauge.forecast.TireSnapshot;
import dawngauge.quantity.Distance;
import dawngauge.quantity.Unit;
import dawngauge.trip.CrewPlace;
import dawngauge.trip.Itinerary;
import dawngauge.trip.LogEvent;
import dawngauge.trip.ReadingState;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * When the crew is to look at the tires on the rest of a trip: before each day's first start, at
 * the first stop after it and after each setting, and where something is to be set.
 */
public final class Reminders {

  private static final Duration QUARTER = Duration.ofMinutes(15);

  /** A dozen and a half tires take so long to gauge and set; ours, no source. */
  private static final Duration NEEDED = Duration.ofMinutes(45);

  /** After added air, a flat or a wheel change stop once within 50 miles; common practice. */
  public static final Distance SOON = Distance.of(50, Unit.MILE);

  /** Parked so long a tire counts as cold (NHTSA consumer text). */
  private static final Duration TO_COLD = ReadingState.COLD_AFTER;

  private final Advice advice;
  private final double shortStopSeconds;
  private final int from;
  private final Map<Integer, Set<Reminder.Why>> onArrival = new TreeMap<>();

  private Reminders(Advice advice, Thresholds thresholds) {
    this.advice = advice;
    this.shortStopSeconds = thresholds.shortStopSeconds();
    List<Itinerary.Visit> visits =
        advice.stops().stream().map(stop -> stop.stop().visit()).toList();
    this.from = CrewPlace.open(advice.forecast().trip(), visits);
  }

  /**
   * The reminders of a trip in time order, those of stops that the log has left behind left out.
   */
  public static List<Reminder> of(Advice advice, Thresholds thresholds) {
    return new Reminders(advice, thresholds).all();
  }

  private List<Reminder> all() {
    List<Reminder> all = new ArrayList<>();
    for (int at = 0; at < advice.stops().size(); at++) {
      StopAdvice stop = advice.stops().get(at);
      boolean asks = stop.tires().stream().anyMatch(tire -> tire.set() != null);
      boolean starts = visit(at).firstStartOfDay();
      boolean taken =
          !stop.tires().isEmpty() && stop.tires().stream().allMatch(TireAdvice::readingTaken);
      if (starts && at >= from && !taken && at < advice.stops().size() - 1) {
        all.add(beforeStart(at));
      }
      if (starts) {
        next(at, Reminder.Why.FIRST_STOP);
      }
      if (asks || setInLog(at)) {
        next(at, Reminder.Why.AFTER_SETTING);
      }
      if (!starts && at >= from) {
        setHere(at, stop, all);
      }
    }
    wheelChanges(all);
    onArrival.forEach((at, reasons) -> all.add(onArrival(at, reasons)));
    all.sort(Comparator.comparing(Reminder::start).thenComparing(Reminder::visit));
    return List.copyOf(all);
  }

  /** Where air is asked for on arrival, then; what is done cold, before the rig leaves. */
  private void setHere(int at, StopAdvice stop, List<Reminder> all) {
    boolean cold = false;
    for (TireAdvice tire : stop.tires()) {
      TimedFigures timed = tire.timed();
      if (timed != null && timed.at().warm()) {
        add(at, Reminder.Why.SET_HERE);
      }
      cold = cold || (timed != null && !timed.at().warm());
    }
    if (cold) {
      all.add(beforeLeaving(at, Set.of(Reminder.Why.BEFORE_START, Reminder.Why.SET_HERE)));
    }
  }

  /** The nuts of a wheel that was changed are looked at once it has run 50 miles. */
  private void wheelChanges(List<Reminder> all) {
    for (LogEvent event : advice.forecast().trip().log()) {
      if (event instanceof LogEvent.TireChange) {
        wheelChange(event.time().instant())
            .filter(reminder -> !all.contains(reminder))
            .ifPresent(all::add);
      }
    }
  }

  private Optional<Reminder> wheelChange(Instant changed) {
    double due = metersAt(changed) + SOON.meters();
    for (int at = Math.max(0, from - 1); at + 1 < advice.stops().size(); at++) {
      Instant then = timeAt(due, visit(at), visit(at + 1));
      if (then != null && then.isAfter(changed)) {
        Set<Reminder.Why> why = Set.of(Reminder.Why.WHEEL_CHANGED);
        return Optional.of(new Reminder(at, then, then.plus(QUARTER), false, why));
      }
    }
    return Optional.empty();
  }

  /** When the rig is at a distance from the route's start; null where that is not on a leg. */
  private static @Nullable Instant timeAt(double meters, Itinerary.Visit from, Itinerary.Visit to) {
    double part = (meters - from.meters()) / (to.meters() - from.meters());
    if (!(part >= 0 && part <= 1)) {
      return null;
    }
    Duration drive = Duration.between(from.leave(), to.arrive());
    return from.leave().plusMillis(Math.round(part * drive.toMillis()));
  }

  /** How far from the route's start the rig is. */
  private double metersAt(Instant time) {
    for (int at = 0; at + 1 < advice.stops().size(); at++) {
      Itinerary.Visit from = visit(at);
      Itinerary.Visit to = visit(at + 1);
      if (!time.isAfter(from.leave())) {
        return from.meters();
      } else if (time.isBefore(to.arrive())) {
        double gone = Duration.between(from.leave(), time).toMillis();
        double all = Duration.between(from.leave(), to.arrive()).toMillis();
        return from.meters() + gone / all * (to.meters() - from.meters());
      }
    }
    return visit(advice.stops().size() - 1).meters();
  }

  private Itinerary.Visit visit(int index) {
    return advice.stops().get(index).stop().visit();
  }

  private boolean setInLog(int at) {
    Itinerary.Visit visit = visit(at);
    return advice.forecast().trip().log().stream()
        .filter(event -> event instanceof LogEvent.Adjustment)
        .map(event -> event.time().instant())
        .anyMatch(time -> !time.isBefore(visit.arrive()) && !time.isAfter(visit.leave()));
  }

  /** The next stop that is one is to be a look at the tires. */
  private void next(int at, Reminder.Why why) {
    for (int next = at + 1; next < advice.stops().size(); next++) {
      Itinerary.Visit visit = visit(next);
      boolean last = next == advice.stops().size() - 1;
      boolean longEnough = visit.staysFor(shortStopSeconds);
      if (!visit.passes() && (last || longEnough)) {
        if (next >= from) {
          add(next, why);
        }
        return;
      }
    }
  }

  private void add(int at, Reminder.Why why) {
    onArrival.computeIfAbsent(at, key -> EnumSet.noneOf(Reminder.Why.class)).add(why);
  }

  private Reminder onArrival(int at, Set<Reminder.Why> reasons) {
    Itinerary.Visit visit = visit(at);
    Instant end = visit.arrive().plus(QUARTER);
    boolean leavesFirst = visit.leave().isBefore(end) && visit.leave().isAfter(visit.arrive());
    return new Reminder(at, visit.arrive(), leavesFirst ? visit.leave() : end, false, reasons);
  }

  /**
   * The last full quarter hour at least 45 minutes before the tires are to be done, which is when
   * the rig leaves or half an hour after sunrise; later where they are cold only then. Where they
   * are not cold before the rig leaves, before that, and warm.
   */
  private Reminder beforeStart(int at) {
    return beforeLeaving(at, Set.of(Reminder.Why.BEFORE_START));
  }

  private Reminder beforeLeaving(int at, Set<Reminder.Why> reasons) {
    Itinerary.Visit visit = visit(at);
    Instant done = done(at);
    Instant cold = at == 0 ? Instant.MIN : visit.arrive().plus(TO_COLD);
    Instant start = quarter(done.minus(NEEDED));
    if (start.isBefore(cold)) {
      start = quarter(cold.plus(QUARTER).minusSeconds(1));
    }
    boolean possible = !start.isAfter(done.minus(QUARTER));
    if (!possible) {
      done = visit.leave();
      start = quarter(done.minus(NEEDED));
      start = start.isBefore(visit.arrive()) ? visit.arrive() : start;
    }
    return new Reminder(at, start, done, possible, reasons);
  }

  private Instant done(int at) {
    Instant done = visit(at).leave();
    for (TireAdvice tire : advice.stops().get(at).tires()) {
      TireSnapshot check = tire.tire().check();
      if (check != null) {
        Instant time = Instant.ofEpochSecond(Math.round(check.seconds()));
        done = time.isBefore(done) ? time : done;
      }
    }
    return done;
  }

  /** The last full quarter hour; offsets of clocks are whole quarter hours. */
  private static Instant quarter(Instant time) {
    long seconds = QUARTER.toSeconds();
    return Instant.ofEpochSecond(Math.floorDiv(time.getEpochSecond(), seconds) * seconds);
  }
}

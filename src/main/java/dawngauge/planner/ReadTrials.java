package dawngauge.planner;

import dawngauge.advice.ReadTable;
import dawngauge.advice.ReadTable.Band;
import dawngauge.advice.StopAdvice;
import dawngauge.advice.StopReadTables;
import dawngauge.advice.TireAdvice;
import dawngauge.forecast.ReadingCheck;
import dawngauge.quantity.Entered;
import dawngauge.quantity.GaugePressure;
import dawngauge.quantity.QuantityKind;
import dawngauge.trip.Gauge;
import dawngauge.trip.Itinerary;
import dawngauge.trip.LogEdits;
import dawngauge.trip.LogEvent;
import dawngauge.trip.ReadingState;
import dawngauge.trip.Remarks;
import dawngauge.trip.TypedTime;
import dawngauge.trip.WheelPosition;
import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.BooleanSupplier;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * Tries at a stop what readings would mean, tire by tire and figure by figure, each as if it were
 * noted: what is found is what the program tells of that reading.
 */
public final class ReadTrials {

  private static final List<ReadingState> STATES =
      List.of(ReadingState.COLD, ReadingState.COLD_IN_SUN, ReadingState.WARM);

  /** Warm tires are gauged so soon after arriving; ours. */
  private static final Duration WARM_FOR = Duration.ofHours(1);

  /** Cold tires are gauged so shortly before leaving; ours. */
  private static final Duration COLD_FOR = Duration.ofHours(2);

  private static final Duration MINUTE = Duration.ofMinutes(1);

  private static final Duration QUARTER = Duration.ofMinutes(15);

  /** One psi in pascal. */
  private static final double PSI =
      Entered.of(QuantityKind.GAUGE_PRESSURE, "1 psi").value().pascals();

  /** Figures are tried so far apart, in psi, from a share of the highest limit on. */
  private static final double APART = 2;

  private static final double LOWEST = 0.5;

  private static final int FINER = 2;

  /** The highest figure that is tried, by the highest limit or label of the rig; ours. */
  private static final double HIGHEST = 1.3;

  /** In place of limit and label where none is known, in psi; ours. */
  private static final double USUAL = 100;

  private final Plan plan;
  private final int visit;
  private final String gauge;
  private final BooleanSupplier goesOn;
  private final double top;

  private ReadTrials(Plan plan, int visit, String gauge, BooleanSupplier goesOn) {
    this.plan = plan;
    this.visit = visit;
    this.gauge = gauge;
    this.goesOn = goesOn;
    this.top = top();
  }

  /**
   * The tables of the stops to which the crew comes on the next days, that where it is among them;
   * of a day the stops to which it comes on it, the last with its next morning; by the first gauge
   * of the rig. None where no time is known.
   *
   * @param days how many days, 1 at least
   * @param now when that is
   * @param goesOn asked again and again; once it says no, the rest is left out
   */
  public static List<StopReadTables> ahead(
      Plan plan, int days, Instant now, BooleanSupplier goesOn) {
    List<StopAdvice> stops = RoundAtStop.stops(plan);
    int first = RoundAtStop.nextOf(plan.trip()).orElse(0);
    return IntStream.range(first, stops.size())
        .takeWhile(visit -> day(stops, visit) < day(stops, first) + days)
        .mapToObj(visit -> of(plan, visit, now, goesOn))
        .toList();
  }

  private static long day(List<StopAdvice> stops, int visit) {
    Itinerary.Visit at = stops.get(visit).stop().visit();
    return (visit == 0 ? at.leave() : at.arrive()).atZone(at.zone()).toLocalDate().toEpochDay();
  }

  /**
   * The tables of a stop, for the first gauge of the rig; none where it is passed, or where the rig
   * has no gauge.
   */
  static StopReadTables of(Plan plan, int visit, Instant now, BooleanSupplier goesOn) {
    RoundAtStop round = new RoundAtStop(plan, visit);
    return new StopReadTables(
        visit,
        round.usualState(now),
        round.stay().map(at -> tables(plan, visit, at, goesOn)).orElse(List.of()));
  }

  private static List<ReadTable> tables(
      Plan plan, int visit, Itinerary.Visit at, BooleanSupplier goesOn) {
    Optional<Gauge> gauge = plan.trip().rig().gauges().stream().findFirst();
    if (gauge.isEmpty() || at.passes()) {
      return List.of();
    }
    ReadTrials trials = new ReadTrials(plan, visit, gauge.get().name(), goesOn);
    List<ReadTable> all = new ArrayList<>();
    for (ReadingState state : STATES) {
      List<ReadTable.Slot> slots =
          trials.minutes(at, state).stream()
              .map(minute -> trials.slot(minute, at, state))
              .filter(slot -> !slot.tires().isEmpty())
              .toList();
      if (!slots.isEmpty()) {
        all.add(new ReadTable(state, slots));
      }
    }
    return all;
  }

  /** The minutes at which tires can be in a state there. */
  private List<Instant> minutes(Itinerary.Visit at, ReadingState state) {
    boolean cold = state != ReadingState.WARM;
    Instant from = at.arrive();
    Instant to = at.leave();
    if (!cold && visit == 0) {
      return List.of();
    } else if (!cold) {
      Instant most = from.plus(WARM_FOR);
      to = to.isAfter(most) ? most : to;
    } else {
      boolean atOnce = visit == 0 || at.firstStartOfDay();
      Instant coldFrom = atOnce ? from : from.plus(ReadingState.COLD_AFTER);
      Instant least = to.minus(COLD_FOR);
      from = coldFrom.isAfter(least) ? coldFrom : least;
    }
    // What is read before something that is noted there already, would change what that means.
    for (LogEvent event : plan.trip().log()) {
      Instant noted = event.time().instant();
      from = noted.isBefore(from) || !noted.isBefore(to) ? from : noted.plus(MINUTE);
    }
    List<Instant> minutes = new ArrayList<>();
    for (Instant minute = whole(from); minute.isBefore(to); minute = minute.plus(QUARTER)) {
      minutes.add(minute);
    }
    if (!from.isAfter(to)) {
      minutes.add(to.truncatedTo(ChronoUnit.MINUTES));
      minutes.removeIf(minute -> minute.isBefore(at.arrive()));
    }
    RoundAtStop round = new RoundAtStop(plan, visit);
    return minutes.stream()
        .distinct()
        .filter(
            minute ->
                state != ReadingState.COLD_IN_SUN || round.maySunny(LogEdits.at(minute, at.zone())))
        .toList();
  }

  /** The next whole minute. */
  private static Instant whole(Instant time) {
    return time.plusSeconds(59).truncatedTo(ChronoUnit.MINUTES);
  }

  private ReadTable.Slot slot(Instant minute, Itinerary.Visit at, ReadingState state) {
    TypedTime time = LogEdits.at(minute, at.zone());
    List<ReadTable.OfTire> tires = new ArrayList<>();
    LogEdits.fittedAt(plan.trip(), minute)
        .forEach(
            (position, tire) -> {
              if (goesOn.getAsBoolean()) {
                new Trying(time, state, position, tire.id()).found().ifPresent(tires::add);
              }
            });
    return new ReadTable.Slot(minute, tires);
  }

  /** The highest figure that is tried. */
  private double top() {
    double highest = 0;
    for (TireAdvice tire : new RoundAtStop(plan, visit).tires()) {
      double ceiling = tire.tire().limits().ceiling();
      double label = tire.tire().fitted().labelPascals();
      highest = Math.max(highest, Double.isNaN(ceiling) ? 0 : ceiling);
      highest = Math.max(highest, Double.isNaN(label) ? 0 : label);
    }
    return Math.ceil((highest > 0 ? highest / PSI : USUAL) * HIGHEST);
  }

  /** One tire at one minute, with one figure after the other. */
  private final class Trying {

    private final TypedTime time;
    private final ReadingState state;
    private final WheelPosition position;
    private final String tire;
    private final NavigableMap<Double, TireAdvice> known = new TreeMap<>();
    private @Nullable ReadingCheck check;

    Trying(TypedTime time, ReadingState state, WheelPosition position, String tire) {
      this.time = time;
      this.state = state;
      this.position = position;
      this.tire = tire;
    }

    /** What its figures mean; empty where a reading would not be one of this stop. */
    Optional<ReadTable.OfTire> found() {
      double lowest = Math.floor(top / HIGHEST * LOWEST);
      for (double psi = 0; psi <= top; psi += psi < lowest ? lowest : APART) {
        ask(psi);
      }
      for (int i = 0; i < FINER; i++) {
        refine();
      }
      ReadingCheck any = check;
      return any == null ? Optional.empty() : Optional.of(new ReadTable.OfTire(any, bands(known)));
    }

    /** Tries the middle between each two figures that mean something else. */
    private void refine() {
      List<Double> middles = new ArrayList<>();
      Map.Entry<Double, TireAdvice> before = null;
      for (Map.Entry<Double, TireAdvice> here : known.entrySet()) {
        if (before != null && !ReadTable.same(before.getValue(), here.getValue())) {
          middles.add((before.getKey() + here.getKey()) / 2);
        }
        before = here;
      }
      middles.forEach(this::ask);
    }

    private void ask(double psi) {
      Entered<GaugePressure> figure =
          Entered.of(QuantityKind.GAUGE_PRESSURE, String.format(Locale.ROOT, "%.2f psi", psi));
      LogEvent.Reading reading =
          new LogEvent.Reading(time, tire, figure, gauge, state, null, null, Remarks.NONE);
      plan.with(reading, position, visit)
          .ifPresent(
              advice ->
                  advice.tire().readings().stream()
                      .filter(each -> each.reading().equals(reading))
                      .findFirst()
                      .ifPresent(
                          found -> {
                            check = found;
                            known.put(psi, advice);
                          }));
    }

    /**
     * Figures that mean the same, together. Between two that mean something else the stronger mark
     * holds.
     */
    private static List<Band> bands(NavigableMap<Double, TireAdvice> tried) {
      List<Band> bands = new ArrayList<>();
      double from = 0;
      Map.Entry<Double, TireAdvice> first = null;
      Map.Entry<Double, TireAdvice> last = null;
      for (Map.Entry<Double, TireAdvice> here : tried.entrySet()) {
        if (first != null && last != null && !ReadTable.same(last.getValue(), here.getValue())) {
          boolean stronger = here.getValue().mark().compareTo(last.getValue().mark()) > 0;
          double edge = stronger ? Math.nextUp(last.getKey()) : here.getKey();
          bands.add(band(from, edge, first, last));
          from = edge;
          first = here;
        }
        first = first == null ? here : first;
        last = here;
      }
      if (first != null && last != null) {
        bands.add(band(from, last.getKey(), first, last));
      }
      return bands;
    }

    private static Band band(
        double from,
        double to,
        Map.Entry<Double, TireAdvice> first,
        Map.Entry<Double, TireAdvice> last) {
      return new Band(from * PSI, to * PSI, first.getValue(), last.getValue());
    }
  }
}

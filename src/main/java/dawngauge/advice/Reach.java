package dawngauge.advice;

import dawngauge.explain.Phrase;
import dawngauge.forecast.Forecaster;
import dawngauge.forecast.LegLow;
import dawngauge.forecast.Setting;
import dawngauge.forecast.TireAtStop;
import dawngauge.forecast.TireSnapshot;
import dawngauge.forecast.Track;
import dawngauge.quantity.GaugePressure;
import dawngauge.trip.Itinerary;
import dawngauge.trip.WheelPosition;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * How far the air in the tires reaches from a stop, and what each must read there to go on to the
 * next hose or to the end. What is asked to be set at earlier stops is taken as done; there and
 * later nothing is.
 *
 * @param visit index of the stop
 * @param nextHose index of the next stop where there is a hose, the crew's own compressor not
 *     counted; empty where none is known
 * @param end index of the last stop
 * @param tires in walking order
 */
public record Reach(int visit, OptionalInt nextHose, int end, List<OfTire> tires) {

  /** A figure is sought no further up than this many steps of the gauge from the first guess. */
  private static final int MOST_STEPS = 60;

  /** Copies the list. */
  public Reach {
    tires = List.copyOf(tires);
  }

  /**
   * One tire.
   *
   * @param at the tire at the stop
   * @param hold why it is on hold at the stop though it has air enough, or whatever its air, as a
   *     tire that ran low; then it has no figures. Null where it is not
   * @param reached index of the last stop to which it may roll with the air it has: with its load
   *     shown to be carried with the chosen confidence or as certified, over the line of a tire
   *     that ran low, and not on hold; the stop itself where not even to the next
   * @param knownTo index of the last stop up to which air, pressure and load on the whole way are
   *     known; beyond it nothing is said
   * @param needed what the gauge must show when the tire is gauged here to roll to each stop behind
   *     this one, by the air it has, in pascal: the first entry is of the next stop; negative
   *     infinity where nothing asks for any, NaN where no air helps
   * @param toHose the least whole figure with which it rolls to the next hose; null where nothing
   *     is known, nothing asks for any, or no figure up to its limit does
   * @param toEnd the same for the end of the trip
   */
  public record OfTire(
      TireAtStop at,
      @Nullable Phrase hold,
      int reached,
      int knownTo,
      List<Double> needed,
      @Nullable GaugePressure toHose,
      @Nullable GaugePressure toEnd) {

    /** Copies the list. */
    public OfTire {
      needed = List.copyOf(needed);
    }

    /** Whether all that it meets up to a stop is known. */
    public boolean known(int stop) {
      return stop <= knownTo;
    }

    /** What the gauge is expected to show when it is gauged here, in pascal; NaN if not known. */
    public double reads() {
      TireSnapshot check = at.check();
      return check == null ? Double.NaN : SetFigure.now(check);
    }

    /** So much it reads over what it needs to roll to a stop, in pascal; NaN if not known. */
    public double spare(int stop) {
      return reads() - needed.get(stop - at.visit() - 1);
    }
  }

  /**
   * What the air reaches from a stop.
   *
   * @param visit index of the stop, not the last
   */
  public static Reach of(Forecaster forecaster, Advice advice, int visit) {
    Lookahead lookahead = new Lookahead(forecaster, true);
    List<Itinerary.Visit> visits = forecaster.itinerary().visits();
    int end = visits.size() - 1;
    OptionalInt hose =
        IntStream.rangeClosed(visit + 1, end)
            .filter(i -> !visits.get(i).passes() && visits.get(i).stop().air().available())
            .findFirst();
    Map<WheelPosition, Track> asTheyAre = new HashMap<>();
    advice.tracks().forEach((position, track) -> asTheyAre.put(position, track.before(visit)));
    List<OfTire> tires = new ArrayList<>();
    for (TireAdvice advised : advice.stops().get(visit).tires()) {
      WheelPosition position = advised.tire().fitted().position();
      Track track = asTheyAre.get(position);
      if (track != null) {
        Way way =
            new Way(
                lookahead,
                track,
                Forecaster.stops(position, asTheyAre),
                visit,
                holds(advice, position),
                advice.stops().stream().map(stop -> stop.stop().airAheadKnown()).toList());
        tires.add(way.of(hose.orElse(end), end));
      }
    }
    return new Reach(visit, hose, end, tires);
  }

  /** Why a tire is on hold at each stop, whatever its air first; null where it is not. */
  private static List<@Nullable Reason> holds(Advice advice, WheelPosition position) {
    List<@Nullable Reason> holds = new ArrayList<>();
    for (StopAdvice stop : advice.stops()) {
      List<Reason> all =
          stop.tires().stream()
              .filter(tire -> tire.tire().fitted().position().equals(position))
              .flatMap(tire -> tire.reasons().stream())
              .filter(reason -> reason.mark() == Mark.HOLD)
              .toList();
      holds.add(
          all.stream()
              .filter(HoldRules::whateverItsAir)
              .findFirst()
              .orElse(all.isEmpty() ? null : all.get(0)));
    }
    return holds;
  }

  /**
   * The way of one tire from the stop.
   *
   * @param track the tire as it is
   * @param stops the same beside its dual mate, which takes its part of the load by its pressure
   * @param holds why it is on hold at each stop
   * @param airKnown whether the air on the whole leg ahead of each stop is known
   */
  private record Way(
      Lookahead lookahead,
      Track track,
      List<TireAtStop> stops,
      int visit,
      List<@Nullable Reason> holds,
      List<Boolean> airKnown) {

    OfTire of(int hose, int end) {
      TireAtStop at = stops.get(visit);
      TireSnapshot check = at.check();
      if (check == null) {
        return new OfTire(at, hold(false), visit, visit, unknown(end), null, null);
      }
      int knownTo = visit;
      while (knownTo < end && known(knownTo)) {
        knownTo++;
      }
      int byAir = visit;
      while (byAir < knownTo && rolls(stops, byAir, byAir + 1)) {
        byAir++;
      }
      int reached = visit;
      while (reached < byAir && holds.get(reached) == null) {
        reached++;
      }
      Phrase hold = hold(byAir == visit && knownTo > visit);
      List<Double> alike = needed(check, end, track.stops());
      return new OfTire(
          at,
          hold,
          hold == null ? reached : visit,
          knownTo,
          needed(check, end, stops),
          hold == null && hose <= knownTo ? least(check, alike, hose) : null,
          hold == null && end <= knownTo ? least(check, alike, end) : null);
    }

    /**
     * Why the tire is on hold here.
     *
     * @param lacksAir whether it has too little air to roll, which its figures tell
     */
    private @Nullable Phrase hold(boolean lacksAir) {
      Reason held = holds.get(visit);
      if (held != null && HoldRules.whateverItsAir(held)) {
        return held.todo();
      } else if (HoldRules.foundLowByNow(visit, track.stops())) {
        return HoldRules.FOUND_LOW;
      }
      return held == null || lacksAir ? null : held.todo();
    }

    /** Whether the tire, its load and all the air are known from leaving a stop to the next. */
    private boolean known(int stop) {
      TireAtStop there = stops.get(stop);
      LegLow low = there.low();
      return airKnown.get(stop)
          && there.leaving() != null
          && low != null
          && !Double.isNaN(there.leavingChance().notShown())
          && !Double.isNaN(low.chance().notShown());
    }

    private List<Double> unknown(int end) {
      return IntStream.range(visit, end).mapToObj(i -> Double.NaN).toList();
    }

    private List<Double> needed(TireSnapshot check, int end, List<TireAtStop> so) {
      List<Double> needed = new ArrayList<>();
      double most = Double.NEGATIVE_INFINITY;
      boolean helpless = false;
      for (int stop = visit; stop < end; stop++) {
        List<Lookahead.Judged> leg = lookahead.between(stop, stop + 1, so);
        helpless |= leg.stream().anyMatch(lookahead::beyondAir);
        most = Math.max(most, lookahead.needed(leg, check.settled(), check.airKelvins()));
        double settled = helpless ? Double.NaN : most;
        needed.add(Double.isInfinite(settled) ? settled : SetFigure.shown(check, settled));
      }
      return needed;
    }

    /**
     * The least whole figure with which it rolls to a stop, its dual mate set alike; null where
     * there is none.
     */
    private @Nullable GaugePressure least(TireSnapshot check, List<Double> needed, int stop) {
      double guess = needed.get(stop - visit - 1);
      if (Double.isNaN(guess) || Double.isInfinite(guess)) {
        return null;
      }
      double step = check.origin().errors().step();
      double figure = Math.ceil(guess / step - 1e-6) * step;
      for (int i = 0; i < MOST_STEPS && rolls(figure - step, stop); i++) {
        figure -= step;
      }
      for (int i = 0; i < MOST_STEPS && !rolls(figure, stop); i++) {
        figure += step;
      }
      double ceiling = stops.get(visit).limits().ceiling();
      double highest = Double.isNaN(ceiling) ? Double.MAX_VALUE : SetFigure.shown(check, ceiling);
      return figure > highest + step / 2 || !rolls(figure, stop) ? null : new GaugePressure(figure);
    }

    private boolean rolls(double figure, int stop) {
      return figure > 0 && rolls(track.with(visit, new Setting(figure)).stops(), visit, stop);
    }

    private boolean rolls(List<TireAtStop> so, int from, int to) {
      return lookahead.between(from, to, so).stream().noneMatch(lookahead::mayNotRoll);
    }
  }
}

package dawngauge.advice;

import dawngauge.explain.Phrase;
import dawngauge.forecast.Forecast;
import dawngauge.forecast.Forecaster;
import dawngauge.forecast.Setting;
import dawngauge.forecast.StopForecast;
import dawngauge.forecast.TireAtStop;
import dawngauge.forecast.TireLoss;
import dawngauge.forecast.Track;
import dawngauge.trip.CrewPlace;
import dawngauge.trip.LoadChange;
import dawngauge.trip.WheelPosition;
import dawngauge.trip.WheelSlot;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Says what to do about each tire at each stop. Works forward: what it asks to be set at a stop is
 * taken as done from there on.
 */
public final class Adviser {

  private final Forecaster forecaster;
  private final Thresholds thresholds;
  private final @Nullable AdjustmentPlan plan;

  /** Advises on the trip of a forecaster, each setting asked for taken as done to the aim. */
  public Adviser(Forecaster forecaster, Thresholds thresholds) {
    this(forecaster, thresholds, null);
  }

  /** Advises on the trip of a forecaster, under an accepted plan where there is one. */
  public Adviser(Forecaster forecaster, Thresholds thresholds, @Nullable AdjustmentPlan plan) {
    this.forecaster = forecaster;
    this.thresholds = thresholds;
    this.plan = plan;
  }

  /** The forecast with what to do. */
  public Advice advise() {
    List<WheelPosition> all = forecaster.trip().rig().positions();
    Judgement judgement = Judgement.of(forecaster, thresholds, plan, all);
    Forecast forecast = forecaster.forecast(judgement.tracks());
    List<TireLoss> losses = TireLoss.of(forecaster.trip(), judgement.tracks());
    List<StopAdvice> stops = new ArrayList<>();
    Routine routine = new Routine(forecaster, thresholds);
    for (StopForecast stop : forecast.stops()) {
      List<TireAdvice> tires =
          judged(stop, judgement.byStop().get(stop.visit().index()), losses, judgement);
      List<Habit> habits = routine.at(stop.visit().index(), tires);
      stops.add(
          new StopAdvice(
              stop,
              tires,
              habits,
              offers(stop, judgement),
              LegCautions.of(stop, tires, forecaster.trip().route())));
    }
    return new Advice(forecast, stops, judgement.tracks());
  }

  /**
   * One tire at a stop where more of it was noted than its advice before knows of; all others, and
   * what a plan sets, are as they were.
   *
   * @param before the advice on the trip without that
   * @param visit index of the stop
   */
  public Optional<TireAdvice> again(Advice before, WheelPosition position, int visit) {
    List<WheelPosition> pair =
        forecaster.trip().rig().positions().stream()
            .filter(each -> each.axle().equals(position.axle()))
            .filter(each -> each.equals(position) || each.slot().mate() == position.slot())
            .toList();
    Judgement judgement = Judgement.of(forecaster, thresholds, plan, pair);
    StopAdvice at = before.stops().get(visit);
    Map<WheelPosition, Track> tracks = new LinkedHashMap<>(before.tracks());
    tracks.putAll(judgement.tracks());
    List<TireAdvice> tires = new ArrayList<>();
    int found = -1;
    for (TireAdvice tire : at.tires()) {
      boolean own = tire.tire().fitted().position().equals(position);
      found = own ? tires.size() : found;
      tires.add(
          own
              ? judgement.byStop().get(visit).stream()
                  .filter(each -> each.tire().fitted().position().equals(position))
                  .findFirst()
                  .orElse(tire)
              : tire);
    }
    return found < 0
        ? Optional.empty()
        : Optional.of(
            judged(at.stop(), tires, TireLoss.of(forecaster.trip(), tracks), judgement).get(found));
  }

  /** The tires of a stop with what follows from more than each by itself. */
  private List<TireAdvice> judged(
      StopForecast stop, List<TireAdvice> decided, List<TireLoss> losses, Judgement judgement) {
    List<TireAdvice> tires = decided;
    if (stop.ahead() != null && !stop.airAheadKnown()) {
      Reason unknown = new Reason(Mark.UNKNOWN, Phrase.of("air on the leg ahead not known"), 0);
      tires = tires.stream().map(tire -> tire.with(unknown)).toList();
    }
    for (TireLoss loss : losses) {
      if (loss.to() == stop.visit().index()) {
        tires = goingDown(tires, loss, judgement);
      }
    }
    return HotTires.told(tires);
  }

  private List<TireAdvice> goingDown(List<TireAdvice> tires, TireLoss loss, Judgement judgement) {
    Track track = judgement.tracks().get(loss.position());
    return track == null
        ? tires
        : tires.stream()
            .map(
                tire ->
                    tire.tire().fitted().position().equals(loss.position())
                        ? tire.with(LossWords.of(forecaster, loss, track))
                        : tire)
            .toList();
  }

  private List<OfferAdvice> offers(StopForecast stop, Judgement judgement) {
    OfferJudge judge = new OfferJudge(forecaster, thresholds, judgement, stop.visit().index());
    List<LoadChange> offered =
        stop.visit().stop().loadChanges().stream().filter(LoadChange::offered).toList();
    return new OffersWhenAsked(offered, judge::judge);
  }

  /**
   * Tires at all stops, judged forward.
   *
   * @param tracks the tires with every setting that is asked for
   * @param byStop the tires stop by stop, in walking order
   */
  record Judgement(Map<WheelPosition, Track> tracks, List<List<TireAdvice>> byStop) {

    /**
     * Judges tires.
     *
     * @param positions which, in walking order, those of an axle together
     */
    static Judgement of(
        Forecaster forecaster,
        Thresholds thresholds,
        @Nullable AdjustmentPlan plan,
        List<WheelPosition> positions) {
      Map<WheelPosition, Seat> seats = new LinkedHashMap<>();
      for (WheelPosition position : positions) {
        TirePlan ofTire = plan == null ? null : plan.of(position).orElse(null);
        TireJudge judge = new TireJudge(forecaster, thresholds, ofTire);
        forecaster
            .track(position)
            .ifPresent(track -> seats.put(position, new Seat(position, track, judge)));
      }
      seats.forEach((position, seat) -> seat.mate = mateOf(position, seats));
      int left = CrewPlace.left(forecaster.trip(), forecaster.itinerary().visits());
      List<List<TireAdvice>> byStop = new ArrayList<>();
      int count = forecaster.itinerary().visits().size();
      for (int visit = 0; visit < count; visit++) {
        boolean over = visit < left;
        List<TireAdvice> decided = new ArrayList<>(seats.size());
        for (Seat seat : seats.values()) {
          decided.add(seat.decide(visit, over));
        }
        List<TireAdvice> tires = new ArrayList<>(seats.size());
        for (Seat seat : seats.values()) {
          tires.add(seat.judge.finish(visit, seat.besideMate(), decided.get(tires.size()), over));
        }
        byStop.add(tires);
      }
      int index = 0;
      for (Seat seat : seats.values()) {
        seat.tellWhereLeftLow(forecaster, byStop, index++);
      }
      Map<WheelPosition, Track> tracks = new LinkedHashMap<>();
      seats.forEach((position, seat) -> tracks.put(position, seat.track));
      return new Judgement(tracks, byStop);
    }
  }

  private static @Nullable Seat mateOf(WheelPosition position, Map<WheelPosition, Seat> seats) {
    WheelSlot slot = position.slot();
    return slot.mate() == slot ? null : seats.get(new WheelPosition(position.axle(), slot.mate()));
  }

  /** One tire while it is judged: its track with what was set so far, and the tire beside it. */
  private static final class Seat {
    private final WheelPosition position;
    private final TireJudge judge;
    private Track track;
    private @Nullable Seat mate;
    private @Nullable List<TireAtStop> besideMate;
    private @Nullable Track besideOwn;
    private @Nullable Track besideOther;

    Seat(WheelPosition position, Track track, TireJudge judge) {
      this.position = position;
      this.track = track;
      this.judge = judge;
    }

    /**
     * Decides what is set at a stop, and takes it as done.
     *
     * @param over whether the rig has left the stop: then only what the log tells was done there
     */
    TireAdvice decide(int visit, boolean over) {
      Seat beside = mate;
      TireAdvice advice =
          judge.decide(visit, track, beside == null ? List.of() : beside.track.stops());
      SetFigure set = advice.set();
      if (over) {
        return advice.past();
      } else if (set != null) {
        track = track.with(visit, new Setting(set.figure().pascals()));
      }
      return advice;
    }

    /** The tire stop by stop, sharing its load with its mate; kept until something is set. */
    List<TireAtStop> besideMate() {
      Seat beside = mate;
      Track other = beside == null ? null : beside.track;
      List<TireAtStop> kept = besideMate;
      if (kept != null && besideOwn == track && besideOther == other) {
        return kept;
      }
      Map<WheelPosition, Track> pair = new HashMap<>();
      pair.put(position, track);
      if (beside != null) {
        pair.put(beside.position, beside.track);
      }
      List<TireAtStop> stops = Forecaster.stops(position, pair);
      besideMate = stops;
      besideOwn = track;
      besideOther = other;
      return stops;
    }

    /** Says of a tire that was left low where it is set, or that it is set nowhere. */
    void tellWhereLeftLow(Forecaster forecaster, List<List<TireAdvice>> byStop, int index) {
      for (TireJudge.LeftLow low : judge.leftLow()) {
        int next = low.visit() + 1;
        while (next < byStop.size() && !adds(byStop.get(next).get(index))) {
          next++;
        }
        int hose = new Lookahead(forecaster).nextWithAir(low.visit(), track.stops());
        boolean sets = next < byStop.size();
        boolean gauges = !sets && hose < byStop.size() - 1;
        Phrase todo =
            sets
                ? Phrase.of("low; set it at {0}", place(forecaster, next))
                : gauges
                    ? Phrase.of("low here; gauge again at {0}", place(forecaster, hose))
                    : Phrase.of("low; no hose that helps before the end: add a stop");
        Phrase then =
            sets
                ? Phrase.of("set it at {0}", place(forecaster, next))
                : gauges
                    ? Phrase.of(
                        "gauge it at {0}, the next hose, where warmer air should have raised it",
                        place(forecaster, hose))
                    : Phrase.of(
                        "no hose that helps on the rest of this route: add a stop or carry a"
                            + " compressor");
        List<TireAdvice> tires = byStop.get(low.visit());
        Reason reason =
            new Reason(
                Mark.RECHECK, todo, Phrase.of("{0}; {1}, {2}", low.why(), low.none(), then), 3);
        tires.set(index, tires.get(index).with(reason));
      }
    }

    private static String place(Forecaster forecaster, int visit) {
      return forecaster.itinerary().visits().get(visit).stop().place();
    }

    private static boolean adds(TireAdvice advice) {
      SetFigure set = advice.set();
      return set != null && set.adds();
    }
  }
}

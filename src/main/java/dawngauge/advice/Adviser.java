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
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
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
    Judgement judgement = Judgement.of(forecaster, thresholds, plan);
    Forecast forecast = forecaster.forecast(judgement.tracks());
    List<TireLoss> losses = TireLoss.of(forecaster.trip(), judgement.tracks());
    List<StopAdvice> stops = new ArrayList<>();
    for (StopForecast stop : forecast.stops()) {
      List<TireAdvice> tires = judgement.byStop().get(stop.visit().index());
      if (stop.ahead() != null && !stop.airAheadKnown()) {
        Reason unknown = new Reason(Mark.UNKNOWN, Phrase.of("air on the leg ahead not known"), 0);
        tires = tires.stream().map(tire -> tire.with(unknown)).toList();
      }
      for (TireLoss loss : losses) {
        if (loss.to() == stop.visit().index()) {
          tires = goingDown(tires, loss, judgement);
        }
      }
      tires = HotTires.told(tires);
      stops.add(new StopAdvice(stop, tires, offers(stop, judgement), LegCautions.of(stop, tires)));
    }
    return new Advice(forecast, stops, judgement.tracks());
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
    List<OfferAdvice> offers = new ArrayList<>();
    for (LoadChange change : stop.visit().stop().loadChanges()) {
      if (change.offered()) {
        OfferJudge judge = new OfferJudge(forecaster, thresholds, judgement, stop.visit().index());
        offers.add(judge.judge(change));
      }
    }
    return offers;
  }

  /**
   * All tires at all stops, judged forward.
   *
   * @param tracks the tires with every setting that is asked for
   * @param byStop the tires stop by stop, in walking order
   */
  record Judgement(Map<WheelPosition, Track> tracks, List<List<TireAdvice>> byStop) {

    static Judgement of(
        Forecaster forecaster, Thresholds thresholds, @Nullable AdjustmentPlan plan) {
      Map<WheelPosition, Seat> seats = new LinkedHashMap<>();
      for (WheelPosition position : forecaster.trip().rig().positions()) {
        TirePlan ofTire = plan == null ? null : plan.of(position).orElse(null);
        TireJudge judge = new TireJudge(forecaster, thresholds, ofTire);
        forecaster.track(position).ifPresent(track -> seats.put(position, new Seat(track, judge)));
      }
      seats.forEach(
          (position, seat) ->
              seat.mate = seats.get(new WheelPosition(position.axle(), position.slot().mate())));
      CrewPlace crew = CrewPlace.of(forecaster.trip(), forecaster.itinerary());
      List<List<TireAdvice>> byStop = new ArrayList<>();
      int count = forecaster.itinerary().visits().size();
      for (int visit = 0; visit < count; visit++) {
        List<TireAdvice> tires = new ArrayList<>(seats.size());
        boolean over = crew.hasLeft(visit);
        for (Seat seat : seats.values()) {
          tires.add(seat.judge(visit, over));
        }
        byStop.add(tires);
      }
      Map<WheelPosition, Track> tracks = new LinkedHashMap<>();
      seats.forEach((position, seat) -> tracks.put(position, seat.track));
      return new Judgement(tracks, byStop);
    }
  }

  /** One tire while it is judged: its track with what was set so far, and the tire beside it. */
  private static final class Seat {
    private final TireJudge judge;
    private Track track;
    private @Nullable Seat mate;

    Seat(Track track, TireJudge judge) {
      this.track = track;
      this.judge = judge;
    }

    /**
     * Judges.
     *
     * @param over whether the rig has left the stop: then only what the log tells was done there
     */
    TireAdvice judge(int visit, boolean over) {
      List<TireAtStop> beside = mate == null ? List.of() : mate.track.stops();
      TireAdvice advice = judge.judge(visit, track.stops(), beside);
      SetFigure set = advice.set();
      if (set == null || over) {
        return advice;
      }
      track = track.with(visit, new Setting(set.figure().pascals()));
      return judge.afterSetting(visit, track.stops(), advice);
    }
  }
}

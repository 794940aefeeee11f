package dawngauge.forecast;

import dawngauge.ambient.AirSeries;
import dawngauge.ambient.Ambient;
import dawngauge.problem.Problem;
import dawngauge.problem.ProblemCode;
import dawngauge.rules.FittedTire;
import dawngauge.rules.Loads;
import dawngauge.trip.AxleRef;
import dawngauge.trip.Itinerary;
import dawngauge.trip.LoadChange;
import dawngauge.trip.LogEvent;
import dawngauge.trip.Trip;
import dawngauge.trip.WheelPosition;
import dawngauge.trip.WheelSlot;
import java.util.AbstractList;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Computes forecasts of one trip in one expectation of air. A forecast is a pure function of trip,
 * air, options and the settings that are taken as done.
 */
public final class Forecaster {

  private final Trip trip;
  private final Itinerary itinerary;
  private final Ambient ambient;
  private final ForecastOptions options;
  private final TripContext context;

  /**
   * Prepares what all tires share.
   *
   * @param trip the trip
   * @param itinerary its times
   * @param ambient the air along it
   * @param options how limits are judged
   */
  public Forecaster(Trip trip, Itinerary itinerary, Ambient ambient, ForecastOptions options) {
    this(trip, itinerary, ambient, options, new Loads(trip, null, 1));
  }

  private Forecaster(
      Trip trip, Itinerary itinerary, Ambient ambient, ForecastOptions options, Loads loads) {
    this.trip = trip;
    this.itinerary = itinerary;
    this.ambient = ambient;
    this.options = options;
    this.context = new TripContext(trip, itinerary, ambient, options, loads);
  }

  /** The same with a part (0 to 1) of a load that is only offered taken on. */
  public Forecaster taking(LoadChange offer, double part) {
    return new Forecaster(trip, itinerary, ambient, options, new Loads(trip, offer, part));
  }

  /** The same times and air for a trip whose tires or log are others. */
  public Forecaster with(Trip other) {
    return new Forecaster(other, itinerary, ambient, options);
  }

  /** The trip. */
  public Trip trip() {
    return trip;
  }

  /** Its times. */
  public Itinerary itinerary() {
    return itinerary;
  }

  /** How limits are judged. */
  public ForecastOptions options() {
    return options;
  }

  /** Loads along the trip. */
  public Loads loads() {
    return context.loads;
  }

  /** Follows the tire at a position; empty where none is fitted. */
  public Optional<Track> track(WheelPosition position) {
    return Track.of(context, position);
  }

  /**
   * The forecast of all tires.
   *
   * @param tracks the tire at each position
   */
  public Forecast forecast(Map<WheelPosition, Track> tracks) {
    List<List<TireAtStop>> fitted = new ArrayList<>();
    for (WheelPosition position : trip.rig().positions()) {
      Track track = tracks.get(position);
      if (track != null) {
        fitted.add(stops(position, tracks));
      }
    }
    List<StopForecast> stops = new ArrayList<>();
    for (Itinerary.Visit visit : itinerary.visits()) {
      int index = visit.index();
      List<TireAtStop> tires = new ArrayList<>(fitted.size());
      for (List<TireAtStop> track : fitted) {
        tires.add(track.get(index));
      }
      AirSeries series = ambient.seriesAt(index);
      Timeline timeline = context.timeline;
      int arrive = timeline.arrive[index];
      boolean known = series != null || (visit.passes() && !timeline.bridged[arrive]);
      stops.add(
          new StopForecast(
              visit,
              index < itinerary.drives().size() ? itinerary.drives().get(index) : null,
              known ? timeline.air[arrive] : Double.NaN,
              known ? timeline.air[timeline.leave[index]] : Double.NaN,
              series == null ? null : series.given(),
              timeline.elevation[arrive],
              airAheadKnown(index),
              visit.firstStartOfDay(),
              tires));
    }
    return new Forecast(trip, options, stops, problems(tracks));
  }

  /**
   * The tire at a position, one entry a stop, beside its dual mate where it has one.
   *
   * @param tracks the tire at each position
   */
  public static List<TireAtStop> stops(WheelPosition position, Map<WheelPosition, Track> tracks) {
    Track own = tracks.get(position);
    if (own == null) {
      return List.of();
    }
    WheelSlot slot = position.slot();
    Track mate =
        slot.mate() == slot ? null : tracks.get(new WheelPosition(position.axle(), slot.mate()));
    return mate == null ? own.stops() : besideEachOther(own.stops(), mate.stops());
  }

  private static List<TireAtStop> besideEachOther(List<TireAtStop> own, List<TireAtStop> mate) {
    return new AbstractList<>() {
      private final @Nullable TireAtStop[] known = new TireAtStop[own.size()];

      @Override
      public TireAtStop get(int visit) {
        TireAtStop at = known[visit];
        if (at == null) {
          at = own.get(visit).beside(mate.get(visit));
          known[visit] = at;
        }
        return at;
      }

      @Override
      public int size() {
        return own.size();
      }
    };
  }

  private boolean airAheadKnown(int index) {
    Timeline timeline = context.timeline;
    if (index + 1 >= timeline.arrive.length) {
      return false;
    }
    for (int node = timeline.leave[index]; node <= timeline.arrive[index + 1]; node++) {
      if (timeline.bridged[node] || Double.isNaN(timeline.air[node])) {
        return false;
      }
    }
    return true;
  }

  /** Whether nothing is forecast since its first reading was warm and no drive before it known. */
  private static boolean firstReadWarm(@Nullable Track track) {
    boolean warm = false;
    for (TireAtStop at : track == null ? List.<TireAtStop>of() : track.stops()) {
      if (!at.readings().isEmpty() || at.leaving() != null) {
        return false;
      }
      warm |= at.bare().stream().anyMatch(bare -> !bare.cold());
    }
    return warm;
  }

  private List<Problem> problems(Map<WheelPosition, Track> tracks) {
    Set<Problem> problems = new LinkedHashSet<>();
    Set<AxleRef> axles = new LinkedHashSet<>();
    for (WheelPosition position : trip.rig().positions()) {
      axles.add(position.axle());
      FittedTire tire = context.fittedAt(position);
      if (tire == null) {
        problems.add(Problem.of(ProblemCode.NO_TIRE_FITTED, position.words()));
        continue;
      }
      problems.addAll(tire.problems());
      if (firstReadWarm(tracks.get(position))) {
        problems.add(Problem.of(ProblemCode.FIRST_READING_NOT_COLD, position.words()));
      }
      if (!context.isRead(tire.tire().id())) {
        problems.add(Problem.of(ProblemCode.NO_READING, position.words()));
      }
    }
    for (LogEvent event : trip.log()) {
      if (event instanceof LogEvent.Reading reading && context.coldRule().wronglyCold(reading)) {
        problems.add(Problem.of(ProblemCode.READING_NOT_COLD, "", reading.tire()));
      }
    }
    for (AxleRef ref : axles) {
      Loads.Basis basis = context.loads.axle(0, ref).basis();
      if (basis == Loads.Basis.UNKNOWN) {
        problems.add(Problem.of(ProblemCode.NO_LOAD, ref.words(), ref.words()));
      } else if (basis == Loads.Basis.NOT_WEIGHED) {
        problems.add(Problem.of(ProblemCode.NOT_WEIGHED, ref.words(), ref.words()));
      }
    }
    return List.copyOf(problems);
  }
}

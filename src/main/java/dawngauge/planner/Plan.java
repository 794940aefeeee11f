package dawngauge.planner;

import dawngauge.advice.Adjustment;
import dawngauge.advice.AdjustmentPlan;
import dawngauge.advice.AdjustmentPlanner;
import dawngauge.advice.Advice;
import dawngauge.advice.Adviser;
import dawngauge.advice.Breakdown;
import dawngauge.advice.FigureNow;
import dawngauge.advice.GoNoGo;
import dawngauge.advice.PlanWishes;
import dawngauge.advice.Reach;
import dawngauge.advice.Reminder;
import dawngauge.advice.Reminders;
import dawngauge.advice.TireAdvice;
import dawngauge.ambient.Ambient;
import dawngauge.ambient.AmbientNeeds;
import dawngauge.ambient.AmbientSource;
import dawngauge.ambient.OldForecasts;
import dawngauge.ambient.TypedAmbient;
import dawngauge.ambient.WhatIf;
import dawngauge.fitness.Defect;
import dawngauge.fitness.FitnessCheck;
import dawngauge.forecast.Forecaster;
import dawngauge.forecast.HeatFit;
import dawngauge.forecast.ReadingCheck;
import dawngauge.forecast.TireLoss;
import dawngauge.forecast.Track;
import dawngauge.problem.Outcome;
import dawngauge.problem.Problem;
import dawngauge.problem.ProblemCode;
import dawngauge.review.TripReview;
import dawngauge.trip.Itinerary;
import dawngauge.trip.LogEdits;
import dawngauge.trip.LogEvent;
import dawngauge.trip.Trip;
import dawngauge.trip.WheelPosition;
import dawngauge.weights.ExpectedWeights;
import dawngauge.weights.TireNeed;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * All that follows from a trip, each part computed once, when it is first asked for. May be asked
 * on any thread; who needs it on the window's, computes it beside that first ({@link #computed}).
 */
public final class Plan {

  private final Trip trip;
  private final WhatIf whatIf;
  private final PlanRules rules;
  private final Lazy<Outcome<Forecaster>> forecaster;
  private final Lazy<Optional<Advice>> advice = new Lazy<>(this::advise);
  private final Lazy<List<Problem>> problems = new Lazy<>(this::collect);
  private final Lazy<List<Defect>> fitness = new Lazy<>(this::judge);
  private final Lazy<Optional<TripReview>> review = new Lazy<>(this::lookBack);

  /**
   * A plan of which nothing is computed yet.
   *
   * @param trip the trip as it is
   * @param whatIf another weather or another start
   */
  Plan(Trip trip, WhatIf whatIf, PlanRules rules) {
    this.trip = whatIf.start(trip);
    this.whatIf = whatIf;
    this.rules = rules;
    this.forecaster = new Lazy<>(this::follow);
  }

  /** A plan without a forecast. */
  private Plan(Trip trip, PlanRules rules, Problem why) {
    this.trip = trip;
    this.whatIf = WhatIf.NOTHING;
    this.rules = rules;
    this.forecaster = new Lazy<>(() -> Outcome.failed(List.of(why)));
  }

  /** A plan of a trip that has no forecast, and why. */
  static Plan none(Trip trip, PlanRules rules, Problem why) {
    return new Plan(trip, rules, why);
  }

  /** Another trip by the same rules, nothing else assumed. */
  private Plan of(Trip other) {
    return new Plan(other, WhatIf.NOTHING, rules);
  }

  /** The trip. */
  public Trip trip() {
    return trip;
  }

  /** This plan, its forecast, advice and fitness at hand. */
  public Plan computed() {
    problems();
    fitness();
    return this;
  }

  /** Forecast and what to do, or null where no time on the way is known. */
  public @Nullable Advice advice() {
    return advice.get().orElse(null);
  }

  /** Everything missing or assumed, each once. */
  public List<Problem> problems() {
    return problems.get();
  }

  /** Whether the rig may go: what is wrong with it, worst first. */
  public List<Defect> fitness() {
    return fitness.get();
  }

  /** What is missing without which load, pressure or times are not judged, a line each. */
  public List<String> gaps() {
    if (trip.rig().positions().isEmpty()) {
      return List.of("no axles and tires");
    }
    return problems().stream()
        .filter(problem -> problem.code().severity() == ProblemCode.Severity.GAP)
        .map(
            problem ->
                problem.where().isEmpty()
                    ? problem.text()
                    : problem.where() + ": " + problem.text())
        .distinct()
        .toList();
  }

  private Outcome<Forecaster> follow() {
    Set<Problem> told = new LinkedHashSet<>();
    Outcome<Itinerary> itinerary = Itinerary.of(trip);
    told.addAll(itinerary.problems());
    if (!itinerary.hasValue()) {
      return Outcome.failed(List.copyOf(told));
    }
    List<AmbientSource> sources = new ArrayList<>();
    sources.add(new TypedAmbient(trip));
    sources.addAll(rules.further());
    Outcome<Ambient> ambient = Ambient.of(AmbientNeeds.of(trip, itinerary.get()), sources);
    told.addAll(ambient.problems());
    Ambient air = ambient.get().under(whatIf, lastReading());
    return Outcome.of(
        new Forecaster(trip, itinerary.get(), air, rules.options()), List.copyOf(told));
  }

  private Optional<Forecaster> forecaster() {
    return forecaster.get().value();
  }

  /** Epoch seconds of the last reading; minus infinity where there is none. */
  private double lastReading() {
    return trip.log().stream()
        .filter(event -> event instanceof LogEvent.Reading)
        .mapToDouble(event -> event.time().instant().toEpochMilli() / 1000.0)
        .max()
        .orElse(Double.NEGATIVE_INFINITY);
  }

  private Optional<Advice> advise() {
    return forecaster()
        .map(known -> new Adviser(known, rules.thresholds(), followed(known)).advise());
  }

  private @Nullable AdjustmentPlan followed(Forecaster known) {
    return trip.plan().followed()
        ? new AdjustmentPlanner(known, rules.thresholds(), PlanWishes.of(trip)).plan()
        : null;
  }

  private List<Problem> collect() {
    Set<Problem> told = new LinkedHashSet<>(forecaster.get().problems());
    advice
        .get()
        .ifPresent(
            known -> {
              told.addAll(known.forecast().problems());
              told.addAll(Land.doubts(trip));
              told.addAll(OldForecasts.told(trip));
            });
    return List.copyOf(told);
  }

  /** Without a forecast, readings are judged as they stand. */
  private List<Defect> judge() {
    return List.copyOf(
        advice
            .get()
            .map(known -> GoNoGo.of(FitnessCheck.of(trip, rules.fitness(), false), known))
            .orElseGet(() -> FitnessCheck.of(trip, rules.fitness())));
  }

  /** What axles and hitch can be expected to carry by the trip's worksheet. */
  public ExpectedWeights expectedWeights() {
    return ExpectedWeights.of(trip, rules.options().reserve());
  }

  /** What the tires of each axle have to be, for the talk with a tire dealer. */
  public List<TireNeed> tireNeeds() {
    return TireNeed.all(trip, rules.options().reserve());
  }

  /** Where the fewest adjustments of the trip lie, where some time on the way is known. */
  public Outcome<Adjustment> adjustment() {
    return forecaster
        .get()
        .map(known -> Adjustment.of(known, rules.thresholds(), PlanWishes.of(trip)));
  }

  /** When the crew is to look at the tires on the rest of the trip; none without known times. */
  public List<Reminder> reminders() {
    return advice.get().map(known -> Reminders.of(known, rules.thresholds())).orElse(List.of());
  }

  /**
   * What a tire is to be set to at a stop; empty where nothing is known of it there.
   *
   * @param stop index of the stop
   */
  public Optional<FigureNow> figureNow(int stop, WheelPosition position) {
    return forecaster()
        .filter(known -> stop < known.itinerary().visits().size())
        .flatMap(known -> FigureNow.of(known, advice.get().orElseThrow(), position, stop));
  }

  /**
   * How far the air in the tires reaches from a stop; empty where no time on the way is known, and
   * at the last stop.
   *
   * @param stop index of the stop
   */
  public Optional<Reach> reach(int stop) {
    return forecaster()
        .filter(known -> stop < known.itinerary().visits().size() - 1)
        .map(known -> Reach.of(known, advice.get().orElseThrow(), stop));
  }

  /**
   * A tire is flat at a stop, or on the way from there; empty where none stands at the place.
   *
   * @param stop index of the stop
   */
  public Optional<Breakdown> breakdown(int stop, WheelPosition position) {
    return Breakdown.of(
        trip, stop, position, trip.route().lastDate().orElse(null), rules.options().reserve());
  }

  /** A flat tire on each axle, where the most load may be on it. */
  public List<Breakdown> breakdowns() {
    return Breakdown.ofEachAxle(
        trip, trip.route().lastDate().orElse(null), rules.options().reserve());
  }

  /**
   * Every reading at a stop against what was expected of it just before, in time order tire by
   * tire.
   *
   * @param stop index of the stop
   */
  public List<ReadingCheck> checks(int stop) {
    return tracks().values().stream()
        .filter(track -> stop < track.stops().size())
        .flatMap(track -> track.stops().get(stop).readings().stream())
        .toList();
  }

  /**
   * What would be advised of a tire at a stop with one reading of it more, the others as they are;
   * empty where no tire stands there, where no time is known, and where a plan is followed, which
   * would have to be made anew.
   *
   * @param stop index of the stop at which it is read
   */
  Optional<TireAdvice> with(LogEvent.Reading reading, WheelPosition position, int stop) {
    Advice known = advice();
    return known == null || trip.plan().followed()
        ? Optional.empty()
        : forecaster()
            .map(before -> before.with(LogEdits.with(trip, reading)))
            .flatMap(
                more -> new Adviser(more, rules.thresholds(), null).again(known, position, stop));
  }

  /** How much more or less than modelled each tire warms up, by its warm readings. */
  public List<HeatFit> heatFits() {
    return forecaster().map(HeatFit::of).orElse(List.of());
  }

  /** Tires that went down by their cold readings, beyond chance. */
  public List<TireLoss> losses() {
    return forecaster().map(known -> TireLoss.of(trip, tracks())).orElse(List.of());
  }

  /** The tires of the trip, nothing taken as set; none without known times. */
  private Map<WheelPosition, Track> tracks() {
    Map<WheelPosition, Track> tracks = new LinkedHashMap<>();
    forecaster()
        .ifPresent(
            known -> {
              for (WheelPosition position : trip.rig().positions()) {
                known.track(position).ifPresent(track -> tracks.put(position, track));
              }
            });
    return tracks;
  }

  /**
   * Why the tires of the trip read as they did; empty where no time is known. Known leaks are left
   * out of the forecast it is held against, so that the readings tell of them.
   */
  public Optional<TripReview> review() {
    return review.get();
  }

  private Optional<TripReview> lookBack() {
    return of(LookBack.withoutLeaks(trip)).forecaster().map(TripReview::of);
  }

  /**
   * The trip as it would have gone with sound tires, by {@link LookBack#sound}, nothing taken as
   * set; empty where no time is known.
   */
  public Optional<Advice> asSound() {
    Plan sound = of(LookBack.sound(trip, review.get().orElse(null)));
    return sound
        .forecaster()
        .map(
            known -> {
              Advice told = new Adviser(known, rules.thresholds(), null).advise();
              return new Advice(told.forecast(), told.stops(), sound.tracks());
            });
  }

  /**
   * The next trip of the rig, with the steady leaks that the review of this one found.
   *
   * @param keepsHeat whether it keeps how warm the tires ran
   */
  public Trip nextTrip(boolean keepsHeat) {
    return LookBack.next(trip, review.get().orElse(null), keepsHeat ? heatFits() : List.of());
  }

  /** The trip as it was planned at the last start of a day that the log knows of. */
  public Trip thisMorning() {
    return LookBack.thisMorning(trip);
  }
}

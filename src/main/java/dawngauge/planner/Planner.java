package dawngauge.planner;

import dawngauge.advice.Adjustment;
import dawngauge.advice.AdjustmentPlan;
import dawngauge.advice.AdjustmentPlanner;
import dawngauge.advice.Advice;
import dawngauge.advice.Adviser;
import dawngauge.advice.FigureNow;
import dawngauge.advice.GoNoGo;
import dawngauge.advice.PlanWishes;
import dawngauge.advice.Reminder;
import dawngauge.advice.Reminders;
import dawngauge.advice.Thresholds;
import dawngauge.ambient.AirChange;
import dawngauge.ambient.Ambient;
import dawngauge.ambient.AmbientNeeds;
import dawngauge.ambient.AmbientSource;
import dawngauge.ambient.MeasuredAir;
import dawngauge.ambient.OldForecasts;
import dawngauge.ambient.TypedAmbient;
import dawngauge.ambient.WeatherFill;
import dawngauge.ambient.WeatherService;
import dawngauge.ambient.WhatIf;
import dawngauge.exchange.GpxFile;
import dawngauge.exchange.ReadingsCsv;
import dawngauge.fitness.Defect;
import dawngauge.fitness.FitnessCheck;
import dawngauge.forecast.ForecastOptions;
import dawngauge.forecast.Forecaster;
import dawngauge.forecast.HeatFit;
import dawngauge.forecast.ReadingCheck;
import dawngauge.forecast.TireLoss;
import dawngauge.forecast.Track;
import dawngauge.geo.Coordinate;
import dawngauge.geo.Estimate;
import dawngauge.geo.Gazetteer;
import dawngauge.geo.Place;
import dawngauge.geo.PlaceList;
import dawngauge.geo.Spot;
import dawngauge.geo.TrackLine;
import dawngauge.geo.TrackPoint;
import dawngauge.geo.TracksTogether;
import dawngauge.problem.Outcome;
import dawngauge.problem.Problem;
import dawngauge.problem.ProblemCode;
import dawngauge.quantity.Entered;
import dawngauge.quantity.GaugePressure;
import dawngauge.quantity.QuantityKind;
import dawngauge.quantity.Unit;
import dawngauge.quantity.UnitSystem;
import dawngauge.review.LossFit;
import dawngauge.review.TireReview;
import dawngauge.review.TripReview;
import dawngauge.settings.Settings;
import dawngauge.trip.Itinerary;
import dawngauge.trip.LogEvent;
import dawngauge.trip.NextTrip;
import dawngauge.trip.Remarks;
import dawngauge.trip.RigEdits;
import dawngauge.trip.RouteEdits;
import dawngauge.trip.Stop;
import dawngauge.trip.StopEdits;
import dawngauge.trip.TableHead;
import dawngauge.trip.TableLayout;
import dawngauge.trip.TableReadings;
import dawngauge.trip.Tire;
import dawngauge.trip.Trip;
import dawngauge.trip.TripSize;
import dawngauge.trip.WheelPosition;
import dawngauge.tripfile.SafeFile;
import dawngauge.tripfile.TextLengths;
import dawngauge.tripfile.TripFile;
import dawngauge.weights.ExpectedWeights;
import dawngauge.weights.TireNeed;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** What the window and the command line ask for. */
public final class Planner {

  /** A pressure as a trip file has it: number and unit between quotation marks. */
  private static final Pattern PRESSURE =
      Pattern.compile(
          "\"[0-9.]+\\s*("
              + QuantityKind.GAUGE_PRESSURE.units().stream()
                  .flatMap(unit -> unit.spellings().stream())
                  .collect(Collectors.joining("|"))
              + ")\"");

  /** Changes of the air below this, in kelvin, are no news: half the error of a forecast day. */
  private static final double LEAST_CHANGE = 2;

  /** Longest result that is read again, in bytes; ours. */
  private static final long LONGEST_RESULT = 8 << 20;

  /** Nearer to the middle of a place than this, in meters, a point is in it; ours. */
  private static final double IN_PLACE = 3000;

  private final Settings settings;
  private final List<AmbientSource> further;

  /**
   * A planner.
   *
   * @param settings the user's choices
   * @param further where air is asked for beyond what stands in the trip, in order
   */
  public Planner(Settings settings, List<AmbientSource> further) {
    this.settings = settings;
    this.further = List.copyOf(further);
  }

  /** Reads a trip file. */
  public Outcome<Trip> open(Path file) {
    return TripFile.read(file);
  }

  /** Reads a trip from a stream, such as standard input. */
  public Outcome<Trip> open(InputStream stream) {
    return TripFile.readFrom(stream);
  }

  /**
   * Writes a result to a file; see {@link SafeFile#save}.
   *
   * @param read the file that the trip was read from, which is never replaced, or null
   * @param replace whether another file that exists may be replaced
   * @return what went wrong, if anything
   */
  public Optional<Problem> write(String text, Path file, @Nullable Path read, boolean replace) {
    return isTrip(file, read).or(() -> SafeFile.save(text, file, replace));
  }

  /** The same with a result in bytes. */
  public Optional<Problem> write(byte[] result, Path file, @Nullable Path read, boolean replace) {
    return isTrip(file, read).or(() -> SafeFile.save(ByteBuffer.wrap(result), file, replace));
  }

  private static Optional<Problem> isTrip(Path file, @Nullable Path read) {
    return read != null && SafeFile.same(read, file)
        ? Optional.of(Problem.of(ProblemCode.IS_THE_TRIP_FILE, "", file.toString()))
        : Optional.empty();
  }

  /** What stands in a file that is to be brought up to date; empty where there is none. */
  public Optional<Outcome<String>> existing(Path file) {
    return SafeFile.read(file, LONGEST_RESULT);
  }

  /**
   * Writes a trip file, aside and moved into place. A trip that could not be opened again, such as
   * one whose typed times run backwards, is not written: what stood there stays.
   *
   * @return what kept it from being written; empty if it was
   */
  public List<Problem> save(Trip trip, Path file) {
    Outcome<Trip> again = TripFile.parse(TripFile.text(trip));
    return again.hasValue()
        ? TripFile.write(trip, file).map(List::of).orElse(List.of())
        : again.problems();
  }

  /** A fingerprint of what stands in a file; empty where it cannot be read. */
  public Optional<String> fingerprint(Path file) {
    return SafeFile.fingerprint(file);
  }

  /**
   * Places by name, best first.
   *
   * @param text what was typed
   * @param near a place on the route, or null; nearer ones come first
   * @param most how many at the most
   */
  public List<Place> places(String text, @Nullable Coordinate near, int most) {
    return Gazetteer.load().search(text, near, most);
  }

  /** Reads a list of places, one a line; see {@link PlaceList#read}. */
  public Outcome<PlaceList> placeList(
      String text, @Nullable Coordinate near, Map<String, Spot> chosen) {
    return PlaceList.read(Gazetteer.load(), text, near, chosen);
  }

  /**
   * Lines of somebody else's GPX file, as {@link TracksTogether} offers them; the problems tell
   * what was left out of them, heights that cannot be those of the ground among it.
   */
  public Outcome<List<TrackLine>> tracks(Path file) {
    Outcome<List<TrackLine>> read = GpxFile.open(file);
    if (!read.hasValue()) {
      return read;
    }
    List<Heights> checked = read.get().stream().map(Heights::checked).toList();
    List<Problem> problems = new ArrayList<>(read.problems());
    checked.forEach(heights -> problems.addAll(heights.problems()));
    return Outcome.of(TracksTogether.of(checked.stream().map(Heights::line).toList()), problems);
  }

  /** How a table of readings begins. */
  public Outcome<TableHead> table(Path file) {
    return ReadingsCsv.head(file);
  }

  /** Reads a table of readings for a trip; nothing of the trip is changed. */
  public Outcome<TableReadings> readings(
      Path file, TableHead head, TableLayout layout, Trip trip, TableReadings.Progress progress) {
    Outcome<Itinerary> itinerary = Itinerary.of(trip);
    return itinerary.hasValue()
        ? ReadingsCsv.read(file, head, layout, trip, itinerary.get(), progress)
        : Outcome.failed(itinerary.problems());
  }

  /**
   * The units of a trip: those in which most of its pressures are written; US where it has none.
   */
  public UnitSystem units(Trip trip) {
    Map<Boolean, Long> pressures =
        PRESSURE
            .matcher(TripFile.text(trip))
            .results()
            .collect(
                Collectors.partitioningBy(
                    found -> found.group(1).equals(Unit.PSI.symbol()), Collectors.counting()));
    return pressures.getOrDefault(false, 0L) > pressures.getOrDefault(true, 0L)
        ? UnitSystem.SI
        : UnitSystem.US;
  }

  /** A trip with names and notes that are too long shortened, as it is shown. */
  public Trip shown(Trip trip) {
    return TextLengths.shortened(trip);
  }

  /** Why an edit is refused that brings too much, or texts that are too long; empty where not. */
  public List<Problem> refused(Trip before, Trip after) {
    List<Problem> over = TripSize.over(after);
    return over.isEmpty() ? TextLengths.refused(before, after) : over;
  }

  /** A trip's route for other programs, as GPX. */
  public String gpx(Trip trip) {
    return GpxFile.write(trip);
  }

  /** The points of a line that could become stops, named after the nearest place where nameless. */
  public List<Spot> spots(TrackLine line, List<TrackLine.Offer> offers) {
    List<Spot> spots = new ArrayList<>();
    for (TrackLine.Offer offer : offers) {
      TrackPoint point = line.points().get(offer.index());
      Spot spot = spotAt(point.at());
      spots.add(
          point.name().isEmpty()
              ? spot
              : new Spot(point.name(), spot.at(), spot.elevation(), spot.zone()));
    }
    return spots;
  }

  /** A point as a stop: named after the nearest place, with height and zone as estimates. */
  public Spot spotAt(Coordinate at) {
    Optional<Estimate> estimate = estimateAt(at);
    String name =
        estimate
            .map(near -> (near.away().meters() < IN_PLACE ? "" : "near ") + near.nearest().label())
            .orElse("a point on the way");
    return Spot.of(name, at, estimate);
  }

  /** A trip with one stop elsewhere; one that was named after its point is named anew. */
  public Trip movedTo(Trip trip, int index, Coordinate to) {
    Stop stop = trip.route().stops().get(index);
    Coordinate before = stop.coordinate();
    boolean named = before != null && spotAt(before).name().equals(stop.place());
    Stop moved = StopEdits.at(stop, to, estimateAt(to));
    return RouteEdits.at(trip, index, named ? moved.withPlace(spotAt(to).name()) : moved);
  }

  /** Rough elevation and time zone of a place, to be shown as an estimate. */
  public Optional<Estimate> estimateAt(Coordinate place) {
    return Gazetteer.load().estimateAt(place);
  }

  /** Whether the rig may go: what is wrong with it, worst first. */
  public List<Defect> fitness(Trip trip) {
    return plan(trip).fitness();
  }

  /** What axles and hitch can be expected to carry by the trip's worksheet. */
  public ExpectedWeights expectedWeights(Trip trip) {
    return ExpectedWeights.of(trip, settings.reserve().value());
  }

  /** What the tires of each axle have to be, for the talk with a tire dealer. */
  public List<TireNeed> tireNeeds(Trip trip) {
    return TireNeed.all(trip, settings.reserve().value());
  }

  /** What is missing without which load, pressure or times are not judged, a line each. */
  public List<String> gaps(Trip trip) {
    if (trip.rig().positions().isEmpty()) {
      return List.of("no axles and tires");
    }
    return plan(trip).problems().stream()
        .filter(problem -> problem.code().severity() == ProblemCode.Severity.GAP)
        .map(
            problem ->
                problem.where().isEmpty()
                    ? problem.text()
                    : problem.where() + ": " + problem.text())
        .distinct()
        .toList();
  }

  /** The same without a forecast: readings are judged as they stand. */
  private List<Defect> fitnessAlone(Trip trip) {
    return FitnessCheck.of(trip, fitnessOptions());
  }

  private FitnessCheck.Options fitnessOptions() {
    return new FitnessCheck.Options(
        settings.reserve().value(), settings.confidence().value(), settings.dualsApart());
  }

  /** A trip as its file has it. */
  public String text(Trip trip) {
    return TripFile.text(trip);
  }

  /** Text of a starter trip file, whose notes say where each figure is read. */
  public String starter() {
    return TripFile.starter();
  }

  /** The starter as a trip. */
  public Outcome<Trip> starterTrip() {
    return TripFile.parse(starter());
  }

  /**
   * A first haul as a trip, with typical temperatures where none were entered; empty until both
   * places are known.
   */
  public Optional<Trip> first(FirstHaul haul, LocalDate today) {
    return haul.trip(today).map(this::withoutGaps);
  }

  /** Forecast and advice for a trip. */
  public PlannedTrip plan(Trip trip) {
    return plan(trip, WhatIf.NOTHING);
  }

  /** Forecast and advice for a trip under another weather or with another start. */
  public PlannedTrip plan(Trip asItIs, WhatIf whatIf) {
    Trip trip = whatIf.start(asItIs);
    Outcome<Forecaster> forecaster = forecaster(trip, whatIf);
    Set<Problem> problems = new LinkedHashSet<>(forecaster.problems());
    if (!forecaster.hasValue()) {
      return new PlannedTrip(trip, null, List.copyOf(problems), fitnessAlone(trip));
    }
    Advice advice =
        new Adviser(forecaster.get(), thresholds(), followed(trip, forecaster.get())).advise();
    problems.addAll(advice.forecast().problems());
    problems.addAll(Land.doubts(trip));
    problems.addAll(OldForecasts.told(trip));
    List<Defect> fitness = GoNoGo.of(FitnessCheck.of(trip, fitnessOptions(), false), advice);
    return new PlannedTrip(trip, advice, List.copyOf(problems), fitness);
  }

  private @Nullable AdjustmentPlan followed(Trip trip, Forecaster forecaster) {
    return trip.plan().followed()
        ? new AdjustmentPlanner(forecaster, thresholds(), PlanWishes.of(trip)).plan()
        : null;
  }

  /** Where the fewest adjustments of a trip lie, where some time on the way is known. */
  public Outcome<Adjustment> adjustment(Trip trip) {
    return forecaster(trip, WhatIf.NOTHING)
        .map(forecaster -> Adjustment.of(forecaster, thresholds(), PlanWishes.of(trip)));
  }

  private Outcome<Forecaster> forecaster(Trip trip, WhatIf whatIf) {
    Set<Problem> problems = new LinkedHashSet<>();
    Outcome<Itinerary> itinerary = Itinerary.of(trip);
    problems.addAll(itinerary.problems());
    if (!itinerary.hasValue()) {
      return Outcome.failed(List.copyOf(problems));
    }
    AmbientNeeds needs = AmbientNeeds.of(trip, itinerary.get());
    List<AmbientSource> sources = new ArrayList<>();
    sources.add(new TypedAmbient(trip));
    sources.addAll(further);
    Outcome<Ambient> ambient = Ambient.of(needs, sources);
    problems.addAll(ambient.problems());
    Ambient air = ambient.get().under(whatIf, lastReading(trip));
    return Outcome.of(new Forecaster(trip, itinerary.get(), air, options()), List.copyOf(problems));
  }

  /**
   * What a tire is to be set to at a stop; empty where nothing is known of it there.
   *
   * @param stop index of the stop
   */
  public Optional<FigureNow> figureNow(Trip trip, int stop, WheelPosition position) {
    return forecaster(trip, WhatIf.NOTHING)
        .value()
        .filter(forecaster -> stop < forecaster.itinerary().visits().size())
        .flatMap(
            forecaster -> {
              Advice advice =
                  new Adviser(forecaster, thresholds(), followed(trip, forecaster)).advise();
              return FigureNow.of(forecaster, advice, position, stop);
            });
  }

  /**
   * Every reading at a stop against what was expected of it just before, in time order tire by
   * tire.
   *
   * @param stop index of the stop
   */
  public List<ReadingCheck> checks(Trip trip, int stop) {
    List<ReadingCheck> checks = new ArrayList<>();
    Forecaster forecaster = forecaster(trip, WhatIf.NOTHING).valueOrNull();
    if (forecaster == null || stop >= forecaster.itinerary().visits().size()) {
      return checks;
    }
    for (WheelPosition position : trip.rig().positions()) {
      forecaster
          .track(position)
          .ifPresent(track -> checks.addAll(track.stops().get(stop).readings()));
    }
    return checks;
  }

  /** How much more or less than modelled each tire warms up, by its warm readings. */
  public List<HeatFit> heatFits(Trip trip) {
    return forecaster(trip, WhatIf.NOTHING).value().map(HeatFit::of).orElse(List.of());
  }

  /** Tires that went down by their cold readings, beyond chance. */
  public List<TireLoss> losses(Trip trip) {
    Forecaster forecaster = forecaster(trip, WhatIf.NOTHING).valueOrNull();
    if (forecaster == null) {
      return List.of();
    }
    return TireLoss.of(trip, tracks(trip, forecaster));
  }

  /**
   * Why the tires of a trip read as they did; empty where no time is known. Known leaks are left
   * out of the forecast it is held against, so that the readings tell of them.
   */
  public Optional<TripReview> review(Trip trip) {
    return forecaster(withoutLeaks(trip), WhatIf.NOTHING).value().map(TripReview::of);
  }

  private static Trip withoutLeaks(Trip trip) {
    Trip without = trip;
    for (Tire tire : trip.rig().tires()) {
      without = RigEdits.withTire(without, tire.withLossPerDay(null));
    }
    return without;
  }

  /**
   * A trip as it would have gone with sound tires: by the first reading of each tire that was not
   * noted wrongly and by what was set, nothing else taken as set; empty where no time is known. In
   * the place of each later reading stands a note, so that the forecast has its moment.
   */
  public Optional<Advice> asSound(Trip trip) {
    Set<LogEvent> slips = new HashSet<>();
    review(trip)
        .ifPresent(review -> review.slips().forEach(slip -> slips.add(slip.check().reading())));
    Set<String> read = new HashSet<>();
    List<LogEvent> log = new ArrayList<>();
    for (LogEvent event : trip.log()) {
      boolean later =
          event instanceof LogEvent.Reading reading
              && (slips.contains(event) || !read.add(reading.tire()));
      log.add(later ? new LogEvent.Note(event.time(), "read", Remarks.NONE) : event);
    }
    Trip sound = withoutLeaks(trip).withLog(log);
    return forecaster(sound, WhatIf.NOTHING)
        .value()
        .map(
            forecaster -> {
              Advice advice = new Adviser(forecaster, thresholds(), null).advise();
              return new Advice(advice.forecast(), advice.stops(), tracks(sound, forecaster));
            });
  }

  /** The tires of a trip, nothing taken as set. */
  private static Map<WheelPosition, Track> tracks(Trip trip, Forecaster forecaster) {
    Map<WheelPosition, Track> tracks = new LinkedHashMap<>();
    for (WheelPosition position : trip.rig().positions()) {
      forecaster.track(position).ifPresent(track -> tracks.put(position, track));
    }
    return tracks;
  }

  /** The next trip of a rig, with the steady leaks that the review of this one found. */
  public Trip nextTrip(Trip trip) {
    Map<String, Entered<GaugePressure>> leaks = new LinkedHashMap<>();
    for (TireReview tire : review(trip).map(TripReview::tires).orElse(List.of())) {
      if (tire.lostAir() && tire.fit().kind() != LossFit.Kind.ONCE) {
        double tenths = Math.rint(new GaugePressure(tire.perDay()).in(Unit.PSI) * 10) / 10;
        leaks.put(tire.tire(), Entered.of(QuantityKind.GAUGE_PRESSURE, tenths + " psi"));
      }
    }
    return NextTrip.after(trip, leaks);
  }

  /** The trip as it was planned at the last start of a day that the log knows of. */
  public Trip thisMorning(Trip trip) {
    Itinerary itinerary = Itinerary.of(trip).valueOrNull();
    if (itinerary == null || trip.log().isEmpty()) {
      return trip;
    }
    Instant last = trip.log().get(trip.log().size() - 1).time().instant();
    Instant morning = itinerary.visits().get(0).leave();
    for (Itinerary.Visit visit : itinerary.visits()) {
      if (visit.firstStartOfDay() && !visit.leave().isAfter(last)) {
        morning = visit.leave();
      }
    }
    Instant cut = morning;
    return trip.withLog(
        trip.log().stream().filter(event -> event.time().instant().isBefore(cut)).toList());
  }

  /** When the crew is to look at the tires on the rest of a planned trip. */
  public List<Reminder> reminders(Advice advice) {
    return Reminders.of(advice, thresholds());
  }

  /**
   * Asks a weather service for the air along a trip and fills it in; see {@link WeatherFill}. A
   * trip without times, or with nothing to ask for, comes back as it is.
   */
  public WeatherFill.Result weather(
      Trip trip, WeatherService service, WeatherFill.Progress progress) {
    Outcome<Itinerary> itinerary = Itinerary.of(trip);
    service.begin();
    return itinerary.hasValue()
        ? WeatherFill.fill(trip, itinerary.get(), service::forecast, progress)
        : new WeatherFill.Result(trip, List.of(), itinerary.problems(), 0, 0);
  }

  /** Fills a trip with typical temperatures alone, where a service cannot or may not be asked. */
  public WeatherFill.Result typical(Trip trip) {
    Outcome<Itinerary> itinerary = Itinerary.of(trip);
    return itinerary.hasValue()
        ? WeatherFill.typical(trip, itinerary.get())
        : new WeatherFill.Result(trip, List.of(), itinerary.problems(), 0, 0);
  }

  /** A trip with typical air at the stops that have none, such as those just pasted. */
  public Trip withoutGaps(Trip trip) {
    return Itinerary.of(trip)
        .value()
        .map(itinerary -> WeatherFill.gaps(trip, itinerary))
        .orElse(trip);
  }

  /** The air that was measured at the stops that the rig has left; none without known times. */
  public List<MeasuredAir> measured(
      Trip trip, WeatherService service, Instant now, WeatherFill.Progress progress) {
    service.begin();
    return Itinerary.of(trip)
        .value()
        .map(itinerary -> MeasuredAir.of(trip, itinerary, service::observed, now, progress))
        .orElse(List.of());
  }

  /** Stops whose air changed by 2 K or more since a weather service was asked before. */
  public List<AirChange> airChanges(Trip trip) {
    return Itinerary.of(trip)
        .value()
        .map(itinerary -> AirChange.since(trip, itinerary, LEAST_CHANGE))
        .orElse(List.of());
  }

  /** Epoch seconds of the last reading; minus infinity where there is none. */
  private static double lastReading(Trip trip) {
    return trip.log().stream()
        .filter(event -> event instanceof LogEvent.Reading)
        .mapToDouble(event -> event.time().instant().toEpochMilli() / 1000.0)
        .max()
        .orElse(Double.NEGATIVE_INFINITY);
  }

  private ForecastOptions options() {
    return new ForecastOptions(settings.confidence().value(), settings.reserve().value());
  }

  private Thresholds thresholds() {
    return new Thresholds(
        settings.recheckChange().pascals(),
        settings.recheckChangePart().value(),
        settings.dualsApart().pascals(),
        settings.planUnderAim().value(),
        settings.shortStopMinutes() * 60.0);
  }
}

package dawngauge.advice;

import dawngauge.ambient.Ambient;
import dawngauge.ambient.AmbientNeeds;
import dawngauge.ambient.TypedAmbient;
import dawngauge.forecast.ForecastOptions;
import dawngauge.forecast.Forecaster;
import dawngauge.quantity.Entered;
import dawngauge.quantity.GaugePressure;
import dawngauge.quantity.Mass;
import dawngauge.quantity.Quantity;
import dawngauge.quantity.QuantityKind;
import dawngauge.quantity.Unit;
import dawngauge.tire.TireClass;
import dawngauge.tire.TireSpec;
import dawngauge.trip.Air;
import dawngauge.trip.AmbientEntry;
import dawngauge.trip.Axle;
import dawngauge.trip.AxleRef;
import dawngauge.trip.Gauge;
import dawngauge.trip.Itinerary;
import dawngauge.trip.LabelFitment;
import dawngauge.trip.Leg;
import dawngauge.trip.LoadChange;
import dawngauge.trip.LogEvent;
import dawngauge.trip.Provenance;
import dawngauge.trip.ReadingState;
import dawngauge.trip.Remarks;
import dawngauge.trip.Rig;
import dawngauge.trip.Route;
import dawngauge.trip.ScaleTicket;
import dawngauge.trip.Spare;
import dawngauge.trip.Stop;
import dawngauge.trip.Tire;
import dawngauge.trip.Trip;
import dawngauge.trip.TypedTime;
import dawngauge.trip.Vehicle;
import dawngauge.trip.WheelPosition;
import dawngauge.trip.WheelSlot;
import java.time.Duration;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * One axle of invented tires on a short invented haul. Built from the texts a person would type;
 * everything has a default: special trailer tires with a rated 3,520 lb at 80 psi, label 80 psi, no
 * speed symbol, an axle weighed at 5,000 lb with even sides, sea level, no air anywhere. The trip
 * starts at 06:00 on 6 April 2027, UTC.
 */
final class Scenario {

  static final ZonedDateTime START = ZonedDateTime.parse("2027-04-06T06:00Z[UTC]");
  static final String GAUGE = "stick";
  private static final String SPARE = "spare";
  static final AxleRef AXLE = new AxleRef("trailer", 1);

  static final Thresholds THRESHOLDS =
      new Thresholds(
          GaugePressure.of(5, Unit.PSI).pascals(),
          0.08,
          GaugePressure.of(5, Unit.PSI).pascals(),
          0.1,
          300);

  /** A stop as typed. */
  private static final class Place {
    private final String name;
    private final Duration stay;
    private Duration driveAfter = Duration.ofHours(2);
    private String milesAfter = "100 mi";
    private String topAfter = "65 mph";
    private @Nullable String elevation = "0 ft";
    private Air air = Air.NONE;
    private final List<AmbientEntry.Hourly.At> temperatures = new ArrayList<>();
    private @Nullable String steady;
    private final List<LoadChange> loads = new ArrayList<>();

    private Place(String name, Duration stay) {
      this.name = name;
      this.stay = stay;
    }
  }

  private final List<Place> places = new ArrayList<>();
  private final List<LogEvent> log = new ArrayList<>();
  private final Map<WheelSlot, Set<Tire.Damage>> damage = new EnumMap<>(WheelSlot.class);
  private final Map<WheelSlot, String> tread = new EnumMap<>(WheelSlot.class);
  private final Map<WheelSlot, String> leaks = new EnumMap<>(WheelSlot.class);
  private boolean dual;
  private Vehicle.Kind kind = Vehicle.Kind.TRAILER;
  private TireClass tireClass = TireClass.SPECIAL_TRAILER;
  private @Nullable String label = "80 psi";
  private @Nullable String gawr = "7000 lb";
  private @Nullable String axleWeight = "5000 lb";
  private @Nullable String rated = "3520 lb";
  private @Nullable String ratedAt = "80 psi";
  private @Nullable String maxCold;
  private @Nullable String symbol;
  private @Nullable String wheelMaxPressure;
  private @Nullable String wheelMaxLoad;
  private @Nullable String leftShare = "50 %";
  private @Nullable String compressor;
  private boolean spareAboard;
  private @Nullable String spareWheelMaxLoad;
  private boolean tandem;
  private boolean flatBehind;
  private String gaugeStep = "1 psi";
  private Gauge.Kind gaugeKind = Gauge.Kind.OPEN;

  static Scenario from(String place, @Nullable String temperature) {
    Scenario scenario = new Scenario();
    Place first = new Place(place, Duration.ZERO);
    first.steady = temperature;
    scenario.places.add(first);
    return scenario;
  }

  private Place last() {
    return places.get(places.size() - 1);
  }

  /** The next stop, by default 100 miles and two hours on. */
  Scenario to(String place, double stayHours, @Nullable String temperature) {
    Place next = new Place(place, Duration.ofSeconds(Math.round(stayHours * 3600)));
    next.steady = temperature;
    places.add(next);
    return this;
  }

  /** Drive to the stop named last, in hours at 50 mph. */
  Scenario drive(double hours) {
    Place before = places.get(places.size() - 2);
    before.driveAfter = Duration.ofSeconds(Math.round(hours * 3600));
    before.milesAfter = hours * 50 + " mi";
    return this;
  }

  /** Top speed on the way to the stop named last. */
  Scenario top(String speed) {
    places.get(places.size() - 2).topAfter = speed;
    return this;
  }

  Scenario elevation(@Nullable String text) {
    last().elevation = text;
    return this;
  }

  Scenario air() {
    last().air = Air.YES;
    return this;
  }

  Scenario airUpTo(String top) {
    last().air = new Air(true, pressure(top));
    return this;
  }

  /** Temperature at the stop named last, so many hours after the start of the trip. */
  Scenario at(double hours, String temperature) {
    last()
        .temperatures
        .add(
            new AmbientEntry.Hourly.At(
                time(hours), Entered.of(QuantityKind.TEMPERATURE, temperature)));
    return this;
  }

  Scenario load(String what, String weight, boolean offered) {
    last()
        .loads
        .add(
            new LoadChange(
                what,
                Entered.of(QuantityKind.MASS, weight),
                LoadChange.Source.WEIGHED,
                Map.of(AXLE, Entered.of(QuantityKind.RATIO, "100 %")),
                null,
                offered,
                Remarks.NONE));
    return this;
  }

  Scenario dual() {
    dual = true;
    tireClass = TireClass.LIGHT_TRUCK;
    rated = "3000 lb";
    return weighing("8000 lb").gawr("12000 lb");
  }

  Scenario truck() {
    kind = Vehicle.Kind.TRUCK;
    tireClass = TireClass.LIGHT_TRUCK;
    return this;
  }

  Scenario label(@Nullable String cold) {
    label = cold;
    return this;
  }

  Scenario gawr(@Nullable String rating) {
    gawr = rating;
    return this;
  }

  /** Weight of the axle, shared evenly; null where it was not weighed. */
  Scenario weighing(@Nullable String weight) {
    axleWeight = weight;
    return this;
  }

  Scenario rated(@Nullable String load, @Nullable String cold) {
    rated = load;
    ratedAt = cold;
    return this;
  }

  Scenario maxCold(String cold) {
    maxCold = cold;
    return this;
  }

  Scenario symbol(String letter) {
    symbol = letter;
    return this;
  }

  Scenario wheelMax(@Nullable String cold, @Nullable String load) {
    wheelMaxPressure = cold;
    wheelMaxLoad = load;
    return this;
  }

  Scenario sidesUnknown() {
    leftShare = null;
    return this;
  }

  Scenario compressor(String top) {
    compressor = top;
    return this;
  }

  /** A spare like the other tires, on a wheel that may carry a load; null for any. */
  Scenario spare(@Nullable String wheelMaxLoad) {
    spareAboard = true;
    spareWheelMaxLoad = wheelMaxLoad;
    return this;
  }

  /** A second axle close behind, like the first and of the same weight. */
  Scenario tandem() {
    tandem = true;
    return this;
  }

  /** The same with its left tire flat. */
  Scenario flatBehind() {
    flatBehind = true;
    return tandem();
  }

  Scenario gaugeStep(String step) {
    gaugeStep = step;
    return this;
  }

  Scenario sealedGauge() {
    gaugeKind = Gauge.Kind.SEA_LEVEL_SUBTRACTED;
    return this;
  }

  Scenario damaged(WheelSlot slot, Tire.Damage what) {
    damage.computeIfAbsent(slot, key -> EnumSet.noneOf(Tire.Damage.class)).add(what);
    return this;
  }

  Scenario tread(WheelSlot slot, String depth) {
    tread.put(slot, depth);
    return this;
  }

  Scenario leak(WheelSlot slot, String perDay) {
    leaks.put(slot, perDay);
    return this;
  }

  /** Cold readings of all tires when the trip starts. */
  Scenario allRead(String figure) {
    for (WheelSlot slot : WheelSlot.of(dual)) {
      read(slot, 0, figure, ReadingState.COLD);
      if (tandem) {
        log.add(reading("2" + slot.letters(), 0, figure, ReadingState.COLD));
      }
    }
    return this;
  }

  Scenario read(WheelSlot slot, double hours, String figure, ReadingState state) {
    log.add(reading(slot.letters(), hours, figure, state));
    return this;
  }

  private static LogEvent reading(String tire, double hours, String figure, ReadingState state) {
    return new LogEvent.Reading(
        time(hours), tire, pressure(figure), GAUGE, state, null, null, Remarks.NONE);
  }

  Scenario set(WheelSlot slot, double hours, String figure) {
    log.add(
        new LogEvent.Adjustment(
            time(hours), slot.letters(), null, pressure(figure), GAUGE, Remarks.NONE));
    return this;
  }

  /** The spare goes on. */
  Scenario changed(WheelSlot slot, double hours) {
    log.add(
        new LogEvent.TireChange(
            time(hours), new WheelPosition(AXLE, slot), slot.letters(), SPARE, Remarks.NONE));
    return this;
  }

  Advice advise() {
    Forecaster forecaster = forecaster();
    return new Adviser(forecaster, THRESHOLDS).advise();
  }

  List<Reminder> reminders() {
    return Reminders.of(advise(), THRESHOLDS);
  }

  /** Advice under the plan with no wishes. */
  Advice follow() {
    Forecaster forecaster = forecaster();
    return new Adviser(forecaster, THRESHOLDS, adjust().plan()).advise();
  }

  Adjustment adjust() {
    return adjust(PlanWishes.NONE);
  }

  Adjustment adjust(PlanWishes wishes) {
    return Adjustment.of(forecaster(), THRESHOLDS, wishes);
  }

  Forecaster forecaster() {
    Trip trip = trip();
    Itinerary itinerary = Itinerary.of(trip).get();
    AmbientNeeds needs = AmbientNeeds.of(trip, itinerary);
    Ambient ambient = Ambient.of(needs, List.of(new TypedAmbient(trip))).get();
    return new Forecaster(trip, itinerary, ambient, new ForecastOptions(0.9, 0.1));
  }

  private Trip trip() {
    log.sort((a, b) -> a.time().instant().compareTo(b.time().instant()));
    return new Trip("invented", rig(), route(), ambient(), log, Remarks.NONE);
  }

  private Rig rig() {
    TireSpec spec =
        new TireSpec(
            "tire",
            "X1",
            tireClass,
            null,
            null,
            null,
            null,
            symbol,
            optional(QuantityKind.MASS, rated),
            dual ? optional(QuantityKind.MASS, rated) : null,
            optional(QuantityKind.GAUGE_PRESSURE, ratedAt),
            optional(QuantityKind.GAUGE_PRESSURE, maxCold),
            null);
    Map<WheelSlot, String> fitted = new LinkedHashMap<>();
    List<Tire> tires = new ArrayList<>();
    for (WheelSlot slot : WheelSlot.of(dual)) {
      fitted.put(slot, slot.letters());
      tires.add(
          new Tire(
              slot.letters(),
              "tire",
              null,
              optional(QuantityKind.TREAD_DEPTH, tread.get(slot)),
              1,
              optional(QuantityKind.GAUGE_PRESSURE, leaks.get(slot)),
              damage.getOrDefault(slot, Set.of()),
              Remarks.NONE));
    }
    List<Axle> axles = new ArrayList<>();
    axles.add(axle(fitted));
    if (tandem) {
      axles.add(axle(behind(fitted, tires)));
    }
    if (spareAboard) {
      tires.add(plain(SPARE, Set.of()));
    }
    List<ScaleTicket> tickets =
        axleWeight == null
            ? List.of()
            : List.of(
                new ScaleTicket(
                    null,
                    true,
                    null,
                    List.of(
                            platform(AXLE, axleWeight),
                            platform(new AxleRef("trailer", 2), axleWeight))
                        .subList(0, axles.size()),
                    List.of(),
                    Remarks.NONE));
    return new Rig(
        "rig",
        List.of(new Vehicle("trailer", "t", kind, null, axles, Remarks.NONE)),
        List.of(spec),
        tires,
        spareAboard
            ? List.of(
                new Spare(
                    SPARE,
                    List.of(),
                    null,
                    optional(QuantityKind.MASS, spareWheelMaxLoad),
                    Remarks.NONE))
            : List.of(),
        List.of(new Gauge(GAUGE, gaugeKind, null, null, pressure(gaugeStep), Remarks.NONE)),
        optional(QuantityKind.GAUGE_PRESSURE, compressor),
        null,
        tickets,
        Remarks.NONE);
  }

  private static ScaleTicket.Platform platform(AxleRef axle, String weight) {
    return new ScaleTicket.Platform(List.of(axle), Entered.of(QuantityKind.MASS, weight));
  }

  private Axle axle(Map<WheelSlot, String> fitted) {
    return new Axle(
        dual,
        optional(QuantityKind.MASS, gawr),
        label == null
            ? List.of()
            : List.of(new LabelFitment("X1", tireClass, null, pressure(label), Remarks.NONE)),
        optional(QuantityKind.GAUGE_PRESSURE, wheelMaxPressure),
        optional(QuantityKind.MASS, wheelMaxLoad),
        null,
        optional(QuantityKind.RATIO, leftShare),
        null,
        fitted,
        Remarks.NONE);
  }

  /** Fits the second axle. */
  private Map<WheelSlot, String> behind(Map<WheelSlot, String> before, List<Tire> tires) {
    Map<WheelSlot, String> fitted = new LinkedHashMap<>();
    before.forEach(
        (slot, id) -> {
          boolean flat = flatBehind && slot.isLeft();
          tires.add(plain("2" + id, flat ? Set.of(Tire.Damage.FLAT) : Set.of()));
          fitted.put(slot, "2" + id);
        });
    return fitted;
  }

  private static Tire plain(String id, Set<Tire.Damage> damage) {
    return new Tire(id, "tire", null, null, 1, null, damage, Remarks.NONE);
  }

  private Route route() {
    List<Stop> stops = new ArrayList<>();
    List<Leg> legs = new ArrayList<>();
    for (Place place : places) {
      boolean first = stops.isEmpty();
      stops.add(
          new Stop(
              place.name,
              place.name,
              Stop.Kind.REST,
              null,
              optional(QuantityKind.ELEVATION, place.elevation),
              START.getZone(),
              first ? null : place.stay,
              null,
              first ? time(0) : null,
              place.air,
              place.loads,
              Remarks.NONE));
      if (place != last()) {
        legs.add(
            new Leg(
                Entered.of(QuantityKind.DISTANCE, place.milesAfter),
                null,
                place.driveAfter,
                Entered.of(QuantityKind.SPEED, place.topAfter),
                List.of(),
                Remarks.NONE));
      }
    }
    return new Route(stops, legs);
  }

  private List<AmbientEntry> ambient() {
    List<AmbientEntry> entries = new ArrayList<>();
    for (Place place : places) {
      if (!place.temperatures.isEmpty()) {
        entries.add(
            new AmbientEntry(
                place.name,
                new AmbientEntry.Hourly(place.temperatures),
                Provenance.TYPED,
                null,
                Remarks.NONE));
      } else if (place.steady != null) {
        entries.add(
            new AmbientEntry(
                place.name,
                new AmbientEntry.Steady(Entered.of(QuantityKind.TEMPERATURE, place.steady)),
                Provenance.TYPED,
                null,
                Remarks.NONE));
      }
    }
    return entries;
  }

  private static TypedTime time(double hours) {
    ZonedDateTime time = START.plusSeconds(Math.round(hours * 3600));
    return new TypedTime(time, time.toString());
  }

  private static Entered<GaugePressure> pressure(String text) {
    return Entered.of(QuantityKind.GAUGE_PRESSURE, text);
  }

  private static <Q extends Quantity> @Nullable Entered<Q> optional(
      QuantityKind<Q> quantity, @Nullable String text) {
    return text == null ? null : Entered.of(quantity, text);
  }

  /** Weight of the load offered first that could be taken, in kilogram; infinite for all of it. */
  static double most(Advice advice) {
    for (StopAdvice stop : advice.stops()) {
      for (OfferAdvice offer : stop.offers()) {
        Mass most = offer.most();
        return most == null ? Double.POSITIVE_INFINITY : most.kilograms();
      }
    }
    throw new AssertionError("nothing is offered");
  }
}

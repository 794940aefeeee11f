package dawngauge.testdata;

import dawngauge.geo.Coordinate;
import dawngauge.quantity.Entered;
import dawngauge.quantity.QuantityKind;
import dawngauge.tire.TireClass;
import dawngauge.tire.TireSpec;
import dawngauge.trip.Air;
import dawngauge.trip.AmbientEntry;
import dawngauge.trip.Axle;
import dawngauge.trip.AxleRef;
import dawngauge.trip.Gauge;
import dawngauge.trip.LabelFitment;
import dawngauge.trip.Leg;
import dawngauge.trip.LogEvent;
import dawngauge.trip.Provenance;
import dawngauge.trip.ReadingState;
import dawngauge.trip.Remarks;
import dawngauge.trip.Rig;
import dawngauge.trip.Route;
import dawngauge.trip.ScaleTicket;
import dawngauge.trip.Stop;
import dawngauge.trip.Tire;
import dawngauge.trip.Trip;
import dawngauge.trip.TypedTime;
import dawngauge.trip.Vehicle;
import dawngauge.trip.WheelPosition;
import dawngauge.trip.WheelSlot;
import java.time.Duration;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/** An invented haul of any size: 18 tires a rig, and as many stops a day as asked for. */
public final class BenchTrip {

  private static final ZoneId ZONE = ZoneId.of("America/Chicago");
  private static final int STOPS_A_DAY = 8;

  private BenchTrip() {}

  /**
   * A haul of eight stops a day, read once.
   *
   * @param stops how many
   * @param rigs how many times the 18 tires
   */
  public static Trip of(int stops, int rigs) {
    return of(stops, rigs, STOPS_A_DAY, 1);
  }

  /**
   * A haul.
   *
   * @param stops how many
   * @param rigs how many times the 18 tires
   * @param aDay so many stops a day
   * @param mornings on so many mornings all tires are read cold
   */
  public static Trip of(int stops, int rigs, int aDay, int mornings) {
    List<Vehicle> vehicles = new ArrayList<>();
    List<Tire> tires = new ArrayList<>();
    List<ScaleTicket.Platform> platforms = new ArrayList<>();
    for (int i = 0; i < rigs; i++) {
      vehicles.add(vehicle("truck" + i, 'a' + 2 * i, false, tires, platforms));
      vehicles.add(vehicle("trailer" + i, 'b' + 2 * i, true, tires, platforms));
    }
    Rig rig =
        new Rig(
            "bench",
            vehicles,
            List.of(
                spec("small", "3195 lb", "2910 lb", "80 psi"),
                spec("large", "6175 lb", "5675 lb", "110 psi")),
            tires,
            List.of(),
            List.of(
                new Gauge(
                    "g",
                    Gauge.Kind.OPEN,
                    Entered.of(QuantityKind.GAUGE_PRESSURE, "150 psi"),
                    Entered.of(QuantityKind.RATIO, "2 %"),
                    Entered.of(QuantityKind.GAUGE_PRESSURE, "1 psi"),
                    Remarks.NONE)),
            null,
            null,
            List.of(new ScaleTicket(null, true, null, platforms, List.of(), Remarks.NONE)),
            Remarks.NONE);
    ZonedDateTime start = ZonedDateTime.of(2027, 4, 6, 6, 0, 0, 0, ZONE);
    List<LogEvent> log = new ArrayList<>();
    for (int i = 0; i < tires.size() * mornings; i++) {
      Tire tire = tires.get(i % tires.size());
      ZonedDateTime time =
          start
              .plusDays(i / tires.size())
              .minusMinutes(40)
              .plusSeconds(60L * (i % tires.size() % 36));
      boolean large = tire.type().equals("large");
      log.add(
          new LogEvent.Reading(
              new TypedTime(time, time.toString()),
              tire.id(),
              Entered.of(QuantityKind.GAUGE_PRESSURE, large ? "105 psi" : "80 psi"),
              "g",
              ReadingState.COLD,
              null,
              null,
              Remarks.NONE));
    }
    log.sort(java.util.Comparator.comparing(event -> event.time().instant()));
    return new Trip(
        "bench", rig, route(stops, aDay, start), air(stops, aDay, start), log, Remarks.NONE);
  }

  private static TireSpec spec(String name, String single, String dual, String pressure) {
    return new TireSpec(
        name,
        "225/75R16",
        TireClass.COMMERCIAL,
        null,
        null,
        null,
        null,
        "M",
        Entered.of(QuantityKind.MASS, single),
        Entered.of(QuantityKind.MASS, dual),
        Entered.of(QuantityKind.GAUGE_PRESSURE, pressure),
        null,
        null);
  }

  /** Ten tires on a truck of three axles, eight on a trailer of two. */
  private static Vehicle vehicle(
      String name,
      int letter,
      boolean trailer,
      List<Tire> tires,
      List<ScaleTicket.Platform> platforms) {
    List<Axle> axles = new ArrayList<>();
    int count = trailer ? 2 : 3;
    for (int number = 1; number <= count; number++) {
      boolean dual = trailer || number > 1;
      Map<WheelSlot, String> fitted = new EnumMap<>(WheelSlot.class);
      for (WheelSlot slot : WheelSlot.of(dual)) {
        String id = name + number + slot.letters();
        fitted.put(slot, id);
        tires.add(
            new Tire(
                id,
                dual ? "large" : "small",
                null,
                null,
                1,
                null,
                java.util.Set.of(),
                Remarks.NONE));
      }
      axles.add(
          new Axle(
              dual,
              Entered.of(QuantityKind.MASS, dual ? "18000 lb" : "6000 lb"),
              List.of(
                  new LabelFitment(
                      "225/75R16",
                      null,
                      null,
                      Entered.of(QuantityKind.GAUGE_PRESSURE, dual ? "105 psi" : "80 psi"),
                      Remarks.NONE)),
              null,
              null,
              null,
              null,
              null,
              fitted,
              Remarks.NONE));
      platforms.add(
          new ScaleTicket.Platform(
              List.of(new AxleRef(name, number)),
              Entered.of(QuantityKind.MASS, dual ? "15000 lb" : "5200 lb")));
    }
    return new Vehicle(
        name,
        String.valueOf((char) letter),
        trailer ? Vehicle.Kind.TRAILER : Vehicle.Kind.TRUCK,
        null,
        axles,
        Remarks.NONE);
  }

  private static Route route(int count, int aDay, ZonedDateTime start) {
    List<Stop> stops = new ArrayList<>();
    List<Leg> legs = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      boolean night = i > 0 && i % aDay == 0;
      ZonedDateTime leave = start.plusDays(i / aDay);
      stops.add(
          new Stop(
              "s" + i,
              "Stop " + i,
              i == 0 ? Stop.Kind.START : night ? Stop.Kind.OVERNIGHT : Stop.Kind.REST,
              new Coordinate(36 + 0.1 * (i % 7), -100 + 0.3 * i),
              Entered.of(QuantityKind.ELEVATION, (1000 + 700 * (i % 6)) + " ft"),
              ZONE,
              i == 0 || night ? null : Duration.ofMinutes(25),
              null,
              i == 0 || night ? new TypedTime(leave, leave.toString()) : null,
              i % 3 == 0 ? Air.YES : Air.NONE,
              List.of(),
              Remarks.NONE));
      if (i > 0) {
        legs.add(
            new Leg(
                Entered.of(QuantityKind.DISTANCE, "62 mi"),
                Entered.of(QuantityKind.SPEED, "57 mph"),
                null,
                null,
                List.of(),
                Remarks.NONE));
      }
    }
    return new Route(stops, legs);
  }

  private static List<AmbientEntry> air(int count, int aDay, ZonedDateTime start) {
    List<AmbientEntry> entries = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      for (int day = 0; day < 2; day++) {
        entries.add(
            new AmbientEntry(
                "s" + i,
                new AmbientEntry.LowHigh(
                    start.toLocalDate().plusDays((i - 1) / aDay + day),
                    Entered.of(QuantityKind.TEMPERATURE, (35 + i % 9) + " °F"),
                    Entered.of(QuantityKind.TEMPERATURE, (70 + i % 13) + " °F")),
                Provenance.TYPED,
                null,
                Remarks.NONE));
      }
    }
    return entries;
  }

  /** Positions of a haul. */
  public static List<WheelPosition> positions(Trip trip) {
    return trip.rig().positions();
  }
}

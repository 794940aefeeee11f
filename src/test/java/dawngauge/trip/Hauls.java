package dawngauge.trip;

import dawngauge.quantity.Distance;
import dawngauge.quantity.Entered;
import dawngauge.quantity.Mass;
import dawngauge.quantity.QuantityKind;
import dawngauge.quantity.Ratio;
import dawngauge.quantity.Speed;
import java.time.Duration;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Makes small hauls for tests, from the texts a person would type. */
public final class Hauls {
  private Hauls() {}

  public static TypedTime at(String text) {
    return new TypedTime(ZonedDateTime.parse(text), text);
  }

  public static @Nullable Entered<Mass> mass(@Nullable String text) {
    return text == null ? null : Entered.of(QuantityKind.MASS, text);
  }

  private static @Nullable Entered<Ratio> ratio(@Nullable String text) {
    return text == null ? null : Entered.of(QuantityKind.RATIO, text);
  }

  private static @Nullable Entered<Speed> speed(@Nullable String text) {
    return text == null ? null : Entered.of(QuantityKind.SPEED, text);
  }

  public static Axle axle(boolean dual, @Nullable String gawr, @Nullable String leftShare) {
    return new Axle(
        dual,
        mass(gawr),
        List.of(),
        null,
        null,
        null,
        ratio(leftShare),
        null,
        Map.of(),
        Remarks.NONE);
  }

  public static Axle fitted(boolean dual, Map<WheelSlot, String> tires) {
    return new Axle(dual, null, List.of(), null, null, null, null, null, tires, Remarks.NONE);
  }

  public static Vehicle vehicle(String name, String letter, Vehicle.Kind kind, Axle... axles) {
    return new Vehicle(name, letter, kind, null, List.of(axles), Remarks.NONE);
  }

  public static Rig rig(List<Vehicle> vehicles, @Nullable Hitch hitch, ScaleTicket... tickets) {
    return new Rig(
        "rig",
        vehicles,
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        null,
        hitch,
        List.of(tickets),
        Remarks.NONE);
  }

  public static Hitch hitch(@Nullable String load, double lever) {
    return new Hitch(Hitch.Kind.BUMPER, mass(load), true, lever, Remarks.NONE);
  }

  public static ScaleTicket.Platform platform(String weight, AxleRef... axles) {
    return new ScaleTicket.Platform(List.of(axles), Entered.of(QuantityKind.MASS, weight));
  }

  public static ScaleTicket ticket(boolean hitched, ScaleTicket.Platform... platforms) {
    return new ScaleTicket(null, hitched, null, List.of(platforms), List.of(), Remarks.NONE);
  }

  public static ScaleTicket wheels(
      AxleRef axle, String left, String right, ScaleTicket.Platform... platforms) {
    return new ScaleTicket(
        null,
        true,
        null,
        List.of(platforms),
        List.of(
            new ScaleTicket.WheelWeight(axle, true, Entered.of(QuantityKind.MASS, left)),
            new ScaleTicket.WheelWeight(axle, false, Entered.of(QuantityKind.MASS, right))),
        Remarks.NONE);
  }

  public static LoadChange change(
      String weight,
      LoadChange.Source source,
      boolean offered,
      @Nullable String hitch,
      Map<AxleRef, String> axles) {
    Map<AxleRef, Entered<Ratio>> parts = new HashMap<>();
    axles.forEach((axle, part) -> parts.put(axle, Entered.of(QuantityKind.RATIO, part)));
    return new LoadChange(
        "animals",
        Entered.of(QuantityKind.MASS, weight),
        source,
        parts,
        ratio(hitch),
        offered,
        Remarks.NONE);
  }

  /** A stop of which only the times are given; each may be null. */
  public static Stop stop(
      String id, @Nullable String arrive, @Nullable Duration stay, @Nullable String leave) {
    return new Stop(
        id,
        id.toUpperCase(Locale.ROOT),
        Stop.Kind.REST,
        null,
        null,
        null,
        stay,
        arrive == null ? null : at(arrive),
        leave == null ? null : at(leave),
        Air.NONE,
        List.of(),
        Remarks.NONE);
  }

  public static Stop stop(String id) {
    return stop(id, null, null, null);
  }

  public static Stop in(String zone, Stop s) {
    return new Stop(
        s.id(),
        s.place(),
        s.kind(),
        null,
        null,
        ZoneId.of(zone),
        s.stay(),
        s.arrive(),
        s.leave(),
        s.air(),
        s.loadChanges(),
        s.remarks());
  }

  public static Stop loading(String id, LoadChange... changes) {
    Stop s = stop(id);
    return new Stop(
        id,
        s.place(),
        s.kind(),
        null,
        null,
        null,
        null,
        null,
        null,
        Air.NONE,
        List.of(changes),
        Remarks.NONE);
  }

  public static Leg leg(
      @Nullable String distance,
      @Nullable String average,
      @Nullable Duration duration,
      @Nullable String top) {
    Entered<Distance> way = distance == null ? null : Entered.of(QuantityKind.DISTANCE, distance);
    return new Leg(way, speed(average), duration, speed(top), List.of(), Remarks.NONE);
  }

  public static Leg leg(String distance, String average) {
    return leg(distance, average, null, null);
  }

  public static Trip trip(Rig rig, List<Stop> stops, List<Leg> legs, LogEvent... log) {
    return new Trip(
        "haul", rig, new Route(stops, legs), List.of(), Arrays.asList(log), Remarks.NONE);
  }

  public static LogEvent.Arrived arrived(String stop, String time) {
    return new LogEvent.Arrived(at(time), stop, Remarks.NONE);
  }

  public static LogEvent.Left left(String stop, String time) {
    return new LogEvent.Left(at(time), stop, Remarks.NONE);
  }

  public static LogEvent.Reading reading(String time) {
    return new LogEvent.Reading(
        at(time),
        "T1",
        Entered.of(QuantityKind.GAUGE_PRESSURE, "80 psi"),
        "dial",
        ReadingState.COLD,
        null,
        null,
        Remarks.NONE);
  }
}

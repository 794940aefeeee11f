package dawngauge.simulated;

import static dawngauge.testdata.StopBuilder.stop;

import dawngauge.testdata.RigBuilder;
import dawngauge.testdata.StopBuilder;
import dawngauge.testdata.TireBuilder;
import dawngauge.testdata.Trips;
import dawngauge.trip.HeatRecord;
import dawngauge.trip.ProfilePoint;
import dawngauge.trip.ReadingState;
import dawngauge.trip.Trip;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Locale;

/** What the crew of a simulated haul types: nothing but what a crew can know. */
final class CrewNotes {

  /** The clock of all places: local time is seven hours behind Greenwich. */
  private static final String ZONE = "Etc/GMT+7";

  private static final double LONGITUDE = -105;
  private static final int HOURS_WEST = 7;
  private static final int YEAR = 2027;

  /** No faster, so that trailer tires carry what stands on their sidewall. */
  private static final String TOP = "65 mph";

  private final SimulatedHaul haul;

  /** What a few trips leave unsure of a heat factor, as a part of it; inferred. */
  private static final double LEARNED_SPREAD = 0.08;

  private final double heatFactor;
  private final LocalDate firstDay;

  /**
   * Of a haul.
   *
   * @param heatFactor typed for every tire: how much more than the product thinks it warms up
   */
  CrewNotes(SimulatedHaul haul, double heatFactor) {
    this.haul = haul;
    this.heatFactor = heatFactor;
    this.firstDay = LocalDate.ofYearDay(YEAR, haul.dayOfYear());
  }

  /**
   * The trip with the first round and, as far as there is a later one, times and rounds up to it.
   *
   * @param first what was read before it began
   * @param later rounds that were noted since, in order
   */
  Trip trip(Round first, List<Round> later) {
    Trips trips = Trips.of(rig());
    List<SimulatedHaul.Stop> stops = haul.stops();
    for (int i = 0; i < stops.size(); i++) {
      trips.stop(place(i));
      if (i + 1 < stops.size()) {
        leg(trips, i);
      }
    }
    read(trips, first);
    int at = 0;
    for (Round round : later) {
      for (; at < round.stop(); at++) {
        trips.left(text(stops.get(at).leave()), "s" + at);
        trips.arrived(text(stops.get(at + 1).arrive()), "s" + (at + 1));
      }
      read(trips, round);
    }
    return trips.trip();
  }

  /** Epoch seconds to seconds since the haul's first midnight. */
  double seconds(double epochSeconds) {
    return epochSeconds - midnight();
  }

  private double midnight() {
    return firstDay.atStartOfDay(ZoneOffset.ofHours(-HOURS_WEST)).toEpochSecond();
  }

  private String text(double seconds) {
    return Instant.ofEpochSecond(Math.round(midnight() + seconds)).toString().replace(":00Z", "Z");
  }

  private static String number(String format, double value) {
    return String.format(Locale.ROOT, format, value);
  }

  private RigBuilder rig() {
    SimulatedRig rig = haul.rig();
    RigBuilder built = RigBuilder.trailer().axles(rig.axles());
    String label = number("%.0f psi", rig.label());
    if (rig.kind().equals(TireKind.TRAILER)) {
      built.tires(TireBuilder.special()).label("ST235/80R16", null, "E", label);
    } else if (rig.kind().equals(TireKind.LIGHT_TRUCK)) {
      built.tires(TireBuilder.lightTruck()).label("LT245/75R17", null, "E", label);
    } else {
      built
          .tires(TireBuilder.truck())
          .label("295/75R22.5", null, "G", label)
          .rims("130 psi", "200 psi");
    }
    if (rig.dual()) {
      built.dual();
    }
    String ticket = number("%.0f lb", rig.ticket());
    switch (rig.scale()) {
      case WHEEL -> built.scale(RigBuilder.Scale.WHEEL).weighed(ticket);
      case AXLE -> built.scale(RigBuilder.Scale.AXLE).weighed(ticket);
      case GROUP -> built.scale(RigBuilder.Scale.GROUP).weighed(ticket);
      case NONE -> built.weighed(null);
    }
    HeatRecord record =
        heatFactor == 1 ? null : new HeatRecord(heatFactor, LEARNED_SPREAD * heatFactor);
    return built
        .gawr(number("%.0f lb", rig.rating()))
        .losing(null)
        .heatFactor(heatFactor)
        .heatRecord(record);
  }

  private StopBuilder place(int index) {
    SimulatedHaul.Stop stop = haul.stops().get(index);
    StopBuilder built =
        stop("s" + index)
            .at(haul.latitude(), LONGITUDE, ZONE)
            .elevation(number("%.0f ft", haul.elevation(index) / Units.FOOT));
    if (stop.hose()) {
      built.hose();
    }
    if (index == 0 || !Double.isNaN(stop.plannedLeave())) {
      built.leaves(text(stop.plannedLeave()));
    } else if (index + 1 < haul.stops().size()) {
      built.stays(Duration.ofSeconds(Math.round(stop.plannedStay())));
    }
    air(built, stop);
    return built;
  }

  private void air(StopBuilder built, SimulatedHaul.Stop stop) {
    int place = stop.place();
    Weather weather = haul.weather();
    if (haul.byHour()) {
      double from = Math.max(0, Math.floor(stop.arrive() / Units.HOUR) - 2);
      double to = Math.ceil(stop.leave() / Units.HOUR) + 2;
      for (double hour = from; hour <= to; hour++) {
        double kelvins = weather.forecast(place, hour * Units.HOUR);
        built.hour(text(hour * Units.HOUR), fahrenheit(kelvins));
      }
      return;
    }
    int first = (int) Math.max(0, Math.floor(stop.arrive() / Units.DAY));
    int last = (int) Math.floor(stop.leave() / Units.DAY);
    for (int day = first; day <= last; day++) {
      built.lowHigh(
          firstDay.plusDays(day).toString(),
          fahrenheit(weather.low(place, day)),
          fahrenheit(weather.high(place, day)));
    }
  }

  private static String fahrenheit(double kelvins) {
    return number("%.0f °F", Units.fahrenheit(kelvins));
  }

  private void leg(Trips trips, int index) {
    SimulatedHaul.Leg leg = haul.legs().get(index);
    String length = leg.miles() + " mi";
    String speed = leg.mph() + " mph";
    if (Double.isNaN(leg.summit())) {
      trips.leg(length, speed, TOP);
      return;
    }
    ProfilePoint top =
        Trips.point(
            "summit",
            number("%.1f mi", leg.miles() / 2.0),
            number("%.0f ft", leg.summit() / Units.FOOT));
    trips.leg(length, speed, TOP, top);
  }

  private void read(Trips trips, Round round) {
    String at = text(round.seconds());
    boolean measured = haul.airMeasured() && round.stop() == 0;
    for (int tire = 0; tire < round.psi().size(); tire++) {
      String id = "T" + (tire + 1);
      String psi = number("%.0f psi", round.psi().get(tire));
      if (measured) {
        trips.readIn(fahrenheit(round.airKelvins()), at, id, psi);
      } else {
        trips.read(at, id, psi, "hand", round.cold() ? ReadingState.COLD : ReadingState.WARM);
      }
    }
  }
}

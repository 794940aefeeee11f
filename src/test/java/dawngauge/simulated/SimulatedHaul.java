package dawngauge.simulated;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/**
 * One haul of some days as it comes: a rig, places, weather, when it truly drives and stands. Each
 * day: off about sunrise, a stop about noon (now and then on a pass), a night stop.
 */
final class SimulatedHaul {

  /** What differs from what the crew notes. */
  enum World {
    /** Nothing: readings in the shade, brakes cold. */
    PLAIN,
    /** The sun warms the left side at dawn readings, and nobody says so. */
    SUN_NOT_NOTED,
    /** Brakes hold the rig on descents. */
    BRAKES
  }

  /**
   * Where it stands.
   *
   * @param place index of the place
   * @param pass whether it is a pass
   * @param hose whether air can be had
   * @param plannedLeave when it is to leave; NaN for a stop about noon and the last
   * @param plannedStay how long it is to stand about noon, in seconds
   * @param arrive when it comes
   * @param leave when it goes
   */
  record Stop(
      int place,
      boolean pass,
      boolean hose,
      double plannedLeave,
      double plannedStay,
      double arrive,
      double leave) {}

  /**
   * The way to the next stop.
   *
   * @param miles length as typed
   * @param mph speed as typed
   * @param speed true speed, m/s
   * @param rain whether it rains
   * @param summit height of a summit half-way in meter; NaN where there is none
   */
  record Leg(int miles, int mph, double speed, boolean rain, double summit) {

    double meters() {
      return miles * Units.MILE;
    }
  }

  private static final double MINUTE = 60;

  /** True driving times differ from planned ones by so much, one standard deviation; inferred. */
  private static final double SPEED_SPREAD = 0.06;

  /** One leg in ten is driven in rain; inferred. */
  private static final double RAINY = 0.1;

  private final Random random;
  private final World world;
  private final SimulatedRig rig;
  private final double[] elevation;
  private final List<Stop> stops = new ArrayList<>();
  private final List<Leg> legs = new ArrayList<>();
  private final int dayOfYear;
  private final double latitude;
  private final Weather weather;
  private final HandGauge gauge;
  private final boolean byHour;
  private final boolean airMeasured;

  /**
   * Draws one.
   *
   * @param random for everything
   * @param days how many
   * @param hoses part of the stops where air can be had
   */
  SimulatedHaul(Random random, World world, SimulatedRig.Loads loads, int days, double hoses) {
    this.random = random;
    this.world = world;
    this.rig = new SimulatedRig(random, loads);
    this.dayOfYear = 1 + random.nextInt(365);
    this.latitude = 33 + 12 * random.nextDouble();
    boolean[] passes = new boolean[2 * days + 1];
    this.elevation = new double[2 * days + 1];
    for (int place = 0; place < elevation.length; place++) {
      passes[place] = place % 2 == 1 && random.nextInt(3) == 0;
      elevation[place] =
          (passes[place] ? 1800 + 1400 * random.nextDouble() : 2000 * random.nextDouble());
    }
    this.weather = new Weather(random, latitude, dayOfYear, elevation, days);
    this.gauge = new HandGauge(random, days);
    this.byHour = random.nextBoolean();
    this.airMeasured = random.nextInt(4) == 0;
    double clock = dawnStart(0);
    stops.add(
        new Stop(
            0, false, random.nextDouble() < hoses, clock, 0, clock - 12 * Units.HOUR, late(clock)));
    for (int day = 0; day < days; day++) {
      double from = stops.get(stops.size() - 1).leave;
      double noon = drive(2 * day, from);
      double stay = (25 + 5 * random.nextInt(8)) * MINUTE;
      double gone = minute(noon + stay * (0.8 + 0.6 * random.nextDouble()));
      stops.add(
          new Stop(
              2 * day + 1,
              passes[2 * day + 1],
              random.nextDouble() < hoses,
              Double.NaN,
              stay,
              noon,
              gone));
      double night = drive(2 * day + 1, gone);
      boolean last = day + 1 == days;
      double leave = last ? Double.NaN : dawnStart(day + 1);
      stops.add(
          new Stop(
              2 * day + 2,
              false,
              random.nextDouble() < hoses,
              leave,
              0,
              night,
              last ? night + Units.HOUR : late(leave)));
    }
  }

  private double dawnStart(int day) {
    double hour = weather.sun().rise() - 0.75 + 2 * random.nextDouble();
    return day * Units.DAY + 5 * MINUTE * Math.round(hour * 12);
  }

  private double late(double planned) {
    return planned + MINUTE * random.nextInt(20);
  }

  private static double minute(double seconds) {
    return MINUTE * Math.round(seconds / MINUTE);
  }

  /** Drives a leg from a place; when it arrives. */
  private double drive(int from, double leave) {
    int miles = 80 + 5 * random.nextInt(20);
    int mph = 50 + 5 * random.nextInt(4);
    double speed = mph * Units.MILE / Units.HOUR * Math.exp(SPEED_SPREAD * random.nextGaussian());
    boolean summit = random.nextInt(5) == 0;
    double higher = Math.max(elevation[from], elevation[from + 1]);
    Leg leg =
        new Leg(
            miles,
            mph,
            speed,
            random.nextDouble() < RAINY,
            summit ? higher + 300 + 700 * random.nextDouble() : Double.NaN);
    legs.add(leg);
    return minute(leave + leg.meters() / speed);
  }

  Random random() {
    return random;
  }

  World world() {
    return world;
  }

  SimulatedRig rig() {
    return rig;
  }

  Weather weather() {
    return weather;
  }

  HandGauge gauge() {
    return gauge;
  }

  List<Stop> stops() {
    return List.copyOf(stops);
  }

  List<Leg> legs() {
    return List.copyOf(legs);
  }

  /** Height of a place in meter. */
  double elevation(int place) {
    return elevation[place];
  }

  /** Day of the year 2027 on which it begins. */
  int dayOfYear() {
    return dayOfYear;
  }

  /** Of the region, degrees north. */
  double latitude() {
    return latitude;
  }

  /** Whether the crew types temperatures by the hour, else low and high of each day. */
  boolean byHour() {
    return byHour;
  }

  /** Whether the crew measures the air at the first reading. */
  boolean airMeasured() {
    return airMeasured;
  }

  /** Height of the ground on a leg in meter, by the part of the way done. */
  double height(int leg, double part) {
    double from = elevation[leg];
    double to = elevation[leg + 1];
    double top = legs.get(leg).summit;
    if (Double.isNaN(top)) {
      return (1 - part) * from + part * to;
    }
    return part < 0.5 ? from + 2 * part * (top - from) : top + (2 * part - 1) * (to - top);
  }
}

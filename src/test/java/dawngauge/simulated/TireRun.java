package dawngauge.simulated;

import java.util.Random;

/** The tires of a haul, followed minute by minute: warmth, air inside, what they carry. */
final class TireRun {

  private static final double MINUTE = 60;

  /** Rolling resistance of a make, and of one tire of it, spread of the logarithm; inferred. */
  private static final double MAKE = 0.12;

  private static final double TIRE = 0.04;

  /** The film outside of a rig's wheels, spread of the logarithm; inferred. */
  private static final double FLOW = 0.1;

  /** Films of the inner and outer tire of a pair against a single one; inferred. */
  private static final double FILM_INNER = 0.8;

  private static final double FILM_OUTER = 0.9;

  /** Films in rain; inferred. */
  private static final double FILM_RAIN = 1.5;

  /**
   * Loss of gauge pressure a month at 21 °C, median 1.6 %, spread of the logarithm; inferred within
   * the 1 to 3 % that are published by ASTM F1112; by temperature with 40 kJ/mol, butyl rubber.
   */
  private static final double LOSS = 0.016 / (30 * Units.DAY);

  private static final double LOSS_SPREAD = 0.4;
  private static final double LOSS_ENERGY = 40_000 / 8.314;
  private static final double LOSS_AT = 294.15;

  /** Air at 20 °C at sea level: by it resistance is told. */
  private static final double REFERENCE = 293.15;

  private static final double SEA_LEVEL = 101_325;

  /**
   * Of the weight that goes down, the part that the wheel's brake takes up (engine and drag take
   * the rest), and of that the part that reaches wheel and air inside; inferred.
   */
  private static final double BRAKED = 0.3;

  private static final double TO_WHEEL = 0.2;

  private final SimulatedHaul haul;
  private final SimulatedRig rig;
  private final Minutes minutes;
  private final TwoNodes[] nodes;
  private final double[] fill;
  private final double[] resistance;
  private final double[] loss;
  private final double flow;
  private int now;

  /**
   * At the first minute, each tire as cool as the air.
   *
   * @param cold what each would read there, gauge pascal
   */
  TireRun(SimulatedHaul haul, double[] cold) {
    this.haul = haul;
    this.rig = haul.rig();
    this.minutes = new Minutes(haul);
    Random random = haul.random();
    int count = rig.tires();
    nodes = new TwoNodes[count];
    fill = new double[count];
    resistance = new double[count];
    loss = new double[count];
    flow = Math.exp(FLOW * random.nextGaussian());
    double make = MAKE * random.nextGaussian();
    for (int tire = 0; tire < count; tire++) {
      TireKind kind = rig.kind();
      double air = minutes.air(0);
      nodes[tire] = new TwoNodes(kind.bodyCapacity(), kind.insideCapacity(), air);
      fill[tire] = (cold[tire] + minutes.pressure(0)) / air;
      resistance[tire] = Math.exp(make + TIRE * random.nextGaussian());
      loss[tire] = LOSS * Math.exp(LOSS_SPREAD * random.nextGaussian());
    }
  }

  /** The minute that was reached. */
  int now() {
    return now;
  }

  Minutes minutes() {
    return minutes;
  }

  /** Follows all tires to a time. */
  void to(double seconds) {
    int end = minutes.of(seconds);
    while (now < end) {
      step();
    }
  }

  /** Follows all tires over one minute. */
  void step() {
    double[] before = fill.clone();
    double[] pressures = new double[fill.length];
    for (int tire = 0; tire < fill.length; tire++) {
      pressures[tire] = gauge(tire);
    }
    for (int tire = 0; tire < fill.length; tire++) {
      warm(tire, rig.load(tire, pressures[tire], pressures[rig.mate(tire)]), before[tire]);
      double kelvins = nodes[tire].inside();
      double faster = Math.exp(LOSS_ENERGY * (1 / LOSS_AT - 1 / kelvins));
      fill[tire] -= loss[tire] * faster * Math.max(0, pressures[tire]) / kelvins * MINUTE;
    }
    now++;
  }

  private void warm(int tire, double load, double air) {
    TireKind kind = rig.kind();
    double mates = rig.dual() ? rig.inner(tire) ? FILM_INNER : FILM_OUTER : 1;
    double factor = flow * mates * (minutes.rain(now) ? FILM_RAIN : 1);
    double around = minutes.air(now);
    double speed = minutes.speed(now);
    if (speed == 0) {
      TwoNodes.Ways ways = Film.standing(kind, minutes.wind(now), factor);
      nodes[tire].step(ways, body -> 0, 0, around - minutes.sky(now), MINUTE);
      return;
    }
    double pressure = Math.max(5 * Units.PSI, air * REFERENCE - SEA_LEVEL);
    TireKind.Heat heat = kind.heatAt(load, pressure, speed);
    double brakes =
        haul.world() == SimulatedHaul.World.BRAKES
            ? load * minutes.descent(now) * BRAKED * TO_WHEEL
            : 0;
    double more = resistance[tire];
    TwoNodes.Ways ways = Film.rolling(kind, speed, factor);
    nodes[tire].step(ways, body -> more * heat.at(body), brakes, around, MINUTE);
  }

  /** True gauge pressure in pascal. */
  double gauge(int tire) {
    return warmedBy(tire, 0);
  }

  /** The same were the air inside so many kelvin warmer. */
  double warmedBy(int tire, double kelvins) {
    return fill[tire] * (nodes[tire].inside() + kelvins) - minutes.pressure(now);
  }

  /** How much warmer than the air around it is inside, in kelvin. */
  double warmth(int tire) {
    return nodes[tire].inside() - minutes.air(now);
  }

  /** Air is added or let out until a true gauge pressure is reached. */
  void set(int tire, double pascals) {
    fill[tire] = (pascals + minutes.pressure(now)) / nodes[tire].inside();
  }

  /** Whether it has too little for what it carries, warmth above the air around not credited. */
  boolean tooLittle(int tire) {
    double own = gauge(tire);
    double load = rig.load(tire, own, gauge(rig.mate(tire)));
    double kelvins = Math.min(nodes[tire].inside(), minutes.air(now));
    double judged = fill[tire] * kelvins - minutes.pressure(now);
    return judged < rig.kind().need(load, rig.dual());
  }
}

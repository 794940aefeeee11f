package dawngauge.simulated;

import java.util.Random;

/** A rig with what its tires truly carry, and what its crew knows of that. */
final class SimulatedRig {

  /** What it was weighed on. */
  enum Scale {
    WHEEL,
    AXLE,
    GROUP,
    NONE
  }

  /** How full it is. */
  enum Loads {
    /** Normal about 80 % of the axle's rating with a spread of 12 %, never over it. */
    LIKELY,
    /** Evenly between 40 and 105 % of the rating. */
    WIDE
  }

  /**
   * A way to build a rig.
   *
   * @param rating of an axle in lb, such that each label carries it
   * @param low one of two cold pressures in psi that may be on the label
   * @param high the other
   */
  private record Model(
      TireKind kind, boolean dual, int axles, double rating, double low, double high) {}

  private static final Model[] MODELS = {
    new Model(TireKind.TRAILER, false, 2, 6000, 65, 80),
    new Model(TireKind.TRAILER, false, 3, 6000, 65, 80),
    new Model(TireKind.LIGHT_TRUCK, true, 1, 9600, 65, 80),
    new Model(TireKind.LIGHT_TRUCK, true, 2, 9600, 65, 80),
    new Model(TireKind.LIGHT_TRUCK, false, 2, 5600, 70, 80),
    new Model(TireKind.TRUCK, true, 2, 20000, 100, 105),
  };

  /** Middle and spread of a rig's load over its rating; inferred. */
  private static final double LIKELY = 0.8;

  private static final double LIKELY_SPREAD = 0.12;
  private static final double WIDE_LEAST = 0.4;
  private static final double WIDE_MOST = 1.05;

  /** Axles of one rig differ by so much from its mean where none is weighed; inferred. */
  private static final double AXLES_APART = 0.03;

  /** The same where all stood on one platform; inferred. */
  private static final double GROUP_APART = 0.05;

  /** Points of an axle's load that the left side has more than half; inferred. */
  private static final double SIDES = 0.0125;

  /** Error of a scale, part of what it shows; inferred. */
  private static final double SCALE_ERROR = 0.01;

  /** A dual's springiness is that of its pressure and so much more by the carcass; inferred. */
  private static final double CARCASS = 15 * Units.PSI;

  private final Model model;
  private final double label;
  private final Scale scale;
  private final double ticket;
  private final double[] sides;

  /** Draws one. */
  SimulatedRig(Random random, Loads loads) {
    model = MODELS[random.nextInt(MODELS.length)];
    label = random.nextBoolean() ? model.low : model.high;
    scale = Scale.values()[random.nextInt(Scale.values().length)];
    double part =
        loads == Loads.WIDE
            ? WIDE_LEAST + (WIDE_MOST - WIDE_LEAST) * random.nextDouble()
            : under(random, LIKELY, LIKELY_SPREAD, 1);
    ticket = Math.round(part * model.rating / 20) * 20.0;
    double wrong = 1 + SCALE_ERROR * random.nextGaussian();
    sides = new double[2 * model.axles];
    for (int axle = 0; axle < model.axles; axle++) {
      double own = 1 + SCALE_ERROR * random.nextGaussian();
      double carried =
          switch (scale) {
            case WHEEL, AXLE -> ticket * own;
            case GROUP -> ticket * wrong * (1 + GROUP_APART * random.nextGaussian());
            case NONE -> ofUnweighed(random, loads, part);
          };
      double left = scale == Scale.WHEEL ? 0.5 : 0.5 + SIDES * random.nextGaussian();
      double again = 1 + SCALE_ERROR * random.nextGaussian();
      double right = scale == Scale.WHEEL ? 0.5 * again : 1 - left;
      sides[2 * axle] = carried * left * Units.POUND;
      sides[2 * axle + 1] = carried * right * Units.POUND;
    }
  }

  private double ofUnweighed(Random random, Loads loads, double part) {
    double most = loads == Loads.WIDE ? Double.POSITIVE_INFINITY : 1;
    return under(random, part, part * AXLES_APART, most) * model.rating;
  }

  private static double under(Random random, double middle, double spread, double most) {
    double drawn = middle + spread * random.nextGaussian();
    while (drawn > most) {
      drawn = middle + spread * random.nextGaussian();
    }
    return drawn;
  }

  TireKind kind() {
    return model.kind;
  }

  boolean dual() {
    return model.dual;
  }

  int axles() {
    return model.axles;
  }

  /** Rating of an axle in lb. */
  double rating() {
    return model.rating;
  }

  /** Cold pressure on the label in psi. */
  double label() {
    return label;
  }

  Scale scale() {
    return scale;
  }

  /** What each axle weighs by the scale, in lb. */
  double ticket() {
    return ticket;
  }

  int tires() {
    return sides.length * perSide();
  }

  private int perSide() {
    return model.dual ? 2 : 1;
  }

  /**
   * Whether a tire is on the left side. Tires go left outer, left inner, right inner, right outer.
   */
  boolean left(int tire) {
    return tire / perSide() % 2 == 0;
  }

  /** Whether it is the inner one of a pair. */
  boolean inner(int tire) {
    return model.dual && (left(tire) ? tire % 2 == 1 : tire % 2 == 0);
  }

  /** The other tire of its pair, or itself. */
  int mate(int tire) {
    return model.dual ? tire ^ 1 : tire;
  }

  /**
   * What it carries in newton.
   *
   * @param own its gauge pressure
   * @param other that of its mate
   */
  double load(int tire, double own, double other) {
    double side = sides[tire / perSide()];
    double stiff = Math.max(0, own) + CARCASS;
    return model.dual ? side * stiff / (stiff + Math.max(0, other) + CARCASS) : side;
  }
}

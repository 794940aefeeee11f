package dawngauge.contract;

import java.util.List;

/**
 * What one trip of the grid is made of.
 *
 * @param capacity what is known of what the tires carry
 * @param load what is known of what they do carry
 * @param pressure what they are read at
 * @param reading when and how they are read
 * @param air whether the air on the way is known
 * @param hose where there is compressed air
 * @param leak whether a leak is typed
 * @param wheels single wheels or pairs
 * @param target whether a target of one's own is typed
 * @param step of the gauge
 * @param spare whether the spare goes on at the second stop
 * @param units in which all is typed and told
 */
record Cell(
    Capacity capacity,
    Load load,
    Pressure pressure,
    Reading reading,
    AirOnTheWay air,
    Hose hose,
    Leak leak,
    Wheels wheels,
    Target target,
    Step step,
    Spare spare,
    Units units) {

  enum Capacity {
    /** The maker's rows, and a label that speaks for the tire. */
    ROWS,
    /** The sidewall's figures, and a label that speaks for the tire. */
    LABEL,
    /** The sidewall's figures, and a label of another tire. */
    LABEL_OF_ANOTHER,
    /** The sidewall's figures alone. */
    NO_LABEL
  }

  /** Parts of GAWR, and what stood on the scale. */
  enum Load {
    WHEEL_94(0.94),
    AXLE_75(0.75),
    AXLE_94(0.94),
    AXLE_99(0.99),
    GROUP_94(0.94),
    NOT_WEIGHED(Double.NaN);

    final double part;

    Load(double part) {
      this.part = part;
    }
  }

  /** Parts of the label's pressure, or of the rated one where no label speaks. */
  enum Pressure {
    /** Over the limit of tire, wheel and valve. */
    OVER_LIMIT(1.5),
    AT_LABEL(1),
    LESS_5(0.95),
    LESS_9(0.91),
    LESS_15(0.85),
    LESS_30(0.70);

    final double part;

    Pressure(double part) {
      this.part = part;
    }
  }

  enum Reading {
    /** Cold, before sunrise at the start. */
    COLD,
    /** Cold, in the sun at the start. */
    IN_SUN,
    /** Warm at the start, with nothing before it. */
    WARM_FIRST,
    /** Warm at the second stop, after a cold reading at the start. */
    WARM_LATER,
    /** Just filled, at the start. */
    JUST_FILLED,
    /** At the second stop, noted as cold a minute after a noted drive of two hours. */
    WRONGLY_COLD,
    /** None at all. */
    NONE;

    /** Whether the rig stands at the second stop when it is read. */
    boolean later() {
      return this == WARM_LATER || this == WRONGLY_COLD;
    }
  }

  enum AirOnTheWay {
    KNOWN,
    NOT_KNOWN
  }

  enum Hose {
    /** At the start and at the second stop. */
    HERE,
    /** At the second stop alone. */
    NEXT,
    NOWHERE,
    /** At the start, but it reaches less than the label asks for. */
    SHORT
  }

  enum Leak {
    NONE,
    TYPED
  }

  enum Wheels {
    SINGLE,
    DUAL,
    /** Pairs, of which the second tire is read 30 psi lower. */
    DUAL_MATE_LOW
  }

  enum Target {
    NONE,
    OWN
  }

  enum Step {
    FINE(1),
    COARSE(5),
    COARSEST(10);

    final double psi;

    Step(double psi) {
      this.psi = psi;
    }
  }

  enum Spare {
    STAYS,
    GOES_ON
  }

  enum Units {
    PSI,
    BAR
  }

  /** How many values each part of a cell has. */
  static int[] sizes() {
    return VALUES.stream().mapToInt(values -> values.length).toArray();
  }

  private static final List<Enum<?>[]> VALUES =
      List.of(
          Capacity.values(),
          Load.values(),
          Pressure.values(),
          Reading.values(),
          AirOnTheWay.values(),
          Hose.values(),
          Leak.values(),
          Wheels.values(),
          Target.values(),
          Step.values(),
          Spare.values(),
          Units.values());

  /** The cell with the values of these indices. */
  static Cell of(int[] row) {
    return new Cell(
        Capacity.values()[row[0]],
        Load.values()[row[1]],
        Pressure.values()[row[2]],
        Reading.values()[row[3]],
        AirOnTheWay.values()[row[4]],
        Hose.values()[row[5]],
        Leak.values()[row[6]],
        Wheels.values()[row[7]],
        Target.values()[row[8]],
        Step.values()[row[9]],
        Spare.values()[row[10]],
        Units.values()[row[11]]);
  }

  boolean dual() {
    return wheels != Wheels.SINGLE;
  }

  boolean labelSpeaks() {
    return capacity == Capacity.ROWS || capacity == Capacity.LABEL;
  }
}

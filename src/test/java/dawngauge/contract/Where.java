package dawngauge.contract;

/** In which trips of the grid, and at which tires and stops, a fault shows. */
enum Where {
  ANYWHERE,
  /** No label is typed, so that the reference is another. */
  NO_LABEL,
  /** The same, and the forecast says that the tire ran low. */
  RAN_LOW_WITHOUT_LABEL,
  /** Read in the sun or warm. */
  READ_NOT_COLD,
  /** The same, and the forecast says that the tire ran low. */
  RAN_LOW_READ_NOT_COLD,
  /** The forecast says nothing of a tire that ran low. */
  NOT_RAN_LOW,
  /** The reading is the tire's first. */
  FIRST_READING,
  /** The air on the way is not known. */
  AIR_NOT_KNOWN,
  /** The lower tire of a pair whose tires differ, where the air is known. */
  LOWER_MATE,
  /** The gauge is read in steps of 5 psi or more. */
  COARSE_GAUGE,
  /** A tire that was read at the start, once the rig stands at the next stop. */
  ROLLED_ON,
  /** The wheel on which the spare goes, once it is on. */
  OF_THE_SPARE,
  /** A stop that the rig has left. */
  LEFT_BEHIND;

  boolean holds(Disagreement at) {
    Cell cell = at.haul().cell();
    boolean ranLow = at.saying().yes(Field.RAN_LOW);
    boolean noLabel = cell.capacity() == Cell.Capacity.NO_LABEL;
    boolean notCold =
        cell.reading() == Cell.Reading.IN_SUN || cell.reading() == Cell.Reading.WARM_LATER;
    boolean lowerMate =
        cell.wheels() == Cell.Wheels.DUAL_MATE_LOW && at.place().tire().equals("t1li");
    return switch (this) {
      case ANYWHERE -> true;
      case NO_LABEL -> noLabel;
      case RAN_LOW_WITHOUT_LABEL -> ranLow && noLabel;
      case READ_NOT_COLD -> notCold;
      case RAN_LOW_READ_NOT_COLD -> ranLow && notCold;
      case NOT_RAN_LOW -> !ranLow;
      // One that is low before it is read warm was low in its first reading.
      case FIRST_READING -> cell.reading() != Cell.Reading.WARM_LATER || lowerMate;
      case AIR_NOT_KNOWN -> cell.air() == Cell.AirOnTheWay.NOT_KNOWN;
      case LOWER_MATE -> lowerMate && cell.air() == Cell.AirOnTheWay.KNOWN;
      case COARSE_GAUGE -> cell.step() != Cell.Step.FINE;
      case ROLLED_ON ->
          !at.ofTheSpare() && at.place().stop() == 1 && cell.reading() != Cell.Reading.WRONGLY_COLD;
      case OF_THE_SPARE -> at.ofTheSpare();
      case LEFT_BEHIND -> at.place().stop() < at.haul().now();
    };
  }
}

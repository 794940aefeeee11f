package dawngauge.contract;

/** What a page may say of a tire at a stop. */
enum Field {
  /** Yes or no: it ran at or under 80 % of its reference, so that air alone is no cure. */
  RAN_LOW,
  /** Yes or no: it must not roll as it is. */
  HOLD,
  /** A {@link Figure}. */
  FLOOR,
  /** A {@link Figure}. */
  AIM,
  /** A {@link Figure}. */
  CEILING,
  /** A {@link LoadBasis}. */
  LOAD_BASIS,
  /** Yes or no: it is asked to be set at this stop. */
  SETS,
  /** A {@link Figure}: to be set while cold, before the start. */
  SET_COLD,
  /** A {@link Figure}: to be set as warm as the tire arrives. */
  SET_ON_ARRIVAL
}

package dawngauge.fitness;

/** Families of findings. */
public enum FindingKind {
  /** The axle's tires are rated less than the axle. */
  RATINGS_BELOW_GAWR,
  /** A tire's rating is not known. */
  RATING_UNKNOWN,
  /** A tire's rating rests on an assumption. */
  RATING_ASSUMED,
  /** No tire is named for a wheel. */
  NO_TIRE,
  /** The axle has no rating in the file. */
  NO_GAWR,
  /** The axle carries more than its rating. */
  AXLE_OVER_GAWR,
  /** The axle carries nearly its rating. */
  NOTHING_TO_SPARE,
  /** Axles weighed together may share so unevenly that one is over its rating. */
  GROUP_NEAR_GAWR,
  /** The vehicle weighs more than its rating. */
  VEHICLE_OVER_GVWR,
  /** The vehicle has no rating in the file. */
  NO_GVWR,
  /** The trailer's hitch load is not known, so that its whole weight is not. */
  HITCH_LOAD_UNKNOWN,
  /** The axle was not weighed. */
  NOT_WEIGHED,
  /** The tire carries more than it may within its limits. */
  TIRE_OVERLOADED,
  /** The wheel carries more than it may. */
  WHEEL_OVERLOADED,
  /** One side of the axle carries much more than the other. */
  UNEVEN_SIDES,
  /** Even at its limit it cannot be shown that the tire carries its load. */
  LOAD_NOT_SHOWN,
  /** The load is carried, but not with the whole reserve. */
  RESERVE_SMALL,
  /** The tire is old. */
  OLD_TIRE,
  /** The date code cannot be right. */
  DATE_CODE_UNREADABLE,
  /** The date code is missing. */
  NO_DATE_CODE,
  /** The trip has no date to judge ages on. */
  NO_TRIP_DATE,
  /** Tread is under the legal limit. */
  TREAD_BELOW_LEGAL,
  /** Tread is legal, but under what is used on trailers. */
  TREAD_LOW,
  /** The tread was not measured. */
  NO_TREAD,
  /** Damage was seen. */
  DAMAGE,
  /** It was repaired in a way that does not last. */
  POOR_REPAIR,
  /** A leg's top speed is above what the tire is made for. */
  TOO_FAST,
  /** A special trailer tire needs more pressure or less speed. */
  TRAILER_TIRE_SPEED,
  /** The speed symbol is in no table. */
  SPEED_SYMBOL_UNKNOWN,
  /** Speeds of legs are not known. */
  SPEED_UNKNOWN,
  /** Tires of an axle differ. */
  MIXED_TIRES,
  /** Dual mates differ in diameter. */
  DUAL_DIAMETERS,
  /** The label is of other tires than the fitted ones. */
  LABEL_OF_OTHER_TIRE,
  /** The label is of other tires, and what wheel and valve may take is not known. */
  RIM_LIMIT_UNKNOWN,
  /** No label pressure is known. */
  NO_LABEL,
  /** Label or target ask for more than tire, wheel or valve may take. */
  PRESSURE_ABOVE_LIMIT,
  /** The chosen target does not count. */
  TARGET_NOT_USED,
  /** The last cold reading is above the limit. */
  READING_HIGH,
  /** The last cold reading is below what the load needs. */
  READING_LOW,
  /** The last cold reading is by a gauge that cannot be judged here. */
  READING_NOT_JUDGED,
  /** Dual mates read unequal. */
  DUAL_PRESSURES,
  /** A vehicle has no spare. */
  NO_SPARE,
  /** The spare's size does not fit. */
  SPARE_SIZE,
  /** The spare is rated less than a place asks for. */
  SPARE_LOAD,
  /** The spare's tire or wheel may not take the pressure that a place asks for. */
  SPARE_PRESSURE,
  /** What the spare's wheel may take is not known. */
  SPARE_WHEEL_UNKNOWN,
  /** The spare was not gauged. */
  SPARE_NOT_GAUGED,
  /** The forecast holds it where it stands now. */
  HOLD_HERE,
  /** The forecast asks for air where it stands now. */
  SET_HERE,
  /** The forecast asks for a look where it stands now. */
  LOOK_HERE,
  /** The forecast holds it further on. */
  HOLD_AHEAD
}

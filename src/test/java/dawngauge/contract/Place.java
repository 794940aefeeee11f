package dawngauge.contract;

/**
 * Of which tire and where.
 *
 * @param tire short form of its position
 * @param stop index of the stop, or {@link #WHOLE_TRIP}
 */
record Place(String tire, int stop) {

  /** For pages that speak of a tire over the whole trip. */
  static final int WHOLE_TRIP = -1;
}

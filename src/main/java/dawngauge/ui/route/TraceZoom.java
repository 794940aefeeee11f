package dawngauge.ui.route;

/**
 * Which part of the pressure axis is seen.
 *
 * @param factor how many times it is stretched, 1 to {@value #MOST}
 * @param from where the seen part begins, as a share of the whole axis
 */
record TraceZoom(double factor, double from) {

  /** The whole axis. */
  static final TraceZoom WHOLE = new TraceZoom(1, 0);

  private static final int MOST = 8;

  /** Keeps the seen part within the axis. */
  TraceZoom {
    factor = Math.max(1, Math.min(MOST, factor));
    from = Math.max(0, Math.min(1 - 1 / factor, from));
  }

  /**
   * Stretched further; what is at a place stays there.
   *
   * @param by times, below 1 for less
   * @param at the place, as a share of what is seen
   */
  TraceZoom stretched(double by, double at) {
    double next = Math.max(1, Math.min(MOST, factor * by));
    return new TraceZoom(next, from + at / factor - at / next);
  }

  /** Moved by a share of what is seen. */
  TraceZoom panned(double by) {
    return new TraceZoom(factor, from + by / factor);
  }
}

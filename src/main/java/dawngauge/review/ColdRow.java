package dawngauge.review;

/** The cold readings of one tire as they are fitted: parts of the air in it, a line a reading. */
final class ColdRow {

  /** When each was taken, in days from the first. */
  final double[] days;

  /** Part of its air lost up to each, what all tires share taken off. */
  final double[] lost;

  /** One standard deviation of a reading. */
  final double each;

  /** Absolute pressure at the last, in pascal. */
  final double absolute;

  ColdRow(double[] days, double[] lost, double each, double absolute) {
    this.days = days;
    this.lost = lost;
    this.each = each;
    this.absolute = absolute;
  }

  /** The same readings, less sure. */
  ColdRow wider(double factor) {
    return new ColdRow(days, lost, each * factor, absolute);
  }
}

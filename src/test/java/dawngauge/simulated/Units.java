package dawngauge.simulated;

/** What a crew's units are in SI. */
final class Units {

  /** Pascal in a psi; NIST SP 811 (2008), appendix B. */
  static final double PSI = 6894.757;

  /** Newton in a pound of load: 0.45359237 kg and 9.80665 m/s², both exact; NIST SP 811. */
  static final double POUND = 0.45359237 * 9.80665;

  /** Meter in a mile, exact; NIST SP 811. */
  static final double MILE = 1609.344;

  /** Meter in a foot, exact; NIST SP 811. */
  static final double FOOT = 0.3048;

  static final double HOUR = 3600;
  static final double DAY = 86_400;

  private Units() {}

  static double fahrenheit(double kelvins) {
    return kelvins * 1.8 - 459.67;
  }
}

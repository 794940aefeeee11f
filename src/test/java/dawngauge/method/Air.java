package dawngauge.method;

/** Section 3: the air at a place and moment. */
record Air(double kelvins, double sigma, double coldSide, boolean bridged) {

  /** What is given for a place, over time. */
  interface Course {
    Air at(double seconds);
  }

  Air towards(Air other, double part) {
    return new Air(
        kelvins + part * (other.kelvins - kelvins),
        sigma + part * (other.sigma - sigma),
        Math.max(coldSide, other.coldSide),
        false);
  }
}

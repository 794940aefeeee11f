package dawngauge.tire;

/** Classes of tires as the standards divide them. */
public enum TireClass {
  /** Passenger-car tire, "P" metric or Euro-metric. */
  PASSENGER("passenger"),
  /** Light truck tire, "LT". */
  LIGHT_TRUCK("light truck"),
  /** Special trailer tire, "ST". */
  SPECIAL_TRAILER("special trailer"),
  /** Truck and bus tire. */
  COMMERCIAL("commercial");

  private final String word;

  TireClass(String word) {
    this.word = word;
  }

  /** Its name in files and sentences. */
  public String word() {
    return word;
  }
}

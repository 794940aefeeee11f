package dawngauge.trip;

/**
 * Names an axle: "trailer axle 2".
 *
 * @param vehicle name of the vehicle
 * @param number from the front, 1 first
 */
public record AxleRef(String vehicle, int number) {

  /** As people say it. */
  public String words() {
    return vehicle + " axle " + number;
  }
}

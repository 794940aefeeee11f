package dawngauge.trip;

/**
 * A place where a tire is fitted.
 *
 * @param axle the axle
 * @param slot where on the axle
 */
public record WheelPosition(AxleRef axle, WheelSlot slot) {

  /** As people say it: "trailer axle 2 left". */
  public String words() {
    return axle.words() + " " + slot.words();
  }
}

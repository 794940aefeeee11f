package dawngauge.ambient;

import java.time.Instant;
import java.util.List;

/**
 * Air temperatures at one place as a service gave them.
 *
 * @param service who gave it, in words, as its terms want it named
 * @param issued when the service made it; a forecast's uncertainty grows from here
 * @param elevationMeters height for which the temperatures hold: the cell's own, or the height that
 *     was passed with the question; NaN if the service did not say. Whoever uses them corrects for
 *     the difference to the ground, once
 * @param temperatures in time order, not empty, no instant twice; gaps are left out
 */
public record WeatherAnswer(
    String service, Instant issued, double elevationMeters, List<At> temperatures) {

  /**
   * One temperature.
   *
   * @param time when
   * @param kelvins of the air, 2 m above the ground
   */
  public record At(Instant time, double kelvins) {}

  /** Copies the list and refuses one that is empty or out of order. */
  public WeatherAnswer {
    temperatures = List.copyOf(temperatures);
    if (temperatures.isEmpty()) {
      throw new IllegalArgumentException("an answer has at least one temperature");
    }
    for (int i = 1; i < temperatures.size(); i++) {
      if (!temperatures.get(i).time().isAfter(temperatures.get(i - 1).time())) {
        throw new IllegalArgumentException(temperatures.get(i).time() + " is out of order");
      }
    }
  }
}

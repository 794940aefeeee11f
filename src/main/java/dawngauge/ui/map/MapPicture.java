package dawngauge.ui.map;

import dawngauge.quantity.Unit;
import java.util.List;

/**
 * What the map is to show; a line joins each stop with the next.
 *
 * @param stops those that have a place on the map, in order
 * @param chosen index of the chosen stop
 * @param unit of the scale
 * @param dark whether on dark ground
 */
public record MapPicture(List<MapStop> stops, int chosen, Unit unit, boolean dark) {

  /** Copies the list. */
  public MapPicture {
    stops = List.copyOf(stops);
  }
}

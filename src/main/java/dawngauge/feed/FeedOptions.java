package dawngauge.feed;

import java.util.HashSet;
import java.util.List;
import java.util.Map;

/**
 * Which services are asked, in which order, where, and how.
 *
 * @param order names of services, the first that covers a place is asked first
 * @param addresses where each is asked, by name
 * @param limits how they are asked
 */
public record FeedOptions(
    List<String> order, Map<String, ServiceAddress> addresses, HttpLimits limits) {

  /** Name of the U.S. National Weather Service here. */
  public static final String NWS = "nws";

  /** Name of MET Norway's Locationforecast here. */
  public static final String MET = "met";

  /** Copies, and refuses an order that names a service twice, an unknown one, or one nowhere. */
  public FeedOptions {
    order = List.copyOf(order);
    addresses = Map.copyOf(addresses);
    if (order.isEmpty() || new HashSet<>(order).size() != order.size()) {
      throw new IllegalArgumentException("each service stands once in the order: " + order);
    }
    for (String name : order) {
      if (!List.of(NWS, MET).contains(name) || !addresses.containsKey(name)) {
        throw new IllegalArgumentException("\"" + name + "\" is unknown or has no address");
      }
    }
  }

  /** Where a service of the order is asked. */
  ServiceAddress address(String name) {
    ServiceAddress address = addresses.get(name);
    if (address == null) {
      throw new IllegalArgumentException("\"" + name + "\" has no address");
    }
    return address;
  }
}

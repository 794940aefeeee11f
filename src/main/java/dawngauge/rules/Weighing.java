package dawngauge.rules;

import dawngauge.trip.AxleRef;
import dawngauge.trip.ScaleTicket;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * What one scale ticket says of an axle: both sides by scale, else the platform with the fewest
 * other axles on it, shared equally.
 *
 * @param ticket index of the ticket
 * @param kilograms what the axle put on the scale
 * @param basis how
 * @param together the axles that stood on the same platform, this one among them
 * @param hitched whether the trailer was hitched
 * @param leftShare part of it on the left side; NaN where sides were not weighed
 */
public record Weighing(
    int ticket,
    double kilograms,
    Loads.Basis basis,
    List<AxleRef> together,
    boolean hitched,
    double leftShare) {

  /** Copies the list. */
  public Weighing {
    together = List.copyOf(together);
  }

  /** What each ticket that weighed an axle says of it, the latest first. */
  public static List<Weighing> latestFirst(List<ScaleTicket> tickets, AxleRef ref) {
    List<Weighing> all = new ArrayList<>();
    for (int i = tickets.size() - 1; i >= 0; i--) {
      ScaleTicket ticket = tickets.get(i);
      int index = i;
      byWheels(index, ticket, ref).or(() -> byPlatform(index, ticket, ref)).ifPresent(all::add);
    }
    return all;
  }

  private static Optional<Weighing> byWheels(int index, ScaleTicket ticket, AxleRef ref) {
    double left = Double.NaN;
    double right = Double.NaN;
    for (ScaleTicket.WheelWeight wheel : ticket.wheels()) {
      if (wheel.axle().equals(ref) && wheel.left()) {
        left = wheel.weight().value().kilograms();
      } else if (wheel.axle().equals(ref)) {
        right = wheel.weight().value().kilograms();
      }
    }
    double both = left + right;
    return both > 0
        ? Optional.of(
            new Weighing(
                index, both, Loads.Basis.WHEEL, List.of(ref), ticket.hitched(), left / both))
        : Optional.empty();
  }

  private static Optional<Weighing> byPlatform(int index, ScaleTicket ticket, AxleRef ref) {
    return ticket.platforms().stream()
        .filter(platform -> platform.axles().contains(ref))
        .min(Comparator.comparingInt(platform -> platform.axles().size()))
        .map(
            platform -> {
              int axles = platform.axles().size();
              return new Weighing(
                  index,
                  platform.weight().value().kilograms() / axles,
                  axles == 1 ? Loads.Basis.AXLE : Loads.Basis.GROUP,
                  platform.axles(),
                  ticket.hitched(),
                  Double.NaN);
            });
  }
}

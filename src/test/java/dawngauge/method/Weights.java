package dawngauge.method;

import dawngauge.trip.Axle;
import dawngauge.trip.AxleRef;
import dawngauge.trip.Hitch;
import dawngauge.trip.LoadChange;
import dawngauge.trip.Rig;
import dawngauge.trip.ScaleTicket;
import dawngauge.trip.Stop;
import dawngauge.trip.Tire;
import dawngauge.trip.Trip;
import dawngauge.trip.Vehicle;
import dawngauge.trip.WheelPosition;
import java.util.Objects;

/** Section 8: the likely load of a tire on leaving a stop. Kilogram. */
final class Weights {
  private final Rig rig;
  private final Trip trip;

  /** A normal load, cut above; of one tire. */
  record Load(double middle, double sigma, double cut, boolean weighed, boolean alone) {
    private double z() {
      return (cut - middle) / sigma;
    }

    private double lift() {
      return Double.isInfinite(cut) ? 0 : Bell.density(z()) / Bell.under(z());
    }

    double mean() {
      return middle - sigma * lift();
    }

    /** One standard deviation, part of the load. */
    double spread() {
      double square = Double.isInfinite(cut) ? 1 : 1 - z() * lift() - lift() * lift();
      return sigma * Math.sqrt(square) / mean();
    }

    double quantile(double chance) {
      double all = Double.isInfinite(cut) ? 1 : Bell.under(z());
      return middle + sigma * Bell.quantile(chance * all);
    }

    /** Taken as heavy together. */
    Load plus(Load other) {
      return new Load(middle + other.middle, sigma + other.sigma, cut + other.cut, weighed, alone);
    }

    Load times(double part) {
      return new Load(middle * part, sigma * part, cut * part, weighed, alone);
    }
  }

  private record Changes(double sum, double variance) {}

  Weights(Trip trip) {
    this.trip = trip;
    this.rig = trip.rig();
  }

  /** With what flat tires leave to it. */
  Load carried(int stop, WheelPosition position) {
    Load all = of(stop, position);
    for (WheelPosition other : rig.positions()) {
      if (isFlat(other) && !isFlat(position) && takesOver(position, other)) {
        all = all.plus(of(stop, other));
      }
    }
    return all;
  }

  boolean isFlat(WheelPosition position) {
    return rig.fittedAt(position).orElseThrow().damage().contains(Tire.Damage.FLAT);
  }

  private boolean takesOver(WheelPosition position, WheelPosition flat) {
    AxleRef own = position.axle();
    AxleRef other = flat.axle();
    if (own.equals(other)) {
      return position.slot() == flat.slot().mate() && position.slot() != flat.slot();
    }
    Vehicle vehicle = rig.vehicle(own.vehicle()).orElseThrow();
    boolean close =
        vehicle.kind() == Vehicle.Kind.TRAILER || Math.min(own.number(), other.number()) > 1;
    return close
        && own.vehicle().equals(other.vehicle())
        && Math.abs(own.number() - other.number()) == 1
        && position.slot().isLeft() == flat.slot().isLeft()
        && !rig.axle(other).orElseThrow().dual();
  }

  /** At even shares of its side. */
  Load of(int stop, WheelPosition position) {
    AxleRef ref = position.axle();
    Axle axle = rig.axle(ref).orElseThrow();
    double tires = axle.dual() ? 2 : 1;
    Changes now = changes(stop, ref);
    for (int i = rig.tickets().size() - 1; i >= 0; i--) {
      ScaleTicket ticket = rig.tickets().get(i);
      double onTop = ticket.hitched() ? 0 : hitch(ref);
      double left = side(ticket, ref, true);
      double right = side(ticket, ref, false);
      if (left + right > 0) {
        double share = (position.slot().isLeft() ? left : right) / (left + right);
        return weighed(left + right + onTop, now, 0, 0, true).times(share / tires);
      }
      ScaleTicket.Platform found = null;
      for (ScaleTicket.Platform each : ticket.platforms()) {
        boolean better = found == null || each.axles().size() < found.axles().size();
        found = each.axles().contains(ref) && better ? each : found;
      }
      if (found != null) {
        int axles = found.axles().size();
        double share = found.weight().value().kilograms() / axles + onTop;
        return weighed(share, now, axles > 1 ? 0.05 : 0, 0.025, axles == 1).times(0.5 / tires);
      }
    }
    double gawr = Objects.requireNonNull(axle.gawr()).value().kilograms();
    double fullest = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < trip.route().stops().size(); i++) {
      fullest = Math.max(fullest, changes(i, ref).sum);
    }
    double under = now.sum - fullest;
    double sigma = Math.hypot(0.12 * gawr, Math.sqrt(now.variance));
    return new Load(0.8 * gawr + under, sigma, gawr + under, false, false).times(0.5 / tires);
  }

  private static Load weighed(
      double ticket, Changes now, double group, double side, boolean alone) {
    double likely = ticket + now.sum;
    double sigma =
        Math.sqrt(
            Math.pow(0.01 * ticket, 2)
                + Math.pow(group * likely, 2)
                + Math.pow(side * likely, 2)
                + now.variance);
    return new Load(likely, sigma, Double.POSITIVE_INFINITY, true, alone);
  }

  private static double side(ScaleTicket ticket, AxleRef ref, boolean left) {
    for (ScaleTicket.WheelWeight wheel : ticket.wheels()) {
      if (wheel.axle().equals(ref) && wheel.left() == left) {
        return wheel.weight().value().kilograms();
      }
    }
    return Double.NaN;
  }

  private double hitch(AxleRef ref) {
    Hitch hitch = Objects.requireNonNull(rig.hitch());
    return Objects.requireNonNull(hitch.load()).value().kilograms() * lever(ref);
  }

  private double lever(AxleRef ref) {
    double rear = rig.hitch() == null ? 1 : rig.hitch().lever();
    if (!ref.vehicle().equals(rig.vehicles().get(0).name())) {
      return 0;
    }
    int axles = rig.vehicles().get(0).axles().size();
    return ref.number() == axles ? rear : ref.number() == 1 ? 1 - rear : 0;
  }

  /** What came on and off an axle until a stop is left. */
  private Changes changes(int until, AxleRef ref) {
    double sum = 0;
    double variance = 0;
    for (Stop stop : trip.route().stops().subList(0, until + 1)) {
      for (LoadChange change : stop.loadChanges()) {
        if (!change.offered()) {
          double own =
              change.axles().containsKey(ref)
                  ? Objects.requireNonNull(change.axles().get(ref)).value().value()
                  : 0;
          double byHitch = change.hitch() == null ? 0 : change.hitch().value().value() * lever(ref);
          double kilograms = change.weight().value().kilograms() * (own + byHitch);
          double relative =
              switch (change.source()) {
                case WEIGHED -> 0.01;
                case TYPICAL -> 0.08;
                case GUESSED -> 0.15;
              };
          sum += kilograms;
          variance += Math.pow(kilograms * relative, 2);
        }
      }
    }
    return new Changes(sum, variance);
  }
}

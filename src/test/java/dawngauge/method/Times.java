package dawngauge.method;

import dawngauge.trip.Leg;
import dawngauge.trip.LogEvent;
import dawngauge.trip.Stop;
import dawngauge.trip.Trip;
import dawngauge.trip.TypedTime;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** Section 1: when and where. Epoch seconds and meters. */
final class Times {
  final double[] arrive;
  final double[] leave;
  final double[] check;
  final double[] way;
  final double[] speed;
  final double[] top;
  final boolean[] firstStart;
  final ZoneId[] zone;
  private final Map<String, Double> arrived = new HashMap<>();
  private final Map<String, Double> left = new HashMap<>();

  Times(Trip trip) {
    List<Stop> stops = trip.route().stops();
    int count = stops.size();
    arrive = new double[count];
    leave = new double[count];
    check = new double[count];
    way = new double[count];
    speed = new double[count];
    top = new double[count];
    firstStart = new boolean[count];
    zone = new ZoneId[count];
    for (LogEvent event : trip.log()) {
      if (event instanceof LogEvent.Arrived noted) {
        arrived.put(noted.stop(), of(noted.time()));
      } else if (event instanceof LogEvent.Left noted) {
        left.put(noted.stop(), of(noted.time()));
      }
    }
    clocks(trip);
    double lastDeparture = Double.NaN;
    for (int i = 0; i < count; i++) {
      boolean starts = i < count - 1 && !passes(i);
      LocalDate day = date(leave[i], zone[i]);
      firstStart[i] = starts && (i == 0 || !day.equals(date(lastDeparture, zone[lastStart(i)])));
      lastDeparture = starts ? leave[i] : lastDeparture;
    }
    for (int i = 0; i < count; i++) {
      check[i] = bySun(i, stops.get(i));
      for (LogEvent event : trip.log()) {
        double t = of(event.time());
        boolean gauged = event instanceof LogEvent.Reading || event instanceof LogEvent.Adjustment;
        if (gauged && t >= arrive[i] && t <= leave[i]) {
          check[i] = Math.max(check[i], t);
        }
      }
    }
  }

  private int lastStart(int stop) {
    int before = stop - 1;
    while (before > 0 && passes(before)) {
      before--;
    }
    return before;
  }

  private void clocks(Trip trip) {
    List<Stop> stops = trip.route().stops();
    double[] latest = latest(trip);
    for (int i = 0; i < stops.size(); i++) {
      Stop stop = stops.get(i);
      zone[i] = Objects.requireNonNull(stop.zone());
      double reached;
      if (i == 0) {
        reached = stop.arrive() == null ? Double.NaN : of(stop.arrive());
      } else {
        double driving = driving(trip.route().legs().get(i - 1));
        double planned = stop.arrive() == null ? leave[i - 1] + driving : of(stop.arrive());
        reached = arrived.getOrDefault(stop.id(), Math.min(planned, latest[2 * i]));
      }
      arrive[i] = reached;
      double stay = stop.stay() == null ? 0 : stop.stay().toSeconds();
      double goes = stop.leave() == null ? reached + stay : of(stop.leave());
      leave[i] = left.getOrDefault(stop.id(), Math.max(reached, Math.min(goes, latest[2 * i + 1])));
      if (i > 0) {
        Leg leg = trip.route().legs().get(i - 1);
        double length = Objects.requireNonNull(leg.distance()).value().meters();
        way[i] = way[i - 1] + length;
        speed[i - 1] = length / (arrive[i] - leave[i - 1]);
        top[i - 1] =
            leg.topSpeed() == null
                ? Math.max(65 * 0.44704, speed[i - 1] + 10 * 0.44704)
                : leg.topSpeed().value().metersPerSecond();
      }
    }
  }

  /** Latest arrival and departure of each stop that let all be true that was noted later. */
  private double[] latest(Trip trip) {
    List<Stop> stops = trip.route().stops();
    double[] latest = new double[2 * stops.size()];
    double next = Double.POSITIVE_INFINITY;
    for (int i = stops.size() - 1; i >= 0; i--) {
      double driving = i < stops.size() - 1 ? driving(trip.route().legs().get(i)) : 0;
      latest[2 * i + 1] = left.getOrDefault(stops.get(i).id(), next - driving);
      latest[2 * i] = arrived.getOrDefault(stops.get(i).id(), latest[2 * i + 1]);
      next = latest[2 * i];
    }
    return latest;
  }

  private static double driving(Leg leg) {
    return leg.duration() != null
        ? leg.duration().toSeconds()
        : Objects.requireNonNull(leg.distance()).value().meters()
            / Objects.requireNonNull(leg.averageSpeed()).value().metersPerSecond();
  }

  private double bySun(int i, Stop stop) {
    if (!firstStart[i] || stop.coordinate() == null) {
      return leave[i];
    }
    double latest = new Sun(date(leave[i], zone[i]), stop.coordinate()).rise() + 1800;
    double since = i == 0 ? arrive[i] : arrive[i] + 3 * 3600;
    return latest >= since && latest < leave[i] ? latest : leave[i];
  }

  boolean passes(int stop) {
    return stop > 0 && stop < arrive.length - 1 && arrive[stop] == leave[stop];
  }

  static LocalDate date(double seconds, ZoneId zone) {
    return Instant.ofEpochSecond((long) Math.floor(seconds)).atZone(zone).toLocalDate();
  }

  static double midnight(LocalDate date, ZoneId zone) {
    return date.atStartOfDay(zone).toEpochSecond();
  }

  static double of(@Nullable TypedTime typed) {
    return Objects.requireNonNull(typed).instant().getEpochSecond();
  }
}

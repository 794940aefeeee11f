package dawngauge.ambient;

import dawngauge.trip.Route;
import dawngauge.trip.Stop;
import dawngauge.trip.Trip;
import dawngauge.trip.TypedTime;
import java.time.Duration;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * Another weather or another start to hold beside the plan; the trip itself is left alone.
 *
 * @param shiftKelvins added to the air, in kelvin
 * @param edge how many standard deviations towards an edge of the band the air is taken: below zero
 *     the cold one, with the known bias of forecast minima; above zero the warm one
 * @param from the first stop for which air is changed, 0 first
 * @param to the last one
 * @param later by how much the rig starts later; negative for earlier
 */
public record WhatIf(double shiftKelvins, double edge, int from, int to, Duration later) {

  /** One-sided 90 %, for the edges of the band. */
  private static final double NINETY_ONE_SIDED = 1.2816;

  private static final DateTimeFormatter TIME =
      DateTimeFormatter.ofPattern("uuuu-MM-dd'T'HH:mmxxx'['VV']'", Locale.ROOT);

  /** Nothing else. */
  public static final WhatIf NOTHING = new WhatIf(0, 0, 0, Integer.MAX_VALUE, Duration.ZERO);

  /** Refuses what is no number and a part that ends before it begins. */
  public WhatIf {
    if (!Double.isFinite(shiftKelvins) || !Double.isFinite(edge) || to < from) {
      throw new IllegalArgumentException(shiftKelvins + " K, " + edge + ", " + from + " to " + to);
    }
  }

  /** The air at the cold edge of its band: 1 in 10 would be colder still. */
  public static WhatIf coldSnap() {
    return new WhatIf(0, -NINETY_ONE_SIDED, 0, Integer.MAX_VALUE, Duration.ZERO);
  }

  /** The air at the warm edge of its band. */
  public static WhatIf heat() {
    return new WhatIf(0, NINETY_ONE_SIDED, 0, Integer.MAX_VALUE, Duration.ZERO);
  }

  /** Air warmer or colder by so much, over a part of the route. */
  public static WhatIf shifted(double kelvins, int from, int to) {
    return new WhatIf(kelvins, 0, from, to, Duration.ZERO);
  }

  /** The same over a part of the route. */
  public WhatIf over(int first, int last) {
    return new WhatIf(shiftKelvins, edge, first, last, later);
  }

  /** The same with another start. */
  public WhatIf starting(Duration byLater) {
    return new WhatIf(shiftKelvins, edge, from, to, byLater);
  }

  /** Whether anything is changed. */
  public boolean isNothing() {
    return shiftKelvins == 0 && edge == 0 && later.isZero();
  }

  /** Whether the air of a stop, and of the leg that leaves it, is changed. */
  boolean changes(int stop) {
    return stop >= from && stop <= to && (shiftKelvins != 0 || edge != 0);
  }

  /** A temperature as it would be. */
  double kelvins(AirSeries series, double epochSeconds) {
    double biased = edge < 0 ? series.coldSideAt(epochSeconds) : 0;
    return series.kelvinsAt(epochSeconds)
        + shiftKelvins
        + edge * series.sigmaAt(epochSeconds)
        - biased;
  }

  /** The trip with its other start; typed times of later stops stay. */
  public Trip start(Trip trip) {
    List<Stop> stops = new ArrayList<>(trip.route().stops());
    if (later.isZero() || stops.isEmpty()) {
      return trip;
    }
    Stop first = stops.get(0);
    TypedTime leave = first.leave();
    if (leave == null) {
      return trip;
    }
    ZonedDateTime moved = leave.time().plus(later);
    stops.set(0, first.withTimes(first.arrive(), new TypedTime(moved, TIME.format(moved))));
    return trip.withRoute(new Route(stops, trip.route().legs()));
  }
}

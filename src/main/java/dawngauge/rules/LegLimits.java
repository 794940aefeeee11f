package dawngauge.rules;

import dawngauge.trip.Itinerary;
import dawngauge.trip.WheelPosition;
import dawngauge.trip.WheelSlot;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Floor, aim and ceiling of every tire on every leg. Found anew only where load or speed change.
 */
public final class LegLimits {

  private final Itinerary itinerary;
  private final Loads loads;
  private final Map<WheelPosition, FittedTire> fitted;
  private final LimitFinder finder;
  private final Map<FittedTire, List<Limits>> common = new HashMap<>();
  private final Map<FittedTire, List<Limits>> own = new HashMap<>();

  /** Limits along a trip of the tires as fitted at the start. */
  public LegLimits(
      Itinerary itinerary, Loads loads, Map<WheelPosition, FittedTire> fitted, LimitFinder finder) {
    this.itinerary = itinerary;
    this.loads = loads;
    this.fitted = Map.copyOf(fitted);
    this.finder = finder;
  }

  /** Limits of a tire on the leg that leaves each stop; at the last stop as on the leg before. */
  public List<Limits> of(FittedTire tire) {
    return common.computeIfAbsent(tire, this::onAllLegs);
  }

  private List<Limits> onAllLegs(FittedTire tire) {
    List<Limits> mine = own(tire);
    List<List<Limits>> mates = new ArrayList<>();
    for (WheelSlot slot : WheelSlot.of(tire.axle().dual())) {
      FittedTire other = fitted.get(new WheelPosition(tire.position().axle(), slot));
      if (other != null && slot != tire.position().slot()) {
        mates.add(own(other));
      }
    }
    List<Limits> all = new ArrayList<>();
    for (int visit = 0; visit < mine.size(); visit++) {
      boolean same = visit > 0 && same(mine, visit);
      for (List<Limits> mate : mates) {
        same = same && same(mate, visit);
      }
      all.add(same ? all.get(visit - 1) : common(visit, mine.get(visit), mates));
    }
    return all;
  }

  @SuppressWarnings("ReferenceEquality") // the same object was taken over; equal ones are made anew
  private static boolean same(List<Limits> limits, int visit) {
    return limits.get(visit) == limits.get(visit - 1);
  }

  /** All tires of an axle get one aim, that of the most loaded. */
  private static Limits common(int visit, Limits mine, List<List<Limits>> mates) {
    Limits common = mine;
    for (List<Limits> mate : mates) {
      Limits theirs = mate.get(visit);
      common = common.aimingAt(theirs.aim(), theirs.aimFrom());
    }
    return common;
  }

  private List<Limits> own(FittedTire tire) {
    return own.computeIfAbsent(tire, this::ownOnAllLegs);
  }

  private List<Limits> ownOnAllLegs(FittedTire tire) {
    List<Itinerary.Drive> drives = itinerary.drives();
    List<Limits> all = new ArrayList<>();
    double topBefore = Double.NaN;
    for (int visit = 0; visit < itinerary.visits().size(); visit++) {
      double top =
          drives.isEmpty()
              ? 0
              : drives.get(Math.min(visit, drives.size() - 1)).topMetersPerSecond();
      boolean same = top == topBefore && loads.asBefore(visit);
      all.add(
          same
              ? all.get(visit - 1)
              : finder.find(
                  tire,
                  loads.tire(visit, tire.position()),
                  loads.even(visit, tire.position()),
                  top));
      topBefore = top;
    }
    return all;
  }
}

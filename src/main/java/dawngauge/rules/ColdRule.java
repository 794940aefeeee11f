package dawngauge.rules;

import dawngauge.trip.Itinerary;
import dawngauge.trip.LogEvent;
import dawngauge.trip.ReadingState;
import dawngauge.trip.Trip;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Which readings are cold ones, one rule for all: three hours since the rig rolled more than a mile
 * (NHTSA consumer text), by times that were noted, whatever the reading's own word. Planned times
 * alone make nothing warm.
 */
public final class ColdRule {

  /** A move under a mile leaves a tire cold (NHTSA consumer text); meter. */
  public static final double SHORT_MOVE_METERS = 1609.344;

  /** From one instant to another the rig surely rolled, or may have. */
  private record Roll(Instant from, Instant to) {}

  private final List<Roll> rolls = new ArrayList<>();

  /**
   * By the log of a trip.
   *
   * @param itinerary its times: those noted, and how long a drive takes whose end was not noted
   */
  public ColdRule(Trip trip, Itinerary itinerary) {
    Set<String> arrived = new HashSet<>();
    Set<String> left = new HashSet<>();
    for (LogEvent event : trip.log()) {
      if (event instanceof LogEvent.Arrived arrival) {
        arrived.add(arrival.stop());
      } else if (event instanceof LogEvent.Left leaving) {
        left.add(leaving.stop());
      } else if (event instanceof LogEvent.Reading reading
          && reading.state() == ReadingState.WARM) {
        // Gauged warm: it rolled up to then, or not long before.
        rolls.add(new Roll(reading.time().instant(), reading.time().instant()));
      }
    }
    drives(itinerary, arrived, left);
  }

  /** Places passed do not cut a drive into short moves; short moves soon after another add up. */
  private void drives(Itinerary itinerary, Set<String> arrived, Set<String> left) {
    List<Itinerary.Visit> visits = itinerary.visits();
    Itinerary.Visit from = visits.get(0);
    double meters = 0;
    boolean noted = false;
    for (int i = 1; i < visits.size(); i++) {
      Itinerary.Visit to = visits.get(i);
      double length = itinerary.drives().get(i - 1).meters();
      meters += length > 0 ? length : SHORT_MOVE_METERS;
      noted |= left.contains(visits.get(i - 1).stop().id()) || arrived.contains(to.stop().id());
      if (to.passes() && i + 1 < visits.size()) {
        continue;
      }
      if (!noted || meters >= SHORT_MOVE_METERS) {
        if (noted) {
          rolls.add(new Roll(from.leave(), to.arrive()));
        }
        meters = 0;
      } else if (to.stay().compareTo(ReadingState.COLD_AFTER) >= 0) {
        meters = 0;
      }
      from = to;
      noted = false;
    }
  }

  /** When the rig last came to stand before a time, as far as that was noted. */
  public Optional<Instant> lastRolled(Instant time) {
    Instant last = null;
    for (Roll roll : rolls) {
      Instant end = roll.to.isBefore(time) ? roll.to : time;
      if (!roll.from.isAfter(time) && (last == null || end.isAfter(last))) {
        last = end;
      }
    }
    return Optional.ofNullable(last);
  }

  /** Whether the rig rolled less than three hours before a time, by what was noted. */
  public boolean justRolled(Instant time) {
    return lastRolled(time)
        .filter(rolled -> Duration.between(rolled, time).compareTo(ReadingState.COLD_AFTER) < 0)
        .isPresent();
  }

  /** Whether a reading that calls itself cold is warm by what was noted. */
  public boolean wronglyCold(LogEvent.Reading reading) {
    boolean saysCold =
        reading.state() == ReadingState.COLD || reading.state() == ReadingState.COLD_IN_SUN;
    Instant time = reading.time().instant();
    return saysCold && justRolled(time);
  }

  /** How the tire was at a reading. */
  public ReadingState stateOf(LogEvent.Reading reading) {
    return wronglyCold(reading) ? ReadingState.WARM : reading.state();
  }
}

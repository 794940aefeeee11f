package dawngauge.trip;

import dawngauge.quantity.Entered;
import dawngauge.quantity.GaugePressure;
import dawngauge.quantity.Temperature;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A round with the gauge at a stop: what all its readings have in common. Tires are read in walking
 * order, a minute each.
 *
 * @param stop id of the stop
 * @param start when the first tire is read
 * @param state how warm the tires are
 * @param gauge name of the gauge
 * @param air temperature of the air as measured, or null
 * @param sun on which side the sun stands
 */
public record ReadingRound(
    String stop,
    TypedTime start,
    ReadingState state,
    String gauge,
    @Nullable Entered<Temperature> air,
    Sun sun) {

  /** On which side of the rig the sun stands. */
  public enum Sun {
    /** On neither, as far as the crew told. */
    NEITHER("neither side"),
    /** On the left. */
    LEFT("the left side"),
    /** On the right. */
    RIGHT("the right side");

    private final String words;

    Sun(String words) {
      this.words = words;
    }

    /** In words. */
    public String words() {
      return words;
    }

    /** Whether it stands on a place. */
    public boolean on(WheelPosition position) {
      return this != NEITHER && position.slot().isLeft() == (this == LEFT);
    }
  }

  /** After arriving, before the first tire is read; ours. */
  private static final Duration AFTER_ARRIVAL = Duration.ofMinutes(5);

  /** Before a start, when the round begins; ours. */
  private static final Duration BEFORE_START = Duration.ofMinutes(30);

  /**
   * When a round would be at a stop: now where the rig stands there now; before the start where a
   * day begins there; else five minutes after arriving. Never outside of the stay.
   */
  public static Instant usualStart(Itinerary.Visit visit, Instant now) {
    if (!now.isBefore(visit.arrive()) && !now.isAfter(visit.leave())) {
      return now;
    }
    Instant usual =
        visit.firstStartOfDay()
            ? visit.leave().minus(BEFORE_START)
            : visit.arrive().plus(AFTER_ARRIVAL);
    Instant most = usual.isAfter(visit.leave()) ? visit.leave() : usual;
    return most.isBefore(visit.arrive()) ? visit.arrive() : most;
  }

  /**
   * The tires of the rig at the start of the round, in walking order; spares are not among them.
   */
  public List<Tire> tires(Trip trip) {
    return new ArrayList<>(LogEdits.fittedAt(trip, start.instant()).values());
  }

  /** How warm a tire is at a place: in a cold round those of the sunny side are in the sun. */
  public ReadingState state(@Nullable WheelPosition position) {
    return state == ReadingState.COLD && position != null && sun.on(position)
        ? ReadingState.COLD_IN_SUN
        : state;
  }

  /** Where a tire stands when the round begins, or null. */
  public @Nullable WheelPosition position(Trip trip, String tire) {
    return LogEdits.positionOf(trip, tire, start.instant()).orElse(null);
  }

  /**
   * A reading of the round.
   *
   * @param position where the tire stands, or null where that is not known
   * @param order of the tire, 0 first
   * @param latest the rig leaves then: no reading is later, or null
   */
  public LogEvent.Reading reading(
      String tire,
      @Nullable WheelPosition position,
      int order,
      Entered<GaugePressure> pressure,
      @Nullable Instant latest) {
    return new LogEvent.Reading(
        time(order, latest), tire, pressure, gauge, state(position), air, null, Remarks.NONE);
  }

  /** When a tire is read. */
  public TypedTime time(int order, @Nullable Instant latest) {
    Instant wanted = start.instant().plus(Duration.ofMinutes(order));
    Instant time = latest != null && wanted.isAfter(latest) ? latest : wanted;
    Instant least = start.instant().isAfter(time) ? start.instant() : time;
    return LogEdits.at(least, start.time().getZone());
  }
}

package dawngauge.trip;

import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZonedDateTime;

/** On which day the rig leaves a stop, where only the clock says when. */
public final class LeaveDay {

  /** Who comes before this hour stands there for the rest of that night; ours, no source. */
  private static final int LATE_NIGHT = 4;

  private LeaveDay() {}

  /**
   * The first day on which it may leave.
   *
   * @param night whether it stands there for a night
   */
  public static LocalDate first(ZonedDateTime arrives, boolean night) {
    boolean next = night && arrives.getHour() >= LATE_NIGHT;
    return arrives.toLocalDate().plusDays(next ? 1 : 0);
  }

  /** When it leaves after a night, by the clock there. */
  public static TypedTime afterNight(ZonedDateTime arrives, LocalTime clock) {
    LocalDate day = first(arrives, true);
    TypedTime time = TypedTime.of(clock.atDate(day), arrives.getZone());
    return time.instant().isBefore(arrives.toInstant())
        ? TypedTime.of(clock.atDate(day.plusDays(1)), arrives.getZone())
        : time;
  }
}

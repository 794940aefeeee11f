package dawngauge.advice;

import dawngauge.forecast.TireSnapshot;
import dawngauge.trip.ReadingState;
import java.time.Instant;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;

/**
 * The figure to set a tire to at any minute of a stay. The air that is filled in stays the same;
 * the gauge shows less of it as the tire cools.
 */
public final class StayFigures {

  /** A clock shows whole minutes: an arrival at 12:28:36 is met at 12:28 and at 12:29. */
  private static final double CLOCK = 60;

  private final List<TireSnapshot> stay;
  private final FigureRule.Wanted wanted;
  private final boolean neverWarm;
  private final ZoneId zone;
  private final SetFigure cold;

  /**
   * Of a stay.
   *
   * @param stay the tire through it, in time order
   * @param neverWarm whether the rig did not roll before it
   * @param zone of its stop
   * @param cold the figure for a tire as cool as the air when it is to be set
   */
  StayFigures(
      List<TireSnapshot> stay,
      FigureRule.Wanted wanted,
      boolean neverWarm,
      ZoneId zone,
      SetFigure cold) {
    this.stay = stay;
    this.wanted = wanted;
    this.neverWarm = neverWarm;
    this.zone = zone;
    this.cold = cold;
  }

  /** Zone of its stop. */
  public ZoneId zone() {
    return zone;
  }

  /** The first time from its beginning on at which the clock of the stop shows a time. */
  public Instant next(LocalTime clock) {
    Instant begins = Instant.ofEpochSecond((long) Math.floor(stay.get(0).seconds()));
    ZonedDateTime first = begins.atZone(zone);
    ZonedDateTime that = first.with(clock);
    return (that.toInstant().plusSeconds(59).isBefore(begins) ? that.plusDays(1) : that)
        .toInstant();
  }

  /**
   * The figure at a minute; empty outside of the stay and where the tire's warmth is not known.
   * Between nodes of the timeline, ten minutes at most, the tire is taken to cool evenly.
   */
  public Optional<SetFigure> at(Instant time) {
    double first = stay.get(0).seconds();
    double last = stay.get(stay.size() - 1).seconds();
    double asked = time.getEpochSecond();
    double seconds = Math.max(first, Math.min(last, asked));
    if (Math.abs(asked - seconds) >= CLOCK) {
      return Optional.empty();
    }
    int after = 0;
    while (stay.get(after).seconds() < seconds) {
      after++;
    }
    TireSnapshot here = stay.get(after);
    TireSnapshot then = after == 0 ? here : stay.get(after - 1).towards(here, seconds);
    return Double.isNaN(then.reading())
        ? Optional.empty()
        : Optional.of(wanted.at(then, isWarm(then)));
  }

  /** After three hours a tire counts as cold. */
  private boolean isWarm(TireSnapshot then) {
    double rested = then.seconds() - stay.get(0).seconds();
    return !neverWarm && rested < ReadingState.COLD_AFTER.toSeconds();
  }

  /** The last full minute up to which the gauge is to show the same figure, within the stay. */
  public Instant until(Instant time) {
    Instant last = time;
    Optional<SetFigure> figure = at(time);
    Instant next = time.truncatedTo(ChronoUnit.MINUTES).plus(1, ChronoUnit.MINUTES);
    while (figure.isPresent()
        && at(next).map(SetFigure::figure).equals(figure.map(SetFigure::figure))) {
      last = next;
      next = next.plus(1, ChronoUnit.MINUTES);
    }
    return last;
  }

  /** The figure for a tire as cool as the air when it is to be set. */
  public SetFigure cold() {
    return cold;
  }
}

package dawngauge.trip;

import dawngauge.quantity.Distance;
import dawngauge.quantity.Entered;
import dawngauge.quantity.Temperature;
import dawngauge.quantity.TemperatureDifference;
import io.soabase.recordbuilder.core.RecordBuilder;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Expected air temperature at a stop, or at a point on the leg that leaves it.
 *
 * @param stop id of the stop
 * @param along way from the stop, where it is a point on the leg; else null
 * @param figure the temperature, by hour, or by low and high
 * @param provenance where it came from
 * @param uncertainty one standard deviation, where typed
 * @param remarks note and extras
 */
@RecordBuilder
public record AmbientEntry(
    String stop,
    @Nullable Entered<Distance> along,
    Figure figure,
    Provenance provenance,
    @Nullable Entered<TemperatureDifference> uncertainty,
    Remarks remarks)
    implements AmbientEntryBuilder.With {

  /** At a stop. */
  public AmbientEntry(
      String stop,
      Figure figure,
      Provenance provenance,
      @Nullable Entered<TemperatureDifference> uncertainty,
      Remarks remarks) {
    this(stop, null, figure, provenance, uncertainty, remarks);
  }

  /** Whether it stands for a stop, not for a point on a leg. */
  public boolean isAtStop() {
    return along == null;
  }

  /** The same at another stop. */
  public AmbientEntry at(String other) {
    return withStop(other);
  }

  /** What is expected. */
  public sealed interface Figure permits Steady, Hourly, LowHigh {}

  /**
   * One temperature for the whole stay.
   *
   * @param temperature of the air
   */
  public record Steady(Entered<Temperature> temperature) implements Figure {}

  /**
   * Temperatures at given times, linear between, steady before the first and after the last.
   *
   * @param hours at least one, in time order
   */
  public record Hourly(List<At> hours) implements Figure {
    /**
     * One of them.
     *
     * @param time when
     * @param temperature of the air
     */
    public record At(TypedTime time, Entered<Temperature> temperature) {}

    /** Copies the list. */
    public Hourly {
      hours = List.copyOf(hours);
      if (hours.isEmpty()) {
        throw new IllegalArgumentException("hourly air needs at least one time");
      }
    }
  }

  /**
   * A day's low and high, spread over the day by the published curve.
   *
   * @param date the day at the stop
   * @param low lowest temperature, about sunrise
   * @param high highest temperature, in the afternoon
   */
  public record LowHigh(LocalDate date, Entered<Temperature> low, Entered<Temperature> high)
      implements Figure {}
}

package dawngauge.trip;

import dawngauge.quantity.Entered;
import dawngauge.quantity.GaugePressure;
import dawngauge.quantity.Temperature;
import io.soabase.recordbuilder.core.RecordBuilder;
import org.jspecify.annotations.Nullable;

/** Something noted on the way. */
public sealed interface LogEvent {

  /** When. */
  TypedTime time();

  /** Note and extras. */
  Remarks remarks();

  /**
   * A pressure reading.
   *
   * @param time when
   * @param tire id of the tire
   * @param pressure what the gauge showed
   * @param gauge name of the gauge
   * @param state cold or not, as the crew judged it
   * @param air temperature of the air as measured then, or null
   * @param tireTemperature the tire's own temperature where it was not that of the air, or null
   * @param remarks note and extras
   */
  @RecordBuilder
  record Reading(
      TypedTime time,
      String tire,
      Entered<GaugePressure> pressure,
      String gauge,
      ReadingState state,
      @Nullable Entered<Temperature> air,
      @Nullable Entered<Temperature> tireTemperature,
      Remarks remarks)
      implements LogEvent, LogEventReadingBuilder.With {
    /** The same of a tire in another state. */
    public Reading in(ReadingState other) {
      return withState(other);
    }
  }

  /**
   * Air added or let out.
   *
   * @param time when
   * @param tire id of the tire
   * @param from what the gauge showed before, or null if it was not read
   * @param to what it showed after
   * @param gauge name of the gauge
   * @param remarks note and extras
   */
  @RecordBuilder
  record Adjustment(
      TypedTime time,
      String tire,
      @Nullable Entered<GaugePressure> from,
      Entered<GaugePressure> to,
      String gauge,
      Remarks remarks)
      implements LogEvent, LogEventAdjustmentBuilder.With {}

  /**
   * A wheel changed.
   *
   * @param time when
   * @param position where
   * @param off id of the tire that came off
   * @param on id of the tire that went on
   * @param remarks note and extras
   */
  @RecordBuilder
  record TireChange(TypedTime time, WheelPosition position, String off, String on, Remarks remarks)
      implements LogEvent, LogEventTireChangeBuilder.With {}

  /**
   * The rig arrived.
   *
   * @param time when
   * @param stop id of the stop
   * @param remarks note and extras
   */
  @RecordBuilder
  record Arrived(TypedTime time, String stop, Remarks remarks)
      implements LogEvent, LogEventArrivedBuilder.With {}

  /**
   * The rig left.
   *
   * @param time when
   * @param stop id of the stop
   * @param remarks note and extras
   */
  @RecordBuilder
  record Left(TypedTime time, String stop, Remarks remarks)
      implements LogEvent, LogEventLeftBuilder.With {}

  /**
   * A note.
   *
   * @param time when
   * @param text what
   * @param remarks extras
   */
  @RecordBuilder
  record Note(TypedTime time, String text, Remarks remarks)
      implements LogEvent, LogEventNoteBuilder.With {}
}

package dawngauge.forecast;

import dawngauge.quantity.Entered;
import dawngauge.quantity.Temperature;
import dawngauge.rules.FittedTire;
import dawngauge.trip.LogEvent;
import dawngauge.trip.ReadingState;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What the log says of a tire at a node changes what is known of it. */
final class TireLog {

  private final TripContext context;
  private final TireState state;
  private final List<ReadingCheck> all = new ArrayList<>();
  private final List<TireSetting> made = new ArrayList<>();
  private final List<BareReading> bare = new ArrayList<>();

  TireLog(TripContext context, TireState state) {
    this.context = context;
    this.state = state;
  }

  /** Every reading so far, on the legs too. */
  List<ReadingCheck> all() {
    return all;
  }

  /** Every reading so far from which no air in the tire follows. */
  List<BareReading> bare() {
    return bare;
  }

  /** Every setting so far whose warmth was known. */
  List<TireSetting> made() {
    return made;
  }

  /**
   * Applies what was noted at a node.
   *
   * @param readings takes the readings, each against what was expected
   */
  void apply(int node, List<ReadingCheck> readings) {
    for (LogEvent event : context.eventsAt(node)) {
      if (event instanceof LogEvent.Reading reading && isMine(reading.tire())) {
        read(reading, node, readings);
      } else if (event instanceof LogEvent.Adjustment adjustment && isMine(adjustment.tire())) {
        adjust(adjustment, node);
      } else if (event instanceof LogEvent.TireChange change
          && change.position().equals(state.tire().position())) {
        change(change, node);
      }
    }
  }

  private boolean isMine(String id) {
    return state.tire().tire().id().equals(id);
  }

  private void read(LogEvent.Reading reading, int node, List<ReadingCheck> readings) {
    Timeline timeline = context.timeline;
    Readings taken = new Readings(context, state, node);
    FillOrigin found = taken.read(reading);
    TireSnapshot expected = state.moment(node);
    if (found == null) {
      bare.add(
          new BareReading(
              reading, taken.open(reading), taken.errors(reading.gauge()), mayHaveRolled()));
      return;
    }
    double settled = found.fill() * timeline.air[node] - timeline.pressure[node];
    FillOrigin known = expected == null ? found : Readings.joined(found, expected, reading);
    double expectedReading = expected == null ? Double.NaN : taken.expected(expected, reading);
    double expectedSigma = expected == null ? Double.NaN : taken.expectedSigma(expected, reading);
    boolean mayHaveRolled = mayHaveRolled();
    if (known != null) {
      state.known(known);
    }
    readings.add(
        new ReadingCheck(
            reading,
            expectedReading,
            expectedSigma,
            settled,
            Readings.settledSigma(found, timeline.air[node]),
            mayHaveRolled,
            expected == null ? Double.NaN : expected.fill(),
            found.fill(),
            state.fill(),
            found.airKelvins(),
            timeline.pressure[node],
            found.errors(),
            found.airSigma(),
            found.tireKelvins(),
            found.warmSigma(),
            context.braked(reading)));
    all.add(readings.get(readings.size() - 1));
    Entered<Temperature> own = reading.tireTemperature();
    if (own != null) {
      state.warm(own.value().kelvins());
    }
    state.rolled(false);
  }

  private boolean mayHaveRolled() {
    return state.rolledSinceReading() || state.origin() == null;
  }

  /** Air added to a tire of unknown warmth: what was known of it no longer holds either. */
  private void adjust(LogEvent.Adjustment adjustment, int node) {
    @Nullable FillOrigin found = new Readings(context, state, node).adjusted(adjustment);
    if (found == null) {
      state.unknown();
    } else {
      TireSnapshot before = state.moment(node);
      made.add(new TireSetting(adjustment, found, before == null ? Double.NaN : before.fill()));
      state.known(found);
    }
  }

  private void change(LogEvent.TireChange change, int node) {
    context
        .trip
        .rig()
        .tire(change.on())
        .map(on -> context.refit(state.tire().position(), on))
        .ifPresent(
            on -> {
              state.change(on, context.decayOf(on), node);
              FillOrigin known = asSpare(on, node);
              if (known != null) {
                state.known(known);
                state.rolled(false);
              }
            });
  }

  /** What was last read or set of a tire while it was carried along; null where nothing was. */
  private @Nullable FillOrigin asSpare(FittedTire tire, int until) {
    FillOrigin last = null;
    for (int node = 0; node <= until; node++) {
      for (LogEvent event : context.eventsAt(node)) {
        TireState cool = new TireState(context.timeline, tire, null);
        cool.coolAt(node);
        Readings readings = new Readings(context, cool, node);
        String id = tire.tire().id();
        if (event instanceof LogEvent.Reading reading && reading.tire().equals(id)) {
          FillOrigin read = readings.read(reading.in(coolState(reading)));
          last = read == null ? last : read;
        } else if (event instanceof LogEvent.Adjustment set && set.tire().equals(id)) {
          last = readings.adjusted(set);
        }
      }
    }
    return last;
  }

  /** A tire that is carried along does not warm by running. */
  private static ReadingState coolState(LogEvent.Reading reading) {
    return reading.state() == ReadingState.COLD_IN_SUN
        ? ReadingState.COLD_IN_SUN
        : ReadingState.COLD;
  }
}

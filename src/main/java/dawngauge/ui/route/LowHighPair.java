package dawngauge.ui.route;

import dawngauge.problem.Outcome;
import dawngauge.quantity.Entered;
import dawngauge.quantity.QuantityKind;
import dawngauge.quantity.Temperature;
import dawngauge.quantity.UnitSystem;
import dawngauge.trip.Trip;
import dawngauge.ui.common.FigureField;
import dawngauge.ui.common.Forms;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/**
 * Two fields that must agree: the low is not above the high. A figure that cannot be taken alone
 * waits in its field and is taken together with the other one, as one edit.
 */
final class LowHighPair {

  /** The trip with a figure typed. */
  interface Change {
    /**
     * Makes it.
     *
     * @param own what is typed, or null where the field was cleared
     * @param waiting what waits in the other field, or null
     * @param alone whether the one in this field stands for both so far
     */
    Outcome<Trip> of(
        @Nullable Entered<Temperature> own, @Nullable Entered<Temperature> waiting, boolean alone);
  }

  private final Supplier<UnitSystem> units;
  private final Consumer<Trip> edit;
  private final FigureField<Trip> low;
  private final FigureField<Trip> high;

  /** The field whose figure stands for both, where only that one has been typed here. */
  private @Nullable FigureField<Trip> alone;

  /**
   * Two fields.
   *
   * @param behind what stands behind "Low" and "High" in their names
   * @param units units of a bare number
   * @param ofLow what a low does
   * @param ofHigh what a high does
   * @param edit takes the trip
   */
  LowHighPair(
      String behind, Supplier<UnitSystem> units, Change ofLow, Change ofHigh, Consumer<Trip> edit) {
    this.units = units;
    this.edit = edit;
    low = new FigureField<>("Low" + behind, text -> lowered(text, ofLow), trip -> take(trip, true));
    high =
        new FigureField<>("High" + behind, text -> raised(text, ofHigh), trip -> take(trip, false));
  }

  FigureField<Trip> low() {
    return low;
  }

  FigureField<Trip> high() {
    return high;
  }

  private Outcome<Trip> lowered(String text, Change ofLow) {
    return EditedStop.then(
        read(text), typed -> ofLow.of(typed.orElse(null), waiting(high), alone == low));
  }

  private Outcome<Trip> raised(String text, Change ofHigh) {
    return EditedStop.then(
        read(text), typed -> ofHigh.of(typed.orElse(null), waiting(low), alone == high));
  }

  private Outcome<Optional<Entered<Temperature>>> read(String text) {
    return Forms.figure(QuantityKind.TEMPERATURE, units.get()).apply(text);
  }

  private @Nullable Entered<Temperature> waiting(FigureField<Trip> field) {
    return field.draft() == null
        ? null
        : read(field.typed()).value().flatMap(typed -> typed).orElse(null);
  }

  private void take(Trip trip, boolean ofLow) {
    FigureField<Trip> own = ofLow ? low : high;
    FigureField<Trip> other = ofLow ? high : low;
    boolean waited = waiting(other) != null;
    boolean first = other.field().getText().isBlank();
    if (own.typed().isEmpty()) {
      alone = other;
    } else if (waited || (alone != own && !first)) {
      alone = null;
    } else {
      alone = own;
    }
    edit.accept(trip);
    if (waited) {
      other.drop();
    }
  }
}

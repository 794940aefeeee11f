package dawngauge.ui.rig;

import dawngauge.quantity.Entered;
import dawngauge.quantity.GaugePressure;
import dawngauge.quantity.TreadDepth;
import dawngauge.trip.Tire;
import org.jspecify.annotations.Nullable;

/** A tire while one of its fields changes. */
final class TireDraft {

  private final Tire tire;
  String type;
  @Nullable String dateCode;
  @Nullable Entered<TreadDepth> tread;
  @Nullable Entered<GaugePressure> lossPerDay;

  TireDraft(Tire tire) {
    this.tire = tire;
    type = tire.type();
    dateCode = tire.dateCode();
    tread = tire.tread();
    lossPerDay = tire.lossPerDay();
  }

  Tire tire() {
    return tire.withType(type).withDateCode(dateCode).withTread(tread).withLossPerDay(lossPerDay);
  }
}

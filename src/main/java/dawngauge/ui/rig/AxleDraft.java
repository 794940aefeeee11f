package dawngauge.ui.rig;

import dawngauge.quantity.Entered;
import dawngauge.quantity.GaugePressure;
import dawngauge.quantity.Mass;
import dawngauge.quantity.Ratio;
import dawngauge.trip.Axle;
import dawngauge.trip.LabelFitment;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** An axle while one of its fields changes. */
final class AxleDraft {

  private final Axle axle;
  @Nullable Entered<Mass> gawr;
  List<LabelFitment> label;
  @Nullable Entered<GaugePressure> wheelMaxPressure;
  @Nullable Entered<Mass> wheelMaxLoad;
  @Nullable Entered<GaugePressure> valveMaxPressure;
  @Nullable Entered<Ratio> leftShare;

  AxleDraft(Axle axle) {
    this.axle = axle;
    gawr = axle.gawr();
    label = axle.label();
    wheelMaxPressure = axle.wheelMaxPressure();
    wheelMaxLoad = axle.wheelMaxLoad();
    valveMaxPressure = axle.valveMaxPressure();
    leftShare = axle.leftShare();
  }

  Axle axle() {
    return new Axle(
        axle.dual(),
        gawr,
        label,
        wheelMaxPressure,
        wheelMaxLoad,
        valveMaxPressure,
        leftShare,
        axle.target(),
        axle.fitted(),
        axle.remarks());
  }
}

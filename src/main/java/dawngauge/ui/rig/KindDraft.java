package dawngauge.ui.rig;

import dawngauge.quantity.Entered;
import dawngauge.quantity.GaugePressure;
import dawngauge.quantity.Mass;
import dawngauge.tire.TireClass;
import dawngauge.tire.TireSpec;
import org.jspecify.annotations.Nullable;

/** A kind of tire while one of its fields changes. */
final class KindDraft {

  private final TireSpec spec;
  String name;
  @Nullable String size;
  @Nullable TireClass tireClass;
  @Nullable String loadRange;
  @Nullable String speedSymbol;
  @Nullable Entered<Mass> ratedLoadSingle;
  @Nullable Entered<Mass> ratedLoadDual;
  @Nullable Entered<GaugePressure> ratedPressure;
  @Nullable Entered<GaugePressure> maxColdPressure;

  KindDraft(TireSpec spec) {
    this.spec = spec;
    name = spec.name();
    size = spec.size();
    tireClass = spec.tireClass();
    loadRange = spec.loadRange();
    speedSymbol = spec.speedSymbol();
    ratedLoadSingle = spec.ratedLoadSingle();
    ratedLoadDual = spec.ratedLoadDual();
    ratedPressure = spec.ratedPressure();
    maxColdPressure = spec.maxColdPressure();
  }

  TireSpec spec() {
    return new TireSpec(
        name,
        size,
        tireClass,
        spec.construction(),
        loadRange,
        spec.loadIndexSingle(),
        spec.loadIndexDual(),
        speedSymbol,
        ratedLoadSingle,
        ratedLoadDual,
        ratedPressure,
        maxColdPressure,
        spec.rows());
  }
}

package dawngauge.tire;

import dawngauge.quantity.Entered;
import dawngauge.quantity.GaugePressure;
import dawngauge.quantity.Mass;
import dawngauge.quantity.QuantityKind;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Makes tire figures for tests, from the texts a person would type. */
final class Tires {
  private final String name;
  private @Nullable String size;
  private @Nullable TireClass tireClass;
  private @Nullable Construction construction;
  private @Nullable Integer indexSingle;
  private @Nullable Integer indexDual;
  private @Nullable Entered<Mass> single;
  private @Nullable Entered<Mass> dual;
  private @Nullable Entered<GaugePressure> pressure;
  private final List<LoadInflationTable.Row> rows = new ArrayList<>();

  private Tires(String name) {
    this.name = name;
  }

  static Tires named(String name) {
    return new Tires(name);
  }

  Tires size(String text) {
    size = text;
    return this;
  }

  Tires tireClass(TireClass value) {
    tireClass = value;
    return this;
  }

  Tires construction(Construction value) {
    construction = value;
    return this;
  }

  Tires rated(String load, String atPressure) {
    single = Entered.of(QuantityKind.MASS, load);
    return at(atPressure);
  }

  Tires at(String ratedPressure) {
    pressure = Entered.of(QuantityKind.GAUGE_PRESSURE, ratedPressure);
    return this;
  }

  Tires dual(String load) {
    dual = Entered.of(QuantityKind.MASS, load);
    return this;
  }

  Tires index(@Nullable Integer forSingle, @Nullable Integer forDual) {
    indexSingle = forSingle;
    indexDual = forDual;
    return this;
  }

  Tires row(String atPressure, String singleLoad, @Nullable String dualLoad) {
    rows.add(
        new LoadInflationTable.Row(
            Entered.of(QuantityKind.GAUGE_PRESSURE, atPressure),
            Entered.of(QuantityKind.MASS, singleLoad),
            dualLoad == null ? null : Entered.of(QuantityKind.MASS, dualLoad)));
    return this;
  }

  TireSpec spec() {
    return new TireSpec(
        name,
        size,
        tireClass,
        construction,
        null,
        indexSingle,
        indexDual,
        null,
        single,
        dual,
        pressure,
        null,
        rows.isEmpty() ? null : new LoadInflationTable(rows));
  }
}

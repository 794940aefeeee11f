package dawngauge.testdata;

import dawngauge.quantity.Entered;
import dawngauge.quantity.GaugePressure;
import dawngauge.quantity.Mass;
import dawngauge.quantity.QuantityKind;
import dawngauge.tire.LoadInflationTable;
import dawngauge.tire.TireClass;
import dawngauge.tire.TireSpec;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** A kind of tire, from the texts a person would type; all figures invented. */
public final class TireBuilder {

  private @Nullable TireClass tireClass;
  private String size;
  private @Nullable String loadRange = "E";
  private @Nullable String speedSymbol;
  private @Nullable Entered<Mass> single;
  private @Nullable Entered<Mass> dual;
  private @Nullable Entered<GaugePressure> rated;
  private @Nullable Entered<GaugePressure> most;
  private final List<LoadInflationTable.Row> rows = new ArrayList<>();

  private TireBuilder(TireClass tireClass, String size) {
    this.tireClass = tireClass;
    this.size = size;
  }

  /** Special trailer tire, load range E: 3,500 lb at 80 psi, no speed symbol, no rows. */
  public static TireBuilder special() {
    return new TireBuilder(TireClass.SPECIAL_TRAILER, "ST235/80R16").rated("3500 lb", "80 psi");
  }

  /** Passenger tire: 1,500 lb at 35 psi, sidewall maximum 51 psi. */
  public static TireBuilder passenger() {
    return new TireBuilder(TireClass.PASSENGER, "P215/75R15")
        .range(null)
        .rated("1500 lb", "35 psi")
        .most("51 psi");
  }

  /** Light truck tire, load range E: 3,195 lb at 80 psi, 2,910 lb as one of a pair, no rows. */
  public static TireBuilder lightTruck() {
    return new TireBuilder(TireClass.LIGHT_TRUCK, "LT245/75R17")
        .rated("3195 lb", "80 psi")
        .dual("2910 lb");
  }

  /** Truck tire, load range G: 6,175 lb at 110 psi, 5,675 lb as one of a pair, no rows. */
  public static TireBuilder truck() {
    return new TireBuilder(TireClass.COMMERCIAL, "295/75R22.5")
        .range("G")
        .rated("6175 lb", "110 psi")
        .dual("5675 lb");
  }

  /** Another size. */
  public TireBuilder size(String text) {
    size = text;
    return this;
  }

  /** The class not typed: the size text alone tells. */
  public TireBuilder untyped() {
    tireClass = null;
    return this;
  }

  /** Another load range, or none. */
  public TireBuilder range(@Nullable String letter) {
    loadRange = letter;
    return this;
  }

  /** The rated pair. */
  public TireBuilder rated(String load, String pressure) {
    single = Entered.of(QuantityKind.MASS, load);
    rated = Entered.of(QuantityKind.GAUGE_PRESSURE, pressure);
    return this;
  }

  /** Rated load as one of a dual pair. */
  public TireBuilder dual(String load) {
    dual = Entered.of(QuantityKind.MASS, load);
    return this;
  }

  /** Highest cold pressure on the sidewall, where it is not the rated one. */
  public TireBuilder most(String pressure) {
    most = Entered.of(QuantityKind.GAUGE_PRESSURE, pressure);
    return this;
  }

  /** A speed symbol. */
  public TireBuilder symbol(String letter) {
    speedSymbol = letter;
    return this;
  }

  /** A row of the maker's table. */
  public TireBuilder row(String pressure, String load) {
    return row(pressure, load, null);
  }

  /** The same with the load as one of a dual pair. */
  public TireBuilder row(String pressure, String load, @Nullable String dualLoad) {
    rows.add(
        new LoadInflationTable.Row(
            Entered.of(QuantityKind.GAUGE_PRESSURE, pressure),
            Entered.of(QuantityKind.MASS, load),
            dualLoad == null ? null : Entered.of(QuantityKind.MASS, dualLoad)));
    return this;
  }

  /** The kind of tire; its name is its size. */
  public TireSpec spec() {
    return new TireSpec(
        size,
        size,
        tireClass,
        null,
        loadRange,
        null,
        null,
        speedSymbol,
        single,
        dual,
        rated,
        most,
        rows.isEmpty() ? null : new LoadInflationTable(rows));
  }
}

package dawngauge.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dawngauge.quantity.Entered;
import dawngauge.quantity.GaugePressure;
import dawngauge.quantity.Mass;
import dawngauge.quantity.QuantityKind;
import dawngauge.quantity.Unit;
import dawngauge.testdata.RigBuilder;
import dawngauge.testdata.TireBuilder;
import dawngauge.tire.TireSpec;
import dawngauge.trip.AxleRef;
import dawngauge.trip.Remarks;
import dawngauge.trip.Rig;
import dawngauge.trip.Spare;
import dawngauge.trip.Tire;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/**
 * Whether a spare can stand in on a trailer of special trailer tires, 3,500 lb at 80 psi, on a
 * label of the same 80 psi.
 */
class SpareFitTest {

  private static final double PSI = GaugePressure.of(1, Unit.PSI).pascals();

  private static Spare on(
      @Nullable String wheelPressure, @Nullable String wheelLoad, AxleRef... to) {
    return new Spare(
        "S",
        List.of(to),
        wheelPressure == null ? null : Entered.of(QuantityKind.GAUGE_PRESSURE, wheelPressure),
        wheelLoad == null ? null : Entered.of(QuantityKind.MASS, wheelLoad),
        Remarks.NONE);
  }

  private static Rig rig(RigBuilder builder, TireSpec spec, Spare spare, Tire.Damage... damage) {
    Rig rig = builder.rig();
    TireSpec named =
        new TireSpec(
            "spare",
            spec.size(),
            spec.tireClass(),
            null,
            spec.loadRange(),
            null,
            null,
            null,
            spec.ratedLoadSingle(),
            null,
            spec.ratedPressure(),
            null,
            null);
    List<Tire> tires = new ArrayList<>(rig.tires());
    tires.add(new Tire("S", "spare", "1517", null, 1, null, Set.of(damage), Remarks.NONE));
    List<TireSpec> types = new ArrayList<>(rig.tireTypes());
    types.add(named);
    return new Rig(
        rig.name(),
        rig.vehicles(),
        types,
        tires,
        List.of(spare),
        rig.gauges(),
        null,
        null,
        rig.tickets(),
        Remarks.NONE);
  }

  private static final LocalDate DAY = LocalDate.of(2027, 4, 6);

  private static boolean serves(Rig rig, double pounds) {
    return serves(rig, pounds, Double.NaN, DAY);
  }

  private static boolean serves(Rig rig, double pounds, double psi, LocalDate day) {
    double kilograms = Mass.of(pounds, Unit.POUND).kilograms();
    return SpareFit.fitFor(rig, rig.positions().get(0), kilograms, psi * PSI, day).isPresent();
  }

  private static final TireSpec SAME = TireBuilder.special().spec();

  @Test
  void theSameTireServesUpToItsRatedLoad() {
    Rig rig = rig(RigBuilder.trailer(), SAME, on(null, null));
    assertThat(serves(rig, 3500)).isTrue();
    assertThat(serves(rig, 3502)).isFalse(); // a pound is left to rounding
    // what is not known does not speak against it
    assertThat(SpareFit.fitFor(rig, rig.positions().get(0), Double.NaN, Double.NaN, DAY))
        .isPresent();
  }

  /** The wheel carries 3,200 lb. */
  @Test
  void itsWheelMayCarryLess() {
    Rig rig = rig(RigBuilder.trailer(), SAME, on("110 psi", "3200 lb"));
    assertThat(serves(rig, 3200)).isTrue();
    assertThat(serves(rig, 3300)).isFalse();
  }

  /** The wheel takes 70 psi: less than the label's 80, and 3,500·70/80 = 3,062.5 lb. */
  @Test
  void itsWheelMayNotTakeTheLabelsPressure() {
    Spare spare = on("70 psi", null);
    Rig rig = rig(RigBuilder.trailer(), SAME, spare);
    SpareFit fit = SpareFit.of(rig, spare, rig.positions().get(0)).orElseThrow();

    assertThat(fit.takesTheLabel()).isFalse();
    assertThat(fit.ceilingPascals() / PSI).isCloseTo(70, within(1e-6));
    assertThat(new Mass(fit.mostKilograms()).in(Unit.POUND)).isCloseTo(3062.5, within(0.01));
    assertThat(serves(rig, 1000)).isFalse();
  }

  /** Load range D of the same size: 3,000 lb at 65 psi, on a label of 80. */
  @Test
  void aWeakerTireOfTheSizeDoesNotServe() {
    TireSpec weaker = TireBuilder.special().range("D").rated("3000 lb", "65 psi").spec();
    assertThat(serves(rig(RigBuilder.trailer(), weaker, on(null, null)), 2800)).isFalse();
  }

  @Test
  void anotherSizeDoesNotServe() {
    TireSpec other = TireBuilder.special().size("ST225/75R15").spec();
    assertThat(serves(rig(RigBuilder.trailer(), other, on(null, null)), 2800)).isFalse();
  }

  @Test
  void aDamagedOneDoesNotServe() {
    Rig rig = rig(RigBuilder.trailer(), SAME, on(null, null), Tire.Damage.BULGE);
    assertThat(serves(rig, 2800)).isFalse();
  }

  /** Made in the week from 10 April 2017 (date code 1517, 49 CFR 574.5): ten years old then. */
  @Test
  void anOldOneDoesNotServe() {
    Rig rig = rig(RigBuilder.trailer(), SAME, on(null, null));
    assertThat(serves(rig, 2800, 80, LocalDate.of(2027, 4, 9))).isTrue();
    assertThat(serves(rig, 2800, 80, LocalDate.of(2027, 4, 12))).isFalse();
  }

  /** Where no label says so either, it must take what a tire there is to have. */
  @Test
  void itTakesThePressureThatIsAskedThere() {
    Rig rig = rig(RigBuilder.trailer(), SAME, on(null, null));
    assertThat(serves(rig, 1000, 80, DAY)).isTrue();
    assertThat(serves(rig, 1000, 85, DAY)).isFalse();
  }

  /** For every axle of single wheels, unless axles are named. */
  @Test
  void itServesTheAxlesItIsMeantFor() {
    AxleRef second = new AxleRef("trailer", 2);
    Rig rig = rig(RigBuilder.trailer().axles(2), SAME, on(null, null, second));
    assertThat(serves(rig, 2800)).isFalse();
    assertThat(SpareFit.fitFor(rig, rig.positions().get(2), 1000, Double.NaN, DAY)).isPresent();
    TireSpec truck = TireBuilder.lightTruck().spec();
    RigBuilder duals =
        RigBuilder.trailer()
            .dual()
            .tires(TireBuilder.lightTruck())
            .label("LT245/75R17", null, "E", "80 psi");
    assertThat(serves(rig(duals, truck, on(null, null)), 1400)).isFalse();
  }
}

package dawngauge.tire;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dawngauge.explain.Authority;
import dawngauge.explain.Step;
import dawngauge.problem.Outcome;
import dawngauge.problem.Problem;
import dawngauge.problem.ProblemCode;
import dawngauge.quantity.GaugePressure;
import dawngauge.quantity.Mass;
import dawngauge.quantity.Unit;
import dawngauge.quantity.UnitSystem;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Capacity against printed load/inflation rows, the federal rules and the published forms. */
class CapacityTest {
  private static final Fitment SINGLE = new Fitment(false, true);
  private static final Fitment DUAL = new Fitment(true, true);
  private static final Fitment CAR = new Fitment(false, false);

  // Printed rows: LT265/75R16 load range E 3415 lb at 80 psi; ST225/75R15 2540 lb at 65 psi.
  private static final TireSpec LT =
      Tires.named("truck").size("LT265/75R16").rated("3415 lb", "80 psi").spec();
  private static final TireSpec ST =
      Tires.named("trailer").size("ST225/75R15").rated("2540 lb", "65 psi").spec();
  // Round figures; so are, or merely plausible, all others that name no source.
  private static final TireSpec ST80 =
      Tires.named("trailer").size("ST235/80R16").rated("3500 lb", "80 psi").spec();

  private static double psi(double number) {
    return GaugePressure.of(number, Unit.PSI).pascals();
  }

  private static double inPsi(double pascals) {
    return new GaugePressure(pascals).in(Unit.PSI);
  }

  private static double lb(double number) {
    return Mass.of(number, Unit.POUND).kilograms();
  }

  private static double inLb(double kilograms) {
    return new Mass(kilograms).in(Unit.POUND);
  }

  private static Capacity single(TireSpec spec) {
    return Capacity.of(spec, SINGLE, null).get();
  }

  private static List<ProblemCode> codes(Outcome<?> outcome) {
    return outcome.problems().stream().map(Problem::code).collect(Collectors.toList());
  }

  // LT265/75R16, single, printed: load range C 2470 lb at 50 psi.
  @Test
  void lightTruckExponentMeetsThePrintedRow() {
    double likely = inLb(single(LT).likelyKilogramsAt(psi(50)));
    assertThat(likely / 2470 - 1)
        .as("deviation from the printed row")
        .isEqualTo(-0.005, within(0.001));
    assertThat(inLb(single(LT).kilogramsAt(psi(50))))
        .isEqualTo(3415 * 50.0 / 80, within(1e-6))
        .isLessThan(2470);
  }

  // ST225/75R15, single, printed: 2150 lb at 50 psi.
  @Test
  void specialTrailerExponentMeetsThePrintedRow() {
    double likely = inLb(single(ST).likelyKilogramsAt(psi(50)));
    assertThat(likely / 2150 - 1)
        .as("deviation from the printed row")
        .isEqualTo(0.013, within(0.001));
    assertThat(inLb(single(ST).kilogramsAt(psi(50))))
        .isEqualTo(1953.8, within(0.1))
        .isLessThan(2150);
  }

  // Tire and Rim Association formula for passenger tires: load as the square root of pressure.
  @Test
  void passengerExponentIsOneHalf() {
    TireSpec spec = Tires.named("car").size("P235/70R16").rated("2000 lb", "36 psi").spec();
    Capacity capacity = Capacity.of(spec, CAR, null).get();
    assertThat(inLb(capacity.likelyKilogramsAt(psi(25)))).isEqualTo(2000 * 5.0 / 6, within(1e-6));
  }

  @ParameterizedTest
  @CsvSource({"ST205/75D15", "8-14.5", "7.00-15LT", "225/70R15C"})
  void biasCommercialAndUnknownTiresFollowTheStraightLine(String size) {
    Capacity capacity = single(Tires.named("t").size(size).rated("2000 lb", "50 psi").spec());
    for (double p = 30; p <= 60; p++) {
      assertThat(capacity.likelyKilogramsAt(psi(p)))
          .isEqualTo(capacity.kilogramsAt(psi(p)), within(1e-9));
    }
  }

  // At 80 % load the exponent 0.585 lets an 80 psi tire down to 55 psi, the straight line says 64.
  @Test
  void floorFollowsTheStraightLineNotTheExponent() {
    Capacity capacity = single(ST80);
    double load = 0.8 * capacity.ratedKilograms();
    assertThat(inPsi(capacity.likelyPascalsFor(load))).isEqualTo(54.6, within(0.05));
    assertThat(capacity.likelyKilogramsAt(capacity.likelyPascalsFor(load)))
        .isEqualTo(load, within(1e-6));
    assertThat(inPsi(capacity.pascalsFor(load))).isEqualTo(64, within(1e-6));
    assertThat(capacity.fromRows()).isFalse();
  }

  // From nothing: no load at no pressure, 3500·20/80 = 875 lb at 20 psi; likely 3500·(20/80)^0.585.
  @Test
  void theCurveBeginsAtNothingAndEndsAtTheRatedPressure() {
    Capacity capacity = single(ST80);
    assertThat(capacity.kilogramsAt(psi(0))).isZero();
    assertThat(capacity.kilogramsAt(psi(-3))).isZero();
    assertThat(capacity.likelyKilogramsAt(psi(0))).isZero();
    assertThat(inLb(capacity.kilogramsAt(psi(20)))).isEqualTo(875, within(1e-6));
    assertThat(inLb(capacity.likelyKilogramsAt(psi(20)))).isEqualTo(1555.5, within(0.1));
    assertThat(inLb(capacity.kilogramsAt(psi(80)))).isEqualTo(3500, within(1e-6));
    assertThat(inLb(capacity.kilogramsAt(psi(110)))).isEqualTo(3500, within(1e-6));
    assertThat(inLb(capacity.likelyKilogramsAt(psi(110)))).isEqualTo(3500, within(1e-6));
    assertThat(capacity.pascalsFor(0)).isZero();
    assertThat(capacity.likelyPascalsFor(0)).isZero();
    assertThat(inPsi(capacity.pascalsFor(lb(3500)))).isEqualTo(80, within(1e-6));
    assertThat(capacity.pascalsFor(lb(3500.1))).isNaN();
    assertThat(capacity.likelyPascalsFor(lb(3500.1))).isNaN();
    assertThat(capacity.kilogramsAt(Double.NaN)).isNaN();
    assertThat(capacity.pascalsFor(Double.NaN)).isNaN();
  }

  // 49 CFR 571.110 S4.2.2.2, 571.120 S5.1.2: passenger tire on a truck or trailer, rating ÷ 1.10.
  @Test
  void passengerTireOnATruckOrTrailerCountsLess() {
    TireSpec spec = Tires.named("half-ton").size("P265/70R17").rated("2535 lb", "35 psi").spec();
    Capacity onTruck = Capacity.of(spec, SINGLE, null).get();
    Capacity onCar = Capacity.of(spec, CAR, null).get();
    assertThat(inLb(onTruck.ratedKilograms())).isEqualTo(2304.5, within(0.1));
    assertThat(inLb(onCar.ratedKilograms())).isEqualTo(2535, within(1e-6));
    // The same load needs more air: 35 · 1.10 · 2000 / 2535.
    assertThat(inPsi(onTruck.pascalsFor(lb(2000)))).isEqualTo(30.375, within(0.001));
    assertThat(onTruck.pascalsFor(lb(2400))).isNaN();
    assertThat(onTruck.stepsAt(GaugePressure.of(30, Unit.PSI)))
        .anySatisfy(step -> assertThat(step.authority().text()).contains("571.110 S4.2.2.2"));
  }

  @Test
  void dividedRatingHoldsForRowsToo() {
    TireSpec spec =
        Tires.named("half-ton")
            .size("P265/70R17")
            .rated("2535 lb", "35 psi")
            .row("26 psi", "2179 lb", null)
            .row("35 psi", "2535 lb", null)
            .spec();
    assertThat(inLb(single(spec).kilogramsAt(psi(26)))).isEqualTo(2179 / 1.1, within(1e-6));
  }

  @Test
  void tireOfUnknownClassOnATrailerIsJudgedAsAPassengerTireAndSaysSo() {
    TireSpec spec = Tires.named("odd").size("225/75R15").rated("2200 lb", "50 psi").spec();
    Outcome<Capacity> outcome = Capacity.of(spec, SINGLE, null);
    assertThat(codes(outcome)).containsExactly(ProblemCode.TIRE_CLASS_UNKNOWN);
    assertThat(inLb(outcome.get().ratedKilograms())).isEqualTo(2000, within(1e-6));
    assertThat(Capacity.of(spec, CAR, null).problems()).isEmpty();
  }

  // Passenger tires: the rated load holds from the rated pressure on; a higher sidewall limit of
  // pressure does not move it.
  @Test
  void higherSidewallLimitLeavesTheCapacityAlone() {
    TireSpec spec = Tires.named("car").size("P235/70R16").rated("2000 lb", "35 psi").spec();
    Capacity capacity = Capacity.of(spec, CAR, null).get();
    assertThat(inLb(capacity.kilogramsAt(psi(35)))).isEqualTo(2000, within(1e-6));
    assertThat(inLb(capacity.kilogramsAt(psi(51)))).isEqualTo(2000, within(1e-6));
  }

  @Test
  void loadIndexStandsInForARatedLoadThatIsNotTyped() {
    // ISO 4000-1: load index 121 is 1450 kg.
    TireSpec spec = Tires.named("t").size("LT235/85R16").index(121, 118).at("80 psi").spec();
    assertThat(single(spec).ratedKilograms()).isEqualTo(1450);
    assertThat(single(spec).stepsAt(GaugePressure.of(80, Unit.PSI)))
        .anySatisfy(step -> assertThat(step.authority().kind()).isEqualTo(Authority.Kind.STANDARD));
    // Load index 118 is 1320 kg, 0.910 of it.
    assertThat(Capacity.of(spec, DUAL, null).get().ratedKilograms()).isEqualTo(1320);
  }

  @Test
  void missingRatedFiguresAreNamedTogether() {
    Outcome<Capacity> outcome =
        Capacity.of(Tires.named("spare").size("ST225/75R15").spec(), SINGLE, null);
    assertThat(outcome.hasValue()).isFalse();
    assertThat(codes(outcome))
        .containsExactly(ProblemCode.RATED_PRESSURE_MISSING, ProblemCode.RATED_LOAD_MISSING);
    assertThat(outcome.problems())
        .allSatisfy(
            problem -> {
              assertThat(problem.code().severity()).isEqualTo(ProblemCode.Severity.GAP);
              assertThat(problem.text()).contains("spare");
            });
  }

  @Test
  void ratedFiguresOfZeroCountAsMissing() {
    TireSpec spec = Tires.named("t").size("ST225/75R15").rated("0 lb", "0 psi").spec();
    assertThat(codes(Capacity.of(spec, SINGLE, null)))
        .containsExactly(ProblemCode.RATED_PRESSURE_MISSING, ProblemCode.RATED_LOAD_MISSING);
  }

  @Test
  void typedDualFigureComesBeforeItsLoadIndexAndTheRows() {
    Tires tire =
        Tires.named("t")
            .size("LT235/85R16")
            .rated("3042 lb", "80 psi")
            .row("50 psi", "2205 lb", "2006 lb")
            .row("80 psi", "3042 lb", "2700 lb");
    assertThat(inLb(Capacity.of(tire.spec(), DUAL, null).get().ratedKilograms()))
        .isEqualTo(2700, within(1e-6));
    tire.index(null, 116);
    assertThat(Capacity.of(tire.spec(), DUAL, null).get().ratedKilograms()).isEqualTo(1250);
    tire.dual("2778 lb");
    assertThat(inLb(Capacity.of(tire.spec(), DUAL, null).get().ratedKilograms()))
        .isEqualTo(2778, within(1e-6));
  }

  // Printed rows of light truck tires: dual per tire about 0.91 of single.
  @Test
  void lightTruckDualIsEstimatedAndMarked() {
    Outcome<Capacity> outcome = Capacity.of(LT, DUAL, null);
    assertThat(inLb(outcome.get().ratedKilograms())).isEqualTo(0.91 * 3415, within(1e-6));
    assertThat(codes(outcome)).containsExactly(ProblemCode.DUAL_LOAD_ESTIMATED);
    assertThat(outcome.get().stepsAt(GaugePressure.of(80, Unit.PSI)))
        .anySatisfy(step -> assertThat(step.authority().kind()).isEqualTo(Authority.Kind.INFERRED));
  }

  @Test
  void otherClassesHaveNoDualFigureWithoutOne() {
    Outcome<Capacity> outcome = Capacity.of(ST80, DUAL, null);
    assertThat(outcome.hasValue()).isFalse();
    assertThat(codes(outcome)).containsExactly(ProblemCode.DUAL_LOAD_MISSING);
    assertThat(outcome.problems().get(0).code().severity()).isEqualTo(ProblemCode.Severity.GAP);
  }

  @Test
  void rowsWithAGapInTheirDualColumnAreNotUsedForDuals() {
    TireSpec spec =
        Tires.named("t")
            .size("LT235/85R16")
            .rated("3042 lb", "80 psi")
            .dual("2778 lb")
            .row("50 psi", "2205 lb", "2006 lb")
            .row("80 psi", "3042 lb", null)
            .spec();
    assertThat(Capacity.of(spec, DUAL, null).get().fromRows()).isFalse();
    assertThat(single(spec).fromRows()).isTrue();
  }

  @Test
  void dualAboveSingleIsRefused() {
    TireSpec spec =
        Tires.named("t").size("LT235/85R16").rated("2778 lb", "80 psi").dual("3042 lb").spec();
    Outcome<Capacity> outcome = Capacity.of(spec, DUAL, null);
    assertThat(codes(outcome)).containsExactly(ProblemCode.DUAL_LOAD_ABOVE_SINGLE);
    assertThat(outcome.problems().get(0).text()).contains("3042 lb (1380 kg)", "2778 lb (1260 kg)");
  }

  @Test
  void rowsAreReadStraightFromNothingBetweenAndFlatAbove() {
    TireSpec spec =
        Tires.named("trailer")
            .size("ST225/75R15")
            .rated("2540 lb", "65 psi")
            .row("50 psi", "2150 lb", null)
            .row("65 psi", "2540 lb", null)
            .spec();
    Capacity capacity = single(spec);
    assertThat(capacity.fromRows()).isTrue();
    assertThat(inLb(capacity.kilogramsAt(psi(50)))).isEqualTo(2150, within(1e-6));
    assertThat(inLb(capacity.kilogramsAt(psi(55)))).isEqualTo(2280, within(1e-6));
    assertThat(capacity.likelyKilogramsAt(psi(55))).isEqualTo(capacity.kilogramsAt(psi(55)));
    assertThat(inLb(capacity.kilogramsAt(psi(80)))).isEqualTo(2540, within(1e-6));
    // Below the first row: 2150·40/50 and 50·1000/2150.
    assertThat(inLb(capacity.kilogramsAt(psi(40)))).isEqualTo(1720, within(1e-6));
    assertThat(inPsi(capacity.pascalsFor(lb(2280)))).isEqualTo(55, within(1e-6));
    assertThat(inPsi(capacity.pascalsFor(lb(1000)))).isEqualTo(23.256, within(0.001));
    assertThat(capacity.likelyPascalsFor(lb(1000))).isEqualTo(capacity.pascalsFor(lb(1000)));
  }

  @Test
  void rowsNeverGiveMoreThanTheSidewall() {
    Tires tire =
        Tires.named("t")
            .size("LT235/85R16")
            .rated("2800 lb", "70 psi")
            .row("50 psi", "2205 lb", null)
            .row("80 psi", "3042 lb", null);
    Capacity capacity = single(tire.spec());
    assertThat(inLb(capacity.kilogramsAt(psi(80)))).isEqualTo(2800, within(1e-6));
    assertThat(capacity.pascalsFor(lb(2801))).isNaN();
    assertThat(inPsi(capacity.pascalsFor(lb(2800)))).isEqualTo(71.33, within(0.01));
  }

  @Test
  void rowsThatEndBelowTheRatedPressureSaySo() {
    TireSpec spec =
        Tires.named("t")
            .size("LT235/85R16")
            .rated("3042 lb", "80 psi")
            .row("50 psi", "2205 lb", null)
            .row("65 psi", "2623 lb", null)
            .spec();
    Outcome<Capacity> outcome = Capacity.of(spec, SINGLE, null);
    assertThat(codes(outcome)).containsExactly(ProblemCode.ROWS_END_EARLY);
    assertThat(inLb(outcome.get().kilogramsAt(psi(80)))).isEqualTo(2623, within(1e-6));
    assertThat(inLb(outcome.get().mostKilograms())).isEqualTo(2623, within(1e-6));
    assertThat(outcome.get().pascalsFor(lb(2700))).isNaN();
  }

  @Test
  void stepsEndInTheFigure() {
    Capacity capacity = single(ST80);
    assertThat(written(capacity.stepsAt(GaugePressure.of(64, Unit.PSI))))
        .containsExactly(
            "cold pressure at which the rated load holds: 80.0 psi",
            "rated load, single: 3500 lb",
            "likely load at 64.0 psi: 3072 lb",
            "load at 64.0 psi, estimated with caution: 2800 lb");
    assertThat(written(capacity.stepsFor(Mass.of(2800, Unit.POUND))))
        .endsWith(
            "likely pressure for 2800 lb: 54.6 psi",
            "lowest pressure for 2800 lb, estimated with caution: 64.0 psi");
    assertThat(written(capacity.stepsAt(GaugePressure.of(40, Unit.PSI))))
        .endsWith("load at 40.0 psi, estimated with caution: 1750 lb"); // 3500·40/80
    assertThat(written(capacity.stepsAt(GaugePressure.of(90, Unit.PSI))))
        .endsWith("load at 90.0 psi, the rated load and no more: 3500 lb");
    assertThat(written(capacity.stepsFor(Mass.of(4000, Unit.POUND))))
        .endsWith("4000 lb is more than the tire may carry at any pressure; at most: 3500 lb");
    assertThat(written(capacity.stepsFor(Mass.of(1000, Unit.POUND))))
        .endsWith( // 80·1000/3500, and 80·(1000/3500)^(1/0.585)
            "likely pressure for 1000 lb: 9.4 psi",
            "lowest pressure for 1000 lb, estimated with caution: 22.9 psi");
  }

  private static List<String> written(List<Step> steps) {
    return steps.stream()
        .map(step -> step.what().in(UnitSystem.US) + ": " + UnitSystem.US.format(step.result()))
        .collect(Collectors.toList());
  }
}

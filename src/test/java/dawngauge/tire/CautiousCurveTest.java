package dawngauge.tire;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dawngauge.explain.Step;
import dawngauge.problem.Outcome;
import dawngauge.problem.Problem;
import dawngauge.problem.ProblemCode;
import dawngauge.quantity.GaugePressure;
import dawngauge.quantity.Mass;
import dawngauge.quantity.Unit;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The cautious curve with a certification label's point, by hand and against printed rows. */
class CautiousCurveTest {
  private static final Fitment SINGLE = new Fitment(false, true);

  // Printed rows: LT265/75R16 load range E 3415 lb at 80 psi; ST225/75R15 2540 lb at 65 psi.
  private static final TireSpec LT =
      Tires.named("truck").size("LT265/75R16").rated("3415 lb", "80 psi").spec();
  private static final TireSpec ST =
      Tires.named("trailer").size("ST225/75R15").rated("2540 lb", "65 psi").spec();
  // Round figures, invented.
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

  private static CertifiedPoint label(double psi, double lb) {
    return new CertifiedPoint(GaugePressure.of(psi, Unit.PSI), Mass.of(lb, Unit.POUND));
  }

  private static List<ProblemCode> codes(Outcome<?> outcome) {
    return outcome.problems().stream().map(Problem::code).toList();
  }

  // 49 CFR 571.120 S5.3.1: at the label's cold pressure the tires carry the GAWR. Worked by hand
  // for
  // the printed pair of ST225/75R15 with 50 psi on the label for 2150 lb: up to there 50·L/2150,
  // above 50 + 15·(L − 2150)/390.
  @ParameterizedTest
  @CsvSource({"1075, 25", "2149, 49.977", "2150, 50", "2200, 51.923", "2300, 55.769", "2540, 65"})
  void labelsPointIsACornerOfTheCautiousCurve(double load, double pressure) {
    Capacity capacity = Capacity.of(ST, SINGLE, label(50, 2150)).get();
    assertThat(capacity.basis()).isEqualTo(Capacity.Basis.LABEL);
    assertThat(inPsi(capacity.pascalsFor(lb(load)))).isEqualTo(pressure, within(0.001));
    assertThat(inLb(capacity.kilogramsAt(psi(pressure)))).isEqualTo(load, within(0.1));
  }

  @Test
  void loadAndPressureRiseEvenlyPastTheLabel() {
    Capacity capacity = Capacity.of(ST, SINGLE, label(50, 2150)).get();
    // 2150 + 390·5/15
    assertThat(inLb(capacity.kilogramsAt(psi(55)))).isEqualTo(2280, within(1e-6));
    // likely at 40 psi the larger of 2150·(40/50)^0.585 and 2540·(40/65)^0.585, which is 1911.99
    assertThat(inLb(capacity.likelyKilogramsAt(psi(40)))).isEqualTo(1911.99, within(0.01));
    // and at 50 psi 2540·(50/65)^0.585
    assertThat(inLb(capacity.likelyKilogramsAt(psi(50)))).isEqualTo(2178.60, within(0.01));
    List<Step> steps = capacity.stepsFor(Mass.of(2100, Unit.POUND));
    assertThat(steps.get(steps.size() - 1).authority().text()).contains("571.120 S5.3.1");
  }

  // By the published form L·(p/p0)^0.585 with the label's pair, 2280 lb at 50 psi: at 40 psi 2280 ·
  // 0.8^0.585 = 2000.98 lb, over the rated pair's 1911.99; and 1500 lb at 50 ·
  // (1500/2280)^(1/0.585)
  // = 24.44 psi, under the rated pair's 26.42 and the chord's 32.89.
  @Test
  void likelyFigureIsTheLabelsWhereThatIsMore() {
    Capacity capacity = Capacity.of(ST, SINGLE, label(50, 2280)).get();
    assertThat(inLb(capacity.likelyKilogramsAt(psi(40)))).isEqualTo(2000.98, within(0.01));
    assertThat(inPsi(capacity.likelyPascalsFor(lb(1500)))).isEqualTo(24.44, within(0.01));
    assertThat(inPsi(capacity.pascalsFor(lb(1500)))).isEqualTo(32.89, within(0.01));
    assertThat(inPsi(capacity.likelyPascalsFor(lb(2540)))).isEqualTo(65, within(1e-6));
  }

  @Test
  void labelOnTheStraightLineProvesNothingMore() {
    Outcome<Capacity> half = Capacity.of(ST80, SINGLE, label(40, 1750));
    assertThat(half.get().basis()).isEqualTo(Capacity.Basis.SIDEWALL);
    assertThat(half.problems()).isEmpty();
    assertThat(Capacity.of(ST80, SINGLE, label(40, 1751)).get().basis())
        .isEqualTo(Capacity.Basis.LABEL);
  }

  @Test
  void labelOfNoLoadIsToldAndNotUsed() {
    assertThat(codes(Capacity.of(ST, SINGLE, label(50, 0))))
        .containsExactly(ProblemCode.LABEL_POINT_NOT_USED);
  }

  @Test
  void atTheRatedPairItSaysThatThereIsNoMore() {
    Capacity capacity = Capacity.of(ST, SINGLE, label(50, 2150)).get();
    for (List<Step> steps :
        List.of(
            capacity.stepsFor(Mass.of(2540, Unit.POUND)),
            capacity.stepsAt(GaugePressure.of(65, Unit.PSI)))) {
      assertThat(steps.get(steps.size() - 1).authority().text()).contains("393.75(g)");
      assertThat(steps).noneMatch(step -> step.toString().contains("likely"));
    }
    assertThat(capacity.stepsAt(GaugePressure.of(40, Unit.PSI)))
        .anyMatch(step -> step.toString().contains("likely load"));
    assertThat(capacity.stepsFor(Mass.of(1500, Unit.POUND)))
        .anyMatch(step -> step.toString().contains("likely pressure"));
  }

  // Likely at the label's 50 psi: 2540·(50/65)^0.585 = 2178.6 lb, and 5 % more 2287.5 lb (the 5 %
  // are
  // inferred): a label that asks more of the tire is a slip.
  @Test
  void labelOverTheLikelyFigureIsToldAndNotUsed() {
    assertThat(Capacity.of(ST, SINGLE, label(50, 2287)).problems()).isEmpty();
    Outcome<Capacity> over = Capacity.of(ST, SINGLE, label(50, 2288));
    assertThat(codes(over)).containsExactly(ProblemCode.LABEL_POINT_NOT_USED);
    assertThat(over.get().basis()).isEqualTo(Capacity.Basis.SIDEWALL);
    assertThat(inPsi(over.get().pascalsFor(lb(2150)))).isEqualTo(65 * 2150 / 2540.0, within(1e-6));
  }

  // Printed: ST225/75R15 2150 lb at 50 psi, LT265/75R16 2470 lb at 50 psi, both single. Estimated
  // from the printed rated pair alone: 2540·50/65 = 1953.8 and 3415·50/80 = 2134.4 lb.
  @ParameterizedTest
  @CsvSource({"ST, 2150, -9.1", "LT, 2470, -13.6"})
  void cautiousCurveIsWellUnderAPrintedRow(String tire, double row, double percent) {
    double load = inLb(single(tire.equals("ST") ? ST : LT).kilogramsAt(psi(50)));
    assertThat(100 * (load / row - 1)).isEqualTo(percent, within(0.05));
  }

  @Test
  void labelBelowTheStraightLineChangesNothing() {
    Capacity with = Capacity.of(ST80, SINGLE, label(80, 3000)).get();
    for (double p = 40; p <= 90; p += 0.5) {
      assertThat(with.kilogramsAt(psi(p)))
          .isEqualTo(single(ST80).kilogramsAt(psi(p)), within(1e-9));
    }
  }

  // 571.120 S5.1.2: tire ratings cover the GAWR; a label that passes the rating is of other tires.
  @Test
  void labelAboveTheRatingIsLeftOutAndSaysSo() {
    Outcome<Capacity> outcome = Capacity.of(ST80, SINGLE, label(65, 3700));
    assertThat(codes(outcome)).containsExactly(ProblemCode.LABEL_POINT_NOT_USED);
    assertThat(outcome.get().kilogramsAt(psi(65))).isEqualTo(single(ST80).kilogramsAt(psi(65)));
  }

  @Test
  void labelIsNotNeededWhereRowsAreTyped() {
    TireSpec spec =
        Tires.named("t")
            .size("ST225/75R15")
            .rated("2540 lb", "65 psi")
            .row("50 psi", "2150 lb", null)
            .row("65 psi", "2540 lb", null)
            .spec();
    Capacity capacity = Capacity.of(spec, SINGLE, label(50, 2500)).get();
    assertThat(inLb(capacity.kilogramsAt(psi(50)))).isEqualTo(2150, within(1e-6));
  }
}

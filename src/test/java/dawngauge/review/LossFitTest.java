package dawngauge.review;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.hipparchus.stat.regression.SimpleRegression;
import org.junit.jupiter.api.Test;

/** What a row of cold readings tells of the air a tire lost. */
class LossFitTest {

  private static final double EACH = 0.5 / 94.7; // 0.5 psi of 80 psi at sea level

  private static LossFit fit(double[] days, double... psi) {
    double[] parts = new double[psi.length];
    for (int i = 0; i < psi.length; i++) {
      parts[i] = psi[i] / 94.7;
    }
    return LossFit.of(days, parts, EACH, 3);
  }

  private static final double[] FOUR = {0, 1, 2, 3};

  @Test
  void oneReadingTellsNothingAndTwoTellALossButNotItsKind() {
    assertThat(fit(new double[] {0}, 0).kind()).isEqualTo(LossFit.Kind.TOO_FEW);
    assertThat(fit(new double[] {0, 1}, 0, 1.5).kind()).isEqualTo(LossFit.Kind.SOUND);
    LossFit two = fit(new double[] {0, 1}, 0, 3);
    assertThat(two.kind()).isEqualTo(LossFit.Kind.LOST);
    assertThat(two.part() * 94.7).isCloseTo(3, within(1e-9));
    assertThat(two.sigma() * 94.7).isCloseTo(0.5 * Math.sqrt(2), within(1e-9));
  }

  @Test
  void aSteadyLeakAndOneLossAreToldApartWhereTheReadingsCan() {
    LossFit steady = fit(FOUR, 0, 2.1, 3.9, 6);
    assertThat(steady.kind()).isEqualTo(LossFit.Kind.STEADY);
    assertThat(steady.perDay() * 94.7).isCloseTo(1.98, within(0.01));
    LossFit once = fit(FOUR, 0, 0.1, 5.9, 6);
    assertThat(once.kind()).isEqualTo(LossFit.Kind.ONCE);
    assertThat(once.from()).isEqualTo(1);
    assertThat(once.to()).isEqualTo(2);
    assertThat(once.part() * 94.7).isCloseTo(5.9, within(1e-9));
    // 2.4 psi is beyond chance, but under eight deviations of a reading.
    assertThat(fit(FOUR, 0, 0.8, 1.6, 2.4).kind()).isEqualTo(LossFit.Kind.LOST);
  }

  /** Least squares as in the statistics library (Hipparchus). */
  @Test
  void theLineIsThatOfAnIndependentLibrary() {
    Random random = new Random(9);
    for (int i = 0; i < 200; i++) {
      int count = 2 + random.nextInt(3); // from five on the line is robust: RobustLineTest
      double[] days = new double[count];
      double[] lost = new double[count];
      SimpleRegression line = new SimpleRegression();
      for (int j = 0; j < count; j++) {
        days[j] = j + random.nextDouble() * 0.3;
        lost[j] = 0.01 * j * random.nextDouble() + 0.002 * random.nextGaussian();
        line.addData(days[j], lost[j]);
      }
      assertThat(LossFit.of(days, lost, EACH, 3).perDay())
          .isCloseTo(line.getSlope(), within(1e-12));
    }
  }

  /**
   * The kinds on 4,000 seeded rows of five dawns, half a psi repeatability: sound ones are found
   * sound but for 2 in 100; of losses of 6 psi the kind is named wrongly in no more than 2 in 100.
   */
  @Test
  void howOftenItIsWrong() {
    Random random = new Random(20270409);
    double[] days = {0, 1, 2, 3, 4};
    int alarms = 0;
    int wrong = 0;
    int notTold = 0;
    int rows = 2000;
    for (int i = 0; i < rows; i++) {
      double[] sound = new double[5];
      double[] steady = new double[5];
      double[] once = new double[5];
      int at = 1 + random.nextInt(4);
      for (int j = 0; j < 5; j++) {
        sound[j] = 0.5 * random.nextGaussian();
        steady[j] = 1.5 * j + 0.5 * random.nextGaussian();
        once[j] = (j >= at ? 6 : 0) + 0.5 * random.nextGaussian();
      }
      alarms += fit(days, sound).kind() == LossFit.Kind.SOUND ? 0 : 1;
      LossFit.Kind ofSteady = fit(days, steady).kind();
      LossFit.Kind ofOnce = fit(days, once).kind();
      wrong += ofSteady == LossFit.Kind.STEADY || ofSteady == LossFit.Kind.LOST ? 0 : 1;
      wrong += ofOnce == LossFit.Kind.ONCE || ofOnce == LossFit.Kind.LOST ? 0 : 1;
      notTold += ofSteady == LossFit.Kind.LOST ? 1 : 0;
      notTold += ofOnce == LossFit.Kind.LOST ? 1 : 0;
    }
    assertThat(alarms).isLessThanOrEqualTo(rows / 50);
    assertThat(wrong).isLessThanOrEqualTo(2 * rows / 50);
    assertThat(notTold).isLessThan(rows / 2);
  }

  /**
   * By hand, half a psi a reading: three readings at one level and one before are 1/3 + 1 of its
   * variance, 0.577 psi; two and two are one of it, 0.5 psi.
   */
  @Test
  void howSureOneLossIs() {
    LossFit early = fit(FOUR, 0, 6, 6, 6);
    assertThat(early.kind()).isEqualTo(LossFit.Kind.ONCE);
    assertThat(early.from()).isZero();
    assertThat(early.sigma() * 94.7).isCloseTo(0.5774, within(1e-4));
    assertThat(fit(FOUR, 0, 0, 6, 6).sigma() * 94.7).isCloseTo(0.5, within(1e-9));
  }

  /**
   * By hand: over days 1 to 4 the squares about the middle are 5, so a slope is sure to 0.5/√5 =
   * 0.2236 psi a day and what is lost in three days to 0.6708. The slope of 0, 0.2, 0.4, 0.6 is
   * 0.2: under three of its deviations.
   */
  @Test
  void aSoundTireIsToldWithWhatItMayHaveLost() {
    LossFit sound = fit(new double[] {1, 2, 3, 4}, 0, 0.2, 0.4, 0.6);
    assertThat(sound.kind()).isEqualTo(LossFit.Kind.SOUND);
    assertThat(sound.part() * 94.7).isCloseTo(0.6, within(1e-9));
    assertThat(sound.sigma() * 94.7).isCloseTo(0.6708, within(1e-4));
    assertThat(sound.perDaySigma() * 94.7).isCloseTo(0.2236, within(1e-4));
    assertThat(sound.from()).isZero();
    assertThat(sound.to()).isEqualTo(3);
  }

  /**
   * By hand: 0, 1, 5, 6 psi. The line rises by 2.2 a day and leaves 0.3, 0.9, 0.9 and 0.3: 1.8, or
   * 7.2 squared deviations. The step from 0.5 to 5.5 leaves four halves: 1, or 4 of them. They
   * differ by 3.2, and both may be. Lost is 3 · 2.2 psi.
   */
  @Test
  void whereLineAndStepFitAlikeTheKindIsNotTold() {
    LossFit either = fit(FOUR, 0, 1, 5, 6);
    assertThat(either.kind()).isEqualTo(LossFit.Kind.LOST);
    assertThat(either.part() * 94.7).isCloseTo(6.6, within(1e-9));
    assertThat(either.sigma() * 94.7).isCloseTo(0.6708, within(1e-4));
    assertThat(either.to()).isEqualTo(3);
  }

  /**
   * Two psi a day, the fourth of five readings noted 3 psi wrong. Worked apart from this code by
   * Huber's cost (1964): the line leaves 13.6, the best step 20.4. By plain squares 30.2 and 35.0
   * would not tell; with 9 psi at last they would name a step that is none: 44.6 and 35.0.
   */
  @Test
  void oneWrongReadingOfFiveHidesNoSteadyLeak() {
    double[] five = {0, 1, 2, 3, 4};
    assertThat(fit(five, 0, 2, 4, 3, 8).kind()).isEqualTo(LossFit.Kind.STEADY);
    assertThat(fit(five, 0, 2, 4, 3, 9).kind()).isEqualTo(LossFit.Kind.LOST);
  }
}

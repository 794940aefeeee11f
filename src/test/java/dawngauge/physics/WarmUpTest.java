package dawngauge.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WarmUpTest {

  private static final double PSI = 6894.757293168361;
  private static final double POUND = 0.45359237;
  private static final double MPH = 0.44704;
  private static final double HOUR = 3600;
  private static final double AIR = 293.15;

  private static double psiPerKelvin(double psi) {
    return GasLaw.fill(psi * PSI, StandardAtmosphere.SEA_LEVEL_PRESSURE, AIR) / PSI;
  }

  private static double riseAtRatedLoad(double mph) {
    return WarmUp.rise(1, 1, mph * MPH, 1);
  }

  private static double buildUpAfter(double psi, double pounds, double mph, double seconds) {
    double tau = WarmUp.rollingTimeConstant(pounds * POUND);
    double rise = riseAtRatedLoad(mph);
    double end = WarmUp.temperatureAfter(AIR, AIR, 0, rise, tau, seconds);
    return psiPerKelvin(psi) * (end - AIR);
  }

  /**
   * UN Regulation 117, Annex 6: rolling resistance at t °C is brought to 25 °C by 1 + K·(t − 25), K
   * 0.010 up to load index 121 (1,450 kg, 3,197 lb) and 0.006 above, from 20 to 30 °C. So from 20
   * °C to t it goes by (1 − 5·K)/(1 + K·(t − 25)).
   */
  @ParameterizedTest
  @CsvSource({
    "20, 3000, 0.010",
    "25, 3000, 0.010",
    "30, 3000, 0.010",
    "25, 6175, 0.006",
    "30, 6175, 0.006"
  })
  void theRiseGoesWithRollingResistance(double celsius, double pounds, double fall) {
    double published = (1 - 5 * fall) / (1 + fall * (celsius - 25));
    assertThat(WarmUp.riseByAir(celsius + 273.15, pounds * POUND))
        .isCloseTo(published, within(0.0013));
  }

  /** Beyond 0 and 40 °C nothing is known: e^(0.010·20) = 1.2214, e^(−0.006·20) = 0.8869. */
  @Test
  void farFromTwentyDegreesTheRiseStaysAsItIs() {
    assertThat(WarmUp.riseByAir(250, 3000 * POUND)).isCloseTo(1.2214, within(1e-4));
    assertThat(WarmUp.riseByAir(273.15, 3000 * POUND)).isCloseTo(1.2214, within(1e-4));
    assertThat(WarmUp.riseByAir(320, 6175 * POUND)).isCloseTo(0.8869, within(1e-4));
    assertThat(WarmUp.riseByAir(Double.NaN, 3000 * POUND)).isNaN();
    for (double kelvins = 260; kelvins < 320; kelvins += 0.5) {
      assertThat(WarmUp.riseByAir(kelvins + 0.5, 3000 * POUND))
          .isLessThanOrEqualTo(WarmUp.riseByAir(kelvins, 3000 * POUND));
    }
  }

  /**
   * Computed apart from this code from the inferred start values, at 20 °C, rated load and
   * pressure: build-up in psi at equilibrium and after 60 min at 60 mph, and after 60 min at 55
   * mph.
   *
   * <p>Against 49 CFR 393.75, at full load: the smaller figure (5 psi at 41 to 55 mph, up to 4,000
   * lb) is met from 35 psi up, the larger (15 psi above 4,000 lb) just missed in the first hour at
   * 55 mph: 13.4 to 14.5. What the trade and the UN tell is below.
   */
  @ParameterizedTest
  @CsvSource({
    "35, 1500, 6.4, 6.3, 6.0",
    "50, 3000, 8.4, 8.1, 7.8",
    "65, 3000, 10.3, 10.0, 9.6",
    "80, 3195, 12.3, 11.9, 11.4",
    "110, 4400, 16.2, 15.0, 14.4",
    "110, 6175, 16.2, 14.0, 13.4",
    "120, 6610, 17.5, 15.1, 14.5"
  })
  void buildUpIsThatOfTheTable(
      double psi, double pounds, double settled, double afterHour, double afterHourAt55) {
    assertThat(psiPerKelvin(psi) * riseAtRatedLoad(60)).isCloseTo(settled, within(0.051));
    assertThat(buildUpAfter(psi, pounds, 60, HOUR)).isCloseTo(afterHour, within(0.051));
    assertThat(buildUpAfter(psi, pounds, 55, HOUR)).isCloseTo(afterHourAt55, within(0.051));
  }

  /**
   * Trade article: a 100 psi truck tire from 68 °F gains 10 to 15 psi at equilibrium: that middle
   * at 85 % of its load, the upper end at all of it. A UN working group on pressure monitoring
   * reckons with +10 % for cars: 12 % at 65 % of the load.
   */
  @Test
  void tiresGainWhatTheTradeSays() {
    assertThat(psiPerKelvin(100) * riseAtRatedLoad(60)).isBetween(14.5, 15.0);
    assertThat(psiPerKelvin(100) * 0.85 * riseAtRatedLoad(60)).isCloseTo(12.5, within(0.2));
    assertThat(psiPerKelvin(35) * 0.65 * riseAtRatedLoad(60)).isBetween(3.5, 4.3);
  }

  /** NHTSA: cold means parked at least three hours; here 0.22 and 0.6 psi are left by then. */
  @ParameterizedTest
  @CsvSource({"80, 3195, 0.22, 0.005", "110, 6175, 0.6, 0.05"})
  void aTireParkedThreeHoursIsCold(double psi, double pounds, double left, double tolerance) {
    double hot = AIR + riseAtRatedLoad(60);
    double tau = WarmUp.parkedTimeConstant(pounds * POUND);
    double end = WarmUp.temperatureAfter(hot, AIR, 0, 0, tau, 3 * HOUR);
    assertThat(psiPerKelvin(psi) * (end - AIR)).isCloseTo(left, within(tolerance));
  }

  @ParameterizedTest
  @CsvSource({"1000, 17, 45", "3200, 17, 45", "4600, 23.5, 50", "6000, 30, 55", "9000, 30, 55"})
  void timeConstantsGoLinearlyFromSmallToLargeTires(
      double pounds, double rollingMinutes, double parkedMinutes) {
    double kg = pounds * POUND;
    assertThat(WarmUp.rollingTimeConstant(kg) / 60).isCloseTo(rollingMinutes, within(1e-9));
    assertThat(WarmUp.parkedTimeConstant(kg) / 60).isCloseTo(parkedMinutes, within(1e-9));
  }

  /** Powers of load 1 and pressure −0.4: TRB Special Report 286; of speed 0.5: inferred. */
  @Test
  void riseFollowsLoadPressureAndSpeed() {
    double base = WarmUp.rise(1, 1, 60 * MPH, 1);
    assertThat(WarmUp.rise(0.6, 1, 60 * MPH, 1) / base).isCloseTo(0.6, within(1e-12));
    // 0.8^-0.4 = 1.0934 and (41/60)^0.5 = 0.8266, by hand.
    assertThat(WarmUp.rise(1, 0.8, 60 * MPH, 1) / base).isCloseTo(1.0934, within(5e-5));
    assertThat(WarmUp.rise(1, 1, 41 * MPH, 1) / base).isCloseTo(0.8266, within(5e-5));
    assertThat(WarmUp.rise(1, 1, 60 * MPH, 1.3) / base).isCloseTo(1.3, within(1e-12));
    assertThat(WarmUp.rise(1, 1, 0, 1)).isZero();
  }

  /** After sunrise a parked tire lags: in the long run by s·τ behind air that warms by s. */
  @Test
  void aParkedTireLagsBehindWarmingAir() {
    double slope = 3.0 / HOUR;
    double tau = 45 * 60;
    double end = WarmUp.temperatureAfter(280, 280, slope, 0, tau, 12 * HOUR);
    assertThat(280 + slope * 12 * HOUR - end).isCloseTo(slope * tau, within(1e-5));
  }

  @Test
  void manyPiecesAgreeWithTheIntegrator() {
    Random random = new Random(393_75);
    int tires = 18;
    double psiPerKelvinAtMost = psiPerKelvin(130);
    List<Double> start = new ArrayList<>();
    for (int i = 0; i < tires; i++) {
      start.add(260 + 50 * random.nextDouble());
    }
    List<ReferenceIntegrator.Piece> pieces = new ArrayList<>();
    double air = 275;
    for (int n = 0; n < 400; n++) {
      double seconds = n % 50 == 0 ? random.nextDouble() : 3000 * random.nextDouble();
      double slope = (random.nextDouble() - 0.5) * 10 / HOUR;
      boolean parked = random.nextInt(4) == 0;
      List<Double> rises = new ArrayList<>();
      List<Double> taus = new ArrayList<>();
      for (int i = 0; i < tires; i++) {
        double kg = (2000 + 300 * i) * POUND;
        double load = 0.3 + 0.7 * random.nextDouble();
        double speed = parked ? 0 : 75 * MPH * random.nextDouble();
        rises.add(WarmUp.rise(load, 0.9, speed, 1));
        taus.add(parked ? WarmUp.parkedTimeConstant(kg) : WarmUp.rollingTimeConstant(kg));
      }
      pieces.add(new ReferenceIntegrator.Piece(seconds, air, slope, rises, taus));
      air = Math.min(320, Math.max(250, air + slope * seconds));
    }

    List<double[]> judged = ReferenceIntegrator.temperatures(start, pieces);
    double worst = 0;
    for (int i = 0; i < tires; i++) {
      double kelvins = start.get(i);
      for (int n = 0; n < pieces.size(); n++) {
        ReferenceIntegrator.Piece piece = pieces.get(n);
        kelvins =
            WarmUp.temperatureAfter(
                kelvins,
                piece.airStartKelvins(),
                piece.airSlopeKelvinsPerSecond(),
                piece.rises().get(i),
                piece.tausSeconds().get(i),
                piece.seconds());
        worst = Math.max(worst, Math.abs(kelvins - judged.get(n)[i]));
      }
    }
    assertThat(worst * psiPerKelvinAtMost).as("psi at 130 psi").isLessThan(1e-6);
  }

  @Test
  void meanAgreesWithTheIntegral() {
    Random random = new Random(1981);
    for (int n = 0; n < 200; n++) {
      double tire = 250 + 80 * random.nextDouble();
      double air = 250 + 60 * random.nextDouble();
      double slope = (random.nextDouble() - 0.5) * 10 / HOUR;
      double rise = 40 * random.nextDouble();
      double tau = 60 * (10 + 60 * random.nextDouble());
      double seconds = Math.pow(10, 4.5 * random.nextDouble());
      double[] end =
          ReferenceIntegrator.integrate(
              new double[] {tire, 0},
              seconds,
              (t, y) -> new double[] {(air + slope * t + rise - y[0]) / tau, y[0]});
      assertThat(WarmUp.meanTemperature(tire, air, slope, rise, tau, seconds))
          .isCloseTo(end[1] / seconds, within(1e-6));
    }
  }

  @Test
  void aPieceOfNoLengthChangesNothing() {
    assertThat(WarmUp.temperatureAfter(300, 280, 0.001, 25, 1000, 0)).isCloseTo(300, within(1e-10));
    assertThat(WarmUp.meanTemperature(300, 280, 0.001, 25, 1000, 0)).isEqualTo(300);
    assertThat(WarmUp.meanTemperature(300, 280, 0.001, 25, 1000, 1e-9))
        .isCloseTo(300, within(1e-9));
  }

  /** A stop inserted on a leg changes nothing: two halves of a piece are the piece. */
  @Test
  void aPieceCutInTwoIsTheSamePiece() {
    double slope = -2.0 / HOUR;
    double whole = WarmUp.temperatureAfter(290, 285, slope, 25, 1020, 2700);
    double half = WarmUp.temperatureAfter(290, 285, slope, 25, 1020, 1000);
    double both = WarmUp.temperatureAfter(half, 285 + slope * 1000, slope, 25, 1020, 1700);
    assertThat(both).isCloseTo(whole, within(1e-10));
  }

  @Test
  void figuresOutOfRangeAreRefused() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> WarmUp.temperatureAfter(290, 285, 0, 25, 0, 60));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> WarmUp.temperatureAfter(290, 285, 0, 25, 1000, -1));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> WarmUp.meanTemperature(290, 285, 0, 25, Double.NaN, 60));
    assertThatIllegalArgumentException().isThrownBy(() -> WarmUp.rollingTimeConstant(0));
    assertThatIllegalArgumentException().isThrownBy(() -> WarmUp.rise(1, 0, 20, 1));
    assertThatIllegalArgumentException().isThrownBy(() -> WarmUp.rise(1, 1, -1, 1));
    assertThatIllegalArgumentException().isThrownBy(() -> WarmUp.rise(Double.NaN, 1, 20, 1));
  }
}

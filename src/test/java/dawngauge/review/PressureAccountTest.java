package dawngauge.review;

import static dawngauge.testdata.StopBuilder.stop;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dawngauge.forecast.Forecaster;
import dawngauge.forecast.ReadingCheck;
import dawngauge.testdata.Forecasts;
import dawngauge.testdata.RigBuilder;
import dawngauge.testdata.StopBuilder;
import dawngauge.testdata.Trips;
import dawngauge.trip.ReadingState;
import dawngauge.trip.Trip;
import java.time.Duration;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** The split of a difference of pressure adds up, and each part is what the law says. */
class PressureAccountTest {

  private static final double PSI = 6894.757293168361; // NIST SP 811, 2008

  private static TripReview review(Trip trip) {
    Forecaster forecaster = Forecasts.forecaster(trip);
    return TripReview.of(forecaster);
  }

  private static PressureAccount account(Trip trip) {
    PressureAccount account = review(trip).tires().get(0).account();
    if (account == null) {
      throw new AssertionError("no account");
    }
    return account;
  }

  private static Trips night(StopBuilder first, StopBuilder second) {
    return Trips.of(RigBuilder.trailer())
        .stop(first.leaves("2027-06-01T06:00Z"))
        .leg("120 mi", "60 mph")
        .stop(second.stays(Duration.ofHours(22)))
        .leg("60 mi", "60 mph")
        .stop(stop("end").steady("60 °F"));
  }

  /**
   * OpenStax University Physics 2, ideal gas, worked example: 7.00e5 Pa absolute at 18.0 °C is
   * 7.41e5 Pa at 35.0 °C.
   */
  @Test
  void warmerAirAloneIsTheGasLaw() {
    double expected = 7.00e5 * 308.15 / 291.15 - 101325;
    assertThat(expected + 101325).isCloseTo(7.41e5, within(500.0));
    Trip trip =
        night(stop("a").steady("18 C"), stop("b").steady("35 C"))
            .read("2027-06-01T05:50Z", "T1", "598.675 kPa")
            .read(
                "2027-06-02T05:50Z", "T1", String.format(Locale.ROOT, "%.3f kPa", expected / 1000))
            .trip();
    PressureAccount account = account(trip);
    assertThat(account.air() + account.lost()).isCloseTo(expected - 598675, within(1.0));
    assertThat(account.lost()).isCloseTo(0, within(1.0));
    assertThat(account.height()).isZero();
    assertThat(account.sum()).isCloseTo(account.difference(), within(1e-6));
  }

  /**
   * What is let out warm is less by the ratio of the temperatures: 6 psi at 323 K, 4.98 at 268 K.
   */
  @Test
  void whatIsLetOutWarmIsLessAtAColdDawn() {
    Trip trip =
        night(stop("a").steady("-5.15 C"), stop("b").steady("-5.15 C"))
            .read("2027-06-01T05:50Z", "T1", "80 psi")
            .adjust("2027-06-01T08:02Z", "T1", "76 psi")
            .read("2027-06-02T05:50Z", "T1", "70 psi")
            .trip();
    PressureAccount account = account(trip);
    PressureAccount.Part part = account.settings().get(0);
    double then = part.setting().fillAdded() * part.setting().after().tireKelvins();
    double mean = (account.first().tireKelvins() + account.last().tireKelvins()) / 2;
    assertThat(part.pascals() / then)
        .isCloseTo(mean / part.setting().after().tireKelvins(), within(1e-12));
    assertThat(part.setting().after().tireKelvins()).isGreaterThan(mean + 5);
    assertThat(account.sum()).isCloseTo(account.difference(), within(1e-6));
  }

  @Test
  void theSumIsTheDifferenceOverRandomTrips() {
    Random random = new Random(17);
    for (int i = 0; i < 200; i++) {
      String first = String.format(Locale.ROOT, "%.1f °F", 20 + 60 * random.nextDouble());
      String second = String.format(Locale.ROOT, "%.1f °F", 20 + 80 * random.nextDouble());
      String height = String.format(Locale.ROOT, "%.0f ft", 7000 * random.nextDouble());
      Trips trips =
          night(stop("a").steady(first).elevation(height), stop("b").steady(second))
              .read("2027-06-01T05:50Z", "T1", figure(random));
      if (random.nextBoolean()) {
        trips.adjust("2027-06-01T08:05Z", "T1", figure(random));
      }
      if (random.nextBoolean()) {
        trips.read("2027-06-01T09:00Z", "T1", figure(random), "hand", ReadingState.WARM);
      }
      PressureAccount account =
          account(trips.read("2027-06-02T05:50Z", "T1", figure(random)).trip());
      assertThat(account.sum()).isCloseTo(account.difference(), within(1e-6));
    }
  }

  private static String figure(Random random) {
    return String.format(Locale.ROOT, "%.1f psi", 60 + 40 * random.nextDouble());
  }

  /** 49 CFR 571.138 warns at 25 % under the recommended pressure: 80 to 60 psi. */
  @Test
  void aTireAtTheDangerLineOfTheRegulationRanLow() {
    Trip trip =
        night(stop("a").steady("60 °F"), stop("b").steady("60 °F"))
            .readAll("2027-06-01T05:50Z", "80 psi")
            .read("2027-06-02T05:50Z", "T1", "60 psi")
            .read("2027-06-02T05:51Z", "T2", "80 psi")
            .trip();
    List<TireReview> tires = review(trip).tires();
    assertThat(tires.get(0).ranLow()).isNotNull();
    assertThat(tires.get(0).lost() / PSI).isCloseTo(20, within(0.1));
    assertThat(tires.get(1).ranLow()).isNull();
  }

  /**
   * By hand: 80 psi in 60 °F of measured air, twice. The gauge repeats within 0.5 psi, √2 · 0.5 =
   * 0.7071 of a difference; the air is measured within 1 K, √2 of it by 94.696 psi/288.706 K is
   * 0.4639 psi; a tire that stood all night is as cool as the air. Together 0.8457 psi.
   */
  @Test
  void howSureWhatWasLostIs() {
    Trip trip =
        night(stop("a").steady("60 °F"), stop("b").steady("60 °F"))
            .readIn("60 °F", "2027-06-01T05:50Z", "T1", "80 psi")
            .readIn("60 °F", "2027-06-02T05:50Z", "T1", "80 psi")
            .trip();
    PressureAccount account = account(trip);
    assertThat(account.gaugeSigma() / PSI).isCloseTo(0.7071, within(1e-4));
    assertThat(account.lostSigma() / PSI).isCloseTo(0.8457, within(1e-3));
  }

  /**
   * From a warm reading on arriving to the next dawn: what the warmth made is taken away again. A
   * warm reading is as unsure as the rise: F̄ times its spread in kelvin comes on top.
   */
  @Test
  void fromAWarmReadingToTheNextDawn() {
    Trip trip =
        night(stop("a").steady("60 °F"), stop("b").steady("60 °F"))
            .read("2027-06-01T05:50Z", "T1", "80 psi")
            .read("2027-06-01T08:00Z", "T1", "88 psi", "hand", ReadingState.WARM)
            .read("2027-06-02T05:50Z", "T1", "80 psi")
            .trip();
    TireReview tire = review(trip).tires().get(0);
    ReadingCheck warm = tire.all().get(1);
    ReadingCheck dawn = tire.all().get(2);
    PressureAccount account = PressureAccount.of(warm, dawn, tire.made());
    double middle = (warm.fillRead() + dawn.fillRead()) / 2;
    assertThat(account.air()).isZero();
    assertThat(account.warmUp())
        .isCloseTo(-middle * (warm.tireKelvins() - warm.airKelvins()), within(100.0))
        .isLessThan(-3 * PSI);
    assertThat(account.sum()).isCloseTo(-8 * PSI, within(1e-6));
    double rest =
        Math.hypot(middle * Math.hypot(warm.airSigma(), dawn.airSigma()), account.gaugeSigma());
    assertThat(account.lostSigma())
        .isCloseTo(Math.hypot(rest, middle * warm.warmSigma()), within(1.0))
        .isGreaterThan(rest + 0.1 * PSI);
  }

  /** What was set before the first of both readings is no part of their difference. */
  @Test
  void whatWasSetBeforeTheFirstReadingIsNotBetween() {
    Trip trip =
        night(stop("a").steady("60 °F"), stop("b").steady("60 °F"))
            .read("2027-06-01T05:50Z", "T1", "70 psi")
            .adjust("2027-06-01T05:51Z", "T1", "80 psi")
            .read("2027-06-01T05:52Z", "T1", "80 psi")
            .adjust("2027-06-01T05:55Z", "T1", "75 psi")
            .read("2027-06-02T05:50Z", "T1", "75 psi")
            .adjust("2027-06-02T05:55Z", "T1", "77 psi")
            .trip();
    TireReview tire = review(trip).tires().get(0);
    assertThat(tire.made()).hasSize(3);
    PressureAccount account = PressureAccount.of(tire.all().get(1), tire.all().get(2), tire.made());
    assertThat(account.settings()).hasSize(1);
    assertThat(account.settings().get(0).pascals() / PSI).isCloseTo(-5, within(0.05));
    assertThat(account.lost() / PSI).isCloseTo(0, within(0.05));
  }
}

package dawngauge.forecast;

import static dawngauge.testdata.Forecasts.psi;
import static dawngauge.testdata.StopBuilder.stop;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dawngauge.ledger.FoundLines;
import dawngauge.testdata.Forecasts;
import dawngauge.testdata.RigBuilder;
import dawngauge.testdata.Trips;
import dawngauge.trip.HeatRecord;
import dawngauge.trip.ReadingState;
import dawngauge.trip.RigEdits;
import dawngauge.trip.Tire;
import dawngauge.trip.Trip;
import dawngauge.trip.WheelPosition;
import java.time.Duration;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;

/** The heat factor by warm readings. */
class HeatFitTest {

  private static Trips day() {
    return day(1);
  }

  private static Trips day(int axles) {
    return Trips.of(RigBuilder.trailer().axles(axles))
        .stop(stop("home").leaves("2027-06-01T06:00Z").steady("60 °F"))
        .leg("120 mi", "60 mph")
        .stop(stop("noon").stays(Duration.ofHours(1)).steady("60 °F"))
        .leg("120 mi", "60 mph")
        .stop(stop("end").stays(Duration.ofHours(6)).steady("60 °F"));
  }

  /** What tire 1 would read on arriving at noon with a heat factor. */
  private static double warm(double factor) {
    Trip trip = day().readAll("2027-06-01T05:50Z", "80 psi").trip();
    Tire tire = trip.rig().tire("T1").orElseThrow();
    Trip other = RigEdits.withTire(trip, tire.withHeatFactor(factor));
    TireSnapshot arrival = Forecasts.first(other).get(1).arrival();
    return psi(Forecasts.known(arrival).reading());
  }

  private static List<HeatFit> fits(String pressure) {
    return HeatFit.of(
        Forecasts.forecaster(
            day()
                .readAll("2027-06-01T05:50Z", "80 psi")
                .read("2027-06-01T08:00Z", "T1", pressure, "hand", ReadingState.WARM)
                .trip()));
  }

  @Test
  void aReadingAsModelledLeavesTheFactor() {
    HeatFit fit = fits(String.format(Locale.ROOT, "%.3f psi", warm(1))).get(0);
    assertThat(fit.tire()).isEqualTo("T1");
    assertThat(fit.factor()).isCloseTo(1, within(0.001));
    assertThat(fit.offered()).isFalse();
    assertThat(fit.sigma()).isLessThan(0.25);
  }

  /**
   * A reading as by a factor of 1.3 moves it by the part that its weight has beside the prior: with
   * the slope s in psi by factor and a spread of the reading without that of the rise, the factor
   * is (1/0.25² + w·1.3)/(1/0.25² + w), and its own spread tells w: 1/σ² = 1/0.25² + w.
   */
  @Test
  void aHotterReadingMovesItAsFarAsItIsSure() {
    HeatFit fit = fits(String.format(Locale.ROOT, "%.3f psi", warm(1.3))).get(0);
    double weight = 1 / (fit.sigma() * fit.sigma()) - 16;
    assertThat(weight).isPositive();
    assertThat(fit.factor()).isCloseTo((16 + weight * 1.3) / (16 + weight), within(0.002));
    assertThat(fit.factor()).isBetween(1.05, 1.3);
    assertThat(fit.offered()).isTrue();
  }

  @Test
  void aFaultIsNotLearned() {
    HeatFit fit = fits(String.format(Locale.ROOT, "%.1f psi", warm(3.5))).get(0);
    assertThat(fit.offered()).isFalse();
    assertThat(fit.beyond()).isTrue();
  }

  /** A brake heats one wheel: what all others do too is the model, or the load. */
  @Test
  void whatAllTiresDoIsNoFaultOfOne() {
    Trips trips = day(2).readAll("2027-06-01T05:50Z", "80 psi");
    String hot = String.format(Locale.ROOT, "%.1f psi", warm(2.6));
    for (int tire = 1; tire <= 4; tire++) {
      trips.read("2027-06-01T08:0" + tire + "Z", "T" + tire, hot, "hand", ReadingState.WARM);
    }
    List<HeatFit> fits = HeatFit.of(Forecasts.forecaster(trips.trip()));
    assertThat(fits).hasSize(4);
    assertThat(fits)
        .allSatisfy(
            fit -> {
              assertThat(fit.factor()).isBetween(1.45, 2.6);
              assertThat(fit.usual()).isCloseTo(fit.factor(), within(0.1));
              assertThat(fit.beyond()).isFalse();
              assertThat(fit.asOthers()).isTrue();
              assertThat(fit.offered()).isTrue();
              assertThat(FoundLines.of(trips.trip(), fit, "")).contains("other tires are alike");
            });
    assertThat(fits("99.0 psi").get(0).usual()).as("alone").isEqualTo(1);
  }

  @Test
  void withoutAColdReadingOfTheDayOrWithAirSetBetweenNothingIsFitted() {
    Trips without = day().read("2027-06-01T08:00Z", "T1", "92 psi", "hand", ReadingState.WARM);
    assertThat(HeatFit.of(Forecasts.forecaster(without.trip()))).isEmpty();
    Trips set =
        day()
            .readAll("2027-06-01T05:50Z", "80 psi")
            .adjust("2027-06-01T05:55Z", "T1", "78 psi")
            .read("2027-06-01T08:00Z", "T1", "84 psi", "hand", ReadingState.WARM);
    assertThat(HeatFit.of(Forecasts.forecaster(set.trip()))).isEmpty();
    Trips sun =
        day()
            .readAll("2027-06-01T05:50Z", "80 psi")
            .read("2027-06-01T08:00Z", "T1", "88 psi", "hand", ReadingState.COLD_IN_SUN);
    assertThat(HeatFit.of(Forecasts.forecaster(sun.trip()))).isEmpty();
  }

  /**
   * What earlier trips told stands in the place of 1 ± 0.25, a tenth of it joined from trip to
   * trip: 1.3 ± 0.1 is √((0.1/1.3)² + 0.1²) = 0.126 of the rise, where 0.25 is told without.
   */
  @Test
  void earlierTripsMakeTheNextSurer() {
    Trip trip = day().readAll("2027-06-01T05:50Z", "80 psi").trip();
    Tire tire = trip.rig().tire("T1").orElseThrow().withHeatFactor(1.3);
    Tire known = tire.withHeatRecord(new HeatRecord(1.3, 0.1));
    assertThat(HeatFit.riseSpread(known)).isCloseTo(0.1262, within(1e-4));
    assertThat(HeatFit.riseSpread(tire)).isEqualTo(0.25);
    assertThat(HeatFit.riseSpread(known.withHeatFactor(1.6))).isLessThan(0.25);
    assertThat(HeatFit.riseSpread(known.withHeatFactor(1.65))).as("another's").isEqualTo(0.25);
    assertThat(HeatFit.riseSpread(known.withHeatFactor(1))).isLessThan(0.25);
    assertThat(HeatFit.riseSpread(known.withHeatFactor(0.95))).as("another's").isEqualTo(0.25);
    assertThat(HeatFit.riseSpread(tire.withHeatRecord(new HeatRecord(1, 1)))).isEqualTo(0.25);
    double unsure = arriving(RigEdits.withTire(trip, tire)).readingSigma();
    double sure = arriving(RigEdits.withTire(trip, known)).readingSigma();
    assertThat(sure / unsure).isBetween(0.4, 0.8);
    Trip warm =
        RigEdits.withTire(trip, known)
            .withLog(
                day()
                    .readAll("2027-06-01T05:50Z", "80 psi")
                    .read("2027-06-01T08:00Z", "T1", "92 psi", "hand", ReadingState.WARM)
                    .trip()
                    .log());
    HeatFit fit = HeatFit.of(Forecasts.forecaster(warm)).get(0);
    assertThat(fit.factor()).isBetween(1.0, 1.3);
    assertThat(fit.sigma()).isLessThan(1.3 * 0.1262);
    HeatRecord kept = fit.record().orElseThrow();
    assertThat(kept.factor()).isCloseTo(fit.factor(), within(0.005));
    assertThat(kept.spread()).isCloseTo(fit.sigma(), within(0.005));
  }

  private static TireSnapshot arriving(Trip trip) {
    return Forecasts.known(Forecasts.first(trip).get(1).arrival());
  }

  @Test
  void whatIsKeptIsToldAndDropped() {
    Trip trip = day().readAll("2027-06-01T05:50Z", "80 psi").trip();
    assertThat(FoundLines.kept(trip)).isEmpty();
    Tire tire = trip.rig().tire("T1").orElseThrow().withHeatFactor(1.3);
    Trip known = RigEdits.withTire(trip, tire.withHeatRecord(new HeatRecord(1.3, 0.1)));
    // 0.1262 / 0.25
    assertThat(FoundLines.kept(known)).contains("t1l 1.30").contains("are 50 % as wide");
    assertThat(RigEdits.withoutHeatRecords(known)).isEqualTo(trip);
    List<HeatFit> fits = fits(String.format(Locale.ROOT, "%.3f psi", warm(1.2)));
    assertThat(FoundLines.toKeep(trip, fits))
        .contains("t1l 1.1")
        .contains("Keep that with the rig?");
    assertThat(FoundLines.toKeep(trip, List.of())).isEmpty();
  }

  /**
   * A factor of one more reads s psi more. What is left of a reading's spread without the rise's
   * quarter, no less than √2 · 0.5 psi, over s is what one reading tells the factor to; joined with
   * 0.25 by weight.
   */
  @Test
  void howSureOneReadingMakesIt() {
    double slope = (warm(1.5) - warm(1)) / 0.5;
    String as = String.format(Locale.ROOT, "%.3f psi", warm(1));
    Trip trip =
        day()
            .readAll("2027-06-01T05:50Z", "80 psi")
            .read("2027-06-01T08:00Z", "T1", as, "hand", ReadingState.WARM)
            .trip();
    double sigma = psi(Forecasts.first(trip).get(1).readings().get(0).sigma());
    double rest = Math.max(sigma * sigma - slope * slope / 16, 0.5);
    HeatFit fit = HeatFit.of(Forecasts.forecaster(trip)).get(0);
    assertThat(fit.sigma()).isCloseTo(1 / Math.sqrt(16 + slope * slope / rest), within(1e-3));
    assertThat(fit.readings()).isEqualTo(1);
  }

  /**
   * Two readings of a day each tell it by themselves, as if the other were none: surer by both, and
   * nearer to what they tell.
   */
  @Test
  void twoReadingsTellMoreThanOne() {
    Trips trips =
        day()
            .readAll("2027-06-01T05:50Z", "80 psi")
            .read("2027-06-01T08:00Z", "T1", warm(1.3) + " psi", "hand", ReadingState.WARM);
    HeatFit one = HeatFit.of(Forecasts.forecaster(trips.trip())).get(0);
    trips.read("2027-06-01T08:01Z", "T1", warm(1.28) + " psi", "hand", ReadingState.WARM);
    HeatFit two = HeatFit.of(Forecasts.forecaster(trips.trip())).get(0);
    assertThat(two.readings()).isEqualTo(2);
    double single = 1 / (one.sigma() * one.sigma()) - 16;
    assertThat(1 / (two.sigma() * two.sigma()) - 16).isCloseTo(2 * single, within(0.1 * single));
    assertThat(two.factor()).isBetween(one.factor(), 1.3);
  }

  /** Another tire on the wheel: the dawn's reading was of the one before. */
  @Test
  void aChangedTireIsNotHeldAgainstTheDawnOfAnother() {
    Trips trips =
        Trips.of(RigBuilder.trailer().spare())
            .stop(stop("home").leaves("2027-06-01T06:00Z").steady("60 °F"))
            .leg("120 mi", "60 mph")
            .stop(stop("noon").stays(Duration.ofHours(1)).steady("60 °F"))
            .leg("120 mi", "60 mph")
            .stop(stop("end").stays(Duration.ofHours(6)).steady("60 °F"))
            .read("2027-06-01T05:50Z", "T1", "80 psi")
            .change("2027-06-01T05:55Z", 0, "T1", "S")
            .change("2027-06-01T05:58Z", 0, "S", "T1")
            .read("2027-06-01T08:00Z", "T1", "88 psi", "hand", ReadingState.WARM);
    assertThat(HeatFit.of(Forecasts.forecaster(trips.trip()))).isEmpty();
  }

  /** Beside others at 1.2 a tire may be at 1.6, but not at 1.7: 1.4 times what is usual. */
  @Test
  void whatIsAFaultGoesByTheOthers() {
    WheelPosition position = day().rig().positions().get(0);
    assertThat(new HeatFit("T1", position, 1, 1.67, 0.1, 1, 1.2).beyond()).isFalse();
    assertThat(new HeatFit("T1", position, 1, 1.69, 0.1, 1, 1.2).beyond()).isTrue();
    assertThat(new HeatFit("T1", position, 1, 0.71, 0.1, 1, 1.2).beyond()).isTrue();
    assertThat(new HeatFit("T1", position, 1, 0.73, 0.1, 1, 1.2).beyond()).isFalse();
    assertThat(new HeatFit("T1", position, 1, 1.3, 0.1, 1, 1.2).asOthers()).isFalse();
    assertThat(new HeatFit("T1", position, 1, 1.5, 0.1, 1, 1.2).asOthers()).isTrue();
    assertThat(new HeatFit("T1", position, 1, 0.55, 0.1, 1, 0.8).asOthers()).isTrue();
  }
}

package dawngauge.planner;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dawngauge.advice.Advice;
import dawngauge.advice.Mark;
import dawngauge.advice.TireAdvice;
import dawngauge.forecast.TireSnapshot;
import dawngauge.geo.Place;
import dawngauge.quantity.Entered;
import dawngauge.quantity.GaugePressure;
import dawngauge.quantity.Quantity;
import dawngauge.quantity.QuantityKind;
import dawngauge.quantity.Unit;
import dawngauge.quantity.UnitSystem;
import dawngauge.settings.SettingsFile;
import dawngauge.testdata.Forecasts;
import dawngauge.trip.Trip;
import dawngauge.tripfile.TripFile;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A first haul from at most a dozen entries. */
class FirstHaulTest {

  private static final Planner PLANNER = new Planner(SettingsFile.defaults(), List.of());
  private static final LocalDate TODAY = LocalDate.of(2027, 4, 5);

  private static Place place(String name) {
    return PLANNER.places().search(name, null, 1).get(0);
  }

  private static <Q extends Quantity> @Nullable Entered<Q> of(
      QuantityKind<Q> kind, @Nullable String text) {
    return text == null ? null : Entered.of(kind, text);
  }

  private static FirstHaul haul(
      int axles,
      boolean dual,
      @Nullable String low,
      @Nullable String high,
      @Nullable String load,
      @Nullable String at,
      @Nullable String label,
      @Nullable String weight,
      @Nullable String reading) {
    return new FirstHaul(
        place("Alamosa, CO"),
        place("Amarillo, TX"),
        LocalDateTime.of(2027, 4, 6, 5, 45),
        of(QuantityKind.TEMPERATURE, low),
        of(QuantityKind.TEMPERATURE, high),
        axles,
        dual,
        "ST235/80R16",
        of(QuantityKind.MASS, load),
        of(QuantityKind.GAUGE_PRESSURE, at),
        of(QuantityKind.GAUGE_PRESSURE, label),
        of(QuantityKind.MASS, weight),
        FirstHaul.Weighed.TOGETHER,
        of(QuantityKind.GAUGE_PRESSURE, reading));
  }

  private static FirstHaul full() {
    return haul(2, false, "15 °F", "58 °F", "3520 lb", "80 psi", "80 psi", "9800 lb", "78 psi");
  }

  private static Plan planned(FirstHaul haul) {
    return PLANNER.plan(PLANNER.first(haul, TODAY).orElseThrow());
  }

  @Test
  void aDozenEntriesGiveEveryTireFiguresAndAMarginAtEveryStop() {
    Plan planned = planned(full());
    var advice = Forecasts.known(planned.advice());
    assertThat(advice.stops()).hasSize(2);
    for (TireAdvice tire : advice.stops().get(0).tires()) {
      assertThat(tire.tire().worstMargin()).isNotNaN();
      assertThat(tire.mark()).isNotEqualTo(Mark.UNKNOWN);
    }
    for (TireAdvice tire : advice.stops().get(1).tires()) {
      assertThat(Forecasts.known(tire.tire().arrival()).reading()).isNotNaN();
    }
    assertThat(full().missing()).isEmpty();
    assertThat(full().better()).isEmpty();
    assertThat(full().assumed(UnitSystem.US).toString()).doesNotContain("Weight", "Cold pressure");
  }

  /** The heaviest axle or wheel stands for all, so no tire has less to carry than is judged. */
  @ParameterizedTest
  @CsvSource({"TOGETHER, 2450", "AXLE, 4900", "WHEEL, 9800"})
  void theWeightIsOfAllAxlesOrTheHeaviestAxleOrWheel(FirstHaul.Weighed weighed, double pounds) {
    FirstHaul all = full();
    FirstHaul haul =
        new FirstHaul(
            all.from(),
            all.to(),
            all.departure(),
            all.low(),
            all.high(),
            all.axles(),
            all.dual(),
            all.size(),
            all.maxLoad(),
            all.atPressure(),
            all.label(),
            all.weight(),
            weighed,
            all.reading());
    Advice advice = Forecasts.known(planned(haul).advice());
    for (TireAdvice tire : advice.stops().get(0).tires()) {
      assertThat(tire.tire().limits().load().kilograms() / 0.45359237)
          .isCloseTo(pounds, within(0.5));
    }
    assertThat(haul.assumed(UnitSystem.US).toString().contains("as heavy as the heaviest"))
        .isEqualTo(weighed != FirstHaul.Weighed.TOGETHER);
  }

  /**
   * By hand: 78 psi at dawn is p + a = F θ. The settled pressure anywhere else is F θ' − a', with
   * the standard atmosphere's a. Here the same two lines stand beside the program's figures, in psi
   * and kelvin, with air and height as the program took them.
   */
  @Test
  void theSettledPressureIsTheGasLawsFromTheReading() {
    var advice = Forecasts.known(planned(full()).advice());
    TireSnapshot leaving = Forecasts.known(advice.stops().get(0).tires().get(0).tire().check());
    TireSnapshot arriving = Forecasts.known(advice.stops().get(1).tires().get(0).tire().arrival());
    double fill = arriving.fill(); // after what is set at the start, less what is lost on the way
    double by = fill * arriving.airKelvins() - standard(arriving.elevation());
    assertThat(arriving.settled()).isCloseTo(by, within(5.0));
    double read = GaugePressure.of(78, Unit.PSI).pascals();
    double dawn = leaving.origin().tireKelvins();
    assertThat(leaving.origin().fill())
        .isCloseTo(
            (read + standard(leaving.elevation())) / dawn,
            within(0.1)); // 0.1 Pa/K is 0.004 psi: height of the place to the foot
  }

  /** U.S. Standard Atmosphere 1976, troposphere, in pascal. */
  private static double standard(double meters) {
    return 101_325 * Math.pow(1 - 0.0065 * meters / 288.15, 9.80665 * 0.0289644 / 8.31432 / 0.0065);
  }

  @ParameterizedTest
  @CsvSource({"1, false, 2", "2, false, 4", "3, false, 6", "2, true, 8"})
  void itIsSavedAndReadAgainTheSame(int axles, boolean dual, int tires) {
    Trip trip =
        PLANNER
            .first(haul(axles, dual, null, null, "3520 lb", "80 psi", null, null, "5.4 bar"), TODAY)
            .orElseThrow();
    assertThat(trip.rig().tires()).hasSize(tires);
    assertThat(TripFile.parse(TripFile.text(trip)).get().equals(trip)).isTrue();
  }

  @Test
  void whatIsNotEnteredIsAssumedOnTheSafeSideAndSaid() {
    FirstHaul little = haul(2, false, null, null, "3520 lb", "80 psi", null, null, "78 psi");
    assertThat(little.assumed(UnitSystem.US).toString())
        .contains("typical for the dates, no forecast", "80.0 psi", "14081 lb", "tow vehicle");
    var unweighed = Forecasts.known(planned(little).advice());
    var weighed = Forecasts.known(planned(full()).advice());
    double margin = unweighed.stops().get(0).tires().get(0).tire().worstMargin();
    assertThat(margin)
        .isLessThan(weighed.stops().get(0).tires().get(0).tire().worstMargin())
        .isLessThan(0.001);
  }

  /** The assumed load is the most the tires may carry: any weight typed instead leaves more. */
  @ParameterizedTest
  @CsvSource({"6000 lb", "9800 lb", "12000 lb", "14000 lb"})
  void aTypedWeightNeverLeavesLessThanTheAssumedOne(String weight) {
    var typed =
        planned(haul(2, false, "15 °F", "58 °F", "3520 lb", "80 psi", "80 psi", weight, "78 psi"));
    var assumed =
        planned(haul(2, false, "15 °F", "58 °F", "3520 lb", "80 psi", "80 psi", null, "78 psi"));
    assertThat(worst(typed)).isGreaterThanOrEqualTo(worst(assumed));
  }

  private static double worst(Plan planned) {
    return Forecasts.known(planned.advice()).stops().get(0).tires().stream()
        .mapToDouble(tire -> tire.tire().worstMargin())
        .min()
        .orElseThrow();
  }

  @Test
  void nothingEnteredSaysWhatIsNeeded() {
    assertThat(FirstHaul.EMPTY.missing()).hasSize(3);
    assertThat(PLANNER.first(FirstHaul.EMPTY, TODAY)).isEmpty();
    FirstHaul noSidewall = haul(2, false, "15 °F", "58 °F", null, null, null, null, "78 psi");
    assertThat(noSidewall.better().toString()).contains("sidewall");
    assertThat(worstKnown(planned(noSidewall))).isFalse();
  }

  private static boolean worstKnown(Plan planned) {
    return Forecasts.known(planned.advice()).stops().get(0).tires().stream()
        .anyMatch(tire -> !Double.isNaN(tire.tire().worstMargin()));
  }
}

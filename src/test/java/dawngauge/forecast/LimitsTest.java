package dawngauge.forecast;

import static dawngauge.testdata.Forecasts.known;
import static dawngauge.testdata.Forecasts.psi;
import static dawngauge.testdata.StopBuilder.stop;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dawngauge.problem.Problem;
import dawngauge.problem.ProblemCode;
import dawngauge.rules.Limits;
import dawngauge.rules.Loads;
import dawngauge.testdata.Forecasts;
import dawngauge.testdata.RigBuilder;
import dawngauge.testdata.TireBuilder;
import dawngauge.testdata.Trips;
import dawngauge.tire.TireClass;
import dawngauge.trip.Trip;
import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Floor, aim and ceiling. Sides were not weighed, so a side is judged at 52.5 % of its axle: 5,600
 * lb on an axle are 2,940 lb on a tire.
 */
class LimitsTest {

  private static Trip haul(RigBuilder rig, String topSpeed) {
    return Trips.of(rig)
        .stop(stop("a").leaves("2027-06-01T06:00Z").steady("60 °F"))
        .leg("100 mi", "50 mph", topSpeed)
        .stop(stop("b").steady("60 °F"))
        .readAll("2027-06-01T05:50Z", "80 psi")
        .trip();
  }

  private static Limits at(RigBuilder rig, String topSpeed) {
    return Forecasts.first(haul(rig, topSpeed)).get(0).limits();
  }

  private static Limits at(RigBuilder rig) {
    return at(rig, "60 mph");
  }

  private static List<ProblemCode> problems(RigBuilder rig) {
    return Forecasts.of(haul(rig, "60 mph")).problems().stream().map(Problem::code).toList();
  }

  private static void assertPsi(double pascals, double expected) {
    assertThat(psi(pascals)).isCloseTo(expected, within(0.005));
  }

  /** 3,500 lb at 80 psi by the straight line (Tire Society paper, 2009). */
  private static TireBuilder withRows() {
    return TireBuilder.special()
        .row("50 psi", "2600 lb")
        .row("60 psi", "2900 lb")
        .row("70 psi", "3200 lb")
        .row("80 psi", "3500 lb");
  }

  /**
   * Label and sidewall maximum are one figure, as on most trailers: the floor lies below, aim and
   * ceiling are that figure. The estimated floor for 2,940 lb is 80·2,940/3,500 = 67.2 psi by the
   * straight line; the label vouches for 80 psi at 3,000 lb, which asks for no less.
   */
  @Test
  void labelEqualToSidewallMaximum() {
    Limits limits = at(RigBuilder.trailer());

    assertPsi(limits.floor(), 67.2);
    assertPsi(limits.aim(), 80);
    assertPsi(limits.ceiling(), 80);
    assertThat(limits.aimFrom()).isEqualTo(Limits.AimFrom.LABEL);
    assertThat(limits.estimated()).isTrue();
    assertThat(limits.overloaded()).isFalse();
    assertThat(limits.speed()).isEqualTo(Limits.SpeedVerdict.FINE);
  }

  /**
   * Such a tire set to 80 psi at a dawn of −10 °F is 92.7 at 60 °F, and back at −10 °F again 80:
   * the afternoon breaches nothing, since only the floor is judged on the way.
   */
  @Test
  void aWarmAfternoonChangesNoLimit() {
    Trip trip =
        Trips.of(RigBuilder.trailer())
            .stop(stop("dawn").leaves("2027-01-10T06:00Z").steady("-10 °F"))
            .stop(stop("noon").stays(Duration.ofHours(4)).steady("60 °F"))
            .stop(stop("night").stays(Duration.ofHours(12)).steady("-10 °F"))
            .stop(stop("end").steady("-10 °F"))
            .readAll("2027-01-10T05:50Z", "80 psi")
            .trip();

    List<TireAtStop> track = Forecasts.first(trip);

    // (80 + 14.696)·519.67/449.67 − 14.696, gas law
    assertPsi(known(track.get(1).leaving()).settled(), 94.7416);
    assertPsi(known(track.get(2).leaving()).settled(), 80);
    for (TireAtStop at : track) {
      assertPsi(at.limits().ceiling(), 80);
      assertThat(at.leavingChance()).isLessThan(0.001);
      assertThat(at.worstMargin()).isBetween(0.15, 0.2);
    }
  }

  /** What load × 1.1 needs: 80·(2,940·1.1)/3,500 = 73.92 psi, above a label of 65. */
  @Test
  void aLoadThatNeedsMoreThanTheLabel() {
    Limits limits =
        at(
            RigBuilder.trailer()
                .label("ST235/80R16", TireClass.SPECIAL_TRAILER, "E", "65 psi")
                .gawr(null));

    assertPsi(limits.aim(), 73.92);
    assertThat(limits.aimFrom()).isEqualTo(Limits.AimFrom.LOAD);
  }

  /**
   * Where only the reserve does not fit, the ceiling is the aim: 6,400 lb need 76.8, 84.5 with it.
   */
  @Test
  void theReserveDoesNotPassTheCeiling() {
    Limits limits = at(RigBuilder.trailer().gawr("7000 lb").weighed("6400 lb"));

    assertPsi(limits.floor(), 76.8);
    assertPsi(limits.aim(), 80);
    assertThat(limits.overloaded()).isFalse();
  }

  @Test
  void theCeilingIsTheLeastOfTireWheelAndValve() {
    assertPsi(at(RigBuilder.trailer().rims("75 psi", "100 psi")).ceiling(), 75);
    assertPsi(at(RigBuilder.trailer().rims("110 psi", "70 psi")).ceiling(), 70);
    assertPsi(at(RigBuilder.trailer().rims("110 psi", "70 psi")).aim(), 70);
    assertThat(at(RigBuilder.trailer().rims("110 psi", "70 psi")).aimFrom())
        .isEqualTo(Limits.AimFrom.CEILING);
    assertPsi(at(RigBuilder.trailer().rims(null, null)).ceiling(), 80);
  }

  /** The valve allows 60 psi, the load needs 67.2. */
  @Test
  void aLoadAboveWhatTheCeilingCarriesIsOverload() {
    assertThat(at(RigBuilder.trailer().rims("110 psi", "60 psi")).overloaded()).isTrue();
  }

  /** 7,000 lb on the axle: 3,675 lb on a tire of 3,500. */
  @Test
  void aLoadAboveTheSidewallIsOverload() {
    Limits limits = at(RigBuilder.trailer().weighed("7000 lb"));

    assertThat(limits.overloaded()).isTrue();
    assertThat(limits.floor()).isNaN();
    assertPsi(limits.aim(), 80);
  }

  // A target of the user's choice

  @Test
  void aTargetIsUsedWithRowsAndAScale() {
    Limits limits = at(RigBuilder.trailer().tires(withRows()).target("66 psi"));

    // rows: 2,900 lb at 60, 3,200 at 70: 2,940 lb need 61.33 psi; 80 % of the label are 64
    assertPsi(limits.floor(), 61.333);
    assertPsi(limits.aim(), 66);
    assertThat(limits.aimFrom()).isEqualTo(Limits.AimFrom.TARGET);
    assertThat(limits.estimated()).isFalse();
  }

  @Test
  void aTargetIsNotUsedWithoutRowsScaleOrEnoughPressure() {
    List<RigBuilder> rigs =
        List.of(
            RigBuilder.trailer().target("72 psi"),
            RigBuilder.trailer().tires(withRows()).target("72 psi").weighed(null),
            RigBuilder.trailer().tires(withRows()).target("63 psi"),
            RigBuilder.trailer().tires(withRows()).target("66 psi").weighed("6200 lb"),
            RigBuilder.trailer().tires(withRows()).target("72 psi").noLabel());
    for (RigBuilder rig : rigs) {
      assertThat(at(rig).aimFrom()).isNotEqualTo(Limits.AimFrom.TARGET);
      assertPsi(at(rig).aim(), 80);
    }
  }

  @Test
  void aTargetIsNeverAboveTheCeiling() {
    assertPsi(at(RigBuilder.trailer().tires(withRows()).target("90 psi")).aim(), 80);
  }

  // A label that is not of these tires

  private static RigBuilder otherLabel() {
    return RigBuilder.trailer().label("ST235/80R16", TireClass.SPECIAL_TRAILER, "D", "65 psi");
  }

  /**
   * Load range E on the wheel, D on the label: rated pressure with typed wheel and valve limits.
   */
  @Test
  void aLabelOfOtherTiresGivesTheRatedPressure() {
    Limits limits = at(otherLabel());

    assertPsi(limits.aim(), 80);
    assertPsi(limits.ceiling(), 80);
    assertThat(limits.aimFrom()).isEqualTo(Limits.AimFrom.GAWR_SHARE);
    assertThat(problems(otherLabel())).contains(ProblemCode.LABEL_DOES_NOT_SPEAK);
    assertThat(problems(RigBuilder.trailer())).doesNotContain(ProblemCode.LABEL_DOES_NOT_SPEAK);
  }

  /** With rows, what the axle's rating share needs: 3,000 lb at 63.33 psi, less than the label. */
  @Test
  void aLabelOfOtherTiresWithRows() {
    Limits light = at(otherLabel().tires(withRows()).weighed("4000 lb"));
    Limits rated = at(otherLabel().tires(withRows()).weighed("4000 lb").gawr("6800 lb"));

    assertPsi(light.aim(), 65);
    assertThat(light.aimFrom()).isEqualTo(Limits.AimFrom.LABEL);
    assertPsi(rated.aim(), 76.667);
    assertThat(rated.aimFrom()).isEqualTo(Limits.AimFrom.GAWR_SHARE);
  }

  /** The wheel may be rated for the label's tire only, until both limits are typed. */
  @ParameterizedTest
  @CsvSource(
      value = {"-, -", "110 psi, -", "-, 100 psi"},
      nullValues = "-")
  void aLabelOfOtherTiresIsTheCeilingWhileTheRimIsUnknown(String wheel, String valve) {
    Limits limits = at(otherLabel().rims(wheel, valve));

    assertPsi(limits.ceiling(), 65);
    assertPsi(limits.aim(), 65);
    assertThat(limits.overloaded()).isTrue(); // 2,940 lb need 67.2 psi
  }

  /** The label does not vouch for other tires: no certified point in the floor. */
  @Test
  void aLabelOfOtherTiresDoesNotLowerTheFloor() {
    assertPsi(at(otherLabel()).floor(), 67.2);
    // the same label of these tires: 65·2,940/3,000 = 63.7
    assertPsi(
        at(RigBuilder.trailer().label("ST235/80R16", TireClass.SPECIAL_TRAILER, "E", "65 psi"))
            .floor(),
        63.7);
  }

  // Passenger tires

  /**
   * Rated 1,500 lb at 35 psi, sidewall 51: the ceiling is 51, the capacity reaches its most at 35;
   * on a truck the rating is divided by 1.10 (49 CFR 571.110 S4.2.2.2).
   */
  @Test
  void aPassengerTiresMaximumIsNotItsRatedPressure() {
    RigBuilder rig =
        RigBuilder.trailer()
            .tires(TireBuilder.passenger())
            .label("P215/75R15", null, null, "35 psi")
            .gawr("2600 lb")
            .weighed("2200 lb");
    Limits limits = at(rig);

    assertPsi(limits.ceiling(), 51);
    // 1,155 lb of 1,363.6; the label vouches for 1,300 lb at 35 psi
    assertPsi(limits.floor(), 35 * 1155 / (1500 / 1.1));
    assertPsi(limits.aim(), 35);
    TireAtStop at = Forecasts.first(haul(rig, "60 mph")).get(0);
    double most = 1500 / 1.1 / 1155 - 1;
    assertThat(at.marginAt(35 * 6894.757293168361)).isCloseTo(most, within(1e-6));
    assertThat(at.marginAt(51 * 6894.757293168361)).isCloseTo(most, within(1e-6));
  }

  // Speed: Tire and Rim Association's rule for special trailer tires, as reproduced

  private static RigBuilder roomy() {
    return RigBuilder.trailer()
        .tires(TireBuilder.special().most("95 psi"))
        .label("ST235/80R16", TireClass.SPECIAL_TRAILER, "E", "80 psi")
        .gawr(null);
  }

  @Test
  void upToSixtyFiveNothing() {
    assertThat(at(roomy(), "65 mph").speed()).isEqualTo(Limits.SpeedVerdict.FINE);
    assertPsi(at(roomy(), "65 mph").aim(), 80);
  }

  @ParameterizedTest
  @CsvSource({"66 mph", "70 mph", "75 mph"})
  void tenPsiMoreWhereThereIsRoom(String topSpeed) {
    Limits limits = at(roomy(), topSpeed);

    assertThat(limits.speed()).isEqualTo(Limits.SpeedVerdict.RAISED);
    assertPsi(limits.floor(), 77.2);
    assertPsi(limits.aim(), 90);
    assertThat(limits.overloaded()).isFalse();
  }

  /** 76 to 85 mph: also 10 % less load: 2,940/0.9 lb need 74.67, and 10 psi. */
  @Test
  void aboveSeventyFiveTenPercentLessLoad() {
    Limits limits = at(roomy(), "80 mph");

    assertThat(limits.speed()).isEqualTo(Limits.SpeedVerdict.RAISED);
    assertPsi(limits.floor(), 84.667);
  }

  /** The label is the sidewall maximum: no room, so 65 mph or less, and no more air. */
  @ParameterizedTest
  @CsvSource({"70 mph", "80 mph"})
  void keepToSixtyFiveWhereTheCeilingIsInTheWay(String topSpeed) {
    Limits limits = at(RigBuilder.trailer(), topSpeed);

    assertThat(limits.speed()).isEqualTo(Limits.SpeedVerdict.KEEP_TO_65);
    assertPsi(limits.floor(), 67.2);
    assertPsi(limits.aim(), 80);
  }

  @Test
  void theWheelMayBeInTheWayToo() {
    assertThat(at(roomy().rims("85 psi", "100 psi"), "70 mph").speed())
        .isEqualTo(Limits.SpeedVerdict.KEEP_TO_65);
  }

  @Test
  void aboveEightyFiveIsTooFast() {
    assertThat(at(roomy(), "86 mph").speed()).isEqualTo(Limits.SpeedVerdict.TOO_FAST);
  }

  /** J 100 km/h = 62.1 mph, M 130 km/h = 80.8 mph (UN R54). With a symbol the rule is not asked. */
  @ParameterizedTest
  @CsvSource({"J, 62 mph, FINE", "J, 63 mph, TOO_FAST", "M, 80 mph, FINE", "M, 81 mph, TOO_FAST"})
  void aSpeedSymbolIsTheLimit(String symbol, String topSpeed, Limits.SpeedVerdict expected) {
    Limits limits = at(RigBuilder.trailer().tires(TireBuilder.special().symbol(symbol)), topSpeed);

    assertThat(limits.speed()).isEqualTo(expected);
    assertPsi(limits.aim(), 80);
  }

  /** The class is in the size text where it is not typed. */
  @Test
  void theRuleHoldsForASizeThatSaysSpecialTrailer() {
    assertThat(at(RigBuilder.trailer().tires(TireBuilder.special().untyped()), "70 mph").speed())
        .isEqualTo(Limits.SpeedVerdict.KEEP_TO_65);
  }

  @Test
  void theRuleIsForSpecialTrailerTiresOnly() {
    RigBuilder rig =
        RigBuilder.trailer()
            .tires(TireBuilder.passenger())
            .label("P215/75R15", null, null, "35 psi")
            .weighed("2200 lb");

    assertThat(at(rig, "80 mph").speed()).isEqualTo(Limits.SpeedVerdict.FINE);
  }

  // What is missing

  @Test
  void withoutALabelTheRatedPressureIsTheAim() {
    Limits limits = at(RigBuilder.trailer().noLabel());

    assertPsi(limits.aim(), 80);
    assertThat(limits.aimFrom()).isEqualTo(Limits.AimFrom.RATED);
    assertThat(problems(RigBuilder.trailer().noLabel())).contains(ProblemCode.NO_LABEL_PRESSURE);
  }

  /** Not weighed: judged at the GAWR, 6,000·0.525 = 3,150 lb, 72 psi. */
  @Test
  void withoutAWeightTheRatingIsTheLoad() {
    Limits limits = at(RigBuilder.trailer().weighed(null));

    assertPsi(limits.floor(), 72);
    assertThat(limits.load().axle().source()).isEqualTo(Loads.Source.GAWR);
    assertThat(problems(RigBuilder.trailer().weighed(null))).contains(ProblemCode.NOT_WEIGHED);
  }

  @Test
  void withoutWeightAndRatingTheMarginIsUnknown() {
    RigBuilder rig = RigBuilder.trailer().weighed(null).gawr(null);
    TireAtStop at = Forecasts.first(haul(rig, "60 mph")).get(0);

    assertThat(at.limits().floor()).isNaN();
    assertThat(at.margin()).isNaN();
    assertThat(at.leavingChance()).isNaN();
    assertPsi(at.limits().aim(), 80);
    assertThat(at.limits().overloaded()).isFalse();
    assertThat(problems(rig)).contains(ProblemCode.NO_LOAD);
  }

  /**
   * Chance of being under the floor: at the floor itself one half, or a little more by the load.
   */
  @Test
  void theChanceIsOneHalfAtTheFloor() {
    Trip trip =
        Trips.of(RigBuilder.trailer())
            .stop(stop("a").leaves("2027-06-01T06:00Z").steady("60 °F"))
            .stop(stop("b").steady("60 °F"))
            .read("2027-06-01T05:50Z", "T1", "67.2 psi")
            .trip();

    assertThat(Forecasts.first(trip).get(0).leavingChance()).isCloseTo(0.5, within(0.001));
  }

  /** 60 % on the left: 3,000 lb there, 2,000 lb right; both sides get the left one's aim. */
  @Test
  void allTiresOfAnAxleHaveTheAimOfTheMostLoaded() {
    RigBuilder rig =
        RigBuilder.trailer()
            .label("ST235/80R16", TireClass.SPECIAL_TRAILER, "E", "60 psi")
            .gawr(null)
            .weighed("5000 lb")
            .leftShare("60 %");
    List<TireAtStop> tires = Forecasts.of(haul(rig, "60 mph")).stops().get(0).tires();
    Limits left = tires.get(0).limits();
    Limits right = tires.get(1).limits();

    assertPsi(left.floor(), 80 * 3000 / 3500.0);
    assertPsi(right.floor(), 48); // nothing is estimated below 60 % of the rated pressure
    assertPsi(left.aim(), 80 * 3300 / 3500.0);
    assertThat(right.aim()).isEqualTo(left.aim());
    assertThat(right.aimFrom()).isEqualTo(Limits.AimFrom.LOAD);
  }
}

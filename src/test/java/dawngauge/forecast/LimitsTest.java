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
import dawngauge.tire.Capacity;
import dawngauge.tire.TireClass;
import dawngauge.trip.Trip;
import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Floor, aim and ceiling. The axle was weighed alone, its sides were not: the likely load of a tire
 * is an even share, 2,800 lb of 5,600, with one standard deviation of √(1² + 2.5²) = 2.69 %
 * (inferred). The floor is that of the likely load by the cautious curve.
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
   * ceiling are that figure. The estimated floor for 2,800 lb is 80·2,800/3,500 = 64 psi by the
   * straight line; the label vouches for 80 psi at 3,000 lb, a point under that line.
   */
  @Test
  void labelEqualToSidewallMaximum() {
    Limits limits = at(RigBuilder.trailer());

    assertPsi(limits.floor(), 64);
    assertPsi(limits.aim(), 80);
    assertPsi(limits.ceiling(), 80);
    assertThat(limits.aimFrom()).isEqualTo(Limits.AimFrom.LABEL);
    assertThat(limits.capacityBasis()).isEqualTo(Capacity.Basis.SIDEWALL);
    assertThat(limits.overloaded()).isFalse();
    assertThat(limits.speed()).isEqualTo(Limits.SpeedVerdict.FINE);
  }

  /**
   * Such a tire set to 80 psi at a dawn of −10 °F is 94.7 at 60 °F, and back at −10 °F again 80:
   * the afternoon breaches nothing, since only the floor is judged on the way. The rated load is
   * the most at any pressure, so the margin is 3,500/2,800 − 1 = 25 % at all four stops.
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
      assertThat(at.leavingChance().underFloor()).isLessThan(0.001);
      assertThat(at.worstMargin()).isCloseTo(0.25, within(0.001));
    }
  }

  /** The reserve is advice: 3,200 lb need 73.14 psi, 80.46 with it; the label is the aim. */
  @Test
  void theReserveMovesNoAim() {
    Limits limits =
        at(
            RigBuilder.trailer()
                .tires(TireBuilder.special().most("95 psi"))
                .gawr("7000 lb")
                .weighed("6400 lb"));

    assertPsi(limits.floor(), 80 * 3200 / 3500.0);
    assertPsi(limits.aim(), 80);
    assertThat(limits.aimFrom()).isEqualTo(Limits.AimFrom.LABEL);
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

  /**
   * The valve allows 60 psi, at which the tire likely carries 3,500·(60/80)^0.585 = 2,957.9 lb:
   * less than 3,000 lb with a chance of Φ(42.1/80.8) = 70 %, than 2,900 of Φ(−57.9/78.1) = 23 %,
   * though the cautious curve asks for 66.3 psi there too.
   */
  @Test
  void aLoadLikelyAboveWhatTheCeilingCarriesIsOverload() {
    RigBuilder rig = RigBuilder.trailer().rims("110 psi", "60 psi");

    assertThat(at(rig.weighed("6000 lb")).overloaded()).isTrue();
    assertThat(at(rig.weighed("5800 lb")).overloaded()).isFalse();
    assertPsi(at(rig.weighed("5800 lb")).floor(), 80 * 2900 / 3500.0);
  }

  /**
   * A tire of 3,500 lb: with 3,600 lb likely on it more with a chance of Φ(100/96.9) = 85 %. With
   * 3,500 just one half, which is not over one half.
   */
  @Test
  void aLoadAboveTheSidewallIsOverload() {
    Limits limits = at(RigBuilder.trailer().weighed("7200 lb"));

    assertThat(limits.overloaded()).isTrue();
    assertThat(limits.floor()).isNaN();
    assertPsi(limits.aim(), 80);
    assertThat(at(RigBuilder.trailer().weighed("7000 lb")).overloaded()).isFalse();
  }

  // A target of the user's choice

  @Test
  void aTargetIsNeverAboveTheCeiling() {
    assertPsi(at(RigBuilder.trailer().tires(withRows()).target("90 psi")).aim(), 80);
  }

  /** A sidewall of 80 psi on an axle whose label asks for 85 is told, and the aim is cut. */
  @Test
  void aLabelAboveTheSidewallIsToldAndNotFollowed() {
    RigBuilder above =
        RigBuilder.trailer().label("ST235/80R16", TireClass.SPECIAL_TRAILER, "E", "85 psi");
    assertThat(problems(above)).contains(ProblemCode.LABEL_ABOVE_LIMIT);
    assertPsi(at(above).aim(), 80);
    RigBuilder same =
        RigBuilder.trailer().label("ST235/80R16", TireClass.SPECIAL_TRAILER, "E", "80 psi");
    assertThat(problems(same)).doesNotContain(ProblemCode.LABEL_ABOVE_LIMIT);
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

  /**
   * The wheel may be rated for the label's tire only, until both limits are typed. At 65 psi it
   * likely carries 3,500·(65/80)^0.585 = 3,100 lb: 2,800 surely, 3,200 hardly (12 %).
   */
  @ParameterizedTest
  @CsvSource(
      value = {"-, -", "110 psi, -", "-, 100 psi"},
      nullValues = "-")
  void aLabelOfOtherTiresIsTheCeilingWhileTheRimIsUnknown(String wheel, String valve) {
    Limits limits = at(otherLabel().rims(wheel, valve));

    assertPsi(limits.ceiling(), 65);
    assertPsi(limits.aim(), 65);
    assertThat(limits.overloaded()).isFalse();
    assertThat(at(otherLabel().rims(wheel, valve).weighed("6400 lb")).overloaded()).isTrue();
  }

  /** The label does not vouch for other tires: no certified point in the floor. */
  @Test
  void aLabelOfOtherTiresDoesNotLowerTheFloor() {
    assertPsi(at(otherLabel()).floor(), 64);
    // the same label of these tires: straight to (65 psi, 3,000 lb), 65·2,800/3,000 = 60.67
    assertPsi(
        at(RigBuilder.trailer().label("ST235/80R16", TireClass.SPECIAL_TRAILER, "E", "65 psi"))
            .floor(),
        60.667);
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
    // 1,100 lb of 1,363.6; the label's 1,300 lb at 35 psi are under that
    assertPsi(limits.floor(), 35 * 1100 / (1500 / 1.1));
    assertPsi(limits.aim(), 35);
    TireAtStop at = Forecasts.first(haul(rig, "60 mph")).get(0);
    double most = 1500 / 1.1 / 1100 - 1;
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

  /** The label is the sidewall maximum: no room, so 65 mph or less, and no more air. */
  @ParameterizedTest
  @CsvSource({"70 mph", "80 mph"})
  void keepToSixtyFiveWhereTheCeilingIsInTheWay(String topSpeed) {
    Limits limits = at(RigBuilder.trailer(), topSpeed);

    assertThat(limits.speed()).isEqualTo(Limits.SpeedVerdict.KEEP_TO_65);
    assertPsi(limits.floor(), 64);
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

  /**
   * Not weighed: N(80 %, 12 %) of the GAWR cut at it (inferred) has its mean at 80 −
   * 12·φ(5/3)/Φ(5/3) = 80 − 12·0.09948/0.95221 = 78.746 %: 2,362.4 lb of a share of 3,000,
   * 80·2,362.4/3,500 = 54.00 psi.
   */
  @Test
  void withoutAWeightTheLoadIsLikelyUnderTheRating() {
    Limits limits = at(RigBuilder.trailer().weighed(null));

    assertPsi(limits.floor(), 53.9975);
    assertThat(limits.load().axle().basis()).isEqualTo(Loads.Basis.NOT_WEIGHED);
    assertThat(problems(RigBuilder.trailer().weighed(null))).contains(ProblemCode.NOT_WEIGHED);
  }

  @Test
  void withoutWeightAndRatingTheMarginIsUnknown() {
    RigBuilder rig = RigBuilder.trailer().weighed(null).gawr(null);
    TireAtStop at = Forecasts.first(haul(rig, "60 mph")).get(0);

    assertThat(at.limits().floor()).isNaN();
    assertThat(at.margin()).isNaN();
    assertThat(at.leavingChance().underFloor()).isNaN();
    assertPsi(at.limits().aim(), 80);
    assertThat(at.limits().overloaded()).isFalse();
    assertThat(problems(rig)).contains(ProblemCode.NO_LOAD);
  }

  /**
   * At the floor the chance that the load is not shown to be carried is one half: the cautious
   * curve is straight there. By the likely one 2,800 lb need 80·(2,800/3,500)^(1/0.585) = 54.63
   * psi: there the mean over 32 quantiles of Φ((need − 54.63)/1.258) is 0.5007 by Python's
   * NormalDist (1.258 psi is that of gauge "hand": 0.5 psi, and 2 psi/√3).
   */
  @ParameterizedTest
  @CsvSource({"64 psi, 0.0000, 0.5000", "54.63 psi, 0.5007, 1.0000"})
  void theChanceIsOneHalfAtEachFloor(String read, double underFloor, double notShown) {
    Trip trip =
        Trips.of(RigBuilder.trailer())
            .stop(stop("a").leaves("2027-06-01T06:00Z").steady("60 °F"))
            .stop(stop("b").steady("60 °F"))
            .read("2027-06-01T05:50Z", "T1", read)
            .trip();

    LoadChance chance = Forecasts.first(trip).get(0).leavingChance();
    assertThat(chance.underFloor()).isCloseTo(underFloor, within(0.001));
    assertThat(chance.notShown()).isCloseTo(notShown, within(0.001));
    assertThat(chance.firm()).isFalse();
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
    assertPsi(right.floor(), 80 * 2000 / 3500.0);
    assertPsi(left.aim(), 80 * 3000 / 3500.0); // no GAWR, so no share for which 60 psi would do
    assertThat(right.aim()).isEqualTo(left.aim());
    assertThat(right.aimFrom()).isEqualTo(Limits.AimFrom.LOAD);
  }
}

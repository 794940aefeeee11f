package dawngauge.advice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dawngauge.trip.AxleRef;
import dawngauge.trip.WheelPosition;
import dawngauge.trip.WheelSlot;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/**
 * One tire on a way of three stops that loses nothing. Its air is told as the figure that a gauge
 * with whole steps shows: no air around, one kelvin.
 */
class TireConstraintsTest {

  private static final WheelPosition ANY =
      new WheelPosition(new AxleRef("trailer", 1), WheelSlot.LEFT);
  private static final double NOT_ASKED = Double.NEGATIVE_INFINITY;
  private static final double ANY_MOST = Double.POSITIVE_INFINITY;

  private static TireConstraints.Stop adds(int from, int to) {
    return new TireConstraints.Stop(true, false, from, to, from, to, 0, 1, from, NOT_ASKED);
  }

  private static TireConstraints.Stop releases(int to, int most) {
    return new TireConstraints.Stop(false, true, to, most, to, most, 0, 1, to, NOT_ASKED);
  }

  private static TireConstraints.Stop both(int from, int addTo, int releaseTo, int most) {
    return new TireConstraints.Stop(
        true, true, from, addTo, releaseTo, most, 0, 1, from, NOT_ASKED);
  }

  /**
   * Holding 90 so far, with one stop in the middle at which something may be done.
   *
   * @param floor asked of it at the last stop
   * @param aim asked there at a day's start
   * @param most allowed there
   */
  private static TireConstraints way(
      TireConstraints.Stop middle, double floor, double aim, double most) {
    return way(
        1,
        new TireConstraints.Stop[] {
          TireConstraints.Stop.NOTHING, middle, TireConstraints.Stop.NOTHING
        },
        floor,
        aim,
        most);
  }

  private static TireConstraints way(
      double step, TireConstraints.Stop[] stops, double floor, double aim, double most) {
    double[][] example = new double[4][3];
    for (double[] fills : example) {
      Arrays.fill(fills, 90);
    }
    RequiredFill asked = new RequiredFill(3);
    asked.aim(2, aim);
    for (int origin = 0; origin <= 3; origin++) {
      asked.floor(origin, 2, floor);
    }
    double[] growth = {1, 1, 1};
    double[] mosts = {ANY_MOST, ANY_MOST, most};
    return new TireConstraints(ANY, 0, step, stops, example, growth, asked, mosts);
  }

  @Test
  void aTireThatHasTooLittleLastsWithTheStopThatAdds() {
    TireConstraints way = way(adds(95, 100), 96, NOT_ASKED, ANY_MOST);
    assertThat(way.failsAt(List.of())).isEqualTo(2);
    assertThat(way.failsAt(List.of(1))).isEqualTo(3);
    assertThat(way.helps(1, 2)).isTrue();
    assertThat(way.helps(0, 2)).as("nothing can be done there").isFalse();
    assertThat(way.lasts(0, 0, 0, 2)).isTrue();
    assertThat(way.lasts(0, 0, 0, 3)).isFalse();
    assertThat(way.shown(0, 0, 2)).isCloseTo(90, within(1e-9));
    assertThat(way.shown(2, 97, 2)).isCloseTo(97, within(1e-9));
    assertThat(way.first()).isZero();
  }

  @Test
  void aHoseThatEndsBelowWhatIsAskedHelpsNothing() {
    TireConstraints way = way(adds(92, 95), 96, NOT_ASKED, ANY_MOST);
    assertThat(way.helps(1, 2)).isFalse();
    assertThat(way.failsAt(List.of(1))).isEqualTo(2);
    assertThat(way.mostAt(List.of(1), 2)).isCloseTo(95, within(1e-9));
    assertThat(way.mostAt(List.of(1), 1)).as("just set").isCloseTo(95, within(1e-9));
    assertThat(way.mostAt(List.of(1), 0)).as("before it").isCloseTo(90, within(1e-9));
    assertThat(way.mostAt(List.of(), 2)).isCloseTo(90, within(1e-9));
  }

  @Test
  void tooLittleForItsLoadForItsAimAndTooMuchAreToldApart() {
    TireConstraints load = way(adds(92, 95), 96, NOT_ASKED, ANY_MOST);
    assertThat(load.keepsFloorAt(List.of(1), 2)).isFalse();
    assertThat(load.enoughAt(List.of(1), 2)).isFalse();
    TireConstraints aim = way(adds(92, 95), 80, 98, ANY_MOST);
    assertThat(aim.keepsFloorAt(List.of(), 2)).isTrue();
    assertThat(aim.enoughAt(List.of(), 2)).isFalse();
    TireConstraints much = way(releases(80, 85), 80, NOT_ASKED, 85);
    assertThat(much.failsAt(List.of())).isEqualTo(2);
    assertThat(much.enoughAt(List.of(), 2)).isTrue();
    assertThat(much.failsAt(List.of(1))).isEqualTo(3);
    assertThat(much.helps(1, 2)).isTrue();
  }

  @Test
  void exactlyWhatIsAskedIsEnough() {
    TireConstraints way = way(adds(95, 100), 90, NOT_ASKED, 90);
    assertThat(way.keepsFloorAt(List.of(), 2)).isTrue();
    assertThat(way.enoughAt(List.of(), 2)).isTrue();
    assertThat(way.failsAt(List.of())).isEqualTo(3);
  }

  @Test
  void aMillionthOfAStepIsRounding() {
    assertThat(way(adds(95, 100), 90 + 5e-7, NOT_ASKED, ANY_MOST).lasts(0, 0, 0, 3)).isTrue();
    assertThat(way(adds(95, 100), 90 + 2e-6, NOT_ASKED, ANY_MOST).lasts(0, 0, 0, 3)).isFalse();
    assertThat(way(adds(95, 100), 80, NOT_ASKED, 90 - 5e-7).lasts(0, 0, 0, 3)).isTrue();
    assertThat(way(adds(95, 100), 80, NOT_ASKED, 90 - 2e-6).lasts(0, 0, 0, 3)).isFalse();
    // The figures that last are whole steps: 96 of 96 and half a millionth, 97 of two more.
    assertThat(way(adds(95, 96), 96 + 5e-7, NOT_ASKED, ANY_MOST).helps(1, 2)).isTrue();
    assertThat(way(adds(95, 96), 96 + 2e-6, NOT_ASKED, ANY_MOST).helps(1, 2)).isFalse();
    assertThat(way(releases(85, 89), 80, NOT_ASKED, 85 - 5e-7).helps(1, 2)).isTrue();
    assertThat(way(releases(85, 89), 80, NOT_ASKED, 85 - 2e-6).helps(1, 2)).isFalse();
  }

  @Test
  void whereAnyAmountIsAllowedOrLessIsAskedItLasts() {
    TireConstraints much = way(adds(95, 100), 80, NOT_ASKED, 85);
    assertThat(much.failsAt(List.of())).isEqualTo(2);
    assertThat(much.withoutMost(2).failsAt(List.of())).isEqualTo(3);
    TireConstraints little = way(adds(95, 100), 96, NOT_ASKED, ANY_MOST);
    assertThat(little.asking(new RequiredFill(3)).failsAt(List.of())).isEqualTo(3);
  }

  @Test
  void aStopActsWhereSomeFigureCanBeSet() {
    assertThat(adds(95, 100).acts()).isTrue();
    assertThat(adds(95, 95).acts()).isTrue();
    assertThat(adds(96, 95).acts()).isFalse();
    assertThat(releases(80, 80).acts()).isTrue();
    assertThat(releases(81, 80).acts()).isFalse();
    assertThat(TireConstraints.Stop.NOTHING.acts()).isFalse();
  }

  @Test
  void aStopResetsWhereEveryFigureFromTheAimUpCanBeSet() {
    assertThat(both(95, 100, 95, 100).resets()).isTrue();
    assertThat(both(95, 99, 95, 100).resets()).as("its hose ends early").isFalse();
    assertThat(both(95, 100, 96, 100).resets()).as("let out to 96 at the least").isFalse();
    assertThat(adds(95, 100).resets()).isFalse();
    assertThat(releases(95, 100).resets()).isFalse();
  }

  @Test
  void theLowestFigureIsThatOfWhatCanBeDone() {
    assertThat(both(93, 100, 95, 100).lowest()).isEqualTo(93);
    assertThat(both(95, 100, 93, 100).lowest()).isEqualTo(93);
    TireConstraints.Stop adding =
        new TireConstraints.Stop(true, false, 95, 100, 90, 100, 0, 1, 95, NOT_ASKED);
    assertThat(adding.lowest()).isEqualTo(95);
    TireConstraints.Stop letting =
        new TireConstraints.Stop(false, true, 95, 100, 90, 100, 0, 1, 95, NOT_ASKED);
    assertThat(letting.lowest()).isEqualTo(90);
  }

  @Test
  void airIsAddedUpToTheHoseAndLetOutDownToTheAim() {
    TireConstraints.Stop stop = both(93, 98, 95, 100);
    assertThat(stop.allows(90, 92)).isFalse();
    assertThat(stop.allows(90, 93)).isTrue();
    assertThat(stop.allows(90, 98)).isTrue();
    assertThat(stop.allows(90, 99)).isFalse();
    assertThat(stop.allows(102, 94)).isFalse();
    assertThat(stop.allows(102, 95)).isTrue();
    assertThat(stop.allows(102, 100)).isTrue();
    assertThat(stop.allows(102, 101)).isFalse();
    assertThat(stop.allows(96, 96)).as("as it is").isTrue();
    assertThat(adds(93, 98).allows(102, 97)).isFalse();
    assertThat(releases(93, 98).allows(90, 97)).isFalse();
  }

  @Test
  void byHandItMayBeUnderTheAim() {
    TireConstraints.Stop stop = both(93, 98, 95, 100);
    assertThat(stop.allowsByHand(80, 85)).isTrue();
    assertThat(stop.allowsByHand(80, 98)).isTrue();
    assertThat(stop.allowsByHand(80, 99)).isFalse();
    assertThat(stop.allowsByHand(102, 85)).isTrue();
    assertThat(stop.allowsByHand(102, 100)).isTrue();
    assertThat(stop.allowsByHand(102, 101)).isFalse();
    assertThat(stop.allowsByHand(85, 85)).isTrue();
    assertThat(adds(93, 98).allowsByHand(102, 97)).isFalse();
    assertThat(releases(93, 98).allowsByHand(90, 97)).isFalse();
  }

  /** In steps of 2: 47 to 50 are 94 to 100. */
  private static TireConstraints inSteps(double wanted, double floor) {
    TireConstraints.Stop stop =
        new TireConstraints.Stop(true, false, 47, 50, 47, 50, 0, 1, wanted, NOT_ASKED);
    TireConstraints.Stop[] stops = {
      TireConstraints.Stop.NOTHING, stop, TireConstraints.Stop.NOTHING
    };
    return way(2, stops, floor, NOT_ASKED, ANY_MOST);
  }

  private static Map<Integer, Integer> figures(TireConstraints way, Map<Integer, Integer> fixed) {
    Map<Integer, Integer> figures = FigureChoice.of(way, List.of(1), fixed);
    return figures == null ? Map.of(-1, -1) : figures;
  }

  @Test
  void theFigureNearestWhatIsWantedIsChosenTiesUpward() {
    assertThat(figures(inSteps(97.4, 93), Map.of())).isEqualTo(Map.of(1, 49));
    assertThat(figures(inSteps(96.6, 93), Map.of())).isEqualTo(Map.of(1, 48));
    assertThat(figures(inSteps(97, 93), Map.of())).as("between 48 and 49").isEqualTo(Map.of(1, 49));
    assertThat(figures(inSteps(94, 96), Map.of())).as("96 are asked").isEqualTo(Map.of(1, 48));
    assertThat(figures(inSteps(Double.NaN, 93), Map.of())).isEqualTo(Map.of(1, 47));
  }

  @Test
  void aFigureByHandIsTakenWhereItLasts() {
    assertThat(figures(inSteps(97.4, 93), Map.of(1, 50))).isEqualTo(Map.of(1, 50));
    assertThat(figures(inSteps(97.4, 93), Map.of(1, 46)))
        .as("it needs 93")
        .isEqualTo(Map.of(-1, -1));
  }

  @Test
  void whatNeedsNoSettingGetsNone() {
    assertThat(figures(inSteps(97.4, 90), Map.of())).isEmpty();
    assertThat(figures(inSteps(97.4, 101), Map.of())).as("no figure lasts").containsKey(-1);
  }

  @Test
  void aPlanSpeaksOfATireFromItsFirstStopOn() {
    TirePlan plan = new TirePlan(2, Map.of(3, 500_000.0, 5, 520_000.0));
    assertThat(plan.speaksOf(1)).isFalse();
    assertThat(plan.speaksOf(2)).isTrue();
    assertThat(plan.at(3)).contains(500_000.0);
    assertThat(plan.at(4)).isEmpty();
    assertThat(plan.nextAfter(2)).isEqualTo(3);
    assertThat(plan.nextAfter(3)).isEqualTo(5);
    assertThat(plan.nextAfter(5)).isEqualTo(-1);
  }
}

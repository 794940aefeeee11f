package dawngauge.review;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dawngauge.testdata.RigBuilder;
import dawngauge.testdata.Trips;
import dawngauge.trip.WheelPosition;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** How far the readings of one side lie apart. */
class SideScatterTest {

  private static final double EACH = 0.005;
  private static final double ABSOLUTE = 100_000;
  private static final double[] DAYS = {0, 1, 2, 3};

  private static ColdRow row(double... deviations) {
    double[] lost = new double[deviations.length];
    for (int i = 0; i < lost.length; i++) {
      lost[i] = deviations[i] * EACH;
    }
    return new ColdRow(DAYS, lost, EACH, ABSOLUTE);
  }

  /** Two axles: the left tires go up and down by some deviations, the right ones lose evenly. */
  private static Map<WheelPosition, ColdRow> rig(double up) {
    List<WheelPosition> positions =
        Trips.of(RigBuilder.trailer().axles(2)).trip().rig().positions();
    Map<WheelPosition, ColdRow> all = new LinkedHashMap<>();
    for (WheelPosition position : positions) {
      all.put(position, position.slot().isLeft() ? row(0, up, -up, 0) : row(0, 5, 10, 15));
    }
    return all;
  }

  /**
   * By hand: 0, 2, −2, 0 deviations on four days. The straight line falls by 0.4 a day and leaves 8
   * − 5·0.4² = 7.2 squares; one step behind the second reading, from 1 to −1, leaves 1 + 1 + 1 + 1
   * = 4, the others 8. So each tire leaves 4 squares and one reading: √((2 + 8)/(2 + 2)) = 1.581.
   * Eight squares or more of two readings come by chance in e^(−8/2) = 1.8 %: nothing is told.
   */
  @Test
  void aSideThatScattersIsLessSure() {
    SideScatter left = SideScatter.of(true, rig(2));
    assertThat(left.squares()).isCloseTo(8, within(1e-9));
    assertThat(left.free()).isEqualTo(2);
    assertThat(left.wider()).isCloseTo(1.5811, within(1e-4));
    assertThat(left.pascals()).isCloseTo(500, within(1e-9));
    assertThat(left.found()).isCloseTo(1000, within(1e-9));
    assertThat(left.beyondGauge()).isFalse();
  }

  /** 4 deviations leave 32 squares: e^(−16) by chance. */
  @Test
  void whatTheGaugeHardlyExplainsIsTold() {
    assertThat(SideScatter.of(true, rig(4)).beyondGauge()).isTrue();
  }

  /** A steady leak of five deviations a day is no scatter. */
  @Test
  void aLeakIsNoScatter() {
    SideScatter right = SideScatter.of(false, rig(4));
    assertThat(right.squares()).isCloseTo(0, within(1e-9));
    assertThat(right.wider()).isEqualTo(1);
    assertThat(right.beyondGauge()).isFalse();
  }

  @Test
  void threeReadingsTellNothingOfIt() {
    Map<WheelPosition, ColdRow> few = new LinkedHashMap<>();
    rig(4)
        .forEach(
            (position, row) ->
                few.put(
                    position,
                    new ColdRow(new double[] {0, 1, 2}, new double[] {0, 1, -1}, EACH, ABSOLUTE)));
    SideScatter left = SideScatter.of(true, few);
    assertThat(left.free()).isZero();
    assertThat(left.wider()).isEqualTo(1);
    assertThat(left.beyondGauge()).isFalse();
  }
}

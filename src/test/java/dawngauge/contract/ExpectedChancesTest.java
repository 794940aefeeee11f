package dawngauge.contract;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dawngauge.quantity.GaugePressure;
import dawngauge.quantity.Unit;
import dawngauge.rules.Carrying;
import dawngauge.rules.FittedTire;
import dawngauge.rules.LimitFinder;
import dawngauge.rules.Loads;
import dawngauge.trip.Rig;
import dawngauge.trip.Trip;
import dawngauge.trip.WheelPosition;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Both chances of the table of expected marks, straight from the rules of load and capacity. Worked
 * in Python with its NormalDist: the mean over 32 mid-quantiles L of the load of Φ((p(L) − p)/1.5
 * psi), loads 2,444 and 1,950 lb with σ 1 % (wheel) or 2.69 % (axle), or N(2,080, 312) cut at
 * 2,600; p(L) by the rows; by the hull of (60 psi, 2,600 lb) and (80, 3,195), likely the least of
 * it and of both powers 1/0.7; by the straight line to (80, 3,195).
 */
class ExpectedChancesTest {

  static List<ExpectedMarks.Row> rows() {
    return ExpectedMarksTest.rows();
  }

  @ParameterizedTest
  @MethodSource("rows")
  void chancesByTheRules(ExpectedMarks.Row row) {
    Carrying carrying = carrying(row);
    double pascals = GaugePressure.of(Grid.LABEL * row.pressure().part, Unit.PSI).pascals();
    double sigma = GaugePressure.of(ExpectedMarks.PRESSURE_ERROR, Unit.PSI).pascals();

    assertThat(100 * carrying.notShown(pascals, sigma)).isCloseTo(row.notShown(), within(1.0));
    assertThat(100 * carrying.underFloor(pascals, sigma)).isCloseTo(row.under(), within(1.0));
  }

  private static Carrying carrying(ExpectedMarks.Row row) {
    Trip trip =
        Grid.haul(
                new Cell(
                    row.capacity(),
                    row.load(),
                    row.pressure(),
                    Cell.Reading.COLD,
                    Cell.AirOnTheWay.KNOWN,
                    Cell.Hose.NOWHERE,
                    Cell.Leak.NONE,
                    Cell.Wheels.SINGLE,
                    Cell.Target.NONE,
                    Cell.Step.FINE,
                    Cell.Spare.STAYS,
                    Cell.Units.PSI))
            .trip();
    Rig rig = trip.rig();
    WheelPosition first = rig.positions().get(0);
    FittedTire fitted = new FittedTire(rig, first, rig.fittedAt(first).orElseThrow());
    Loads.TireLoad load = new Loads(trip, null, 0).tire(0, first);
    return Objects.requireNonNull(new LimitFinder(0.1).find(fitted, load, 0).carrying());
  }
}

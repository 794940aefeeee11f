package dawngauge.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dawngauge.quantity.Mass;
import dawngauge.quantity.Unit;
import dawngauge.testdata.RigBuilder;
import dawngauge.trip.Hauls;
import dawngauge.trip.LogEvent;
import dawngauge.trip.Remarks;
import dawngauge.trip.Rig;
import dawngauge.trip.Tire;
import dawngauge.trip.Trip;
import dawngauge.trip.WheelPosition;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Which tire carries for a flat one: the whole of both (inferred, the cautious side). */
class FlatTiresTest {

  /** Pounds on each tire of a rig whose first tire is flat, in walking order. */
  private static List<Double> withFirstFlat(RigBuilder rig, LogEvent... log) {
    return pounds(Hauls.trip(flat(rig.rig(), "T1"), List.of(Hauls.stop("a")), List.of(), log));
  }

  private static List<Double> pounds(Trip trip) {
    Loads loads = new Loads(trip, null, 0);
    List<Double> all = new ArrayList<>();
    for (WheelPosition position : trip.rig().positions()) {
      all.add(new Mass(loads.tire(0, position).kilograms()).in(Unit.POUND));
    }
    return all;
  }

  private static Rig flat(Rig rig, String id) {
    List<Tire> tires = new ArrayList<>();
    for (Tire tire : rig.tires()) {
      tires.add(
          tire.id().equals(id)
              ? new Tire(
                  id, tire.type(), null, null, 1, null, Set.of(Tire.Damage.FLAT), Remarks.NONE)
              : tire);
    }
    return new Rig(
        rig.name(),
        rig.vehicles(),
        rig.tireTypes(),
        tires,
        rig.spares(),
        rig.gauges(),
        null,
        null,
        rig.tickets(),
        Remarks.NONE);
  }

  private static void assertPounds(List<Double> actual, double... expected) {
    assertThat(actual).hasSize(expected.length);
    for (int i = 0; i < expected.length; i++) {
      assertThat(actual.get(i)).as("tire " + (i + 1)).isCloseTo(expected[i], within(1e-6));
    }
  }

  /**
   * 5,600 lb on each axle, 2,800 on a tire: behind the flat one 5,600, the right side as before.
   */
  @Test
  void onATandemTheNeighborOnThatSide() {
    assertPounds(withFirstFlat(RigBuilder.trailer().axles(2)), 2800, 2800, 5600, 2800);
  }

  /** The middle one of three would be next to both, the third is not next to the first. */
  @Test
  void onlyTheAxleNextToIt() {
    assertPounds(withFirstFlat(RigBuilder.trailer().axles(3)), 2800, 2800, 5600, 2800, 2800, 2800);
  }

  /** 5,600 lb on four tires: the mate of the flat one carries 2,800, the other pair 1,400 each. */
  @Test
  void besideADualMate() {
    assertPounds(withFirstFlat(RigBuilder.trailer().dual()), 1400, 2800, 1400, 1400);
  }

  @Test
  void nobodyOnAnAxleOfItsOwn() {
    assertPounds(withFirstFlat(RigBuilder.trailer()), 2800, 2800);
  }

  /** Spread and heaviest are those of both. */
  @Test
  void spreadOfBoth() {
    Trip trip =
        Hauls.trip(
            flat(RigBuilder.trailer().axles(2).rig(), "T1"), List.of(Hauls.stop("a")), List.of());
    Loads.TireLoad load = new Loads(trip, null, 0).tire(0, trip.rig().positions().get(2));
    assertThat(new Mass(load.sigma()).in(Unit.POUND)).isCloseTo(5600 * 0.02692582, within(0.001));
    assertThat(new Mass(load.heaviest()).in(Unit.POUND)).isCloseTo(2 * 2940, within(1e-6));
  }

  /** An empty axle: nothing and nothing is nothing, not unknown. */
  @Test
  void nothingIsTakenOverFromAnEmptyAxle() {
    assertPounds(withFirstFlat(RigBuilder.trailer().axles(2).weighed("0 lb")), 0, 0, 0, 0);
  }

  /** Once the spare is on, the neighbor carries its own again. */
  @Test
  void notOnceTheWheelIsChanged() {
    RigBuilder rig = RigBuilder.trailer().axles(2).spare();
    LogEvent change =
        new LogEvent.TireChange(
            Hauls.at("2027-06-01T06:00Z"), rig.rig().positions().get(0), "T1", "S", Remarks.NONE);
    assertPounds(withFirstFlat(rig, change), 2800, 2800, 2800, 2800);
  }

  /** Two flat side by side: neither can carry for the other. */
  @Test
  void aFlatTireCarriesForNone() {
    Rig rig = flat(flat(RigBuilder.trailer().dual().rig(), "T1"), "T2");
    Trip trip = Hauls.trip(rig, List.of(Hauls.stop("a")), List.of());
    assertPounds(pounds(trip), 1400, 1400, 1400, 1400);
  }
}

package dawngauge.ledger;

import static org.assertj.core.api.Assertions.assertThat;

import dawngauge.planner.Planner;
import dawngauge.quantity.Entered;
import dawngauge.quantity.QuantityKind;
import dawngauge.settings.SettingsFile;
import dawngauge.trip.AirEdits;
import dawngauge.trip.GroupEdits;
import dawngauge.trip.Rig;
import dawngauge.trip.RouteEdits;
import dawngauge.trip.Trip;
import dawngauge.trip.Vehicle;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** An edit is named by what it changed. */
class EditWordsTest {

  private static final Trip DEMO =
      new Planner(SettingsFile.defaults(), List.of())
          .store()
          .open(Path.of("demo-data", "spring-fleece-haul-logged.dawngauge"))
          .get();

  private static String of(Trip after) {
    return EditWords.of(DEMO, after);
  }

  @Test
  void stopsThatComeGoAndMove() {
    assertThat(of(GroupEdits.remove(DEMO, List.of(2)))).isEqualTo("remove Raton NM");
    assertThat(of(GroupEdits.remove(DEMO, List.of(2, 3)))).isEqualTo("remove 2 stops");
    assertThat(of(GroupEdits.duplicate(DEMO, List.of(2)))).isEqualTo("add Raton NM");
    assertThat(of(GroupEdits.move(DEMO, List.of(2), 5))).isEqualTo("order of the stops");
  }

  @Test
  void figuresOfStopsLegsAndAir() {
    assertThat(of(GroupEdits.withStops(DEMO, List.of(2), s -> s.withStay(Duration.ofHours(2)))))
        .isEqualTo("Stay at Raton NM");
    assertThat(of(GroupEdits.withStops(DEMO, List.of(2, 4), s -> s.withStay(Duration.ofHours(9)))))
        .isEqualTo("Stay at 2 stops");
    assertThat(
            of(
                RouteEdits.withLeg(
                    DEMO,
                    1,
                    DEMO.route()
                        .legs()
                        .get(1)
                        .withDistance(Entered.of(QuantityKind.DISTANCE, "99 mi")))))
        .isEqualTo("Distance behind Walsenburg CO");
    assertThat(
            of(
                AirEdits.withSteady(
                    DEMO,
                    DEMO.route().stops().get(2).id(),
                    Entered.of(QuantityKind.TEMPERATURE, "71 °F"))))
        .isEqualTo("temperature at Raton NM");
  }

  @Test
  void theRigByItsField() {
    Rig rig = DEMO.rig();
    List<Vehicle> vehicles = new ArrayList<>(rig.vehicles());
    vehicles.set(0, vehicles.get(0).withGvwr(Entered.of(QuantityKind.MASS, "12345 lb")));
    assertThat(of(DEMO.withRig(rig.withVehicles(vehicles)))).isEqualTo("Rig: GVWR");
    assertThat(of(DEMO.withRig(rig.withSpares(List.of())))).isEqualTo("Rig: Spares");
    assertThat(of(DEMO.withLog(DEMO.log().subList(1, DEMO.log().size()))))
        .isEqualTo("remove what was noted");
  }
}

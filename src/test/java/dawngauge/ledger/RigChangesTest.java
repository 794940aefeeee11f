package dawngauge.ledger;

import static org.assertj.core.api.Assertions.assertThat;

import dawngauge.planner.PlannedTrip;
import dawngauge.planner.Planner;
import dawngauge.quantity.UnitSystem;
import dawngauge.settings.SettingsFile;
import dawngauge.trip.Rig;
import dawngauge.trip.Tire;
import dawngauge.trip.Trip;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The rig beside the same rig on an earlier trip. */
class RigChangesTest {

  private static final Planner PLANNER = new Planner(SettingsFile.defaults(), List.of());

  private static Trip demo() {
    return PLANNER.open(Path.of("demo-data", "spring-fleece-haul.dawngauge")).get();
  }

  private static RigChanges changes(Trip was, Trip is, UnitSystem units) {
    PlannedTrip before = PLANNER.plan(was);
    PlannedTrip now = PLANNER.plan(is);
    return RigChanges.of(was, before.advice(), is, now.advice(), units);
  }

  @Test
  void theSameRigDiffersInNothingButTellsTheAirInItsTires() {
    RigChanges same = changes(demo(), demo(), UnitSystem.US);
    assertThat(same.summary())
        .isEqualTo(
            "Nothing of the rig differs from “Spring fleece haul” of Tue 6 Apr to Fri 9 Apr 2027.");
    assertThat(same.lines()).isNotEmpty().allMatch(line -> line.what().startsWith("air in it"));
  }

  @Test
  void anotherTreadAMissingTireAndAnotherGaugeAreTold() {
    Trip was = demo();
    Rig rig = was.rig();
    List<Tire> tires = new ArrayList<>(rig.tires());
    Tire first = tires.get(0);
    tires.set(
        0,
        new Tire(
            first.id(),
            first.type(),
            first.dateCode(),
            null,
            1.2,
            first.lossPerDay(),
            first.damage(),
            first.remarks()));
    Rig worn =
        new Rig(
            rig.name(),
            rig.vehicles(),
            rig.tireTypes(),
            tires,
            rig.spares(),
            rig.gauges().subList(0, rig.gauges().size() - 1),
            rig.compressorTop(),
            rig.hitch(),
            rig.tickets(),
            rig.remarks());
    RigChanges changes = changes(was, was.withRig(worn), UnitSystem.SI);
    assertThat(changes.lines())
        .anySatisfy(
            line -> {
              assertThat(line.part()).isEqualTo("tire " + first.id());
              assertThat(line.what()).isEqualTo("tread");
              assertThat(line.then()).endsWith("mm");
              assertThat(line.now()).isEqualTo("–");
            })
        .contains(new RigChanges.Line("tire " + first.id(), "heat factor", "1.00", "1.20"))
        .anyMatch(line -> line.part().startsWith("gauge ") && line.now().equals("–"));
    assertThat(changes.summary()).startsWith("3 figures differ from");
  }
}

package dawngauge.ledger;

import static org.assertj.core.api.Assertions.assertThat;

import dawngauge.planner.Plan;
import dawngauge.planner.Planner;
import dawngauge.quantity.Entered;
import dawngauge.quantity.QuantityKind;
import dawngauge.quantity.UnitSystem;
import dawngauge.settings.SettingsFile;
import dawngauge.trip.Air;
import dawngauge.trip.Axle;
import dawngauge.trip.Gauge;
import dawngauge.trip.Leg;
import dawngauge.trip.ProfilePoint;
import dawngauge.trip.Remarks;
import dawngauge.trip.Rig;
import dawngauge.trip.RouteEdits;
import dawngauge.trip.Stop;
import dawngauge.trip.Tire;
import dawngauge.trip.Trip;
import dawngauge.trip.TypedTime;
import dawngauge.trip.Vehicle;
import dawngauge.trip.Worksheet;
import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;

/** The rig beside the same rig on an earlier trip. */
class RigChangesTest {

  private static final Planner PLANNER = new Planner(SettingsFile.defaults(), List.of());

  private static Trip demo() {
    return PLANNER.store().open(Path.of("demo-data", "spring-fleece-haul.dawngauge")).get();
  }

  private static RigChanges changes(Trip was, Trip is, UnitSystem units) {
    Plan before = PLANNER.plan(was);
    Plan now = PLANNER.plan(is);
    return RigChanges.of(was, before.advice(), is, now.advice(), units);
  }

  @Test
  void theSameRigDiffersInNothingButTellsTheAirInItsTires() {
    RigChanges same = changes(demo(), demo(), UnitSystem.US);
    assertThat(same.summary())
        .isEqualTo(
            "Nothing of rig and way differs from “Spring fleece haul” of Tue 6 Apr to Fri 9 Apr"
                + " 2027.");
    assertThat(same.lines()).isNotEmpty().allMatch(line -> line.what().startsWith("air in it"));
  }

  @Test
  void anotherTreadAMissingTireAndAnotherGaugeAreTold() {
    Trip was = demo();
    Rig rig = was.rig();
    List<Tire> tires = new ArrayList<>(rig.tires());
    Tire first = tires.get(0);
    tires.set(0, first.withTread(null).withHeatFactor(1.2));
    Rig worn = rig.withTires(tires).withGauges(rig.gauges().subList(0, rig.gauges().size() - 1));
    RigChanges changes = changes(was, was.withRig(worn), UnitSystem.SI);
    assertThat(changes.lines())
        .anySatisfy(
            line -> {
              assertThat(line.part()).isEqualTo("tire " + first.id());
              assertThat(line.what()).isEqualTo("Tread");
              assertThat(line.then()).endsWith("mm");
              assertThat(line.now()).isEqualTo("–");
            })
        .contains(new RigChanges.Line("tire " + first.id(), "Heat factor", "–", "1.2"))
        .anyMatch(line -> line.part().startsWith("gauge ") && line.now().equals("–"));
    assertThat(changes.summary()).startsWith("3 figures differ from");
  }

  @Test
  void whenAGaugeWasCheckedLastIsTold() {
    Trip was = demo();
    List<Gauge> gauges = new ArrayList<>(was.rig().gauges());
    Gauge gauge = gauges.get(0);
    gauges.set(0, gauge.withLastCheck(LocalDate.of(2027, 3, 1)));
    assertThat(changes(was, was.withRig(was.rig().withGauges(gauges)), UnitSystem.US).lines())
        .contains(new RigChanges.Line("gauge " + gauge.name(), "Last check", "–", "2027-03-01"));
  }

  @Test
  void theSameWayIsComparedStopByStopAndLegByLeg() {
    Trip was = demo();
    Stop raton = was.route().stops().get(2);
    Leg leg = was.route().legs().get(2);
    Stop other =
        raton
            .withElevation(Entered.of(QuantityKind.ELEVATION, "6700 ft"))
            .withElevationEstimated(true)
            .withAir(Air.YES)
            .withStay(Duration.ofMinutes(40))
            .withArrive(TypedTime.of(LocalDateTime.parse("2027-04-06T12:00"), ZoneOffset.UTC));
    Leg longer =
        leg.withDistance(Entered.of(QuantityKind.DISTANCE, "60 mi"))
            .withProfile(
                List.of(
                    new ProfilePoint(
                        "Pass",
                        Entered.of(QuantityKind.DISTANCE, "10 mi"),
                        Entered.of(QuantityKind.ELEVATION, "8000 ft"),
                        null,
                        Remarks.NONE)));
    Trip is = RouteEdits.withLeg(RouteEdits.withStop(was, 2, other), 2, longer);
    String place = raton.place();
    String way = "leg " + place + " to " + was.route().stops().get(3).place();
    assertThat(changes(was, is, UnitSystem.US).lines())
        .contains(
            new RigChanges.Line("stop " + place, "Elevation", "6680 ft", "6700 ft, estimate"),
            new RigChanges.Line("stop " + place, "Air hose", "none", "yes"),
            new RigChanges.Line(way, "Points", "–", "Pass 10 mi 8000 ft"))
        .anyMatch(line -> line.part().equals(way) && line.what().equals("Distance"))
        .noneMatch(line -> line.what().equals("Arrival time"));
  }

  /** A stop that only one of the trips has is no figure; one that comes twice is held by order. */
  @Test
  void theWayOutAndBackIsHeldInOrder() {
    Trip was = demo();
    Trip back = RouteEdits.insert(was, was.route().stops().size(), was.route().stops().get(1));
    Trip other =
        RouteEdits.withStop(
            back,
            back.route().stops().size() - 1,
            back.route().stops().get(1).withId("again").withStay(Duration.ofHours(3)));
    assertThat(changes(was, other, UnitSystem.US).lines())
        .noneMatch(line -> line.part().startsWith("stop " + was.route().stops().get(1).place()));
    assertThat(changes(back, other, UnitSystem.US).lines())
        .anyMatch(
            line ->
                line.part().equals("stop " + was.route().stops().get(1).place() + " (2)")
                    && line.now().equals("3 h"));
  }

  @Test
  void theWorksheetIsCompared() {
    Trip was =
        PLANNER
            .store()
            .open(
                Path.of(
                    "src", "test", "resources", "dawngauge", "weights", "three-loads.dawngauge"))
            .get();
    Worksheet sheet = Objects.requireNonNull(was.rig().worksheet());
    Trip light =
        was.withRig(
            was.rig()
                .withWorksheet(
                    sheet
                        .withLoads(sheet.loads().subList(2, 3))
                        .withWheelbase(Entered.of(QuantityKind.DISTANCE, "13 ft"))));
    assertThat(changes(was, light, UnitSystem.US).lines())
        .contains(
            new RigChanges.Line("worksheet of the rig", "Wheelbase", "12.5 ft", "13.0 ft"),
            new RigChanges.Line(
                "worksheet of the rig",
                "What is loaded where",
                "ewes 20 180 lb typical trailer 16.0 ft; hay 500 lb guessed trailer 4.0 ft; water"
                    + " 300 lb weighed pickup 3.0 ft",
                "water 300 lb weighed pickup 3.0 ft"));
    Trip none = was.withRig(was.rig().withWorksheet(null));
    assertThat(changes(none, was, UnitSystem.US).lines())
        .contains(new RigChanges.Line("worksheet of the rig", "worksheet", "–", "there"));
  }

  /** What no older comparison told: hitch, compressor, load range of the label, rows. */
  @Test
  void everyFigureOfTheCatalogueIsCompared() {
    Trip was = demo();
    Rig rig = was.rig();
    Vehicle trailer = rig.vehicles().get(1);
    Axle axle = trailer.axles().get(0);
    Axle other =
        axle.withLabel(List.of(axle.label().get(0).withLoadRange("F")))
            .withLeftShare(Entered.of(QuantityKind.RATIO, "52 %"));
    Rig changed =
        rig.withCompressorTop(Entered.of(QuantityKind.GAUGE_PRESSURE, "110 psi"))
            .withCompressorFlow(Entered.of(QuantityKind.AIR_FLOW, "1.6 cfm"))
            .withCompressorFlowAt(Entered.of(QuantityKind.GAUGE_PRESSURE, "90 psi"))
            .withHitch(null)
            .withVehicles(
                List.of(
                    rig.vehicles().get(0),
                    trailer.withAxles(List.of(other, trailer.axles().get(1)))));
    assertThat(changes(was, was.withRig(changed), UnitSystem.US).lines())
        .contains(
            new RigChanges.Line("the rig", "Compressor reaches", "–", "110.0 psi"),
            new RigChanges.Line("the rig", "Compressor flow", "–", "1.6 cfm"),
            new RigChanges.Line("the rig", "Compressor flow at", "–", "90.0 psi"),
            new RigChanges.Line("hitch of the rig", "hitch", "there", "–"),
            new RigChanges.Line("trailer axle 1", "Left share of load", "–", "52 %"))
        .anyMatch(
            line ->
                line.what().equals("Label")
                    && line.then().contains(" E ")
                    && line.now().contains(" F "));
  }
}

package dawngauge.trip;

import static org.assertj.core.api.Assertions.assertThat;

import dawngauge.planner.Planner;
import dawngauge.problem.Outcome;
import dawngauge.problem.Problem;
import dawngauge.problem.ProblemCode;
import dawngauge.settings.SettingsFile;
import dawngauge.tripfile.TripFile;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Parts of a rig come and go; what refers to them follows or is told to have gone. */
class RigPartsTest {

  private static final Planner PLANNER = new Planner(SettingsFile.defaults(), List.of());
  private static final Trip SPRING = demo("spring-fleece-haul.dawngauge");

  private static Trip demo(String name) {
    return PLANNER.store().open(Path.of("demo-data", name)).get();
  }

  private static int vehicle(Trip trip, Vehicle.Kind kind) {
    List<Vehicle> all = trip.rig().vehicles();
    for (int i = 0; i < all.size(); i++) {
      if (all.get(i).kind() == kind) {
        return i;
      }
    }
    throw new AssertionError("no " + kind);
  }

  private static void opensTheSame(Trip trip) {
    Outcome<Trip> opened = TripFile.parse(TripFile.text(trip));
    assertThat(opened.problems())
        .filteredOn(problem -> problem.code().severity() == ProblemCode.Severity.ERROR)
        .extracting(Problem::message)
        .isEmpty();
    assertThat(opened.value().filter(trip::equals)).isPresent();
  }

  @Test
  void anotherAxleHasTiresOfTheKindBeforeItAndNoFigureNobodyTyped() {
    int trailer = vehicle(SPRING, Vehicle.Kind.TRAILER);
    Trip grown = RigParts.withNewAxle(SPRING, trailer, false);
    Vehicle before = SPRING.rig().vehicles().get(trailer);
    Vehicle after = grown.rig().vehicles().get(trailer);
    assertThat(after.axles()).hasSize(before.axles().size() + 1);
    Axle last = before.axles().get(before.axles().size() - 1);
    Axle added = after.axles().get(after.axles().size() - 1);
    assertThat(added.gawr()).isEqualTo(last.gawr());
    assertThat(added.label()).isEqualTo(last.label());
    assertThat(added.fitted().keySet()).containsExactlyInAnyOrder(WheelSlot.LEFT, WheelSlot.RIGHT);
    assertThat(added.fitted().values())
        .allSatisfy(
            id -> {
              Tire tire = grown.rig().tire(id).orElseThrow();
              assertThat(tire.dateCode()).isNull();
              assertThat(tire.tread()).isNull();
              assertThat(SPRING.rig().tire(id)).isEmpty();
            });
    assertThat(added.fitted().values())
        .allSatisfy(id -> assertThat(DawnReadings.of(grown, id)).isEmpty());
    opensTheSame(grown);
    AxleRef ref = new AxleRef(after.name(), after.axles().size());
    RigParts.Changed back = RigParts.withoutAxle(grown, ref);
    assertThat(back.lost()).isEmpty();
    assertThat(back.trip().equals(SPRING)).isTrue();
  }

  @Test
  void aFirstAxleOfAnotherSortOfWheelsHasNoFiguresOfTheOtherSort() {
    int trailer = vehicle(SPRING, Vehicle.Kind.TRAILER);
    Trip grown = RigParts.withNewAxle(SPRING, trailer, true);
    List<Axle> axles = grown.rig().vehicles().get(trailer).axles();
    assertThat(axles.get(axles.size() - 1).gawr()).isNull();
    assertThat(axles.get(axles.size() - 1).label()).isEmpty();
    assertThat(axles.get(axles.size() - 1).fitted()).hasSize(4);
    opensTheSame(grown);
  }

  @Test
  void anAxleThatGoesTakesReadingsAndWeightsAlongAndSaysSo() {
    String trailer = SPRING.rig().vehicles().get(vehicle(SPRING, Vehicle.Kind.TRAILER)).name();
    Axle gone = SPRING.rig().axle(new AxleRef(trailer, 1)).orElseThrow();
    RigParts.Changed changed = RigParts.withoutAxle(SPRING, new AxleRef(trailer, 1));
    assertThat(changed.lost()).isNotEmpty();
    assertThat(String.join(", ", changed.lost())).contains("2 readings").contains("scale weight");
    assertThat(changed.trip().log())
        .noneMatch(
            event ->
                event instanceof LogEvent.Reading reading
                    && gone.fitted().containsValue(reading.tire()));
    // The second axle is now the first: its tires keep their readings.
    Axle second = SPRING.rig().axle(new AxleRef(trailer, 2)).orElseThrow();
    assertThat(changed.trip().rig().axle(new AxleRef(trailer, 1)).orElseThrow().fitted())
        .isEqualTo(second.fitted());
    for (String id : second.fitted().values()) {
      assertThat(DawnReadings.of(changed.trip(), id)).isEqualTo(DawnReadings.of(SPRING, id));
    }
    opensTheSame(changed.trip());
  }

  @Test
  void aTrailerThatGoesTakesTheHitchAndItsLoadsAlong() {
    RigParts.Changed changed =
        RigParts.withoutVehicle(SPRING, vehicle(SPRING, Vehicle.Kind.TRAILER));
    assertThat(changed.lost()).contains("the hitch");
    assertThat(changed.trip().rig().hitch()).isNull();
    assertThat(changed.trip().rig().vehicles())
        .noneMatch(vehicle -> vehicle.kind() == Vehicle.Kind.TRAILER);
    opensTheSame(changed.trip());
  }

  @Test
  void singleWheelsBecomeTheOuterOnesOfPairsAndBack() {
    String trailer = SPRING.rig().vehicles().get(vehicle(SPRING, Vehicle.Kind.TRAILER)).name();
    AxleRef ref = new AxleRef(trailer, 1);
    Axle single = SPRING.rig().axle(ref).orElseThrow();
    RigParts.Changed pairs = RigParts.withDual(SPRING, ref, true);
    assertThat(pairs.lost()).isEmpty();
    Axle dual = pairs.trip().rig().axle(ref).orElseThrow();
    assertThat(dual.fitted().get(WheelSlot.LEFT_OUTER))
        .isEqualTo(single.fitted().get(WheelSlot.LEFT));
    assertThat(dual.fitted()).hasSize(4);
    opensTheSame(pairs.trip());
    RigParts.Changed back = RigParts.withDual(pairs.trip(), ref, false);
    assertThat(back.trip().equals(SPRING)).isTrue();
  }

  @Test
  void gaugesSparesAndKindsComeAndGo() {
    Trip gauge = RigParts.withNewGauge(SPRING);
    int gauges = gauge.rig().gauges().size();
    assertThat(RigParts.withoutGauge(gauge, gauges - 1).trip().equals(SPRING)).isTrue();
    RigParts.Changed without = RigParts.withoutGauge(SPRING, 0);
    assertThat(String.join(", ", without.lost())).contains("reading");
    opensTheSame(without.trip());

    Trip spare = RigParts.withNewSpare(SPRING);
    List<Spare> spares = spare.rig().spares();
    String id = spares.get(spares.size() - 1).tire();
    assertThat(RigParts.withoutLooseTire(spare, id).trip().equals(SPRING)).isTrue();
    String fitted = SPRING.rig().vehicles().get(0).axles().get(0).fitted().get(WheelSlot.LEFT);
    assertThat(fitted).isNotNull();
    assertThat(
            RigParts.withoutLooseTire(SPRING, Objects.requireNonNull(fitted)).trip().equals(SPRING))
        .isTrue();

    Trip kind = RigParts.withNewKind(SPRING);
    int last = kind.rig().tireTypes().size() - 1;
    assertThat(RigParts.canRemoveKind(kind.rig(), last)).isTrue();
    assertThat(RigParts.canRemoveKind(kind.rig(), 0)).isFalse();
    assertThat(RigParts.withoutKind(kind, last).trip().equals(SPRING)).isTrue();
    assertThat(RigParts.withoutKind(kind, 0).trip().equals(kind)).isTrue();
  }

  @Test
  void vehiclesHaveLettersUntilNoneIsLeft() {
    Trip trip = SPRING;
    while (RigParts.canAddVehicle(trip.rig())) {
      trip = RigParts.withNewVehicle(trip, Vehicle.Kind.TRAILER);
    }
    assertThat(trip.rig().vehicles()).hasSize(26);
    assertThat(new HashSet<>(trip.rig().vehicles().stream().map(Vehicle::letter).toList()))
        .hasSize(26);
    assertThat(RigParts.withNewVehicle(trip, Vehicle.Kind.CAR).equals(trip)).isTrue();
    Trip truck = RigParts.withNewVehicle(SPRING, Vehicle.Kind.TRUCK);
    assertThat(vehicle(truck, Vehicle.Kind.TRAILER))
        .isGreaterThan(SPRING.rig().vehicles().size() - 2);
  }

  /** Seeded: whatever comes and goes, the trip can be saved, opened again and planned. */
  @ParameterizedTest
  @ValueSource(strings = {"spring-fleece-haul.dawngauge", "autumn-stock-haul.dawngauge"})
  void anyRowOfChangesLeavesATripThatOpensAndCanBePlanned(String name) {
    for (int seed = 0; seed < 12; seed++) {
      Random random = new Random(seed);
      Trip trip = demo(name);
      List<String> did = new ArrayList<>();
      for (int step = 0; step < 8; step++) {
        trip = changed(trip, random, did);
        Outcome<Trip> opened = TripFile.parse(TripFile.text(trip));
        assertThat(opened.value().filter(trip::equals))
            .as("%s: %s %s", seed, did, opened.problems())
            .isPresent();
        PLANNER.plan(trip);
        PLANNER.plan(trip).fitness();
      }
    }
  }

  private static Trip changed(Trip trip, Random random, List<String> did) {
    Rig rig = trip.rig();
    int vehicles = rig.vehicles().size();
    int at = vehicles == 0 ? 0 : random.nextInt(vehicles);
    int axles = vehicles == 0 ? 0 : rig.vehicles().get(at).axles().size();
    AxleRef ref =
        axles == 0 ? null : new AxleRef(rig.vehicles().get(at).name(), 1 + random.nextInt(axles));
    int what = random.nextInt(10);
    did.add(what + "@" + at);
    return switch (what) {
      case 0 ->
          RigParts.withNewVehicle(
              trip, random.nextBoolean() ? Vehicle.Kind.TRAILER : Vehicle.Kind.TRUCK);
      case 1 -> vehicles < 2 ? trip : RigParts.withoutVehicle(trip, at).trip();
      case 2, 3 -> vehicles == 0 ? trip : RigParts.withNewAxle(trip, at, random.nextBoolean());
      case 4 -> ref == null ? trip : RigParts.withoutAxle(trip, ref).trip();
      case 5, 6 -> ref == null ? trip : RigParts.withDual(trip, ref, random.nextBoolean()).trip();
      case 7 -> RigParts.withNewSpare(trip);
      case 8 ->
          rig.gauges().isEmpty() || random.nextBoolean()
              ? RigParts.withNewGauge(trip)
              : RigParts.withoutGauge(trip, random.nextInt(rig.gauges().size())).trip();
      default ->
          rig.spares().isEmpty()
              ? trip
              : RigParts.withoutLooseTire(trip, rig.spares().get(0).tire()).trip();
    };
  }
}

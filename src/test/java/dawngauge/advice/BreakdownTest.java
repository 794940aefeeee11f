package dawngauge.advice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dawngauge.forecast.Forecaster;
import dawngauge.ledger.BreakdownPage;
import dawngauge.page.Page;
import dawngauge.planner.Plan;
import dawngauge.planner.Planner;
import dawngauge.quantity.Entered;
import dawngauge.quantity.QuantityKind;
import dawngauge.quantity.UnitSystem;
import dawngauge.report.PageText;
import dawngauge.rules.SpareFit;
import dawngauge.settings.SettingsFile;
import dawngauge.testdata.Forecasts;
import dawngauge.trip.LogEdits;
import dawngauge.trip.LogEvent;
import dawngauge.trip.Remarks;
import dawngauge.trip.Rig;
import dawngauge.trip.Spare;
import dawngauge.trip.Tire;
import dawngauge.trip.Trip;
import dawngauge.trip.WheelPosition;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * A flat tire. By hand, the autumn haul: the trailer's first axle has 1000 kg on its left wheel;
 * the second was weighed alone with 1900 kg, of which one side has 52.5 % at most, 997.5 kg. So t2l
 * has 1997.5 kg where t1l is flat; it is rated for 1150 kg at 4.5 bar. The hay truck's second axle
 * was not weighed: 6400 kg GAWR on four tires are 1600 each, 3200 on one for both, rated 2120 dual.
 * The spare is of the trailer's size, 1150 kg at 4.5 bar, the label's pressure.
 */
class BreakdownTest {

  private static final Planner PLANNER = new Planner(SettingsFile.defaults(), List.of());

  private static final Path AUTUMN = Path.of("demo-data", "autumn-stock-haul.dawngauge");

  @TempDir private Path folder = AUTUMN;

  private static Trip autumn() {
    return PLANNER.store().open(AUTUMN).get();
  }

  private static WheelPosition position(Trip trip, String shortForm) {
    return trip.rig().positions().stream()
        .filter(each -> trip.rig().shortForm(each).equals(shortForm))
        .findFirst()
        .orElseThrow();
  }

  private static Breakdown of(Trip trip, int stop, String shortForm) {
    return PLANNER.plan(trip).breakdown(stop, position(trip, shortForm)).orElseThrow();
  }

  private static Trip withSpare(Trip trip, Spare spare) {
    Rig rig = trip.rig();
    return trip.withRig(rig.withSpares(List.of(spare)));
  }

  private static Trip withTire(Trip trip, Tire tire) {
    List<Tire> tires = new ArrayList<>();
    trip.rig().tires().forEach(each -> tires.add(each.id().equals(tire.id()) ? tire : each));
    return trip.withRig(trip.rig().withTires(tires));
  }

  private static Tire spare(Trip trip) {
    return trip.rig().tire("R1").orElseThrow();
  }

  @Test
  void theNextTireOnItsSideCarriesBoth() {
    List<Breakdown.Carrier> carriers = of(autumn(), 2, "t1l").carriers();
    assertThat(carriers).hasSize(1);
    assertThat(autumn().rig().shortForm(carriers.get(0).tire().position())).isEqualTo("t2l");
    assertThat(carriers.get(0).load()).isCloseTo(1997.5, within(0.5));
    assertThat(carriers.get(0).most()).isCloseTo(1150, within(0.5));
    assertThat(carriers.get(0).carries()).isFalse();
  }

  /** With 500 kg on the one and 950 kg on the other axle: 500 + 0.525 · 950 = 998.75 kg. */
  @Test
  void aLightTrailerStandsOnOne() throws IOException {
    String light =
        Files.readString(AUTUMN)
            .replace("\"weight\": \"1000 kg\"", "\"weight\": \"500 kg\"")
            .replace("\"weight\": \"930 kg\"", "\"weight\": \"465 kg\"")
            .replace("\"weight\": \"1900 kg\"", "\"weight\": \"950 kg\"");
    Path file = Files.writeString(folder.resolve("light.dawngauge"), light);
    Trip trip = PLANNER.store().open(file).get();
    Breakdown found = of(trip, 0, "t1l");
    Breakdown.Carrier carrier = found.carriers().get(0);
    assertThat(carrier.load()).isCloseTo(998.75, within(0.5));
    assertThat(carrier.carries()).isTrue();
    Page page = BreakdownPage.of(trip, found, PLANNER.plan(trip).tireNeeds(), UnitSystem.SI);
    assertThat(PageText.of(page, false).replaceAll("\\s+", " "))
        .contains("t2l can be shown to carry both: up to 999 kg, it carries 1150 kg at its limit,")
        .contains("4.5 bar cold. Gauge it, with less air it carries less.");
  }

  @Test
  void aDualMateCarriesBothAndAFrontTireHasNone() {
    Trip trip = autumn();
    List<Breakdown.Carrier> mate = of(trip, 2, "h2lo").carriers();
    assertThat(mate).hasSize(1);
    assertThat(trip.rig().shortForm(mate.get(0).tire().position())).isEqualTo("h2li");
    assertThat(mate.get(0).load()).isCloseTo(3200, within(0.5));
    assertThat(mate.get(0).most()).isCloseTo(2120, within(0.5));
    assertThat(of(trip, 2, "p1l").carriers()).isEmpty();
  }

  @Test
  void theSpareThatFitsIsSetToTheLabel() {
    Breakdown.Choice choice = of(autumn(), 2, "t1l").spares().get(0);
    assertThat(choice.serves()).isTrue();
    assertThat(choice.unknown()).isEmpty();
    assertThat(choice.cold()).isCloseTo(450_000, within(1.0));
    assertThat(choice.reaches()).isEqualTo(autumn().route().stops().size() - 1);
    assertThat(choice.fastest()).isNotNull();
  }

  /** Never over what the wheel of the spare may take; then it takes less than is asked for. */
  @Test
  void aWeakWheelSpeaksAgainstIt() {
    Trip trip = autumn();
    Spare spare = trip.rig().spares().get(0);
    Trip soft =
        withSpare(
            trip, spare.withWheelMaxPressure(Entered.of(QuantityKind.GAUGE_PRESSURE, "4 bar")));
    Breakdown.Choice choice = of(soft, 2, "t1l").spares().get(0);
    assertThat(choice.faults()).containsExactly(SpareFit.Fault.PRESSURE);
    assertThat(choice.cold()).isCloseTo(400_000, within(1.0));
    Trip weak = withSpare(trip, spare.withWheelMaxLoad(Entered.of(QuantityKind.MASS, "990 kg")));
    assertThat(of(weak, 2, "t1l").spares().get(0).faults())
        .containsExactly(SpareFit.Fault.TOO_WEAK);
  }

  @Test
  void damageAndAgeSpeakAgainstIt() {
    Trip trip = autumn();
    Tire tire = spare(trip);
    assertThat(
            of(withTire(trip, tire.withDamage(Set.of(Tire.Damage.BULGE))), 2, "t1l")
                .spares()
                .get(0)
                .faults())
        .containsExactly(SpareFit.Fault.DAMAGED);
    assertThat(of(withTire(trip, tire.withDateCode("1016")), 2, "t1l").spares().get(0).faults())
        .containsExactly(SpareFit.Fault.OLD); // week 10 of 2016, over eleven years on the trip
    assertThat(of(withTire(trip, tire.withDateCode(null)), 2, "t1l").spares().get(0).unknown())
        .containsExactly("its age");
    assertThat(of(trip, 2, "p1l").spares().get(0).faults())
        .contains(SpareFit.Fault.NOT_MEANT, SpareFit.Fault.SIZE);
  }

  /** Once it is on a wheel there is none, and what stands there is the spare. */
  @Test
  void aSpareThatIsOnAWheelIsNoSpare() {
    Trip trip = autumn();
    WheelPosition place = position(trip, "t1l");
    String off = trip.rig().fittedAt(place).orElseThrow().id();
    Trip changed =
        LogEdits.with(
            trip,
            new LogEvent.TireChange(
                LogEdits.at(Instant.parse("2027-10-14T20:00:00Z"), ZoneOffset.UTC),
                place,
                off,
                "R1",
                Remarks.NONE));
    Breakdown again = of(changed, 2, "t1l");
    assertThat(again.flat().tire().id()).isEqualTo("R1");
    assertThat(again.spares()).isEmpty();
  }

  /** What the advice counts on as a way out is what the page offers, and the other way round. */
  @ParameterizedTest
  @ValueSource(strings = {"spring-fleece-haul", "autumn-stock-haul"})
  void theAdviceCountsOnTheSameSpares(String demo) {
    Trip trip = PLANNER.store().open(Path.of("demo-data", demo + ".dawngauge")).get();
    Plan plan = PLANNER.plan(trip);
    Advice advice = Objects.requireNonNull(plan.advice());
    int compared = 0;
    for (StopAdvice stop : advice.stops().subList(0, advice.stops().size() - 1)) {
      for (TireAdvice tire : stop.tires()) {
        boolean offered =
            plan
                .breakdown(stop.stop().visit().index(), tire.tire().fitted().position())
                .orElseThrow()
                .spares()
                .stream()
                .anyMatch(Breakdown.Choice::serves);
        assertThat(Spares.fit(forecaster(trip), tire.tire())).isEqualTo(offered);
        compared++;
      }
    }
    assertThat(compared).isGreaterThan(50);
  }

  private static Forecaster forecaster(Trip trip) {
    return Forecasts.forecaster(trip);
  }

  @Test
  void everyAxleHasItsHeaviest() {
    Trip trip = autumn();
    List<Breakdown> all = PLANNER.plan(trip).breakdowns();
    assertThat(all).hasSize(6);
    assertThat(all.get(2).carriers().get(0).load()).isCloseTo(1997.5, within(0.5));
  }
}

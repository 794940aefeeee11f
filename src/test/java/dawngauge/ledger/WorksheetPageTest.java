package dawngauge.ledger;

import static org.assertj.core.api.Assertions.assertThat;

import dawngauge.page.Block;
import dawngauge.planner.Plan;
import dawngauge.planner.Planner;
import dawngauge.quantity.Entered;
import dawngauge.quantity.QuantityKind;
import dawngauge.quantity.UnitSystem;
import dawngauge.report.PageText;
import dawngauge.settings.SettingsFile;
import dawngauge.trip.AxleRef;
import dawngauge.trip.DeckLoad;
import dawngauge.trip.RigEdits;
import dawngauge.trip.Trip;
import dawngauge.trip.Worksheet;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The worksheet and the dealer's card say what is known, and how. */
class WorksheetPageTest {

  private static final Planner PLANNER = new Planner(SettingsFile.defaults(), List.of());
  private static final Path THREE_LOADS =
      Path.of("src", "test", "resources", "dawngauge", "weights", "three-loads.dawngauge");

  private static Trip trip() {
    return PLANNER.store().open(THREE_LOADS).get();
  }

  private static String weights(Trip trip, UnitSystem units) {
    return PageText.of(WorksheetPage.of(trip, PLANNER.plan(trip).expectedWeights(), units), true);
  }

  private static String dealer(Trip trip, UnitSystem units) {
    return PageText.of(DealerPage.of(trip, PLANNER.plan(trip).tireNeeds(), units), false);
  }

  private static List<String> row(Trip trip, String first) {
    return WorksheetPage.blocks(trip, PLANNER.plan(trip).expectedWeights(), UnitSystem.US).stream()
        .flatMap(
            block ->
                block instanceof Block.Table table
                    ? table.rows().stream()
                    : Stream.<List<String>>of())
        .filter(cells -> cells.get(0).equals(first))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void everyLoadIsMarkedAsExpectedWithItsCautions() {
    String text = weights(trip(), UnitSystem.US);
    assertThat(text)
        .contains("Expected, not weighed: 3 may be over · 9 within")
        .contains("Expected, never firm: weigh the loaded rig on a certified scale")
        .contains("The ratings on the certification label hold")
        .contains("Weigh trailer axle 1 alone, loaded as it goes and hitched.")
        .contains("244 lb now and would be 38 lb")
        .contains("have it inspected by a qualified technician");
    // The figures by hand are those of ExpectedLoadsTest.
    assertThat(row(trip(), "trailer axle 1"))
        .containsExactly("trailer axle 1", "3890 lb", "244 lb", "4000 lb", "GAWR", "may be over");
    assertThat(row(trip(), "hitch").subList(1, 4)).containsExactly("2320 lb", "198 lb", "3000 lb");
  }

  @Test
  void theUnitsAreThoseAskedFor() {
    assertThat(weights(trip(), UnitSystem.SI))
        .contains("1764 kg", "set to 4.48 bar cold", "a load's middle by 0.3 m")
        .doesNotContain(" lb", "psi");
    assertThat(dealer(trip(), UnitSystem.SI)).contains("4.48 bar").doesNotContain(" lb", "psi");
  }

  @Test
  void whatATicketTellsStandsBeside() {
    Trip weighed =
        RigEdits.withAxleWeight(
            trip(), new AxleRef("trailer", 1), Entered.of(QuantityKind.MASS, "3950 lb"));
    assertThat(row(weighed, "trailer axle 1")).hasSize(7).endsWith("3950 lb");
    assertThat(row(weighed, "trailer axle 2")).endsWith("–");
  }

  @Test
  void whatIsMissingIsToldInPlaceOfFigures() {
    Trip bare = trip().withRig(trip().rig().withWorksheet(null));
    assertThat(weights(bare, UnitSystem.US))
        .contains("12 not known")
        .contains("No empty weight of pickup axle 1, pickup axle 2")
        .contains("Nothing is loaded: type what stands where")
        .doesNotContain("within", "In most doubt");
  }

  @Test
  void whereNothingIsInDoubtItIsWeighedAllTheSame() {
    Worksheet sheet = Objects.requireNonNull(trip().rig().worksheet());
    Trip light =
        trip().withRig(trip().rig().withWorksheet(sheet.withLoads(sheet.loads().subList(2, 3))));
    assertThat(weights(light, UnitSystem.US))
        .contains("Weigh the loaded rig all the same: nothing here is firm.")
        .doesNotContain("In most doubt: ");
  }

  @Test
  void theDealersCardSaysHowTheLoadIsKnown() {
    assertThat(dealer(trip(), UnitSystem.US))
        .contains("1945 lb, give or take 132 lb: expected by the worksheet, not weighed")
        .contains("at least 2000 lb: 4000 lb GAWR on 2 tires")
        .contains("65 psi, the certification label's cold pressure")
        .contains("121 single, 118 dual")
        .contains("80 psi, 2600 lb")
        .contains("1223: week from 2023-03-19")
        .contains("date code (last digits of the DOT number) not typed");
    Trip weighed =
        RigEdits.withAxleWeight(
            trip(), new AxleRef("trailer", 1), Entered.of(QuantityKind.MASS, "3900 lb"));
    // 3,900/2 if even; 52.5 % of it, 2,048 lb, at worst.
    assertThat(dealer(weighed, UnitSystem.US).replaceAll("\\s+", " "))
        .contains("1950 lb, measured: weighed alone; up to 2048 lb where axles or sides share");
    Trip bare = trip().withRig(trip().rig().withWorksheet(null));
    assertThat(dealer(bare, UnitSystem.US))
        .contains("not known: weigh the loaded rig")
        .doesNotContain("expected by");
  }

  /**
   * The demo's vehicles have the names of the worksheet's; its loads are heavy enough to matter.
   */
  @Test
  void nothingIsJudgedByTheWorksheet() {
    Trip demo = PLANNER.store().open(Path.of("demo-data", "spring-fleece-haul.dawngauge")).get();
    Worksheet sheet = Objects.requireNonNull(trip().rig().worksheet());
    List<DeckLoad> heavy = sheet.loads().stream().map(load -> load.withHead(40)).toList();
    for (Trip trip : List.of(demo, demo.withRig(demo.rig().withTickets(List.of())), trip())) {
      Trip without = trip.withRig(trip.rig().withWorksheet(null));
      Trip with = trip.withRig(trip.rig().withWorksheet(sheet.withLoads(heavy)));
      assertThat(weights(with, UnitSystem.US)).contains(" over");
      assertThat(ledger(with)).isEqualTo(ledger(without));
    }
  }

  private static String ledger(Trip trip) {
    Plan planned = PLANNER.plan(trip);
    return PageText.of(
        ForecastPage.of(
            Ledger.of(
                trip,
                planned.advice(),
                planned.problems(),
                planned.fitness(),
                UnitSystem.US,
                null)),
        true);
  }

  @Test
  void aRigWithoutTiresHasNoCard() {
    Trip none = trip().withRig(trip().rig().withVehicles(List.of()).withWorksheet(null));
    assertThat(dealer(none, UnitSystem.US)).contains("No tire is named on any axle.");
  }
}

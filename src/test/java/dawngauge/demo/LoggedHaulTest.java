package dawngauge.demo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dawngauge.ledger.ReviewLines;
import dawngauge.planner.Planner;
import dawngauge.quantity.UnitSystem;
import dawngauge.review.LossFit;
import dawngauge.review.PressureAccount;
import dawngauge.review.TireReview;
import dawngauge.review.TripReview;
import dawngauge.settings.SettingsFile;
import dawngauge.trip.Trip;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/**
 * The demo haul with its log. Its readings were made outside this program, by the gas law on the
 * filled air of each tire and invented air, rounded to half a psi after a spread of 0.25 psi.
 * Planted are a leak of 2.6 psi a day (t2r), 7 psi let out while warm (t1l), a gauge that reads 2
 * psi high, one dawn 12 °F colder than expected, and a reading in the sun: the review finds each
 * and nothing else.
 */
class LoggedHaulTest {

  static final String FILE = "spring-fleece-haul-logged.dawngauge";

  private static final double PSI = 6894.757293168361; // NIST SP 811, 2008

  private static final Planner PLANNER = new Planner(SettingsFile.defaults(), List.of());
  private static final Trip TRIP = PLANNER.store().open(Path.of("demo-data", FILE)).get();
  private static final TripReview REVIEW = PLANNER.plan(TRIP).review().orElseThrow();

  private static TireReview tire(String name) {
    return REVIEW.tires().stream()
        .filter(tire -> TRIP.rig().shortForm(tire.position()).equals(name))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void theFirstSentenceNamesEachPlantedCauseAndNothingElse() {
    ReviewLines lines = ReviewLines.of(TRIP, REVIEW, UnitSystem.US);
    assertThat(lines.headline())
        .isEqualTo(
            "t2r leaks steadily, about 2.5 psi a day; t1l was let out while warm; shop gauge reads"
                + " above cab gauge; all tires read less than expected at Graham TX.");
    assertThat(lines.findings())
        .anySatisfy(text -> assertThat(text).contains("air about 11 °F colder"))
        .anySatisfy(
            text ->
                assertThat(text)
                    .contains("7.0 psi let out while it was warm", "6.5 psi missing", "not leak"))
        .anySatisfy(text -> assertThat(text).contains("shop gauge reads 2.0 psi"))
        .anySatisfy(
            text ->
                assertThat(text)
                    .startsWith("Sound by their readings")
                    .contains("p1l, p1r, p2lo, p2li, p2ri, p2ro, t1r, t2l"));
    assertThat(lines.next()).anySatisfy(text -> assertThat(text).contains("t2r", "valve core"));
  }

  @Test
  void theLeakIsSteadyAndItsRateIsWithinItsRange() {
    TireReview leaking = tire("t2r");
    assertThat(leaking.fit().kind()).isEqualTo(LossFit.Kind.STEADY);
    assertThat(leaking.cold()).hasSize(4);
    assertThat(leaking.perDay() / PSI).isCloseTo(2.6, within(0.3));
    assertThat(leaking.fastPerDay() / PSI).isGreaterThan(2.6);
    assertThat(leaking.floorBy()).isNotNull();
  }

  @Test
  void soundTiresAndTheOneInTheSunAreLeftAlone() {
    Map<Boolean, List<String>> bySound =
        REVIEW.tires().stream()
            .collect(
                Collectors.partitioningBy(
                    TireReview::sound,
                    Collectors.mapping(
                        tire -> TRIP.rig().shortForm(tire.position()), Collectors.toList())));
    assertThat(bySound.get(false)).containsExactly("t1l", "t2r");
    assertThat(tire("t1l").fit().kind()).isEqualTo(LossFit.Kind.SOUND);
  }

  /**
   * The account of t2r worked outside this program, from the first dawn (72 psi, air 263.96 K, tire
   * 264.17 K, 11.109 psi around at 7,543 ft) to the last evening (73 psi, 299.52 K, 300.99 K,
   * 14.145 psi at 1,053 ft), U.S. Standard Atmosphere 1976: F = 83.109/264.17 = 0.314604 and
   * 87.145/300.99 = 0.289528 psi/K, F̄ 0.302066, T̄ 282.58. Warmer air 0.302066 × 35.56 = 10.74;
   * the tire beside the air 0.302066 × (1.47 − 0.21) = 0.38; height −(14.145 − 11.109) = −3.04;
   * lost 282.58 × −0.025076 = −7.09; together 0.99 to the last digit carried, 1 by the gauge.
   */
  @Test
  void theAccountOfTheLeakingTire() {
    PressureAccount account = Objects.requireNonNull(tire("t2r").account());
    assertThat(account.air() / PSI).isCloseTo(10.74, within(0.01));
    assertThat(account.warmUp() / PSI).isCloseTo(0.38, within(0.01));
    assertThat(account.height() / PSI).isCloseTo(-3.04, within(0.01));
    assertThat(account.lost() / PSI).isCloseTo(-7.09, within(0.01));
    assertThat(account.sum() / PSI).isCloseTo(1, within(1e-9));
  }

  @Test
  void theNextTripKnowsTheLeakAndTheGauges() {
    Trip next = PLANNER.plan(TRIP).nextTrip(true);
    assertThat(Objects.requireNonNull(next.rig().tire("T4").orElseThrow().lossPerDay()).text())
        .isEqualTo("2.5 psi");
    assertThat(next.rig().tire("T1").orElseThrow().lossPerDay()).isNull();
    assertThat(next.rig().gauges()).isEqualTo(TRIP.rig().gauges());
    assertThat(next.rig().tire("T1").orElseThrow().heatRecord()).isNotNull();
    assertThat(PLANNER.plan(TRIP).nextTrip(false).rig().tire("T1").orElseThrow().heatRecord())
        .as("asked first")
        .isNull();
    assertThat(next.log()).isEmpty();
    assertThat(next.route().stops()).hasSize(1);
    assertThat(next.route().stops().get(0).place()).isEqualTo("Childress TX");
  }
}

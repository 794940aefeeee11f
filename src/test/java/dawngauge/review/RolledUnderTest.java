package dawngauge.review;

import static dawngauge.testdata.StopBuilder.stop;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dawngauge.testdata.Forecasts;
import dawngauge.testdata.RigBuilder;
import dawngauge.testdata.StopBuilder;
import dawngauge.testdata.TireBuilder;
import dawngauge.testdata.Trips;
import dawngauge.tire.TireClass;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Where a tire rolled with less than its load needs. */
class RolledUnderTest {

  private static final double PSI = 6894.757293168361; // NIST SP 811, 2008
  private static final double MILE = 1609.344; // NIST SP 811, 2008

  /**
   * Two tires with 2,574 lb on each, between rows of 2,300 lb at 50 and 3,195 lb at 80 psi: 50 + 30
   * · 274/895 = 59.18 psi are needed. Four stops at sea level, 100 miles apart, a night at each.
   */
  private static Trips haul(String second) {
    return haul(stop("b").stays(Duration.ofHours(22)).steady(second).measured());
  }

  private static Trips haul(StopBuilder second) {
    RigBuilder rig =
        RigBuilder.trailer()
            .tires(TireBuilder.lightTruck().row("50 psi", "2300 lb").row("80 psi", "3195 lb"))
            .gawr("5200 lb")
            .weighed("5148 lb")
            .label("LT245/75R17", TireClass.LIGHT_TRUCK, "E", "60 psi");
    return Trips.of(rig)
        .stop(stop("a").leaves("2027-06-01T06:00Z").steady("60 °F").measured())
        .leg("100 mi", "50 mph")
        .stop(second)
        .leg("100 mi", "50 mph")
        .stop(stop("c").stays(Duration.ofHours(22)).steady("60 °F").measured())
        .leg("100 mi", "50 mph")
        .stop(stop("d").steady("60 °F").measured());
  }

  private static TireReview tire(Trips trips, int index) {
    return TripReview.of(Forecasts.forecaster(trips.trip())).tires().get(index);
  }

  /**
   * T1 set off with 50 psi, and with it again; at the third stop it was filled to 75. T2 set off
   * with 75. At 40 °F T1 stands lowest: (50 + 14.696) · 499.67/519.67 − 14.696 = 47.51 psi.
   */
  @Test
  void legsOneAfterAnotherAreOneStretchUntilItIsFilled() {
    Trips trips =
        haul("40 °F")
            .read("2027-06-01T05:50Z", "T1", "50 psi")
            .read("2027-06-01T05:51Z", "T2", "75 psi")
            .adjust("2027-06-03T05:50Z", "T1", "75 psi")
            .arrived("2027-06-03T08:00Z", "d");
    List<RolledUnder> found = tire(trips, 0).rolledUnder();
    assertThat(found).hasSize(1);
    RolledUnder stretch = found.get(0);
    assertThat(stretch.from()).isEqualTo(Instant.parse("2027-06-01T06:00:00Z"));
    assertThat(stretch.to()).isEqualTo(Instant.parse("2027-06-02T08:00:00Z"));
    assertThat(stretch.meters() / MILE).isCloseTo(200, within(1e-6));
    assertThat(stretch.pascals() / PSI).isCloseTo(47.51, within(0.01));
    // It was read before it set off: the forecast of that morning knew.
    assertThat(stretch.foreseen()).isGreaterThan(0.99);
    assertThat(tire(trips, 1).rolledUnder()).isEmpty();
  }

  /** Filled for one leg, and let out again: two stretches, the leg between them is none. */
  @Test
  void aLegThatItRolledWithEnoughParts() {
    Trips trips =
        haul("60 °F")
            .read("2027-06-01T05:50Z", "T1", "50 psi")
            .adjust("2027-06-02T05:50Z", "T1", "75 psi")
            .adjust("2027-06-03T05:50Z", "T1", "52 psi")
            .arrived("2027-06-03T08:00Z", "d");
    List<RolledUnder> found = tire(trips, 0).rolledUnder();
    assertThat(found).hasSize(2);
    assertThat(found.get(0).pascals() / PSI).isCloseTo(50, within(0.01));
    assertThat(found.get(1).pascals() / PSI).isCloseTo(52, within(0.01));
    assertThat(found.get(1).from()).isEqualTo(Instant.parse("2027-06-03T06:00:00Z"));
    assertThat(found.get(1).meters() / MILE).isCloseTo(100, within(1e-6));
  }

  /**
   * It set off with 75 psi and was read at 50 a day later: it may have rolled so, and nobody could
   * foresee it. From there it was known.
   */
  @Test
  void whatIsReadWhereItArrivedTellsOfTheLegBefore() {
    Trips trips =
        haul("60 °F")
            .read("2027-06-01T05:50Z", "T1", "75 psi")
            .read("2027-06-02T05:50Z", "T1", "50 psi")
            .arrived("2027-06-02T08:00Z", "c");
    List<RolledUnder> both = tire(trips, 0).rolledUnder();
    assertThat(both).hasSize(1);
    assertThat(both.get(0).meters() / MILE).isCloseTo(200, within(1e-6));
    assertThat(both.get(0).pascals() / PSI).isCloseTo(50, within(0.01));
    assertThat(both.get(0).foreseen()).isLessThan(0.01);
  }

  /** It is filled at once, as crews do: it came with 50 psi all the same. */
  @Test
  void fillingItDoesNotUndoThatItCameSo() {
    Trips trips =
        haul("60 °F")
            .read("2027-06-01T05:50Z", "T1", "75 psi")
            .read("2027-06-02T05:50Z", "T1", "50 psi")
            .adjust("2027-06-02T05:52Z", "T1", "75 psi")
            .left("2027-06-02T06:00Z", "b");
    List<RolledUnder> found = tire(trips, 0).rolledUnder();
    assertThat(found).hasSize(1);
    assertThat(found.get(0).to()).isEqualTo(Instant.parse("2027-06-01T08:00:00Z"));
    assertThat(found.get(0).pascals() / PSI).isCloseTo(50, within(0.01));
  }

  /** What it was filled to before it was read tells nothing of how it came. */
  @Test
  void whatIsReadAfterSettingTellsNothingOfTheLegBefore() {
    Trips trips =
        haul("60 °F")
            .read("2027-06-01T05:50Z", "T1", "75 psi")
            .adjust("2027-06-02T05:50Z", "T1", "50 psi")
            .read("2027-06-02T05:52Z", "T1", "50 psi")
            .left("2027-06-02T06:00Z", "b");
    List<RolledUnder> found = tire(trips, 0).rolledUnder();
    assertThat(found).hasSize(1);
    assertThat(found.get(0).from()).isEqualTo(Instant.parse("2027-06-02T06:00:00Z"));
  }

  /**
   * 65 psi in 60 °F all the way are (65 + 14.696) · 469.67/519.67 − 14.696 = 57.33 psi at a dawn of
   * 10 °F: too little for the next leg, but it did not come so.
   */
  @Test
  void aColdNightIsNoMatterOfTheLegBefore() {
    Trips trips =
        haul(stop("b")
                .stays(Duration.ofHours(22))
                .hour("2027-06-01T06:00Z", "60 °F")
                .hour("2027-06-01T09:00Z", "60 °F")
                .hour("2027-06-02T04:00Z", "10 °F")
                .hour("2027-06-02T09:00Z", "10 °F"))
            .read("2027-06-01T05:50Z", "T1", "65 psi")
            .read("2027-06-02T05:50Z", "T1", "57.3 psi")
            .left("2027-06-02T06:00Z", "b")
            .arrived("2027-06-02T08:00Z", "c");
    List<RolledUnder> found = tire(trips, 0).rolledUnder();
    assertThat(found).hasSize(1);
    assertThat(found.get(0).from()).isEqualTo(Instant.parse("2027-06-02T06:00:00Z"));
    assertThat(found.get(0).pascals() / PSI).isCloseTo(57.3, within(0.05));
  }

  /** 75 psi are 5.17 bar: noted so, and read as before the next day, it never rolled with 5 psi. */
  @Test
  void aReadingInAWrongUnitIsNoPressureItRolledWith() {
    Trips trips =
        haul("60 °F")
            .read("2027-06-01T05:50Z", "T1", "75 psi")
            .read("2027-06-02T05:50Z", "T1", "5.2 psi")
            .read("2027-06-03T05:50Z", "T1", "75 psi")
            .arrived("2027-06-03T08:00Z", "d");
    assertThat(TripReview.of(Forecasts.forecaster(trips.trip())).slips()).hasSize(1);
    assertThat(tire(trips, 0).rolledUnder()).isEmpty();
    assertThat(tire(trips, 0).sound()).isTrue();
  }

  /** Only what was driven counts: a reading before setting off tells of no leg. */
  @Test
  void legsAheadAreNotReviewed() {
    Trips trips = haul("60 °F").read("2027-06-01T05:50Z", "T1", "50 psi");
    assertThat(tire(trips, 0).rolledUnder()).isEmpty();
    trips.left("2027-06-01T06:00Z", "a");
    assertThat(tire(trips, 0).rolledUnder()).hasSize(1);
  }

  /** Both dawns read alike, so nothing was lost; but it rolled so, and is not called sound. */
  @Test
  void aTireThatRolledSoIsNotSound() {
    Trips trips =
        haul("60 °F")
            .read("2027-06-01T05:50Z", "T1", "55 psi")
            .read("2027-06-01T05:51Z", "T2", "75 psi")
            .read("2027-06-02T05:50Z", "T1", "55 psi")
            .read("2027-06-02T05:51Z", "T2", "75 psi");
    assertThat(tire(trips, 0).fit().kind()).isEqualTo(LossFit.Kind.SOUND);
    assertThat(tire(trips, 0).ranLow()).isNull();
    assertThat(tire(trips, 0).sound()).isFalse();
    assertThat(tire(trips, 1).sound()).isTrue();
  }
}

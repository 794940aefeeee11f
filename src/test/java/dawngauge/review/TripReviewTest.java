package dawngauge.review;

import static dawngauge.testdata.Forecasts.known;
import static dawngauge.testdata.StopBuilder.stop;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dawngauge.testdata.Forecasts;
import dawngauge.testdata.RigBuilder;
import dawngauge.testdata.TireBuilder;
import dawngauge.testdata.Trips;
import dawngauge.tire.TireClass;
import dawngauge.trip.ReadingState;
import dawngauge.trip.Trip;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What the tires of a trip share, what each lost, and when it may meet its floor. */
class TripReviewTest {

  private static final double PSI = 6894.757293168361; // NIST SP 811, 2008

  private static final String[] DAWNS = {
    "2027-06-01T05:50Z", "2027-06-02T05:50Z", "2027-06-03T05:50Z", "2027-06-04T05:50Z"
  };

  /** Four dawns at sea level in steady air of 60 °F. */
  private static Trips dawns(RigBuilder rig) {
    Trips trips = Trips.of(rig);
    for (int i = 0; i < 4; i++) {
      var stop = stop("s" + i).steady("60 °F");
      trips.stop(i == 0 ? stop.leaves("2027-06-01T06:00Z") : stop.stays(Duration.ofHours(22)));
      trips.leg("120 mi", "60 mph");
    }
    return trips.stop(stop("end").steady("60 °F"));
  }

  private static Trips dawns() {
    return dawns(RigBuilder.trailer().axles(2));
  }

  private static TripReview review(Trips trips) {
    return TripReview.of(Forecasts.forecaster(trips.trip()));
  }

  /** One tire's figures, dawn by dawn. */
  private static Trips read(Trips trips, String tire, double... psi) {
    for (int dawn = 0; dawn < psi.length; dawn++) {
      trips.read(DAWNS[dawn], tire, psi[dawn] + " psi");
    }
    return trips;
  }

  /**
   * By hand: 80 to 78.5 psi is ln(94.696/93.196) = 0.015967 of the air, 1.488 psi at 93.196; or
   * 0.015967 × 288.706 K = 4.61 K of colder air. The middle of four tires spreads by √(2 · (π/2)/4)
   * × 0.5 psi = 0.443: 1.488 is more than three of it, 0.997 (80 to 79 psi) is not. What all share
   * is no tire's loss.
   */
  @Test
  void whatAllTiresShareIsTakenOffEach() {
    Trips trips = dawns();
    for (String tire : List.of("T1", "T2", "T3", "T4")) {
      read(trips, tire, 80, 78.5, 79);
    }
    TripReview review = review(trips);
    assertThat(review.sharedTakenOff()).isTrue();
    assertThat(review.shared()).hasSize(3);
    TripReview.Shared second = review.shared().get(1);
    assertThat(second.visit()).isEqualTo(1);
    assertThat(second.pascals() / PSI).isCloseTo(1.488, within(0.001));
    assertThat(second.kelvins()).isCloseTo(4.610, within(0.002));
    assertThat(second.sigma() / PSI).isCloseTo(0.4431, within(1e-4));
    assertThat(second.isSomething()).isTrue();
    assertThat(review.shared().get(2).pascals() / PSI).isCloseTo(0.995, within(0.005));
    assertThat(review.shared().get(2).isSomething()).isFalse();
    assertThat(review.tires())
        .hasSize(4)
        .allSatisfy(
            tire -> {
              assertThat(tire.sound()).isTrue();
              assertThat(tire.residuals())
                  .allSatisfy(off -> assertThat(off / PSI).isCloseTo(0, within(1e-6)));
            });
  }

  /** Three tires have no common measure: each is followed by itself, as unsure as the air. */
  @Test
  void fewerThanFourTiresShareNothing() {
    Trips trips = dawns();
    for (String tire : List.of("T1", "T2", "T3")) {
      read(trips, tire, 80, 78.5);
    }
    TripReview review = review(trips);
    assertThat(review.shared()).isEmpty();
    assertThat(review.tires())
        .hasSize(3)
        .allSatisfy(
            tire -> {
              assertThat(tire.lost() / PSI).isCloseTo(1.5, within(0.001));
              assertThat(tire.residuals().get(1) / PSI).isCloseTo(-1.5, within(0.001));
              assertThat(tire.fit().kind()).isEqualTo(LossFit.Kind.SOUND);
            });
  }

  /** Weighed at 5,148 lb an axle on tires with rows: 2,574 lb on each. */
  private static RigBuilder withFloor() {
    return RigBuilder.trailer()
        .axles(2)
        .tires(TireBuilder.lightTruck().row("50 psi", "2300 lb").row("80 psi", "3195 lb"))
        .gawr("5200 lb")
        .weighed("5148 lb")
        .label("LT245/75R17", TireClass.LIGHT_TRUCK, "E", "60 psi");
  }

  /**
   * By hand: 80, 78, 76, 74 psi at 60 °F are 0, 0.021346, 0.043157 and 0.065453 of the air lost. A
   * straight line by least squares loses (0.5 · 0.021811 + 1.5 · 0.065453)/5 = 0.0218171 a day, of
   * 88.696 psi 1.935; in three days e^0.0654513 − 1 of it, 6.00 psi. The other three read 80: of
   * the middle of four tires a reading is sure to 0.5/88.696 · √(1 + (π/2 − 2)/4) = 0.0053263, the
   * slope to that over √5. The fast edge is (0.0218171 + 1.6449 · 0.0023820) · 88.696 = 2.2826 psi
   * a day, and 6 psi are sure to 3 · 0.0023820 · e^0.06545 · 88.696 = 0.677.
   *
   * <p>Between the rows 2,574 lb need 50 + 30 · 274/895 = 59.18 psi: the floor may be met (74 −
   * 59.18)/2.2826 = 6.49 days after the last reading.
   */
  @Test
  void aSteadyLeakIsToldWithTheDayOnWhichItMayMeetItsFloor() {
    Trips trips = dawns(withFloor());
    read(trips, "T1", 80, 78, 76, 74);
    for (String tire : List.of("T2", "T3", "T4")) {
      read(trips, tire, 80, 80, 80, 80);
    }
    TireReview leaking = review(trips).tires().get(0);
    assertThat(leaking.fit().kind()).isEqualTo(LossFit.Kind.STEADY);
    assertThat(leaking.lost() / PSI).isCloseTo(6.00, within(0.002));
    assertThat(leaking.lostSigma() / PSI).isCloseTo(0.677, within(0.001));
    assertThat(leaking.perDay() / PSI).isCloseTo(1.935, within(0.001));
    assertThat(leaking.fastPerDay() / PSI).isCloseTo(2.2826, within(0.001));
    assertThat(leaking.residuals().get(3) / PSI).isCloseTo(-6, within(0.001));
    double days =
        Duration.between(Instant.parse("2027-06-04T05:50:00Z"), known(leaking.floorBy()))
                .toMinutes()
            / 1440.0;
    assertThat(days).isCloseTo(6.49, within(0.01));
    TireReview sound = review(trips).tires().get(1);
    assertThat(sound.perDay()).isZero();
    assertThat(sound.fastPerDay()).isZero();
    assertThat(sound.floorBy()).isNull();
  }

  /** What was lost at once goes on no further: no day is told. */
  @Test
  void oneLossMeetsNoFloor() {
    Trips trips = dawns(withFloor());
    read(trips, "T1", 80, 80, 74, 74);
    for (String tire : List.of("T2", "T3", "T4")) {
      read(trips, tire, 80, 80, 80, 80);
    }
    TireReview tire = review(trips).tires().get(0);
    assertThat(tire.fit().kind()).isEqualTo(LossFit.Kind.ONCE);
    assertThat(tire.fit().from()).isEqualTo(1);
    assertThat(tire.lost() / PSI).isCloseTo(6, within(0.001));
    assertThat(tire.floorBy()).isNull();
  }

  /**
   * By now it is under its floor already: it met it by the last moment that is known, not before.
   */
  @Test
  void aTireUnderItsFloorHasMetIt() {
    Trips trips = dawns(withFloor());
    read(trips, "T1", 66, 63, 60, 57);
    for (String tire : List.of("T2", "T3", "T4")) {
      read(trips, tire, 80, 80, 80, 80);
    }
    Trip trip = trips.trip();
    Instant end = Forecasts.forecaster(trip).itinerary().visits().get(4).leave();
    assertThat(known(review(trips).tires().get(0).floorBy())).isEqualTo(end);
  }

  /** The spare that was put on at 80 psi lost nothing; what came off went with its readings. */
  @Test
  void anotherTireBeginsAnew() {
    Trips trips = dawns(RigBuilder.trailer().axles(2).spare());
    read(trips, "T1", 80, 74);
    trips.change("2027-06-02T05:55Z", 0, "T1", "S");
    trips.read("2027-06-02T05:57Z", "S", "70 psi");
    trips.read(DAWNS[2], "S", "70 psi").read(DAWNS[3], "S", "70 psi");
    TireReview tire = review(trips).tires().get(0);
    assertThat(tire.tire()).isEqualTo("S");
    assertThat(tire.all()).hasSize(3);
    assertThat(tire.cold()).hasSize(3);
    assertThat(tire.fit().kind()).isEqualTo(LossFit.Kind.SOUND);
    assertThat(tire.residuals()).allSatisfy(off -> assertThat(off).isCloseTo(0, within(1.0)));
  }

  /** Both gauges on one tire, in either order; the second two minutes later, or longer. */
  private static void both(Trips trips, String tire, boolean handFirst, String later) {
    String first = handFirst ? "hand" : "own";
    String second = handFirst ? "own" : "hand";
    trips.read(
        "2027-06-02T05:50Z", tire, handFirst ? "80 psi" : "82 psi", first, ReadingState.COLD);
    trips.read(later, tire, handFirst ? "82 psi" : "80 psi", second, ReadingState.COLD);
  }

  /**
   * By hand: gauges that repeat within 0.5 psi each show 2 psi apart on four tires, in whichever
   * order: √(0.5² + 0.5²)/√4 = 0.354 psi sure, and 2 is more than three of it. Two pairs tell
   * nothing.
   */
  @Test
  void twoGaugesAreHeldAgainstEachOther() {
    RigBuilder rig = RigBuilder.trailer().axles(2).ownGauge("0.5 psi");
    Trips trips = dawns(rig).readAll(DAWNS[0], "80 psi");
    both(trips, "T1", true, "2027-06-02T05:52Z");
    both(trips, "T2", true, "2027-06-02T06:20Z");
    both(trips, "T3", false, "2027-06-02T05:52Z");
    both(trips, "T4", false, "2027-06-02T05:52Z");
    List<TripReview.GaugePair> pairs = review(trips).gauges();
    assertThat(pairs).hasSize(1);
    TripReview.GaugePair pair = pairs.get(0);
    assertThat(pair.first()).isEqualTo("hand");
    assertThat(pair.second()).isEqualTo("own");
    assertThat(pair.pairs()).isEqualTo(4);
    assertThat(pair.pascals() / PSI).isCloseTo(2, within(0.001));
    assertThat(pair.sigma() / PSI).isCloseTo(0.3536, within(1e-4));
    assertThat(pair.differ()).isTrue();
    Trips few = dawns(rig).readAll(DAWNS[0], "80 psi");
    both(few, "T1", true, "2027-06-02T05:52Z");
    both(few, "T2", false, "2027-06-02T05:52Z");
    both(few, "T3", true, "2027-06-02T06:21Z"); // 31 minutes: not together any more
    TripReview.GaugePair two = review(few).gauges().get(0);
    assertThat(two.pairs()).isEqualTo(2);
    assertThat(two.pascals() / PSI).isCloseTo(2, within(0.001));
    assertThat(two.differ()).isFalse();
  }

  /** Three pairs tell; 1 psi apart, sure to 0.7071/√3 = 0.408, is under three of it. */
  @Test
  void gaugesAPsiApartDoNotDiffer() {
    double sigma = 0.7071 * PSI / Math.sqrt(3);
    assertThat(new TripReview.GaugePair("a", "b", PSI, sigma, 3).differ()).isFalse();
    assertThat(new TripReview.GaugePair("a", "b", -1.3 * PSI, sigma, 3).differ()).isTrue();
  }

  /**
   * By hand: T1 reads 80, 79, 81, 80 psi. One step leaves four squares of 1 psi, of a deviation of
   * 0.5 · √0.893 psi (see above) 4.48 at 94.7 psi absolute; two readings more than needed on its
   * side, of T1 and T3: √((2 + 4.48)/(2 + 2)) = 1.27 times as unsure. The other side is as sure as
   * the gauge.
   */
  @Test
  void aSideThatScattersIsLessSureTheOtherIsNot() {
    Trips trips = dawns();
    read(trips, "T1", 80, 79, 81, 80);
    for (String tire : List.of("T2", "T3", "T4")) {
      read(trips, tire, 80, 80, 80, 80);
    }
    List<TireReview> tires = review(trips).tires();
    double sure = tires.get(1).lostSigma();
    assertThat(tires.get(3).lostSigma()).isCloseTo(sure, within(1e-6));
    assertThat(tires.get(0).lostSigma() / sure).isCloseTo(1.273, within(0.01));
    assertThat(tires.get(2).lostSigma() / sure).isCloseTo(1.273, within(0.01));
  }

  /**
   * Only air let out of a warm tire is missing at the next dawn: not at dawn, not what is added.
   */
  @Test
  void letOutWhileWarmIsToldAndNothingElse() {
    Trips trips =
        dawns()
            .readAll(DAWNS[0], "80 psi")
            .adjust("2027-06-01T05:55Z", "T1", "76 psi")
            .adjust("2027-06-01T08:02Z", "T2", "95 psi")
            .adjust("2027-06-01T08:03Z", "T3", "80 psi");
    List<TireReview> tires = review(trips).tires();
    assertThat(tires.get(0).made()).hasSize(1);
    assertThat(tires.get(0).letOutWarm()).isEmpty();
    assertThat(tires.get(1).made()).hasSize(1);
    assertThat(tires.get(1).letOutWarm()).isEmpty();
    assertThat(tires.get(2).letOutWarm()).hasSize(1);
    assertThat(tires.get(2).sound()).isFalse();
  }

  /**
   * Read warm first, so that nobody knows how warm: at 50 of 80 psi it ran low whatever its warmth,
   * for cool it has less still (49 CFR 571.138 warns at 25 % under). At 80 nothing is told.
   */
  @Test
  void aTireThatWasReadWarmOnlyRanLowAllTheSame() {
    Trips trips = dawns();
    trips.read("2027-06-01T05:50Z", "T1", "50 psi", "hand", ReadingState.WARM);
    trips.read("2027-06-01T05:51Z", "T2", "80 psi", "hand", ReadingState.WARM);
    List<TireReview> tires = review(trips).tires();
    assertThat(tires).hasSize(2);
    assertThat(tires.get(0).cold()).isEmpty();
    assertThat(known(tires.get(0).ranLow()).settled() / PSI).isCloseTo(50, within(1e-6));
    assertThat(tires.get(1).ranLow()).isNull();
  }
}

package dawngauge.review;

import static dawngauge.testdata.StopBuilder.stop;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dawngauge.advice.Advice;
import dawngauge.ledger.ReadingsTrace;
import dawngauge.ledger.ReviewLines;
import dawngauge.planner.Planner;
import dawngauge.quantity.UnitSystem;
import dawngauge.settings.SettingsFile;
import dawngauge.testdata.Forecasts;
import dawngauge.testdata.RigBuilder;
import dawngauge.testdata.Trips;
import dawngauge.trip.ReadingState;
import dawngauge.trip.Trip;
import java.time.Duration;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;

/** Readings that were noted wrongly, and a gauge of another kind than the file says. */
class RecordingErrorsTest {

  private static final double PSI = 6894.757293168361; // NIST SP 811, 2008
  private static final String[] MORNINGS = {
    "2027-06-01T05:50Z", "2027-06-02T05:50Z", "2027-06-03T05:50Z", "2027-06-04T05:50Z"
  };

  /** Four mornings of steady air; heights in feet. */
  private static Trips mornings(int... feet) {
    Trips trips = Trips.of(RigBuilder.trailer().axles(2));
    for (int i = 0; i < 4; i++) {
      var stop = stop("s" + i).steady("60 °F").measured().elevation(feet[i] + " ft");
      trips.stop(i == 0 ? stop.leaves("2027-06-01T06:00Z") : stop.stays(Duration.ofHours(22)));
      if (i < 3) {
        trips.leg("120 mi", "60 mph");
      }
    }
    return trips.leg("60 mi", "60 mph").stop(stop("end").steady("60 °F").measured());
  }

  private static Trips level() {
    return mornings(0, 0, 0, 0);
  }

  /** Reads the four tires: the first two at 80 psi, the others at 60, but for what is given. */
  private static void read(Trips trips, int morning, String... figures) {
    for (int tire = 0; tire < 4; tire++) {
      String usual = tire < 2 ? "80 psi" : "60 psi";
      String figure = tire < figures.length ? figures[tire] : "";
      trips.read(MORNINGS[morning], "T" + (tire + 1), figure.isEmpty() ? usual : figure);
    }
  }

  private static TripReview review(Trip trip) {
    return TripReview.of(Forecasts.forecaster(trip));
  }

  private static String headline(Trip trip) {
    return ReviewLines.of(trip, review(trip), UnitSystem.US).headline();
  }

  @Test
  void barNotedAsPsiIsAWrongUnitAndNoLoss() {
    Trips trips = level();
    read(trips, 0);
    read(trips, 1, "5.5 psi"); // 80 psi are 5.52 bar
    read(trips, 2);
    read(trips, 3);
    TripReview review = review(trips.trip());
    assertThat(review.slips()).hasSize(1);
    assertThat(review.slips().get(0).kind()).isEqualTo(RecordingError.Kind.UNIT);
    assertThat(review.slips().get(0).expected() / PSI).isCloseTo(80, within(0.1));
    assertThat(review.tires()).allMatch(tire -> tire.fit().kind() == LossFit.Kind.SOUND);
    assertThat(headline(trips.trip()))
        .contains("was noted in a wrong unit once")
        .doesNotContain("t1l ran too low"); // those at 60 psi did
  }

  /** Nothing read later contradicts it: it may be flat, and the warning stays. */
  @Test
  void aLastReadingThatLooksLikeBarIsStillWarnedOf() {
    Trips trips = level();
    for (int morning = 0; morning < 3; morning++) {
      read(trips, morning);
    }
    read(trips, 3, "5.5 psi");
    assertThat(headline(trips.trip()))
        .contains("t1l ran too low")
        .contains("was noted in a wrong unit once");
    assertThat(ReviewLines.of(trips.trip(), review(trips.trip()), UnitSystem.US).findings())
        .anyMatch(text -> text.contains("the tire was flat"));
  }

  @Test
  void theFirstOneIsTheSlipWhereAllLaterOnesContradictIt() {
    Trips trips = level();
    read(trips, 0, "5.5 psi");
    read(trips, 1);
    read(trips, 2);
    read(trips, 3);
    TripReview review = review(trips.trip());
    assertThat(review.slips()).hasSize(1);
    assertThat(review.slips().get(0).check().first()).isTrue();
    assertThat(review.slips().get(0).expected() / PSI).isCloseTo(80, within(0.1));
    assertThat(review.tires().get(0).cold()).hasSize(3);
    assertThat(review.tires().get(0).residuals())
        .allSatisfy(off -> assertThat(off / PSI).isCloseTo(0, within(0.1)));
    // What a sound tire would have read begins with the first reading that counts.
    Planner planner = new Planner(SettingsFile.defaults(), List.of());
    Advice sound = planner.plan(trips.trip()).asSound().orElseThrow();
    List<ReadingsTrace.Dot> dots =
        ReadingsTrace.of(sound, review.tires().get(0), UnitSystem.US).dots();
    assertThat(dots.get(3).expected()).isCloseTo(80, within(0.5));
  }

  @Test
  void twoTiresNotedOneForTheOther() {
    Trips trips = level();
    read(trips, 0);
    read(trips, 1, "", "60 psi", "80 psi");
    read(trips, 2);
    read(trips, 3);
    TripReview review = review(trips.trip());
    assertThat(review.slips()).hasSize(2).allMatch(slip -> slip.kind() == RecordingError.Kind.TIRE);
    assertThat(review.tires()).allMatch(tire -> tire.fit().kind() == LossFit.Kind.SOUND);
    assertThat(headline(trips.trip())).contains("were noted one for the other once");
  }

  @Test
  void aReadingFarOffThatWasBackAtTheNextRoundIsNoLoss() {
    Trips trips = level();
    read(trips, 0);
    read(trips, 1, "71 psi");
    read(trips, 2);
    read(trips, 3);
    assertThat(review(trips.trip()).slips()).hasSize(1);
    assertThat(headline(trips.trip())).contains("was noted wrongly once");
  }

  @Test
  void aTireThatWentDownAndStaysDownIsNoSlip() {
    Trips trips = level();
    read(trips, 0);
    read(trips, 1, "71 psi");
    read(trips, 2, "71 psi");
    read(trips, 3, "71 psi");
    TripReview review = review(trips.trip());
    assertThat(review.slips()).isEmpty();
    assertThat(review.tires().get(0).lostAir()).isTrue();
  }

  /**
   * Two of four tires lose 6 psi in three days: the middle of all would be 3 psi low, and halve
   * both leaks. Nothing is taken off then.
   */
  @Test
  void whereHalfOfTheTiresLeakTheirMiddleIsNoMeasure() {
    Trips trips = level();
    read(trips, 0);
    read(trips, 1, "78 psi", "78 psi");
    read(trips, 2, "76 psi", "76 psi");
    read(trips, 3, "74 psi", "74 psi");
    TripReview review = review(trips.trip());
    assertThat(review.sharedTakenOff()).isFalse();
    for (int i = 0; i < 4; i++) {
      TireReview tire = review.tires().get(i);
      assertThat(tire.lostAir()).isEqualTo(i < 2);
      assertThat(tire.lost() / PSI).isCloseTo(i < 2 ? 6 : 0, within(0.3));
    }
    assertThat(ReviewLines.of(trips.trip(), review, UnitSystem.US).findings())
        .noneMatch(text -> text.contains("No tire leaks by it"));
  }

  /**
   * By hand: at 0, 7,000, 1,000 and 6,000 ft the air is 14.70, 11.34, 14.17 and 11.78 psi (U.S.
   * Standard Atmosphere 1976); an open gauge on 80 psi filled at sea level shows 80, 83.36, 80.53
   * and 82.92. A sealed one shows 80 on each: 3.36 less at 7,000 ft.
   */
  @Test
  void aSealedGaugeThatIsNotedAsOpenFollowsTheHeight() {
    Trips trips = mornings(0, 7000, 1000, 6000);
    for (int morning = 0; morning < 4; morning++) {
      read(trips, morning);
    }
    TripReview review = review(trips.trip());
    GaugeReferenceMismatch reference = review.reference();
    if (reference == null) {
      throw new AssertionError("not told");
    }
    assertThat(reference.sealed()).isTrue();
    assertThat(reference.most() / PSI).isCloseTo(3.36, within(0.02));
    assertThat(review.tires()).allMatch(tire -> tire.fit().kind() == LossFit.Kind.SOUND);
    assertThat(headline(trips.trip())).contains("seems to be of another kind");
  }

  @Test
  void anOpenGaugeIsNotTakenForASealedOne() {
    Trips trips = mornings(0, 7000, 1000, 6000);
    double[] more = {0, 3.36, 0.53, 2.92};
    for (int morning = 0; morning < 4; morning++) {
      String high = String.format(Locale.ROOT, "%.2f psi", 80 + more[morning]);
      String low = String.format(Locale.ROOT, "%.2f psi", 60 + more[morning]);
      read(trips, morning, high, high, low, low);
    }
    assertThat(review(trips.trip()).reference()).isNull();
  }

  /**
   * Noted in bar, then filled to 80 psi: what the slip made is not undone by the next reading, and
   * the tire lost nothing all the same.
   */
  @Test
  void airSetAfterASlipDoesNotMakeItALoss() {
    Trips trips = level();
    read(trips, 0);
    read(trips, 1, "5.5 psi");
    trips.adjust("2027-06-02T05:52Z", "T1", "80 psi");
    read(trips, 2);
    read(trips, 3);
    TripReview review = review(trips.trip());
    assertThat(review.slips()).hasSize(1);
    TireReview tire = review.tires().get(0);
    assertThat(tire.fit().kind()).isEqualTo(LossFit.Kind.SOUND);
    assertThat(tire.cold()).hasSize(3);
    assertThat(tire.residuals()).allSatisfy(off -> assertThat(off / PSI).isCloseTo(0, within(0.1)));
  }

  /** 71 and 69 psi are neither what the other should read: each was noted wrongly by itself. */
  @Test
  void twoTiresFarOffAreNotTakenForEachOther() {
    Trips trips = level();
    read(trips, 0);
    read(trips, 1, "71 psi", "", "69 psi");
    read(trips, 2);
    read(trips, 3);
    assertThat(review(trips.trip()).slips())
        .hasSize(2)
        .allSatisfy(
            slip -> {
              assertThat(slip.kind()).isEqualTo(RecordingError.Kind.ALONE);
              assertThat(slip.other()).isNull();
            });
  }

  /** One for the other, each half a psi off by the gauge's repeatability. */
  @Test
  void twoTiresNotedOneForTheOtherWithinTheGauge() {
    Trips trips = level();
    read(trips, 0);
    read(trips, 1, "", "60.5 psi", "79.5 psi");
    read(trips, 2);
    read(trips, 3);
    assertThat(review(trips.trip()).slips())
        .hasSize(2)
        .allMatch(slip -> slip.kind() == RecordingError.Kind.TIRE);
  }

  /**
   * Crews round: 5.36 bar are 77.7 psi, 2.3 psi under 80. 35 psi noted as 2.3 bar are 33.4, 1.6 psi
   * under: more than 3 %, but within 2.5 deviations of a difference of two readings (0.5 psi each,
   * and 2 K of the air at 49.7 psi absolute, 0.34): 2.5 · √2 · 0.61 = 2.1 psi.
   */
  @Test
  void aRoundedFigureInBarIsAWrongUnitToo() {
    Trips trips = level();
    read(trips, 0, "", "35 psi");
    read(trips, 1, "5.36 psi", "2.3 psi");
    read(trips, 2, "", "35 psi");
    read(trips, 3, "", "35 psi");
    List<RecordingError> slips = review(trips.trip()).slips();
    assertThat(slips).hasSize(2).allMatch(slip -> slip.kind() == RecordingError.Kind.UNIT);
    assertThat(slips.get(0).expected() / PSI).isCloseTo(80, within(0.1));
    assertThat(slips.get(1).expected() / PSI).isCloseTo(35, within(0.1));
  }

  /** The same climb read by a gauge that is noted as sealed, but is open. */
  private static Trips climb(String gauge, double... more) {
    return climb(mornings(0, 7000, 1000, 6000), gauge, more);
  }

  private static Trips climb(Trips trips, String gauge, double... more) {
    for (int morning = 0; morning < more.length; morning++) {
      for (int tire = 0; tire < 4; tire++) {
        String figure =
            String.format(Locale.ROOT, "%.2f psi", (tire < 2 ? 80 : 60) + more[morning]);
        trips.read(MORNINGS[morning], "T" + (tire + 1), figure, gauge, ReadingState.COLD);
      }
    }
    return trips;
  }

  /**
   * Whichever of both it is, what it makes is taken off what each tire lost, and off the shared.
   */
  @Test
  void whatAWrongReferenceMakesIsTakenOffEveryTire() {
    TripReview open = review(climb("sealed", 0, 3.36, 0.53, 2.92).trip());
    GaugeReferenceMismatch reference = Forecasts.known(open.reference());
    assertThat(reference.sealed()).isFalse();
    assertThat(reference.gauge()).isEqualTo("sealed");
    assertThat(reference.rounds()).isEqualTo(4);
    assertThat(reference.most() / PSI).isCloseTo(3.36, within(0.02));
    assertThat(reference.around() / PSI).isCloseTo(14.696, within(0.001));
    TripReview sealed = review(climb("hand", 0, 0, 0, 0).trip());
    for (TripReview review : List.of(open, sealed)) {
      assertThat(review.shared())
          .hasSize(4)
          .allSatisfy(one -> assertThat(one.pascals() / PSI).isCloseTo(0, within(0.15)))
          .noneMatch(TripReview.Shared::isSomething);
    }
  }

  /**
   * By hand: three rounds at 0, 7,000 and 1,000 ft, where the air is 0, 3.36 and 0.53 psi less,
   * 1.30 in the middle: squares 6.52. A round is sure to 0.5 psi by the gauge and 94.7 · 2/288.7 =
   * 0.66 by the air, together 0.82, so the slope to 0.82/√6.52 = 0.32. A sealed gauge makes 1,
   * three deviations; half as much is 1.5, which tells nothing.
   *
   * <p>Twice to 4,800 ft, 2.38 psi less, squares 5.66 and 0.35: twice as much as a sealed gauge
   * makes is 2.9 deviations too much, where 2.5 are allowed.
   */
  @Test
  void aGaugeThatFollowsTheHeightByHalfOrTwiceAsMuchIsNotTold() {
    assertThat(Forecasts.known(review(climb("hand", 0, 0, 0).trip()).reference()).rounds())
        .isEqualTo(3);
    assertThat(review(climb("hand", 0, 0).trip()).reference()).isNull();
    assertThat(review(climb("hand", 0, 1.68, 0.27).trip()).reference()).isNull();
    Trips twice = climb(mornings(0, 4800, 0, 4800), "hand", 0, -2.38, 0, -2.38);
    assertThat(review(twice.trip()).slips()).isEmpty();
    assertThat(review(twice.trip()).reference()).isNull();
  }
}

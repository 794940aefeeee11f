package dawngauge.review;

import static org.assertj.core.api.Assertions.assertThat;

import dawngauge.ledger.ReviewLines;
import dawngauge.quantity.UnitSystem;
import dawngauge.review.SimulatedTrips.Cause;
import dawngauge.review.SimulatedTrips.Simulated;
import dawngauge.review.SimulatedTrips.World;
import dawngauge.testdata.Forecasts;
import dawngauge.trip.WheelPosition;
import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Test;

/**
 * The review on invented trips with known causes, seeded: how often it is right, wrong, or says
 * that it cannot tell. The same trips come with {@code -Dsimulated.trips=…} in other numbers.
 */
class SimulatedReviewTest {

  private static final double PSI = 6894.757293168361; // NIST SP 811, 2008
  private static final double NINETY = 1.6449;
  private static final int TRIPS = Integer.getInteger("simulated.trips", 2000);

  /** What came of many trips. */
  private static final class Tally {
    private final Map<Cause, Map<LossFit.Kind, Integer>> told = new EnumMap<>(Cause.class);
    private int soundTrips;
    private int alarms;
    private double covered;
    private int counted;
    private double error;
    private int losing;
    private int leftUneven;
    private int rightUneven;

    void add(Simulated trip, TripReview review) {
      TireReview first = review.tires().get(0);
      for (SideScatter uneven : review.uneven()) {
        leftUneven += uneven.left() ? 1 : 0;
        rightUneven += uneven.left() ? 0 : 1;
      }
      told.computeIfAbsent(trip.cause(), key -> new EnumMap<>(LossFit.Kind.class))
          .merge(first.fit().kind(), 1, Integer::sum);
      boolean others = review.tires().stream().skip(1).anyMatch(TireReview::lostAir);
      if (trip.cause() == Cause.SOUND) {
        soundTrips++;
        alarms += others || first.lostAir() ? 1 : 0;
      }
      int tires = 0;
      int in = 0;
      for (int i = 0; i < review.tires().size(); i++) {
        TireReview tire = review.tires().get(i);
        double truth = i == 0 ? trip.lostPsi() : 0;
        if (tire.cold().size() > 1 && (i > 0 || trip.cause() != Cause.ONCE)) {
          tires++;
          in += Math.abs(tire.lost() / PSI - truth) <= NINETY * tire.lostSigma() / PSI ? 1 : 0;
        }
      }
      covered += (double) in / tires;
      counted++;
      if (trip.cause() == Cause.STEADY && first.lostAir()) {
        error += Math.abs(first.lost() / PSI - trip.lostPsi());
        losing++;
      }
    }

    int count(Cause cause, LossFit.Kind kind) {
      return told.getOrDefault(cause, Map.of()).getOrDefault(kind, 0);
    }

    int of(Cause cause) {
      return told.getOrDefault(cause, Map.of()).values().stream().mapToInt(n -> n).sum();
    }

    @Override
    public String toString() {
      return String.format(
          Locale.ROOT,
          "%s; sound trips %d, with a loss shown %d (%.1f %%); coverage of 90 %% ranges %.1f %%;"
              + " steady losses off by %.2f psi on average; told to read up and down: left %d, right"
              + " %d of %d",
          told,
          soundTrips,
          alarms,
          100.0 * alarms / soundTrips,
          100 * covered / counted,
          error / losing,
          leftUneven,
          rightUneven,
          counted);
    }
  }

  /**
   * Two tires noted one for the other, or one in bar: found in nearly every trip, taken out, and
   * the tires are no more often thought to leak than else (2 % and three counting errors of 250).
   */
  @Test
  void readingsNotedWronglyAreTakenOut() {
    SimulatedTrips source = new SimulatedTrips(20270602);
    int trips = TRIPS / 4;
    int found = 0;
    int other = 0;
    Tally tally = new Tally();
    for (int i = 0; i < trips; i++) {
      Simulated trip = source.next(World.SLIPS);
      TripReview review = TripReview.of(Forecasts.forecaster(trip.trip()));
      tally.add(trip, review);
      long right =
          review.slips().stream().filter(slip -> slip.position().equals(second(trip))).count();
      found += right > 0 ? 1 : 0;
      other += review.slips().size() > 2 ? 1 : 0;
    }
    System.out.println("SLIPS: found " + found + " of " + trips + ", more " + other + "; " + tally);
    assertThat((double) found / trips).isGreaterThan(0.85);
    assertThat(other).isLessThanOrEqualTo(trips / 100);
    assertThat((double) tally.alarms / tally.soundTrips).isLessThanOrEqualTo(0.05);
  }

  private static WheelPosition second(Simulated trip) {
    return trip.trip().rig().positions().get(1);
  }

  /** A sealed gauge is told where it can be; no sealed gauge is seen where there is none. */
  @Test
  void aSealedGaugeIsTold() {
    SimulatedTrips source = new SimulatedTrips(20270603);
    int trips = TRIPS / 4;
    int told = 0;
    int high = 0;
    int never = 0;
    Tally tally = new Tally();
    for (int i = 0; i < trips; i++) {
      Simulated trip = source.next(World.SEALED);
      TripReview review = TripReview.of(Forecasts.forecaster(trip.trip()));
      tally.add(trip, review);
      boolean climbs = trip.climbFeet() > 4500;
      high += climbs ? 1 : 0;
      told += climbs && review.reference() != null ? 1 : 0;
      Simulated open = source.next(World.AS_ASSUMED);
      never += TripReview.of(Forecasts.forecaster(open.trip())).reference() == null ? 0 : 1;
    }
    System.out.println(
        "SEALED: told " + told + " of " + high + ", without one " + never + "; " + tally);
    assertThat((double) told / high).isGreaterThan(0.3);
    assertThat((double) never / trips).isLessThanOrEqualTo(0.01);
    assertThat((double) tally.alarms / tally.soundTrips).isLessThanOrEqualTo(0.05);
  }

  /** The spare that was put on is followed from there; what came off tells nothing of it. */
  @Test
  void aSpareThatIsPutOnIsNoLoss() {
    Tally tally = tally(World.SPARE, TRIPS / 4);
    assertThat((double) tally.alarms / tally.soundTrips).isLessThanOrEqualTo(0.05);
    assertThat(tally.covered / tally.counted).isBetween(0.85, 0.95);
  }

  /** What a crew is told of such a side: why, and what to do. */
  @Test
  void aSideThatReadsUpAndDownIsTold() {
    SimulatedTrips source = new SimulatedTrips(20270601);
    Simulated trip = source.next(World.SUN);
    TripReview review = TripReview.of(Forecasts.forecaster(trip.trip()));
    while (review.uneven().isEmpty()) {
      trip = source.next(World.SUN);
      review = TripReview.of(Forecasts.forecaster(trip.trip()));
    }
    ReviewLines lines = ReviewLines.of(trip.trip(), review, UnitSystem.US);
    assertThat(lines.headline()).contains("the left tires read up and down");
    assertThat(lines.findings().toString())
        .contains("Cold readings of the left tires vary by", "sun on them");
    assertThat(lines.next().toString()).contains("Gauge before the sun reaches the tires");
  }

  private static Tally tally(World world, int trips) {
    SimulatedTrips source = new SimulatedTrips(20270601);
    Tally tally = new Tally();
    for (int i = 0; i < trips; i++) {
      Simulated trip = source.next(world);
      tally.add(trip, TripReview.of(Forecasts.forecaster(trip.trip())));
    }
    System.out.println(world + ": " + tally);
    return tally;
  }

  /**
   * At most 2 % of the trips whose tires are all sound show a loss (of about 1,000 such trips the
   * counting error is 0.4 %). Coverage of the 90 % ranges 88 to 92 %, averaged trip by trip. A side
   * that reads up and down is told in 3 % of the trips at most: by the gauge once in 1,000 sides,
   * and by tires that cool unlike.
   */
  @Test
  void withErrorsAsAssumed() {
    Tally tally = tally(World.AS_ASSUMED, TRIPS);
    assertThat((double) tally.alarms / tally.soundTrips).isLessThanOrEqualTo(0.02);
    assertThat(tally.covered / tally.counted).isBetween(0.88, 0.92);
    int wrong =
        tally.count(Cause.STEADY, LossFit.Kind.ONCE) + tally.count(Cause.ONCE, LossFit.Kind.STEADY);
    assertThat((double) wrong / (tally.of(Cause.STEADY) + tally.of(Cause.ONCE)))
        .as("named wrongly")
        .isLessThanOrEqualTo(0.03);
    assertThat(tally.leftUneven + tally.rightUneven).isLessThanOrEqualTo(3 * TRIPS / 100);
    int missed = tally.count(Cause.STEADY, LossFit.Kind.SOUND);
    assertThat((double) missed / tally.of(Cause.STEADY)).as("leaks missed").isLessThan(0.25);
  }

  @Test
  void withHeavierErrorsTheRangesStillHoldFourOfFive() {
    Tally tally = tally(World.HARDER, TRIPS / 4);
    assertThat(tally.covered / tally.counted).isGreaterThan(0.8);
  }

  /**
   * Noted as cold although the sun was on the left side: losses of nothing in 5 % of the sound
   * trips at most (32 % without regard to how far a side scatters), with two counting errors of 265
   * trips on top; the ranges hold 85 % at least, and the side is told in more than half of the
   * trips.
   */
  @Test
  void sunThatWasNotedAsColdIsNoLoss() {
    Tally sun = tally(World.SUN, TRIPS / 4);
    double share = 0.05;
    double error = Math.sqrt(share * (1 - share) / sun.soundTrips);
    assertThat((double) sun.alarms / sun.soundTrips).isLessThanOrEqualTo(share + 2 * error);
    assertThat(sun.covered / sun.counted).isGreaterThanOrEqualTo(0.85);
    assertThat((double) sun.leftUneven / sun.counted).isGreaterThan(0.5);
    assertThat((double) sun.rightUneven / sun.counted).isLessThan(0.05);
  }
}

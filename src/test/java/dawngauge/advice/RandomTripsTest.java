package dawngauge.advice;

import static org.assertj.core.api.Assertions.assertThat;

import dawngauge.forecast.LegLow;
import dawngauge.forecast.TireAtStop;
import dawngauge.forecast.TireSnapshot;
import dawngauge.quantity.UnitSystem;
import dawngauge.trip.Air;
import dawngauge.trip.ReadingState;
import dawngauge.trip.WheelSlot;
import java.util.Locale;
import java.util.OptionalInt;
import java.util.Random;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** What holds for the advice on every trip, over seeded random small ones. */
class RandomTripsTest {

  private static final int TRIPS = 200;

  /** A margin so small is none. */
  private static final double ROUNDED = 1e-9;

  private final Random random = new Random(20270406);

  private int figures;
  private int added;
  private int timedOnArrival;
  private int letOut;
  private int held;
  private int margins;
  private int enough;
  private int asCertified;

  private String text(double least, double most, String unit) {
    double number = least + random.nextDouble() * (most - least);
    return String.format(Locale.ROOT, "%.1f %s", number, unit);
  }

  private boolean oneIn(int count) {
    return random.nextInt(count) == 0;
  }

  private Scenario next() {
    Scenario scenario = Scenario.from("Start", text(-10, 90, "°F")).elevation(text(0, 8000, "ft"));
    boolean dual = oneIn(3);
    if (dual) {
      scenario.dual().label(oneIn(2) ? "80 psi" : "65 psi");
    } else if (oneIn(2)) {
      scenario.label("65 psi").weighing(text(2000, 6500, "lb"));
    } else {
      scenario.weighing(oneIn(8) ? null : text(2000, 7500, "lb"));
    }
    if (oneIn(10)) {
      scenario.label(null);
    }
    if (oneIn(12)) {
      scenario.rated(null, null);
    }
    if (oneIn(4)) {
      scenario.maxCold("95 psi");
    }
    if (oneIn(6)) {
      scenario.compressor(text(60, 120, "psi"));
    }
    for (WheelSlot slot : WheelSlot.of(dual)) {
      if (!oneIn(15)) {
        scenario.read(slot, 0, text(52, 90, "psi"), ReadingState.COLD);
      }
      if (oneIn(12)) {
        scenario.leak(slot, text(1, 10, "psi"));
      }
    }
    maybeAir(scenario);
    int stops = 3 + random.nextInt(5);
    double clock = 0;
    for (int i = 0; i < stops; i++) {
      double stay = oneIn(3) ? 8 + random.nextDouble() * 12 : random.nextDouble() * 4;
      double drive = 0.3 + random.nextDouble() * 5;
      clock += drive;
      scenario
          .to("Stop " + i, oneIn(8) ? 0 : stay, oneIn(10) ? null : text(-20, 105, "°F"))
          .drive(Math.round(drive * 100) / 100.0)
          .top(text(45, 80, "mph"))
          .elevation(oneIn(15) ? null : text(0, 9000, "ft"));
      if (oneIn(4)) {
        WheelSlot slot = WheelSlot.of(dual).get(0);
        scenario.read(slot, clock + 0.05, text(50, 95, "psi"), ReadingState.WARM);
      }
      if (oneIn(5)) {
        scenario.load("animals", text(-800, 2000, "lb"), oneIn(2));
      }
      maybeAir(scenario);
      clock += stay;
    }
    if (oneIn(3)) {
      scenario.gaugeStep("0.1 bar");
    }
    return scenario;
  }

  private void maybeAir(Scenario scenario) {
    if (oneIn(3)) {
      scenario.air();
    } else if (oneIn(4)) {
      scenario.airUpTo(text(45, 110, "psi"));
    }
  }

  @Test
  void holdsForEveryTrip() {
    for (int i = 0; i < TRIPS; i++) {
      Scenario scenario = next();
      Advice advice = scenario.advise();
      for (int stop = 0; stop < advice.stops().size(); stop++) {
        check(advice.stops().get(stop));
        for (TireAdvice tire : advice.stops().get(stop).tires()) {
          check(tire, Lookahead.airAt(scenario.forecaster(), stop));
        }
      }
    }
    // The trips are of all kinds, so the checks looked at something.
    assertThat(figures).isGreaterThan(200);
    assertThat(added).isGreaterThan(100);
    assertThat(timedOnArrival).isGreaterThan(30);
    assertThat(letOut).isGreaterThan(20);
    assertThat(held).isGreaterThan(100);
    assertThat(enough).isGreaterThan(1000);
    assertThat(margins - enough).isGreaterThan(100);
    assertThat(asCertified).isGreaterThan(100);
  }

  @Test
  void whatTheAirReachesAgreesWithTheAdvice() {
    int looked = 0;
    int stopped = 0;
    int held = 0;
    for (int i = 0; i < TRIPS / 4; i++) {
      Scenario scenario = next();
      ReachRules rules = new ReachRules(scenario.forecaster(), scenario.advise());
      rules.check();
      looked += rules.figures();
      stopped += rules.stopped();
      held += rules.held();
    }
    assertThat(looked).isGreaterThan(300);
    assertThat(held).isGreaterThan(50);
    assertThat(stopped).isGreaterThan(100);
  }

  @Test
  void holdsWhereThePlanIsFollowedToo() {
    for (int i = 0; i < TRIPS; i++) {
      Scenario scenario = next();
      Advice advice = scenario.follow();
      for (int stop = 0; stop < advice.stops().size(); stop++) {
        check(advice.stops().get(stop));
        for (TireAdvice tire : advice.stops().get(stop).tires()) {
          check(tire, Lookahead.airAt(scenario.forecaster(), stop));
        }
      }
    }
    assertThat(added).isGreaterThan(100);
    assertThat(letOut).isGreaterThan(20);
  }

  /**
   * Plans on the forecast itself: what they set may be set, it keeps the limits unless a clash is
   * told, and no set of one stop fewer that is tried on the forecast does for trips of up to one
   * stop.
   */
  @Test
  void plansKeepWhatTheyPromise() {
    int[] sizes = new int[9];
    int clashes = 0;
    int mornings = 0;
    for (int i = 0; i < TRIPS; i++) {
      Scenario scenario = next();
      Adjustment adjustment = scenario.adjust();
      PlanTrial trial = new PlanTrial(scenario.forecaster(), adjustment.plan());
      trial.everySettingIsAllowed();
      if (adjustment.plan().clashes().isEmpty()) {
        trial.limitsAreKept();
        trial.noSmallerSetDoes();
        OptionalInt habit = trial.eachMorning();
        if (habit.isPresent()) {
          assertThat(adjustment.outcome().stops()).isLessThanOrEqualTo(habit.getAsInt());
          mornings++;
        }
        sizes[adjustment.plan().stops().size()]++;
      } else {
        boolean byLoad =
            adjustment.plan().clashes().stream()
                .allMatch(clash -> clash.limit() == AdjustmentPlan.Limit.LOAD);
        if (!byLoad) {
          trial.noOneFillDoes();
        }
        clashes++;
      }
      adjustment.plan().clashes().forEach(clash -> readable(clash.text().in(UnitSystem.US)));
      readable(adjustment.plan().why().in(UnitSystem.SI));
    }
    assertThat(sizes[0]).isGreaterThan(10);
    assertThat(sizes[1]).isGreaterThan(10);
    assertThat(sizes[2]).isGreaterThan(3);
    assertThat(clashes).isGreaterThan(10);
    assertThat(mornings).isGreaterThan(10);
  }

  private static void check(StopAdvice stop) {
    Mark strongest = Mark.CLEAR;
    for (TireAdvice tire : stop.tires()) {
      strongest = tire.mark().compareTo(strongest) > 0 ? tire.mark() : strongest;
    }
    assertThat(stop.mark()).isEqualTo(strongest);
    for (OfferAdvice offer : stop.offers()) {
      offer.reasons().forEach(reason -> readable(reason.text().in(UnitSystem.US)));
      offer.reasons().forEach(reason -> readable(reason.text().in(UnitSystem.SI)));
    }
  }

  private static boolean leavesIt(Reason reason) {
    return reason.todo().in(UnitSystem.US).contains("leave it");
  }

  private void check(TireAdvice tire, @Nullable Air air) {
    for (Reason reason : tire.reasons()) {
      readable(reason.text().in(UnitSystem.US));
      readable(reason.text().in(UnitSystem.SI));
      assertThat(tire.mark()).isGreaterThanOrEqualTo(reason.mark());
      held += reason.mark() == Mark.HOLD ? 1 : 0;
    }
    SetFigure set = tire.set();
    TireAtStop at = tire.tire();
    TireSnapshot check = at.check();
    marginAgreesWithTheFloor(at);
    asCertifiedHasNoMarkOfLoad(tire);
    assertThat(tire.reasons().stream().anyMatch(reason -> reason.mark() == Mark.ADJUST))
        .isEqualTo(set != null);
    // Nobody is told to set a tire and to leave it alone.
    assertThat(set != null && tire.reasons().stream().anyMatch(RandomTripsTest::leavesIt))
        .isFalse();
    if (set == null || check == null) {
      return;
    }
    figures++;
    // No figure of a cold tire is over the limit; a warm one settles no higher than can be told.
    assertThat(set.settled().pascals() > PlanTrial.highest(at, check, set.warm()) + 2).isFalse();
    assertThat(!set.warm() && set.figure().pascals() > at.limits().ceiling() + 2).isFalse();
    TimedFigures timed = tire.timed();
    assertThat(timed).isNotNull();
    SetFigure onArrival = timed == null ? null : timed.onArrival();
    if (onArrival != null && at.arrival() != null) {
      timedOnArrival++;
      assertThat(onArrival.figure().pascals())
          .as("nobody is asked to let air out on arrival")
          .isGreaterThan(at.arrival().reading());
    }
    if (set.adds()) {
      added++;
      double reach = air == null ? 0 : Lookahead.reach(air);
      assertThat(set.figure().pascals()).isLessThanOrEqualTo(reach + 2);
      assertThat(set.figure().pascals()).isGreaterThan(check.reading());
    } else {
      letOut++;
      assertThat(at.cold()).isTrue();
      assertThat(set.warm()).isFalse();
      assertThat(set.figure().pascals()).isLessThan(check.reading());
    }
  }

  /** The margin is at or above zero just where the judged pressure is at or above the floor. */
  private void marginAgreesWithTheFloor(TireAtStop at) {
    TireSnapshot leaving = at.leaving();
    double margin = at.margin();
    double floor = at.limits().floor();
    if (leaving == null || Double.isNaN(margin)) {
      return;
    }
    margins++;
    if (Double.isNaN(floor)) {
      assertThat(margin).as("no pressure carries it").isLessThan(ROUNDED);
    } else if (leaving.judged() >= floor) {
      assertThat(margin).isGreaterThan(-ROUNDED);
      enough++;
    } else {
      assertThat(margin).isLessThan(ROUNDED);
    }
  }

  /**
   * A tire as certified here and on the leg ahead, all that is set here counted, is neither held
   * nor gauged again for its load, but for what is further on.
   */
  private void asCertifiedHasNoMarkOfLoad(TireAdvice tire) {
    TireAtStop at = tire.tire();
    LegLow low = at.low();
    boolean certified = at.leavingChance().asCertified();
    if (!certified || (low != null && !low.chance().asCertified())) {
      return;
    }
    asCertified++;
    for (Reason reason : tire.reasons()) {
      String text = reason.text().in(UnitSystem.US);
      boolean further = text.contains("find air before") || text.contains("leak");
      if (reason.mark() != Mark.ADJUST && !further) {
        assertThat(text)
            .doesNotContain("that its load needs more", "cannot be shown", "air is no cure");
      }
    }
  }

  private static void readable(String text) {
    assertThat(text).isNotBlank().doesNotContain("NaN", "null", "{", "}", "Infinity", "  ");
    assertThat(text.length()).isLessThan(420);
  }
}

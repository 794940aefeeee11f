package dawngauge.rules;

import static dawngauge.trip.Hauls.axle;
import static dawngauge.trip.Hauls.change;
import static dawngauge.trip.Hauls.hitch;
import static dawngauge.trip.Hauls.leg;
import static dawngauge.trip.Hauls.loading;
import static dawngauge.trip.Hauls.platform;
import static dawngauge.trip.Hauls.stop;
import static dawngauge.trip.Hauls.ticket;
import static dawngauge.trip.Hauls.vehicle;
import static dawngauge.trip.Hauls.wheels;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import dawngauge.quantity.Mass;
import dawngauge.quantity.Unit;
import dawngauge.trip.AxleRef;
import dawngauge.trip.Hauls;
import dawngauge.trip.Hitch;
import dawngauge.trip.LoadChange;
import dawngauge.trip.LoadChange.Source;
import dawngauge.trip.Rig;
import dawngauge.trip.ScaleTicket;
import dawngauge.trip.Stop;
import dawngauge.trip.Trip;
import dawngauge.trip.Vehicle;
import dawngauge.trip.WheelPosition;
import dawngauge.trip.WheelSlot;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * What each tire carries, in pounds, summed by hand: the likely load, its spread, and the heaviest
 * that the weighing leaves open. The 10 % of a group, the 52.5 % of a side, the load of an axle
 * that was not weighed and the spreads are inferred, no source: here they are held, not proven.
 */
class LoadsTest {
  private static final AxleRef FRONT = new AxleRef("truck", 1);
  private static final AxleRef REAR = new AxleRef("truck", 2);
  private static final AxleRef FIRST = new AxleRef("trailer", 1);
  private static final AxleRef SECOND = new AxleRef("trailer", 2);

  @Test
  void wheelScaleBeforeAll() {
    Loads loads =
        loads(
            rig(
                hitch("1500 lb", 1),
                wheels(FIRST, "3300 lb", "2700 lb", platform("5900 lb", FIRST))));
    weighs(loads, 0, FIRST, 6000, 6000, Loads.Basis.WHEEL); // 3300 + 2700
    carries(loads, 0, FIRST, WheelSlot.LEFT, 3300);
    carries(loads, 0, FIRST, WheelSlot.RIGHT, 2700);
    Loads.TireLoad left = loads.tire(0, new WheelPosition(FIRST, WheelSlot.LEFT));
    assertThat(left.sideKnown()).isTrue();
    assertThat(left.side()).isCloseTo(0.55, within(1e-12)); // 3300 / 6000
  }

  /** Each side weighed: the scale's 1 % alone, and nothing heavier is left open. */
  @Test
  void wheelsAreAsSureAsTheScale() {
    Loads loads = loads(rig(hitch("1500 lb", 1), wheels(FIRST, "3300 lb", "2700 lb")));
    spread(loads, 0, FIRST, WheelSlot.LEFT, 33, 3300);
    spread(loads, 0, FIRST, WheelSlot.RIGHT, 27, 2700);
  }

  @Test
  void axleWeighedAloneAndUnknownSides() {
    Loads loads = loads(rig(hitch("1500 lb", 1), ticket(true, platform("5600 lb", FIRST))));
    weighs(loads, 0, FIRST, 5600, 5600, Loads.Basis.AXLE);
    for (WheelSlot slot : WheelSlot.of(false)) {
      carries(loads, 0, FIRST, slot, 2800);
      // A side is sure to 1.25 points of the axle, 2.5 % of a tire's load; with the scale's 1 %
      // √(2.5² + 1²) = 2.693 % of 2800. Either may be the heavy one: 5600 × 0.525.
      spread(loads, 0, FIRST, slot, 2800 * 0.02692582, 2940);
    }
    assertThat(loads.tire(0, new WheelPosition(FIRST, WheelSlot.LEFT)).sideKnown()).isFalse();
  }

  @Test
  void groupIsSharedEquallyWithTenAndFivePercentLeftOpen() {
    Loads loads =
        loads(rig(hitch("1500 lb", 1), ticket(true, platform("11000 lb", FIRST, SECOND))));
    for (AxleRef ref : List.of(FIRST, SECOND)) {
      // 11000 / 2 = 5500; × 1.10 = 6050
      weighs(loads, 0, ref, 5500, 6050, Loads.Basis.GROUP);
      carries(loads, 0, ref, WheelSlot.LEFT, 2750);
      // √(5² + 2.5² + 1²) = 5.679 % of 2750; 2750 × 1.10 × 1.05 = 3176.25
      spread(loads, 0, ref, WheelSlot.LEFT, 2750 * 0.05678908, 3176.25);
    }
  }

  @Test
  void aPlatformOfItsOwnBeforeTheGroupWhereverItStandsOnTheTicket() {
    for (boolean groupFirst : new boolean[] {true, false}) {
      ScaleTicket.Platform group = platform("11000 lb", FIRST, SECOND);
      ScaleTicket.Platform alone = platform("6200 lb", FIRST);
      Loads loads =
          loads(
              rig(
                  hitch("1500 lb", 1),
                  groupFirst ? ticket(true, group, alone) : ticket(true, alone, group)));
      weighs(loads, 0, FIRST, 6200, 6200, Loads.Basis.AXLE);
      weighs(loads, 0, SECOND, 5500, 6050, Loads.Basis.GROUP);
    }
  }

  /**
   * Not weighed: N(80 %, 12 %) of the GAWR at the fullest point of the trip, cut at it. Mean 80 −
   * 12·φ(5/3)/Φ(5/3) = 78.746 %, σ 10.833 % (Python; Johnson, Kotz, Balakrishnan 1994, 13.10).
   */
  @Test
  void notWeighedIsLikelyUnderItsRating() {
    Loads loads =
        loads(
            rig(hitch("1500 lb", 1)),
            change("1000 lb", Source.WEIGHED, false, null, Map.of(SECOND, "100 %")));
    weighs(loads, 0, FIRST, 5512.2454, 7000, Loads.Basis.NOT_WEIGHED); // 7000 × 0.78746
    carries(loads, 0, FIRST, WheelSlot.RIGHT, 2756.1227);
    // 3500 × 0.10833; no side surcharge on top of the even share of the GAWR
    spread(loads, 0, FIRST, WheelSlot.RIGHT, 379.1578, 3500);
    Loads.AxleLoad front = loads.axle(1, FRONT); // neither weighed nor rated
    assertThat(front.basis()).isEqualTo(Loads.Basis.UNKNOWN);
    assertThat(front.kilograms()).isNaN();
    assertThat(loads.tire(1, new WheelPosition(FRONT, WheelSlot.LEFT)).kilograms()).isNaN();
  }

  /**
   * 1000 lb come on at the second stop, which is the fullest: before, middle and cut are 1000 lb
   * lower, N(4600, 840) cut at 6000. After 3000 lb have gone again, N(2600, 840) cut at 4000.
   */
  @Test
  void whatIsNotWeighedIsHeaviestWhereTheTripIsFullest() {
    Map<AxleRef, String> all = Map.of(FIRST, "100 %");
    Loads loads =
        loads(
            rig(hitch("1500 lb", 1)),
            change("1000 lb", Source.WEIGHED, false, null, all),
            change("-3000 lb", Source.WEIGHED, false, null, all));
    double lift = 5512.2454 - 5600;
    weighs(loads, 0, FIRST, 4600 + lift, 6000, Loads.Basis.NOT_WEIGHED);
    assertThat(pounds(loads.axle(1, FIRST).heaviest())).isCloseTo(7000, within(1e-6));
    assertThat(pounds(loads.axle(1, FIRST).kilograms())).isCloseTo(5600 + lift, within(0.1));
    assertThat(pounds(loads.axle(2, FIRST).heaviest())).isCloseTo(4000, within(1e-6));
    assertThat(pounds(loads.axle(2, FIRST).kilograms())).isCloseTo(2600 + lift, within(0.7));
  }

  /** So much is set down that hardly anything can be left: no load under nothing. */
  @Test
  void whatIsNotWeighedIsNeverUnderNothing() {
    Loads loads =
        loads(
            rig(hitch("1500 lb", 1)),
            change("-6500 lb", Source.WEIGHED, false, null, Map.of(FIRST, "100 %")));
    weighs(loads, 1, FIRST, 0, 500, Loads.Basis.NOT_WEIGHED);
  }

  @Test
  void theLastTicketThatWeighedAnAxleSpeaksForIt() {
    Loads loads =
        loads(
            rig(
                hitch("1500 lb", 1),
                ticket(true, platform("5000 lb", FIRST), platform("5100 lb", SECOND)),
                ticket(true, platform("5600 lb", FIRST))));
    weighs(loads, 0, FIRST, 5600, 5600, Loads.Basis.AXLE);
    weighs(loads, 0, SECOND, 5100, 5100, Loads.Basis.AXLE);
  }

  /** Statics: a load behind the rear axle presses it down by more than itself, lifts the front. */
  @ParameterizedTest
  @CsvSource({"1, 5000, 4000", "1.2, 5400, 3600", "0.9, 4800, 4200"})
  void unhitchedTicketAddsTheHitchLoadByItsLever(double lever, double rear, double front) {
    // Rear 3000 + 2000 × lever, front 4000 + 2000 × (1 − lever).
    Loads loads =
        loads(
            rig(
                hitch("2000 lb", lever),
                ticket(
                    false,
                    platform("4000 lb", FRONT),
                    platform("3000 lb", REAR),
                    platform("5600 lb", FIRST))));
    weighs(loads, 0, REAR, rear, rear, Loads.Basis.AXLE);
    weighs(loads, 0, FRONT, front, front, Loads.Basis.AXLE);
    weighs(loads, 0, FIRST, 5600, 5600, Loads.Basis.AXLE);
  }

  @Test
  void hitchedTicketHoldsTheHitchLoadAlready() {
    Loads loads =
        loads(
            rig(
                hitch("2000 lb", 1.2),
                ticket(true, platform("3700 lb", FRONT), platform("5300 lb", REAR))));
    weighs(loads, 0, REAR, 5300, 5300, Loads.Basis.AXLE);
    weighs(loads, 0, FRONT, 3700, 3700, Loads.Basis.AXLE);
  }

  /** Without the hitch load an unhitched weight would be too small: the rating speaks instead. */
  @Test
  void unhitchedTicketWithUnknownHitchLoadDoesNotSpeakForTheRearAxle() {
    ScaleTicket ticket = ticket(false, platform("4000 lb", FRONT), platform("3000 lb", REAR));
    for (Rig rig : List.of(rig(hitch(null, 1), ticket), rig(null, ticket))) {
      Loads loads = loads(rig);
      // 9000 × 0.78746
      weighs(loads, 0, REAR, 7087.1726, 9000, Loads.Basis.NOT_WEIGHED);
      weighs(loads, 0, FRONT, 4000, 4000, Loads.Basis.AXLE);
    }
  }

  @Test
  void changesByStopWithSplitAndHitchPart() {
    Map<AxleRef, String> split = Map.of(FIRST, "40 %", SECOND, "40 %");
    Loads loads =
        loads(
            rig(
                hitch("1500 lb", 1.1),
                ticket(
                    true,
                    platform("4000 lb", FRONT),
                    platform("5000 lb", REAR),
                    platform("5600 lb", FIRST))),
            change("1000 lb", Source.GUESSED, false, "20 %", split),
            change("-500 lb", Source.WEIGHED, false, "20 %", split));
    weighs(loads, 0, FIRST, 5600, 5600, Loads.Basis.AXLE);
    weighs(loads, 1, FIRST, 6000, 6000, Loads.Basis.AXLE); // + 1000 × 0.40
    weighs(loads, 2, FIRST, 5800, 5800, Loads.Basis.AXLE); // − 500 × 0.40
    weighs(loads, 1, REAR, 5220, 5220, Loads.Basis.AXLE); // + 1000 × 0.20 × 1.1
    weighs(loads, 1, FRONT, 3980, 3980, Loads.Basis.AXLE); // + 1000 × 0.20 × (1 − 1.1)
    weighs(loads, 2, REAR, 5110, 5110, Loads.Basis.AXLE); // − 500 × 0.20 × 1.1
    // Fullest with 400 more; 200 less now: N(5400, √(840² + (400·0.15)² + (200·0.01)²)) cut at
    // 6800.
    weighs(loads, 2, SECOND, 5311.3590, 6800, Loads.Basis.NOT_WEIGHED);
  }

  /** The allowance of a group holds for what comes on, too. */
  @Test
  void changesOnAGroup() {
    Loads loads =
        loads(
            rig(hitch("1500 lb", 1), ticket(true, platform("10000 lb", FIRST, SECOND))),
            change("1000 lb", Source.TYPICAL, false, null, Map.of(FIRST, "50 %", SECOND, "50 %")));
    // (5000 + 500) × 1.10 = 6050
    weighs(loads, 1, FIRST, 5500, 6050, Loads.Basis.GROUP);
  }

  @Test
  void hitchPartWithoutADescribedHitchIsNotLost() {
    Loads loads =
        loads(
            rig(null, ticket(true, platform("5000 lb", REAR))),
            change("1000 lb", Source.WEIGHED, false, "20 %", Map.of(FIRST, "80 %")));
    weighs(loads, 1, REAR, 5200, 5200, Loads.Basis.AXLE); // all 200 on the rear axle
  }

  @Test
  void moreSetDownThanThereWasLeavesNothing() {
    Loads loads =
        loads(
            rig(null, ticket(true, platform("1000 lb", FIRST))),
            change("-3000 lb", Source.GUESSED, false, null, Map.of(FIRST, "100 %")));
    weighs(loads, 1, FIRST, 0, 0, Loads.Basis.AXLE);
  }

  @Test
  void offersCountOnlyWhenTaken() {
    LoadChange offer = change("2000 lb", Source.TYPICAL, true, null, Map.of(FIRST, "100 %"));
    Rig rig = rig(hitch("1500 lb", 1), ticket(true, platform("5000 lb", FIRST)));
    Trip trip = trip(rig, offer);
    weighs(new Loads(trip, null, 1), 1, FIRST, 5000, 5000, Loads.Basis.AXLE);
    weighs(new Loads(trip, offer, 1), 1, FIRST, 7000, 7000, Loads.Basis.AXLE);
    weighs(new Loads(trip, offer, 1), 0, FIRST, 5000, 5000, Loads.Basis.AXLE);
    weighs(new Loads(trip, offer, 0.5), 1, FIRST, 6000, 6000, Loads.Basis.AXLE);
    LoadChange other = change("900 lb", Source.TYPICAL, true, null, Map.of(FIRST, "100 %"));
    weighs(new Loads(trip, other, 1), 1, FIRST, 5000, 5000, Loads.Basis.AXLE);
  }

  /** Spread: 1 % of the scale's weight, joined with 1, 8 or 15 % of what came on. */
  @ParameterizedTest
  @CsvSource({"WEIGHED, 10", "TYPICAL, 80", "GUESSED, 150"})
  void spreadGrowsWithGuessedLoads(Source source, double ofTheChange) {
    Loads loads =
        loads(
            rig(null, ticket(true, platform("6000 lb", FIRST))),
            change("1000 lb", source, false, null, Map.of(FIRST, "100 %")));
    assertThat(pounds(loads.axle(0, FIRST).spread().deviation())).isCloseTo(60, within(1e-9));
    assertThat(pounds(loads.axle(1, FIRST).spread().deviation()))
        .isCloseTo(Math.sqrt(60 * 60 + ofTheChange * ofTheChange), within(1e-9));
  }

  @Test
  void dualsShareTheirSide() {
    Loads loads = loads(rig(null, ticket(true, platform("6000 lb", REAR))));
    // 6000 / 4 = 1500; 6000 × 0.525 / 2 = 1575
    for (WheelSlot slot : WheelSlot.of(true)) {
      carries(loads, 0, REAR, slot, 1500);
      spread(loads, 0, REAR, slot, 1500 * 0.02692582, 1575);
    }
  }

  @Test
  void typedSideShareUnlessWeighed() {
    Vehicle trailer =
        vehicle(
            "trailer",
            "t",
            Vehicle.Kind.TRAILER,
            axle(false, null, "47 %"),
            axle(false, null, "47 %"));
    Loads loads =
        loads(
            Hauls.rig(
                List.of(truck(), trailer),
                null,
                ticket(true, platform("6000 lb", FIRST)),
                wheels(SECOND, "3300 lb", "2700 lb")));
    carries(loads, 0, FIRST, WheelSlot.LEFT, 2820); // 6000 × 0.47
    carries(loads, 0, FIRST, WheelSlot.RIGHT, 3180); // 6000 × 0.53
    carries(loads, 0, SECOND, WheelSlot.LEFT, 3300);
  }

  @Test
  void axlesThatAreNotThereAreRefused() {
    Loads loads = loads(rig(null));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> loads.axle(0, new AxleRef("trailer", 3)))
        .withMessageContaining("trailer axle 3");
  }

  private static Vehicle truck() {
    return vehicle(
        "truck", "k", Vehicle.Kind.TRUCK, axle(false, null, null), axle(true, "9000 lb", null));
  }

  private static Rig rig(@Nullable Hitch hitch, ScaleTicket... tickets) {
    Vehicle trailer =
        vehicle(
            "trailer",
            "t",
            Vehicle.Kind.TRAILER,
            axle(false, "7000 lb", null),
            axle(false, "7000 lb", null));
    return Hauls.rig(List.of(truck(), trailer), hitch, tickets);
  }

  /** A trip on which each change is made at a stop of its own, after the start. */
  private static Trip trip(Rig rig, LoadChange... changes) {
    List<Stop> stops = new ArrayList<>(List.of(stop("start")));
    for (LoadChange change : changes) {
      stops.add(loading("stop" + stops.size(), change));
    }
    return Hauls.trip(rig, stops, Collections.nCopies(changes.length, leg("60 mi", "60 mph")));
  }

  private static Loads loads(Rig rig, LoadChange... changes) {
    return new Loads(trip(rig, changes), null, 1);
  }

  private static void weighs(
      Loads loads, int stop, AxleRef ref, double likely, double heaviest, Loads.Basis basis) {
    Loads.AxleLoad load = loads.axle(stop, ref);
    assertThat(pounds(load.kilograms())).isCloseTo(likely, within(0.001));
    assertThat(pounds(load.heaviest())).isCloseTo(heaviest, within(1e-6));
    assertThat(load.basis()).isEqualTo(basis);
  }

  private static void carries(Loads loads, int stop, AxleRef ref, WheelSlot slot, double likely) {
    Loads.TireLoad load = loads.tire(stop, new WheelPosition(ref, slot));
    assertThat(pounds(load.kilograms())).isCloseTo(likely, within(0.001));
  }

  private static void spread(
      Loads loads, int stop, AxleRef ref, WheelSlot slot, double sigma, double heaviest) {
    Loads.TireLoad load = loads.tire(stop, new WheelPosition(ref, slot));
    assertThat(pounds(load.sigma())).isCloseTo(sigma, within(0.001));
    assertThat(pounds(load.heaviest())).isCloseTo(heaviest, within(1e-6));
  }

  private static double pounds(double kilograms) {
    return new Mass(kilograms).in(Unit.POUND);
  }
}

package dawngauge.advice;

import static dawngauge.testdata.StopBuilder.stop;
import static org.assertj.core.api.Assertions.assertThat;

import dawngauge.forecast.ReadingCheck;
import dawngauge.forecast.TireAtStop;
import dawngauge.quantity.Entered;
import dawngauge.quantity.QuantityKind;
import dawngauge.quantity.UnitSystem;
import dawngauge.rules.FittedTire;
import dawngauge.rules.GaugeErrors;
import dawngauge.testdata.Forecasts;
import dawngauge.testdata.RigBuilder;
import dawngauge.testdata.Trips;
import dawngauge.trip.AxleRef;
import dawngauge.trip.LogEvent;
import dawngauge.trip.ReadingState;
import dawngauge.trip.Remarks;
import dawngauge.trip.Rig;
import dawngauge.trip.TypedTime;
import dawngauge.trip.WheelPosition;
import java.time.Duration;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * A tire much warmer than its mates is a finding, what a gauge or the day may do is none. Air of
 * 300 K at 100 kPa, 2 kPa/K in each tire: 2·(300 + x) − 100 kPa on the gauge is x K over the air,
 * 500 kPa none, 540 kPa 20 K.
 */
class HotTiresTest {

  private static final GaugeErrors FINE = new GaugeErrors(1000, 100, 0);
  private static final double NOT_READ = Double.NaN;

  private static final Rig RIG = twoVehicles();

  /** Two axles of trailer, and a second vehicle just like it. */
  private static Rig twoVehicles() {
    Rig rig = RigBuilder.trailer().axles(2).rig();
    return rig.withVehicles(
        List.of(rig.vehicles().get(0), rig.vehicles().get(0).withName("other")));
  }

  private static final TireAtStop EXAMPLE =
      Forecasts.first(
              Trips.of(RigBuilder.trailer().axles(2))
                  .stop(stop("a").leaves("2027-06-01T06:00Z").steady("60 °F"))
                  .stop(stop("b").stays(Duration.ofHours(1)).steady("60 °F"))
                  .readAll("2027-06-01T05:50Z", "80 psi")
                  .trip())
          .get(1);

  private static ReadingCheck read(
      double over, ReadingState state, double expected, GaugeErrors errors) {
    double kilopascals = 2 * (300 + over) - 100;
    LogEvent.Reading reading =
        new LogEvent.Reading(
            new TypedTime(ZonedDateTime.parse("2027-06-01T08:00Z"), ""),
            "T1",
            Entered.of(QuantityKind.GAUGE_PRESSURE, kilopascals + " kPa"),
            "hand",
            state,
            null,
            null,
            Remarks.NONE);
    double any = 1;
    return new ReadingCheck(
        reading, expected, any, any, any, true, 2000, any, any, 300, 100_000, errors, any, any, any,
        false);
  }

  private static ReadingCheck warm(double over) {
    return read(over, ReadingState.WARM, 500_000, FINE);
  }

  /** The tire at a place, counted through both vehicles, with what was read of it. */
  private static TireAdvice tire(int place, ReadingCheck... checks) {
    WheelPosition position = RIG.positions().get(place);
    FittedTire fitted = new FittedTire(RIG, position, RIG.tires().get(place % 4));
    TireAtStop at =
        new TireAtStop(
            1,
            fitted,
            EXAMPLE.limits(),
            EXAMPLE.arrival(),
            EXAMPLE.check(),
            EXAMPLE.leaving(),
            null,
            null,
            EXAMPLE.leavingChance(),
            false,
            List.of(checks),
            List.of(),
            null);
    return new TireAdvice(at, List.of(), null, null, false);
  }

  private static List<TireAdvice> tires(GaugeErrors errors, double... over) {
    List<TireAdvice> tires = new ArrayList<>();
    for (double kelvins : over) {
      tires.add(
          Double.isNaN(kelvins)
              ? tire(tires.size())
              : tire(tires.size(), read(kelvins, ReadingState.WARM, 500_000, errors)));
    }
    return tires;
  }

  /** Which of them are told of, by their places. */
  private static List<Integer> found(List<TireAdvice> tires) {
    List<Integer> found = new ArrayList<>();
    List<TireAdvice> told = HotTires.told(tires);
    assertThat(told)
        .extracting(TireAdvice::tire)
        .isEqualTo(tires.stream().map(TireAdvice::tire).toList());
    for (int i = 0; i < told.size(); i++) {
      if (!told.get(i).reasons().isEmpty()) {
        found.add(i);
      }
    }
    return found;
  }

  private static List<Integer> found(double... over) {
    return found(tires(FINE, over));
  }

  @Test
  void theHotOneOfFourIsToldByHowMuch() {
    // The middle of 18, 20 and 23 is 20: 32 is 12 K or 21.6 °F over it.
    List<TireAdvice> told = HotTires.told(tires(FINE, 18, 20, 32, 23));
    assertThat(told.get(2).reasons()).hasSize(1);
    Reason reason = told.get(2).reasons().get(0);
    assertThat(reason.mark()).isEqualTo(Mark.RECHECK);
    assertThat(reason.rank()).isZero();
    assertThat(reason.todo().in(UnitSystem.US)).contains("feel tire, brake and bearing");
    assertThat(reason.text().in(UnitSystem.SI)).contains("by about 12 °C");
    assertThat(reason.text().in(UnitSystem.US)).contains("by about 22 °F");
    assertThat(found(18, 20, 32, 23)).containsExactly(2);
  }

  @Test
  void aQuarterMoreThanTheMiddleIsNotYetHot() {
    assertThat(found(40, 40, 40, 50)).isEmpty();
    assertThat(found(40, 40, 40, 51)).containsExactly(3);
  }

  @Test
  void fiveKelvinAreTheGauges() {
    assertThat(found(8, 8, 8, 13)).isEmpty();
    assertThat(found(8, 8, 8, 14)).containsExactly(3);
  }

  @Test
  void aPoorGaugeAsksForMore() {
    // Repeats within 4 kPa, 2 K of 2 kPa/K: against two mates 2·√(2 + 2/2) = 3.46 K, 3 of them
    // are 10.4 K.
    GaugeErrors poor = new GaugeErrors(1000, 4000, 0);
    assertThat(found(tires(poor, 20, 20, 30))).isEmpty();
    assertThat(found(tires(poor, 20, 20, 31))).containsExactly(2);
    // Against three 2·√(2 + 2/3) = 3.27 K: 9.8 K.
    assertThat(found(tires(poor, 20, 20, 20, 30))).containsExactly(3);
  }

  @Test
  void oneMateIsNotEnough() {
    assertThat(found(20, NOT_READ, 60)).isEmpty();
    assertThat(found(20, NOT_READ, 60, 20)).containsExactly(2);
  }

  @Test
  void aTireThatWasNotReadIsNotTold() {
    assertThat(found(NOT_READ, 20, 20, 20)).isEmpty();
    List<TireAdvice> unread = tires(FINE, NOT_READ, NOT_READ);
    assertThat(HotTires.told(unread)).isSameAs(unread);
  }

  @Test
  void matesThatAreNoWarmerThanTheAirAreNoMeasure() {
    assertThat(found(0, 0, 0, 20)).isEmpty();
    assertThat(found(-1, -1, -1, 20)).isEmpty();
  }

  @Test
  void tiresOfAnotherVehicleAreNoMates() {
    assertThat(RIG.positions().get(4).axle()).isEqualTo(new AxleRef("other", 1));
    List<TireAdvice> split =
        List.of(tire(0, warm(40)), tire(4, warm(20)), tire(5, warm(20)), tire(6, warm(20)));
    assertThat(found(split)).isEmpty();
    List<TireAdvice> same =
        List.of(tire(7, warm(40)), tire(4, warm(20)), tire(5, warm(20)), tire(6, warm(20)));
    assertThat(found(same)).containsExactly(0);
  }

  @Test
  void onlyAWarmReadingAfterAnotherOneTellsHowWarmItWas() {
    ReadingCheck cold = read(40, ReadingState.COLD, 500_000, FINE);
    ReadingCheck first = read(40, ReadingState.WARM, Double.NaN, FINE);
    for (ReadingCheck none : List.of(cold, first)) {
      assertThat(found(List.of(tire(0, none), tire(1, warm(20)), tire(2, warm(20))))).isEmpty();
    }
  }

  @Test
  void theLastWarmReadingCounts() {
    List<TireAdvice> cooled =
        List.of(tire(0, warm(40), warm(20)), tire(1, warm(20)), tire(2, warm(20)));
    assertThat(found(cooled)).isEmpty();
    List<TireAdvice> heated =
        List.of(tire(0, warm(20), warm(40)), tire(1, warm(20)), tire(2, warm(20)));
    assertThat(found(heated)).containsExactly(0);
  }
}

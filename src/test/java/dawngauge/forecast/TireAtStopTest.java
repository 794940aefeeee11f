package dawngauge.forecast;

import static dawngauge.testdata.StopBuilder.stop;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dawngauge.quantity.Entered;
import dawngauge.quantity.QuantityKind;
import dawngauge.testdata.Forecasts;
import dawngauge.testdata.RigBuilder;
import dawngauge.testdata.TireBuilder;
import dawngauge.testdata.Trips;
import dawngauge.trip.LogEvent;
import dawngauge.trip.Remarks;
import dawngauge.trip.Trip;
import dawngauge.trip.TypedTime;
import dawngauge.trip.WheelPosition;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** A tire at a stop beside its dual mate, and what was added to it there. */
class TireAtStopTest {

  private static Trips haul(RigBuilder rig) {
    return Trips.of(rig)
        .stop(stop("a").leaves("2027-06-01T06:00Z").steady("60 °F").measured())
        .leg("50 mi", "50 mph")
        .stop(stop("b").steady("60 °F").measured());
  }

  private static RigBuilder duals() {
    return RigBuilder.trailer().dual().tires(TireBuilder.lightTruck()).weighed("6000 lb");
  }

  /** How many times its even share a tire carries when leaving, by its margin. */
  private static double share(Trip trip, int index) {
    Forecaster forecaster = Forecasts.forecaster(trip);
    Map<WheelPosition, Track> tracks = new LinkedHashMap<>();
    for (WheelPosition position : trip.rig().positions()) {
      forecaster.track(position).ifPresent(track -> tracks.put(position, track));
    }
    WheelPosition position = trip.rig().positions().get(index);
    TireAtStop alone = Forecasts.known(tracks.get(position)).stops().get(0);
    TireAtStop beside = Forecaster.stops(position, tracks).get(0);
    assertThat(beside.worstMargin()).isLessThanOrEqualTo(beside.margin());
    return (1 + alone.margin()) / (1 + beside.margin());
  }

  /**
   * A pair shares its load in the ratio of the pressures: 80 and 60 psi take 80/70 and 60/70 of an
   * even share, 1.1429 and 0.8571. One that holds nothing leaves the other to carry both; where one
   * is not known, each takes its even share.
   */
  @Test
  void dualsShareByTheirPressures() {
    Trip pair =
        haul(duals())
            .read("2027-06-01T05:50Z", "T1", "80 psi")
            .read("2027-06-01T05:51Z", "T2", "60 psi")
            .read("2027-06-01T05:52Z", "T3", "80 psi")
            .trip();
    assertThat(share(pair, 0)).isCloseTo(1.1429, within(1e-4));
    assertThat(share(pair, 1)).isCloseTo(0.8571, within(1e-4));
    assertThat(share(pair, 2)).as("its mate is not known").isEqualTo(1);
  }

  private static TireSetting set(boolean read) {
    Trip trip = haul(RigBuilder.trailer()).read("2027-06-01T05:50Z", "T1", "70 psi").trip();
    List<LogEvent> log = new ArrayList<>(trip.log());
    log.add(
        new LogEvent.Adjustment(
            new TypedTime(ZonedDateTime.parse("2027-06-01T05:55Z"), "2027-06-01T05:55Z"),
            "T1",
            read ? Entered.of(QuantityKind.GAUGE_PRESSURE, "68 psi") : null,
            Entered.of(QuantityKind.GAUGE_PRESSURE, "80 psi"),
            "hand",
            Remarks.NONE));
    return Forecasts.forecaster(trip.withLog(log))
        .track(trip.rig().positions().get(0))
        .orElseThrow()
        .made()
        .get(0);
  }

  /**
   * At 288.706 K: 68 to 80 psi by the gauge are 12 psi/288.706 K of air; where it was not read
   * before, from the 70 psi that were expected, 10 psi/288.706 K.
   */
  @Test
  void whatWasAddedGoesByTheGaugeBeforeElseByWhatWasExpected() {
    assertThat(set(true).wasRead()).isTrue();
    assertThat(Forecasts.psi(set(true).fillAdded())).isCloseTo(12 / 288.7056, within(1e-6));
    assertThat(set(false).wasRead()).isFalse();
    assertThat(Forecasts.psi(set(false).fillAdded())).isCloseTo(10 / 288.7056, within(1e-6));
  }
}

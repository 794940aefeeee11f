package dawngauge.weights;

import static dawngauge.trip.Hauls.axle;
import static dawngauge.trip.Hauls.change;
import static dawngauge.trip.Hauls.hitch;
import static dawngauge.trip.Hauls.leg;
import static dawngauge.trip.Hauls.loading;
import static dawngauge.trip.Hauls.platform;
import static dawngauge.trip.Hauls.stop;
import static dawngauge.trip.Hauls.ticket;
import static dawngauge.trip.Hauls.vehicle;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dawngauge.quantity.Mass;
import dawngauge.quantity.Unit;
import dawngauge.rules.Loads;
import dawngauge.trip.Axle;
import dawngauge.trip.AxleRef;
import dawngauge.trip.Hauls;
import dawngauge.trip.LoadChange;
import dawngauge.trip.Rig;
import dawngauge.trip.ScaleTicket;
import dawngauge.trip.Trip;
import dawngauge.trip.Vehicle;
import dawngauge.trip.Worksheet;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Forecast and weight worksheet put a hitch load on the same axles. */
class HitchShareTest {

  /**
   * By levers: the hitch 5 ft behind the middle of the pair of rear axles, the front axle 20 ft
   * before it. Moments about the front axle: 1000 lb · 25 ft = R · 20 ft, so R = 1250 lb on the
   * pair, 625 lb on each, and 1000 − 1250 = −250 lb on the front axle.
   */
  @Test
  void aTowVehicleWithThreeAxles() {
    assertThat(byForecast(truck(3), 1.25, 1000)).containsExactly(-250, 625, 625);
    assertThat(byWorksheet(truck(3), 1.25, 1000)).containsExactly(-250, 625, 625);
  }

  /** 1000 lb · 24 ft = R · 20 ft. */
  @Test
  void aTowVehicleWithTwoAxles() {
    assertThat(byForecast(truck(2), 1.2, 1000)).containsExactly(-200, 1200);
    assertThat(byWorksheet(truck(2), 1.2, 1000)).containsExactly(-200, 1200);
  }

  /** A dolly has no other axle to lift. */
  @Test
  void aTowVehicleWithOneAxleTakesAllOfIt() {
    assertThat(byForecast(truck(1), 1.2, 1000)).containsExactly(1000);
    assertThat(byWorksheet(truck(1), 1.2, 1000)).containsExactly(1000);
  }

  /** A trailer alone: whatever tows it is not in the rig, and takes the hitch load. */
  @Test
  void aTrailerAloneTakesNothingOfItsHitch() {
    Vehicle trailer = vehicle("truck", "t", Vehicle.Kind.TRAILER, axle(false, "7000 lb", null));
    assertThat(byForecast(trailer, 1, 1000)).containsExactly(0);
  }

  private static Vehicle truck(int axles) {
    return vehicle(
        "truck",
        "k",
        Vehicle.Kind.TRUCK,
        IntStream.range(0, axles).mapToObj(i -> axle(false, null, null)).toArray(Axle[]::new));
  }

  /** Pounds that each axle of the first vehicle is heavier once a hitch load has come on. */
  private static List<Integer> byForecast(Vehicle tow, double lever, int pounds) {
    List<AxleRef> axles = axles(tow);
    Rig rig =
        Hauls.rig(
            List.of(tow),
            hitch(null, lever),
            ticket(
                true,
                axles.stream()
                    .map(axle -> platform("9000 lb", axle))
                    .toArray(ScaleTicket.Platform[]::new)));
    LoadChange change = change(pounds + " lb", LoadChange.Source.WEIGHED, false, "100 %", Map.of());
    Trip trip =
        Hauls.trip(
            rig, List.of(stop("start"), loading("on", change)), List.of(leg("60 mi", "60 mph")));
    Loads loads = new Loads(trip, null, 1);
    List<Integer> added = new ArrayList<>();
    for (AxleRef axle : axles) {
      added.add(pounds(loads.axle(1, axle).kilograms() - loads.axle(0, axle).kilograms()));
    }
    return added;
  }

  private static List<Integer> byWorksheet(Vehicle tow, double lever, int pounds) {
    Coupling coupling = new Coupling(Hauls.rig(List.of(tow), hitch(null, lever)), Worksheet.BLANK);
    SummedLoad load = SummedLoad.of(new Mass(pounds * 0.45359237).kilograms());
    Map<AxleRef, SummedLoad> parts = coupling.ofHitch(load);
    return axles(tow).stream()
        .map(axle -> pounds(Objects.requireNonNull(parts.get(axle)).kilograms()))
        .toList();
  }

  private static int pounds(double kilograms) {
    double pounds = new Mass(kilograms).in(Unit.POUND);
    assertThat(pounds).isCloseTo(Math.rint(pounds), within(1e-6));
    return (int) Math.rint(pounds);
  }

  private static List<AxleRef> axles(Vehicle vehicle) {
    return IntStream.rangeClosed(1, vehicle.axles().size())
        .mapToObj(number -> new AxleRef(vehicle.name(), number))
        .toList();
  }
}

package dawngauge.planner;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dawngauge.advice.Advice;
import dawngauge.ambient.AirChange;
import dawngauge.ambient.WhatIf;
import dawngauge.forecast.TireSnapshot;
import dawngauge.quantity.Entered;
import dawngauge.quantity.QuantityKind;
import dawngauge.settings.SettingsFile;
import dawngauge.testdata.Forecasts;
import dawngauge.trip.AmbientEntry;
import dawngauge.trip.Provenance;
import dawngauge.trip.Remarks;
import dawngauge.trip.Trip;
import dawngauge.tripfile.TripFile;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Another weather or start beside the plan. */
class WhatIfTest {

  private static final Planner PLANNER = new Planner(SettingsFile.defaults(), List.of());

  /** A stop behind the last reading in the demo's log. */
  private static final int LATER = 4;

  private static Trip demo() {
    return TripFile.read(Path.of("demo-data/autumn-stock-haul.dawngauge")).get();
  }

  private static Advice advice(Plan planned) {
    return Forecasts.known(planned.advice());
  }

  private static TireSnapshot leaving(Plan planned, int stop, int tire) {
    return Forecasts.known(advice(planned).stops().get(stop).tires().get(tire).tire().leaving());
  }

  private static int lastButOne(Plan planned) {
    return advice(planned).stops().size() - 2;
  }

  /**
   * With no air moved the settled pressure is F θ − a, so 5 K of air are 5 F, with F = (p + a) / θ.
   */
  @Test
  void colderAirLowersTheSettledPressureByTheGasLaw() {
    Plan base = PLANNER.plan(demo());
    Plan colder = PLANNER.plan(demo(), WhatIf.shifted(-5, 0, Integer.MAX_VALUE));
    int compared = 0;
    for (int tire = 0; tire < advice(base).stops().get(LATER).tires().size(); tire++) {
      TireSnapshot was = leaving(base, LATER, tire);
      TireSnapshot is = leaving(colder, LATER, tire);
      assertThat(is.airKelvins()).isCloseTo(was.airKelvins() - 5, within(1e-9));
      double fill = (was.settled() + was.airPressure()) / was.airKelvins();
      boolean noAirMoved = Math.abs(is.fill() / was.fill() - 1) < 1e-4;
      if (noAirMoved) {
        assertThat(is.settled()).isCloseTo(was.settled() - 5 * fill, within(100.0));
        compared++;
      }
    }
    assertThat(compared).isGreaterThan(5);
  }

  /** What was read was read in the air that was there: only what follows is another. */
  @Test
  void readingsKeepTheAirInWhichTheyWereTaken() {
    Plan base = PLANNER.plan(demo());
    Plan colder = PLANNER.plan(demo(), WhatIf.shifted(-5, 0, Integer.MAX_VALUE));
    for (int tire = 0; tire < advice(base).stops().get(0).tires().size(); tire++) {
      assertThat(leaving(colder, 0, tire).equals(leaving(base, 0, tire))).isTrue();
    }
  }

  @Test
  void aPartOfTheRouteAlone() {
    Plan base = PLANNER.plan(demo());
    Plan part = PLANNER.plan(demo(), WhatIf.shifted(-5, LATER, LATER));
    int late = lastButOne(base);
    assertThat(leaving(part, late, 0).airKelvins())
        .isCloseTo(leaving(base, late, 0).airKelvins(), within(1e-9));
    assertThat(leaving(part, LATER, 0).airKelvins())
        .isCloseTo(leaving(base, LATER, 0).airKelvins() - 5, within(1e-9));
  }

  @Test
  void theColdEdgeLiesBelowAndTheWarmEdgeAbove() {
    Plan base = PLANNER.plan(demo());
    int late = lastButOne(base);
    double air = leaving(base, late, 0).airKelvins();
    assertThat(leaving(PLANNER.plan(demo(), WhatIf.coldSnap()), late, 0).airKelvins())
        .isLessThan(air - 1);
    assertThat(leaving(PLANNER.plan(demo(), WhatIf.heat()), late, 0).airKelvins())
        .isGreaterThan(air + 1);
  }

  @Test
  void aLaterStartMovesTheWayAndLeavesTheTripAlone() {
    Plan base = PLANNER.plan(demo());
    Plan later = PLANNER.plan(demo(), WhatIf.NOTHING.starting(Duration.ofHours(2)));
    Instant was = advice(base).stops().get(1).stop().visit().arrive();
    assertThat(advice(later).stops().get(1).stop().visit().arrive())
        .isEqualTo(was.plus(Duration.ofHours(2)));
    assertThat(base.trip().equals(demo())).isTrue();
  }

  @Test
  void whatAServiceSaysAnewIsHeldAgainstWhatItSaidBefore() {
    Trip trip = demo();
    String first = trip.ambient().get(0).stop();
    List<AmbientEntry> now = new ArrayList<>(trip.ambient());
    now.removeIf(entry -> entry.stop().equals(first));
    now.add(feed(first, "6 °C"));
    Trip asked = trip.withAmbient(now).withEarlierAmbient(List.of(feed(first, "11 °C")));
    List<AirChange> changes = PLANNER.temperatures().changes(asked);
    assertThat(changes).hasSize(1);
    assertThat(changes.get(0).warmer()).isCloseTo(-5, within(1e-9));
    assertThat(trip.route().stops().get(changes.get(0).stop()).id()).isEqualTo(first);
    assertThat(PLANNER.temperatures().changes(trip)).isEmpty();
  }

  private static AmbientEntry feed(String stop, String temperature) {
    return new AmbientEntry(
        stop,
        new AmbientEntry.Steady(Entered.of(QuantityKind.TEMPERATURE, temperature)),
        new Provenance(Provenance.Kind.FEED, "a service", Instant.parse("2027-10-13T12:00:00Z")),
        null,
        Remarks.NONE);
  }
}

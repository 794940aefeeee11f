package dawngauge.planner;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dawngauge.geo.PlaceList;
import dawngauge.ledger.Ledger;
import dawngauge.problem.Problem;
import dawngauge.problem.ProblemCode;
import dawngauge.quantity.Unit;
import dawngauge.quantity.UnitSystem;
import dawngauge.settings.SettingsFile;
import dawngauge.testdata.Forecasts;
import dawngauge.trip.AmbientEntry;
import dawngauge.trip.Provenance;
import dawngauge.trip.RouteOfPlaces;
import dawngauge.trip.Trip;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A haul from a list of places has typical air at once, and a local would nod at it. */
class TypicalHaulTest {

  private static final Planner PLANNER = new Planner(SettingsFile.defaults(), List.of());

  private static Trip haul(LocalDate start, String places) {
    FirstHaul first =
        new FirstHaul(
            PLANNER.places().search("Alamosa CO", null, 1).get(0),
            PLANNER.places().search("Amarillo TX", null, 1).get(0),
            start.atTime(6, 0),
            null,
            null,
            2,
            false,
            null,
            null,
            null,
            null,
            null,
            FirstHaul.Weighed.TOGETHER,
            null);
    Trip trip = PLANNER.first(first, start).orElseThrow();
    PlaceList list = PLANNER.places().list(places, null, Map.of()).get();
    assertThat(list.isUsable()).isTrue();
    List<RouteOfPlaces.Wanted> wanted =
        list.lines().stream()
            .map(line -> new RouteOfPlaces.Wanted(Forecasts.known(line.taken()), line.stay()))
            .toList();
    return PLANNER.temperatures().withoutGaps(RouteOfPlaces.replace(trip, wanted));
  }

  private static double[] fahrenheit(Trip trip, LocalDate date) {
    String stop = trip.route().stops().get(0).id();
    return trip.ambient().stream()
        .filter(entry -> entry.stop().equals(stop))
        .map(AmbientEntry::figure)
        .map(AmbientEntry.LowHigh.class::cast)
        .filter(day -> day.date().equals(date))
        .findFirst()
        .map(
            day ->
                new double[] {
                  day.low().value().in(Unit.FAHRENHEIT), day.high().value().in(Unit.FAHRENHEIT)
                })
        .orElseThrow();
  }

  /**
   * Normals of the towns, °F, from memory: NOAA U.S. Climate Normals 1991–2020; Environment and
   * Climate Change Canada 1981–2010 for Calgary; Servicio Meteorológico Nacional 1981–2010 for
   * Hermosillo. Within 5 °F; Las Vegas, whose airport is warmed by the city at night, within 8. The
   * formula that was here before misses Gunnison's January low by 16 °F, Eureka's July high as far.
   */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "Gunnison CO | -7 | 26 | 43.5 | 81 | 5",
        "Death Valley = 36.457, -116.866 | 40 | 67 | 88 | 117 | 5",
        "Eureka CA | 41.6 | 55.4 | 52.6 | 63.4 | 5",
        "Las Vegas NV | 39.6 | 58.5 | 82.3 | 104.5 | 8",
        "Amarillo TX | 23.8 | 51.7 | 66.1 | 92.1 | 5",
        "Calgary AB | 8.2 | 30.4 | 49.6 | 73.8 | 5",
        "Hermosillo, Sonora | 48 | 76 | 78 | 102 | 5",
      })
  void lowsAndHighsALocalWouldNodAt(
      String place,
      double lowJanuary,
      double highJanuary,
      double lowJuly,
      double highJuly,
      double off) {
    LocalDate january = LocalDate.of(2027, 1, 15);
    double[] winter = fahrenheit(haul(january, place + "\nAmarillo TX"), january);
    assertThat(winter[0]).isCloseTo(lowJanuary, within(off));
    assertThat(winter[1]).isCloseTo(highJanuary, within(off));
    LocalDate july = LocalDate.of(2027, 7, 15);
    double[] summer = fahrenheit(haul(july, place + "\nAmarillo TX"), july);
    assertThat(summer[0]).isCloseTo(lowJuly, within(off));
    assertThat(summer[1]).isCloseTo(highJuly, within(off));
  }

  @Test
  void pastedPlacesHaveAForecastAtOnceAndSayThatItIsTypical() {
    Trip trip =
        haul(
            LocalDate.of(2027, 1, 15),
            "Gunnison CO\nMonarch Pass CO\nSalida CO @ 30 min\nPueblo CO @ 8 h\nAmarillo TX");
    assertThat(trip.ambient())
        .isNotEmpty()
        .allSatisfy(
            entry -> assertThat(entry.provenance().kind()).isEqualTo(Provenance.Kind.TYPICAL));
    Plan planned = PLANNER.plan(trip);
    assertThat(planned.problems())
        .extracting(Problem::code)
        .doesNotContain(
            ProblemCode.NO_AMBIENT, ProblemCode.NO_ELEVATION, ProblemCode.ELEVATION_DOUBTED);
    assertThat(Forecasts.known(planned.advice()).stops())
        .hasSize(5)
        .allSatisfy(stop -> assertThat(stop.stop().airOnLeaving()).isBetween(240.0, 290.0));
  }

  /** Timmins lies beyond the table of normals, where the formula stands in. */
  @Test
  void besideEachTemperatureStandsWhereItIsFromAndWhereItIsRough() {
    Trip trip = haul(LocalDate.of(2027, 1, 15), "Timmins ON\nSault Ste. Marie MI");
    Plan planned = PLANNER.plan(trip);
    Ledger ledger =
        Ledger.of(trip, planned.advice(), planned.problems(), List.of(), UnitSystem.SI, null);
    assertThat(ledger.stops().get(0).air()).endsWith(" (typical, rough)");
    assertThat(ledger.stops().get(1).air()).endsWith(" (typical)");
  }

  @Test
  void whatIsThereStays() {
    Trip demo =
        PLANNER
            .store()
            .open(java.nio.file.Path.of("demo-data", "autumn-stock-haul.dawngauge"))
            .get();
    assertThat(PLANNER.temperatures().withoutGaps(demo)).isEqualTo(demo);
  }
}

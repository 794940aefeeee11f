package dawngauge.ambient;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dawngauge.geo.Coordinate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The fit of typical temperatures against its own check values and against published normals. */
class ClimateFitTest {

  /** Worst difference from stations that the fit's makers found, in kelvin. */
  private static final double WORST = 5.9;

  /** Low and high in January and July, °C, computed with the fit outside this program. */
  @ParameterizedTest
  @CsvSource({
    "39.74, -104.99, 1609, -10.8, 3.0, 13.3, 30.6",
    "33.45, -112.07, 331, 3.8, 18.3, 23.1, 39.2",
    "44.98, -93.27, 253, -13.7, -3.9, 15.3, 28.3",
    "25.77, -80.19, 2, 14.8, 25.3, 25.4, 32.5",
    "47.6, -122.33, 56, 0.9, 6.7, 11.3, 25.9",
    "35.198, -111.651, 2106, -7.3, 7.9, 12.3, 31.6",
    "39.1, -94.58, 277, -6.7, 4.2, 19.0, 32.8",
  })
  void itsOwnCheckValues(
      double latitude,
      double longitude,
      double elevation,
      double lowJanuary,
      double highJanuary,
      double lowJuly,
      double highJuly) {
    Coordinate place = new Coordinate(latitude, longitude);
    assertDay(fit(place, elevation).at(1), lowJanuary, highJanuary, 0.06);
    assertDay(fit(place, elevation).at(7), lowJuly, highJuly, 0.06);
  }

  /**
   * NOAA U.S. Climate Normals 1991–2020 of these cities, °C: low and high of January and of the
   * year. Stations stand at airports, the fit is smooth: within its worst error.
   */
  @ParameterizedTest
  @CsvSource({
    "39.74, -104.99, 1609, -7.1, 8.0, 2.8, 18.9",
    "33.45, -112.07, 331, 5.0, 19.8, 14.7, 30.4",
    "44.98, -93.27, 253, -14.1, -5.1, 2.4, 12.6",
    "25.77, -80.19, 2, 16.4, 24.2, 21.7, 28.4",
    "47.6, -122.33, 56, 2.6, 8.6, 7.2, 16.1",
    "35.198, -111.651, 2106, -9.1, 7.2, -1.1, 17.4",
    "39.1, -94.58, 277, -6.4, 3.8, 7.3, 18.5",
  })
  void publishedNormals(
      double latitude,
      double longitude,
      double elevation,
      double lowJanuary,
      double highJanuary,
      double lowYear,
      double highYear) {
    Coordinate place = new Coordinate(latitude, longitude);
    assertDay(fit(place, elevation).at(1), lowJanuary, highJanuary, WORST);
    double low = 0;
    double high = 0;
    for (int month = 1; month <= 12; month++) {
      low += fit(place, elevation).at(month).low() / 12;
      high += fit(place, elevation).at(month).high() / 12;
    }
    assertDay(new TypicalDays.LowHigh(low, high), lowYear, highYear, WORST);
  }

  private static TypicalDays fit(Coordinate place, double elevation) {
    return ClimateFit.of(place, elevation).orElseThrow();
  }

  private static void assertDay(TypicalDays.LowHigh day, double low, double high, double off) {
    assertThat(day.low() - 273.15).isCloseTo(low, within(off));
    assertThat(day.high() - 273.15).isCloseTo(high, within(off));
  }

  @Test
  void itsArea() {
    assertThat(ClimateFit.of(new Coordinate(39.74, -104.99), 0)).isPresent();
    assertThat(ClimateFit.of(new Coordinate(49.9, -97.1), 0)).isEmpty(); // Winnipeg, north of it
    assertThat(ClimateFit.of(new Coordinate(61.2, -149.9), 0)).isEmpty(); // Anchorage
    assertThat(ClimateFit.of(new Coordinate(39.74, 104.99), 0)).isEmpty(); // the other half
  }

  /** Along a meridian, by height and through the year there are no jumps and no upside-down day. */
  @Test
  void itIsSmoothAndLowsLieBelowHighs() {
    for (double latitude = 25; latitude <= 49; latitude += 1) {
      for (double longitude = -124; longitude <= -67; longitude += 3) {
        Coordinate place = new Coordinate(latitude, longitude);
        for (double month = 0.5; month < 12.5; month += 0.25) {
          TypicalDays.LowHigh day = fit(place, 300).at(month);
          TypicalDays.LowHigh next = fit(place, 300).at(month + 0.25);
          assertThat(day.low()).isLessThanOrEqualTo(day.high());
          assertThat(Math.abs(next.low() - day.low())).isLessThan(4);
        }
      }
    }
  }
}

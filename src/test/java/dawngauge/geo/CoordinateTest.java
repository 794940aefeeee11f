package dawngauge.geo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class CoordinateTest {

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "37.469, -105.87 | 37.469 | -105.87",
        "37.469,-105.87 | 37.469 | -105.87",
        "37.469 -105.87 | 37.469 | -105.87",
        "37.469 , −105.87 | 37.469 | -105.87",
        "37,-105 | 37 | -105",
        "37, 105 | 37 | 105",
        "+37.469° -105.87° | 37.469 | -105.87",
        "37.469 N 105.87 W | 37.469 | -105.87",
        "37.469N,105.87W | 37.469 | -105.87",
        "37.469° n, 105.87° w | 37.469 | -105.87",
        "N 37.469° W 105.87° | 37.469 | -105.87",
        "n37.469, w105.87 | 37.469 | -105.87",
        "105.87 W 37.469 N | 37.469 | -105.87",
        "E 144.96, S 37.81 | -37.81 | 144.96",
        "90 180 | 90 | 180",
        "-90, -180 | -90 | -180",
      })
  void readsWhatIsTyped(String text, double latitude, double longitude) {
    assertThat(Coordinate.parse(text)).contains(new Coordinate(latitude, longitude));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        " ",
        ",",
        "37.469",
        "Alamosa",
        "Highway 17 105",
        "37,105", // a decimal comma, or two whole numbers
        "37,469", // out of range even as two
        "37,469 105,87", // decimal commas
        "37,469, -105,87",
        "37.469 N -105.87 W", // a sign and a letter
        "37.469 N 105.87 N", // two latitudes
        "37.469 W 105.87 E", // two longitudes
        "37.469 N 105.87", // one letter
        "37.469 105.87 W",
        "90.1, 0",
        "0, 180.1",
        "100 N 105 W",
        "1e1 20",
        "37.469, -105.87, 2300",
        "NaN, NaN",
        "３７, １０５", // full-width digits
        "1234, 5",
      })
  void whatIsNoCoordinateOrCanBeReadInTwoWaysGivesNone(String text) {
    assertThat(Coordinate.parse(text)).isEmpty();
  }

  @Test
  void aVeryLongTextGivesNone() {
    assertThat(Coordinate.parse("1".repeat(100_000) + " 5")).isEmpty();
    assertThat(Coordinate.parse("5 N" + " ".repeat(100_000))).isEmpty();
    assertThat(Coordinate.parse("0." + "1".repeat(100_000) + " 5")).isEmpty();
  }

  @Test
  void whatIsWrittenIsReadBack() {
    Random random = new Random(1884);
    for (int i = 0; i < 1000; i++) {
      double latitude = Math.round(1e5 * (-90 + 180 * random.nextDouble())) / 1e5;
      double longitude = Math.round(1e5 * (-180 + 360 * random.nextDouble())) / 1e5;
      Coordinate written = new Coordinate(latitude, longitude);
      assertThat(Coordinate.parse(String.format(Locale.ROOT, "%.5f,%.5f", latitude, longitude)))
          .contains(written);
      String lettered =
          String.format(
              Locale.ROOT,
              "%.5f %s %.5f %s",
              Math.abs(latitude),
              latitude < 0 ? "S" : "N",
              Math.abs(longitude),
              longitude < 0 ? "W" : "E");
      assertThat(Coordinate.parse(lettered)).contains(written);
    }
  }

  @Test
  void whatIsNotOnTheEarthIsRefused() {
    assertThatThrownBy(() -> new Coordinate(90.01, 0)).hasMessageContaining("90.01");
    assertThatThrownBy(() -> new Coordinate(0, -180.01)).hasMessageContaining("-180.01");
    assertThatThrownBy(() -> new Coordinate(Double.NaN, 0)).hasMessageContaining("NaN");
  }
}

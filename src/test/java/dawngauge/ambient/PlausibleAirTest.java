package dawngauge.ambient;

import static org.assertj.core.api.Assertions.assertThat;

import dawngauge.geo.Coordinate;
import dawngauge.problem.Problem;
import dawngauge.problem.ProblemCode;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Which answers are refused as air that cannot be. */
class PlausibleAirTest {

  private static final Coordinate DENVER = new Coordinate(39.74, -104.99);
  private static final Coordinate OSLO = new Coordinate(59.9, 10.7);

  /** A day by the hour: coldest at 12:00 UTC, warmest twelve hours later. */
  private static List<WeatherAnswer.At> day(Instant from, double low, double high) {
    List<WeatherAnswer.At> hours = new ArrayList<>();
    for (int h = 0; h <= 24; h++) {
      double part = (1 - Math.cos(2 * Math.PI * h / 24)) / 2;
      hours.add(
          new WeatherAnswer.At(from.plus(Duration.ofHours(h)), 273.15 + low + part * (high - low)));
    }
    return hours;
  }

  private static Optional<Problem> doubt(
      Coordinate place, double ground, double cell, String date, double low, double high) {
    Instant from = Instant.parse(date + "T12:00:00Z");
    return PlausibleAir.doubt(
        new WeatherQuery(place, ground, from, from.plus(Duration.ofDays(1))),
        new WeatherAnswer("fake service", from, cell, day(from, low, high)));
  }

  /**
   * Invented days, ordinary at their dates, and a cold one. Written in °F and labelled °C, each is
   * refused.
   */
  @ParameterizedTest
  @CsvSource({
    "2027-01-15, -8, 7",
    "2027-04-15, 1, 16",
    "2027-07-15, 15, 32",
    "2027-10-15, 2, 18",
    "2027-01-15, -14, -2"
  })
  void fahrenheitTakenForCelsiusIsRefusedAndTheSameInCelsiusIsNot(
      String date, double low, double high) {
    assertThat(doubt(DENVER, 1609, Double.NaN, date, low, high)).isEmpty();
    Optional<Problem> refused =
        doubt(DENVER, 1609, Double.NaN, date, 32 + 1.8 * low, 32 + 1.8 * high);
    assertThat(refused)
        .hasValueSatisfying(
            problem -> {
              assertThat(problem.code()).isEqualTo(ProblemCode.FEED_IMPLAUSIBLE);
              assertThat(problem.text())
                  .contains("fake service")
                  .contains("in another unit")
                  .contains("nothing of it is used");
            });
  }

  @Test
  void weatherAtItsEdgeIsNotRefused() {
    // An outbreak about 23 K below a typical day, and a warm spell in winter 13 K above one.
    assertThat(doubt(DENVER, 1609, Double.NaN, "2027-02-13", -29, -20)).isEmpty();
    assertThat(doubt(DENVER, 1609, Double.NaN, "2027-01-15", 3, 22)).isEmpty();
  }

  @Test
  void nothingIsHotterThanEverMeasuredCarriedToTheHeight() {
    assertThat(doubt(OSLO, 100, Double.NaN, "2027-07-15", 20, 55)).isEmpty();
    // 56.7 °C less 6.5 K/km over 3 km: 37.2 °C.
    assertThat(doubt(OSLO, 3000, Double.NaN, "2027-07-15", 20, 37)).isEmpty();
    assertThat(doubt(OSLO, 3000, Double.NaN, "2027-07-15", 20, 38))
        .hasValueSatisfying(problem -> assertThat(problem.text()).contains("to 37 °C"));
  }

  @ParameterizedTest
  @CsvSource({"-9999", "99999", "6001", "3200"})
  void aCellThatCannotLieThereIsRefusedWithItsHeight(double cell) {
    assertThat(doubt(DENVER, 1609, cell, "2027-04-15", 1, 16))
        .hasValueSatisfying(
            problem -> {
              assertThat(problem.code()).isEqualTo(ProblemCode.FEED_WRONG_HEIGHT);
              assertThat(problem.text()).contains(String.format("%.0f m", cell)).contains("1609 m");
            });
    assertThat(doubt(DENVER, 1609, 1500, "2027-04-15", 1, 16)).isEmpty();
  }
}

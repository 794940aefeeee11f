package dawngauge.geo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import dawngauge.geo.Daylight.Sun;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import java.util.Optional;
import java.util.Random;
import net.time4j.Moment;
import net.time4j.PlainDate;
import net.time4j.calendar.astro.SolarTime;
import net.time4j.calendar.astro.StdSolarCalculator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Judged by NOAA's algorithm (Meeus, Astronomical Algorithms, 1991) in another library. */
class DaylightTest {

  private static Optional<Moment> noaaSunrise(LocalDate date, Coordinate place) {
    return PlainDate.from(date).get(noaa(place).sunrise());
  }

  private static Optional<Moment> noaaSunset(LocalDate date, Coordinate place) {
    return PlainDate.from(date).get(noaa(place).sunset());
  }

  private static SolarTime noaa(Coordinate place) {
    return SolarTime.ofLocation(place.latitude(), place.longitude(), 0, StdSolarCalculator.NOAA);
  }

  /** NOAA's algorithm for a high valley in Colorado, 2,348 m, on 9 March 2027. */
  @Test
  void aHighValleyInMarch() {
    Sun sun =
        Daylight.on(
                LocalDate.of(2027, 3, 9),
                ZoneId.of("America/Denver"),
                new Coordinate(38.54, -106.93))
            .orElseThrow();
    assertThat(sun.sunrise())
        .isCloseTo(Instant.parse("2027-03-09T13:28:13Z"), within(30, ChronoUnit.SECONDS));
    assertThat(sun.sunset())
        .isCloseTo(Instant.parse("2027-03-10T01:08:57Z"), within(30, ChronoUnit.SECONDS));
  }

  @Test
  void agreesWithNoaaWithinTwoMinutes() {
    Random random = new Random(2027);
    for (int i = 0; i < 2000; i++) {
      Coordinate place =
          new Coordinate(-60 + 120 * random.nextDouble(), -180 + 360 * random.nextDouble());
      LocalDate date = LocalDate.of(2020, 1, 1).plusDays(random.nextInt(7305));
      ZoneId zone = ZoneOffset.ofHours((int) Math.round(place.longitude() / 15));
      Sun sun = Daylight.on(date, zone, place).orElseThrow();
      assertThat(sun.sunrise().getEpochSecond())
          .as("sunrise at %s on %s", place, date)
          .isCloseTo(noaaSunrise(date, place).orElseThrow().getPosixTime(), within(120L));
      assertThat(sun.sunset().getEpochSecond())
          .as("sunset at %s on %s", place, date)
          .isCloseTo(noaaSunset(date, place).orElseThrow().getPosixTime(), within(120L));
    }
  }

  @ParameterizedTest
  @CsvSource({
    "75, 20, 2027-06-21", // polar day, north
    "75, 20, 2027-12-21", // polar night, north
    "-75, 160, 2027-06-21", // polar night, south
    "-75, 160, 2027-12-21", // polar day, south
    "71.3, -156.8, 2027-05-25", // northern Alaska, spring
    "90, 0, 2027-07-01", // the pole itself
    "-90, 0, 2027-07-01"
  })
  void thereIsNoSunriseInPolarDayOrNight(double latitude, double longitude, LocalDate date) {
    Coordinate place = new Coordinate(latitude, longitude);
    ZoneId zone = ZoneOffset.ofHours((int) Math.round(longitude / 15));
    assertThat(Daylight.on(date, zone, place)).isEmpty();
    assertThat(noaaSunrise(date, place)).isEmpty();
    assertThat(noaaSunset(date, place)).isEmpty();
  }

  /** Interior Alaska at midsummer: the sun of a date sets past the next midnight. */
  @Test
  void theSunMaySetPastMidnight() {
    ZoneId zone = ZoneId.of("America/Anchorage");
    LocalDate date = LocalDate.of(2027, 6, 21);
    Sun sun = Daylight.on(date, zone, new Coordinate(64.84, -147.72)).orElseThrow();
    assertThat(sun.sunrise().atZone(zone).toLocalDate()).isEqualTo(date);
    assertThat(sun.sunset().atZone(zone).toLocalDate()).isEqualTo(date.plusDays(1));
    assertThat(Duration.between(sun.sunrise(), sun.sunset())).isLessThan(Duration.ofHours(22));
  }

  /** Samoa keeps the date of the other side of the date line. */
  @Test
  void theDateIsThatOfTheZone() {
    ZoneId zone = ZoneId.of("Pacific/Apia");
    LocalDate date = LocalDate.of(2027, 3, 20);
    Sun sun = Daylight.on(date, zone, new Coordinate(-13.83, -171.77)).orElseThrow();
    assertThat(sun.sunrise().atZone(zone).toLocalDate()).isEqualTo(date);
    assertThat(sun.sunset().atZone(zone).toLocalDate()).isEqualTo(date);
  }

  /** A zone that is far from the place's own time still gives a day around the sun's noon. */
  @Test
  void aWrongZoneDoesNotLoseTheSun() {
    Coordinate place = new Coordinate(38.54, -106.93);
    LocalDate date = LocalDate.of(2027, 3, 9);
    for (int hours = -12; hours <= 14; hours++) {
      Sun sun = Daylight.on(date, ZoneOffset.ofHours(hours), place).orElseThrow();
      assertThat(Duration.between(sun.sunrise(), sun.sunset()))
          .isCloseTo(Duration.ofMinutes(701), Duration.ofMinutes(4));
    }
  }

  /** Each date has its own sun, also over the changes of summer time. */
  @Test
  void daysFollowEachOtherThroughTheYear() {
    ZoneId zone = ZoneId.of("America/Chicago");
    Coordinate place = new Coordinate(38.8, -97.6);
    Instant previousSunset = Instant.MIN;
    for (LocalDate date = LocalDate.of(2027, 1, 1);
        date.getYear() == 2027;
        date = date.plusDays(1)) {
      Sun sun = Daylight.on(date, zone, place).orElseThrow();
      assertThat(sun.sunrise()).isAfter(previousSunset);
      assertThat(sun.sunrise().atZone(zone).toLocalDate()).isEqualTo(date);
      previousSunset = sun.sunset();
    }
  }

  @Test
  void aSunThatSetsBeforeItRisesIsRefused() {
    Instant now = Instant.parse("2027-03-09T13:28:13Z");
    assertThatIllegalArgumentException().isThrownBy(() -> new Sun(now, now));
  }
}

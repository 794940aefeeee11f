package dawngauge.geo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Objects;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** The data that comes with the program. */
class BundledPlacesTest {
  private static final List<String> NORTH_AMERICA = List.of("US", "CA", "MX");

  private static final Gazetteer GAZETTEER = Gazetteer.load();
  private static final List<Place> ALL =
      IntStream.range(0, GAZETTEER.table().towns()).mapToObj(GAZETTEER.table()::place).toList();

  /** Bounds around what the selection of docs/data.md gives of the source named there. */
  @Test
  void thereAreAsManyPlacesAsTheSelectionGives() {
    assertThat(ALL).hasSizeBetween(68_500, 70_000);
    assertThat(in("US")).hasSizeBetween(16_000, 17_000);
    assertThat(in("CA")).hasSizeBetween(1_100, 1_300);
    assertThat(in("MX")).hasSizeBetween(8_500, 9_000);
  }

  @Test
  void theFileStaysSmall() throws IOException {
    try (InputStream stream = resource("places.tsv.gz")) {
      assertThat(stream.readAllBytes()).hasSizeLessThan(1_400_000);
    }
  }

  @Test
  void theCreditIsBesideTheData() throws IOException {
    try (InputStream stream = resource("SOURCES.md")) {
      assertThat(new String(stream.readAllBytes(), StandardCharsets.UTF_8))
          .contains("GeoNames", "CC BY 4.0");
    }
  }

  /**
   * The lowest and highest towns there are: the shore of the Dead Sea, about −430 m, and La
   * Rinconada in Peru, 5100 m (from memory).
   */
  @Test
  void everyPlaceIsOneWherePeopleLive() {
    assertThat(ALL)
        .allSatisfy(
            place -> {
              int least = NORTH_AMERICA.contains(place.country()) ? 1_000 : 5_000;
              assertThat(place.population()).isBetween(least, 40_000_000);
              assertThat(place.elevation().meters()).isBetween(-430.0, 5_200.0);
              assertThat(FoldedText.of(place.name())).isNotEmpty();
              assertThat(place.country()).matches("[A-Z]{2}");
            });
  }

  @Test
  void inTheUnitedStatesAndCanadaTheStateIsItsPostalCode() {
    assertThat(Stream.concat(in("US").stream(), in("CA").stream()))
        .allSatisfy(place -> assertThat(place.state()).matches("[A-Z]{2}"));
    assertThat(in("US").stream().map(Place::state).distinct()).hasSize(51);
    assertThat(in("CA").stream().map(Place::state).distinct()).hasSize(13);
    assertThat(in("MX").stream().map(Place::state).distinct()).hasSize(32).doesNotContain("");
  }

  @Test
  void everyTimeZoneIsKnownToJava() {
    List<String> ids = BundledLines.of("zones.txt");
    assertThat(ids).hasSizeGreaterThan(300).isSorted();
    assertThat(ids)
        .allSatisfy(
            id -> {
              assertThat(ZoneId.of(id).getId()).isEqualTo(id);
              assertThat(ZoneId.getAvailableZoneIds()).contains(id);
            });
  }

  /** A clock is near the sun: at most 3.5 h off (the west of China, 3 h, is the farthest). */
  @Test
  void everyZoneFitsItsLongitude() {
    Instant winter = Instant.parse("2027-01-15T12:00:00Z");
    assertThat(ALL)
        .allSatisfy(
            place -> {
              double clock =
                  place.zone().getRules().getStandardOffset(winter).getTotalSeconds() / 3600.0;
              double sun = place.coordinate().longitude() / 15;
              assertThat(Math.IEEEremainder(clock - sun, 24)).isCloseTo(0, within(3.5));
            });
  }

  static Stream<Arguments> elevations() {
    return Stream.of(
        // The highest city of the United States: 10,152 ft (Geographic Names Information System).
        Arguments.of("Leadville CO", 3094),
        // A start in the mountains, beside a pass.
        Arguments.of("Salida CO", 2159),
        // A stop on the plains.
        Arguments.of("Dodge City KS", 757),
        // Below sea level: 180 ft under it.
        Arguments.of("Calipatria CA", -55),
        // High in Mexico.
        Arguments.of("Toluca, México", 2660),
        // On the shore, where the elevation model has none and the derivation takes 0 m.
        Arguments.of("Summerside PE", 9),
        // The typed elevation is 15 m, its model 255 m: published 837 ft.
        Arguments.of("Okanogan WA", 255));
  }

  /** Elevations from memory, within 40 m: a town is not level. */
  @ParameterizedTest
  @MethodSource("elevations")
  void aKnownPlaceLiesAsHighAsPublished(String text, double meters) {
    assertThat(only(text).elevation().meters()).isCloseTo(meters, within(40.0));
  }

  static Stream<Arguments> clocks() {
    return Stream.of(
        // Kansas has two zones: Sherman County keeps mountain time (49 CFR 71.7).
        Arguments.of("Goodland KS", "-07:00", "-06:00"),
        Arguments.of("Colby KS", "-06:00", "-05:00"),
        // So has Oregon: Malheur County.
        Arguments.of("Ontario OR", "-07:00", "-06:00"),
        // No summer time.
        Arguments.of("Phoenix AZ", "-07:00", "-07:00"),
        // But in the Navajo Nation there is.
        Arguments.of("Tuba City AZ", "-07:00", "-06:00"),
        Arguments.of("Tok AK", "-09:00", "-08:00"),
        Arguments.of("Honolulu HI", "-10:00", "-10:00"),
        // Half an hour.
        Arguments.of("St. John's NL", "-03:30", "-02:30"),
        // No summer time in Saskatchewan, nor since 2022 in most of Mexico.
        Arguments.of("Regina SK", "-06:00", "-06:00"),
        Arguments.of("Saltillo, Coahuila", "-06:00", "-06:00"),
        // But on its border there is. The zones of the next two are corrected in the derivation.
        Arguments.of("Nuevo Progreso, Tamaulipas", "-06:00", "-05:00"),
        Arguments.of("West Wendover NV", "-07:00", "-06:00"));
  }

  /** Offsets in winter and summer, from memory where no law is named. */
  @ParameterizedTest
  @MethodSource("clocks")
  void aKnownPlaceKeepsItsClock(String text, String winter, String summer) {
    assertThat(offset(only(text), LocalDate.of(2027, 1, 15))).isEqualTo(ZoneOffset.of(winter));
    assertThat(offset(only(text), LocalDate.of(2027, 7, 15))).isEqualTo(ZoneOffset.of(summer));
  }

  private static ZoneOffset offset(Place place, LocalDate date) {
    return date.atTime(LocalTime.NOON).atZone(place.zone()).getOffset();
  }

  private static Place only(String text) {
    return GAZETTEER.search(text, null, 1).get(0);
  }

  private static List<Place> in(String country) {
    return ALL.stream().filter(place -> place.country().equals(country)).toList();
  }

  private static InputStream resource(String name) {
    return Objects.requireNonNull(Gazetteer.class.getResourceAsStream(name));
  }
}

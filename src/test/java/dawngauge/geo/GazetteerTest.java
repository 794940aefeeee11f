package dawngauge.geo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Comparator;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class GazetteerTest {
  private static final Gazetteer GAZETTEER = Gazetteer.load();
  private static final PlaceTable TABLE = GAZETTEER.table();
  private static final NearestPoints NEAREST = new NearestPoints(TABLE.size(), TABLE::coordinate);

  private static final Coordinate ON_THE_PLAINS = new Coordinate(37.75, -100.02);

  private static List<String> labels(String text, Coordinate near) {
    return GAZETTEER.search(text, near, 10).stream().map(Place::label).toList();
  }

  private static List<String> labels(String text) {
    return GAZETTEER.search(text, null, 10).stream().map(Place::label).toList();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        // A state behind the name, as code, name, with country, begun.
        "springfield il | Springfield IL",
        "Springfield, Illinois | Springfield IL",
        "SPRINGFIELD IL USA | Springfield IL",
        "springfield illi | Springfield IL",
        "dodge city k | Dodge City KS",
        "paris tx | Paris TX",
        "mexico mo | Mexico MO",
        "washington, d.c. | Washington DC",
        "new york ny | New York City NY",
        "london on | London ON",
        "saltillo coahuila | Saltillo, Coahuila, Mexico",
        "saltillo, mexico | Saltillo, Coahuila, Mexico",
        // Two states have the code: California and Canada; only one such place is in each.
        "ontario ca | Ontario CA",
        // Accents, and the lack of them.
        "quebec | Québec QC",
        "QUÉBEC | Québec QC",
        "canon city | Cañon City CO",
        "espanola nm | Española NM",
        "lodz | Łódź, Łódź Voivodeship, Poland",
        "sankt poelten | Sankt Pölten, Lower Austria, Austria",
        // Short and long forms.
        "st louis mo | St. Louis MO",
        "saint louis mo | St. Louis MO",
        "ft collins | Fort Collins CO",
        "st johns nl | St. John's NL",
        "coeur dalene | Coeur d'Alene ID",
        "winston salem | Winston-Salem NC",
        // A beginning; a later word.
        "albuq | Albuquerque NM",
        "wendover nv | West Wendover NV",
      })
  void findsFirst(String text, String label) {
    assertThat(labels(text)).startsWith(label);
  }

  @Test
  void namesakesAreToldApartByState() {
    assertThat(labels("springfield"))
        .contains("Springfield MO", "Springfield IL", "Springfield OR", "Springfield OH");
  }

  @Test
  void wholeNamesComeBeforeBeginningsBeforeWordsBeforeParts() {
    assertThat(ranks("lamar")).isSorted().contains(0, 1, 3);
    assertThat(ranks("spring")).isSorted().contains(0, 1);
    assertThat(ranks("dodge")).isSorted().contains(1, 2);
  }

  private static List<Integer> ranks(String text) {
    return GAZETTEER.search(text, null, 100).stream()
        .map(place -> " " + FoldedText.of(place.name()) + " ")
        .map(
            name ->
                name.equals(" " + text + " ")
                    ? 0
                    : name.startsWith(" " + text) ? 1 : name.contains(" " + text) ? 2 : 3)
        .toList();
  }

  @Test
  void amongEqualNamesThePopulousComeFirst() {
    assertThat(labels("paris")).startsWith("Paris, Île-de-France, France", "Paris TX");
    assertThat(GAZETTEER.search("springfield", null, 5))
        .isSortedAccordingTo(Comparator.comparingInt(Place::population).reversed());
  }

  @Test
  void nearTheRouteTheNearComeFirst() {
    assertThat(labels("paris", ON_THE_PLAINS)).startsWith("Paris TX");
    assertThat(labels("springfield", ON_THE_PLAINS)).contains("Springfield CO");
    assertThat(labels("springfield")).doesNotContain("Springfield CO");
    assertThat(labels("la", ON_THE_PLAINS)).contains("Larned KS");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        " ",
        "\n",
        "\t\n,",
        "...",
        "!?#",
        "\u0000",
        "\uD800", // half a character
        "qqqq",
        "zzzz il",
        "東京",
        "Springfield\nQqqq",
        "37.469, -105.87",
      })
  void whatIsNoNameFindsNothing(String text) {
    assertThat(labels(text)).isEmpty();
    assertThat(labels(text, ON_THE_PLAINS)).isEmpty();
  }

  @Test
  void aVeryLongTextFindsNothing() {
    assertThat(labels("a".repeat(1_000_000))).isEmpty();
    assertThat(labels("il ".repeat(66))).isEmpty();
    assertThat(labels("ﷺ".repeat(200))).isEmpty(); // a letter that folds to eighteen
  }

  @Test
  void givesNoMoreThanAsked() {
    assertThat(GAZETTEER.search("san", null, 7)).hasSize(7);
    assertThat(GAZETTEER.search("san", null, 0)).isEmpty();
    assertThat(GAZETTEER.search("san", null, 10_000)).doesNotHaveDuplicates();
  }

  @Test
  void anyPlaceIsFoundByItsNameAndState() {
    Random random = new Random(1862);
    for (int i = 0; i < 500; i++) {
      Place place = TABLE.place(random.nextInt(TABLE.size()));
      assertThat(GAZETTEER.search(place.name() + " " + place.state(), null, 10))
          .as(place.label())
          .contains(place);
      assertThat(GAZETTEER.search(place.label(), place.coordinate(), 10))
          .as(place.label())
          .contains(place);
    }
  }

  /** Against a look at every place. */
  @Test
  void theNearestAreTheNearest() {
    Random random = new Random(1569);
    for (int i = 0; i < 30; i++) {
      Coordinate at =
          new Coordinate(
              Math.toDegrees(Math.asin(-1 + 2 * random.nextDouble())),
              -180 + 360 * random.nextDouble());
      isNearest(at);
    }
    isNearest(new Coordinate(90, 0));
    isNearest(new Coordinate(-90, 10));
    isNearest(new Coordinate(-17, 180));
    isNearest(new Coordinate(-17, -180));
    isNearest(ON_THE_PLAINS);
  }

  private static void isNearest(Coordinate at) {
    double[] all =
        IntStream.range(0, TABLE.size())
            .mapToDouble(i -> GreatCircle.between(at, TABLE.coordinate(i)).meters())
            .sorted()
            .limit(5)
            .toArray();
    List<NearestPoints.Near> found = NEAREST.around(at, 5);
    assertThat(found.stream().mapToDouble(NearestPoints.Near::meters).toArray())
        .containsExactly(all, within(0.01));
  }

  @Test
  void aPlaceIsItsOwnNearest() {
    Place place = GAZETTEER.search("Dodge City KS", null, 1).get(0);
    assertThat(GAZETTEER.nearest(place.coordinate())).contains(place);
    Estimate estimate = GAZETTEER.estimateAt(place.coordinate()).orElseThrow();
    assertThat(estimate.nearest()).isEqualTo(place);
    assertThat(estimate.away().meters()).isZero();
    assertThat(estimate.zone()).isEqualTo(place.zone());
    assertThat(estimate.elevation().meters()).isCloseTo(place.elevation().meters(), within(0.5));
  }

  @Test
  void farFromAllPlacesNothingIsSaid() {
    Coordinate inTheOcean = new Coordinate(0, -140);
    assertThat(GAZETTEER.nearest(inTheOcean)).isEmpty();
    assertThat(GAZETTEER.estimateAt(inTheOcean)).isEmpty();
    assertThat(GAZETTEER.estimateAt(new Coordinate(-90, 0))).isEmpty();
  }

  /**
   * Each of 2000 places of the United States estimated from the others. Measured: see the numbers
   * below.
   */
  @Test
  void heldOutPlacesAreEstimatedWithinTheStatedError() {
    int[] states =
        IntStream.range(0, TABLE.size())
            .filter(i -> TABLE.place(i).country().equals("US"))
            .toArray();
    Random random = new Random(1879);
    DoubleSummaryStatistics errors = new DoubleSummaryStatistics();
    int rightClocks = 0;
    for (int i = 0; i < 2000; i++) {
      int held = states[random.nextInt(states.length)];
      List<NearestPoints.Near> others =
          NEAREST.around(TABLE.coordinate(held), 6).stream()
              .filter(near -> near.index() != held)
              .limit(5)
              .toList();
      double error =
          Gazetteer.elevation(TABLE, TABLE.coordinate(held), others).meters()
              - TABLE.elevation(held);
      errors.accept(Math.abs(error));
      if (clock(others.get(0).index()).equals(clock(held))) {
        rightClocks++;
      }
    }
    assertThat(errors.getAverage()).isLessThan(22);
    assertThat(errors.getMax()).isLessThan(800);
    assertThat(rightClocks).isGreaterThan(1985);
  }

  /** Offsets in winter and summer. */
  private static List<ZoneOffset> clock(int index) {
    return Stream.of("2027-01-15T12:00:00Z", "2027-07-15T12:00:00Z")
        .map(day -> TABLE.zone(index).getRules().getOffset(Instant.parse(day)))
        .toList();
  }
}

package dawngauge.geo;

import static org.assertj.core.api.Assertions.assertThat;

import dawngauge.problem.Outcome;
import dawngauge.problem.ProblemCode;
import java.time.Duration;
import java.time.LocalTime;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Lists of places as people paste them; names and places are those of GeoNames. */
class PlaceListTest {

  private static final Gazetteer GAZETTEER = Gazetteer.load();

  private static Outcome<PlaceList> read(String text) {
    return PlaceList.read(GAZETTEER, text, null, Map.of());
  }

  private static List<PlaceList.Line> lines(String text) {
    return read(text).get().lines();
  }

  private static Spot taken(PlaceList.Line line) {
    Spot spot = line.taken();
    assertThat(spot).as(line.place()).isNotNull();
    return Objects.requireNonNull(spot);
  }

  @Test
  void bulletsNumbersEmptyLinesAndRemarksAreNoPartOfAName() {
    List<PlaceList.Line> lines =
        lines("# the way out\n\n1. Alamosa CO\n - Raton, New Mexico\n• Clayton NM\n");
    assertThat(lines).extracting(PlaceList.Line::number).containsExactly(3, 4, 5);
    assertThat(lines)
        .extracting(line -> taken(line).name())
        .containsExactly("Alamosa CO", "Raton NM", "Clayton NM");
    assertThat(lines).allMatch(PlaceList.Line::isUsable);
  }

  @Test
  void whatIsSaidOfTheStayStandsBehindAnAtSign() {
    List<PlaceList.Line> lines =
        lines(
            "Alamosa CO @ 45 min\nRaton NM @2 h 30 min, Hose\nClayton NM @ overnight 6:05\n"
                + "Dalhart TX @ hose, overnight, 9 h");
    assertThat(lines).allMatch(PlaceList.Line::isUsable);
    assertThat(lines)
        .extracting(PlaceList.Line::stay)
        .containsExactly(
            new PlaceStay(Duration.ofMinutes(45), false, null, false),
            new PlaceStay(Duration.ofMinutes(150), false, null, true),
            new PlaceStay(null, true, LocalTime.of(6, 5), false),
            new PlaceStay(Duration.ofHours(9), true, null, true));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "45 mins | NOT_A_DURATION | 45 mins",
        "hoze | NO_WORD_OF_A_STAY | hoze",
        "overnight 24:00 | NO_WORD_OF_A_STAY | overnight 24:00",
        "20 min, | NO_WORD_OF_A_STAY | overnight 06:00",
        "overnight | NIGHT_WITHOUT_END | overnight, 9 h",
        "hose, overnight | NIGHT_WITHOUT_END | overnight 06:00",
        "overnight 06:00, 9 h | STAY_SAID_TWICE | 9 h",
        "1 h, 2 h | STAY_SAID_TWICE | 2 h",
        "1 h, overnight 06:00 | STAY_SAID_TWICE | overnight 06:00"
      })
  void aStayThatCannotBeReadNamesWhatIsWrongAndAWayOut(String stay, ProblemCode code, String says) {
    PlaceList.Line line = lines("Clayton NM @ " + stay).get(0);
    assertThat(line.isUsable()).isFalse();
    assertThat(line.problems()).hasSize(1);
    assertThat(line.problems().get(0).code()).isEqualTo(code);
    assertThat(line.problems().get(0).text()).contains(says);
    assertThat(taken(line).name()).isEqualTo("Clayton NM");
  }

  @Test
  void aPositionIsNamedAfterTheNearestPlaceOrAsItIsCalled() {
    List<PlaceList.Line> lines = lines("36.06, -102.51\nOld mill = 35.22, -101.83 @ 2 h");
    assertThat(taken(lines.get(0)).name()).startsWith("Near ").endsWith(" TX");
    assertThat(taken(lines.get(0)).at()).isEqualTo(new Coordinate(36.06, -102.51));
    assertThat(taken(lines.get(1)).name()).isEqualTo("Old mill");
    assertThat(taken(lines.get(1)).at()).isEqualTo(new Coordinate(35.22, -101.83));
    assertThat(taken(lines.get(1)).zone()).hasToString("America/Chicago");
  }

  @Test
  void anAmbiguousNameIsTakenNearThePlaceBeforeAndSaidToBeUnsure() {
    PlaceList.Line inIllinois = lines("Peoria IL\nSpringfield").get(1);
    assertThat(taken(inIllinois).name()).isEqualTo("Springfield IL");
    assertThat(inIllinois.isUsable()).isTrue();
    assertThat(inIllinois.problems().get(0).code()).isEqualTo(ProblemCode.PLACE_NOT_SURE);
    assertThat(inIllinois.candidates().size()).isGreaterThan(1);
    Spot other = inIllinois.candidates().get(1);
    PlaceList.Line chosen =
        PlaceList.read(GAZETTEER, "Peoria IL\nSpringfield", null, Map.of("Springfield", other))
            .get()
            .lines()
            .get(1);
    assertThat(chosen.taken()).isEqualTo(other);
    assertThat(chosen.problems()).isEmpty();
  }

  @Test
  void whatIsNoPlaceIsNamedAndKeepsTheListFromBeingUsed() {
    PlaceList list = read("Alamosa CO\nXyzzyville QQ\nMill = nowhere\n95, 12").get();
    assertThat(list.isUsable()).isFalse();
    assertThat(list.lines().subList(1, 4))
        .allSatisfy(
            line -> {
              assertThat(line.taken()).isNull();
              assertThat(line.problems().get(0).code()).isEqualTo(ProblemCode.PLACE_NOT_KNOWN);
              assertThat(line.problems().get(0).text()).contains(line.place());
            });
    assertThat(read("").get().isUsable()).isFalse();
    assertThat(read("  \n# nothing\n").get().lines()).isEmpty();
  }

  @Test
  void aListThatIsTooLongSaysHowLong() {
    Outcome<PlaceList> outcome = read("Raton NM\n".repeat(PlaceList.MOST + 1));
    assertThat(outcome.hasValue()).isFalse();
    assertThat(outcome.problems().get(0).text()).contains("201").contains("200");
    assertThat(read("Raton NM\n".repeat(PlaceList.MOST)).get().lines()).hasSize(PlaceList.MOST);
  }

  @Test
  void aNameOfAnyLengthIsShortenedInWhatIsSaid() {
    @Nullable Spot none = lines("x".repeat(5000)).get(0).taken();
    assertThat(none).isNull();
    assertThat(lines("x".repeat(5000)).get(0).problems().get(0).text()).hasSizeLessThan(300);
  }
}

package dawngauge.geo;

import static org.assertj.core.api.Assertions.assertThat;

import dawngauge.problem.Outcome;
import dawngauge.problem.ProblemCode;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

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
  void aStayStandsBehindAnAtSign() {
    List<PlaceList.Line> lines = lines("Alamosa CO @ 45 min\nRaton NM @2 h 30 min\nClayton NM @ x");
    assertThat(lines.get(0).stay()).isEqualTo(Duration.ofMinutes(45));
    assertThat(lines.get(1).stay()).isEqualTo(Duration.ofMinutes(150));
    assertThat(lines.get(2).isUsable()).isFalse();
    assertThat(lines.get(2).problems().get(0).code()).isEqualTo(ProblemCode.NOT_A_DURATION);
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

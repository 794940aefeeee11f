package dawngauge.tripfile;

import static org.assertj.core.api.Assertions.assertThat;

import dawngauge.problem.Outcome;
import dawngauge.problem.Problem;
import dawngauge.problem.ProblemCode;
import dawngauge.trip.Remarks;
import dawngauge.trip.Trip;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Long texts in old files, in edits, and where they are shown; and texts with half a character. */
class TextLengthsTest {

  private static final String SMALL = Samples.text("small.dawngauge");

  private static Trip named(int letters) {
    return named(TripFile.parse(SMALL).get(), "n".repeat(letters));
  }

  private static Trip named(Trip trip, String name) {
    return with(trip, name, trip.remarks());
  }

  private static Trip noted(Trip trip, int letters) {
    return with(trip, trip.name(), new Remarks("n".repeat(letters), Map.of()));
  }

  private static Trip with(Trip trip, String name, Remarks remarks) {
    return new Trip(
        name,
        trip.rig(),
        trip.route(),
        trip.ambient(),
        trip.earlierAmbient(),
        trip.log(),
        trip.plan(),
        remarks);
  }

  @Test
  void aLongNameInAFileIsReadKeptAndTold() {
    Outcome<Trip> read = TripFile.parse(TripFile.text(named(30_000)));
    assertThat(read.get().name()).hasSize(30_000);
    assertThat(read.problems())
        .filteredOn(problem -> problem.code() == ProblemCode.TEXT_TOO_LONG)
        .singleElement()
        .satisfies(
            problem -> {
              assertThat(problem.where()).isEqualTo("/name");
              assertThat(problem.text()).contains("30000").contains("200").contains("shorten it");
            });
    assertThat(TripFile.parse(TripFile.text(named(200))).problems())
        .extracting(Problem::code)
        .doesNotContain(ProblemCode.TEXT_TOO_LONG);
  }

  @Test
  void onlyAnEditThatBringsALongTextIsRefused() {
    Trip old = named(300);
    Trip edited = noted(old, 2000);
    assertThat(TextLengths.refused(old, edited)).isEmpty();
    assertThat(TextLengths.refused(old, named(old, "m".repeat(201))))
        .singleElement()
        .satisfies(problem -> assertThat(problem.text()).contains("201").contains("200"));
    Trip noted = noted(old, 2001);
    assertThat(TextLengths.refused(old, noted))
        .extracting(Problem::code)
        .containsExactly(ProblemCode.TEXT_NOT_TAKEN);
    assertThat(TextLengths.refused(noted, named(200))).isEmpty();
  }

  @Test
  void whatIsShownIsShortenedAtAWholeCharacter() {
    Trip old = named(TripFile.parse(SMALL).get(), "\uD83D\uDC0E".repeat(300));
    Trip shown = TextLengths.shortened(old);
    assertThat(shown.name().codePointCount(0, shown.name().length())).isEqualTo(200);
    assertThat(shown.name()).endsWith("\uD83D\uDC0E…");
    assertThat(named(shown, old.name())).isEqualTo(old);
    Trip plain = named(200);
    assertThat(TextLengths.shortened(plain)).isSameAs(plain);
  }

  @ParameterizedTest
  @ValueSource(strings = {"\\ud800", "a\\udc00", "\\udc00\\ud800"})
  void halfACharacterIsRefusedOnReading(String half) {
    Outcome<Trip> read =
        TripFile.parse(
            SMALL.replaceFirst("\\{", "{\"x-mine\": \"" + half.replace("\\", "\\\\") + "\","));
    assertThat(read.problems())
        .singleElement()
        .satisfies(
            problem -> {
              assertThat(problem.code()).isEqualTo(ProblemCode.HALF_CHARACTER);
              assertThat(problem.where()).isEqualTo("/x-mine");
            });
    assertThat(read.hasValue()).isFalse();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "{\"a\": tru}",
        "{\"a\" 1}",
        "{a: 1}",
        "{\"a\": \"\u0001\"}",
        "{\"a\": 01}",
        "[1,]",
        "{"
      })
  void whatIsWrongInTheTextIsSaidWithoutThePartsOfAReader(String json) {
    assertThat(TripFile.parse(json).problems().get(0).text())
        .startsWith("line 1, column ")
        .doesNotContainIgnoringCase("token")
        .doesNotContain("code ")
        .doesNotContain("Source")
        .doesNotContain("JSON String")
        .doesNotContain("JsonParser");
  }
}

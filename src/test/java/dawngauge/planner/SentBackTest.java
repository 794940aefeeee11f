package dawngauge.planner;

import static org.assertj.core.api.Assertions.assertThat;

import dawngauge.problem.Outcome;
import dawngauge.problem.Problem;
import dawngauge.settings.SettingsFile;
import dawngauge.trip.LogEvent;
import dawngauge.trip.Taken;
import dawngauge.trip.Trip;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What a page for the phone sent back goes into the trip once, and changes nothing there. */
class SentBackTest {

  private static final TripStore STORE = new Planner(SettingsFile.defaults(), List.of()).store();
  private static final Trip DEMO =
      STORE.open(Path.of("demo-data/spring-fleece-haul.dawngauge")).get();
  private static final String READING =
      """
      {"kind": "reading", "stop": "quanah", "tire": "T4", "at": "2027-04-06T17:50",
       "figure": "84 psi", "gauge": "cab gauge", "state": "warm"}""";

  private static String sent(String entries) {
    return """
        {"format": "dawngauge taken", "version": 1, "trip": "x", "fingerprint": "%s",
         "made": "2027-04-06T02:10:00Z", "entries": [%s]}"""
        .formatted(STORE.fingerprint(DEMO), entries);
  }

  private static SentBack brought(Trip trip, String text) {
    return STORE.with(trip, STORE.sentBack(text).get());
  }

  private static List<String> told(SentBack back) {
    return back.problems().stream().map(Problem::text).toList();
  }

  @Test
  void aReadingHasTheClockOfItsStop() {
    SentBack back = brought(DEMO, sent(READING));
    assertThat(back.problems()).isEmpty();
    assertThat(back.told()).isEqualTo("1 thing taken in");
    LogEvent event = back.trip().log().get(back.trip().log().size() - 1);
    assertThat(event.time().text()).isEqualTo("2027-04-06T17:50-05:00[America/Chicago]");
    assertThat(((LogEvent.Reading) event).pressure().text()).isEqualTo("84 psi");
  }

  @Test
  void theSameAgainIsKnown() {
    Trip once = brought(DEMO, sent(READING)).trip();
    SentBack twice = brought(once, sent(READING));
    assertThat(twice.trip()).isEqualTo(once);
    assertThat(twice.told()).isEqualTo("0 things taken in, 1 noted already");
  }

  @Test
  void anotherFigureOfTheSameMinuteIsToldAndWhatIsNotedStays() {
    Trip once = brought(DEMO, sent(READING)).trip();
    SentBack other = brought(once, sent(READING.replace("84 psi", "74 psi")));
    assertThat(other.trip()).isEqualTo(once);
    assertThat(told(other))
        .containsExactly(
            "left out: 2027-04-06 17:50 t2r 74 psi: it was noted as 84 psi, warm; change it there");
  }

  @Test
  void whatWasSetHasWhatWasReadBeforeIt() {
    String set = READING.replace("reading", "set").replace("17:50", "17:58");
    SentBack back = brought(DEMO, sent(READING + ", " + set.replace("84 psi", "87 psi")));
    LogEvent event = back.trip().log().get(back.trip().log().size() - 1);
    assertThat(event).isInstanceOf(LogEvent.Adjustment.class);
    LogEvent.Adjustment adjustment = (LogEvent.Adjustment) event;
    assertThat(adjustment.to().text()).isEqualTo("87 psi");
    assertThat(Objects.requireNonNull(adjustment.from()).text()).isEqualTo("84 psi");
  }

  @Test
  void aNoteIsKept() {
    SentBack back =
        brought(
            DEMO,
            sent(
                """
                {"kind": "note", "stop": "quanah", "at": "2027-04-06T17:55", "text": "hub warm"}"""));
    assertThat(back.added()).isEqualTo(1);
    assertThat(back.trip().log())
        .anyMatch(event -> event instanceof LogEvent.Note note && note.text().equals("hub warm"));
  }

  @Test
  void anEmptyNoteAndOneThatIsTooLongAreLeftOut() {
    String note =
        """
        {"kind": "note", "stop": "quanah", "at": "2027-04-06T17:55", "text": "%s"}""";
    SentBack back =
        brought(
            DEMO,
            sent(note.formatted(" ") + ", " + note.formatted("x".repeat(Taken.LONGEST_NOTE + 1))));
    assertThat(back.trip()).isEqualTo(DEMO);
    assertThat(told(back)).hasSize(2);
    assertThat(told(back).get(0)).endsWith("the note is empty");
    assertThat(told(back).get(1)).contains("the most is 200").hasSizeLessThan(400);
    assertThat(brought(DEMO, sent(note.formatted("x".repeat(Taken.LONGEST_NOTE)))).added())
        .isEqualTo(1);
  }

  @Test
  void whatTheTripDoesNotHaveIsLeftOutWithItsReason() {
    SentBack back =
        brought(
            DEMO,
            sent(
                String.join(
                    ", ",
                    READING.replace("quanah", "nowhere"),
                    READING.replace("T4", "T99"),
                    READING.replace("cab gauge", "other gauge"),
                    READING.replace("84 psi", "84 miles"),
                    READING.replace("84 psi", "900 psi"),
                    READING.replace("17:50", "25:50"),
                    READING.replace("warm", "tepid"))));
    assertThat(back.added()).isZero();
    assertThat(back.trip()).isEqualTo(DEMO);
    List<String> told = told(back);
    assertThat(told).hasSize(7);
    assertThat(told.get(0)).endsWith("the trip has no such stop");
    assertThat(told.get(1)).endsWith("the rig has no such tire");
    assertThat(told.get(2)).endsWith("the rig has no gauge \"other gauge\"");
    assertThat(told.get(3)).contains("84 miles");
    assertThat(told.get(4)).contains("900 psi");
    assertThat(told.get(5)).endsWith("no such time can be");
    assertThat(told.get(6)).endsWith("this version does not know what it is");
  }

  @Test
  void aPageOfAnotherTripIsTold() {
    Trip later = DEMO.withName("Another haul");
    assertThat(told(brought(later, sent(READING))))
        .containsExactly(
            "the page was made when the trip was not as it is now: what it told may not hold; make a"
                + " new one");
  }

  @Test
  void whatIsNotedMeanwhileMakesNoOtherTrip() {
    Trip noted = brought(DEMO, sent(READING)).trip();
    assertThat(STORE.fingerprint(noted)).isEqualTo(STORE.fingerprint(DEMO));
  }

  @Test
  void wordsAroundTheTextDoNoHarm() {
    assertThat(brought(DEMO, "Here it is:\n" + sent(READING) + "\nsent from a phone").added())
        .isEqualTo(1);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "no",
        "{",
        "{}",
        "}{",
        "{\"format\": \"dawngauge taken\", \"version\": 1, \"entries\": [",
        "{\"format\": \"dawngauge taken\", \"version\": 1, \"entries\": {}}",
        "{\"format\": \"dawngauge taken\", \"version\": 2, \"entries\": []}",
        "{\"format\": \"something\", \"version\": 1, \"entries\": []}"
      })
  void somethingElseIsRefusedWithTheWayOut(String text) {
    Outcome<Taken> read = STORE.sentBack(text);
    assertThat(read.hasValue()).isFalse();
    assertThat(read.problems().get(0).text())
        .startsWith("that is not what a page for the phone sends back: ")
        .endsWith("choose the file that it saved");
  }
}

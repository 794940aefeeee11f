package dawngauge.cli;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Stops and positions are found by what a person would type; if not, the message lists them. */
class TypedNamesTest {
  private static Run explain(String stop, String tire) {
    return Run.of("explain", Run.DEMO, "--stop", stop, "--tire", tire);
  }

  @ParameterizedTest
  @ValueSource(strings = {"7", "Quanah TX", "quanah tx", "quanah", "Quana", " Quanah "})
  void aStopIsItsNumberIdPlaceOrAPartOfIt(String stop) {
    assertThat(explain(stop, "t2l").out()).startsWith("Quanah TX, leaving 18:30");
  }

  @ParameterizedTest
  @ValueSource(strings = {"p2ri", "P2RI", "pickup axle 2 right inner"})
  void aPositionIsItsWordsOrItsShortForm(String tire) {
    assertThat(explain("1", tire).out()).contains("pickup axle 2 right inner (p2ri)");
  }

  @Test
  void anUnknownPositionListsThoseThereAre() {
    Run run = explain("1", "t9l");
    assertThat(run.err())
        .contains("t9l")
        .contains("p1l, p1r, p2lo, p2li, p2ri, p2ro, t1l, t1r, t2l, t2r");
  }

  @Test
  void anUnknownStopListsThoseThereAre() {
    assertThat(explain("Denver", "t2l").err())
        .contains("Denver")
        .contains("1 Alamosa CO, 2 Walsenburg CO")
        .contains("13 Childress TX");
    assertThat(explain("14", "t2l").err()).contains("stops 1 to 13");
    assertThat(explain("", "t2l").code()).isEqualTo(64);
  }

  @Test
  void stopAndPositionAreReportedTogether() {
    assertThat(explain("Denver", "t9l").err()).contains("Denver").contains("t9l");
  }

  @Test
  void aPartThatFitsSeveralStopsListsThoseWithTheirNumbers() {
    Run run = explain("CO", "t2l");
    assertThat(run.code()).isEqualTo(64);
    assertThat(run.err()).contains("several stops: 1 Alamosa CO, 2 Walsenburg CO;");
  }

  @Test
  void aPlaceThatIsVisitedTwiceIsAmbiguousEvenWhenTypedInFull() {
    String thereAndBack = Run.text(Run.DEMO).replace("\"Amarillo TX\"", "\"Dalhart TX\"");
    Run run = Run.ofText(thereAndBack, "explain", "-", "--stop", "Dalhart TX", "--tire", "t2l");
    assertThat(run.code()).isEqualTo(64);
    assertThat(run.err()).contains("5 Dalhart TX, 6 Dalhart TX");
  }

  @Test
  void accentsMayBeTypedAsOneLetterOrTwo() {
    String accented = Run.text(Run.DEMO).replace("\"Quanah TX\"", "\"Ca\u00F1on TX\"");
    Run run = Run.ofText(accented, "explain", "-", "--stop", "can\u0303on", "--tire", "t2l");
    assertThat(run.code()).isZero();
    assertThat(run.out()).startsWith("Ca\u00F1on TX");
  }

  @Test
  void atTheLastStopTheArrivalIsExplained() {
    assertThat(explain("13", "t2l").out()).startsWith("Childress TX, arriving 04:18");
    assertThat(explain("12", "t2l").out()).startsWith("Wichita Falls TX, leaving 02:15");
  }

  @Test
  void aStopWhoseTimeIsNotKnownIsNotExplained() {
    Run run = Run.of("explain", Run.sample("full"), "--stop", "4", "--tire", "t1l");
    assertThat(run.code()).isEqualTo(65);
    assertThat(run.err()).startsWith("the time at Lamar CO is not known");
    assertThat(run.out()).isEmpty();
  }
}

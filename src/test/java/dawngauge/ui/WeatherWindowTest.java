package dawngauge.ui;

import static org.assertj.core.api.Assertions.assertThat;

import dawngauge.trip.Provenance;
import dawngauge.trip.Trip;
import java.util.concurrent.CountDownLatch;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.Test;

/** Air filled in from a weather service, beside everything else. */
class WeatherWindowTest extends WindowTest {

  private static long fed(Trip trip) {
    return trip.ambient().stream()
        .filter(entry -> entry.provenance().kind() == Provenance.Kind.FEED)
        .count();
  }

  private static String notice(OpenWindow open) {
    return String.join("\n", open.texts("notice"));
  }

  @Test
  void nothingIsAskedWithoutConsent() {
    OpenWindow open = open(demo());
    open.answers.agrees = false;
    open.press(open.buttons("Get temperatures").get(0));
    assertThat(open.answers.asked).containsExactly("agree ");
    assertThat(open.weather.asked()).isZero();
    assertThat(open.document.trip().equals(demo())).isTrue();
  }

  @Test
  void oneButtonFillsTheRouteAndUndoTakesItBackInOneStep() {
    OpenWindow open = open(demo());
    open.keys(KeyCode.SHORTCUT, KeyCode.R);
    open.until("it is told", () -> notice(open).contains("Places on the way"));
    assertThat(notice(open))
        .contains("by Test service, issued Tue 6 Apr 2027 06:30 UTC")
        .contains("What is typed stays");
    Trip filled = open.document.trip();
    assertThat(fed(filled)).isPositive();
    assertThat(filled.ambient().stream().filter(e -> demo().ambient().contains(e)).count())
        .as("what was typed")
        .isEqualTo(
            demo().ambient().stream()
                .filter(e -> e.provenance().kind() == Provenance.Kind.TYPED)
                .count());
    open.press(open.buttons("Undo").get(0));
    assertThat(open.document.trip().equals(demo())).isTrue();
    assertThat(notice(open)).as("gone with its edit").doesNotContain("Places on the way");
  }

  @Test
  void aWrongContactIsAskedForAgain() {
    OpenWindow open = open(demo());
    open.answers.contact = "nobody";
    open.answers.refuseAfter = 2;
    open.press(open.buttons("Get temperatures").get(0));
    assertThat(open.answers.asked).hasSize(2);
    assertThat(open.answers.asked.get(1)).contains("nobody").contains("is no contact");
    assertThat(open.weather.asked()).isZero();
  }

  @Test
  void aSecondQuestionTellsWhatChanged() {
    OpenWindow open = open(gap());
    open.press(open.buttons("Get temperatures").get(0));
    open.until("it is told", () -> notice(open).contains("Places on the way"));
    open.weather.expects(-4);
    open.press(open.buttons("Get temperatures").get(0));
    open.until("the change is told", () -> notice(open).contains("Since the last time"));
    assertThat(notice(open)).contains("16 °F colder").contains("Raton NM");
  }

  @Test
  void theWindowWorksOnAndTheQuestionCanBeStopped() {
    OpenWindow open = open(demo());
    CountDownLatch gate = open.weather.wait(1);
    open.press(open.buttons("Get temperatures").get(0));
    open.until("it says what it asks for", () -> notice(open).startsWith("Asking for"));
    assertThat(open.buttons("Get temperatures").get(0).isDisabled()).isTrue();
    open.press(open.buttons("Remove").get(0));
    assertThat(open.document.dirtyProperty().get()).isTrue();
    Trip edited = open.document.trip();
    open.press(open.buttons("Stop").get(0));
    gate.countDown();
    open.until("it is told", () -> notice(open).startsWith("Stopped"));
    assertThat(open.document.trip().equals(edited)).isTrue();
    assertThat(open.buttons("Get temperatures").get(0).isDisabled()).isFalse();
  }

  @Test
  void withoutANetworkWhatIsKnownStaysAndTypicalAirHelps() {
    OpenWindow open = open(gap());
    open.weather.fail();
    open.press(open.buttons("Get temperatures").get(0));
    open.until("it is told", () -> notice(open).contains("cannot be reached"));
    assertThat(notice(open)).contains("typical for the date, not a forecast");
    assertThat(open.column("mark")).doesNotContain("not known");
  }
}

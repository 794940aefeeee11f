package dawngauge.ui;

import static org.assertj.core.api.Assertions.assertThat;

import dawngauge.trip.LogEvent;
import dawngauge.trip.Trip;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javafx.scene.control.Button;
import javafx.scene.input.Clipboard;
import javafx.scene.input.DataFormat;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The page for the phone from the window, and what it sent back into it. */
class PhoneFilesWindowTest extends WindowTest {

  private static String notice(OpenWindow open) {
    return String.join("\n", open.texts("notice"));
  }

  private static String sent(Trip trip, String stop, String figure) {
    return """
        {"format": "dawngauge taken", "version": 1, "fingerprint": "%s", "entries": [
         {"kind": "reading", "stop": "%s", "tire": "T4", "at": "2027-04-06T17:50",
          "figure": "%s", "gauge": "cab gauge", "state": "warm"}]}
        """
        .formatted(planner().store().fingerprint(trip), stop, figure);
  }

  private static long readings(OpenWindow open) {
    return open.document.trip().log().stream()
        .filter(event -> event instanceof LogEvent.Reading)
        .count();
  }

  @Test
  void thePageIsWrittenWhereItIsWanted(@TempDir Path here) throws IOException {
    OpenWindow open = open(demo());
    Path file = here.resolve("trip.html");
    open.answers.file = Optional.of(file);
    open.choose("Road", "Page for the phone…");
    open.until("it is told", () -> notice(open).contains("The page for the phone is in"));
    assertThat(open.answers.asked)
        .containsExactly("write page for the phone Spring fleece haul.html");
    assertThat(Files.readString(file)).contains("1. Alamosa CO").contains("8. Floydada TX");
  }

  @Test
  void itsMakingCanBeStopped(@TempDir Path here) {
    OpenWindow open = open(demo());
    Path file = here.resolve("trip.html");
    open.answers.file = Optional.of(file);
    open.choose("Road", "Page for the phone…");
    open.until("it is being made", () -> notice(open).contains("is being made"));
    open.press(open.nodes(Button.class, known -> known.getText().equals("Stop")).get(0));
    open.until("it is stopped", () -> notice(open).contains("Stopped; no page"));
    assertThat(file).doesNotExist();
  }

  @Test
  void aFileThatWasSentBackIsTakenInOnceAndUndone(@TempDir Path here) throws IOException {
    OpenWindow open = open(demo());
    long before = readings(open);
    Path file =
        Files.writeString(here.resolve("r.json"), sent(open.document.trip(), "quanah", "84 psi"));
    open.answers.file = Optional.of(file);
    open.choose("Road", "Take in what the phone sent back…");
    open.until("it is told", () -> notice(open).contains("r.json: 1 thing taken in; undo"));
    assertThat(readings(open)).isEqualTo(before + 1);
    open.choose("Road", "Take in what the phone sent back…");
    open.until("it is known", () -> notice(open).contains("0 things taken in, 1 noted already"));
    assertThat(readings(open)).isEqualTo(before + 1);
    open.keys(KeyCode.SHORTCUT, KeyCode.Z);
    open.until("it is undone", () -> readings(open) == before);
  }

  @Test
  void whatWasCopiedIsTakenInAndWhatCannotBeIsListed() {
    OpenWindow open = open(demo());
    copy(sent(open.document.trip(), "nowhere", "84 psi"));
    open.choose("Road", "Paste what the phone sent back");
    open.until("it is listed", () -> open.texts("left-out").size() == 1);
    assertThat(open.texts("left-out").get(0))
        .isEqualTo("left out: 2027-04-06 17:50 t2r 84 psi: the trip has no such stop");
    copy("a letter");
    open.choose("Road", "Paste what the phone sent back");
    open.until(
        "it is refused",
        () -> notice(open).contains("What was pasted: that is not what a page for the phone"));
  }

  private static void copy(String text) {
    OpenWindow.onToolkit(
        () -> Clipboard.getSystemClipboard().setContent(Map.of(DataFormat.PLAIN_TEXT, text)));
  }

  @Test
  void aFileThatIsDroppedIsTakenIn(@TempDir Path here) throws IOException {
    OpenWindow open = open(demo());
    long before = readings(open);
    Path file =
        Files.writeString(here.resolve("r.json"), sent(open.document.trip(), "quanah", "84 psi"));
    open.run(() -> open.window.dropped(List.of(file.toFile())));
    open.until("it is taken in", () -> readings(open) == before + 1);
  }
}

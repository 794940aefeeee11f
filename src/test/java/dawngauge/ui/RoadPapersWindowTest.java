package dawngauge.ui;

import static org.assertj.core.api.Assertions.assertThat;

import dawngauge.testdata.FakeWeatherAccess;
import dawngauge.ui.common.TripDocument;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.Label;
import javafx.scene.control.MenuBar;
import javafx.scene.control.MenuItem;
import javafx.scene.input.Clipboard;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Sheet, calendar and reminders from the window. */
class RoadPapersWindowTest extends WindowTest {

  private static String notice(OpenWindow open) {
    return String.join("\n", open.texts("notice"));
  }

  @Test
  void theSheetIsWrittenWhereItIsWanted(@TempDir Path here) throws IOException {
    OpenWindow open = open(demo());
    Path file = here.resolve("sheet.pdf");
    open.answers.file = Optional.of(file);
    open.keys(KeyCode.SHORTCUT, KeyCode.P);
    open.until("it is told", () -> notice(open).contains("The crew sheet is in"));
    assertThat(open.answers.asked).containsExactly("write crew sheet Spring fleece haul.pdf");
    String begin =
        new String(Files.readAllBytes(file), StandardCharsets.ISO_8859_1).substring(0, 5);
    assertThat(begin).isEqualTo("%PDF-");
    open.answers.file = Optional.of(here.resolve("no such folder").resolve("sheet.pdf"));
    open.choosePaper("Crew sheet, A4, large type…");
    open.until("why not is told", () -> notice(open).contains("is not written"));
  }

  @Test
  void theCalendarIsBroughtUpToDateAndAForeignOneIsLeftAlone(@TempDir Path here)
      throws IOException {
    OpenWindow open = open(demo());
    Path file = here.resolve("haul.ics");
    open.answers.file = Optional.of(file);
    open.choosePaper("Reminders as a calendar…");
    open.until("it is there", () -> Files.exists(file) && notice(open).contains("is in"));
    assertThat(Files.readString(file)).contains("SEQUENCE:0\r\n", "BEGIN:VALARM");
    open.choosePaper("Reminders as a calendar…");
    open.until("it is the next one", () -> Files.readString(file).contains("SEQUENCE:1\r\n"));
    String foreign = "BEGIN:VCALENDAR\r\nVERSION:2.0\r\nPRODID:x\r\nEND:VCALENDAR\r\n";
    Files.writeString(file, foreign);
    open.choosePaper("Reminders as a calendar…");
    open.until("it is refused", () -> notice(open).contains("is not replaced"));
    assertThat(Files.readString(file)).isEqualTo(foreign);
  }

  /** At Floydada the tires are to be gauged from 07:00 CDT (12:00 UTC) on 7 April 2027. */
  @Test
  void whenItIsTimeItIsCalledOutOnceForEachAlarm() {
    FakeWeatherAccess clock = new FakeWeatherAccess();
    OpenWindow.onToolkit(
        () -> {
          NoticeBar notices = new NoticeBar();
          TripDocument document = new TripDocument(planner(), demo());
          ExportActions papers = new ExportActions(document, clock, new FakeAsker(), notices);
          papers.watch();
          papers.end();
          assertThat(told(notices)).isEmpty();
          papers.look(Instant.parse("2027-04-07T11:44:00Z"));
          assertThat(told(notices)).noneMatch(text -> text.contains("Floydada"));
          papers.look(Instant.parse("2027-04-07T11:45:10Z"));
          assertThat(told(notices))
              .anySatisfy(
                  text ->
                      assertThat(text)
                          .startsWith("Gauge, cold: Floydada TX")
                          .contains("All tires, cold, 07:00", "before sun"));
          notices.clear("reminder floydada/start");
          assertThat(told(notices)).isEmpty();
          papers.look(Instant.parse("2027-04-07T11:50:00Z"));
          assertThat(told(notices)).as("not twice for one alarm").isEmpty();
          papers.look(Instant.parse("2027-04-07T12:00:00Z"));
          assertThat(told(notices)).as("the second alarm").hasSize(1);
          return true;
        });
  }

  @Test
  void whatIsUnderWayWhenTheProgramBeginsIsCalledOut() {
    FakeWeatherAccess clock = new FakeWeatherAccess();
    clock.time(Instant.parse("2027-04-07T12:10:00Z"));
    OpenWindow open = open(demo());
    NoticeBar notices = OpenWindow.onToolkit(NoticeBar::new);
    open.run(
        () -> {
          ExportActions papers = new ExportActions(open.document, clock, new FakeAsker(), notices);
          papers.watch();
          papers.end();
        });
    open.until("it is called out", () -> !told(notices).isEmpty());
    assertThat(told(notices)).singleElement().asString().contains("Floydada TX");
  }

  private static List<String> told(NoticeBar notices) {
    List<String> texts = new ArrayList<>();
    gather(notices, texts);
    return texts;
  }

  private static void gather(Node node, List<String> texts) {
    if (node instanceof Label label && label.getStyleClass().contains("notice")) {
      texts.add(label.getText());
    } else if (node instanceof Parent parent) {
      parent.getChildrenUnmodifiable().forEach(child -> gather(child, texts));
    }
  }

  @Test
  void theLedgerIsCopiedAsTextAndAsATable() {
    OpenWindow open = open(demo());
    open.focusStop(0);
    open.keys(KeyCode.SHORTCUT, KeyCode.SHIFT, KeyCode.C);
    open.until("the text is there", () -> copied().contains("5. Dalhart TX"));
    assertThat(OpenWindow.onToolkit(RoadPapersWindowTest::copied))
        .startsWith("Spring fleece haul")
        .contains("CAUTIONS");
    MenuItem table =
        open.nodes(MenuBar.class, known -> true).get(0).getMenus().get(1).getItems().stream()
            .filter(item -> "Copy the forecast as a table".equals(item.getText()))
            .findFirst()
            .orElseThrow();
    open.run(table::fire);
    open.until("the table is there", () -> copied().startsWith("stop\tplace\tkind"));
    List<String> lines = OpenWindow.onToolkit(RoadPapersWindowTest::copied).lines().toList();
    assertThat(lines).hasSize(1 + 13 * 10);
    int columns = lines.get(0).split("\t", -1).length;
    assertThat(columns).isGreaterThan(30);
    assertThat(lines).allMatch(line -> line.split("\t", -1).length == columns);
  }

  private static String copied() {
    return String.valueOf(Clipboard.getSystemClipboard().getString());
  }
}

package dawngauge.ui;

import static org.assertj.core.api.Assertions.assertThat;

import dawngauge.trip.Stop;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import javafx.scene.control.CheckBox;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Routes from GPX files in the window: chosen, dropped, undone, written. */
class TrackWindowTest extends WindowTest {

  /** From Alamosa to the east, over an invented pass. */
  private static Path track(Path folder) throws IOException {
    StringBuilder points = new StringBuilder();
    for (int i = 0; i <= 60; i++) {
      double part = i / 60.0;
      points
          .append("<trkpt lat=\"")
          .append(37.47 + part * (36.06 - 37.47))
          .append("\" lon=\"")
          .append(-105.87 + part * (-98.0 + 105.87))
          .append("\"><ele>")
          .append(2300 - 1086 * part + (i == 20 ? 700 : 0))
          .append("</ele>")
          .append(i == 20 ? "<name>Pass</name>" : "")
          .append("</trkpt>\n");
    }
    points.append("<trkpt lat=\"99\" lon=\"0\"></trkpt>\n");
    Path file = folder.resolve("way.gpx");
    Files.writeString(
        file,
        "<?xml version=\"1.0\"?>\n<gpx version=\"1.1\" creator=\"invented\""
            + " xmlns=\"http://www.topografix.com/GPX/1/1\">\n<trk><name>Way</name><trkseg>\n"
            + points
            + "</trkseg></trk>\n</gpx>\n");
    return file;
  }

  @Test
  void aTrackIsTakenByKeyboardAndUndone(@TempDir Path folder) throws IOException {
    OpenWindow open = open(demo());
    List<String> before = open.column("stop");
    open.answers.file = Optional.of(track(folder));
    open.keys(KeyCode.SHORTCUT, KeyCode.G);
    open.until("its points are offered", () -> !open.buttons("Make this the route").isEmpty());
    List<CheckBox> boxes = open.nodes(CheckBox.class, box -> true);
    assertThat(boxes).anyMatch(box -> box.getText().endsWith("Pass") && box.isSelected());
    assertThat(boxes).anyMatch(box -> box.getText().contains("near ") && !box.isSelected());
    assertThat(open.texts("lesser"))
        .anySatisfy(text -> assertThat(text).contains("left out: lat 99"));
    open.press(open.buttons("Make this the route").get(0));
    open.until("it is the route", () -> open.column("stop").size() == 3);
    assertThat(open.column("stop").get(1)).isEqualTo("Pass");
    List<Stop> stops = open.document.trip().route().stops();
    assertThat(stops.get(0).leave()).as("the departure stays").isNotNull();
    assertThat(open.document.trip().route().legs().get(0).distance()).isNotNull();
    assertThat(open.document.planned().advice()).isNotNull();
    open.press(open.buttons("Undo").get(0));
    open.until("the old route is back", () -> open.column("stop").equals(before));
    assertThat(open.document.trip().equals(demo())).isTrue();
  }

  @Test
  void aDroppedFileIsOfferedAndABadOneSaysWhy(@TempDir Path folder) throws IOException {
    OpenWindow open = open(demo());
    Path good = track(folder);
    open.run(() -> open.window.dropped(List.of(good.toFile())));
    open.until("it is offered", () -> !open.buttons("Make this the route").isEmpty());
    Path bad = folder.resolve("bad.gpx");
    Files.writeString(bad, "<!DOCTYPE gpx [<!ENTITY a \"b\">]><gpx>&a;</gpx>");
    open.run(() -> open.window.dropped(List.of(bad.toFile())));
    open.until(
        "why not is told",
        () -> open.texts("notice").stream().anyMatch(text -> text.contains("document type")));
    assertThat(open.document.trip().equals(demo())).isTrue();
  }

  private static String day(String name, double from, double to) {
    StringBuilder points = new StringBuilder("<trk><name>" + name + "</name><trkseg>");
    for (int i = 0; i <= 10; i++) {
      double east = from + i * (to - from) / 10;
      points.append(
          "<trkpt lat=\"36\" lon=\""
              + east
              + "\"><ele>"
              + (1250 - 170 * (east + 102.5))
              + "</ele></trkpt>\n");
    }
    return points + "</trkseg></trk>\n";
  }

  /** 0.058° of latitude are 6.4 km or 4.0 mi. */
  @Test
  void twoDaysAreTakenAsOneWithTheWaypointsBesideThem(@TempDir Path folder) throws IOException {
    Path file = folder.resolve("days.gpx");
    Files.writeString(
        file,
        "\ufeff<gpx version=\"1.1\" creator=\"invented\""
            + " xmlns=\"http://www.topografix.com/GPX/1/1\">\n"
            + "<wpt lat=\"36.004\" lon=\"-101.55\"><name>Vet</name></wpt>\n"
            + "<wpt lat=\"36.058\" lon=\"-101.5\"><name>Hay barn</name></wpt>\n"
            + day("Mon", -102.5, -101)
            + day("Tue", -101, -100)
            + "<trk><name>Stub</name></trk>\n</gpx>\n");
    OpenWindow open = open(demo());
    open.run(() -> open.window.dropped(List.of(file.toFile())));
    open.until(
        "the vet is offered", () -> !open.nodes(CheckBox.class, TrackWindowTest::vet).isEmpty());
    List<CheckBox> ticked = open.nodes(CheckBox.class, CheckBox::isSelected);
    assertThat(ticked).as("start, vet, night, end").hasSize(4);
    assertThat(ticked).filteredOn(TrackWindowTest::vet).hasSize(1);
    assertThat(open.texts("left-out"))
        .singleElement()
        .asString()
        .contains("track “Stub” holds no point")
        .contains("Hay barn is 4 mi (6 km) off the track: left out");
    open.press(open.buttons("Make this the route").get(0));
    open.until("it is the route", () -> open.column("stop").size() == 4);
    assertThat(open.column("stop").get(1)).isEqualTo("Vet");
    assertThat(open.document.trip().route().legs())
        .allMatch(leg -> leg.track().size() > 1 && leg.isHeightOfTrackKnown());
    open.until(
        "the ground is that of the track",
        () -> open.texts("lesser").stream().anyMatch(t -> t.startsWith("Ground by the track's")));
  }

  private static boolean vet(CheckBox box) {
    return box.getText().endsWith("Vet");
  }

  @Test
  void theRouteIsWrittenForOtherPrograms(@TempDir Path folder) throws IOException {
    OpenWindow open = open(demo());
    Path file = folder.resolve("out.gpx");
    open.answers.file = Optional.of(file);
    OpenWindow window = open;
    window.run(() -> menuItem(window, "Write the route as GPX…").fire());
    open.until("it is there", () -> Files.exists(file));
    assertThat(Files.readString(file)).contains("<name>Dalhart TX</name>", "<rtept");
    assertThat(planner().store().tracks(file).get().get(0).points()).hasSize(13);
  }

  private static javafx.scene.control.MenuItem menuItem(OpenWindow open, String name) {
    return ((javafx.scene.control.MenuBar) open.stage.getScene().getRoot().lookup(".menu-bar"))
        .getMenus().stream()
            .flatMap(menu -> menu.getItems().stream())
            .filter(item -> name.equals(item.getText()))
            .findFirst()
            .orElseThrow();
  }
}

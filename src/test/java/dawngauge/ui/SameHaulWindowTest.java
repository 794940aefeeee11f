package dawngauge.ui;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dawngauge.advice.Advice;
import dawngauge.advice.StopAdvice;
import dawngauge.forecast.TireSnapshot;
import dawngauge.geo.Coordinate;
import dawngauge.trip.Route;
import dawngauge.trip.RouteEdits;
import dawngauge.trip.Stop;
import dawngauge.trip.Trip;
import dawngauge.ui.route.RouteView;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import javafx.scene.control.TextArea;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** One haul drawn on the map, taken from a GPX track and typed by keyboard alone. */
class SameHaulWindowTest extends WindowTest {

  /** Heights are estimates of the places around a drawn point; 1 psi (NIST SP 811, 2008). */
  private static final double PSI = 6894.757;

  private static final List<String> NAMES = List.of("Alamosa CO", "Raton NM", "Amarillo TX");

  @Test
  void drawnTypedOrFromAFileItIsTheSameKindOfPlan(@TempDir Path other) throws IOException {
    Trip empty = demo().withRoute(new Route(List.of(), List.of())).withAmbient(List.of());
    List<Coordinate> points = new ArrayList<>();
    for (String name : NAMES) {
      points.add(planner().places().search(name, null, 1).get(0).coordinate());
    }
    OpenWindow open = open(empty);
    for (Coordinate point : points) {
      open.run(() -> open.nodes(RouteView.class, view -> true).get(0).insertAt(point));
    }
    Advice drawn = planned(open, "drawn");
    back(open, empty);

    open.keys(KeyCode.SHORTCUT, KeyCode.L);
    open.until("the list is asked for", () -> open.nodes(TextArea.class, area -> true).size() == 1);
    open.type(open.nodes(TextArea.class, area -> true).get(0), String.join("\n", NAMES));
    open.until(
        "all are known",
        () ->
            open.buttons("Make this the route").stream().anyMatch(button -> !button.isDisabled())
                && open.texts("lesser").stream().anyMatch(text -> text.contains("3 ")));
    open.focus(open.buttons("Make this the route").get(0));
    open.keys(KeyCode.SPACE);
    Advice typed = planned(open, "typed");
    back(open, empty);

    StringBuilder track = new StringBuilder();
    for (int i = 0; i < 3; i++) {
      track.append(
          String.format(
              Locale.ROOT,
              "<trkpt lat=\"%.5f\" lon=\"%.5f\"><name>%s</name></trkpt>%n",
              points.get(i).latitude(),
              points.get(i).longitude(),
              NAMES.get(i)));
    }
    Path file = other.resolve("same.gpx");
    Files.writeString(
        file,
        "<?xml version=\"1.0\"?><gpx version=\"1.1\" creator=\"invented\""
            + " xmlns=\"http://www.topografix.com/GPX/1/1\"><trk><trkseg>"
            + track
            + "</trkseg></trk></gpx>");
    open.run(() -> open.window.dropped(List.of(file.toFile())));
    open.until(
        "its points are offered",
        () -> open.buttons("Make this the route").stream().anyMatch(b -> !b.isDisabled()));
    open.press(open.buttons("Make this the route").get(0));
    Advice read = planned(open, "from a file");

    for (Advice advice : List.of(typed, read)) {
      for (int i = 0; i < 3; i++) {
        StopAdvice one = drawn.stops().get(i);
        StopAdvice same = advice.stops().get(i);
        assertThat(same.mark()).as("stop %s", i + 1).isEqualTo(one.mark());
        assertThat(settled(same)).as("stop %s", i + 1).isCloseTo(settled(one), within(PSI));
      }
    }
  }

  /** Gives the haul the same departure and typical air, and waits for its three stops. */
  private static Advice planned(OpenWindow open, String how) {
    open.until("it is " + how, () -> open.document.trip().route().stops().size() == 3);
    open.run(
        () -> {
          Trip trip = open.document.trip();
          Stop first = trip.route().stops().get(0);
          Trip timed =
              RouteEdits.withStop(
                  trip,
                  0,
                  first.withTimes(
                      first.arrive(),
                      Objects.requireNonNull(demo().route().stops().get(0).leave())));
          open.document.edit(open.document.planner().temperatures().typical(timed).trip());
        });
    Advice advice = Objects.requireNonNull(open.document.planned().advice());
    assertThat(advice.stops()).as(how).hasSize(3);
    return advice;
  }

  private static void back(OpenWindow open, Trip empty) {
    open.run(
        () -> {
          while (open.document.undoableProperty().get()) {
            open.document.undo();
          }
        });
    assertThat(open.document.trip().equals(empty)).isTrue();
  }

  private static double settled(StopAdvice stop) {
    TireSnapshot moment =
        Objects.requireNonNull(stop.tires().get(stop.tires().size() - 1).tire().check());
    return moment.settled();
  }
}

package dawngauge.ui;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dawngauge.advice.Advice;
import dawngauge.advice.Mark;
import dawngauge.geo.Coordinate;
import dawngauge.geo.GreatCircle;
import dawngauge.testdata.FakeTiles;
import dawngauge.trip.Route;
import dawngauge.trip.RouteEdits;
import dawngauge.trip.Stop;
import dawngauge.trip.Trip;
import dawngauge.trip.TypedTime;
import dawngauge.ui.map.MapSheet;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import javafx.geometry.Point2D;
import javafx.geometry.Rectangle2D;
import javafx.scene.Node;
import javafx.scene.control.Labeled;
import javafx.scene.control.MenuBar;
import javafx.scene.control.MenuItem;
import javafx.scene.control.ToggleButton;
import javafx.scene.input.KeyCode;
import javafx.scene.input.MouseButton;
import javafx.scene.layout.Region;
import javafx.stage.Screen;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.testfx.api.FxRobot;

/** The map in the window: looked at, pressed, dragged, undone, drawn on, left by keyboard. */
class MapWindowTest extends WindowTest {

  private final FxRobot robot = new FxRobot();

  private static MapSheet map(OpenWindow open) {
    return open.nodes(MapSheet.class, sheet -> true).get(0);
  }

  private static Map<Integer, Point2D> places(OpenWindow open) {
    return map(open).painted().orElse(Map.of());
  }

  private static Region frame(OpenWindow open) {
    return open.nodes(Region.class, r -> r.getStyleClass().contains("map-frame")).get(0);
  }

  /** Opens the map and waits until it shows so many stops at rest. */
  private OpenWindow mapped(Trip trip, int stops) {
    OpenWindow open = open(trip);
    Rectangle2D screen = Screen.getPrimary().getBounds();
    if (screen.getWidth() < open.stage.getWidth()) { // as where all is twice as large
      open.run(
          () -> {
            open.stage.setWidth(screen.getWidth());
            open.stage.setHeight(screen.getHeight());
          });
      open.until("the window fits", () -> open.stage.getScene().getWidth() <= screen.getWidth());
    }
    open.keys(KeyCode.SHORTCUT, KeyCode.M);
    open.until("the map is painted", () -> map(open).painted().map(Map::size).orElse(-1) == stops);
    open.until(
        "all of it is seen",
        () ->
            places(open).values().stream()
                .allMatch(
                    at ->
                        at.getX() > 0
                            && at.getY() > 0
                            && at.getX() < frame(open).getWidth()
                            && at.getY() < frame(open).getHeight()));
    return open;
  }

  /** Where a point of the frame is on the screen. */
  private static Point2D screen(OpenWindow open, Point2D at) {
    Region frame = frame(open);
    return OpenWindow.onToolkit(
        () -> frame.localToScreen(at.add(frame.getInsets().getLeft(), frame.getInsets().getTop())));
  }

  private Point2D painted(OpenWindow open, int stop) {
    return OpenWindow.onToolkit(() -> Objects.requireNonNull(places(open).get(stop)));
  }

  private void toggle(OpenWindow open, String text) {
    ToggleButton button = open.nodes(ToggleButton.class, b -> text.equals(b.getText())).get(0);
    open.run(button::fire);
  }

  @Test
  void aStopPressedOnTheMapIsTheChosenOneAndTheOtherWayRound() {
    OpenWindow open = mapped(demo(), 13);
    robot.clickOn(screen(open, painted(open, 8)), MouseButton.PRIMARY);
    open.until("it is chosen in the ledger", () -> open.chosen() == 8);
    open.until("the first is ringed no more", () -> !isRinged(open, 0));
    open.focusStop(8);
    open.keys(KeyCode.HOME);
    open.until("the first is chosen", () -> open.chosen() == 0);
    open.until("the map rings it", () -> isRinged(open, 0));
  }

  /** How far two colors are apart; on a fine screen a picture of it mixes neighbors. */
  private static int apart(int a, int b) {
    int sum = 0;
    for (int shift = 0; shift <= 16; shift += 8) {
      sum += Math.abs(((a >> shift) & 0xff) - ((b >> shift) & 0xff));
    }
    return sum;
  }

  /** Whether the ring of the chosen stop is painted around a stop. */
  private boolean isRinged(OpenWindow open, int stop) {
    Point2D at = places(open).get(stop);
    if (at == null) {
      return false;
    }
    Node frame = frame(open);
    var picture = frame.snapshot(null, null);
    for (int i = 0; i < 27 * 27; i++) {
      int x = (int) at.getX() + i % 27 - 13;
      int y = (int) at.getY() + i / 27 - 13;
      boolean seen = x >= 0 && y >= 0 && x < picture.getWidth() && y < picture.getHeight();
      if (seen && apart(picture.getPixelReader().getArgb(x, y), 0x00568a) < 90) {
        return true;
      }
    }
    return false;
  }

  /** Whether a place was the same at each of the last twenty looks. */
  private static boolean rests(List<Point2D> seen, Point2D now) {
    seen.add(now);
    List<Point2D> last = seen.subList(Math.max(0, seen.size() - 20), seen.size());
    return last.size() == 20 && last.stream().allMatch(now::equals);
  }

  @Test
  void aStopIsDraggedAndTheDragIsUndone() {
    OpenWindow open = mapped(demo(), 13);
    Coordinate before = Objects.requireNonNull(demo().route().stops().get(8).coordinate());
    robot.clickOn(screen(open, painted(open, 8)), MouseButton.PRIMARY);
    open.until("it is chosen", () -> open.chosen() == 8);
    open.press(open.buttons("Chosen stop").get(0));
    for (int i = 0; i < 4; i++) {
      open.press(open.buttons("+").get(0));
    }
    Point2D middle = new Point2D(frame(open).getWidth() / 2, frame(open).getHeight() / 2);
    open.until("it is in the middle", () -> painted(open, 8).distance(middle) < 5);
    List<Point2D> seen = new ArrayList<>();
    open.until("the map rests", () -> rests(seen, painted(open, 7)));
    Point2D from = painted(open, 8);
    Point2D to = from.add(-60, 20);
    robot.drag(screen(open, from), MouseButton.PRIMARY).dropTo(screen(open, to));
    open.until(
        "it lies elsewhere",
        () -> !before.equals(open.document.trip().route().stops().get(8).coordinate()));
    Stop moved = open.document.trip().route().stops().get(8);
    Coordinate now = Objects.requireNonNull(moved.coordinate());
    assertThat(now.longitude()).isLessThan(before.longitude());
    assertThat(now.latitude()).isLessThan(before.latitude());
    assertThat(GreatCircle.between(before, now).meters()).isGreaterThan(20_000);
    assertThat(moved.place()).as("named after its place as before").startsWith("near ");
    open.until("it is painted where it was dropped", () -> painted(open, 8).distance(to) < 3);
    open.press(open.buttons("Undo").get(0));
    open.until("it is back", () -> open.document.trip().equals(demo()));
    open.until("on the map too", () -> painted(open, 8).distance(from) < 2);
  }

  @Test
  void theGroundIsDraggedAndNothingIsEdited() {
    OpenWindow open = mapped(demo(), 13);
    Point2D before = painted(open, 0);
    Point2D from = new Point2D(20, 20);
    robot.drag(screen(open, from), MouseButton.PRIMARY).dropTo(screen(open, from.add(50, 30)));
    open.until("the map moved", () -> painted(open, 0).distance(before.add(50, 30)) < 6);
    assertThat(open.document.dirtyProperty().get()).isFalse();
    open.press(open.buttons("Whole route").get(0));
    open.until("all is where it was", () -> painted(open, 0).distance(before) < 2);
  }

  @Test
  void aHaulDrawnOnTheMapHasTheSameKindOfPlan() {
    Trip empty = demo().withRoute(new Route(List.of(), List.of())).withAmbient(List.of());
    OpenWindow open = mapped(empty, 0);
    open.until("the map has its size", () -> frame(open).getHeight() > 100);
    toggle(open, "Add stops");
    double width = frame(open).getWidth();
    double height = frame(open).getHeight();
    List<Point2D> points = new ArrayList<>();
    for (double part : new double[] {0.45, 0.55, 0.65}) {
      Point2D at = new Point2D(width * part, height * 0.6);
      points.add(at);
      int wanted = points.size();
      robot.clickOn(screen(open, at), MouseButton.PRIMARY);
      open.until("it is a stop", () -> open.document.trip().route().stops().size() == wanted);
      open.until("it is painted", () -> places(open).size() == wanted);
    }
    for (int i = 0; i < 3; i++) {
      assertThat(painted(open, i).distance(points.get(i))).as("stop %s", i + 1).isLessThan(5);
    }
    Trip drawn = open.document.trip();
    assertThat(drawn.route().stops())
        .allMatch(stop -> stop.zone() != null && stop.elevation() != null)
        .allMatch(stop -> stop.place().length() > 3);
    assertThat(drawn.route().legs()).allMatch(leg -> leg.distance() != null);
    // Departure as the reading's; typical air.
    TypedTime leave = demo().route().stops().get(0).leave();
    Stop first = drawn.route().stops().get(0);
    open.run(
        () ->
            open.document.edit(
                RouteEdits.withStop(drawn, 0, first.withTimes(first.arrive(), leave))));
    open.run(
        () ->
            open.document.edit(
                open.document.planner().temperatures().typical(open.document.trip()).trip()));
    Advice advice = Objects.requireNonNull(open.document.planned().advice());
    assertThat(advice.stops()).hasSize(3);
    assertThat(advice.stops()).noneMatch(stop -> stop.mark() == Mark.UNKNOWN);
  }

  @Test
  void tabEntersAndLeavesAndKeysMoveIt() {
    OpenWindow open = mapped(demo(), 13);
    Region frame = frame(open);
    open.focus(frame);
    Point2D before = painted(open, 0);
    open.keys(KeyCode.RIGHT);
    open.until("it went", () -> painted(open, 0).getX() < before.getX() - 20);
    double apart = painted(open, 0).distance(painted(open, 8));
    open.keys(KeyCode.ADD);
    open.keys(KeyCode.ADD);
    open.until(
        "it is twice as near",
        () -> Math.abs(painted(open, 0).distance(painted(open, 8)) - 2 * apart) < 4);
    open.keys(KeyCode.HOME);
    open.until("all is seen again", () -> painted(open, 0).distance(before) < 2);
    assertThat(apart).isEqualTo(painted(open, 0).distance(painted(open, 8)), within(2.0));
    open.keys(KeyCode.TAB);
    open.until("the keyboard left it", () -> !frame.isFocused());
    open.focus(frame);
    open.keys(KeyCode.SHIFT, KeyCode.TAB);
    open.until("backward too", () -> !frame.isFocused());
    Node owner = OpenWindow.onToolkit(() -> open.stage.getScene().getFocusOwner());
    assertThat(owner).isInstanceOf(Labeled.class);
  }

  @Test
  void itTakesThePageAndGivesItBackIsHiddenAndShownAgainInTheOtherTheme() {
    OpenWindow open = mapped(demo(), 13);
    double small = frame(open).getWidth();
    toggle(open, "Wide");
    open.until("it is wide", () -> frame(open).getWidth() > 1.5 * small);
    open.until("no ledger", () -> open.stops() == 0);
    toggle(open, "Wide");
    open.until("the ledger is back", () -> open.stops() == 13);
    open.keys(KeyCode.SHORTCUT, KeyCode.M);
    open.until("it is gone", () -> open.nodes(MapSheet.class, sheet -> true).isEmpty());
    open.keys(KeyCode.SHORTCUT, KeyCode.D);
    open.keys(KeyCode.SHORTCUT, KeyCode.M);
    open.until("it is back", () -> !open.nodes(MapSheet.class, sheet -> true).isEmpty());
    open.until("it is dark", () -> isDark(open));
    Set<String> buttons = Set.of("+", "−", "Whole route", "Chosen stop");
    buttons.forEach(text -> assertThat(open.buttons(text)).as(text).hasSize(1));
  }

  private static boolean isDark(OpenWindow open) {
    int color = frame(open).snapshot(null, null).getPixelReader().getArgb(6, 6);
    return (color & 0xff) < 0x60 && ((color >> 8) & 0xff) < 0x60;
  }

  @Test
  void withNothingToShowItSaysWhatToDo() {
    Trip empty = demo().withRoute(new Route(List.of(), List.of()));
    OpenWindow open = mapped(empty, 0);
    assertThat(open.texts("map-hint")).singleElement().asString().contains("Add stops");
  }

  /** A square of one color as PNG. */
  private static byte[] square(int rgb) throws IOException {
    BufferedImage picture = new BufferedImage(256, 256, BufferedImage.TYPE_INT_RGB);
    for (int i = 0; i < 256 * 256; i++) {
      picture.setRGB(i % 256, i / 256, rgb);
    }
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    ImageIO.write(picture, "png", bytes);
    return bytes.toByteArray();
  }

  private static int corner(OpenWindow open) {
    return frame(open).snapshot(null, null).getPixelReader().getArgb(8, 8) & 0xffffff;
  }

  @Test
  void anOnlineMapComesOnlyAfterConsentAndGoesWithIt() throws IOException {
    OpenWindow open = mapped(demo(), 13);
    FakeTiles tiles = new FakeTiles(square(0x3366cc));
    open.weather.tiles = tiles;
    open.answers.agrees = false;
    toggle(open, "Online map");
    assertThat(open.answers.asked).anyMatch(asked -> asked.startsWith("agree"));
    assertThat(tiles.asked()).isEmpty();
    open.answers.agrees = true;
    toggle(open, "Online map");
    open.until("it is shown", () -> corner(open) == 0x3366cc);
    assertThat(tiles.asked().size()).as("only what is seen").isBetween(1, 40);
    MenuBar bar = open.nodes(MenuBar.class, known -> true).get(0);
    open.run(
        () ->
            bar.getMenus().stream()
                .flatMap(menu -> menu.getItems().stream())
                .filter(item -> "Withdraw consent".equals(item.getText()))
                .forEach(MenuItem::fire));
    open.until("its own map is back", () -> corner(open) != 0x3366cc);
    assertThat(tiles.agreed()).isFalse();
  }
}

package dawngauge.ui;

import static org.assertj.core.api.Assertions.assertThat;

import dawngauge.quantity.UnitSystem;
import dawngauge.settings.UserState;
import dawngauge.trip.Trip;
import dawngauge.ui.map.MapSheet;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.Stream;
import javafx.scene.control.ChoiceBox;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextArea;
import javafx.scene.control.TitledPane;
import javafx.scene.image.PixelReader;
import javafx.scene.image.WritableImage;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.BorderPane;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.testfx.util.WaitForAsyncUtils;

/** Writes pictures of the window to {@code target/pictures}, to be looked at by a person. */
class PicturesTest extends WindowTest {

  private static final Path FOLDER = Path.of("target", "pictures");

  /** A few colours are a blank window; a page of text has many shades at the edges of letters. */
  private static final int LEAST_COLORS = 50;

  /** How a page is looked at. */
  record Look(boolean dark, UnitSystem units, double width, double height) {
    static final Look LIGHT_US_LARGE = new Look(false, UnitSystem.US, 1280, 820);
    static final Look DARK_SI_LARGE = new Look(true, UnitSystem.SI, 1280, 820);
    static final Look DARK_US_LARGE = new Look(true, UnitSystem.US, 1280, 820);
    static final Look LIGHT_SI_SMALL = new Look(false, UnitSystem.SI, 900, 600);
    static final Look DARK_US_SMALL = new Look(true, UnitSystem.US, 900, 600);

    String words() {
      return (dark ? "dark" : "light") + "-" + units.name().toLowerCase(Locale.ROOT) + "-" + width;
    }
  }

  private static final Path RECORDER_FILE =
      Path.of("src", "test", "resources", "dawngauge", "exchange", "recorder.csv");

  private static final Path TRACK_FILE =
      Path.of("src", "test", "resources", "dawngauge", "exchange", "over-a-pass.gpx");

  /** What is in the window; each page is met in both themes, both units and both sizes. */
  @SuppressWarnings("ImmutableEnumChecker") // the ways are lambdas without state
  enum Page {
    ROUTE(true, open -> {}),
    STARTER(false, open -> {}),
    FIRST_EMPTY(false, open -> open.run(open.window::showFirst)),
    FIRST_FULL(
        false,
        open -> {
          open.run(open.window::showFirst);
          open.until("the page is there", () -> !open.texts("first-title").isEmpty());
          FirstStartWindowTest.fill(open);
        }),
    RIG(true, open -> open.run(open.window::showRig)),
    WHAT_IF(
        true,
        open -> {
          open.keys(KeyCode.SHORTCUT, KeyCode.DIGIT3);
          open.until("the question is there", () -> !open.buttons("Close").isEmpty());
          open.run(
              () -> {
                ChoiceBox<?> air = (ChoiceBox<?>) open.stage.getScene().getFocusOwner();
                air.getSelectionModel().select(3);
              });
        }),
    TRACK(
        true,
        open -> {
          open.run(() -> open.window.dropped(List.of(TRACK_FILE.toFile())));
          open.until(
              "its points are offered", () -> !open.buttons("Make this the route").isEmpty());
        }),
    PLAN(
        true,
        open -> {
          open.keys(KeyCode.SHORTCUT, KeyCode.DIGIT4);
          open.until("the plan is there", () -> !open.texts("page-main").isEmpty());
        }),
    MAP(
        true,
        open -> {
          open.keys(KeyCode.SHORTCUT, KeyCode.M);
          open.until(
              "the map is painted",
              () ->
                  open.nodes(MapSheet.class, sheet -> true).stream()
                      .anyMatch(sheet -> sheet.painted().isPresent()));
        }),
    READINGS(
        true,
        open -> {
          open.keys(KeyCode.F9);
          open.until("the page is there", () -> !open.texts("crew-where").isEmpty());
        }),
    LIVE(
        true,
        open -> {
          open.keys(KeyCode.F8);
          open.keys(KeyCode.F9);
          open.until("the crew goes on", () -> open.texts("crew-where").toString().contains("way"));
          open.write("Reading of trailer axle 2 right", "58 psi");
          open.until(
              "what to do is told",
              () -> open.texts("figure-line").stream().anyMatch(text -> text.contains("in 9 of")));
        }),
    REVIEW(
        true,
        open -> {
          Trip logged =
              WindowTest.planner()
                  .store()
                  .open(Path.of("demo-data", "spring-fleece-haul-logged.dawngauge"))
                  .get();
          open.run(() -> open.document.edit(logged));
          open.keys(KeyCode.SHORTCUT, KeyCode.DIGIT6);
          open.until("it is reviewed", () -> open.texts("card-title").toString().contains("leaks"));
          open.run(
              () ->
                  open.nodes(ScrollPane.class, s -> s.getStyleClass().contains("page-scroll"))
                      .forEach(scroll -> scroll.setVvalue(1)));
        }),
    TABLE(
        true,
        open -> {
          open.run(() -> open.window.dropped(List.of(RECORDER_FILE.toFile())));
          open.until("it asks", () -> !open.buttons("Take the readings").isEmpty());
        }),
    PLACES(
        true,
        open -> {
          open.keys(KeyCode.SHORTCUT, KeyCode.L);
          open.until("the list is there", () -> open.nodes(TextArea.class, a -> true).size() == 1);
          TextArea area = open.nodes(TextArea.class, known -> true).get(0);
          open.run(
              () -> area.setText("Trinidad CO @ 25 min\nSpringfield\n35.2, -101.8\nNowhere QQ"));
          open.until("it is understood", () -> open.texts("place-line").size() == 4);
        }),
    REACH(
        true,
        open -> {
          open.focusStop(2);
          open.keys(KeyCode.ENTER); // in a small window the stop comes up by this
          unfoldReach(open);
          open.run(
              () ->
                  open.nodes(ScrollPane.class, s -> s.getParent() instanceof BorderPane)
                      .forEach(scroll -> scroll.setVvalue(1)));
        }),
    SEVERAL(
        true,
        open -> {
          open.focusStop(0);
          open.keys(KeyCode.SHIFT, KeyCode.DOWN);
          open.keys(KeyCode.ENTER); // in a small window their fields come up by this
          open.until("two are taken", () -> open.texts("chosen-stop").contains("2 stops"));
        }),
    NOTICES(
        true,
        open -> {
          open.run(() -> open.window.dropped(List.of(DEMO.toFile(), DEMO.toFile())));
          open.run(() -> open.window.saveTo(Path.of("no-such-folder", "haul.dawngauge")));
        });

    final boolean full;
    final Consumer<OpenWindow> way;

    Page(boolean full, Consumer<OpenWindow> way) {
      this.full = full;
      this.way = way;
    }

    /** The demo haul, or the starter. */
    Trip trip() {
      return full ? demo() : planner().store().starterTrip().get();
    }

    List<Look> looks() {
      return switch (this) {
        case ROUTE, RIG ->
            List.of(
                Look.LIGHT_US_LARGE, Look.DARK_SI_LARGE, Look.LIGHT_SI_SMALL, Look.DARK_US_SMALL);
        case STARTER, FIRST_FULL, PLACES, NOTICES, TABLE ->
            List.of(Look.LIGHT_US_LARGE, new Look(true, UnitSystem.SI, 900, 600));
        default -> List.of(Look.LIGHT_SI_SMALL, Look.DARK_US_LARGE);
      };
    }
  }

  @ParameterizedTest
  @EnumSource(Page.class)
  @Timeout(60)
  void page(Page page) throws IOException {
    Files.createDirectories(FOLDER);
    for (Look look : page.looks()) {
      OpenWindow open = open(page.trip());
      show(open, page, look);
      BufferedImage picture = picture(open);
      open.close();
      String name = page.name().toLowerCase(Locale.ROOT).replace('_', '-') + "-" + look.words();
      assertThat(colors(picture)).as(name).isGreaterThan(LEAST_COLORS);
      ImageIO.write(picture, "png", FOLDER.resolve(name.replace(".0", "") + ".png").toFile());
    }
  }

  /** Brings a window to a page and a look. */
  static void show(OpenWindow open, Page page, Look look) {
    open.run(
        () -> {
          open.document.unitsProperty().set(look.units);
          open.stage.setWidth(look.width);
          open.stage.setHeight(look.height);
        });
    // The desk remembers the theme of the window before.
    UserState.Theme theme = look.dark ? UserState.Theme.DARK : UserState.Theme.LIGHT;
    open.run(() -> open.window.choose(theme));
    open.until("it has its theme", () -> open.isDark() == look.dark);
    open.until("it has its size", () -> open.stage.getScene().getWidth() == look.width);
    page.way.accept(open);
    WaitForAsyncUtils.waitForFxEvents();
  }

  /** Opens what the air reaches from the chosen stop, and waits for it. */
  static void unfoldReach(OpenWindow open) {
    open.run(
        () ->
            open.nodes(TitledPane.class, pane -> pane.getText().startsWith("How far"))
                .forEach(pane -> pane.setExpanded(true)));
    open.until(
        "it is told",
        () ->
            open.nodes(Label.class, label -> label.getText().startsWith("Next hose")).size() == 1);
  }

  /** A page of all pictures. */
  @AfterAll
  static void all() throws IOException {
    StringBuilder page = new StringBuilder("<!doctype html><title>Pictures</title>\n");
    try (Stream<Path> files = Files.list(FOLDER)) {
      files
          .map(file -> String.valueOf(file.getFileName()))
          .filter(name -> name.endsWith(".png"))
          .sorted()
          .forEach(name -> page.append("<h2>" + name + "</h2><img src=\"" + name + "\">\n"));
    }
    Files.writeString(FOLDER.resolve("index.html"), page);
  }

  static BufferedImage picture(OpenWindow open) {
    WritableImage image = OpenWindow.onToolkit(() -> open.stage.getScene().snapshot(null));
    int width = (int) image.getWidth();
    int height = (int) image.getHeight();
    BufferedImage picture = new BufferedImage(width, height, BufferedImage.TYPE_INT_ARGB);
    PixelReader pixels = image.getPixelReader();
    for (int y = 0; y < height; y++) {
      for (int x = 0; x < width; x++) {
        picture.setRGB(x, y, pixels.getArgb(x, y));
      }
    }
    return picture;
  }

  private static int colors(BufferedImage picture) {
    Set<Integer> colors = new HashSet<>();
    for (int y = 0; y < picture.getHeight(); y++) {
      for (int x = 0; x < picture.getWidth(); x++) {
        colors.add(picture.getRGB(x, y));
      }
    }
    return colors.size();
  }
}

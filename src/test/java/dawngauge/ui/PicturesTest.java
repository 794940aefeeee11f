package dawngauge.ui;

import static org.assertj.core.api.Assertions.assertThat;

import dawngauge.quantity.UnitSystem;
import dawngauge.trip.Trip;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.Locale;
import java.util.Set;
import javafx.scene.image.PixelReader;
import javafx.scene.image.WritableImage;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.testfx.util.WaitForAsyncUtils;

/** Writes pictures of the window to {@code target/pictures}, to be looked at by a person. */
class PicturesTest extends WindowTest {

  private static final Path FOLDER = Path.of("target", "pictures");

  /** A few colours are a blank window; a page of text has many shades at the edges of letters. */
  private static final int LEAST_COLORS = 50;

  /** Every pair of theme, units, size and trip is met at least once. */
  private enum View {
    LIGHT_US_LARGE_FULL(false, UnitSystem.US, 1280, 820, true),
    DARK_SI_LARGE_FULL(true, UnitSystem.SI, 1280, 820, true),
    LIGHT_SI_SMALL_FULL(false, UnitSystem.SI, 900, 600, true),
    DARK_US_SMALL_FULL(true, UnitSystem.US, 900, 600, true),
    LIGHT_SI_LARGE_STARTER(false, UnitSystem.SI, 1280, 820, false),
    DARK_US_LARGE_STARTER(true, UnitSystem.US, 1280, 820, false),
    LIGHT_US_SMALL_STARTER(false, UnitSystem.US, 900, 600, false),
    DARK_SI_SMALL_STARTER(true, UnitSystem.SI, 900, 600, false);

    final boolean dark;
    final UnitSystem units;
    final double width;
    final double height;
    final boolean full;

    View(boolean dark, UnitSystem units, double width, double height, boolean full) {
      this.dark = dark;
      this.units = units;
      this.width = width;
      this.height = height;
      this.full = full;
    }
  }

  @Test
  void theRoute() throws IOException {
    Files.createDirectories(FOLDER);
    StringBuilder page = new StringBuilder("<!doctype html><title>Pictures</title>\n");
    for (View view : View.values()) {
      Trip trip = view.full ? demo() : planner().starterTrip().get();
      OpenWindow open = open(trip);
      open.run(
          () -> {
            open.document.unitsProperty().set(view.units);
            open.stage.setWidth(view.width);
            open.stage.setHeight(view.height);
          });
      open.buttons(view.dark ? "Dark" : "Light").forEach(open::press);
      open.until("it has its size", () -> open.stage.getScene().getWidth() == view.width);
      WaitForAsyncUtils.waitForFxEvents();
      BufferedImage picture = picture(open);
      open.close();
      assertThat(colors(picture)).as(view.name()).isGreaterThan(LEAST_COLORS);
      String file = view.name().toLowerCase(Locale.ROOT) + ".png";
      ImageIO.write(picture, "png", FOLDER.resolve(file).toFile());
      page.append("<h2>").append(view).append("</h2><img src=\"").append(file).append("\">\n");
    }
    Files.writeString(FOLDER.resolve("index.html"), page);
  }

  private static BufferedImage picture(OpenWindow open) {
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

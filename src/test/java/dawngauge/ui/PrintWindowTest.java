package dawngauge.ui;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import dawngauge.ui.route.LedgerPrint;
import java.awt.image.BufferedImage;
import java.io.File;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.geometry.Bounds;
import javafx.print.Printer;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.Label;
import javafx.scene.image.WritableImage;
import javafx.scene.input.KeyCode;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;

/** Ledger and trace on paper: nothing is lost between pages, and no row is cut. */
class PrintWindowTest extends WindowTest {

  /** What can be printed on of U.S. Letter with margins of 3/4 inch, points. */
  private static final double WIDTH = 504;

  private static final double HEIGHT = 684;

  private static List<Label> labels(Node node, List<Label> found) {
    if (node instanceof Label label && label.getStyleClass().contains("place")) {
      found.add(label);
    }
    if (node instanceof Parent parent) {
      parent.getChildrenUnmodifiable().forEach(child -> labels(child, found));
    }
    return found;
  }

  @Test
  void everyStopStandsWholeOnOnePage() throws IOException {
    OpenWindow open = open(demo());
    LedgerPrint print = OpenWindow.onToolkit(() -> open.window.printed(WIDTH, HEIGHT));
    assertThat(print.pages()).isBetween(2, 12);
    List<String> whole = new ArrayList<>();
    for (int i = 0; i < print.pages(); i++) {
      int number = i;
      WritableImage image =
          OpenWindow.onToolkit(
              () -> {
                Node page = print.page(number);
                assertThat(page.getBoundsInParent().getWidth()).isLessThan(WIDTH + 2);
                assertThat(page.getBoundsInParent().getHeight()).isLessThan(HEIGHT + 2);
                Bounds sheet = page.localToScene(page.getLayoutBounds());
                for (Label label : labels(page, new ArrayList<>())) {
                  Bounds at = label.localToScene(label.getLayoutBounds());
                  if (sheet.contains(at)) {
                    whole.add(label.getText());
                  }
                }
                return page.snapshot(null, null);
              });
      save(image, "print-" + (i + 1));
    }
    assertThat(whole)
        .containsExactlyElementsOf(demo().route().stops().stream().map(s -> s.place()).toList());
  }

  private static void save(WritableImage image, String name) throws IOException {
    int width = (int) image.getWidth();
    int height = (int) image.getHeight();
    BufferedImage picture = new BufferedImage(width, height, BufferedImage.TYPE_INT_ARGB);
    for (int y = 0; y < height; y++) {
      for (int x = 0; x < width; x++) {
        picture.setRGB(x, y, image.getPixelReader().getArgb(x, y));
      }
    }
    File folder = new File("target", "pictures");
    assertThat(folder.isDirectory() || folder.mkdirs()).isTrue();
    ImageIO.write(picture, "png", new File(folder, name + ".png"));
  }

  @Test
  void withoutAPrinterItSaysWhatElseToDo() {
    OpenWindow open = open(demo());
    boolean none =
        OpenWindow.onToolkit(() -> Optional.ofNullable(Printer.getDefaultPrinter())).isEmpty();
    assumeTrue(none, "this computer has a printer, whose dialog would wait for an answer");
    open.run(open.window::showRig);
    open.keys(KeyCode.CONTROL, KeyCode.SHIFT, KeyCode.P);
    open.until(
        "it is told",
        () -> open.texts("notice").stream().anyMatch(text -> text.contains("No printer")));
  }
}

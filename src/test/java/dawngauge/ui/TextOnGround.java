package dawngauge.ui;

import dawngauge.testdata.Contrast;
import java.util.ArrayList;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.layout.BackgroundFill;
import javafx.scene.layout.Region;
import javafx.scene.paint.Color;
import javafx.scene.paint.LinearGradient;
import javafx.scene.paint.Paint;
import javafx.scene.text.Text;

/**
 * A text as the toolkit draws it, and the ground it lies on: the fills of all that it stands in,
 * one over the other.
 *
 * @param words the text
 * @param ink its colour
 * @param ground the colour behind it
 */
record TextOnGround(String words, Color ink, Color ground) {

  /** All texts that a window shows; what is disabled is left out, as WCAG 2.1 1.4.3 does. */
  static List<TextOnGround> of(Scene scene) {
    List<TextOnGround> found = new ArrayList<>();
    Color under = scene.getFill() instanceof Color fill ? over(fill, Color.WHITE) : Color.WHITE;
    gather(scene.getRoot(), under, found);
    return found;
  }

  private static void gather(Node node, Color under, List<TextOnGround> found) {
    if (!node.isVisible() || node.isDisabled() || node.getOpacity() == 0) {
      return;
    }
    Color ground = under;
    if (node instanceof Region region && region.getBackground() != null) {
      for (BackgroundFill fill : region.getBackground().getFills()) {
        ground = over(plain(fill.getFill()), ground);
      }
    }
    if (node instanceof Text text && !text.getText().isBlank() && text.getFill() != null) {
      found.add(new TextOnGround(text.getText(), over(plain(text.getFill()), ground), ground));
    }
    if (node instanceof Parent parent) {
      for (Node child : parent.getChildrenUnmodifiable()) {
        gather(child, ground, found);
      }
    }
  }

  private static Color plain(Paint paint) {
    if (paint instanceof Color color) {
      return color;
    } else if (paint instanceof LinearGradient gradient) {
      return gradient.getStops().get(0).getColor();
    }
    throw new AssertionError("no plain colour: " + paint);
  }

  private static Color over(Color shade, Color ground) {
    return ground.interpolate(
        new Color(shade.getRed(), shade.getGreen(), shade.getBlue(), 1), shade.getOpacity());
  }

  /** The contrast of ink and ground, 1 to 21. */
  double contrast() {
    return Contrast.of(rgb(ink), rgb(ground));
  }

  private static int rgb(Color color) {
    return (eight(color.getRed()) << 16) | (eight(color.getGreen()) << 8) | eight(color.getBlue());
  }

  private static int eight(double channel) {
    return (int) Math.rint(channel * 255);
  }
}

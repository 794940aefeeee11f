package dawngauge.ui.common;

import java.util.function.Supplier;
import javafx.scene.control.Control;
import javafx.scene.control.Label;
import javafx.scene.control.Tooltip;
import javafx.scene.input.MouseEvent;

/**
 * Labels of which a part may not fit: it is cut at the end, and pointing at it shows the whole. A
 * text without end is shortened before it is laid out, which takes time that grows with its length
 * squared.
 */
public final class Texts {

  private static final int LONGEST = 160;
  private static final int LONGEST_TIP = 2000;

  private Texts() {}

  /** One line. */
  public static Label line(String text, String styleClass) {
    Label label = new Label(shortened(text, LONGEST));
    label.getStyleClass().add(styleClass);
    tipped(label, () -> tip(text));
    return label;
  }

  /** Two lines at the most. */
  public static Label twoLines(String text) {
    Label label = new Label(shortened(text, 2 * LONGEST));
    label.getStyleClass().add("two-lines");
    label.setWrapText(true);
    tipped(label, () -> tip(text));
    return label;
  }

  /** What is said of a fault of the program: what was being done, and the kind of error. */
  public static String fault(String doing, Throwable wrong) {
    return doing
        + " went wrong, a fault of the program ("
        + shortened(String.valueOf(wrong))
        + ").";
  }

  /** A text of which no more is shown than a person reads at a glance. */
  public static String shortened(String text) {
    return shortened(text, LONGEST);
  }

  /** A text of which no more than so many characters are shown. */
  public static String shortened(String text, int longest) {
    return text.length() <= longest ? text : text.substring(0, longest - 1).stripTrailing() + "…";
  }

  /** A name as a file may have it. */
  public static String fileName(String name) {
    return name.replaceAll("[\\\\/:*?\"<>|\\p{Cc}]", " ").strip();
  }

  /** Gives a control a tip that is made when it is first pointed at: making one takes long. */
  public static void tipped(Control control, Supplier<Tooltip> tip) {
    control.addEventHandler(
        MouseEvent.MOUSE_ENTERED,
        event -> {
          if (control.getTooltip() == null) {
            control.setTooltip(tip.get());
          }
        });
  }

  private static Tooltip tip(String text) {
    Tooltip tip = new Tooltip(shortened(text, LONGEST_TIP));
    tip.setWrapText(true);
    tip.setMaxWidth(420);
    return tip;
  }
}

package dawngauge.ui;

import dawngauge.trip.Trip;
import dawngauge.ui.common.Texts;
import dawngauge.ui.common.TripDocument;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import javafx.beans.InvalidationListener;
import javafx.beans.Observable;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;

/**
 * Notices below the head of the window: each says one thing and offers what can be done about it.
 * Nothing waits for them. A notice about the same thing takes the place of the one before. One
 * about an edit belongs to the page where it was made, and is seen there only.
 */
final class NoticeBar extends VBox {

  /** More are shown when they are asked for. */
  private static final int MOST = 3;

  /**
   * A notice.
   *
   * @param line what is shown
   * @param page the page that it belongs to; null where it is the window's
   */
  private record Notice(HBox line, @Nullable Object page) {}

  private final Map<String, Notice> notices = new LinkedHashMap<>();

  private @Nullable Object page;
  private boolean whole;

  NoticeBar() {
    managedProperty().bind(visibleProperty());
    setVisible(false);
  }

  /**
   * Shows a notice.
   *
   * @param about what it is about
   * @param text what it says
   * @param actions what can be done about it
   */
  void tell(String about, String text, Button... actions) {
    tell(null, about, text, actions);
  }

  /** The same of the page that is shown, such as why an edit was refused. */
  void tellHere(String about, String text, Button... actions) {
    tell(page, about, text, actions);
  }

  /**
   * Another page is shown now.
   *
   * @param shown what stands for it
   */
  void turnTo(@Nullable Object shown) {
    page = shown;
    show();
  }

  private void tell(@Nullable Object of, String about, String text, Button... actions) {
    Label label = new Label(text.length() > 4000 ? text.substring(0, 4000) + "…" : text);
    label.getStyleClass().add("notice");
    label.setWrapText(true);
    label.setMinHeight(USE_PREF_SIZE);
    label.setMaxWidth(Double.MAX_VALUE);
    HBox.setHgrow(label, Priority.ALWAYS);
    Button close = action("Close", () -> clear(about));
    close.setAccessibleText("Close this notice: " + Texts.shortened(text));
    HBox line = new HBox(8, label);
    line.getChildren().addAll(actions);
    line.getChildren().add(close);
    line.getStyleClass().add("notice-line");
    notices.remove(about); // the newest stands last
    notices.put(about, new Notice(line, of));
    show();
  }

  /** Tells of the edit that a document has just taken; goes when that is undone. */
  void tellEdit(TripDocument document, String about, String text, Button... actions) {
    tellHere(about, text, actions);
    Notice told = notices.get(about);
    Trip made = document.trip();
    document
        .tripProperty()
        .addListener(
            new InvalidationListener() {
              @Override
              public void invalidated(Observable trip) {
                boolean there = Objects.equals(told, notices.get(about));
                if (there && document.holds(made)) {
                  return;
                }
                trip.removeListener(this);
                if (there) {
                  clear(about);
                }
              }
            });
  }

  /** Takes a notice away. */
  void clear(String about) {
    notices.remove(about);
    show();
  }

  /** Takes away a notice and acts. */
  Button acting(String about, String text, Runnable action) {
    return action(
        text,
        () -> {
          clear(about);
          action.run();
        });
  }

  private static Button action(String text, Runnable action) {
    Button button = new Button(text);
    button.getStyleClass().add("small-button");
    button.setMinWidth(USE_PREF_SIZE);
    button.setOnAction(event -> action.run());
    return button;
  }

  private void show() {
    List<HBox> all =
        notices.values().stream()
            .filter(notice -> notice.page() == null || notice.page().equals(page))
            .map(Notice::line)
            .toList();
    int hidden = all.size() - MOST;
    getChildren().setAll(hidden > 0 && !whole ? all.subList(hidden, all.size()) : all);
    whole = whole && hidden > 0;
    if (hidden > 0 && !whole) {
      Button earlier =
          action(
              hidden + " earlier",
              () -> {
                whole = true;
                show();
              });
      earlier.setAccessibleText("Show earlier notices");
      getChildren().add(0, earlier);
    }
    setVisible(!all.isEmpty());
  }
}

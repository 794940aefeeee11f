package dawngauge.ui;

import dawngauge.ledger.EditWords;
import dawngauge.ui.common.FigureField;
import dawngauge.ui.common.Texts;
import dawngauge.ui.common.TripDocument;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.TextArea;
import javafx.scene.input.KeyCombination;
import javafx.scene.input.KeyEvent;
import org.jspecify.annotations.Nullable;

/**
 * The keys for undo and redo while a field has the keyboard: what is being typed there is taken
 * back by the field itself; where nothing is, the trip's last edit is.
 */
final class UndoKeys {

  private static final KeyCombination UNDO = KeyCombination.keyCombination("Shortcut+Z");
  private static final KeyCombination REDO = KeyCombination.keyCombination("Shortcut+Shift+Z");

  private UndoKeys() {}

  /** What undo takes back, by name. */
  static String undoing(TripDocument document) {
    return named("Undo", document.beforeEdit().map(was -> EditWords.of(was, document.trip())));
  }

  /** What redo does again, by name. */
  static String redoing(TripDocument document) {
    return named("Redo", document.beforeUndo().map(is -> EditWords.of(document.trip(), is)));
  }

  private static String named(String action, Optional<String> edit) {
    return action + edit.map(words -> ": " + Texts.shortened(words)).orElse("");
  }

  static void install(Scene scene, TripDocument document) {
    scene.addEventFilter(
        KeyEvent.KEY_PRESSED,
        event -> {
          boolean undo = UNDO.match(event);
          if ((undo || REDO.match(event)) && !isTypedInto(scene.getFocusOwner())) {
            event.consume();
            if (undo) {
              document.undo();
            } else {
              document.redo();
            }
          }
        });
  }

  private static boolean isTypedInto(@Nullable Node owner) {
    return owner instanceof TextArea
        || (owner != null
            && owner.getParent() instanceof FigureField<?> field
            && field.draft() != null);
  }
}

package dawngauge.ui.common;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.Scene;

/** All the fields of a part of the window, and what is typed in them and not taken. */
public final class FigureFields {

  /**
   * Something typed that the trip does not have.
   *
   * @param name what was typed
   * @param text the text in the field
   */
  public record Draft(String name, String text) {}

  private FigureFields() {}

  /** What is typed and not taken in the fields at and below a node. */
  public static List<Draft> drafts(Node root) {
    List<Draft> drafts = new ArrayList<>();
    for (FigureField<?> field : below(root)) {
      String draft = field.draft();
      if (draft != null) {
        drafts.add(new Draft(field.name(), draft));
      }
    }
    return drafts;
  }

  /** The same, but for those that tell of it themselves. */
  public static List<Draft> draftsElsewhere(Node root) {
    if (root instanceof FigureField<?>) {
      return drafts(root);
    }
    if (root instanceof DraftKeeper) {
      return List.of();
    }
    List<Draft> drafts = new ArrayList<>();
    if (root instanceof Parent parent) {
      parent.getChildrenUnmodifiable().forEach(child -> drafts.addAll(draftsElsewhere(child)));
    }
    return drafts;
  }

  /** The fields at and below a node, in order. */
  public static List<FigureField<?>> below(Node root) {
    List<FigureField<?>> fields = new ArrayList<>();
    gather(root, fields);
    return fields;
  }

  private static void gather(Node node, List<FigureField<?>> fields) {
    if (node instanceof FigureField<?> field) {
      fields.add(field);
    } else if (node instanceof Parent parent) {
      parent.getChildrenUnmodifiable().forEach(child -> gather(child, fields));
    }
  }

  /**
   * Finishes the field that has the keyboard, as before a command that needs what is typed; whether
   * nothing is left as a draft in it.
   */
  public static boolean finishIn(Scene scene) {
    Node owner = scene.getFocusOwner();
    return owner == null || !(owner.getParent() instanceof FigureField<?> field) || field.finish();
  }
}

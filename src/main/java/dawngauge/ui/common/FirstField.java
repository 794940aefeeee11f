package dawngauge.ui.common;

import java.util.List;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.SplitPane;
import javafx.scene.control.TextField;
import org.jspecify.annotations.Nullable;

/** Where the keyboard goes when a page is shown: what is typed first there, not a button. */
public final class FirstField {

  /** A page that says itself what comes first. */
  public interface Named {
    /** What gets the keyboard. */
    Node firstField();
  }

  private FirstField() {}

  /** Gives the keyboard to the first field of a page, unless another field of it has it. */
  public static void focus(@Nullable Node page) {
    Scene scene = page == null ? null : page.getScene();
    if (page == null || scene == null || isFieldOf(scene.getFocusOwner(), page)) {
      return;
    }
    // What is new has no skin yet, and what stands in a skin is in no scene before that.
    page.applyCss();
    if (page instanceof Named named) {
      named.firstField().requestFocus();
    } else {
      first(page).ifPresent(Node::requestFocus);
    }
  }

  private static boolean isFieldOf(@Nullable Node node, Node page) {
    Node at = node instanceof TextField ? node : null;
    while (at != null && at != page) {
      at = at.getParent();
    }
    return at != null;
  }

  private static Optional<Node> first(Node node) {
    if (!node.isVisible() || !node.isManaged() || node.isDisabled()) {
      return Optional.empty();
    }
    if (node instanceof TextField) {
      return Optional.of(node);
    }
    return parts(node).stream().map(FirstField::first).flatMap(Optional::stream).findFirst();
  }

  /** What stands in a node, also where its skin is not made yet. */
  private static List<? extends Node> parts(Node node) {
    if (node instanceof ScrollPane scroll) {
      return scroll.getContent() == null ? List.of() : List.of(scroll.getContent());
    } else if (node instanceof SplitPane split) {
      return split.getItems();
    }
    return node instanceof Parent parent ? parent.getChildrenUnmodifiable() : List.of();
  }
}

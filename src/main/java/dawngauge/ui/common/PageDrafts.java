package dawngauge.ui.common;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Consumer;
import java.util.stream.Stream;
import javafx.scene.Node;

/**
 * What is typed and not taken on a page whose fields may not be there yet, as where it is not shown
 * or a part of it is folded away. A field goes by its name and by the parts that it stands in.
 */
public final class PageDrafts {

  private static final String PART = "part";
  private static final String WITHIN = " / ";

  private final String kind;
  private final Node page;

  /** What is to go into fields once they are there. */
  private final Map<String, Map<String, String>> waiting = new LinkedHashMap<>();

  /**
   * Drafts of a page.
   *
   * @param kind what all on it belongs to, in one word
   * @param page holds its fields
   */
  public PageDrafts(String kind, Node page) {
    this.kind = kind;
    this.page = page;
  }

  /** Has a node stand for a part of its page. */
  public static void mark(Node node, String part) {
    node.getProperties().put(PART, part);
  }

  /** What is typed and not taken, or waits for its field. */
  public Map<String, Map<String, String>> all() {
    Map<String, Map<String, String>> all = new LinkedHashMap<>();
    waiting.forEach((part, texts) -> all.put(part, new LinkedHashMap<>(texts)));
    for (FigureField<?> field : FigureFields.below(page)) {
      String draft = field.draft();
      if (draft != null) {
        all.computeIfAbsent(partOf(field), part -> new LinkedHashMap<>()).put(field.name(), draft);
      }
    }
    return all;
  }

  /** Has texts wait for their fields. */
  public void expect(Map<String, Map<String, String>> kept) {
    kept.forEach(
        (part, texts) -> {
          if (part.equals(kind) || part.startsWith(kind + WITHIN)) {
            waiting.put(part, texts);
          }
        });
  }

  /**
   * Puts the texts that wait into their fields; those whose field is gone are dropped.
   *
   * @param shower shows a part, each before the parts in it
   */
  public void fill(Consumer<String> shower) {
    if (!waiting.isEmpty()) {
      waiting.keySet().stream()
          .flatMap(path -> Stream.of(path.split(WITHIN)).skip(1))
          .forEach(shower);
      FigureFields.below(page)
          .forEach(
              field ->
                  field.restore(waiting.getOrDefault(partOf(field), Map.of()).get(field.name())));
      waiting.clear();
    }
  }

  /** Drops all, as where another trip takes the place of theirs. */
  public void drop() {
    waiting.clear();
    FigureFields.below(page).forEach(FigureField::drop);
  }

  private String partOf(Node field) {
    String path = "";
    for (Node at = field; at != null && at != page; at = at.getParent()) {
      if (at.getProperties().get(PART) instanceof String part) {
        path = WITHIN + part + path;
      }
    }
    return kind + path;
  }
}

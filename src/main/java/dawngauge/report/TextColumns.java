package dawngauge.report;

import dawngauge.page.Block;
import java.util.ArrayList;
import java.util.List;

/** Columns of tables in plain text: how wide each is, and how a row is set. */
final class TextColumns {

  /** Tables are set in, as are the lines of a card. */
  private static final int INDENT = 2;

  /** So many columns may stand closer. */
  private static final int MANY = 9;

  private final List<Block.Column> columns;
  private final List<Integer> widths = new ArrayList<>();
  private final int gap;

  /**
   * As wide as what stands in them; where that is too much many columns stand closer, then heads
   * break, then the widest give way.
   *
   * @param rows all that stand under these columns, wherever on the page
   */
  TextColumns(List<Block.Column> columns, List<List<String>> rows) {
    this.columns = columns;
    List<Integer> least = new ArrayList<>();
    for (int i = 0; i < columns.size(); i++) {
      String head = columns.get(i).head();
      int cells = 1;
      for (List<String> row : rows) {
        cells = Math.max(cells, PlainText.length(row.get(i)));
      }
      int word = cells;
      for (String each : head.split(" ", -1)) {
        word = Math.max(word, PlainText.length(each));
      }
      least.add(word);
      widths.add(Math.max(cells, PlainText.length(head)));
    }
    int between = columns.size() - 1;
    int room = PlainText.WIDTH - INDENT;
    this.gap = between >= MANY && sum(least) + 2 * between > room ? 1 : 2;
    narrow(room - gap * between, least);
    narrow(room - gap * between, columns.stream().map(column -> 1).toList());
  }

  /** Takes from the widest as long as there is too little room and one is wider than its least. */
  private void narrow(int room, List<Integer> least) {
    for (int over = sum(widths) - room; over > 0; over--) {
      int widest = -1;
      for (int i = 0; i < widths.size(); i++) {
        boolean gives = widths.get(i) > least.get(i);
        widest = gives && (widest < 0 || widths.get(i) > widths.get(widest)) ? i : widest;
      }
      if (widest < 0) {
        return;
      }
      widths.set(widest, widths.get(widest) - 1);
    }
  }

  private static int sum(List<Integer> widths) {
    return widths.stream().mapToInt(Integer::intValue).sum();
  }

  /** The line of the heads: their last lines stand over the cells. */
  void heads(PlainText out) {
    print(out, columns.stream().map(Block.Column::head).toList(), true);
  }

  /** A row. */
  void row(PlainText out, List<String> cells) {
    print(out, cells, false);
  }

  private void print(PlainText out, List<String> cells, boolean low) {
    List<List<String>> parts = new ArrayList<>();
    int high = 1;
    for (int i = 0; i < cells.size(); i++) {
      parts.add(PlainText.split(cells.get(i), widths.get(i)));
      high = Math.max(high, parts.get(i).size());
    }
    for (int line = 0; line < high; line++) {
      StringBuilder text = new StringBuilder();
      for (int i = 0; i < parts.size(); i++) {
        List<String> cell = parts.get(i);
        int at = low ? line - (high - cell.size()) : line;
        String part = at >= 0 && at < cell.size() ? cell.get(at) : "";
        boolean right = columns.get(i).side() == Block.Side.RIGHT;
        text.append(" ".repeat(i == 0 ? INDENT : gap))
            .append(
                right ? PlainText.right(part, widths.get(i)) : PlainText.left(part, widths.get(i)));
      }
      out.line(text.toString());
    }
  }
}

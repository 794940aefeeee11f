package dawngauge.report;

import dawngauge.page.Block;
import dawngauge.page.Page;
import dawngauge.page.PageRenderer;
import dawngauge.page.Plot;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Any page as plain text of at most 100 columns. */
public final class PageText implements PageRenderer {

  /** Room for "do" and "why" before the lines of a card. */
  private static final int INDENT = 8;

  /** Between columns. */
  private static final int GAP = 2;

  private final PlainText out = new PlainText();
  private final boolean why;

  private PageText(boolean why) {
    this.why = why;
  }

  /**
   * The text.
   *
   * @param page what is shown
   * @param why whether with what stands behind it
   */
  public static String of(Page page, boolean why) {
    PageText text = new PageText(why);
    text.out.wrapped("", page.title());
    page.draw(text);
    return text.out.toString();
  }

  @Override
  public void heading(Block.Heading heading) {
    out.line("");
    out.wrapped(
        "", heading.level() == 1 ? heading.text().toUpperCase(Locale.ROOT) : heading.text());
  }

  @Override
  public void card(Block.Card card) {
    out.line("");
    out.wrapped("", card.title());
    lines("do", card.todo());
    lines("", card.watch());
    lines("why", why ? card.why() : List.of());
  }

  private void lines(String what, List<String> lines) {
    String first = what.isEmpty() ? "" : "  " + what;
    for (String line : lines) {
      out.wrapped(PlainText.left(first, INDENT), line);
      first = "";
    }
  }

  @Override
  public void table(Block.Table table) {
    out.line("");
    List<Integer> widths = widths(table);
    if (table.headed()) {
      row(table, table.columns().stream().map(Block.Column::head).toList(), widths);
    }
    table.rows().forEach(row -> row(table, row, widths));
  }

  /** As wide as what stands in them; the widest give way where that is too much. */
  private static List<Integer> widths(Block.Table table) {
    List<Integer> widths = new ArrayList<>();
    for (int i = 0; i < table.columns().size(); i++) {
      int wide = PlainText.length(table.columns().get(i).head());
      for (List<String> row : table.rows()) {
        wide = Math.max(wide, PlainText.length(row.get(i)));
      }
      widths.add(wide);
    }
    int room = PlainText.WIDTH - GAP * (widths.size() - 1);
    for (int over = sum(widths) - room; over > 0; over--) {
      int widest = 0;
      for (int i = 1; i < widths.size(); i++) {
        widest = widths.get(i) > widths.get(widest) ? i : widest;
      }
      widths.set(widest, Math.max(1, widths.get(widest) - 1));
    }
    return widths;
  }

  private static int sum(List<Integer> widths) {
    return widths.stream().mapToInt(Integer::intValue).sum();
  }

  private void row(Block.Table table, List<String> cells, List<Integer> widths) {
    List<List<String>> parts = new ArrayList<>();
    int high = 1;
    for (int i = 0; i < cells.size(); i++) {
      parts.add(PlainText.split(cells.get(i), widths.get(i)));
      high = Math.max(high, parts.get(i).size());
    }
    for (int line = 0; line < high; line++) {
      StringBuilder text = new StringBuilder();
      for (int i = 0; i < parts.size(); i++) {
        String part = line < parts.get(i).size() ? parts.get(i).get(line) : "";
        boolean right = table.columns().get(i).side() == Block.Side.RIGHT;
        text.append(i == 0 ? "" : " ".repeat(GAP))
            .append(
                right ? PlainText.right(part, widths.get(i)) : PlainText.left(part, widths.get(i)));
      }
      out.line(text.toString());
    }
  }

  @Override
  public void note(Block.Note note) {
    switch (note.weight()) {
      case MAIN -> {
        out.line("");
        out.wrapped("", note.text());
      }
      case CAUTION -> out.wrapped("  - ", note.text());
      case PLAIN, LESSER -> out.wrapped("", note.text());
    }
  }

  @Override
  public void bullets(Block.Bullets bullets) {
    bullets.lines().forEach(line -> out.wrapped("  - ", line));
  }

  @Override
  public void why(Block.Why hidden) {
    if (why) {
      heading(new Block.Heading(hidden.title(), 2));
      hidden.blocks().forEach(block -> block.draw(this));
    }
  }

  /** Nothing: it stands as a table beside it. */
  @Override
  public void plot(Plot plot) {}
}

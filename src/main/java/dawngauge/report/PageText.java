package dawngauge.report;

import dawngauge.page.Block;
import dawngauge.page.Page;
import dawngauge.page.PageRenderer;
import dawngauge.page.Plot;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Set;

/** Any page as plain text of at most 100 columns. */
public final class PageText implements PageRenderer {

  /** Room for "do" and "why" before the lines of a card. */
  private static final int INDENT = 8;

  /** Where something is left out. */
  private static final String MORE = "More by --why.";

  private final PlainText out = new PlainText();
  private final boolean why;
  private final Map<List<Block.Column>, TextColumns> widths = new HashMap<>();
  private final Set<List<Block.Column>> headed = new HashSet<>();
  private boolean hidden;

  private PageText(Page page, boolean why) {
    this.why = why;
    Map<List<Block.Column>, List<List<String>>> rows = new HashMap<>();
    count(page.blocks(), rows);
    rows.forEach((columns, all) -> widths.put(columns, new TextColumns(columns, all)));
  }

  /**
   * The text.
   *
   * @param page what is shown
   * @param why whether with what stands behind it
   */
  public static String of(Page page, boolean why) {
    PageText text = new PageText(page, why);
    text.out.wrapped("", page.title());
    page.draw(text);
    if (text.hidden) {
      text.out.line("");
      text.out.line(MORE);
    }
    return text.out.toString();
  }

  @Override
  public void heading(Block.Heading heading) {
    headed.clear();
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
    hidden = hidden || (!why && !card.why().isEmpty());
  }

  private void lines(String what, List<String> lines) {
    String first = what.isEmpty() ? "" : "  " + what;
    for (String line : lines) {
      out.wrapped(PlainText.left(first, INDENT), line);
      first = "";
    }
  }

  /** Tables of the same columns agree in width; their heads stand once under a heading. */
  @Override
  public void table(Block.Table table) {
    TextColumns columns =
        Objects.requireNonNull(widths.get(table.columns()), "a table that was not counted");
    boolean told = !headed.add(table.columns()) && !table.alone();
    if (table.headed() && !told) {
      out.line("");
      columns.heads(out);
    } else if (!table.headed()) {
      out.line("");
    }
    table.rows().forEach(row -> columns.row(out, row));
  }

  /** All rows of the page by their columns. */
  private void count(List<Block> blocks, Map<List<Block.Column>, List<List<String>>> rows) {
    for (Block block : blocks) {
      if (block instanceof Block.Table table) {
        rows.computeIfAbsent(table.columns(), key -> new ArrayList<>()).addAll(table.rows());
      } else if (block instanceof Block.Why hidden) {
        count(hidden.blocks(), rows);
      }
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
  public void why(Block.Why behind) {
    if (why) {
      heading(new Block.Heading(behind.title(), 2));
      behind.blocks().forEach(block -> block.draw(this));
    } else {
      hidden = true;
    }
  }

  /** Nothing: it stands as a table beside it. */
  @Override
  public void plot(Plot plot) {}
}

package dawngauge.report;

import dawngauge.page.Block;
import dawngauge.page.Page;
import dawngauge.page.PageRenderer;
import dawngauge.page.Plot;
import java.util.List;

/**
 * Any page as a part of an HTML document, without styles or scripts of its own: headings, lists,
 * tables with heads, and what is folded as details. A plot is told in words.
 */
final class PageHtml implements PageRenderer {

  private final StringBuilder out = new StringBuilder();
  private final int level;

  private PageHtml(int level) {
    this.level = level;
  }

  /**
   * The blocks of a page.
   *
   * @param level of its headings in the document, 2 for the second
   */
  static String of(Page page, int level) {
    return of(page.blocks(), level);
  }

  /** The same of blocks. */
  static String of(List<Block> blocks, int level) {
    PageHtml html = new PageHtml(level);
    blocks.forEach(block -> block.draw(html));
    return html.out.toString();
  }

  /** A text as it stands in a document, between tags and in attributes. */
  static String text(String plain) {
    return plain
        .replace("&", "&amp;")
        .replace("<", "&lt;")
        .replace(">", "&gt;")
        .replace("\"", "&quot;")
        .replace("'", "&#39;");
  }

  private void element(String name, String style, String text) {
    out.append('<').append(name);
    if (!style.isEmpty()) {
      out.append(" class=\"").append(style).append('"');
    }
    out.append('>').append(text(text)).append("</").append(name).append(">\n");
  }

  @Override
  public void heading(Block.Heading heading) {
    element("h" + (level + heading.level() - 1), "", heading.text());
  }

  @Override
  public void card(Block.Card card) {
    out.append("<div class=\"card\">\n");
    if (!card.title().isEmpty()) {
      element("h" + (level + 1), "", card.title());
    }
    lines("do", card.todo());
    lines("watch", card.watch());
    if (!card.why().isEmpty()) {
      out.append("<details><summary>Why</summary>\n");
      lines("why", card.why());
      out.append("</details>\n");
    }
    out.append("</div>\n");
  }

  private void lines(String style, List<String> lines) {
    if (!lines.isEmpty()) {
      out.append("<ul class=\"").append(style).append("\">\n");
      lines.forEach(line -> element("li", "", line));
      out.append("</ul>\n");
    }
  }

  @Override
  public void table(Block.Table table) {
    out.append("<div class=\"wide\" tabindex=\"0\" role=\"region\" aria-label=\"")
        .append(text(table.spoken()))
        .append("\"><table>\n");
    if (table.headed()) {
      out.append("<thead><tr>");
      for (Block.Column column : table.columns()) {
        cell("th scope=\"col\"", "th", column, column.head());
      }
      out.append("</tr></thead>\n");
    }
    out.append("<tbody>\n");
    for (List<String> row : table.rows()) {
      out.append("<tr>");
      for (int i = 0; i < row.size(); i++) {
        boolean names = i == 0 && table.headed();
        cell(
            names ? "th scope=\"row\"" : "td",
            names ? "th" : "td",
            table.columns().get(i),
            row.get(i));
      }
      out.append("</tr>\n");
    }
    out.append("</tbody></table></div>\n");
  }

  private void cell(String open, String close, Block.Column column, String text) {
    out.append('<').append(open);
    if (column.side() == Block.Side.RIGHT) {
      out.append(" class=\"figure\"");
    }
    out.append('>').append(text(text)).append("</").append(close).append('>');
  }

  @Override
  public void note(Block.Note note) {
    element(
        "p",
        switch (note.weight()) {
          case MAIN -> "main";
          case PLAIN -> "";
          case CAUTION -> "caution";
          case LESSER -> "lesser";
        },
        note.text());
  }

  @Override
  public void bullets(Block.Bullets bullets) {
    lines("", bullets.lines());
  }

  @Override
  public void why(Block.Why why) {
    out.append("<details><summary>").append(text(why.title())).append("</summary>\n");
    why.blocks().forEach(block -> block.draw(this));
    out.append("</details>\n");
  }

  @Override
  public void plot(Plot plot) {
    element("p", "lesser", plot.spoken());
  }
}

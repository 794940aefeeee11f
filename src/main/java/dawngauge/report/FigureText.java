package dawngauge.report;

import java.util.List;

/** Figures to set and what a reading means, as plain text of at most 100 columns. */
public final class FigureText {

  private FigureText() {}

  /**
   * The text.
   *
   * @param title stop and tire
   * @param lines what is told
   * @param cautions what must be heeded
   */
  public static String of(String title, List<String> lines, List<String> cautions) {
    PlainText out = new PlainText();
    out.wrapped("", title);
    for (String line : lines) {
      out.wrapped("  ", line);
    }
    out.line("");
    cautions.forEach(caution -> out.wrapped("- ", caution));
    return out.toString();
  }
}

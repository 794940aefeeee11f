package dawngauge.report;

import com.lowagie.text.Rectangle;

/** Text from the top of a page to its end in one or two columns, then on the next page. */
final class SheetFlow {

  private static final float BETWEEN = 14;

  private final SheetCanvas canvas;
  private final Rectangle page;
  private final String title;
  private final String what;
  private final float size;
  private final int columns;
  private int column;
  private float y;
  private String foot = "";

  /**
   * Begins on the page that is open.
   *
   * @param page size of further ones
   * @param what heading of its pages
   * @param size of body text in points
   */
  SheetFlow(
      SheetCanvas canvas, Rectangle page, String title, String what, float size, int columns) {
    this.canvas = canvas;
    this.page = page;
    this.title = title;
    this.what = what;
    this.size = size;
    this.columns = columns;
    begin(what);
  }

  /** The same with a line at the foot of the page that is open and of all further ones. */
  SheetFlow withFoot(String line) {
    foot = line;
    canvas.foot(foot);
    return this;
  }

  private void begin(String heading) {
    canvas.head(title, heading);
    if (!foot.isEmpty()) {
      canvas.foot(foot);
    }
    column = 0;
    y = start();
  }

  private float start() {
    return canvas.top() - canvas.headHigh();
  }

  float width() {
    return (canvas.width() - (columns - 1) * BETWEEN) / columns;
  }

  float x() {
    return canvas.left() + column * (width() + BETWEEN);
  }

  float y() {
    return y;
  }

  float size() {
    return size;
  }

  void down(float by) {
    y -= by;
  }

  /** Whether a height fits without another page. */
  boolean fits(float high) {
    return y - high >= canvas.bottom()
        || (column + 1 < columns && start() - high >= canvas.bottom());
  }

  /** Goes on to the next column or page where a height does not fit. */
  void room(float high) {
    if (y - high >= canvas.bottom() || y >= start()) {
      return;
    }
    if (column + 1 < columns) {
      column++;
      y = start();
    } else {
      canvas.newPage(page);
      begin(what + ", continued");
    }
  }

  /** A heading that is kept with the first lines of what follows. */
  void title(String text) {
    float high = size * 1.15f * SheetCanvas.LEADING;
    room(high + size * 4);
    y -= size * 0.4f;
    canvas.in("H2", () -> canvas.wrapped(text, x(), y, width(), size * 1.15f, true));
    y -= canvas.height(text, width(), size * 1.15f, true);
  }

  /** A paragraph, not parted. */
  void text(String text, boolean bold) {
    text(text, bold, size);
  }

  /** A paragraph of another size. */
  void text(String text, boolean bold, float points) {
    text(text, bold, points, "P");
  }

  /** Height of a whole column. */
  float wholeHigh() {
    return start() - canvas.bottom();
  }

  /** The same as an element of another type; parted only where no page takes it whole. */
  void text(String text, boolean bold, float points, String type) {
    float high = canvas.height(text, width(), points, bold);
    if (high > wholeHigh()) {
      int half = text.offsetByCodePoints(0, text.codePointCount(0, text.length()) / 2);
      int blank = text.lastIndexOf(' ', half);
      int at = blank > half / 2 ? blank : half;
      text(text.substring(0, at), bold, points, type);
      text(text.substring(at).stripLeading(), bold, points, type);
      return;
    }
    room(high);
    canvas.in(type, () -> canvas.wrapped(text, x(), y, width(), points, bold));
    y -= high + size * 0.12f;
  }
}

package dawngauge.page;

/** What a plot is drawn on. Lengths are in its own unit, y is from the top. */
public interface PlotCanvas {

  /** What is drawn, which decides its color or gray. */
  enum Ink {
    /** Main lines and words. */
    MAIN,
    /** The thin line. */
    THIN,
    /** Faint lines. */
    GRID,
    /** Ground of the nights. */
    NIGHT,
    /** Ground of a range. */
    RANGE
  }

  /** Where a text stands by its point. */
  enum Anchor {
    /** Begins there. */
    LEFT,
    /** Has its middle there. */
    MIDDLE,
    /** Ends there. */
    RIGHT
  }

  /** Fills a shape of corners. */
  void fill(Ink ink, double[] xs, double[] ys);

  /** A line through points. */
  void line(Ink ink, double wide, boolean dashed, double[] xs, double[] ys);

  /** A dot. */
  void dot(double x, double y, double radius, boolean filled);

  /** A word on a line that ends in height at y. */
  void text(String text, double x, double y, Anchor anchor);

  /** How wide a word is. */
  double wide(String text);

  /** Size of its letters. */
  double letter();
}

package dawngauge.testdata;

/** Contrast of two colors by WCAG 2.1 (2018): 1 for the same, 21 for black and white. */
public final class Contrast {
  private Contrast() {}

  /** The ratio of two colors 0xrrggbb. */
  public static double of(int a, int b) {
    double lighter = Math.max(luminance(a), luminance(b));
    double darker = Math.min(luminance(a), luminance(b));
    return (lighter + 0.05) / (darker + 0.05);
  }

  /** Relative luminance, 0 for black and 1 for white. */
  private static double luminance(int color) {
    return 0.2126 * linear(color >> 16) + 0.7152 * linear(color >> 8) + 0.0722 * linear(color);
  }

  private static double linear(int bits) {
    double channel = (bits & 0xff) / 255.0;
    return channel <= 0.03928 ? channel / 12.92 : Math.pow((channel + 0.055) / 1.055, 2.4);
  }
}

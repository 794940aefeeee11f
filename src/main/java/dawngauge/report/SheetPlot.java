package dawngauge.report;

import com.lowagie.text.pdf.PdfTemplate;
import dawngauge.page.PlotCanvas;

/** Draws a plot on paper, in grays. */
final class SheetPlot implements PlotCanvas {

  private final PdfTemplate paper;
  private final SheetPen pen;
  private final float high;

  SheetPlot(PdfTemplate paper, SheetPen pen, float high) {
    this.paper = paper;
    this.pen = pen;
    this.high = high;
  }

  private static float gray(Ink ink) {
    return switch (ink) {
      case MAIN -> 0;
      case THIN -> 0.35f;
      case GRID -> 0.6f;
      case NIGHT -> 0.88f;
      case RANGE -> 0.76f;
    };
  }

  private void path(double[] xs, double[] ys) {
    for (int i = 0; i < xs.length; i++) {
      float x = (float) xs[i];
      float y = high - (float) ys[i];
      if (i == 0) {
        paper.moveTo(x, y);
      } else {
        paper.lineTo(x, y);
      }
    }
  }

  @Override
  public void fill(Ink ink, double[] xs, double[] ys) {
    paper.setGrayFill(gray(ink));
    path(xs, ys);
    paper.closePath();
    paper.fill();
  }

  @Override
  public void line(Ink ink, double wide, boolean dashed, double[] xs, double[] ys) {
    paper.setGrayStroke(gray(ink));
    paper.setLineWidth((float) wide);
    if (dashed) {
      paper.setLineDash(4, 2, 0);
    }
    path(xs, ys);
    paper.stroke();
    paper.setLineDash(0);
  }

  @Override
  public void dot(double x, double y, double radius, boolean filled) {
    paper.setGrayStroke(0);
    paper.setLineWidth(0.8f);
    paper.setGrayFill(filled ? 0 : 1);
    paper.circle((float) x, high - (float) y, (float) radius);
    paper.fillStroke();
  }

  @Override
  public void text(String text, double x, double y, Anchor anchor) {
    int side =
        switch (anchor) {
          case LEFT -> PdfTemplate.ALIGN_LEFT;
          case MIDDLE -> PdfTemplate.ALIGN_CENTER;
          case RIGHT -> PdfTemplate.ALIGN_RIGHT;
        };
    paper.setGrayFill(0);
    paper.beginText();
    paper.setFontAndSize(pen.plainFont, (float) letter());
    paper.showTextAligned(side, text, (float) x, high - (float) y, 0);
    paper.endText();
  }

  @Override
  public double wide(String text) {
    return pen.plainFont.getWidthPoint(text, (float) letter());
  }

  @Override
  public double letter() {
    return pen.size * 0.9;
  }
}

package dawngauge.report;

import com.lowagie.text.DocumentException;
import com.lowagie.text.pdf.BaseFont;
import com.lowagie.text.pdf.PdfTemplate;
import com.lowagie.text.pdf.PdfWriter;
import dawngauge.advice.Mark;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;

/** Fonts, sizes and small parts of a sheet of paper: black on white, real text, embedded fonts. */
final class SheetPen {

  /** Stands for a letter that the font lacks; other signs that it lacks are left out. */
  private static final String MISSING = "?";

  /** Body text in points. */
  private static final float BODY = 9.5f;

  /** How much larger all is in larger type. */
  static final float LARGER = 1.4f;

  final PdfWriter writer;
  final BaseFont plainFont;
  final BaseFont boldFont;

  /** Size of body text in points; all other sizes and gaps follow it. */
  final float size;

  SheetPen(PdfWriter writer, boolean large) {
    this.writer = writer;
    this.plainFont = font("DejaVuSansCondensed.ttf");
    this.boldFont = font("DejaVuSansCondensed-Bold.ttf");
    this.size = large ? BODY * LARGER : BODY;
  }

  private static BaseFont font(String name) {
    try (InputStream stream =
        SheetPen.class.getResourceAsStream("/dawngauge/report/fonts/" + name)) {
      if (stream == null) {
        throw new IllegalStateException("the program lacks its own font " + name);
      }
      byte[] bytes = stream.readAllBytes();
      return BaseFont.createFont(name, BaseFont.IDENTITY_H, BaseFont.EMBEDDED, true, bytes, null);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (DocumentException e) {
      throw new IllegalStateException("its own font cannot be used: " + name, e);
    }
  }

  /** A text with a sign in the place of letters that the font lacks, and no line breaks. */
  String shown(String text) {
    StringBuilder out = new StringBuilder();
    text.codePoints()
        .forEach(
            point -> {
              if (Character.isISOControl(point)) {
                out.append(' ');
              } else if (Character.getType(point) != Character.FORMAT) {
                boolean known = Character.isBmpCodePoint(point) && plainFont.charExists(point);
                String missing = Character.isLetterOrDigit(point) ? MISSING : "";
                out.append(known ? Character.toString(point) : missing);
              }
            });
    return out.toString();
  }

  /** The beginning of a text that fits a width in points, cut with "…" where it is longer. */
  String fitting(String text, float width, boolean bold, float points) {
    String shown = shown(text);
    BaseFont font = bold ? boldFont : plainFont;
    if (font.getWidthPoint(shown, points) <= width) {
      return shown;
    }
    int end = shown.length();
    while (end > 0 && font.getWidthPoint(shown.substring(0, end) + "…", points) > width) {
      end--;
    }
    return shown.substring(0, end).stripTrailing() + "…";
  }

  /** The shape of a mark in a square of a width. */
  PdfTemplate shape(Mark mark, float wide) {
    PdfTemplate shape = writer.getDirectContent().createTemplate(wide, wide);
    float middle = wide / 2;
    float half = middle - 0.8f;
    shape.setLineWidth(1f);
    switch (mark) {
      case CLEAR -> ring(shape, middle, half);
      case RECHECK -> {
        ring(shape, middle, half);
        shape.circle(middle, middle, half * 0.36f);
        shape.fill();
      }
      case ADJUST -> {
        shape.moveTo(middle, middle - half - 0.6f);
        shape.lineTo(middle + half + 0.6f, middle);
        shape.lineTo(middle, middle + half + 0.6f);
        shape.lineTo(middle - half - 0.6f, middle);
        shape.closePathFillStroke();
      }
      case HOLD -> {
        shape.rectangle(middle - half, middle - half, 2 * half, 2 * half);
        shape.moveTo(middle - half, middle - half);
        shape.lineTo(middle + half, middle + half);
        shape.stroke();
      }
      case UNKNOWN -> {
        shape.moveTo(middle - half, middle);
        shape.lineTo(middle + half, middle);
        shape.stroke();
      }
    }
    return shape;
  }

  private static void ring(PdfTemplate shape, float middle, float radius) {
    shape.circle(middle, middle, radius);
    shape.stroke();
  }
}

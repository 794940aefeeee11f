package dawngauge.pack;

import static java.nio.charset.StandardCharsets.US_ASCII;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.RoundRectangle2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.file.Path;
import javax.imageio.ImageIO;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.SAXException;

/** The program's picture, drawn from its SVG of 128 units: rectangles, circles and lines. */
final class Picture {

  private static final double UNITS = 128;
  private static final int ICO_HEAD = 22;
  private static final int ICNS_HEAD = 16;

  private Picture() {}

  /** A PNG, so many pixels wide and high. */
  static byte[] png(Path svg, int size) throws IOException {
    BufferedImage image = new BufferedImage(size, size, BufferedImage.TYPE_INT_ARGB);
    Graphics2D pen = image.createGraphics();
    pen.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    pen.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
    pen.scale(size / UNITS, size / UNITS);
    NodeList parts = parse(svg).getElementsByTagName("*");
    for (int i = 0; i < parts.getLength(); i++) {
      draw(pen, (Element) parts.item(i));
    }
    pen.dispose();
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ImageIO.write(image, "png", out);
    return out.toByteArray();
  }

  private static Element parse(Path svg) throws IOException {
    try {
      return DocumentBuilderFactory.newInstance()
          .newDocumentBuilder()
          .parse(svg.toFile())
          .getDocumentElement();
    } catch (ParserConfigurationException | SAXException wrong) {
      throw new IOException(svg + " cannot be read", wrong);
    }
  }

  private static void draw(Graphics2D pen, Element part) {
    switch (part.getTagName()) {
      case "rect" -> {
        pen.setColor(Color.decode(part.getAttribute("fill")));
        double round = 2 * number(part, "rx");
        pen.fill(
            new RoundRectangle2D.Double(
                number(part, "x"),
                number(part, "y"),
                number(part, "width"),
                number(part, "height"),
                round,
                round));
      }
      case "circle" -> {
        pen.setColor(Color.decode(part.getAttribute("fill")));
        double r = number(part, "r");
        pen.fill(
            new Ellipse2D.Double(number(part, "cx") - r, number(part, "cy") - r, 2 * r, 2 * r));
      }
      case "line" -> {
        pen.setColor(Color.decode(part.getAttribute("stroke")));
        pen.setStroke(
            new BasicStroke(
                (float) number(part, "stroke-width"),
                BasicStroke.CAP_BUTT,
                BasicStroke.JOIN_MITER));
        pen.draw(
            new Line2D.Double(
                number(part, "x1"), number(part, "y1"), number(part, "x2"), number(part, "y2")));
      }
      default ->
          throw new IllegalArgumentException("no " + part.getTagName() + " can be drawn here");
    }
  }

  private static double number(Element part, String name) {
    return Double.parseDouble(part.getAttribute(name));
  }

  /** A PNG as Windows wants it: one picture, of 256 pixels, which are written as 0. */
  static byte[] ico(byte[] png) {
    ByteBuffer ico = ByteBuffer.allocate(ICO_HEAD + png.length).order(ByteOrder.LITTLE_ENDIAN);
    ico.putShort((short) 0).putShort((short) 1).putShort((short) 1);
    ico.put((byte) 0).put((byte) 0).put((byte) 0).put((byte) 0);
    ico.putShort((short) 1).putShort((short) 32).putInt(png.length).putInt(ICO_HEAD);
    return ico.put(png).array();
  }

  /** A PNG as macOS wants it: "ic08" is a PNG of 256 pixels. */
  static byte[] icns(byte[] png) {
    ByteBuffer icns = ByteBuffer.allocate(ICNS_HEAD + png.length);
    icns.put("icns".getBytes(US_ASCII)).putInt(ICNS_HEAD + png.length);
    icns.put("ic08".getBytes(US_ASCII)).putInt(ICNS_HEAD - 8 + png.length);
    return icns.put(png).array();
  }
}

package dawngauge.exchange;

import java.io.ByteArrayInputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import org.jspecify.annotations.Nullable;

/**
 * A first look at a file before its points are read: whether it may be read at all, and which
 * points say no place on the earth.
 *
 * @param refused why it may not be read; empty where it may
 * @param bad points that cannot be used
 */
record GpxScan(String refused, List<GpxScan.Bad> bad) {

  private static final Set<String> POINTS = Set.of("wpt", "rtept", "trkpt");

  /** Deeper than this no such file is; ours. */
  private static final int DEEPEST = 64;

  /**
   * A point that cannot be used.
   *
   * @param line where it stands, the first line 1
   * @param what what it says
   */
  record Bad(int line, String what) {}

  static GpxScan of(byte[] bytes) {
    XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
    factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
    factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
    List<Bad> bad = new ArrayList<>();
    boolean root = false;
    int depth = 0;
    try {
      XMLStreamReader reader = factory.createXMLStreamReader(new ByteArrayInputStream(bytes));
      while (reader.hasNext()) {
        int event = reader.next();
        if (event == XMLStreamConstants.DTD) {
          return refusing("it has a document type, which no such file needs");
        } else if (event == XMLStreamConstants.START_ELEMENT) {
          if (++depth > DEEPEST) {
            return refusing("it is nested too deeply");
          }
          if (!root && !reader.getLocalName().equals("gpx")) {
            return refusing("it is no GPX file");
          }
          root = true;
          if (POINTS.contains(reader.getLocalName())) {
            look(reader, bad);
          }
        } else if (event == XMLStreamConstants.END_ELEMENT) {
          depth--;
        }
      }
    } catch (XMLStreamException wrong) {
      int line = wrong.getLocation() == null ? 0 : wrong.getLocation().getLineNumber();
      return refusing("it is no sound XML" + (line > 0 ? ", see line " + line : ""));
    }
    return root ? new GpxScan("", bad) : refusing("it is no GPX file");
  }

  private static GpxScan refusing(String why) {
    return new GpxScan(why, List.of());
  }

  private static void look(XMLStreamReader reader, List<Bad> bad) {
    String latitude = reader.getAttributeValue(null, "lat");
    String longitude = reader.getAttributeValue(null, "lon");
    if (!within(latitude, 90) || !within(longitude, 180)) {
      int line = reader.getLocation().getLineNumber();
      bad.add(new Bad(line, shown("lat", latitude) + ", " + shown("lon", longitude)));
    }
  }

  private static String shown(String name, @Nullable String value) {
    return value == null
        ? "no " + name
        : name + " " + (value.length() > 20 ? value.substring(0, 20) + "…" : value);
  }

  private static boolean within(@Nullable String text, double limit) {
    try {
      return text != null && Math.abs(Double.parseDouble(text)) <= limit;
    } catch (NumberFormatException wrong) {
      return false;
    }
  }
}

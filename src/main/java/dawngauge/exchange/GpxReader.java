package dawngauge.exchange;

import dawngauge.geo.Coordinate;
import dawngauge.geo.TrackLine;
import dawngauge.geo.TrackPoint;
import dawngauge.problem.Problem;
import dawngauge.problem.ProblemCode;
import dawngauge.quantity.Elevation;
import dawngauge.quantity.Median;
import java.io.StringReader;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.regex.Pattern;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import org.jspecify.annotations.Nullable;

/**
 * Reads the lines of one GPX text. Of the elements of other namespaces (extensions) only those of a
 * route's point are taken that have a latitude and a longitude: they are the way to its next point.
 */
final class GpxReader {

  private static final Set<String> POINTS = Set.of("wpt", "rtept", "trkpt");
  private static final Set<String> LINES = Set.of("trk", "rte");

  /** Deeper than this no such file is; ours. */
  private static final int DEEPEST = 64;

  /** A decimal number as XML Schema has it, also with an exponent; no NaN, no hexadecimal. */
  private static final Pattern NUMBER =
      Pattern.compile("[+-]?(\\d{1,60}(\\.\\d{0,60})?|\\.\\d{1,60})([eE][+-]?\\d{1,3})?");

  /** Heights outside this are no ground, in meter. */
  private static final double LOWEST = -500;

  private static final double HIGHEST = 9000;

  /** A route of so many points so near to each other is the way itself, in meter; ours. */
  private static final int DENSE_POINTS = 20;

  private static final double DENSE_METERS = 1000;

  /** What of a file is told one by one; ours. */
  private static final int MOST_TOLD = 20;

  /**
   * What was read.
   *
   * @param refused why nothing was; empty where something was
   * @param lines tracks and routes of two points or more in the order of the file; waypoints last
   * @param problems what was left out
   */
  record Result(String refused, List<TrackLine> lines, List<Problem> problems) {}

  private final List<TrackLine> tracks = new ArrayList<>();
  private final List<TrackLine> routes = new ArrayList<>();
  private final List<TrackPoint> waypoints = new ArrayList<>();
  private final List<Problem> problems = new ArrayList<>();
  private int told;

  /** Names of the elements that are open, the innermost first; empty where of other namespaces. */
  private final Deque<String> open = new ArrayDeque<>();

  private final StringBuilder text = new StringBuilder();
  private @Nullable OpenLine line;
  private @Nullable OpenPoint point;

  private GpxReader() {}

  /** A track or a route that is being read. */
  private static final class OpenLine {
    final int row;
    String name = "";
    final List<TrackPoint> points = new ArrayList<>();
    final List<Integer> emptySegments = new ArrayList<>();
    int segmentRow;
    int pointsSeen;

    /** Route points among the points, where the way to the next is told. */
    final List<Integer> turns = new ArrayList<>();

    boolean shaped;

    /** Points before which a segment begins. */
    final List<Integer> begins = new ArrayList<>();

    OpenLine(int row) {
      this.row = row;
    }
  }

  /** A point that is being read; without a place where it has none on the earth. */
  private static final class OpenPoint {
    final @Nullable Coordinate at;
    String name = "";
    @Nullable Elevation height;
    final List<TrackPoint> shape = new ArrayList<>();

    OpenPoint(@Nullable Coordinate at) {
      this.at = at;
    }
  }

  static Result of(String xml) {
    XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
    factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
    factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
    GpxReader reader = new GpxReader();
    String refused;
    try {
      refused = reader.read(factory.createXMLStreamReader(new StringReader(xml)));
    } catch (XMLStreamException wrong) {
      int row = wrong.getLocation() == null ? 0 : wrong.getLocation().getLineNumber();
      refused = "it is no sound XML" + (row > 0 ? ", see line " + row : "");
    }
    return refused.isEmpty() ? reader.result() : new Result(refused, List.of(), List.of());
  }

  private Result result() {
    if (told > MOST_TOLD) {
      problems.add(Problem.of(ProblemCode.GPX_MORE_LEFT_OUT, "", String.valueOf(told - MOST_TOLD)));
    }
    List<TrackLine> lines = new ArrayList<>(tracks);
    lines.addAll(routes);
    if (!waypoints.isEmpty()) {
      lines.add(new TrackLine(TrackLine.Kind.WAYPOINTS, "", waypoints));
    }
    return new Result("", lines, problems);
  }

  /** Why the file is refused; empty where it is not. */
  private String read(XMLStreamReader xml) throws XMLStreamException {
    String namespace = null;
    boolean root = false;
    while (xml.hasNext()) {
      switch (xml.next()) {
        case XMLStreamConstants.DTD -> {
          return "it has a document type, which no such file needs";
        }
        case XMLStreamConstants.START_ELEMENT -> {
          if (open.size() == DEEPEST) {
            return "it is nested too deeply";
          }
          if (!root) {
            if (!xml.getLocalName().equals("gpx")) {
              return "it is no GPX file";
            }
            root = true;
            namespace = xml.getNamespaceURI();
          }
          boolean ours = Objects.equals(namespace, xml.getNamespaceURI());
          String parent = open.isEmpty() ? "" : open.element();
          open.push(ours ? xml.getLocalName() : "");
          begin(xml, parent, open.element());
        }
        case XMLStreamConstants.CHARACTERS, XMLStreamConstants.CDATA -> text.append(xml.getText());
        case XMLStreamConstants.END_ELEMENT -> {
          String name = open.pop();
          end(name, open.isEmpty() ? "" : open.element(), xml.getLocation().getLineNumber());
        }
        default -> {
          // comments and processing instructions say nothing of the way
        }
      }
    }
    return root ? "" : "it is no GPX file";
  }

  private void begin(XMLStreamReader xml, String parent, String name) {
    text.setLength(0);
    int row = xml.getLocation().getLineNumber();
    OpenLine into = line;
    if (LINES.contains(name) && parent.equals("gpx")) {
      line = new OpenLine(row);
    } else if (name.equals("trkseg") && parent.equals("trk") && into != null) {
      into.segmentRow = row;
      into.pointsSeen = 0;
      into.begins.add(into.points.size());
    } else if (POINTS.contains(name) && isPointOf(parent, name)) {
      if (into != null) {
        into.pointsSeen++;
      }
      point = new OpenPoint(place(xml, row));
    } else if (name.isEmpty() && point != null && into != null) {
      addShape(point, xml);
    }
  }

  /** A point of the way within a route point's extensions, whatever it is called there. */
  private static void addShape(OpenPoint of, XMLStreamReader xml) {
    double north = number(xml.getAttributeValue(null, "lat"));
    double east = number(xml.getAttributeValue(null, "lon"));
    if (Math.abs(north) <= 90 && Math.abs(east) <= 180) {
      of.shape.add(new TrackPoint(new Coordinate(north, east), null, ""));
    }
  }

  private static boolean isPointOf(String parent, String name) {
    return switch (name) {
      case "wpt" -> parent.equals("gpx");
      case "rtept" -> parent.equals("rte");
      default -> parent.equals("trkseg") || parent.equals("trk");
    };
  }

  private void end(String name, String parent, int row) {
    OpenPoint at = point;
    OpenLine into = line;
    if (at != null && POINTS.contains(parent)) {
      if (name.equals("name")) {
        at.name = text.toString().strip();
      } else if (name.equals("ele")) {
        at.height = height(text.toString().strip(), row);
      }
    } else if (into != null && LINES.contains(parent) && name.equals("name")) {
      into.name = text.toString().strip();
    } else if (at != null && POINTS.contains(name) && isPointOf(parent, name)) {
      if (at.at != null) {
        List<TrackPoint> points = name.equals("wpt") || into == null ? waypoints : into.points;
        points.add(new TrackPoint(at.at, at.height, at.name));
        if (name.equals("rtept") && into != null) {
          into.turns.add(points.size() - 1);
          into.shaped |= !at.shape.isEmpty();
          points.addAll(at.shape);
        }
      }
      point = null;
    } else if (into != null && name.equals("trkseg") && parent.equals("trk")) {
      if (into.pointsSeen == 0) {
        into.emptySegments.add(into.segmentRow);
      }
    } else if (into != null && LINES.contains(name) && parent.equals("gpx")) {
      end(into, name.equals("trk") ? TrackLine.Kind.TRACK : TrackLine.Kind.ROUTE);
      line = null;
    }
    text.setLength(0);
  }

  private void end(OpenLine read, TrackLine.Kind kind) {
    TrackLine whole = new TrackLine(kind, read.name, read.points);
    if (read.points.size() < 2) {
      String count = read.points.isEmpty() ? "no point" : "one point only, and a way needs two";
      tell(ProblemCode.GPX_LINE_LEFT_OUT, read.row, whole.words(), count);
      return;
    }
    for (int row : read.emptySegments) {
      tell(ProblemCode.GPX_LINE_LEFT_OUT, row, "a segment of " + whole.words(), "no point");
    }
    if (kind == TrackLine.Kind.TRACK) {
      tracks.add(whole.withGapsTold(read.begins));
    } else {
      routes.add(read.shaped || isDense(whole) ? way(read) : whole);
    }
  }

  /** A route with its way; turns without a name are stops to choose from by their number. */
  private static TrackLine way(OpenLine read) {
    List<TrackPoint> points = new ArrayList<>(read.points);
    for (int i = 0; read.shaped && i < read.turns.size(); i++) {
      TrackPoint turn = points.get(read.turns.get(i));
      if (turn.name().isEmpty()) {
        points.set(
            read.turns.get(i),
            new TrackPoint(turn.at(), turn.elevation(), "route point " + (i + 1)));
      }
    }
    return new TrackLine(TrackLine.Kind.ROUTE_WAY, read.name, points);
  }

  private static boolean isDense(TrackLine line) {
    if (line.points().size() < DENSE_POINTS) {
      return false;
    }
    double[] meters = line.meters();
    double[] steps = new double[meters.length - 1];
    for (int i = 0; i < steps.length; i++) {
      steps[i] = meters[i + 1] - meters[i];
    }
    return Median.of(steps) <= DENSE_METERS;
  }

  private @Nullable Coordinate place(XMLStreamReader xml, int row) {
    String latitude = xml.getAttributeValue(null, "lat");
    String longitude = xml.getAttributeValue(null, "lon");
    double north = number(latitude);
    double east = number(longitude);
    if (Math.abs(north) <= 90 && Math.abs(east) <= 180) {
      return new Coordinate(north, east);
    }
    tell(
        ProblemCode.GPX_POINT_LEFT_OUT,
        row,
        shown("lat", latitude) + ", " + shown("lon", longitude));
    return null;
  }

  /** The height of the ground; null where none is said, or none that can be. */
  private @Nullable Elevation height(String said, int row) {
    double meters = number(said);
    if (meters >= LOWEST && meters <= HIGHEST) {
      return new Elevation(meters);
    } else if (!said.isEmpty()) {
      tell(ProblemCode.GPX_HEIGHT_LEFT_OUT, row, CsvRows.shortened(said));
    }
    return null;
  }

  /** Not a number where the text is none. */
  private static double number(@Nullable String said) {
    String plain = said == null ? "" : said.strip();
    return NUMBER.matcher(plain).matches() ? Double.parseDouble(plain) : Double.NaN;
  }

  private static String shown(String name, @Nullable String value) {
    return value == null ? "no " + name : name + " " + CsvRows.shortened(value);
  }

  private void tell(ProblemCode code, int row, String... what) {
    told++;
    if (told <= MOST_TOLD) {
      problems.add(Problem.of(code, "line " + row, what));
    }
  }
}

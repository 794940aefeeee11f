package dawngauge.exchange;

import dawngauge.geo.Coordinate;
import dawngauge.geo.TrackLine;
import dawngauge.geo.TrackPoint;
import dawngauge.problem.Outcome;
import dawngauge.problem.Problem;
import dawngauge.problem.ProblemCode;
import dawngauge.quantity.Elevation;
import dawngauge.trip.Stop;
import dawngauge.trip.Trip;
import io.jenetics.jpx.GPX;
import io.jenetics.jpx.Length;
import io.jenetics.jpx.Route;
import io.jenetics.jpx.Track;
import io.jenetics.jpx.TrackSegment;
import io.jenetics.jpx.WayPoint;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * Lines from GPX files (GPX 1.0 and 1.1, topografix.com/GPX/1/1), and a trip's route as one. A file
 * with a document type is refused, so that no entity is ever followed; points that cannot be read
 * are left out and told with their line.
 */
public final class GpxFile {

  /** Longest file that is read, in bytes; ours. */
  public static final int LONGEST = 64 << 20;

  /** Points left out that are told one by one; ours. */
  private static final int MOST_TOLD = 20;

  /** Heights outside this are no ground, in meter. */
  private static final double LOWEST = -500;

  private static final double HIGHEST = 9000;

  private GpxFile() {}

  /** Reads a file; see {@link #read}. */
  public static Outcome<List<TrackLine>> open(Path file) {
    try (InputStream in = Files.newInputStream(file)) {
      return read(in.readNBytes(LONGEST + 1));
    } catch (IOException unreadable) {
      return failed("it cannot be opened");
    }
  }

  /** The lines of a file, tracks first; the problems tell what was left out. */
  public static Outcome<List<TrackLine>> read(byte[] bytes) {
    if (bytes.length > LONGEST) {
      return failed("it is longer than 64 MiB");
    }
    GpxScan scan = GpxScan.of(bytes);
    if (!scan.refused().isEmpty()) {
      return failed(scan.refused());
    }
    GPX gpx;
    try {
      gpx = GPX.Reader.of(GPX.Reader.Mode.LENIENT).read(new ByteArrayInputStream(bytes));
    } catch (IOException | RuntimeException wrong) {
      return failed("it cannot be read");
    }
    List<TrackLine> lines = new ArrayList<>();
    for (Track track : gpx.getTracks()) {
      List<WayPoint> points = new ArrayList<>();
      for (TrackSegment segment : track.getSegments()) {
        points.addAll(segment.getPoints());
      }
      add(lines, TrackLine.Kind.TRACK, track.getName().orElse(""), points);
    }
    for (Route route : gpx.getRoutes()) {
      add(lines, TrackLine.Kind.ROUTE, route.getName().orElse(""), route.getPoints());
    }
    add(lines, TrackLine.Kind.WAYPOINTS, "", gpx.getWayPoints());
    if (lines.isEmpty()) {
      return failed("it holds no track, no route and no two waypoints");
    }
    return Outcome.of(lines, leftOut(scan.bad()));
  }

  private static Outcome<List<TrackLine>> failed(String why) {
    return Outcome.failed(Problem.of(ProblemCode.NO_GPX_ROUTE, "", why));
  }

  private static List<Problem> leftOut(List<GpxScan.Bad> bad) {
    List<Problem> problems = new ArrayList<>();
    for (GpxScan.Bad point : bad.subList(0, Math.min(bad.size(), MOST_TOLD))) {
      problems.add(
          Problem.of(ProblemCode.GPX_POINT_LEFT_OUT, "line " + point.line(), point.what()));
    }
    if (bad.size() > MOST_TOLD) {
      problems.add(
          Problem.of(ProblemCode.GPX_POINTS_LEFT_OUT, "", String.valueOf(bad.size() - MOST_TOLD)));
    }
    return problems;
  }

  private static void add(
      List<TrackLine> lines, TrackLine.Kind kind, String name, List<WayPoint> given) {
    List<TrackPoint> points = new ArrayList<>();
    for (WayPoint point : given) {
      double latitude = point.getLatitude().doubleValue();
      double longitude = point.getLongitude().doubleValue();
      double height =
          point.getElevation().map(length -> length.to(Length.Unit.METER)).orElse(Double.NaN);
      boolean ground = height >= LOWEST && height <= HIGHEST;
      points.add(
          new TrackPoint(
              new Coordinate(latitude, longitude),
              ground ? new Elevation(height) : null,
              point.getName().map(String::strip).orElse("")));
    }
    if (points.size() > 1) {
      lines.add(new TrackLine(kind, name.strip(), points));
    }
  }

  /** A trip's route as GPX 1.1: one route of its stops that lie somewhere. */
  public static String write(Trip trip) {
    Route.Builder route = Route.builder().name(plain(trip.name()));
    for (Stop stop : trip.route().stops()) {
      Coordinate at = stop.coordinate();
      if (at != null) {
        WayPoint.Builder point =
            WayPoint.builder().lat(at.latitude()).lon(at.longitude()).name(plain(stop.place()));
        if (stop.elevation() != null) {
          point.ele(stop.elevation().value().meters());
        }
        route.addPoint(point.build());
      }
    }
    GPX gpx = GPX.builder("Dawngauge").addRoute(route.build()).build();
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try {
      GPX.Writer.of(GPX.Writer.Indent.SPACE2).write(gpx, out);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return out.toString(StandardCharsets.UTF_8);
  }

  /** Characters that XML 1.0 cannot hold are left out. */
  private static String plain(String text) {
    return text.codePoints()
        .filter(
            point ->
                point == '\t'
                    || (point >= 0x20 && point <= 0xD7FF)
                    || (point >= 0xE000 && point <= 0xFFFD)
                    || point >= 0x10000)
        .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
        .toString();
  }
}

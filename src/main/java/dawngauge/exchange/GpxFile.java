package dawngauge.exchange;

import dawngauge.geo.Coordinate;
import dawngauge.geo.TrackLine;
import dawngauge.problem.Outcome;
import dawngauge.problem.Problem;
import dawngauge.problem.ProblemCode;
import dawngauge.trip.Stop;
import dawngauge.trip.Trip;
import io.jenetics.jpx.GPX;
import io.jenetics.jpx.Route;
import io.jenetics.jpx.WayPoint;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/**
 * Lines from GPX files (GPX 1.0 and 1.1, topografix.com/GPX/1/1), and a trip's route as one. A file
 * with a document type is refused, so that no entity is ever followed; points that cannot be read
 * are left out and told with their line.
 */
public final class GpxFile {

  /** Longest file that is read, in bytes; ours. */
  public static final int LONGEST = 64 << 20;

  /** Decimals written: all that a number has, so that the same place is read back. */
  private static final int MOST_DECIMALS = 20;

  private GpxFile() {}

  /** Reads a file; see {@link #read}. */
  public static Outcome<List<TrackLine>> open(Path file) {
    try (InputStream in = Files.newInputStream(file)) {
      return read(in.readNBytes(LONGEST + 1));
    } catch (IOException unreadable) {
      return failed("it cannot be opened");
    }
  }

  /**
   * The lines of a file, tracks first, waypoints last, of which one alone is given too; the
   * problems tell what was left out.
   */
  public static Outcome<List<TrackLine>> read(byte[] bytes) {
    if (bytes.length > LONGEST) {
      return failed("it is longer than 64 MiB");
    }
    XmlText xml = XmlText.of(bytes);
    if (!xml.refused().isEmpty()) {
      return failed(xml.refused());
    }
    GpxReader.Result read = GpxReader.of(xml.text());
    if (!read.refused().isEmpty()) {
      return failed(read.refused());
    }
    boolean way = read.lines().stream().anyMatch(line -> line.points().size() > 1);
    return way
        ? Outcome.of(read.lines(), read.problems())
        : failed("it holds no track and no route of two points, and no two waypoints");
  }

  private static Outcome<List<TrackLine>> failed(String why) {
    return Outcome.failed(Problem.of(ProblemCode.NO_GPX_ROUTE, "", why));
  }

  /** A trip's route as GPX 1.1: one route of its stops that lie somewhere. */
  public static String write(Trip trip) {
    Route.Builder route = Route.builder().name(plain(trip.name()));
    for (Stop stop : trip.route().stops()) {
      Coordinate at = stop.coordinate();
      if (at != null) {
        WayPoint.Builder point =
            WayPoint.builder().lat(at.latitude()).lon(east(at)).name(plain(stop.place()));
        if (stop.elevation() != null) {
          point.ele(stop.elevation().value().meters());
        }
        route.addPoint(point.build());
      }
    }
    GPX gpx = GPX.builder("Dawngauge").addRoute(route.build()).build();
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try {
      GPX.Writer.of(GPX.Writer.Indent.SPACE2, MOST_DECIMALS).write(gpx, out);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return out.toString(StandardCharsets.UTF_8);
  }

  /** Longitude as GPX 1.1 has it, which ends before 180. */
  private static double east(Coordinate at) {
    return at.longitude() == 180 ? -180 : at.longitude();
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

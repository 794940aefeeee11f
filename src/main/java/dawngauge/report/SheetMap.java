package dawngauge.report;

import com.lowagie.text.pdf.PdfTemplate;
import dawngauge.geo.Coordinate;
import dawngauge.geo.GreatCircle;
import dawngauge.geo.ScaleBar;
import dawngauge.quantity.Distance;
import dawngauge.quantity.QuantityKind;
import dawngauge.quantity.Unit;
import dawngauge.quantity.UnitSystem;
import dawngauge.trip.Stop;
import dawngauge.trip.Trip;
import java.util.ArrayList;
import java.util.List;

/** The route in outline: stops by number where they lie, straight lines between, north up. */
final class SheetMap {

  private final SheetPen pen;
  private final PdfTemplate map;
  private final List<float[]> taken = new ArrayList<>();

  private SheetMap(SheetPen pen, float width, float height) {
    this.pen = pen;
    this.map = pen.writer.getDirectContent().createTemplate(width, height);
  }

  /** Whether enough stops have coordinates. */
  static boolean draws(Trip trip) {
    return trip.route().stops().stream().filter(stop -> stop.coordinate() != null).count() > 1;
  }

  static PdfTemplate of(SheetPen pen, Trip trip, UnitSystem units, float width, float height) {
    SheetMap drawing = new SheetMap(pen, width, height);
    drawing.draw(trip, units, width, height);
    return drawing.map;
  }

  private void draw(Trip trip, UnitSystem units, float width, float height) {
    double west = Double.POSITIVE_INFINITY;
    double east = Double.NEGATIVE_INFINITY;
    double south = Double.POSITIVE_INFINITY;
    double north = Double.NEGATIVE_INFINITY;
    double firstLongitude = Double.NaN;
    List<double[]> points = new ArrayList<>();
    List<Stop> stops = trip.route().stops();
    for (int i = 0; i < stops.size(); i++) {
      Coordinate at = stops.get(i).coordinate();
      if (at != null) {
        firstLongitude = Double.isNaN(firstLongitude) ? at.longitude() : firstLongitude;
        // Across the date line the short way.
        double longitude =
            firstLongitude + Math.IEEEremainder(at.longitude() - firstLongitude, 360);
        points.add(new double[] {longitude, at.latitude(), i + 1});
        west = Math.min(west, longitude);
        east = Math.max(east, longitude);
        south = Math.min(south, at.latitude());
        north = Math.max(north, at.latitude());
      }
    }
    double narrow = Math.max(0.05, Math.cos(Math.toRadians((south + north) / 2)));
    float edge = pen.size * 2.2f;
    double scale =
        Math.min(
            (width - 2 * edge) / Math.max(1e-4, (east - west) * narrow),
            (height - 2 * edge) / Math.max(1e-4, north - south));
    float x0 = (float) (width / 2 - (west + east) / 2 * narrow * scale);
    float y0 = (float) (height / 2 - (south + north) / 2 * scale);
    map.setLineWidth(1.1f);
    for (int i = 0; i < points.size(); i++) {
      float x = (float) (x0 + points.get(i)[0] * narrow * scale);
      float y = (float) (y0 + points.get(i)[1] * scale);
      if (i == 0) {
        map.moveTo(x, y);
      } else {
        map.lineTo(x, y);
      }
    }
    map.stroke();
    for (double[] point : points) {
      float x = (float) (x0 + point[0] * narrow * scale);
      float y = (float) (y0 + point[1] * scale);
      map.circle(x, y, 2.4f);
      map.fill();
      number(String.valueOf((int) point[2]), x, y);
    }
    bar(units, scale, (south + north) / 2, width);
    map.setLineWidth(0.6f);
    map.rectangle(0.5f, 0.5f, width - 1, height - 1);
    map.stroke();
    text("N ↑", width - pen.size * 2.4f, height - pen.size * 1.4f);
  }

  /** Beside its dot where no other number stands; left out where there is no room. */
  private void number(String number, float x, float y) {
    float wide = pen.boldFont.getWidthPoint(number, pen.size);
    float high = pen.size * 0.8f;
    float gap = 3.5f;
    float[][] places = {
      {x + gap, y + 1}, {x - gap - wide, y + 1}, {x + gap, y - high - 1}, {x - gap - wide, y - high}
    };
    for (float[] place : places) {
      boolean free =
          taken.stream()
              .noneMatch(
                  other ->
                      place[0] < other[2]
                          && other[0] < place[0] + wide
                          && place[1] < other[3]
                          && other[1] < place[1] + high);
      if (free) {
        taken.add(new float[] {place[0], place[1], place[0] + wide, place[1] + high});
        text(number, place[0], place[1]);
        return;
      }
    }
  }

  /** A bar of a round length. */
  private void bar(UnitSystem units, double scale, double latitude, float width) {
    double metersPerDegree =
        GreatCircle.between(
                new Coordinate(Math.min(89, latitude), 0),
                new Coordinate(Math.min(89, latitude) + 1, 0))
            .meters();
    Unit unit = units.unitOf(QuantityKind.DISTANCE);
    ScaleBar bar = ScaleBar.within(new Distance(width / 3 / scale * metersPerDegree), unit);
    float drawn = (float) (bar.length().meters() / metersPerDegree * scale);
    map.setLineWidth(1.5f);
    map.moveTo(5, 6);
    map.lineTo(5 + drawn, 6);
    map.stroke();
    text(bar.text(), 5, 9);
  }

  private void text(String text, float x, float y) {
    map.beginText();
    map.setFontAndSize(pen.boldFont, pen.size);
    map.showTextAligned(PdfTemplate.ALIGN_LEFT, text, x, y, 0);
    map.endText();
  }
}

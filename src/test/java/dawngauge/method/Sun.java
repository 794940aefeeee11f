package dawngauge.method;

import dawngauge.geo.Coordinate;
import java.time.LocalDate;
import java.time.ZoneOffset;

/**
 * Section 3: sunrise and sunset by the equations of NOAA's solar calculator (after Meeus,
 * Astronomical Algorithms), asked for again at the moment found. Epoch seconds.
 */
record Sun(double rise, double set) {
  private static final double BELOW = Math.toRadians(-0.833);

  Sun(LocalDate date, Coordinate place) {
    this(event(date, place, 1), event(date, place, -1));
  }

  private static double event(LocalDate date, Coordinate place, int side) {
    double midnight = date.atStartOfDay().toEpochSecond(ZoneOffset.UTC);
    double found = midnight + 43_200 - 240 * place.longitude();
    for (int i = 0; i < 5; i++) {
      double century = (found / 86_400 + 2_440_587.5 - 2_451_545) / 36_525;
      double mean = Math.toRadians(280.46646 + century * (36_000.76983 + century * 0.0003032));
      double anomaly = Math.toRadians(357.52911 + century * (35_999.05029 - century * 0.0001537));
      double eccentric = 0.016708634 - century * 0.000042037;
      double center =
          Math.sin(anomaly) * (1.914602 - century * 0.004817)
              + Math.sin(2 * anomaly) * 0.019993
              + Math.sin(3 * anomaly) * 0.000289;
      double node = Math.toRadians(125.04 - 1934.136 * century);
      double apparent =
          mean + Math.toRadians(center) - Math.toRadians(0.00569 + 0.00478 * Math.sin(node));
      double oblique = Math.toRadians(23.439291 - 0.0130042 * century + 0.00256 * Math.cos(node));
      double declination = Math.asin(Math.sin(oblique) * Math.sin(apparent));
      double y = Math.pow(Math.tan(oblique / 2), 2);
      double equation =
          y * Math.sin(2 * mean)
              - 2 * eccentric * Math.sin(anomaly)
              + 4 * eccentric * y * Math.sin(anomaly) * Math.cos(2 * mean)
              - y * y / 2 * Math.sin(4 * mean)
              - 1.25 * eccentric * eccentric * Math.sin(2 * anomaly);
      double latitude = Math.toRadians(place.latitude());
      double hourAngle =
          Math.acos(
              (Math.sin(BELOW) - Math.sin(latitude) * Math.sin(declination))
                  / (Math.cos(latitude) * Math.cos(declination)));
      double degrees = place.longitude() + side * Math.toDegrees(hourAngle);
      found = midnight + 43_200 - 240 * degrees - 240 * Math.toDegrees(equation);
    }
    return found;
  }
}

package dawngauge.geo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;

class GreatCircleTest {

  private static double kilometers(Coordinate a, Coordinate b) {
    return GreatCircle.between(a, b).meters() / 1000;
  }

  /**
   * Flinders Peak to Buninyong, 54,972.271 m on the ellipsoid (Geocentric Datum of Australia
   * Technical Manual, worked example of Vincenty's formula; from memory). The sphere is off by less
   * than 0.6 %.
   */
  @Test
  void aSurveyedLineIsMetWithinTheErrorOfTheSphere() {
    Coordinate flindersPeak = new Coordinate(-37.951033, 144.424868);
    Coordinate buninyong = new Coordinate(-37.652821, 143.926496);
    assertThat(kilometers(flindersPeak, buninyong)).isCloseTo(54.972, within(54.972 * 0.006));
  }

  /** Along equator and meridians a degree is the radius times π/180: 111.195 km. */
  @Test
  void degreesAlongGreatCirclesHaveOneLength() {
    assertThat(kilometers(new Coordinate(0, 10), new Coordinate(0, 11)))
        .isCloseTo(111.195, within(0.0005));
    assertThat(kilometers(new Coordinate(38, -104), new Coordinate(39, -104)))
        .isCloseTo(111.195, within(0.0005));
    assertThat(kilometers(new Coordinate(0, 179.5), new Coordinate(0, -179.5)))
        .isCloseTo(111.195, within(0.0005));
  }

  @Test
  void thePolesAndAntipodesAreHalfACircleApart() {
    double half = Math.PI * 6371.0088;
    assertThat(kilometers(new Coordinate(90, 0), new Coordinate(-90, 77)))
        .isCloseTo(half, within(1e-6));
    assertThat(kilometers(new Coordinate(35, -100), new Coordinate(-35, 80)))
        .isCloseTo(half, within(1e-3));
  }

  /** Spherical law of cosines: the same distance by another formula. */
  @Test
  void agreesWithTheLawOfCosinesAndIsSymmetric() {
    Random random = new Random(1984);
    for (int i = 0; i < 500; i++) {
      Coordinate a = random(random);
      Coordinate b = random(random);
      double phiA = Math.toRadians(a.latitude());
      double phiB = Math.toRadians(b.latitude());
      double cosine =
          Math.sin(phiA) * Math.sin(phiB)
              + Math.cos(phiA)
                  * Math.cos(phiB)
                  * Math.cos(Math.toRadians(a.longitude() - b.longitude()));
      assertThat(kilometers(a, b)).isCloseTo(6371.0088 * Math.acos(cosine), within(1e-3));
      assertThat(kilometers(b, a)).isCloseTo(kilometers(a, b), within(1e-9));
    }
  }

  @Test
  void aPlaceIsNotAwayFromItself() {
    Coordinate place = new Coordinate(38.54, -106.93);
    assertThat(GreatCircle.between(place, place).meters()).isZero();
  }

  private static Coordinate random(Random random) {
    return new Coordinate(-90 + 180 * random.nextDouble(), -180 + 360 * random.nextDouble());
  }
}

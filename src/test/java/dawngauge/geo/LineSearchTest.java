package dawngauge.geo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Where a line is nearest to a place; a degree of the equator is 111.195 km (R1 of GRS 80). */
class LineSearchTest {

  private static Coordinate at(double latitude, double longitude) {
    return new Coordinate(latitude, longitude);
  }

  @Test
  void besideASegmentTheFootIsMetAndBeyondTheEndsTheEnd() {
    LineSearch equator = new LineSearch(List.of(at(0, 0), at(0, 1), at(0, 3)));
    assertThat(equator.length()).isCloseTo(333_585, within(5.0));
    LineSearch.Near beside = equator.nearest(at(0.1, 1.5));
    assertThat(beside.segment()).isEqualTo(1);
    assertThat(beside.part()).isCloseTo(0.25, within(1e-4));
    assertThat(beside.along()).isCloseTo(166_793, within(20.0));
    assertThat(beside.off()).isCloseTo(11_119.5, within(1.0));
    assertThat(equator.nearest(at(0, -1)).off()).isCloseTo(111_195, within(2.0));
    assertThat(equator.nearest(at(0, -1)).along()).isZero();
    assertThat(equator.nearest(at(1, 3.5)).at()).isEqualTo(at(0, 3));
    assertThat(equator.at(166_793).longitude()).isCloseTo(1.5, within(1e-4));
    assertThat(equator.at(1e9).longitude()).isCloseTo(3, within(1e-9));
  }

  @Test
  void ofNeighboursFarApartThePlaceIsMetWithinTheStatedError() {
    Coordinate from = at(40, -105);
    Coordinate to = at(41.5, -99.3);
    LineSearch line = new LineSearch(List.of(from, to));
    assertThat(line.length()).isBetween(500_000.0, 520_000.0);
    for (int i = 0; i <= 20; i++) {
      LineSearch.Near near = line.nearest(GreatCircle.along(from, to, i / 20.0));
      assertThat(near.along()).isCloseTo(line.length() * i / 20, within(200.0));
      assertThat(near.off()).isLessThan(200);
    }
  }

  @Test
  void theDateLineIsNothingSpecial() {
    LineSearch line = new LineSearch(List.of(at(0, 179), at(0, -179)));
    assertThat(line.nearest(at(0.1, 180)).off()).isCloseTo(11_119.5, within(1.0));
    assertThat(line.nearest(at(0.1, -180)).along()).isCloseTo(111_195, within(20.0));
  }

  @Test
  void aLineThatStandsStillIsAPoint() {
    LineSearch still = new LineSearch(List.of(at(10, 10), at(10, 10)));
    assertThat(still.nearest(at(11, 10)).off()).isCloseTo(111_195, within(2.0));
    assertThat(still.at(5)).isEqualTo(at(10, 10));
    assertThatIllegalArgumentException().isThrownBy(() -> new LineSearch(List.of(at(1, 1))));
  }

  /** Looking at groups of segments first leaves none out that is nearer. */
  @Test
  void noSegmentIsNearerThanTheOneFound() {
    Random random = new Random(5);
    for (int trial = 0; trial < 100; trial++) {
      List<Coordinate> points = new ArrayList<>();
      double north = 40;
      double east = -105;
      for (int i = 0; i < 2 + random.nextInt(400); i++) {
        points.add(at(north, east));
        north += random.nextGaussian() * 0.02;
        east += random.nextGaussian() * 0.02;
      }
      Coordinate place = at(40 + random.nextGaussian() * 0.3, -105 + random.nextGaussian() * 0.3);
      double off = new LineSearch(points).nearest(place).off();
      double least = Double.POSITIVE_INFINITY;
      for (int i = 0; i + 1 < points.size(); i++) {
        least = Math.min(least, new LineSearch(points.subList(i, i + 2)).nearest(place).off());
      }
      assertThat(off).isCloseTo(least, within(0.01));
    }
  }
}

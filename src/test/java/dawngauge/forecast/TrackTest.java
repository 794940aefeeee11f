package dawngauge.forecast;

import static dawngauge.testdata.Forecasts.known;
import static dawngauge.testdata.StopBuilder.stop;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dawngauge.testdata.Forecasts;
import dawngauge.testdata.RigBuilder;
import dawngauge.testdata.Trips;
import dawngauge.trip.Itinerary;
import dawngauge.trip.ReadingState;
import dawngauge.trip.Trip;
import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Test;

/** One tire followed in several ways: each tells the same of it. */
class TrackTest {

  private static final double SET = 90 * 6894.757293168361; // 90 psi, NIST SP 811, 2008

  /** A pass on the first leg, a reading on the road, one at noon, one at the end. */
  private static final Trip HAUL =
      Trips.of(RigBuilder.trailer())
          .stop(stop("home").elevation("1000 m").leaves("2027-06-01T06:00Z").steady("10 °C"))
          .leg("100 mi", "50 mph", Trips.point("pass", "50 mi", "3000 m"))
          .stop(stop("noon").elevation("1000 m").stays(Duration.ofHours(5)).steady("25 °C"))
          .leg("50 mi", "50 mph")
          .stop(stop("end").elevation("500 m").stays(Duration.ofHours(4)).steady("20 °C"))
          .read("2027-06-01T05:50Z", "T1", "80 psi")
          .read("2027-06-01T07:00Z", "T1", "84 psi", "hand", ReadingState.WARM)
          .read("2027-06-01T12:30Z", "T1", "83 psi")
          .read("2027-06-01T17:30Z", "T1", "82 psi")
          .trip();

  private static Track track() {
    return Forecasts.forecaster(HAUL).track(HAUL.rig().positions().get(0)).orElseThrow();
  }

  @Test
  void readingsOnTheRoadAreAmongAllOfThem() {
    assertThat(track().readings())
        .extracting(check -> check.reading().time().text())
        .containsExactly(
            "2027-06-01T05:50Z", "2027-06-01T07:00Z", "2027-06-01T12:30Z", "2027-06-01T17:30Z");
    assertThat(track().stops().stream().mapToInt(at -> at.readings().size()).sum())
        .as("at the stops")
        .isEqualTo(3);
  }

  /** The course runs in time order, meets every stop's snapshots, and goes nowhere under a low. */
  @Test
  void itsCourseIsThatOfItsStops() {
    Track track = track();
    List<TireSnapshot> course = track.course();
    for (int i = 1; i < course.size(); i++) {
      assertThat(course.get(i).seconds()).isGreaterThanOrEqualTo(course.get(i - 1).seconds());
    }
    List<TireAtStop> stops = track.stops();
    for (TireAtStop at : stops) {
      assertThat(course).contains(known(at.arrival()), known(at.leaving()));
    }
    for (int leg = 0; leg + 1 < stops.size(); leg++) {
      double from = known(stops.get(leg).leaving()).seconds();
      double to = known(stops.get(leg + 1).arrival()).seconds();
      LegLow low = known(stops.get(leg).low());
      List<TireSnapshot> way =
          course.stream().filter(at -> at.seconds() >= from && at.seconds() <= to).toList();
      assertThat(way).hasSizeGreaterThan(5);
      assertThat(way).contains(low.moment());
      assertThat(way.stream().mapToDouble(TireSnapshot::judged).min().orElseThrow())
          .isCloseTo(low.moment().judged(), within(1e-6));
    }
  }

  @Test
  void aStayIsThatPartOfTheCourse() {
    Track track = track();
    for (int visit = 0; visit < track.stops().size(); visit++) {
      Itinerary.Visit at = Itinerary.of(HAUL).get().visits().get(visit);
      double from = known(track.stops().get(visit).arrival()).seconds();
      double to = from + at.stay().toSeconds();
      assertThat(track.stay(visit))
          .isEqualTo(
              track.course().stream()
                  .filter(each -> each.seconds() >= from && each.seconds() <= to)
                  .toList());
    }
  }

  /** A setting counts from its stop on; without it all is as before; one earlier stays. */
  @Test
  void whatIsTakenAsSetIsTakenBack() {
    Track plain = track();
    Track once = plain.with(0, new Setting(SET));
    Track twice = once.with(1, new Setting(SET));
    assertThat(once.stops().get(1)).isNotEqualTo(plain.stops().get(1));
    assertThat(List.copyOf(twice.before(1).stops())).isEqualTo(List.copyOf(once.stops()));
    assertThat(List.copyOf(twice.before(0).stops())).isEqualTo(List.copyOf(plain.stops()));
    assertThat(twice.stops().get(0)).isEqualTo(once.stops().get(0));
    assertThat(known(once.stops().get(0).setting()).gaugePascals()).isEqualTo(SET);
    assertThat(once.stops().get(1).setting()).isNull();
  }

  /** Where air is set the course has the minute twice, before and after; it shows 90 psi then. */
  @Test
  void theCourseShowsASettingBeforeAndAfter() {
    Track set = track().with(0, new Setting(SET));
    double minute = known(set.stops().get(0).check()).seconds();
    List<TireSnapshot> then =
        set.course().stream().filter(each -> each.seconds() == minute).toList();
    assertThat(then).hasSize(2);
    assertThat(then.get(0)).isEqualTo(set.stops().get(0).check());
    assertThat(then.get(1).reading()).isCloseTo(SET, within(1e-6));
  }
}

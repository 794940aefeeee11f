package dawngauge.planner;

import static dawngauge.testdata.Forecasts.known;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dawngauge.forecast.ReadingCheck;
import dawngauge.problem.Problem;
import dawngauge.problem.ProblemCode;
import dawngauge.quantity.Entered;
import dawngauge.quantity.GaugePressure;
import dawngauge.quantity.QuantityKind;
import dawngauge.settings.SettingsFile;
import dawngauge.trip.Itinerary;
import dawngauge.trip.LogEdits;
import dawngauge.trip.LogEvent;
import dawngauge.trip.ReadingRound;
import dawngauge.trip.ReadingState;
import dawngauge.trip.Remarks;
import dawngauge.trip.Tire;
import dawngauge.trip.Trip;
import dawngauge.trip.TypedTime;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** A round with the gauge on the demo haul, which was read once, before it left. */
class RoundAtStopTest {

  private static final Planner PLANNER = new Planner(SettingsFile.defaults(), List.of());
  private static final Trip DEMO =
      PLANNER.store().open(Path.of("demo-data", "spring-fleece-haul.dawngauge")).get();
  private static final Instant BEFORE = Instant.parse("2027-04-01T00:00:00Z");
  private static final int WALSENBURG = 1;
  private static final int FLOYDADA = 7;
  private static final ZoneId CHICAGO = ZoneId.of("America/Chicago");
  private static final String FLOYDADA_DARK = "2027-04-07T11:00:00Z";
  private static final String FLOYDADA_MORNING = "2027-04-07T13:45:00Z";

  private static RoundAtStop at(Trip trip, int visit) {
    return new RoundAtStop(PLANNER.plan(trip), visit);
  }

  private static ReadingRound round(RoundAtStop at, ReadingState state) {
    return at.round(at.usualStart(BEFORE).orElseThrow(), state, "cab gauge", null, none())
        .orElseThrow();
  }

  private static Entered<GaugePressure> psi(String text) {
    return Entered.of(QuantityKind.GAUGE_PRESSURE, text);
  }

  @Test
  void tiresAreColdAtAStartAfterANightAndNotAfterALeg() {
    assertThat(at(DEMO, 0).usualState(BEFORE)).isEqualTo(ReadingState.COLD);
    assertThat(at(DEMO, WALSENBURG).usualState(BEFORE)).isEqualTo(ReadingState.WARM);
    assertThat(at(DEMO, FLOYDADA).usualState(BEFORE)).isEqualTo(ReadingState.COLD);
  }

  private static ReadingRound.Sun none() {
    return ReadingRound.Sun.NEITHER;
  }

  private static ReadingRound morning(RoundAtStop at, String time, ReadingRound.Sun sun) {
    TypedTime start = LogEdits.at(Instant.parse(time), CHICAGO);
    return at.round(start, ReadingState.COLD, "cab gauge", null, sun).orElseThrow();
  }

  /**
   * T1 stands on the left, T2 on the right. What is told before the readings is told after them.
   */
  @Test
  void onTheSunnySideColdTiresAreNotedInTheSun() {
    RoundAtStop at = at(DEMO, FLOYDADA);
    ReadingRound shade = morning(at, FLOYDADA_MORNING, none());
    ReadingRound sunny = morning(at, FLOYDADA_MORNING, ReadingRound.Sun.LEFT);
    Trip before = both(at, sunny);
    Trip after = at(both(at, shade), FLOYDADA).sunny(sunny);
    assertThat(before).isEqualTo(after);
    RoundAtStop read = at(after, FLOYDADA);
    assertThat(read.read(ReadingState.COLD_IN_SUN)).containsOnlyKeys("T1");
    assertThat(read.read(ReadingState.COLD)).containsOnlyKeys("T2");
    assertThat(read.read(sunny)).containsOnlyKeys("T1", "T2");
    assertThat(read.sunnySide()).isEqualTo(ReadingRound.Sun.LEFT);
    assertThat(read.sunny(shade)).isEqualTo(both(at, shade));
    assertThat(at.sunnySide()).isEqualTo(none());
  }

  private static Trip both(RoundAtStop at, ReadingRound round) {
    Trip one = at.with(round, "T1", 6, psi("80 psi"));
    return at(one, FLOYDADA).with(round, "T2", 7, psi("80 psi"));
  }

  /** Of an earlier round nothing is changed: then it was dark. */
  @Test
  void theRoundBeforeTheSunStaysCold() {
    RoundAtStop at = at(DEMO, FLOYDADA);
    Trip dark = at.with(morning(at, FLOYDADA_DARK, none()), "T1", 0, psi("80 psi"));
    ReadingRound later = morning(at, FLOYDADA_MORNING, ReadingRound.Sun.LEFT);
    assertThat(at(dark, FLOYDADA).sunny(later)).isEqualTo(dark);
    ReadingRound first = morning(at, FLOYDADA_DARK, ReadingRound.Sun.LEFT);
    Trip light = at.with(morning(at, FLOYDADA_MORNING, none()), "T1", 0, psi("80 psi"));
    assertThat(at(light, FLOYDADA).sunny(first)).isEqualTo(light);
  }

  /**
   * By the almanac the sun rises at Floydada about 7:25 CDT on 7 April; before it none is asked.
   */
  @Test
  void theSideIsAskedOnceTheSunIsUp() {
    RoundAtStop at = at(DEMO, FLOYDADA);
    assertThat(at.maySunny(LogEdits.at(Instant.parse(FLOYDADA_DARK), CHICAGO))).isFalse();
    assertThat(at.maySunny(LogEdits.at(Instant.parse(FLOYDADA_MORNING), CHICAGO))).isTrue();
  }

  @Test
  void aStopThatIsNotThereHasNoRound() {
    TypedTime departure = known(DEMO.route().stops().get(0).leave());
    assertThat(at(DEMO, 0).round(null, ReadingState.COLD, "cab gauge", null, none())).isEmpty();
    assertThat(at(DEMO, 0).round(departure, ReadingState.COLD, null, null, none())).isEmpty();
    for (int visit : new int[] {-1, 99}) {
      assertThat(at(DEMO, visit).stay()).isEmpty();
      assertThat(at(DEMO, visit).tires()).isEmpty();
      assertThat(at(DEMO, visit).usualStart(BEFORE)).isEmpty();
      assertThat(at(DEMO, visit).round(departure, ReadingState.COLD, "cab gauge", null, none()))
          .isEmpty();
      assertThat(at(DEMO, visit).latest()).isNull();
      assertThat(at(DEMO, visit).setTo("P1")).isEmpty();
    }
    assertThat(RoundAtStop.names(PLANNER.plan(DEMO))).startsWith("1 Alamosa CO", "2 Walsenburg CO");
    assertThat(RoundAtStop.nextOf(DEMO)).contains(0);
  }

  @Test
  void aFigureOffTheScaleNamesItAndTheScaleAndZeroIsAFlatTire() {
    var gauge = DEMO.rig().gauge("cab gauge").orElseThrow();
    assertThat(RoundAtStop.offScale(psi("0 psi"), gauge)).isEmpty();
    assertThat(RoundAtStop.offScale(psi("100 psi"), gauge)).isEmpty();
    assertThat(RoundAtStop.offScale(psi("200 psi"), null)).isEmpty();
    Problem problem = RoundAtStop.offScale(psi("101 psi"), gauge).orElseThrow();
    assertThat(problem.code()).isEqualTo(ProblemCode.OUT_OF_RANGE);
    assertThat(problem.text()).contains("101 psi", "100 psi");
  }

  @Test
  void anotherFigureKeepsTheReadingsTimeAndNote() {
    RoundAtStop at = at(DEMO, 0);
    ReadingRound round = round(at, ReadingState.COLD);
    assertThat(at.read(ReadingState.COLD)).hasSize(10);
    assertThat(at.read(ReadingState.WARM)).isEmpty();
    LogEvent.Reading old = known(at.read(ReadingState.COLD).get("P4")).reading();
    Trip mended = at.with(round, "P4", 3, psi("61 psi"));
    assertThat(mended.log()).hasSameSizeAs(DEMO.log());
    LogEvent.Reading now = known(at(mended, 0).read(ReadingState.COLD).get("P4")).reading();
    assertThat(now.pressure()).isEqualTo(psi("61 psi"));
    assertThat(now.time()).isEqualTo(old.time());
    assertThat(now.remarks()).isEqualTo(old.remarks()).isNotEqualTo(Remarks.NONE);
    Trip without = at.without(round, "P4");
    assertThat(without.log()).hasSize(DEMO.log().size() - 1).doesNotContain(old);
    assertThat(at(without, 0).without(round, "P4")).isEqualTo(without);
  }

  @Test
  void aNewReadingIsAMinuteAfterTheOneBeforeAndNotAfterLeaving() {
    RoundAtStop at = at(DEMO, WALSENBURG);
    ReadingRound round = round(at, ReadingState.WARM);
    Itinerary.Visit stay = at.stay().orElseThrow();
    assertThat(at.reading(round, "P2", 2, psi("66 psi")).time().instant())
        .isEqualTo(round.start().instant().plus(Duration.ofMinutes(2)));
    assertThat(at.latest()).isEqualTo(stay.leave());
    assertThat(at.reading(round, "P2", 300, psi("66 psi")).time().instant())
        .as("to the minute")
        .isEqualTo(stay.leave().truncatedTo(ChronoUnit.MINUTES));
    LogEvent came =
        new LogEvent.Arrived(LogEdits.at(stay.arrive(), stay.zone()), "walsenburg", Remarks.NONE);
    LogEvent went =
        new LogEvent.Left(LogEdits.at(stay.leave(), stay.zone()), "walsenburg", Remarks.NONE);
    Trip there = LogEdits.with(DEMO, came);
    assertThat(at(there, WALSENBURG).latest()).as("it stands there as long as it likes").isNull();
    Trip gone = LogEdits.with(there, went);
    assertThat(at(gone, WALSENBURG).latest())
        .isEqualTo(at(gone, WALSENBURG).stay().orElseThrow().leave());
  }

  @Test
  void aTireIsSetNowWhereTheCrewStandsThereNow() {
    RoundAtStop at = at(DEMO, WALSENBURG);
    ReadingRound round = round(at, ReadingState.WARM);
    Instant read = round.start().instant();
    Instant later = read.plus(Duration.ofMinutes(3));
    assertThat(at.minute(round, 0, later).instant()).isEqualTo(later);
    assertThat(at.minute(round, 0, BEFORE).instant()).isEqualTo(read);
    assertThat(at.minute(round, 0, read.plus(Duration.ofDays(1))).instant()).isEqualTo(read);
    Trip set = at.adjusted(round, "P4", 3, psi("65 psi"), later);
    assertThat(at(set, WALSENBURG).setTo("P4")).contains(psi("65 psi"));
    assertThat(at(set, WALSENBURG).setTo("P3")).isEqualTo(Optional.empty());
    assertThat(at(set, 0).setTo("P4")).isEmpty();
    TypedTime time = ((LogEvent.Adjustment) set.log().get(set.log().size() - 1)).time();
    assertThat(time.instant()).isEqualTo(later);
  }

  @Test
  void whatIsExpectedDoesNotHangOnWhatIsRead() {
    RoundAtStop at = at(DEMO, WALSENBURG);
    ReadingRound round = round(at, ReadingState.WARM);
    List<String> tires = round.tires(DEMO).stream().map(Tire::id).toList();
    Map<String, ReadingCheck> expected = at.expected(round, tires, PLANNER);
    assertThat(expected.keySet()).containsExactlyInAnyOrderElementsOf(tires);
    Trip read = at.with(round, "P2", tires.indexOf("P2"), psi("70 psi"));
    ReadingCheck check = known(at(read, WALSENBURG).read(ReadingState.WARM).get("P2"));
    assertThat(check.expected())
        .as("but for what the tires beside it tell, in pascal")
        .isCloseTo(known(expected.get("P2")).expected(), within(1.0));
  }
}

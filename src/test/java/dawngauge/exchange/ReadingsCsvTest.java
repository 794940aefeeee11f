package dawngauge.exchange;

import static dawngauge.testdata.StopBuilder.stop;
import static org.assertj.core.api.Assertions.assertThat;

import dawngauge.problem.Outcome;
import dawngauge.quantity.Unit;
import dawngauge.testdata.RigBuilder;
import dawngauge.testdata.Trips;
import dawngauge.trip.Itinerary;
import dawngauge.trip.LogEvent;
import dawngauge.trip.ReadingState;
import dawngauge.trip.TableHead;
import dawngauge.trip.TableLayout;
import dawngauge.trip.TableReadings;
import dawngauge.trip.Trip;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Readings from tables: sound rows are taken, the rest is told by its line. */
class ReadingsCsvTest {

  @TempDir Path folder = Path.of("");

  /** 06:00 to 08:00 UTC, six hours, 14:00 to 16:00. */
  private static Trip trip() {
    return Trips.of(RigBuilder.trailer())
        .stop(stop("home").leaves("2027-06-01T06:00Z").steady("60 °F"))
        .leg("120 mi", "60 mph")
        .stop(stop("noon").stays(Duration.ofHours(6)).steady("60 °F"))
        .leg("120 mi", "60 mph")
        .stop(stop("end").stays(Duration.ofHours(6)).steady("60 °F"))
        .trip();
  }

  private TableReadings own(Trip trip, String zone, String... lines) throws IOException {
    Path file = Files.write(folder.resolve("own.csv"), List.of(lines), StandardCharsets.UTF_8);
    TableHead head = ReadingsCsv.head(file).get();
    TableLayout layout =
        new TableLayout(
            TableLayout.own(head.columns()).orElseThrow(),
            Map.of(),
            ZoneId.of(zone),
            Unit.PSI,
            Unit.FAHRENHEIT,
            "hand",
            false);
    return ReadingsCsv.read(file, head, layout, trip, itinerary(trip), (rows, part) -> true).get();
  }

  private static Itinerary itinerary(Trip trip) {
    return Itinerary.of(trip).get();
  }

  private static LogEvent.Reading reading(TableReadings taken, int index) {
    return (LogEvent.Reading) taken.events().get(index);
  }

  @Test
  void ourOwnHeaderInAnyOrderWithAnySeparatorAndDecimalMark() throws IOException {
    TableReadings comma =
        own(
            trip(),
            "UTC",
            "tire,time,pressure,state,gauge,air,set to,note",
            "T1,2027-06-01T05:50Z,80 psi,cold,hand,58 °F,,",
            "trailer axle 1 right,2027-06-01 05:51,5.4 bar,cold,hand,14 C,5.5 bar,a slow one");
    assertThat(comma.leftOut()).isEmpty();
    assertThat(comma.events()).hasSize(3);
    assertThat(reading(comma, 0).pressure().text()).isEqualTo("80 psi");
    assertThat(reading(comma, 1).tire()).isEqualTo("T2");
    assertThat(reading(comma, 1).remarks().note()).isEqualTo("a slow one");
    assertThat(comma.events().get(2)).isInstanceOf(LogEvent.Adjustment.class);
    TableReadings semicolon =
        own(
            trip(),
            "UTC",
            "\uFEFFtime;tire;pressure;state",
            "2027-06-01 05:50;t1l;80,5;cold",
            "2027-06-01 08:01;t1l;\"86,25\";warm");
    assertThat(semicolon.leftOut()).isEmpty();
    assertThat(reading(semicolon, 0).pressure().text()).isEqualTo("80.5 psi");
    assertThat(reading(semicolon, 1).state()).isEqualTo(ReadingState.WARM);
  }

  @Test
  void whatIsNotSoundIsLeftOutByItsLineAndTheRestIsTaken() throws IOException {
    TableReadings taken =
        own(
            trip(),
            "UTC",
            "time,tire,pressure,state,gauge",
            "2027-06-01 08:10,T1,86,warm,", // 2: later than the next, taken
            "2027-06-01 05:50,T1,80,cold,hand", // 3
            "2027-06-01 05:50,T1,80,cold,hand", // 4: twice
            "2027-06-01 05:51,T9,80,cold,hand", // 5: no such tire
            "2027-06-01 05:51,T2,0,cold,hand", // 6
            "2027-06-01 05:51,T2,999,cold,hand", // 7
            "06/01/2027 05:51,T2,80,cold,hand", // 8
            "2027-06-01 05:52,T2,eighty,cold,hand", // 9
            "2027-06-01 05:52,T2,80,lukewarm,hand", // 10
            "2027-06-01 05:52,T2,80,cold,stick", // 11
            "2026-06-01 05:52,T2,80,cold,hand", // 12: a year early
            "2027-02-30 05:52,T2,80,cold,hand", // 13
            "",
            "2027-06-01 05:53", // 15
            "2027-06-01 05:54,T2,552 kPa,cold,hand"); // 16
    assertThat(taken.events()).hasSize(3);
    assertThat(taken.rows()).isEqualTo(14);
    assertThat(taken.leftOutRows()).isEqualTo(11);
    assertThat(taken.leftOut())
        .extracting(TableReadings.LeftOut::line)
        .containsExactly(4L, 5L, 6L, 7L, 8L, 9L, 10L, 11L, 12L, 13L, 15L);
    assertThat(taken.leftOut())
        .extracting(TableReadings.LeftOut::why)
        .satisfies(
            why -> {
              assertThat(why.get(0)).contains("stands there already");
              assertThat(why.get(1)).contains("no tire “T9”");
              assertThat(why.get(2)).contains("flat");
              assertThat(why.get(3)).contains("999", "no pressure that a gauge shows");
              assertThat(why.get(4)).contains("no time such as");
              assertThat(why.get(7)).contains("no gauge “stick”");
              assertThat(why.get(8)).contains("not within this trip");
            });
  }

  @Test
  void aReadingThatTheLogHasIsNotTakenTwice() throws IOException {
    Trip trip =
        Trips.of(RigBuilder.trailer())
            .stop(stop("home").leaves("2027-06-01T06:00Z").steady("60 °F"))
            .stop(stop("b").steady("60 °F"))
            .read("2027-06-01T05:50Z", "T1", "80 psi")
            .trip();
    TableReadings taken =
        own(trip, "UTC", "time,tire,pressure", "2027-06-01 05:50,T1,80", "2027-06-01 05:51,T2,80");
    assertThat(taken.events()).hasSize(1);
    assertThat(taken.leftOutRows()).isEqualTo(1);
  }

  /** U.S. clocks skip 02:00 to 03:00 on 14 March 2027 and repeat 01:00 to 02:00 on 7 November. */
  @Test
  void aSkippedHourIsNoTimeOfARepeatedOneTheEarlierIsTakenAndOffsetsWin() {
    RowTime denver = new RowTime(ZoneId.of("America/Denver"));
    assertThat(denver.seconds("2027-03-14 02:30")).isEqualTo(RowTime.SKIPPED);
    assertThat(denver.seconds("2027-03-14 03:30")).isEqualTo(at("2027-03-14T09:30:00Z"));
    assertThat(denver.seconds("2027-03-14 01:59:59")).isEqualTo(at("2027-03-14T08:59:59Z"));
    assertThat(denver.seconds("2027-11-07 01:30")).isEqualTo(at("2027-11-07T07:30:00Z"));
    assertThat(denver.seconds("2027-11-07T01:30-07:00")).isEqualTo(at("2027-11-07T08:30:00Z"));
    assertThat(denver.seconds("2027-06-01T05:45:10.250Z")).isEqualTo(at("2027-06-01T05:45:10Z"));
    assertThat(denver.seconds("2027-04-06T05:45-06:00[America/Denver]"))
        .isEqualTo(at("2027-04-06T11:45:00Z"));
    assertThat(denver.seconds("1811842800")).isEqualTo(1811842800L);
    assertThat(denver.seconds("1811842800123")).isEqualTo(1811842800L);
    for (String none : List.of("", "noon", "2027-13-01 05:00", "2027-06-01 24:00", "2027-06-01")) {
      assertThat(denver.seconds(none)).as(none).isEqualTo(RowTime.NONE);
    }
  }

  private static long at(String instant) {
    return Instant.parse(instant).getEpochSecond();
  }

  @Test
  void aRecordersTableBecomesTheMedianAfterEachArrivalAndBeforeEachDeparture() throws IOException {
    StringBuilder rows = new StringBuilder("stamp\tfront L\tfront R\n");
    long start = at("2027-06-01T05:30:00Z");
    for (int i = 0; i < 11 * 60; i++) { // one a minute until 16:29
      long seconds = start + 60L * i;
      boolean warm = seconds >= at("2027-06-01T06:00:00Z") && seconds < at("2027-06-01T11:00:00Z");
      rows.append(Instant.ofEpochSecond(seconds))
          .append('\t')
          .append(warm ? "590.0" : i % 7 == 0 ? "999" : "550.0") // now and then a slip
          .append('\t')
          .append(warm ? "595,5" : "555,5")
          .append('\n');
    }
    Path file = Files.writeString(folder.resolve("recorder.tsv"), rows);
    TableHead head = ReadingsCsv.head(file).get();
    assertThat(head.separator()).isEqualTo('\t');
    assertThat(head.columns()).containsExactly("stamp", "front L", "front R");
    TableLayout layout =
        new TableLayout(
            Map.of(TableLayout.Column.TIME, 0),
            Map.of(1, "T1", 2, "T2"),
            ZoneId.of("UTC"),
            Unit.KILOPASCAL,
            Unit.CELSIUS,
            "hand",
            true);
    Trip trip = trip();
    TableReadings taken =
        ReadingsCsv.read(file, head, layout, trip, itinerary(trip), (rows1, part) -> true).get();
    // Two tires: cold before 06:00, warm after 08:00, cold before 14:00, warm after 16:00.
    assertThat(taken.events()).hasSize(8);
    LogEvent.Reading first = reading(taken, 0);
    assertThat(first.state()).isEqualTo(ReadingState.COLD);
    assertThat(first.pressure().text()).isEqualTo("550.0 kPa");
    assertThat(reading(taken, 1).pressure().text()).isEqualTo("555.5 kPa");
    assertThat(reading(taken, 2).state()).isEqualTo(ReadingState.WARM);
    assertThat(reading(taken, 2).pressure().text()).isEqualTo("590.0 kPa");
    assertThat(reading(taken, 4).state()).isEqualTo(ReadingState.COLD);
    assertThat(first.remarks().note()).startsWith("median of ");
    assertThat(taken.between()).isPositive();
  }

  @Test
  void itCanBeEndedAndSaysSo() throws IOException {
    StringBuilder rows = new StringBuilder("time,tire,pressure\n");
    for (int i = 0; i < 40_000; i++) {
      rows.append("2027-06-01 05:50,T1,").append(70 + i % 10).append('\n');
    }
    Path file = Files.writeString(folder.resolve("long.csv"), rows);
    TableHead head = ReadingsCsv.head(file).get();
    TableLayout layout =
        new TableLayout(
            TableLayout.own(head.columns()).orElseThrow(),
            Map.of(),
            ZoneId.of("UTC"),
            Unit.PSI,
            Unit.FAHRENHEIT,
            "hand",
            true);
    Trip trip = trip();
    TableReadings taken =
        ReadingsCsv.read(file, head, layout, trip, itinerary(trip), (n, part) -> false).get();
    assertThat(taken.whole()).isFalse();
    assertThat(taken.rows()).isLessThan(40_000);
  }

  @Test
  void whatIsNoTableIsRefused() throws IOException {
    Path empty = Files.writeString(folder.resolve("empty.csv"), "");
    assertThat(ReadingsCsv.head(empty).hasValue()).isFalse();
    Path prose = Files.writeString(folder.resolve("prose.csv"), "nothing here\nat all\n");
    Outcome<TableHead> head = ReadingsCsv.head(prose);
    assertThat(head.problems().get(0).message()).contains("no row of column names");
    assertThat(ReadingsCsv.head(folder.resolve("none.csv")).hasValue()).isFalse();
  }
}

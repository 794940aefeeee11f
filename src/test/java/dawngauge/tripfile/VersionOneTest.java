package dawngauge.tripfile;

import static org.assertj.core.api.Assertions.assertThat;

import dawngauge.problem.Outcome;
import dawngauge.problem.Problem;
import dawngauge.problem.ProblemCode;
import dawngauge.trip.Leg;
import dawngauge.trip.LegEdits;
import dawngauge.trip.Stop;
import dawngauge.trip.StopEdits;
import dawngauge.trip.Trip;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Files of format version 1, kept as they were written, are read, told of and written as 2. */
class VersionOneTest {
  private static final String ESTIMATES = Samples.text("version-1/with-estimates.dawngauge");

  @TempDir
  @SuppressWarnings("NullAway.Init") // set by JUnit
  Path folder;

  @ParameterizedTest
  @ValueSource(
      strings = {
        "autumn-stock-haul",
        "full",
        "gap-haul",
        "spring-fleece-haul",
        "spring-fleece-haul-logged",
        "with-estimates"
      })
  void isReadToldAndWrittenAsTwo(String name) {
    Outcome<Trip> old = TripFile.parse(Samples.text("version-1/" + name + ".dawngauge"));
    assertThat(old.problems()).hasSize(1);
    Problem told = old.problems().get(0);
    assertThat(told.code()).isEqualTo(ProblemCode.OLDER_VERSION);
    assertThat(told.message())
        .startsWith("/version: the file has version 1;")
        .contains("version 2");
    String text = TripFile.text(old.get());
    assertThat(text).contains("\"version\": 2").doesNotContain("-estimated", "-guessed");
    Outcome<Trip> again = TripFile.parse(text);
    assertThat(again.problems()).isEmpty();
    assertThat(again.get()).isEqualTo(old.get());
  }

  @Test
  void itsEstimatesAreEstimates() {
    Trip trip = TripFile.parse(ESTIMATES).get();
    Stop stop = trip.route().stops().get(4);
    assertThat(stop.place()).isEqualTo("Boise City OK");
    assertThat(StopEdits.isEstimated(stop)).isTrue();
    assertThat(StopEdits.isZoneEstimated(stop)).isTrue();
    assertThat(stop.remarks().extras()).containsOnlyKeys("x-phone");
    assertThat(trip.route().legs().stream().map(LegEdits::isGuessed))
        .startsWith(false, false, false, true, true, false);
    assertThat(TripFile.text(trip))
        .contains("\"elevation\": {\"estimate\": \"4170 ft\"}")
        .contains("\"zone\": {\"estimate\": \"America/Chicago\"}")
        .contains("\"distance\": {\"estimate\": ")
        .contains("\"x-phone\": \"at the pump\"");
  }

  @Test
  void inVersionTwoWhatBeginsWithAnXIsKeptAndNeverRead() {
    Outcome<Trip> read = TripFile.parse(ESTIMATES.replaceFirst("\"version\": 1", "\"version\": 2"));
    assertThat(read.problems()).isEmpty();
    Stop stop = read.get().route().stops().get(4);
    assertThat(StopEdits.isEstimated(stop)).isFalse();
    assertThat(StopEdits.isZoneEstimated(stop)).isFalse();
    assertThat(read.get().route().legs()).noneMatch(LegEdits::isGuessed);
    assertThat(TripFile.text(read.get()))
        .contains("\"x-elevation-estimated\": true", "\"x-distance-guessed\": true");
  }

  @Test
  void aTypedFigureIsNoEstimateAndAMissingOneIsNone() {
    Trip trip = TripFile.parse(ESTIMATES).get();
    Stop stop = trip.route().stops().get(4);
    Leg leg = trip.route().legs().get(4);
    assertThat(stop.withElevation(stop.elevation()).elevationEstimated()).isFalse();
    assertThat(stop.withElevation(stop.elevation()).zoneEstimated()).isTrue();
    assertThat(stop.withZone(null).withZoneEstimated(true).zoneEstimated()).isFalse();
    assertThat(leg.withDistance(leg.distance()).distanceEstimated()).isFalse();
    assertThat(leg.withDistance(null).withDistanceEstimated(true).distanceEstimated()).isFalse();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"{}", "{\"estimate\": 4000}", "{\"estimate\": \"high\"}", "{\"guess\": 1}"})
  void anEstimateThatIsNoneIsRefusedAtItsPlace(String estimate) {
    List<Problem> problems =
        TripFile.parse(Samples.full().replace("{\"estimate\": \"4690 ft\"}", estimate)).problems();
    assertThat(problems)
        .isNotEmpty()
        .allMatch(problem -> problem.where().startsWith("/route/stops/2/elevation"))
        .allMatch(problem -> problem.code().severity() == ProblemCode.Severity.ERROR);
  }

  @Test
  void aNoteOnAnEstimateIsRefusedSinceItWouldBeLost() {
    List<Problem> problems =
        TripFile.parse(
                Samples.full()
                    .replace(
                        "{\"estimate\": \"4690 ft\"}",
                        "{\"estimate\": \"4690 ft\", \"note\": \"map\"}"))
            .problems();
    assertThat(problems).extracting(Problem::code).containsExactly(ProblemCode.NOTE_NOT_KEPT);
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "\uFEFF"})
  void aTripOfANewerVersionIsNeverWrittenOver(String mark) throws IOException {
    String newer = mark + Samples.text("newer-version.dawngauge");
    Path file = Files.writeString(folder.resolve("newer.dawngauge"), newer);
    Problem problem = TripFile.write(TripFile.parse(Samples.full()).get(), file).orElseThrow();
    assertThat(problem.code()).isEqualTo(ProblemCode.NEWER_THERE);
    assertThat(problem.text()).contains(file.toString(), "version 3", "version 2", "another name");
    assertThat(Files.readString(file)).isEqualTo(newer);
    assertThat(TripFile.read(file).problems())
        .extracting(Problem::code)
        .containsExactly(ProblemCode.NEWER_VERSION);
  }

  @Test
  void anOlderOneIs() throws IOException {
    Path file = Files.writeString(folder.resolve("older.dawngauge"), ESTIMATES);
    Trip trip = TripFile.read(file).get();
    assertThat(TripFile.write(trip, file)).isEmpty();
    assertThat(TripFile.read(file)).isEqualTo(Outcome.of(trip));
  }
}

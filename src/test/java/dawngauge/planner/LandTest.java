package dawngauge.planner;

import static org.assertj.core.api.Assertions.assertThat;

import dawngauge.exchange.GpxFile;
import dawngauge.geo.LegGround;
import dawngauge.geo.TrackLine;
import dawngauge.problem.Outcome;
import dawngauge.problem.Problem;
import dawngauge.problem.ProblemCode;
import dawngauge.quantity.Entered;
import dawngauge.quantity.QuantityKind;
import dawngauge.settings.SettingsFile;
import dawngauge.trip.Leg;
import dawngauge.trip.ProfilePoint;
import dawngauge.trip.Route;
import dawngauge.trip.StopEdits;
import dawngauge.trip.Trip;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The ground held against a trip and against other people's files. */
class LandTest {

  private static final Planner PLANNER = new Planner(SettingsFile.defaults(), List.of());
  private static final Pattern HEIGHT = Pattern.compile("<ele>([-\\d.]+)</ele>");

  private static Trip demo(String name) {
    return PLANNER.store().open(Path.of("demo-data", name + ".dawngauge")).get();
  }

  private static Trip flatAtZero(Trip trip) {
    return trip.withRoute(
        new Route(
            trip.route().stops().stream()
                .map(
                    stop ->
                        StopEdits.withElevation(stop, Entered.of(QuantityKind.ELEVATION, "0 m")))
                .toList(),
            trip.route().legs().stream().map(leg -> leg.withProfile(List.of())).toList()));
  }

  @ParameterizedTest
  @ValueSource(strings = {"spring-fleece-haul", "spring-fleece-haul-logged", "autumn-stock-haul"})
  void heightsOfTheDemoHaulsAreNotDoubted(String name) {
    assertThat(Land.doubts(demo(name))).isEmpty();
  }

  @Test
  void aHaulThatIsFlatAtZeroIsToldAtEveryStop() {
    Trip flat = flatAtZero(demo("spring-fleece-haul"));
    assertThat(PLANNER.plan(flat).problems())
        .filteredOn(problem -> problem.code() == ProblemCode.ELEVATION_DOUBTED)
        .hasSize(13)
        .extracting(Problem::message)
        .first()
        .asString()
        .startsWith("Alamosa CO: elevation 0 m, while the ground there is at about 2299 m");
  }

  /** The demo haul as a file of another program, its heights put through a change. */
  private static Outcome<List<TrackLine>> read(Path folder, double factor, double more)
      throws IOException {
    Path file = folder.resolve("way.gpx");
    Files.writeString(
        file,
        HEIGHT
            .matcher(GpxFile.write(demo("spring-fleece-haul")))
            .replaceAll(
                found ->
                    String.format(
                        Locale.ROOT,
                        "<ele>%.1f</ele>",
                        factor * Double.parseDouble(found.group(1)) + more)));
    return PLANNER.store().tracks(file);
  }

  @ParameterizedTest
  @CsvSource({
    "0, 0, all are at 0 m (0 ft)",
    "0, 700, all are at 700 m",
    "1, -300, under the ground",
    "1, 300, over the ground",
  })
  void heightsThatCannotBeAreLeftOutAndTold(
      double factor, double more, String told, @TempDir Path folder) throws IOException {
    Outcome<List<TrackLine>> read = read(folder, factor, more);
    assertThat(read.get().get(0).points())
        .hasSize(13)
        .allSatisfy(point -> assertThat(point.elevation()).isNull());
    assertThat(read.problems())
        .singleElement()
        .satisfies(
            problem -> {
              assertThat(problem.code()).isEqualTo(ProblemCode.GPX_HEIGHTS_LEFT_OUT);
              assertThat(problem.message()).contains(told, "estimated instead");
            });
  }

  @Test
  void heightsOfTheGroundAreTaken(@TempDir Path folder) throws IOException {
    Outcome<List<TrackLine>> read = read(folder, 1, 40);
    assertThat(read.problems()).isEmpty();
    assertThat(read.get().get(0).points())
        .allSatisfy(point -> assertThat(point.elevation()).isNotNull());
  }

  @Test
  void aPassThatIsTakenIsAPointOfTheLegAndNoLongerOffered() {
    Trip bare = flatAtZero(demo("spring-fleece-haul"));
    LegGround ground = Land.of(bare, 0).orElseThrow();
    assertThat(ground.passes()).hasSize(1);
    Trip over = Land.over(bare, 0, ground.passes().get(0));
    Leg leg = over.route().legs().get(0);
    assertThat(leg.profile()).extracting(ProfilePoint::name).containsExactly("La Veta Pass");
    ProfilePoint pass = leg.profile().get(0);
    assertThat(pass.elevation().text()).isEqualTo("9413 ft");
    assertThat(pass.remarks().note()).contains("guessed");
    assertThat(Land.of(over, 0).orElseThrow().passes()).isEmpty();
    assertThat(Land.of(demo("spring-fleece-haul"), 0).orElseThrow().passes()).isEmpty();
  }
}

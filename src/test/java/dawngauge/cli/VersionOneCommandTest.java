package dawngauge.cli;

import static org.assertj.core.api.Assertions.assertThat;

import dawngauge.tripfile.TripFile;
import java.nio.file.Path;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A file of format version 1 and the same written as version 2 give the same figures. */
class VersionOneCommandTest {

  @ParameterizedTest
  @ValueSource(
      strings = {
        "autumn-stock-haul",
        "gap-haul",
        "spring-fleece-haul",
        "spring-fleece-haul-logged",
        "with-estimates"
      })
  void forecastsAlike(String name) {
    String file = Run.sample("version-1/" + name);
    String rewritten = TripFile.text(TripFile.read(Path.of(file)).get());
    for (String format : new String[] {"json", "csv", "text"}) {
      Run before = Run.ofText(Run.text(file), "forecast", "-", "--format", format);
      Run after = Run.ofText(rewritten, "forecast", "-", "--format", format);
      assertThat(before.out()).isEqualTo(after.out()).hasSizeGreaterThan(1000);
      assertThat(before.code()).isEqualTo(after.code());
      assertThat(before.err())
          .startsWith("standard input: the file has version 1; saved from here");
      assertThat(after.err()).doesNotContain("version");
    }
    assertThat(Run.of("ground", file).out())
        .isEqualTo(Run.ofText(rewritten, "ground", "-").out())
        .isNotEmpty();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "autumn-stock-haul",
        "gap-haul",
        "spring-fleece-haul",
        "spring-fleece-haul-logged"
      })
  void theDemosAreWhatTheyWere(String name) {
    Path demo = Path.of("demo-data", name + ".dawngauge");
    assertThat(TripFile.read(demo).get())
        .isEqualTo(TripFile.read(Path.of(Run.sample("version-1/" + name))).get());
    assertThat(Run.text(demo.toString())).isEqualTo(TripFile.text(TripFile.read(demo).get()));
  }
}

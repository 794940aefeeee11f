package dawngauge.settings;

import static org.assertj.core.api.Assertions.assertThat;

import dawngauge.quantity.GaugePressure;
import dawngauge.quantity.Ratio;
import dawngauge.quantity.Unit;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The defaults are those of config/defaults.properties, and each says what it is. */
class SettingsFileTest {
  private static final Path FILE = Path.of("config", "defaults.properties");

  @Test
  void theDefaultsAreWhatTheFileSays() throws IOException {
    Settings expected =
        new Settings(
            new Ratio(0.90),
            new Ratio(0.10),
            GaugePressure.of(5, Unit.PSI),
            new Ratio(0.08),
            GaugePressure.of(5, Unit.PSI),
            new Ratio(0.10),
            5);
    assertThat(SettingsFile.defaults())
        .usingRecursiveComparison()
        .withComparatorForType(
            (a, b) -> Math.abs(a - b) < 1e-9 ? 0 : Double.compare(a, b), Double.class)
        .isEqualTo(expected);
    assertThat(Files.readString(FILE).lines().filter(SettingsFileTest::isKey))
        .containsExactly(
            "confidence = 90 %",
            "reserve = 10 %",
            "recheck.change = 5 psi",
            "recheck.changePart = 8 %",
            "duals.apart = 5 psi",
            "plan.underAim = 10 %",
            "shortStopMinutes = 5");
  }

  @Test
  void everyKeyHasACommentAboveIt() throws IOException {
    List<String> lines = Files.readAllLines(FILE);
    int commented = 0;
    for (int i = 0; i < lines.size(); i++) {
      if (isKey(lines.get(i))) {
        int above = i;
        while (isKey(lines.get(above))) {
          above--;
        }
        assertThat(lines.get(above)).as(lines.get(i)).startsWith("# ");
        commented++;
      }
    }
    assertThat(commented).isEqualTo(Settings.class.getRecordComponents().length);
  }

  private static boolean isKey(String line) {
    return !line.isBlank() && !line.startsWith("#");
  }
}

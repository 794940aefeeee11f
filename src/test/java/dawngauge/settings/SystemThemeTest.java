package dawngauge.settings;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** GTK's own settings: GTK_THEME of the environment, and settings.ini (GTK documentation). */
class SystemThemeTest {

  @ParameterizedTest
  @CsvSource({"Adwaita:dark, true", "Some-Dark, true", "Adwaita, false", "Darkroom, false"})
  void theEnvironmentWins(String theme, boolean dark, @TempDir Path home) {
    assertThat(SystemTheme.isDark(Map.of("GTK_THEME", theme), home)).isEqualTo(dark);
  }

  @ParameterizedTest
  @CsvSource({
    "gtk-application-prefer-dark-theme=1, true",
    "gtk-application-prefer-dark-theme = true, true",
    "gtk-application-prefer-dark-theme=0, false",
    "gtk-theme-name=Adwaita-dark, true",
    "gtk-theme-name=Adwaita, false",
  })
  void settingsAreRead(String line, boolean dark, @TempDir Path home) throws IOException {
    Path folder = Files.createDirectories(home.resolve(".config/gtk-3.0"));
    Files.writeString(folder.resolve("settings.ini"), "[Settings]\n" + line + "\n");
    assertThat(SystemTheme.isDark(Map.of(), home)).isEqualTo(dark);
  }

  @Test
  void nothingKnownIsLight(@TempDir Path home) {
    assertThat(SystemTheme.isDark(Map.of(), home)).isFalse();
  }
}

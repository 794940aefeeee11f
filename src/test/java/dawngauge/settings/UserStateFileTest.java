package dawngauge.settings;

import static org.assertj.core.api.Assertions.assertThat;

import dawngauge.quantity.UnitSystem;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class UserStateFileTest {

  @Test
  void whatIsRememberedComesBack(@TempDir Path folder) {
    UserState state =
        UserState.FIRST
            .withWindow(new UserState.Window(-40, 12.5, 1100, 700, true))
            .withUnits(UnitSystem.SI)
            .withTheme(UserState.Theme.DARK)
            .withPlace("Rig")
            .withRecent("trips/Frühjahr = weit.dawngauge")
            .withRecent("trips/b.dawngauge")
            .withCautionsSeen()
            .withContact("crew@example.org");
    Path own = folder.resolve("not/yet/made");
    assertThat(new UserStateFile(own).save(state)).isTrue();
    assertThat(new UserStateFile(own).load()).isEqualTo(state);
    assertThat(state.recent()).startsWith("trips/b.dawngauge");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "width = 7",
        "width = NaN",
        "width = -Infinity\nx = 1e300",
        "units = FURLONGS\ntheme = 3",
        "broken \\u00zz",
        "\u0000\u0001"
      })
  void whatIsBrokenIsAsGoodAsNone(String text, @TempDir Path folder) throws IOException {
    Files.writeString(folder.resolve("window.properties"), text);
    assertThat(new UserStateFile(folder).load()).isEqualTo(UserState.FIRST);
  }

  @Test
  void aFolderThatCannotBeMadeCostsTheMemoryOnly(@TempDir Path folder) throws IOException {
    Path file = Files.writeString(folder.resolve("file"), "in the way");
    UserStateFile state = new UserStateFile(file.resolve("below"));
    assertThat(state.save(UserState.FIRST)).isFalse();
    assertThat(state.load()).isEqualTo(UserState.FIRST);
    assertThat(file).hasContent("in the way");
  }

  @Test
  void atMostTenFilesAndEachOnce() {
    UserState state = UserState.FIRST;
    for (int i = 0; i < 12; i++) {
      state = state.withRecent("file " + i);
    }
    assertThat(state.withRecent("file 5").recent())
        .hasSize(UserState.MOST_RECENT)
        .startsWith("file 5", "file 11")
        .doesNotHaveDuplicates();
  }
}

package dawngauge.settings;

import static org.assertj.core.api.Assertions.assertThat;

import dawngauge.quantity.UnitSystem;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
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
    assertThat(new UserStateFile(own).change(known -> state)).hasValue(state);
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
    assertThat(state.change(known -> UserState.FIRST)).isEmpty();
    assertThat(state.load()).isEqualTo(UserState.FIRST);
    assertThat(file).hasContent("in the way");
  }

  @Test
  void whatAnotherWindowWroteStaysAWithdrawnConsentAboveAll(@TempDir Path folder) {
    UserStateFile one = new UserStateFile(folder);
    UserStateFile other = new UserStateFile(folder);
    one.change(known -> known.withContact("crew@example.org").withRecent("a"));
    other.change(known -> known.withContact("")); // withdrawn there
    one.change(known -> known.withTheme(UserState.Theme.DARK));
    other.change(known -> known.withRecent("b"));
    assertThat(one.load().contact()).isEmpty();
    assertThat(one.load().theme()).isEqualTo(UserState.Theme.DARK);
    assertThat(one.load().recent()).containsExactly("b", "a");
  }

  @Test
  @EnabledOnOs({OS.LINUX, OS.MAC})
  void onlyTheOwnerMayReadTheContact(@TempDir Path folder) throws IOException {
    new UserStateFile(folder).change(known -> known.withContact("crew@example.org"));
    Path file = folder.resolve("window.properties");
    assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(file)))
        .isEqualTo("rw-------");
  }

  /** Four windows at once, each remembering files of its own: not one is lost. */
  @Test
  void windowsThatWriteAtOnceLoseNothing(@TempDir Path folder) throws Exception {
    ExecutorService threads = Executors.newFixedThreadPool(4);
    List<Callable<Boolean>> writes = new ArrayList<>();
    for (int i = 0; i < 8; i++) {
      String name = "file " + i;
      writes.add(() -> new UserStateFile(folder).change(s -> s.withRecent(name)).isPresent());
    }
    for (Future<Boolean> written : threads.invokeAll(writes)) {
      assertThat(written.get()).isTrue();
    }
    threads.shutdown();
    assertThat(new UserStateFile(folder).load().recent()).hasSize(8);
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

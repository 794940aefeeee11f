package dawngauge.ui.common;

import static org.assertj.core.api.Assertions.assertThat;

import dawngauge.planner.Planner;
import dawngauge.planner.UserFolder;
import dawngauge.settings.FailureLog;
import dawngauge.settings.SettingsFile;
import dawngauge.settings.UserState;
import dawngauge.testdata.BenchTrip;
import dawngauge.trip.Trip;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The program is killed while it keeps copies and saves, at any moment: what was said to be saved
 * is in the file, what was said to be kept is in the file or in a copy, and all of them are whole.
 * More kills with {@code -Dkills=200}.
 */
class KilledWhileSavingTest {

  private static final int KILLS = Integer.getInteger("kills", 10);

  /** Of so many kills some hit between keeping and saving. */
  private static final int MANY = 100;

  /** Some rounds of all steps take less. */
  private static final int LONGEST_MILLIS = 400;

  private final Planner planner = new Planner(SettingsFile.defaults(), List.of());
  private final Random random = new Random(41);
  private final Path folder;
  private final Path own;
  private final Path file;
  private int savedAtMost;
  private int whileSaving;

  KilledWhileSavingTest(@TempDir Path folder) {
    this.folder = folder;
    this.own = folder.resolve("own");
    this.file = folder.resolve("haul.dawngauge");
  }

  @Test
  void noFileIsTornAndNoTripIsLost() throws Exception {
    assertThat(planner.store().save(SavesUntilKilled.named(BenchTrip.of(12, 1), 0), file))
        .isEmpty();
    for (int kill = 0; kill < KILLS; kill++) {
      look(kill, said());
    }
    assertThat(savedAtMost).as("it did save").isPositive();
    assertThat(KILLS < MANY || whileSaving > 0).as("some kills hit between two steps").isTrue();
  }

  /** What the program said before it was killed. */
  private List<String> said() throws IOException, InterruptedException {
    Path out = folder.resolve("said");
    Path err = folder.resolve("err");
    Process process =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home", ""), "bin", "java").toString(),
                "-XX:TieredStopAtLevel=1",
                "-XX:+UseSerialGC",
                "-cp",
                System.getProperty("java.class.path", ""),
                SavesUntilKilled.class.getName(),
                file.toString(),
                own.toString())
            .redirectOutput(out.toFile())
            .redirectError(err.toFile())
            .start();
    try {
      while (Files.size(out) == 0 && process.isAlive()) {
        process.waitFor(5, TimeUnit.MILLISECONDS);
      }
      process.waitFor(random.nextInt(LONGEST_MILLIS), TimeUnit.MILLISECONDS);
      assertThat(process.isAlive()).as(Files.readString(err)).isTrue();
    } finally {
      process.destroyForcibly().waitFor();
    }
    return Files.readAllLines(out);
  }

  private void look(int kill, List<String> said) {
    int saved = last(said, "saved ");
    int kept = last(said, "kept ");
    int inFile =
        SavesUntilKilled.number(whole(planner.store().open(file).value(), "the file", kill));
    assertThat(inFile).as("kill %d: saved, in the file", kill).isGreaterThanOrEqualTo(saved);
    List<Integer> all = new ArrayList<>(List.of(inFile));
    UserFolder userFolder = userFolder();
    for (UserFolder.Unsaved unsaved : userFolder.unsaved()) {
      all.add(SavesUntilKilled.number(whole(userFolder.open(unsaved).value(), "a copy", kill)));
      assertThat(unsaved.of()).as("kill %d: of which file", kill).hasValue(file);
      userFolder.forget(unsaved);
    }
    assertThat(all).as("kill %d: kept or saved", kill).anyMatch(number -> number >= kept);
    if (said.stream().anyMatch(line -> line.startsWith("remembered "))) {
      UserState state = userFolder.state();
      assertThat(state.recent()).as("kill %d: settings", kill).containsExactly(file.toString());
    }
    assertThat(names()).as("kill %d", kill).allMatch(KilledWhileSavingTest::isOurs);
    savedAtMost = Math.max(savedAtMost, saved);
    whileSaving += kept > saved ? 1 : 0;
  }

  private static Trip whole(java.util.Optional<Trip> read, String what, int kill) {
    assertThat(read).as("kill %d: %s is whole", kill, what).isPresent();
    return read.get();
  }

  private static int last(List<String> said, String word) {
    return said.stream()
        .filter(line -> line.startsWith(word))
        .mapToInt(line -> Integer.parseInt(line.substring(word.length())))
        .max()
        .orElse(0);
  }

  private UserFolder userFolder() {
    return new UserFolder(
        own, Clock.systemUTC(), "looker", run -> false, new FailureLog(own, Clock.systemUTC()));
  }

  private List<String> names() {
    try (Stream<Path> files = Files.walk(folder)) {
      return files.filter(Files::isRegularFile).map(each -> "" + each.getFileName()).toList();
    } catch (IOException unreadable) {
      throw new java.io.UncheckedIOException(unreadable);
    }
  }

  /** The files themselves, and what a kill leaves beside them until it is swept. */
  private static boolean isOurs(String name) {
    return name.matches(
            "said|err|haul\\.dawngauge|window\\.properties|\\.window\\.properties\\.lock")
        || name.matches("unsaved-[-0-9a-f]{36}\\.dawngauge(\\.about)?")
        || name.matches("\\..*\\.[-0-9a-f]{36}");
  }
}

package dawngauge.pack;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.AWTException;
import java.awt.Rectangle;
import java.awt.Robot;
import java.awt.Toolkit;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The Debian package is installed, used and removed. It needs a Debian with a display whose root
 * runs it, and on which Dawngauge is not installed.
 */
class DebianCheck {

  private static final String NAME = "dawngauge";
  private static final Path INSTALLED = Path.of("/opt", NAME);
  private static final Path DEMO = INSTALLED.resolve(Program.DEMO);
  private static final List<Path> SHARED =
      List.of(Path.of("/opt"), Path.of("/usr/bin"), Path.of("/usr/share"), Path.of("/etc"));

  /** The window's paper, of which most of it is. */
  private static final int PAPER = 0xfbfbf8;

  private Path home;
  private Program program;
  private Set<String> before;

  @BeforeEach
  void look(@TempDir Path folder) throws Exception {
    assertThat(Tool.run(List.of("id", "-u"), Map.of()).strip())
        .as("user; only root may install, and only where it may be removed again")
        .isEqualTo("0");
    assertThat(INSTALLED).doesNotExist();
    home = folder;
    program = new Program(List.of(NAME), home);
    before = shared();
  }

  @AfterEach
  void remove() throws Exception {
    if (Files.exists(INSTALLED)) {
      Tool.run(List.of("dpkg", "--purge", NAME), Map.of());
    }
  }

  @Test
  void itComesIsUsedAndGoesWithoutATrace() throws Exception {
    Tool.run(List.of("dpkg", "--install", made().toString()), Map.of());
    Path plain = Path.of("target", NAME, "bin", NAME).toAbsolutePath();
    String expected = Tool.run(List.of(plain.toString(), "forecast", Program.DEMO), Map.of());
    assertThat(program.run("forecast", DEMO.toString())).isEqualTo(expected);
    assertThat(INSTALLED.resolve("licences/parts.cdx.json")).isNotEmptyFile();
    Path sheet = home.resolve("sheet.pdf");
    program.run("sheet", DEMO.toString(), "--out", sheet.toString());
    assertThat(sheet).isNotEmptyFile();
    Path trip = Files.copy(DEMO, home.resolve("my haul.dawngauge"));
    opensByDoubleClick(trip);
    assertThat(forecastOfAnybody(expected)).isEqualTo(expected);
    Tool.run(List.of("dpkg", "--purge", NAME), Map.of());
    assertThat(shared()).isEqualTo(before);
    assertThat(trip).exists();
    assertThat(sheet).exists();
    assertThat(home.resolve("data")).as("folder of the user").isNotEmptyDirectory();
  }

  /** By one who may not write there, and has no home. */
  private String forecastOfAnybody(String expected) throws Exception {
    assertThat(expected).isNotEmpty();
    Path nowhere = Path.of("/nonexistent");
    List<String> line =
        List.of("setpriv", "--reuid=65534", "--regid=65534", "--clear-groups", NAME);
    return new Program(line, nowhere).run("forecast", DEMO.toString());
  }

  private void opensByDoubleClick(Path trip) throws Exception {
    String type = MakePackages.MIME_TYPE;
    assertThat(Files.readAllLines(Path.of("/usr/share/mime/globs2")))
        .anyMatch(line -> line.endsWith(type + ":*.dawngauge"));
    List<String> entry = Files.readAllLines(Path.of("/usr/share/applications/dawngauge.desktop"));
    assertThat(entry).contains("Name=Dawngauge", "MimeType=" + type);
    String exec = entry.stream().filter(line -> line.startsWith("Exec=")).findFirst().orElseThrow();
    List<String> opened = List.of(exec.substring("Exec=".length()).split(" ", -1));
    assertThat(opened).hasSize(2).endsWith("%f");
    assertThat(paper()).as("share of the screen before").isLessThan(0.1);
    Process window = new Program(opened.subList(0, 1), home).start(trip.toString());
    try {
      double share = 0;
      for (int second = 0; second < 120 && share < 0.3; second++) {
        assertThat(window.waitFor(1, TimeUnit.SECONDS)).as("ended").isFalse();
        share = paper();
      }
      assertThat(share).as("share of the screen that is the window's paper").isGreaterThan(0.3);
    } finally {
      window.descendants().forEach(ProcessHandle::destroy);
      assertThat(window.waitFor(60, TimeUnit.SECONDS)).as("ends when asked to").isTrue();
    }
  }

  /** How much of the screen is the window's paper. */
  private static double paper() throws AWTException {
    Rectangle screen = new Rectangle(Toolkit.getDefaultToolkit().getScreenSize());
    BufferedImage seen = new Robot().createScreenCapture(screen);
    int[] pixels = seen.getRGB(0, 0, screen.width, screen.height, null, 0, screen.width);
    long count = 0;
    for (int pixel : pixels) {
      count += (pixel & 0xffffff) == PAPER ? 1 : 0;
    }
    return (double) count / pixels.length;
  }

  private static Path made() throws IOException {
    try (Stream<Path> files = Files.list(Path.of("target", "packages"))) {
      return files.filter(file -> file.toString().endsWith(".deb")).findFirst().orElseThrow();
    }
  }

  /** Names of all that stands where packages put something. */
  private static Set<String> shared() {
    Set<String> names = new TreeSet<>();
    for (Path folder : SHARED) {
      try (Stream<Path> all = Files.walk(folder)) {
        all.map(Path::toString).forEach(names::add);
      } catch (IOException wrong) {
        throw new UncheckedIOException(wrong);
      }
    }
    return names;
  }
}

package dawngauge.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import dawngauge.geo.TrackLine;
import dawngauge.problem.Outcome;
import dawngauge.problem.Problem;
import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.parallel.Isolated;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** GPX files by their bytes: encodings (XML 1.0, 4.3.3 and appendix F), damage. */
@Isolated
class GpxBytesTest {

  private static final String NAME = "Kärntner Straße";

  private final PrintStream before = System.err;
  private final ByteArrayOutputStream printed = new ByteArrayOutputStream();

  @BeforeEach
  void listen() {
    System.setErr(new PrintStream(printed, true, StandardCharsets.UTF_8));
  }

  @AfterEach
  void nothingIsPrinted() {
    System.setErr(before);
    assertThat(printed.toString(StandardCharsets.UTF_8)).isEmpty();
  }

  private static String text(String declaration) {
    return declaration
        + "<gpx version=\"1.1\" creator=\"invented\" xmlns=\"http://www.topografix.com/GPX/1/1\">\n"
        + "<rte><name>"
        + NAME
        + "</name>\n<rtept lat=\"46.6\" lon=\"14.3\"/>\n<rtept lat=\"46.5\" lon=\"14.1\"/></rte>\n"
        + "</gpx>\n";
  }

  private static String declared(String encoding) {
    return "<?xml version=\"1.0\" encoding=\"" + encoding + "\"?>\n";
  }

  private static void assertRead(byte[] bytes) {
    Outcome<List<TrackLine>> read = GpxFile.read(bytes);
    assertThat(read.problems()).isEmpty();
    assertThat(read.get().get(0).name()).isEqualTo(NAME);
    assertThat(read.get().get(0).points()).hasSize(2);
  }

  @ParameterizedTest
  @CsvSource({
    "UTF-8, UTF-8, true",
    "UTF-8, utf-8, false",
    "UTF-16LE, UTF-16, true",
    "UTF-16BE, UTF-16, true",
    "UTF-16LE, UTF-16, false",
    "UTF-16BE, UTF-16BE, false",
    "UTF-32BE, UTF-32, true",
    "UTF-32LE, UTF-32, true",
    "ISO-8859-1, ISO-8859-1, false",
    "windows-1252, Windows-1252, false",
  })
  void aFileIsReadByItsEncoding(String stored, String said, boolean mark) {
    String text = (mark ? "\ufeff" : "") + text(declared(said));
    assertRead(text.getBytes(Charset.forName(stored)));
  }

  @ParameterizedTest
  @CsvSource({"UTF-8, true", "UTF-8, false", "UTF-16LE, true", "UTF-16BE, true"})
  void withoutADeclarationTooByItsMarkOrAsUtf8(String stored, boolean mark) {
    assertRead(((mark ? "\ufeff" : "") + text("")).getBytes(Charset.forName(stored)));
  }

  @ParameterizedTest
  @CsvSource({
    "ISO-8859-1, UTF-8, 'line 3 holds bytes that are no UTF-8'",
    "ISO-8859-1, US-ASCII, 'line 3 holds bytes that are no US-ASCII'",
    "UTF-8, UTF-16, 'it says that it is UTF-16, but its bytes are not'",
    "UTF-8, runes, 'its encoding \"runes\" is not known'",
    "UTF-8, 'no name', 'its encoding \"no name\" is not known'",
  })
  void bytesThatDoNotFitGiveOneClearError(String stored, String said, String told) {
    assertThat(GpxFile.read(text(declared(said)).getBytes(Charset.forName(stored))).problems())
        .singleElement()
        .extracting(Problem::message)
        .asString()
        .contains(told)
        .contains("save it as UTF-8");
  }

  /** Whatever becomes of a file on its way, it is read or refused. */
  @Test
  void damagedFilesAreReadOrRefused() {
    Random random = new Random(20261128);
    byte[] sound = text(declared("UTF-8")).getBytes(StandardCharsets.UTF_8);
    int refused = 0;
    for (int i = 0; i < 3000; i++) {
      byte[] damaged = sound.clone();
      for (int hits = random.nextInt(4); hits >= 0; hits--) {
        int other = i % 2 == 0 ? random.nextInt(256) : ' ' + random.nextInt('~' - ' ');
        damaged[random.nextInt(damaged.length)] = (byte) other;
      }
      Outcome<List<TrackLine>> read = GpxFile.read(damaged);
      refused += read.hasValue() ? 0 : 1;
      assertThat(read.hasValue() || read.problems().size() == 1).isTrue();
    }
    assertThat(refused).isBetween(500, 2950);
  }
}

package dawngauge.tripfile;

import static org.assertj.core.api.Assertions.assertThat;

import dawngauge.problem.Outcome;
import dawngauge.problem.ProblemCode;
import dawngauge.testdata.BenchTrip;
import dawngauge.trip.Trip;
import dawngauge.trip.TripSize;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is too large, too deep, or no text at all is refused before it costs anything. */
class LimitsTest {
  private static final int MEBIBYTE = 1 << 20;

  @TempDir
  @SuppressWarnings("NullAway.Init") // set by JUnit
  Path folder;

  /** A stream without end, which counts what was taken from it. */
  private static final class Endless extends InputStream {
    private long taken;

    @Override
    public int read() {
      taken++;
      return '[';
    }

    @Override
    public int read(byte[] bytes, int offset, int length) {
      taken += length;
      Arrays.fill(bytes, offset, offset + length, (byte) '[');
      return length;
    }
  }

  @Test
  void aStreamIsReadNoFurtherThanTheLimit() {
    Endless endless = new Endless();
    assertOnly(TripFile.readFrom(endless), ProblemCode.FILE_TOO_LARGE);
    assertThat(endless.taken).isLessThan(17L * MEBIBYTE);
  }

  @Test
  void seventeenMebibytesAreRefused() throws IOException {
    Path file = folder.resolve("large.dawngauge");
    Files.writeString(file, Samples.full() + " ".repeat(17 * MEBIBYTE));
    assertOnly(TripFile.read(file), ProblemCode.FILE_TOO_LARGE);
  }

  @Test
  void justUnderSixteenMebibytesAreRead() {
    String full = Samples.full();
    int room = 16 * MEBIBYTE - full.getBytes(StandardCharsets.UTF_8).length;
    assertThat(TripFile.parse(full + " ".repeat(room)).hasValue()).isTrue();
  }

  @Test
  void twoHundredMebibytesOfNestingAreRefusedByTheirSize() throws IOException {
    Path file = folder.resolve("nested.dawngauge");
    byte[] brackets = "[".repeat(MEBIBYTE).getBytes(StandardCharsets.UTF_8);
    for (int i = 0; i < 200; i++) {
      Files.write(file, brackets, StandardOpenOption.CREATE, StandardOpenOption.APPEND);
    }
    assertOnly(TripFile.read(file), ProblemCode.FILE_TOO_LARGE);
  }

  @Test
  void sixtyFourLevelsAreReadAndSixtyFiveRefused() {
    assertThat(TripFile.parse(withLevels(64)).hasValue()).isTrue();
    assertOnly(TripFile.parse(withLevels(65)), ProblemCode.JSON_LIMIT);
    assertOnly(TripFile.parse("[".repeat(15 * MEBIBYTE)), ProblemCode.JSON_LIMIT);
  }

  @Test
  void thousandsOfFaultsAreCountedAndTheFirstNamed() {
    String zeros = "0,".repeat(500_000) + "0";
    String small = Samples.text("small.dawngauge");
    Outcome<Trip> outcome =
        TripFile.parse(
            small.replaceFirst("\"rig\": \\{", "\"rig\": {\"spares\": [" + zeros + "],"));
    assertThat(outcome.hasValue()).isFalse();
    assertThat(outcome.problems()).hasSize(FileProblems.MOST + 1);
    assertThat(outcome.problems().get(0).where()).isEqualTo("/rig/spares/0");
    assertThat(outcome.problems().get(FileProblems.MOST).text()).startsWith("and 499001 more");
  }

  @Test
  void millionsOfEmptyListsAreRefused() {
    assertOnly(TripFile.parse("[" + "[],".repeat(5 * MEBIBYTE)), ProblemCode.JSON_LIMIT);
  }

  @Test
  void aNumberOfAMillionDigitsIsRefused() {
    assertOnly(TripFile.parse("[" + "9".repeat(MEBIBYTE) + "]"), ProblemCode.JSON_LIMIT);
  }

  @Test
  void whatIsNotUtf8IsRefused() {
    byte[] latin1 = Samples.full().getBytes(StandardCharsets.ISO_8859_1);
    assertOnly(TripFile.readFrom(new ByteArrayInputStream(latin1)), ProblemCode.NOT_UTF8);
  }

  @Test
  void aByteOrderMarkIsPassedOver() {
    byte[] marked = ("\uFEFF" + Samples.full()).getBytes(StandardCharsets.UTF_8);
    assertThat(TripFile.readFrom(new ByteArrayInputStream(marked)).hasValue()).isTrue();
  }

  @Test
  void aMissingFileAndAFolderAreSaidSo() {
    assertOnly(TripFile.read(folder.resolve("none.dawngauge")), ProblemCode.NO_SUCH_FILE);
    assertOnly(TripFile.read(folder), ProblemCode.CANNOT_READ);
  }

  /** A sound trip with an extra that makes it so many levels deep; the top is the first. */
  private static String withLevels(int levels) {
    String extra = "[".repeat(levels - 1) + "]".repeat(levels - 1);
    String small = Samples.text("small.dawngauge");
    return small.replaceFirst("\\{", "{\"x-deep\": " + extra + ",");
  }

  /** As many stops as are taken, and one more: in a file, and by an edit. */
  @Test
  void oneStopTooManyIsRefusedWithTheWayOut() {
    Trip largest = BenchTrip.of(TripSize.MOST_STOPS, 1);
    assertThat(TripFile.parse(TripFile.text(largest)).hasValue()).isTrue();
    Trip larger = BenchTrip.of(TripSize.MOST_STOPS + 1, 1);
    Outcome<Trip> read = TripFile.parse(TripFile.text(larger));
    assertOnly(read, ProblemCode.TOO_MANY_STOPS);
    assertThat(read.problems().get(0).text()).contains("201", "200", "split it");
    assertThat(TripSize.over(largest)).isEmpty();
    assertThat(TripSize.over(larger)).isEqualTo(read.problems());
  }

  @Test
  void aRigOfTooManyTiresIsRefused() {
    assertOnly(TripFile.parse(TripFile.text(BenchTrip.of(2, 3))), ProblemCode.TOO_MANY_TIRES);
    assertThat(TripSize.over(BenchTrip.of(2, 2))).isEmpty();
  }

  private static void assertOnly(Outcome<Trip> outcome, ProblemCode code) {
    assertThat(outcome.problems()).hasSize(1);
    assertThat(outcome.problems().get(0).code()).isEqualTo(code);
    assertThat(outcome.hasValue()).isFalse();
  }
}

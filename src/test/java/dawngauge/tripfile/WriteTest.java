package dawngauge.tripfile;

import static org.assertj.core.api.Assertions.assertThat;

import dawngauge.problem.Problem;
import dawngauge.problem.ProblemCode;
import dawngauge.trip.Remarks;
import dawngauge.trip.Trip;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The user's file is at every moment the old one or the new one. */
class WriteTest {
  private static final Trip TRIP = TripFile.parse(Samples.full()).get();

  @TempDir
  @SuppressWarnings("NullAway.Init") // set by JUnit
  Path folder;

  @Test
  void whatIsWrittenIsReadBackAndNothingIsLeftBeside() throws IOException {
    Path file = folder.resolve("a.dawngauge");
    assertThat(TripFile.write(TRIP, file)).isEmpty();
    assertThat(TripFile.read(file).get()).isEqualTo(TRIP);
    assertThat(names()).containsExactly("a.dawngauge");
  }

  @Test
  void linksAreFollowedAndStayLinks() throws IOException {
    Path file = Files.writeString(folder.resolve("real"), "old");
    Path first = Files.createSymbolicLink(folder.resolve("first"), Path.of("real"));
    Path second = Files.createSymbolicLink(folder.resolve("second"), first);
    assertThat(TripFile.write(TRIP, second)).isEmpty();
    assertThat(TripFile.read(file).hasValue()).isTrue();
    assertThat(names()).containsExactly("first", "real", "second");
    assertThat(second).isSymbolicLink();
  }

  @Test
  void aLinkThatLeadsToNothingYetMakesItsFile() throws IOException {
    Path link = Files.createSymbolicLink(folder.resolve("link"), Path.of("later"));
    assertThat(TripFile.write(TRIP, link)).isEmpty();
    assertThat(names()).containsExactly("later", "link");
    assertThat(link).isSymbolicLink();
  }

  @Test
  void aCircleOfLinksIsReported() throws IOException {
    Path a = Files.createSymbolicLink(folder.resolve("a"), Path.of("b"));
    Files.createSymbolicLink(folder.resolve("b"), Path.of("a"));
    assertRefused(TripFile.write(TRIP, a), "circle");
    assertThat(names()).containsExactly("a", "b");
  }

  @Test
  void permissionsAreKept() throws IOException {
    Path file = Files.writeString(folder.resolve("a"), "old");
    Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rw-rw-r--"));
    assertThat(TripFile.write(TRIP, file)).isEmpty();
    assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(file)))
        .isEqualTo("rw-rw-r--");
  }

  /** A new file gets what the system gives any new file: 0644 where the umask is 022. */
  @Test
  void aNewFileIsAsWideAsTheSystemAllows() throws IOException {
    Path plain = Files.writeString(folder.resolve("plain"), "");
    Path file = folder.resolve("new");
    assertThat(TripFile.write(TRIP, file)).isEmpty();
    assertThat(Files.getPosixFilePermissions(file)).isEqualTo(Files.getPosixFilePermissions(plain));
  }

  @Test
  void aMissingFolderIsReported() {
    assertRefused(TripFile.write(TRIP, folder.resolve("none/a.dawngauge")), "does not exist");
  }

  @Test
  void aFileInPlaceOfTheFolderIsReportedAndKept() throws IOException {
    Path file = Files.writeString(folder.resolve("a"), "old");
    assertRefused(TripFile.write(TRIP, file.resolve("b.dawngauge")), "");
    assertThat(file).hasContent("old");
  }

  @Test
  void aFolderInPlaceOfTheFileIsReportedAndKept() throws IOException {
    Path inside = Files.createDirectory(folder.resolve("a"));
    assertRefused(TripFile.write(TRIP, inside), "folder");
    assertThat(names()).containsExactly("a");
  }

  @Test
  void whatStoodThereIsKeptWhenTheTextCannotBeWritten() throws IOException {
    Path file = Files.writeString(folder.resolve("a"), "old");
    Trip half = new Trip("half \ud800", TRIP.rig(), TRIP.route(), List.of(), List.of(), none());
    assertRefused(TripFile.write(half, file), "half a character");
    assertThat(file).hasContent("old");
    assertThat(names()).containsExactly("a");
  }

  @Test
  void aNameTooLongForTheDiskIsReported() {
    assertRefused(TripFile.write(TRIP, folder.resolve("n".repeat(300))), "");
  }

  @Test
  void readingLeavesAnUnreadableFileAsItIs() throws IOException {
    String newer = Samples.text("newer-version.dawngauge");
    Path file = Files.writeString(folder.resolve("a"), newer);
    assertThat(TripFile.read(file).hasValue()).isFalse();
    assertThat(file).hasContent(newer);
    assertThat(names()).containsExactly("a");
  }

  private static Remarks none() {
    return new Remarks(null, Map.of());
  }

  private static void assertRefused(Optional<Problem> problem, String part) {
    assertThat(problem).isPresent();
    assertThat(problem.orElseThrow().code()).isEqualTo(ProblemCode.CANNOT_WRITE);
    assertThat(problem.orElseThrow().text()).contains(part);
  }

  private List<String> names() throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.map(file -> file.getFileName() + "").sorted().toList();
    }
  }
}

package dawngauge.tripfile;

import static org.assertj.core.api.Assertions.assertThat;

import dawngauge.trip.Trip;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** Copies of what was not saved when the program ended. */
class RecoveryTest {

  private static final Instant NOW = Instant.parse("2027-04-06T12:00:00Z");
  private static final Trip TRIP = TripFile.parse(Samples.text("small.dawngauge")).get();

  private final Path folder;

  RecoveryTest(@TempDir Path folder) {
    this.folder = folder.resolve("unsaved");
  }

  private Recovery program(String run) {
    return new Recovery(folder, run, other -> other.equals("alive"));
  }

  private List<Path> named(String part) throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.filter(file -> file.toString().contains(part)).toList();
    }
  }

  /** A process number that lives again is another run: its copy is offered and not written over. */
  @Test
  void aCopyIsNeitherHiddenNorWrittenOverByALaterRunOfTheSameNumber() {
    program("7 2027-04-05").keep(TRIP, Optional.empty(), List.of(), NOW);
    Recovery later = program("7 2027-04-06");
    later.keep(TRIP, Optional.of(Path.of("other.dawngauge")), List.of(), NOW.plusSeconds(60));
    assertThat(later.found())
        .singleElement()
        .satisfies(found -> assertThat(found.when()).isEqualTo(NOW));
    assertThat(program("8").found()).hasSize(2);
  }

  @Test
  void aRunningProgramsCopyIsLeftAlone() {
    program("alive").keep(TRIP, Optional.empty(), List.of(), NOW);
    assertThat(program("8").found()).isEmpty();
  }

  @Test
  void whatWasHalfTypedComesBackAsItWasTyped() {
    List<Recovery.Draft> drafts =
        List.of(
            new Recovery.Draft("s2", "Stay", " 1:3 = x\\"),
            new Recovery.Draft("rig / axle 1.0", "Own target, cold of trailer axle 1", "7x"),
            new Recovery.Draft("", "Tread: inner", "größer\n#"));
    program("1").keep(TRIP, Optional.empty(), drafts, NOW);
    assertThat(program("8").found())
        .singleElement()
        .satisfies(found -> assertThat(found.drafts()).isEqualTo(drafts));
  }

  /** As copies are that were kept while only fields of stops were. */
  @Test
  void whatWasHalfTypedAtAStopIsReadFromAnOlderCopy() throws IOException {
    program("1").keep(TRIP, Optional.empty(), List.of(), NOW);
    Path record =
        named("").stream()
            .filter(file -> !file.toString().endsWith(TripFile.ENDING))
            .findFirst()
            .orElseThrow();
    Files.writeString(
        record,
        """
        when=2027-04-06T12\\:00\\:00Z
        program=1
        draft.0.stop=s2
        draft.0.field=Stay
        draft.0.text=1x
        draft.1.stop=
        draft.1.field=Trip
        draft.1.text=?
        """);
    assertThat(program("8").found())
        .singleElement()
        .satisfies(
            found ->
                assertThat(found.drafts())
                    .containsExactly(
                        new Recovery.Draft("s2", "Stay", "1x"),
                        new Recovery.Draft("", "Trip", "?")));
  }

  @Test
  void oneBrokenRecordHidesNoOther() throws IOException {
    program("1")
        .keep(
            TRIP,
            Optional.of(Path.of("a.dawngauge")),
            List.of(new Recovery.Draft("s2", "Stay", "x")),
            NOW);
    program("2").keep(TRIP, Optional.empty(), List.of(), NOW);
    program("3").keep(TRIP, Optional.empty(), List.of(), NOW);
    List<Path> records = named(".about");
    Files.writeString(records.get(0), "of=a\\u0000b\nwhen=never\n");
    Files.writeString(records.get(1), "of=\\u00zz");
    assertThat(program("8").found())
        .hasSize(3)
        .allSatisfy(found -> assertThat(program("8").open(found).hasValue()).isTrue());
  }

  @Test
  @EnabledOnOs({OS.LINUX, OS.MAC})
  void onlyTheOwnerMayReadThem() throws IOException {
    program("1").keep(TRIP, Optional.empty(), List.of(), NOW);
    assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(folder)))
        .isEqualTo("rwx------");
    assertThat(named("unsaved-"))
        .hasSize(2)
        .allSatisfy(
            file ->
                assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(file)))
                    .isEqualTo("rw-------"));
  }

  @Test
  void whatAKilledSaveLeftIsSweptOnceItIsOld() throws IOException {
    Path trip = folder.resolveSibling("haul.dawngauge");
    Path old = stale(trip, "11111111-2222-3333-4444-555555555555", Duration.ofHours(1));
    Path young = stale(trip, "21111111-2222-3333-4444-555555555555", Duration.ZERO);
    Path mine = stale(trip, "mine", Duration.ofHours(1));
    assertThat(TripFile.write(TRIP, trip)).isEmpty();
    assertThat(old).doesNotExist();
    assertThat(young).exists();
    assertThat(mine).exists();
    Files.createDirectories(folder);
    Path copy =
        stale(
            folder.resolve("unsaved-x.dawngauge"),
            "31111111-2222-3333-4444-555555555555",
            Duration.ofHours(1));
    program("1").found();
    assertThat(copy).doesNotExist();
  }

  private static Path stale(Path of, String id, Duration age) throws IOException {
    Path file = Files.writeString(of.resolveSibling("." + of.getFileName() + "." + id), "half");
    Files.setLastModifiedTime(file, FileTime.from(Instant.now().minus(age)));
    return file;
  }
}

package dawngauge.tripfile;

import static org.assertj.core.api.Assertions.assertThat;

import dawngauge.problem.Problem;
import dawngauge.problem.ProblemCode;
import dawngauge.trip.LogEvent;
import dawngauge.trip.Rig;
import dawngauge.trip.RigSwap;
import dawngauge.trip.Trip;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Rigs under a name, and a trip that takes one. */
class KeptRigsTest {

  private static final LocalDate DAY = LocalDate.of(2027, 4, 6);

  private static Trip trip(String name) {
    return TripFile.read(Path.of("demo-data", name + ".dawngauge")).get();
  }

  @Test
  void aRigComesBackAsItWasUnderAnyName(@TempDir Path folder) {
    KeptRigs rigs = new KeptRigs(folder.resolve("rigs"));
    Rig spring = trip("spring-fleece-haul").rig();
    Rig autumn = trip("autumn-stock-haul").rig();
    List<String> names = List.of("The big one", "../etc: a/b?", "Über «4» 馬", "a".repeat(300));
    for (String name : names) {
      assertThat(rigs.keep(name, spring, DAY)).isEmpty();
    }
    assertThat(rigs.keep("The big one", autumn, DAY.plusDays(1))).isEmpty();
    List<KeptRigs.Kept> all = rigs.all().get();
    assertThat(all).extracting(KeptRigs.Kept::name).containsExactlyInAnyOrderElementsOf(names);
    KeptRigs.Kept big =
        all.stream().filter(kept -> kept.name().equals("The big one")).findFirst().orElseThrow();
    assertThat(big.kept()).isEqualTo(DAY.plusDays(1));
    assertThat(big.rig().equals(autumn)).isTrue();
    rigs.remove("The big one");
    assertThat(rigs.all().get()).hasSize(names.size() - 1);
    assertThat(folder.getParent()).isDirectoryNotContaining("glob:etc*");
  }

  @Test
  void aBrokenFileIsToldAndLeftAlone(@TempDir Path folder) throws IOException {
    KeptRigs rigs = new KeptRigs(folder);
    rigs.keep("good", trip("spring-fleece-haul").rig(), DAY);
    Path broken = Files.writeString(folder.resolve("bad.dawngauge-rig"), "{\"format\": ");
    assertThat(rigs.all().get()).extracting(KeptRigs.Kept::name).containsExactly("good");
    assertThat(rigs.all().problems()).isNotEmpty();
    assertThat(broken).hasContent("{\"format\": ");
  }

  @Test
  void aRigWithoutANameIsNotKept(@TempDir Path folder) {
    assertThat(new KeptRigs(folder).keep("  ", trip("spring-fleece-haul").rig(), DAY))
        .map(Problem::code)
        .hasValue(ProblemCode.NOT_A_NAME);
  }

  @Test
  void aTripThatTakesAnotherRigCanBeSavedAndSaysWhatWent() {
    Trip trip = trip("spring-fleece-haul");
    Rig other = trip("autumn-stock-haul").rig();
    RigSwap.Swapped swapped = RigSwap.to(trip, other);
    assertThat(TripFile.parse(TripFile.text(swapped.trip())).get().equals(swapped.trip())).isTrue();
    assertThat(swapped.trip().rig().equals(other)).isTrue();
    long readings =
        trip.log().stream()
            .filter(event -> event instanceof LogEvent.Reading)
            .filter(event -> !swapped.trip().log().contains(event))
            .count();
    assertThat(readings).isPositive();
    assertThat(swapped.lost().get(0)).contains("of the log");
    assertThat(RigSwap.to(trip, trip.rig()).lost()).isEmpty();
    assertThat(RigSwap.to(trip, trip.rig()).trip().equals(trip)).isTrue();
  }
}

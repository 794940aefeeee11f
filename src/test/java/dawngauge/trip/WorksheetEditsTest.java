package dawngauge.trip;

import static org.assertj.core.api.Assertions.assertThat;

import dawngauge.tripfile.TripFile;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;

/** The worksheet follows the vehicles and axles that it names. */
class WorksheetEditsTest {

  private static final Trip TRIP =
      TripFile.read(
              Path.of("src", "test", "resources", "dawngauge", "weights", "three-loads.dawngauge"))
          .get();

  private static Worksheet of(Trip trip) {
    return Objects.requireNonNull(trip.rig().worksheet());
  }

  private static List<String> axles(Trip trip) {
    return of(trip).empty().get(0).platforms().stream()
        .flatMap(platform -> platform.axles().stream())
        .map(AxleRef::words)
        .toList();
  }

  @Test
  void anotherNameOfAVehicleIsFollowed() {
    Vehicle trailer = TRIP.rig().vehicles().get(1);
    Trip renamed = RigEdits.withVehicle(TRIP, 1, trailer.withName("gooseneck"));
    assertThat(of(renamed).loads())
        .extracting(DeckLoad::vehicle)
        .containsExactly("gooseneck", "gooseneck", "pickup");
    assertThat(axles(renamed))
        .containsExactly("pickup axle 1", "pickup axle 2", "gooseneck axle 1", "gooseneck axle 2");
    assertThat(TripFile.parse(TripFile.text(renamed)).get()).isEqualTo(renamed);
  }

  @Test
  void whatStoodOnAVehicleGoesWithIt() {
    RigParts.Changed cut = RigParts.withoutVehicle(TRIP, 1);
    assertThat(of(cut.trip()).loads()).extracting(DeckLoad::what).containsExactly("water");
    assertThat(axles(cut.trip())).containsExactly("pickup axle 1", "pickup axle 2");
    assertThat(cut.lost()).contains("2 loads of the worksheet", "1 empty weight");
    assertThat(TripFile.parse(TripFile.text(cut.trip())).get()).isEqualTo(cut.trip());
  }

  @Test
  void theWeightOfAGroupGoesWithOneOfItsAxles() {
    RigParts.Changed cut = RigParts.withoutAxle(TRIP, new AxleRef("trailer", 1));
    assertThat(axles(cut.trip())).containsExactly("pickup axle 1", "pickup axle 2");
    assertThat(of(cut.trip()).loads()).hasSize(3);
    assertThat(TripFile.parse(TripFile.text(cut.trip())).get()).isEqualTo(cut.trip());
  }

  @Test
  void headCountsEachAndNoneCountsOne() {
    assertThat(of(TRIP).loads().get(0).kilograms())
        .isEqualTo(20 * of(TRIP).loads().get(0).weight().value().kilograms());
    assertThat(of(TRIP).loads().get(1).kilograms())
        .isEqualTo(of(TRIP).loads().get(1).weight().value().kilograms());
  }
}

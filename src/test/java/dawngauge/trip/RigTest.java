package dawngauge.trip;

import static dawngauge.trip.Hauls.axle;
import static dawngauge.trip.Hauls.vehicle;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** Positions in walking order, their words and short forms. */
class RigTest {
  private static final Rig RIG =
      Hauls.rig(
          List.of(
              vehicle(
                  "truck",
                  "k",
                  Vehicle.Kind.TRUCK,
                  axle(false, null, null),
                  axle(true, null, null)),
              vehicle(
                  "trailer",
                  "t",
                  Vehicle.Kind.TRAILER,
                  axle(false, null, null),
                  axle(false, null, null))),
          null);

  @Test
  void walkingOrderIsFrontToRearLeftToRight() {
    assertThat(RIG.positions().stream().map(WheelPosition::words))
        .containsExactly(
            "truck axle 1 left",
            "truck axle 1 right",
            "truck axle 2 left outer",
            "truck axle 2 left inner",
            "truck axle 2 right inner",
            "truck axle 2 right outer",
            "trailer axle 1 left",
            "trailer axle 1 right",
            "trailer axle 2 left",
            "trailer axle 2 right");
  }

  @Test
  void shortForms() {
    assertThat(RIG.positions().stream().map(RIG::shortForm))
        .containsExactly("k1l", "k1r", "k2lo", "k2li", "k2ri", "k2ro", "t1l", "t1r", "t2l", "t2r");
  }

  @ParameterizedTest
  @CsvSource({"truck, 0", "truck, 3", "trailer, -1", "dolly, 1"})
  void axlesThatAreNotThere(String vehicle, int number) {
    assertThat(RIG.axle(new AxleRef(vehicle, number))).isEmpty();
  }

  @Test
  void axlesByNumberFromTheFront() {
    assertThat(RIG.axle(new AxleRef("truck", 1)).orElseThrow().dual()).isFalse();
    assertThat(RIG.axle(new AxleRef("truck", 2)).orElseThrow().dual()).isTrue();
    assertThat(RIG.axle(new AxleRef("truck", 2)).orElseThrow().tiresPerSide()).isEqualTo(2);
  }

  @Test
  void fittedTires() {
    Tire known = new Tire("T1", "kind", null, null, 1, null, Set.of(), Remarks.NONE);
    Axle axle =
        Hauls.fitted(false, Map.of(WheelSlot.LEFT, "T1", WheelSlot.RIGHT, "not in the list"));
    Rig bare = Hauls.rig(List.of(vehicle("trailer", "t", Vehicle.Kind.TRAILER, axle)), null);
    Rig rig =
        new Rig(
            "rig",
            bare.vehicles(),
            List.of(),
            List.of(known),
            List.of(),
            List.of(),
            null,
            null,
            List.of(),
            Remarks.NONE);
    AxleRef ref = new AxleRef("trailer", 1);
    assertThat(rig.fittedAt(new WheelPosition(ref, WheelSlot.LEFT))).contains(known);
    assertThat(rig.fittedAt(new WheelPosition(ref, WheelSlot.RIGHT))).isEmpty();
    assertThat(rig.fittedAt(new WheelPosition(ref, WheelSlot.LEFT_INNER))).isEmpty();
    assertThat(rig.fittedAt(new WheelPosition(new AxleRef("truck", 1), WheelSlot.LEFT))).isEmpty();
  }

  @ParameterizedTest
  @EnumSource
  void matesAreMutualAndOnTheSameSide(WheelSlot slot) {
    assertThat(slot.mate().mate()).isEqualTo(slot);
    assertThat(slot.mate().isLeft()).isEqualTo(slot.isLeft());
    assertThat(slot.mate().equals(slot)).isEqualTo(WheelSlot.of(false).contains(slot));
  }

  @Test
  void shortFormsTellAllSlotsApart() {
    assertThat(Arrays.stream(WheelSlot.values()).map(WheelSlot::letters)).doesNotHaveDuplicates();
  }

  @Test
  void aRouteHasALegBetweenEachTwoStops() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new Route(List.of(Hauls.stop("a"), Hauls.stop("b")), List.of()));
    assertThat(new Route(List.of(), List.of()).stop("a")).isEmpty();
  }
}

package dawngauge.trip;

import static dawngauge.testdata.StopBuilder.stop;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatIllegalStateException;

import dawngauge.field.TireFields;
import dawngauge.problem.Outcome;
import dawngauge.quantity.Entered;
import dawngauge.quantity.GaugePressure;
import dawngauge.quantity.Mass;
import dawngauge.quantity.QuantityKind;
import dawngauge.rules.Loads;
import dawngauge.testdata.RigBuilder;
import dawngauge.testdata.Trips;
import dawngauge.tire.TireSpec;
import dawngauge.tripfile.TripFile;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Changes to a rig and to its dawn readings; what refers to a name follows it. */
class RigEditsTest {

  private static final AxleRef FIRST = new AxleRef("trailer", 1);
  private static final AxleRef SECOND = new AxleRef("trailer", 2);

  private static Trip trip(RigBuilder rig) {
    return Trips.of(rig)
        .stop(stop("a").leaves("2027-06-01T06:00Z").steady("60 °F"))
        .stop(stop("b").steady("60 °F"))
        .trip();
  }

  private static Trip two() {
    return trip(RigBuilder.trailer().axles(2));
  }

  private static Entered<Mass> mass(String text) {
    return Entered.of(QuantityKind.MASS, text);
  }

  private static Entered<GaugePressure> psi(String text) {
    return Entered.of(QuantityKind.GAUGE_PRESSURE, text);
  }

  private static Vehicle named(Vehicle old, String name) {
    return new Vehicle(name, old.letter(), old.kind(), mass("14000 lb"), old.axles(), Remarks.NONE);
  }

  @Test
  void anAxleIsReplacedAloneAndTheTripItCameFromStays() {
    Trip trip = two();
    Axle old = trip.rig().axle(SECOND).orElseThrow();
    Axle changed =
        new Axle(
            old.dual(),
            mass("7000 lb"),
            old.label(),
            old.wheelMaxPressure(),
            old.wheelMaxLoad(),
            old.valveMaxPressure(),
            old.leftShare(),
            old.target(),
            old.fitted(),
            old.remarks());
    Trip edited = RigEdits.withAxle(trip, SECOND, changed);
    assertThat(edited.rig().axle(SECOND)).contains(changed);
    assertThat(edited.rig().axle(FIRST)).isEqualTo(trip.rig().axle(FIRST));
    assertThat(trip.rig().axle(SECOND)).contains(old);
    assertThat(RigEdits.withAxle(edited, SECOND, old)).isEqualTo(trip);
  }

  @ParameterizedTest
  @CsvSource({"trailer, 0", "trailer, 3", "dolly, 1"})
  void anAxleThatIsNotThere(String vehicle, int number) {
    Trip trip = two();
    Axle axle = trip.rig().axle(FIRST).orElseThrow();
    assertThatIllegalArgumentException()
        .isThrownBy(() -> RigEdits.withAxle(trip, new AxleRef(vehicle, number), axle))
        .withMessage("no " + vehicle + " axle " + number);
  }

  @Test
  void everythingThatNamesAVehicleFollowsIt() {
    Trip plain = two();
    LoadChange hay =
        new LoadChange(
            "hay",
            mass("400 lb"),
            LoadChange.Source.GUESSED,
            Map.of(FIRST, Entered.of(QuantityKind.RATIO, "100 %")),
            null,
            false,
            Remarks.NONE);
    Rig rig = plain.rig();
    Rig full =
        new Rig(
            rig.name(),
            rig.vehicles(),
            rig.tireTypes(),
            rig.tires(),
            List.of(new Spare("T4", List.of(SECOND), null, null, Remarks.NONE)),
            rig.gauges(),
            null,
            null,
            List.of(
                new ScaleTicket(
                    null,
                    true,
                    null,
                    List.of(new ScaleTicket.Platform(List.of(FIRST, SECOND), mass("9000 lb"))),
                    List.of(new ScaleTicket.WheelWeight(FIRST, true, mass("2000 lb"))),
                    Remarks.NONE)),
            Remarks.NONE);
    TypedTime noon = Hauls.at("2027-06-01T12:00Z");
    Trip trip =
        Trips.of(RigBuilder.trailer().axles(2))
            .stop(stop("a").leaves("2027-06-01T06:00Z").load(hay))
            .stop(stop("b"))
            .trip()
            .withRig(full)
            .withLog(
                List.of(
                    new LogEvent.TireChange(
                        noon,
                        new WheelPosition(SECOND, WheelSlot.LEFT),
                        "T3",
                        "T4",
                        Remarks.NONE)));
    Trip edited =
        RigEdits.withVehicle(trip, 0, named(trip.rig().vehicles().get(0), "stock trailer"));
    assertThat(edited.rig().vehicle("stock trailer").orElseThrow().gvwr())
        .isEqualTo(mass("14000 lb"));
    assertThat(edited.toString().replace("stock trailer", "").replace("test trailer", ""))
        .doesNotContain("vehicle=trailer");
    assertThat(edited.rig().spares().get(0).serves())
        .containsExactly(new AxleRef("stock trailer", 2));
    assertThat(edited.route().stops().get(0).loadChanges().get(0).axles())
        .containsOnlyKeys(new AxleRef("stock trailer", 1));
    Trip back = RigEdits.withVehicle(edited, 0, trip.rig().vehicles().get(0));
    assertThat(back).isEqualTo(trip);
  }

  @Test
  void tiresFollowTheNameOfTheirKind() {
    Trip trip = two();
    TireSpec old = trip.rig().tireTypes().get(0);
    TireSpec renamed =
        new TireSpec(
            "new kind", old.size(), null, null, "E", null, null, "M", null, null, null, null, null);
    Trip edited = RigEdits.withTireType(trip, 0, renamed);
    assertThat(edited.rig().tires()).extracting(Tire::type).containsOnly("new kind");
    assertThat(edited.rig().tires()).allMatch(tire -> edited.rig().specOf(tire).isPresent());
  }

  @Test
  void readingsAndAdjustmentsFollowTheNameOfTheirGauge() {
    Trip trip =
        Trips.of(RigBuilder.trailer())
            .stop(stop("a").leaves("2027-06-01T06:00Z"))
            .stop(stop("b"))
            .read("2027-06-01T05:40Z", "T1", "60 psi")
            .read("2027-06-01T05:41Z", "T2", "60 psi", "coarse", ReadingState.COLD)
            .adjust("2027-06-01T05:45Z", "T1", "65 psi")
            .trip();
    Gauge old = trip.rig().gauges().get(0);
    Gauge renamed =
        new Gauge("dial", old.kind(), old.span(), old.grade(), old.step(), old.remarks());
    List<String> gauges = new ArrayList<>();
    for (LogEvent event : RigEdits.withGauge(trip, 0, renamed).log()) {
      gauges.add(
          event instanceof LogEvent.Reading reading
              ? reading.gauge()
              : ((LogEvent.Adjustment) event).gauge());
    }
    assertThat(gauges).containsExactly("dial", "coarse", "dial");
  }

  @Test
  void copyGivesKindDateCodeAndTreadButNoLeakOrDamage() {
    Trip trip = two();
    Tire from =
        new Tire(
            "T1",
            trip.rig().tires().get(0).type(),
            "1223",
            Entered.of(QuantityKind.TREAD_DEPTH, "6/32 in"),
            1.2,
            psi("2 psi"),
            Set.of(Tire.Damage.BULGE),
            Remarks.NONE);
    Trip edited =
        RigEdits.withTiresOf(
            RigEdits.withTire(trip, from), FIRST::equals, to -> TireFields.ofOnePurchase(from, to));
    Tire mate = edited.rig().tire("T2").orElseThrow();
    assertThat(mate.dateCode()).isEqualTo("1223");
    assertThat(mate.tread()).isEqualTo(from.tread());
    assertThat(mate.lossPerDay()).isEqualTo(psi("0 psi"));
    assertThat(mate.damage()).isEmpty();
    assertThat(mate.heatFactor()).isEqualTo(1);
    assertThat(edited.rig().tire("T1")).contains(from);
    assertThat(edited.rig().tire("T3")).isEqualTo(trip.rig().tire("T3"));
  }

  @Test
  void aTicketComesBlankAndGoesWithItsWeights() {
    Trip trip = two();
    Trip more = RigEdits.withNewTicket(trip);
    assertThat(more.rig().tickets()).hasSize(trip.rig().tickets().size() + 1);
    assertThat(RigEdits.ticketOf(more.rig(), FIRST))
        .isEqualTo(RigEdits.ticketOf(trip.rig(), FIRST));
    RigParts.Changed gone = RigEdits.withoutTicket(trip, 0);
    assertThat(gone.lost()).containsExactly("2 weights");
    assertThat(RigEdits.ticketOf(gone.trip().rig(), FIRST)).isEmpty();
    assertThat(RigEdits.withoutTicket(more, 1).lost()).isEmpty();
  }

  @Test
  void weightsOfAxlesGoOnATicketWithoutDateWeighedHitched() {
    Trip trip = trip(RigBuilder.trailer().axles(2).weighed(null));
    Trip one = RigEdits.withAxleWeight(trip, FIRST, mass("5000 lb"));
    Trip both = RigEdits.withAxleWeight(one, SECOND, mass("5200 lb"));
    assertThat(both.rig().tickets()).hasSize(1);
    ScaleTicket ticket = both.rig().tickets().get(0);
    assertThat(ticket.date()).isNull();
    assertThat(ticket.hitched()).isTrue();
    assertThat(new Loads(both, null, 0).axle(0, SECOND).kilograms())
        .isEqualTo(mass("5200 lb").value().kilograms());
  }

  @Test
  void theLastTicketThatWeighedAnAxleSpeaksForIt() {
    Trip trip = two();
    List<ScaleTicket> tickets = new ArrayList<>(trip.rig().tickets());
    tickets.add(
        new ScaleTicket(
            null,
            true,
            null,
            List.of(),
            List.of(
                new ScaleTicket.WheelWeight(FIRST, true, mass("2500 lb")),
                new ScaleTicket.WheelWeight(FIRST, false, mass("2500 lb")),
                new ScaleTicket.WheelWeight(SECOND, false, mass("2500 lb"))),
            Remarks.NONE));
    Rig rig = trip.rig();
    Rig weighed =
        new Rig(
            rig.name(),
            rig.vehicles(),
            rig.tireTypes(),
            rig.tires(),
            rig.spares(),
            rig.gauges(),
            null,
            null,
            tickets,
            Remarks.NONE);
    assertThat(RigEdits.ticketOf(weighed, FIRST)).isEqualTo(OptionalInt.of(1));
    assertThat(RigEdits.ticketOf(weighed, SECOND)).isEqualTo(OptionalInt.of(0));
    // one side alone is no weight of the axle: loads agree
    Loads loads = new Loads(trip.withRig(weighed), null, 0);
    assertThat(loads.axle(0, FIRST).basis()).isEqualTo(Loads.Basis.WHEEL);
    assertThat(loads.axle(0, SECOND).basis()).isEqualTo(Loads.Basis.AXLE);
  }

  @Test
  void aNewDawnReadingIsNotedOnARoundInWalkingOrderHalfAnHourBeforeLeaving() {
    Trip trip = DawnReadings.with(two(), "T3", psi("64 psi"));
    trip = DawnReadings.with(trip, "T1", psi("66 psi"));
    assertThat(trip.log())
        .extracting(event -> ((LogEvent.Reading) event).tire())
        .containsExactly("T1", "T3");
    LogEvent.Reading third = DawnReadings.of(trip, "T3").orElseThrow();
    assertThat(third.time().instant()).isEqualTo("2027-06-01T05:32:00Z");
    assertThat(third.gauge()).isEqualTo("hand");
    assertThat(third.state()).isEqualTo(ReadingState.COLD);
    assertThat(third.pressure().text()).isEqualTo("64 psi");
    assertThat(DawnReadings.of(trip, "T2")).isEmpty();
  }

  @Test
  void aDawnReadingInTheLogKeepsItsTimeAndGauge() {
    Trip trip =
        Trips.of(RigBuilder.trailer())
            .stop(stop("a").leaves("2027-06-01T06:00Z"))
            .stop(stop("b"))
            .read("2027-05-30T06:00Z", "T1", "70 psi")
            .read("2027-06-01T05:05Z", "T1", "60 psi", "coarse", ReadingState.COLD)
            .read("2027-06-01T05:50Z", "T1", "61 psi", "hand", ReadingState.WARM)
            .read("2027-06-01T12:00Z", "T1", "75 psi")
            .trip();
    Trip edited = DawnReadings.with(trip, "T1", psi("62 psi"));
    assertThat(edited.log()).hasSize(4);
    LogEvent.Reading dawn = DawnReadings.of(edited, "T1").orElseThrow();
    assertThat(dawn.time()).isEqualTo(trip.log().get(1).time());
    assertThat(dawn.gauge()).isEqualTo("coarse");
    assertThat(dawn.pressure().text()).isEqualTo("62 psi");
    assertThat(edited.log().get(0)).isEqualTo(trip.log().get(0));
    Trip emptied = DawnReadings.with(edited, "T1", null);
    assertThat(emptied.log()).hasSize(3);
    assertThat(DawnReadings.of(emptied, "T1")).isEmpty(); // two days before is none of this dawn
  }

  @Test
  void whatWasEditedCanBeSavedAndOpenedAgain() {
    Trip trip =
        Trips.of(RigBuilder.trailer().axles(2))
            .stop(stop("a").leaves("2027-11-07T01:20-07:00[America/Denver]")) // clocks go back
            .stop(stop("b"))
            .trip();
    trip = DawnReadings.with(trip, "T2", psi("64.5 psi"));
    assertThat(trip.log().get(0).time().text())
        .isEqualTo("2027-11-07T01:51-06:00[America/Denver]"); // 29 min before, on summer time
    trip = RigEdits.withoutTicket(trip, 0).trip();
    trip = RigEdits.withAxleWeight(trip, SECOND, mass("2500 kg"));
    trip = RigEdits.withVehicle(trip, 0, named(trip.rig().vehicles().get(0), "stock trailer"));
    Outcome<Trip> opened = TripFile.parse(TripFile.text(trip));
    assertThat(opened.problems()).isEmpty();
    assertThat(opened.value()).contains(trip);
  }

  @Test
  void withoutDepartureThereIsNoDawn() {
    Trip trip = Trips.of(RigBuilder.trailer()).stop(stop("a")).stop(stop("b")).trip();
    assertThat(DawnReadings.canNote(trip)).isFalse();
    assertThat(DawnReadings.said(trip, "T1")).isEqualTo("needs a departure");
    assertThatIllegalStateException()
        .isThrownBy(() -> DawnReadings.with(trip, "T1", psi("60 psi")));
  }

  @Test
  void airSetAfterTheDawnReadingIsSaid() {
    Trip trip =
        Trips.of(RigBuilder.trailer())
            .stop(stop("a").leaves("2027-06-01T06:00Z"))
            .stop(stop("b"))
            .read("2027-06-01T05:05Z", "T1", "60 psi")
            .adjust("2027-06-01T05:20Z", "T1", "65 psi")
            .adjust("2027-06-01T09:00Z", "T1", "70 psi")
            .trip();
    assertThat(DawnReadings.said(trip, "T1")).isEqualTo("05:05, hand, then set to 65 psi");
  }
}

package dawngauge.fitness;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dawngauge.explain.Authority;
import dawngauge.quantity.GaugePressure;
import dawngauge.quantity.Unit;
import dawngauge.quantity.UnitSystem;
import dawngauge.trip.Remarks;
import dawngauge.trip.Rig;
import dawngauge.trip.Route;
import dawngauge.trip.Trip;
import java.util.Comparator;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** How findings are put together and said. */
class GatheredDefectsTest {

  /** Many faults at once, so that most families of findings are said. */
  private static final String[] MANY = {
    "rig/tires/S1/dateCode='489'",
    "rig/tires/T4/dateCode='1016'",
    "rig/tires/T3/damage=['cord showing']",
    "rig/tires/P1/tread='3 mm'",
    "rig/tires/P6/dateCode=",
    "rig/tires/T1/type='other'",
    "rig/tireTypes/other/loadRange='D'",
    "rig/vehicles/pickup/axles/1/gawr='12000 lb'",
    "rig/vehicles/trailer/axles/1/gawr='5000 lb'",
    "rig/vehicles/trailer/gvwr='12000 lb'",
    "rig/vehicles/trailer/axles/0/label=[{'size':'ST225/75R15','coldPressure':'65 psi'}]",
    "rig/vehicles/trailer/axles/0/wheelMaxPressure=",
    "rig/spares/S2/wheelMaxLoad='2000 lb'",
    "route/stops/b/leg/topSpeed='70 mph'",
    "log/6/pressure='60 psi'",
    "log/3/pressure='55 psi'"
  };

  @Test
  void worstFirstThenAlongTheRig() {
    List<Defect> defects = SoundRig.check(SoundRig.with(MANY));
    assertThat(defects).isSortedAccordingTo(Comparator.comparing(Defect::severity));
    List<String> stops =
        defects.stream()
            .filter(defect -> defect.severity() == Severity.STOP)
            .map(Defect::where)
            .toList();
    assertThat(stops)
        .containsExactly(
            "pickup axle 1 left",
            "trailer",
            "trailer axle 2",
            "trailer axle 2 left",
            "trailer axle 2 right");
  }

  @Test
  void figuresFollowTheReadersUnits() {
    for (Defect defect : SoundRig.check(SoundRig.with(MANY))) {
      String si = defect.what().in(UnitSystem.SI) + defect.toDo().in(UnitSystem.SI);
      String us = defect.what().in(UnitSystem.US) + defect.toDo().in(UnitSystem.US);
      assertThat(si).as(defect.code().name()).doesNotContain(" psi", " lb", " mph", "{");
      assertThat(us).as(defect.code().name()).doesNotContain(" bar", " kg", " km/h", "{");
      assertThat(defect.toDo().in(UnitSystem.US)).isNotBlank();
      assertThat(defect.authority().text()).isNotBlank();
    }
  }

  @Test
  void weightIsJudgedAfterTheStopWhereItIsMost() {
    Trip trip =
        SoundRig.with(
            "route/stops/b/loadChanges=[{'what':'ewes','weight':'1500 lb','source':'weighed',"
                + "'axles':{'trailer 1':'100 %'}}]");
    assertThat(SoundRig.check(trip))
        .filteredOn(defect -> defect.code() == FindingKind.AXLE_OVER_GAWR)
        .singleElement()
        .satisfies(
            defect ->
                assertThat(defect.what().in(UnitSystem.US))
                    .isEqualTo(
                        "carries 7300 lb on leaving Walsenburg CO, more than its GAWR of 7000 lb"));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        // Set down where the trip ends: it never rolls so.
        "route/stops/c/loadChanges=[{'what':'ewes','weight':'1500 lb','source':'weighed',"
            + "'axles':{'trailer 1':'100 %'}}]",
        // Only offered.
        "route/stops/b/loadChanges=[{'what':'ewes','weight':'1500 lb','source':'weighed',"
            + "'axles':{'trailer 1':'100 %'},'offered':true}]"
      })
  void loadThatIsNotDrivenIsNotJudged(String change) {
    assertThat(SoundRig.check(SoundRig.with(change))).isEmpty();
  }

  @Test
  void sidesThatMayBeUnevenDoNotSayDoNotGo() {
    // 6,900 lb on two tires of 3,520: even, each has 3,450; at worst, 52.5 %, 3,622.
    Trip trip =
        SoundRig.with(
            "rig/tickets/0/wheels=[]",
            "rig/tickets/0/platforms/+={'axles':['trailer 1'],'weight':'6900 lb'}",
            "rig/tickets/0/platforms/+={'axles':['trailer 2'],'weight':'5000 lb'}");
    List<Defect> defects = SoundRig.check(trip);
    assertThat(defects).noneMatch(defect -> defect.code() == FindingKind.TIRE_OVERLOADED);
    assertThat(defects)
        .filteredOn(defect -> defect.code() == FindingKind.NOTHING_TO_SPARE)
        .singleElement()
        .satisfies(
            defect -> {
              assertThat(defect.severity()).isEqualTo(Severity.KNOW);
              assertThat(defect.toDo().in(UnitSystem.US)).contains("weigh each wheel");
            });
  }

  @Test
  void axlesWeighedTogetherNearTheirRatingAreToBeWeighedApart() {
    Trip trip =
        SoundRig.with(
            "rig/tickets/0/wheels=[]",
            "rig/tickets/0/platforms/+={'axles':['trailer 1','trailer 2'],'weight':'12000 lb'}",
            "rig/vehicles/trailer/axles/0/gawr='6500 lb'");
    assertThat(SoundRig.check(trip))
        .filteredOn(defect -> defect.code() == FindingKind.GROUP_NEAR_GAWR)
        .singleElement()
        .satisfies(
            defect -> {
              assertThat(defect.where()).isEqualTo("trailer axle 1");
              assertThat(defect.what().in(UnitSystem.US)).contains("6000 lb", "6600 lb", "6500 lb");
              assertThat(defect.authority().kind()).isEqualTo(Authority.Kind.INFERRED);
            });
  }

  @Test
  void assumedTopSpeedSaysSo() {
    // An average of 58 mph is taken to be driven at 68.
    Trip trip = SoundRig.with("route/stops/b/leg={'distance':'60 mi','averageSpeed':'58 mph'}");
    assertThat(SoundRig.check(trip))
        .extracting(Defect::code)
        .containsExactly(FindingKind.TRAILER_TIRE_SPEED, FindingKind.TRAILER_TIRE_SPEED);
    assertThat(SoundRig.check(trip).get(0).what().in(UnitSystem.US))
        .contains("Walsenburg CO to Raton NM", "68 mph (assumed; type the leg's top speed)");
    // 65 mph is 104.6 km/h; rounded to 105 it would be more than the rule allows.
    assertThat(SoundRig.check(trip).get(0).toDo().in(UnitSystem.SI)).contains("105 km/h");
  }

  @Test
  void bareRigSaysWhatIsMissing() {
    String axle = "{'dual':false,'tires':{'left':'A','right':'B'}}";
    Trip trip =
        SoundRig.with(
            "rig={'name':'bare','vehicles':[{'name':'trailer','letter':'t','kind':'trailer',"
                + "'axles':["
                + axle
                + "]}],'tireTypes':[{'name':'ST','size':'ST235/80R16'}],"
                + "'tires':[{'id':'A','type':'ST'},{'id':'B','type':'ST'}]}",
            "log=[]");
    List<String> said =
        SoundRig.check(trip).stream()
            .map(defect -> defect.severity() + " " + defect.code() + " " + defect.where())
            .toList();
    assertThat(said)
        .containsExactly(
            "KNOW NO_GVWR trailer",
            "KNOW NO_SPARE trailer",
            "KNOW NO_GAWR trailer axle 1",
            "KNOW NOT_WEIGHED trailer axle 1",
            "KNOW NO_LABEL trailer axle 1",
            "KNOW RATING_UNKNOWN trailer axle 1 left and right", // pressure
            "KNOW RATING_UNKNOWN trailer axle 1 left and right", // load
            "KNOW NO_DATE_CODE trailer axle 1 left and right",
            "KNOW NO_TREAD trailer axle 1 left and right");
  }

  @Test
  void rigWithoutRouteIsChecked() {
    Trip sound = SoundRig.with();
    Trip parked = sound.withRoute(new Route(List.of(), List.of()));
    assertThat(SoundRig.check(parked))
        .extracting(Defect::code)
        .containsExactly(FindingKind.NO_TRIP_DATE);
    Rig none =
        new Rig(
            "none",
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            null,
            null,
            List.of(),
            Remarks.NONE);
    assertThat(SoundRig.check(sound.withRig(none).withLog(List.of()))).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(doubles = {-0.01, 1.01, Double.NaN})
  void reserveIsAPart(double reserve) {
    assertThatThrownBy(() -> new FitnessCheck.Options(reserve, 0.9, GaugePressure.of(5, Unit.PSI)))
        .isInstanceOf(IllegalArgumentException.class);
  }
}

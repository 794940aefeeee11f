package dawngauge.fitness;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** A sound rig gives no finding; each fault planted in it gives its own finding and no other. */
class OneFaultEachTest {

  private static final String PICKUP_FRONT = "rig/vehicles/pickup/axles/0/";
  private static final String PICKUP_REAR = "rig/vehicles/pickup/axles/1/";
  private static final String TRAILER_FRONT = "rig/vehicles/trailer/axles/0/";
  private static final String TRAILER_REAR = "rig/vehicles/trailer/axles/1/";
  private static final String LT_TYPE = "rig/tireTypes/LT/";
  private static final String OTHER_TYPE = "rig/tireTypes/other/";
  private static final String WEIGHTS = "rig/tickets/0/wheels/";
  private static final String OTHER_ON_T1 = "rig/tires/T1/type='other'";

  private static final List<String> ROWS =
      List.of(
          LT_TYPE
              + "rows=[{'pressure':'45 psi','single':'2140 lb','dual':'1945 lb'},"
              + "{'pressure':'60 psi','single':'2610 lb','dual':'2375 lb'},"
              + "{'pressure':'80 psi','single':'3195 lb','dual':'2910 lb'}]");

  @Test
  void soundRigGivesNoFinding() {
    assertThat(SoundRig.check(SoundRig.with())).isEmpty();
  }

  @ParameterizedTest(name = "{2}")
  @MethodSource({"ratings", "weights", "ages", "treads", "speeds", "axles", "pressures", "spares"})
  void faultGivesItsFindingAndNoOther(
      List<String> before, List<String> fault, List<String> expected) {
    List<String> all = new ArrayList<>(before);
    all.addAll(fault);
    List<String> without = said(before);
    List<String> with = said(all);
    assertThat(with).containsAll(without);
    with.removeAll(without);
    assertThat(with).containsExactlyElementsOf(expected);
  }

  private static List<String> said(List<String> changes) {
    List<String> said = new ArrayList<>();
    for (Defect defect : SoundRig.check(SoundRig.with(changes.toArray(new String[0])))) {
      said.add(defect.severity() + " " + defect.code() + " " + defect.where());
    }
    return said;
  }

  private static Arguments fault(String change, String... expected) {
    return arguments(List.of(), List.of(change), List.of(expected));
  }

  private static Arguments faults(List<String> changes, String... expected) {
    return arguments(List.of(), changes, List.of(expected));
  }

  private static Arguments after(List<String> before, String change, String... expected) {
    return arguments(before, List.of(change), List.of(expected));
  }

  static Stream<Arguments> ratings() {
    return Stream.of(
        fault(TRAILER_FRONT + "gawr='7100 lb'", "MEND RATINGS_BELOW_GAWR trailer axle 1"),
        // Four at the dual rating carry 11,640 lb; at the single one it would be 12,780.
        fault(PICKUP_REAR + "gawr='11700 lb'", "MEND RATINGS_BELOW_GAWR pickup axle 2"),
        fault(
            LT_TYPE + "ratedLoadDual=",
            "KNOW RATING_ASSUMED pickup axle 2 left outer, left inner, right inner and right outer",
            "KNOW RATING_ASSUMED spare S1"),
        after(
            List.of(OTHER_ON_T1),
            OTHER_TYPE + "ratedPressure=",
            "KNOW RATING_UNKNOWN trailer axle 1 left"),
        fault(TRAILER_FRONT + "tires/left=", "KNOW NO_TIRE trailer axle 1 left"),
        fault(TRAILER_FRONT + "gawr=", "KNOW NO_GAWR trailer axle 1"));
  }

  static Stream<Arguments> weights() {
    return Stream.of(
        fault(TRAILER_FRONT + "gawr='5700 lb'", "STOP AXLE_OVER_GAWR trailer axle 1"),
        // 11,600 lb on the axles and 2,800 lb on the hitch.
        fault("rig/vehicles/trailer/gvwr='14300 lb'", "STOP VEHICLE_OVER_GVWR trailer"),
        // The pickup's axles already hold the hitch load.
        fault("rig/vehicles/pickup/gvwr='11300 lb'", "STOP VEHICLE_OVER_GVWR pickup"),
        fault("rig/vehicles/pickup/gvwr=", "KNOW NO_GVWR pickup"),
        fault("rig/hitch/load=", "KNOW HITCH_LOAD_UNKNOWN trailer"),
        // 14,400 lb and, from the second stop on, 700 lb more, all on the hitch.
        after(
            List.of("rig/vehicles/trailer/gvwr='15000 lb'"),
            "route/stops/b/loadChanges=[{'what':'feed','weight':'700 lb','source':'weighed',"
                + "'axles':{'trailer 1':'0 %'},'hitch':'100 %'}]",
            "STOP VEHICLE_OVER_GVWR trailer"),
        fault("rig/tickets/0/platforms/0=", "KNOW NOT_WEIGHED pickup axle 1"),
        faults(List.of(WEIGHTS + "2=", WEIGHTS + "2="), "KNOW NOT_WEIGHED trailer axle 2"),
        faults(
            List.of(WEIGHTS + "0/weight='3050 lb'", WEIGHTS + "1/weight='2700 lb'"),
            "KNOW UNEVEN_SIDES trailer axle 1"),
        // 52.45 to 47.55, left above the 3,520 lb of the tire.
        arguments(
            List.of("rig/spares/S2/serves=['trailer 2']"),
            List.of(WEIGHTS + "0/weight='3530 lb'", WEIGHTS + "1/weight='3200 lb'"),
            List.of(
                "STOP TIRE_OVERLOADED trailer axle 1 left",
                "KNOW NOTHING_TO_SPARE trailer axle 1")), // 6,730 of 7,000 lb
        fault(
            TRAILER_FRONT + "wheelMaxLoad='2850 lb'",
            "STOP WHEEL_OVERLOADED trailer axle 1 left and right"),
        // Not weighed: half of the GAWR is 2,600 lb, 79 % of that 2,047 lb.
        after(
            List.of("rig/tickets/0/platforms/0="),
            PICKUP_FRONT + "wheelMaxLoad='2500 lb'",
            "KNOW WHEEL_OVERLOADED pickup axle 1 left and right"),
        // Even, each wheel has 2,200 lb; at worst, 52.5 %, 2,310.
        fault(
            PICKUP_FRONT + "wheelMaxLoad='2250 lb'",
            "KNOW WHEEL_OVERLOADED pickup axle 1 left and right"),
        // At its 75 psi the label certifies 3,500 lb: 9.7 % over 3,190 lb.
        after(
            List.of(TRAILER_FRONT + "label=[{'size':'ST235/80R16','coldPressure':'75 psi'}]"),
            WEIGHTS + "0/weight='3190 lb'",
            "KNOW RESERVE_SMALL trailer axle 1 left"),
        // 3,520 over 3,250 lb leaves 8 %.
        faults(
            List.of(WEIGHTS + "0/weight='3250 lb'", WEIGHTS + "1/weight='3050 lb'"),
            "KNOW RESERVE_SMALL trailer axle 1 left"));
  }

  static Stream<Arguments> ages() {
    return Stream.of(
        fault("rig/tires/T1/dateCode='1022'", "KNOW OLD_TIRE trailer axle 1 left"),
        fault("rig/tires/T1/dateCode='1021'", "MEND OLD_TIRE trailer axle 1 left"),
        fault("rig/tires/T1/dateCode='1017'", "STOP OLD_TIRE trailer axle 1 left"),
        fault("rig/tires/P1/dateCode='1021'", "KNOW OLD_TIRE pickup axle 1 left"),
        fault("rig/tires/P1/dateCode='1017'", "MEND OLD_TIRE pickup axle 1 left"),
        fault("rig/tires/P1/dateCode='489'", "STOP OLD_TIRE pickup axle 1 left"),
        fault("rig/tires/S2/dateCode='489'", "MEND OLD_TIRE spare S2"),
        fault("rig/tires/T1/dateCode='9924'", "MEND DATE_CODE_UNREADABLE trailer axle 1 left"),
        fault("rig/tires/T1/dateCode='3027'", "MEND DATE_CODE_UNREADABLE trailer axle 1 left"),
        fault("rig/tires/T1/dateCode=", "KNOW NO_DATE_CODE trailer axle 1 left"),
        faults(
            List.of("rig/tires/T3/dateCode=", "rig/tires/T4/dateCode="),
            "KNOW NO_DATE_CODE trailer axle 2 left and right"),
        faults(List.of("route/stops/a/leave=", "route/stops/b/leave="), "KNOW NO_TRIP_DATE trip"));
  }

  static Stream<Arguments> treads() {
    return Stream.of(
        fault("rig/tires/P1/tread='3/32 in'", "STOP TREAD_BELOW_LEGAL pickup axle 1 left"),
        fault("rig/tires/P3/tread='3/32 in'"),
        fault("rig/tires/P3/tread='1/32 in'", "STOP TREAD_BELOW_LEGAL pickup axle 2 left outer"),
        fault("rig/tires/T1/tread='1.5 mm'", "STOP TREAD_BELOW_LEGAL trailer axle 1 left"),
        fault("rig/tires/T1/tread='3/32 in'", "MEND TREAD_LOW trailer axle 1 left"),
        fault("rig/tires/S2/tread='1/32 in'", "MEND TREAD_BELOW_LEGAL spare S2"),
        fault("rig/tires/T1/tread=", "KNOW NO_TREAD trailer axle 1 left"),
        fault(
            "rig/tires/T4/damage=['cord showing','bulge or separation']",
            "STOP DAMAGE trailer axle 2 right"),
        fault("rig/tires/S1/damage=['flat']", "MEND DAMAGE spare S1"),
        fault(
            "rig/tires/T4/damage=['plugged, not patched']",
            "MEND POOR_REPAIR trailer axle 2 right"));
  }

  static Stream<Arguments> speeds() {
    String top = "route/stops/b/leg/topSpeed=";
    return Stream.of(
        fault(
            LT_TYPE + "speedSymbol='G'",
            "STOP TOO_FAST pickup axle 1 left and right",
            "STOP TOO_FAST pickup axle 2 left outer, left inner, right inner and right outer"),
        after(
            List.of(OTHER_ON_T1),
            OTHER_TYPE + "speedSymbol='Ö'",
            "KNOW SPEED_SYMBOL_UNKNOWN trailer axle 1 left"),
        fault(
            top + "'70 mph'",
            "MEND TRAILER_TIRE_SPEED trailer axle 1 left and right",
            "MEND TRAILER_TIRE_SPEED trailer axle 2 left and right"),
        fault(
            top + "'90 mph'",
            "STOP TOO_FAST trailer axle 1 left and right",
            "STOP TOO_FAST trailer axle 2 left and right"),
        faults(List.of("route/stops/b/leg={}"), "KNOW SPEED_UNKNOWN trip"));
  }

  static Stream<Arguments> axles() {
    List<String> twoSizes =
        List.of(
            PICKUP_REAR
                + "label=[{'size':'LT235/80R17','coldPressure':'65 psi'},"
                + "{'size':'LT245/75R17','coldPressure':'65 psi'},"
                + "{'size':'LT225/80R17','coldPressure':'65 psi'}]",
            "rig/tires/P3/type='other'",
            OTHER_TYPE + "class='light truck'",
            OTHER_TYPE + "size='LT245/75R17'",
            OTHER_TYPE + "ratedLoadDual='2910 lb'",
            OTHER_TYPE + "ratedLoadSingle='3195 lb'");
    return Stream.of(
        after(
            List.of(OTHER_ON_T1), OTHER_TYPE + "loadRange='G'", "MEND MIXED_TIRES trailer axle 1"),
        after(
            List.of(OTHER_ON_T1),
            OTHER_TYPE + "construction='bias'",
            "STOP MIXED_TIRES trailer axle 1"),
        after(
            List.of(OTHER_ON_T1),
            OTHER_TYPE + "class='commercial'",
            "MEND MIXED_TIRES trailer axle 1"),
        // Letters behind the same size make no other size.
        after(
            List.of(
                OTHER_ON_T1,
                TRAILER_FRONT + "label/+={'size':'ST235/80R16 E','coldPressure':'80 psi'}"),
            OTHER_TYPE + "size='ST235/80R16 E'"),
        arguments(List.of(), twoSizes, List.of("STOP MIXED_TIRES pickup axle 2")),
        // By their sizes 8.5 mm, then 16 mm under the mate's 807.8; half an inch is 12.7.
        after(
            twoSizes,
            OTHER_TYPE + "size='LT225/80R17'",
            "MEND DUAL_DIAMETERS pickup axle 2 left inner"));
  }

  static Stream<Arguments> pressures() {
    List<String> otherLabel =
        List.of(TRAILER_REAR + "label=[{'size':'ST225/75R15','coldPressure':'80 psi'}]");
    return Stream.of(
        faults(otherLabel, "KNOW LABEL_OF_OTHER_TIRE trailer axle 2 left and right"),
        after(
            otherLabel,
            TRAILER_REAR + "valveMaxPressure=",
            "MEND RIM_LIMIT_UNKNOWN trailer axle 2 left and right"),
        fault(TRAILER_REAR + "label=[]", "KNOW NO_LABEL trailer axle 2"),
        fault(
            PICKUP_FRONT + "valveMaxPressure='69.7 psi'",
            "MEND PRESSURE_ABOVE_LIMIT pickup axle 1 left and right"),
        fault(
            PICKUP_FRONT + "target='65 psi'", "MEND TARGET_NOT_USED pickup axle 1 left and right"),
        after(ROWS, PICKUP_FRONT + "target='60 psi'"),
        // 56 is 80 % of the label; 2,200 lb and a tenth is 2,420 lb, by the rows under that.
        after(ROWS, PICKUP_FRONT + "target='56 psi'"),
        after(
            ROWS,
            PICKUP_FRONT + "target='55 psi'",
            "MEND TARGET_NOT_USED pickup axle 1 left and right"),
        fault("log/6/pressure='81 psi'"), // no more than its gauge may err by
        fault("log/6/pressure='84 psi'", "MEND READING_HIGH trailer axle 1 left"),
        fault("log/6/pressure='80.5 psi'"),
        // 2,900 lb on a line of 3,520 lb at 80 psi needs 65.9 psi; 64 is 80 % of the label.
        fault("log/6/pressure='65 psi'", "MEND READING_LOW trailer axle 1 left"),
        fault("log/6/pressure='64 psi'", "STOP READING_LOW trailer axle 1 left"),
        fault("log/6/gauge='sealed'", "KNOW READING_NOT_JUDGED trailer axle 1 left"),
        faults(List.of("log/6/pressure='64 psi'", "log/6/state='warm'")),
        faults(
            List.of(
                "log/6/pressure='64 psi'",
                "log/+={'type':'adjustment','time':'2027-04-13T05:30-06:00[America/Denver]',"
                    + "'tire':'T1','to':'80 psi','gauge':'cab'}")),
        fault("log/3/pressure='59 psi'", "MEND DUAL_PRESSURES pickup axle 2 left inner"),
        fault("log/3/pressure='60 psi'"));
  }

  static Stream<Arguments> spares() {
    return Stream.of(
        fault("rig/spares/S2=", "KNOW NO_SPARE trailer"),
        fault("rig/spares/S2/serves=[]"),
        fault(
            "rig/spares/S2/serves=['pickup 1','trailer 1','trailer 2']",
            "MEND SPARE_SIZE spare S2"),
        after(
            List.of("rig/tires/S2/type='other'"), OTHER_TYPE + "size=", "KNOW SPARE_SIZE spare S2"),
        fault("rig/spares/S2/wheelMaxLoad='2900 lb'", "MEND SPARE_LOAD spare S2"),
        after(
            List.of("log/S1/pressure='69 psi'"),
            "rig/spares/S1/wheelMaxPressure='69 psi'",
            "MEND SPARE_PRESSURE spare S1"),
        fault("rig/spares/S1/wheelMaxLoad=", "KNOW SPARE_WHEEL_UNKNOWN spare S1"),
        fault("log/S2=", "KNOW SPARE_NOT_GAUGED spare S2"),
        fault("log/S2/pressure='65 psi'", "MEND READING_LOW spare S2"));
  }
}

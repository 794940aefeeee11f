package dawngauge.fitness;

import static org.assertj.core.api.Assertions.assertThat;

import dawngauge.quantity.UnitSystem;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Findings against the figures of the published rules. */
class PublishedRulesTest {

  private static List<Defect> found(FindingKind code, String... changes) {
    return SoundRig.check(SoundRig.with(changes)).stream()
        .filter(defect -> defect.code() == code)
        .toList();
  }

  /**
   * 49 CFR 571.110 S4.2.2.1 and S4.2.2.2, 571.120 S5.1.2. Load index 112 is 1120 kg (ISO 4000-1):
   * two tires 2240 kg, divided by 1.10 2036.4 kg. A kilogram is left to rounding.
   */
  @ParameterizedTest
  @CsvSource({
    "truck, passenger, 2036 kg, false",
    "truck, passenger, 2039 kg, true",
    "trailer, passenger, 2039 kg, true",
    "car, passenger, 2239 kg, false",
    "car, passenger, 2242 kg, true",
    "truck, light truck, 2239 kg, false",
    "truck, light truck, 2242 kg, true"
  })
  void sumOfRatingsAgainstGawr(String vehicle, String tireClass, String gawr, boolean less) {
    List<Defect> found =
        found(
            FindingKind.RATINGS_BELOW_GAWR,
            "rig/vehicles/pickup/kind='" + vehicle + "'",
            "rig/vehicles/pickup/axles/0/gawr='" + gawr + "'",
            "rig/vehicles/pickup/axles/0/tires/left='X1'",
            "rig/vehicles/pickup/axles/0/tires/right='X2'",
            "rig/tires/+={'id':'X1','type':'X'}",
            "rig/tires/+={'id':'X2','type':'X'}",
            "rig/tireTypes/+={'name':'X','size':'245/75R17','class':'"
                + tireClass
                + "','loadIndexSingle':112,'ratedPressure':'250 kPa'}");
    assertThat(found).hasSize(less ? 1 : 0);
    if (less) {
      boolean divided = tireClass.equals("passenger") && !vehicle.equals("car");
      assertThat(found.get(0).authority().citation().contains("S4.2.2.2")).isEqualTo(divided);
      assertThat(found.get(0).what().in(UnitSystem.SI)).contains(divided ? "2036 kg" : "2240 kg");
    }
  }

  /**
   * 49 CFR 574.5: week 01 is the first full week, Sunday to Saturday; 0109 is the regulation's own
   * example, 4 to 10 January 2009. 2012, 2017 and 2023 have 53 such weeks.
   */
  @ParameterizedTest
  @CsvSource({
    "0109, 2009-01-04, 18 years and 3 months",
    "5312, 2012-12-30, 14 years and 3 months",
    "5317, 2017-12-31, 9 years and 3 months",
    // The trip ends on 14 April 2027, a Wednesday.
    "1522, 2022-04-10, 5 years and 0 months",
    "1521, 2021-04-11, 6 years and 0 months"
  })
  void ageCountsFromTheWeekOfTheDateCode(String code, String week, String age) {
    List<Defect> found = found(FindingKind.OLD_TIRE, "rig/tires/T1/dateCode='" + code + "'");
    assertThat(found).hasSize(1);
    assertThat(found.get(0).what().in(UnitSystem.US))
        .contains("week from " + week)
        .contains(age + " old on 2027-04-14");
  }

  /** Youngest week that is not yet five years old on the trip's last day. */
  @ParameterizedTest
  @CsvSource({"1622", "5223"})
  void trailerTireUnderFiveYearsIsNoFinding(String code) {
    assertThat(found(FindingKind.OLD_TIRE, "rig/tires/T1/dateCode='" + code + "'")).isEmpty();
  }

  /** 49 CFR 393.75(b): 4/32 in on front wheels of trucks; (c): 2/32 in on all others. */
  @ParameterizedTest
  @CsvSource({
    "P1, 4/32 in, false",
    "P1, 3.9/32 in, true",
    "P3, 2/32 in, false",
    "P3, 1.9/32 in, true",
    "T1, 2/32 in, false",
    "T1, 1.9/32 in, true"
  })
  void legalTread(String tire, String tread, boolean unlawful) {
    assertThat(found(FindingKind.TREAD_BELOW_LEGAL, "rig/tires/" + tire + "/tread='" + tread + "'"))
        .hasSize(unlawful ? 1 : 0);
  }

  /**
   * Special trailer tires without a symbol (Tire and Rim Association, as reproduced): nothing up to
   * 65 mph, 10 psi more to 75, also 10 % less load to 85, not above. With 65 psi on the label for a
   * share of 3,000 lb there is room for 10 psi more under the tire's 80, but not for what 2,900 /
   * 0.9 = 3,222 lb would need: 65 + 15·222/520 = 71.4 psi straight from there to 3,520 lb at 80.
   * What is said of the load beside does not belong here.
   */
  @ParameterizedTest
  @CsvSource({
    "65 mph, 65 psi, ",
    "66 mph, 65 psi, KNOW TRAILER_TIRE_SPEED",
    "75 mph, 65 psi, KNOW TRAILER_TIRE_SPEED",
    "75 mph, 71 psi, MEND TRAILER_TIRE_SPEED",
    "76 mph, 65 psi, MEND TRAILER_TIRE_SPEED",
    "85 mph, 65 psi, MEND TRAILER_TIRE_SPEED",
    "86 mph, 65 psi, STOP TOO_FAST"
  })
  void speedOfTrailerTires(String top, String label, String expected) {
    List<String> said = new ArrayList<>();
    for (Defect defect :
        SoundRig.check(
            SoundRig.with(
                "route/stops/b/leg/topSpeed='" + top + "'",
                "rig/vehicles/trailer/axles/0/gawr='6000 lb'",
                "rig/vehicles/trailer/axles/0/label/0/coldPressure='" + label + "'"))) {
      boolean ofSpeed =
          defect.code() == FindingKind.TRAILER_TIRE_SPEED || defect.code() == FindingKind.TOO_FAST;
      if (ofSpeed && defect.where().startsWith("trailer axle 1")) {
        said.add(defect.severity() + " " + defect.code());
      }
    }
    assertThat(said).isEqualTo(expected == null ? List.of() : List.of(expected));
  }

  /** Speed symbols, ISO 4000-1: J 100 km/h, K 110, L 120. */
  @ParameterizedTest
  @CsvSource({"J, 100 km/h, false", "J, 101 km/h, true", "K, 110 km/h, false", "L, 121 km/h, true"})
  void speedSymbol(String symbol, String top, boolean tooFast) {
    List<Defect> found =
        found(
            FindingKind.TOO_FAST,
            "rig/tireTypes/LT/speedSymbol='" + symbol + "'",
            "route/stops/b/leg/topSpeed='" + top + "'");
    assertThat(found).hasSize(tooFast ? 2 : 0); // one an axle
    assertThat(found)
        .allMatch(defect -> defect.what().in(UnitSystem.SI).contains("Walsenburg CO to Raton NM"));
  }

  /** Load ranges, two plies a letter: E is 10, G is 14; common practice, no source. */
  @ParameterizedTest
  @CsvSource({
    "G, G (14 ply rating) and E (10 ply rating)",
    "d, d (8 ply rating) and E (10 ply rating)"
  })
  void loadRangesAreExplainedByPlyRating(String letter, String words) {
    List<Defect> found =
        found(
            FindingKind.MIXED_TIRES,
            "rig/tires/T1/type='other'",
            "rig/tireTypes/other/loadRange='" + letter + "'");
    assertThat(found).hasSize(1);
    assertThat(found.get(0).what().in(UnitSystem.US)).contains(words);
  }
}

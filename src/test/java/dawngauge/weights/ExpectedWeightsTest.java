package dawngauge.weights;

import static dawngauge.weights.Sheets.mass;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dawngauge.quantity.Entered;
import dawngauge.quantity.Mass;
import dawngauge.quantity.QuantityKind;
import dawngauge.quantity.Ratio;
import dawngauge.quantity.Unit;
import dawngauge.quantity.UnitSystem;
import dawngauge.trip.AxleRef;
import dawngauge.trip.RigEdits;
import dawngauge.trip.Trip;
import dawngauge.weights.RatedLoad.Kind;
import dawngauge.weights.RatedLoad.Verdict;
import org.junit.jupiter.api.Test;

/** Expected loads against what they may be, and what one more weighing would settle. */
class ExpectedWeightsTest {

  private static final double RESERVE = 0.1;

  private static double pounds(double kilograms) {
    return new Mass(kilograms).in(Unit.POUND);
  }

  private static ExpectedWeights of(Trip trip) {
    return ExpectedWeights.of(trip, RESERVE);
  }

  private static RatedLoad row(Trip trip, Kind kind, String what) {
    return of(trip).loads().stream()
        .filter(load -> load.kind() == kind && load.what().equals(what))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void everyRatingStandsBesideItsLoad() {
    assertThat(of(Sheets.threeLoads()).loads())
        .extracting(load -> load.what() + ", " + load.ratedBy().in(UnitSystem.US))
        .containsExactly(
            "pickup axle 1, GAWR",
            "each tire of pickup axle 1, set to 60 psi cold",
            "pickup axle 2, GAWR",
            "each tire of pickup axle 2, set to 80 psi cold",
            "pickup, GVWR",
            "trailer axle 1, GAWR",
            "each tire of trailer axle 1, set to 65 psi cold",
            "trailer axle 2, GAWR",
            "each tire of trailer axle 2, set to 65 psi cold",
            "trailer, GVWR",
            "hitch, hitch rating",
            "tow vehicle and trailer, combined rating");
  }

  // Axle 3,890 ± 244 of 4,000 lb: within one and a half of it. Trailer 10,100 of 10,400 lb.
  // Hitch 2,320 ± some 240 of 3,000 lb.
  @Test
  void aLoadNearItsRatingMayBeOver() {
    Trip trip = Sheets.threeLoads();
    assertThat(row(trip, Kind.AXLE, "trailer axle 1").verdict()).isEqualTo(Verdict.IN_DOUBT);
    assertThat(row(trip, Kind.VEHICLE, "trailer").verdict()).isEqualTo(Verdict.IN_DOUBT);
    assertThat(row(trip, Kind.HITCH, "hitch").verdict()).isEqualTo(Verdict.WITHIN);
    assertThat(row(trip, Kind.AXLE, "pickup axle 2").verdict()).isEqualTo(Verdict.WITHIN);
    Trip low = Sheets.with(trip, sheet -> sheet.withHitchRating(mass("2000 lb")));
    assertThat(row(low, Kind.HITCH, "hitch").verdict()).isEqualTo(Verdict.OVER);
    Trip none = Sheets.with(trip, sheet -> sheet.withHitchRating(null));
    assertThat(row(none, Kind.HITCH, "hitch").verdict()).isEqualTo(Verdict.NO_RATING);
    Trip unknown = Sheets.with(trip, sheet -> sheet.withEmptyHitch(null));
    assertThat(row(unknown, Kind.HITCH, "hitch").verdict()).isEqualTo(Verdict.NOT_KNOWN);
  }

  // Trailer tire: half of 3,890 = 1,945 lb; it may carry its rated 2,540 lb at its rated 65 psi.
  // Pickup front tire: label 60 psi is certified for 5,000/2 = 2,500 lb of 3,195 at 80 psi:
  // the chord to the rated pair alone would give 2,396 lb.
  // Spread of a trailer tire: 244.4/2 = 122.2 and 2.5 % of 1,945 = 48.6, together 131.5 lb.
  @Test
  void aTireIsHeldAgainstWhatItCarriesAsItIsSet() {
    Trip trip = Sheets.threeLoads();
    RatedLoad trailer = row(trip, Kind.TIRE, "each tire of trailer axle 1");
    SummedLoad load = trailer.expected().orElseThrow();
    assertThat(pounds(load.kilograms())).isCloseTo(1945, within(0.1));
    assertThat(pounds(load.sigma())).isCloseTo(131.5, within(0.1));
    assertThat(pounds(trailer.rating())).isCloseTo(2540, within(0.1));
    RatedLoad front = row(trip, Kind.TIRE, "each tire of pickup axle 1");
    assertThat(pounds(front.rating())).isCloseTo(2500, within(0.1));
  }

  // 55 : 45 typed: 0.55 · 3,890 = 2,139.5 lb, and no doubt about the sides.
  @Test
  void aTypedShareOfTheSidesIsUsed() {
    Trip trip = Sheets.threeLoads();
    AxleRef ref = new AxleRef("trailer", 1);
    Entered<Ratio> share = Entered.of(QuantityKind.RATIO, "45 %");
    Trip uneven =
        RigEdits.withAxle(trip, ref, trip.rig().axle(ref).orElseThrow().withLeftShare(share));
    SummedLoad load =
        row(uneven, Kind.TIRE, "each tire of trailer axle 1").expected().orElseThrow();
    assertThat(pounds(load.kilograms())).isCloseTo(2139.5, within(0.1));
    assertThat(pounds(load.sigma())).isCloseTo(244.4 * 0.55, within(0.1));
  }

  @Test
  void theWheelsLimitCountsWhereItIsLower() {
    Trip trip = Sheets.threeLoads();
    AxleRef ref = new AxleRef("trailer", 1);
    Trip weak =
        RigEdits.withAxle(
            trip, ref, trip.rig().axle(ref).orElseThrow().withWheelMaxLoad(mass("2000 lb")));
    RatedLoad row = row(weak, Kind.TIRE, "each tire of trailer axle 1");
    assertThat(pounds(row.rating())).isCloseTo(2000, within(0.1));
    assertThat(row.ratedBy().in(UnitSystem.US)).isEqualTo("the wheel's limit");
  }

  // Most in doubt: the trailer's axles, (4,000 − 3,890)/244.4 = 0.45 away (the trailer itself:
  // 300/√(48² + 12² + 288² + 75²) = 300/301.8 = 0.99). By hand what is left of 244.4 once it was
  // weighed. Alone, scale 38.9: √(59,731.9 · 38.9²/(59,731.9 + 38.9²)) = 38.4. Both together, scale
  // 77.8, common half of 87,607.9: √(59,731.9 − 43,803.9²/(87,607.9 + 77.8²)) = 198.1.
  @Test
  void theTicketThatNarrowsTheLargestDoubtIsNamed() {
    Trip trip = Sheets.threeLoads();
    NextWeighing next = of(trip).next().orElseThrow();
    assertThat(next.settles().what()).isEqualTo("trailer axle 1");
    assertThat(next.settles().doubted()).isTrue();
    assertThat(next.weigh()).isEqualTo("trailer axle 1 alone");
    assertThat(pounds(next.sigmaNow())).isCloseTo(244.4, within(0.1));
    assertThat(pounds(next.sigmaThen())).isCloseTo(38.4, within(0.1));
    ExpectedLoads loads = Sheets.loads(trip);
    SummedLoad first = loads.axle(new AxleRef("trailer", 1)).orElseThrow();
    SummedLoad both = first.plus(loads.axle(new AxleRef("trailer", 2)).orElseThrow());
    assertThat(pounds(NextWeighing.sigmaAfter(first, both))).isCloseTo(198.1, within(0.1));
  }

  /** What a ticket of the loaded rig tells is in no doubt any more, and stands beside. */
  @Test
  void whatWasWeighedIsNotNamedAgain() {
    Trip trip = Sheets.threeLoads();
    Trip weighed =
        RigEdits.withAxleWeight(
            RigEdits.withAxleWeight(trip, new AxleRef("trailer", 1), mass("3950 lb")),
            new AxleRef("trailer", 2),
            mass("3870 lb"));
    assertThat(pounds(row(weighed, Kind.AXLE, "trailer axle 1").weighed()))
        .isCloseTo(3950, within(0.1));
    assertThat(of(weighed).next().orElseThrow().settles().what()).isEqualTo("trailer");
    // Its hitch load was not weighed: what the trailer weighs is not known by the tickets.
    assertThat(row(weighed, Kind.VEHICLE, "trailer").weighed()).isNaN();
  }

  @Test
  void withoutAWorksheetNothingIsExpected() {
    Trip trip = Sheets.threeLoads();
    Trip bare = trip.withRig(trip.rig().withWorksheet(null));
    assertThat(of(bare).loads()).allMatch(load -> load.expected().isEmpty());
    assertThat(of(bare).next()).isEmpty();
    assertThat(of(bare).missing()).isNotEmpty();
  }
}

package dawngauge.weights;

import static dawngauge.weights.Sheets.axle;
import static dawngauge.weights.Sheets.length;
import static dawngauge.weights.Sheets.load;
import static dawngauge.weights.Sheets.loads;
import static dawngauge.weights.Sheets.mass;
import static dawngauge.weights.Sheets.platform;
import static dawngauge.weights.Sheets.ticket;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dawngauge.quantity.Mass;
import dawngauge.quantity.Unit;
import dawngauge.trip.AxleRef;
import dawngauge.trip.DeckLoad;
import dawngauge.trip.Hitch;
import dawngauge.trip.Rig;
import dawngauge.trip.Trip;
import dawngauge.trip.Vehicle;
import dawngauge.trip.Worksheet;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Random;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/** Expected loads are those of the levers. */
class ExpectedLoadsTest {

  private static final Offset<Double> TENTH = within(0.1);
  private static final Offset<Double> TINY = within(1e-6);

  private static double pounds(double kilograms) {
    return new Mass(kilograms).in(Unit.POUND);
  }

  private static double pounds(Optional<SummedLoad> load) {
    return pounds(load.orElseThrow().kilograms());
  }

  // By hand, in lb and ft. Empty and hitched: 4,500 and 4,100 on the pickup, 4,800 on the trailer's
  // two axles, 1,200 on the hitch. Axles 20 behind the hitch. Lever 0.96 of a wheelbase of 12.5:
  // the
  // rear axle is 0.04 · 12.5 = 0.5 behind the hitch.
  // 20 ewes of 180 = 3,600 at 16: axles 3,600 · 16/20 = 2,880, hitch 720.
  // Hay 500 at 4: axles 500 · 4/20 = 100, hitch 400.
  // Water 300 on the pickup, 3 before the hitch: front 300 · (3 + 0.5)/12.5 = 84, rear 216.
  // Trailer's axles: (4,800 + 2,980)/2 = 3,890 each. Hitch: 1,200 + 1,120 = 2,320.
  // Pickup: front 4,500 + 0.04 · 1,120 + 84 = 4,628.8; rear 4,100 + 0.96 · 1,120 + 216 = 5,391.2.
  // Trailer 4,800 + 1,200 + 4,100 = 10,100; pickup 10,020; both 13,400 + 4,400 = 17,800.
  @Test
  void threeLoadsAreAsByHand() {
    Trip trip = Sheets.threeLoads();
    ExpectedLoads loads = loads(trip);
    assertThat(loads.missing()).isEmpty();
    assertThat(pounds(loads.axle(axle("pickup", 1)))).isCloseTo(4628.8, TENTH);
    assertThat(pounds(loads.axle(axle("pickup", 2)))).isCloseTo(5391.2, TENTH);
    assertThat(pounds(loads.axle(axle("trailer", 1)))).isCloseTo(3890, TENTH);
    assertThat(pounds(loads.axle(axle("trailer", 2)))).isCloseTo(3890, TENTH);
    assertThat(pounds(loads.hitch())).isCloseTo(2320, TENTH);
    assertThat(pounds(loads.weight(trip.rig().vehicles().get(0)))).isCloseTo(10020, TENTH);
    assertThat(pounds(loads.weight(trip.rig().vehicles().get(1)))).isCloseTo(10100, TENTH);
    assertThat(pounds(loads.combined())).isCloseTo(17800, TENTH);
  }

  // By hand, one trailer axle in lb: scale 1 % of its 2,400 = 24. Share: 5 % of all it carries,
  // 194.5.
  // Ewes, typical: 8 % of 1,440 = 115.2; hay, guessed: 15 % of 50 = 7.5.
  // Place, 0.3 m on 6.096 m: of 1,800 88.58, of 250 12.30.
  // √(24² + 194.5² + 115.2² + 7.5² + 88.58² + 12.30²) = √59,731.9 = 244.4.
  // Both together: shares cancel; √(48² + 230.4² + 15² + 177.17² + 24.61²) = √87,607.9 = 296.0.
  @Test
  void doubtsAreAsByHand() {
    ExpectedLoads loads = loads(Sheets.threeLoads());
    SummedLoad first = loads.axle(axle("trailer", 1)).orElseThrow();
    SummedLoad second = loads.axle(axle("trailer", 2)).orElseThrow();
    assertThat(pounds(first.sigma())).isCloseTo(244.4, TENTH);
    assertThat(pounds(first.plus(second).sigma())).isCloseTo(296.0, TENTH);
  }

  /** Nothing is lost on the way: a thousand worksheets, seeded. */
  @Test
  void axlesAndHitchCarryAllThatIsThere() {
    Trip trip = Sheets.threeLoads();
    Random random = new Random(20270301);
    Rig rig = trip.rig();
    Hitch hitch = Objects.requireNonNull(rig.hitch());
    Vehicle pickup = rig.vehicles().get(0);
    Vehicle trailer = rig.vehicles().get(1);
    for (int i = 0; i < 1000; i++) {
      List<DeckLoad> lines = new ArrayList<>();
      double behind = 0;
      double before = 0;
      for (int line = random.nextInt(6); line >= 0; line--) {
        double weight = 1 + random.nextInt(4000);
        boolean onTrailer = random.nextBoolean();
        behind += onTrailer ? weight : 0;
        before += onTrailer ? 0 : weight;
        String place = random.nextInt(400) / 10.0 + " ft";
        lines.add(load(weight + " lb", onTrailer ? "trailer" : "pickup", place));
      }
      Worksheet sheet =
          Sheets.of(trip)
              .withLoads(lines)
              .withHitchToAxles(length(5 + random.nextInt(30) + " ft"))
              .withWheelbase(length(8 + random.nextInt(10) + " ft"));
      ExpectedLoads loads =
          loads(rig.withHitch(hitch.withLever(0.8 + random.nextInt(8) / 10.0)), sheet);
      double onAxles = 0;
      for (String vehicle : List.of("pickup", "trailer")) {
        onAxles += pounds(loads.axle(axle(vehicle, 1))) + pounds(loads.axle(axle(vehicle, 2)));
      }
      assertThat(onAxles).isCloseTo(13400 + behind + before, TINY);
      assertThat(pounds(loads.combined())).isCloseTo(onAxles, TINY);
      double trailerAxles =
          pounds(loads.axle(axle("trailer", 1))) + pounds(loads.axle(axle("trailer", 2)));
      assertThat(trailerAxles + pounds(loads.hitch())).isCloseTo(6000 + behind, TINY);
      assertThat(pounds(loads.weight(trailer))).isCloseTo(6000 + behind, TINY);
      assertThat(pounds(loads.weight(pickup))).isCloseTo(onAxles - trailerAxles, TINY);
      assertThat(loads.combined().orElseThrow().sigma())
          .isCloseTo(sum(loads, "pickup", "trailer").sigma(), within(1e-6 + 1e-9 * onAxles));
    }
  }

  private static SummedLoad sum(ExpectedLoads loads, String... vehicles) {
    SummedLoad sum = SummedLoad.NOTHING;
    for (String vehicle : vehicles) {
      for (int number = 1; number <= 2; number++) {
        sum = sum.plus(loads.axle(axle(vehicle, number)).orElseThrow());
      }
    }
    return sum;
  }

  /** Further back lightens the hitch, by its weight over the length for each foot. */
  @Test
  void aLoadFurtherBackLightensTheHitch() {
    Trip trip = Sheets.threeLoads();
    double before = Double.NaN;
    for (int feet = 0; feet <= 30; feet++) {
      DeckLoad one = load("1000 lb", "trailer", feet + " ft");
      double hitch = pounds(loads(trip.rig(), Sheets.of(trip).withLoads(List.of(one))).hitch());
      if (feet > 0) {
        assertThat(before - hitch).isCloseTo(1000.0 / 20, TINY);
      }
      before = hitch;
    }
    assertThat(before).isCloseTo(1200 - 500, TINY); // 10 ft behind the axles it lifts
  }

  // By hand: pickup 8,600 hitched and 7,400 alone: 1,200 on the hitch, as typed there.
  @Test
  void theHitchLoadIsTheDifferenceOfTwoTickets() {
    Trip trip = Sheets.threeLoads();
    Worksheet sheet = Sheets.of(trip).withEmptyHitch(null);
    assertThat(loads(trip.rig(), sheet).hitch()).isEmpty();
    assertThat(loads(trip.rig(), sheet).missing())
        .singleElement()
        .asString()
        .contains("hitch load is not known");
    AxleRef front = axle("pickup", 1);
    AxleRef rear = axle("pickup", 2);
    var alone = ticket(false, platform("4452 lb", front), platform("2948 lb", rear));
    Worksheet both = sheet.withEmpty(List.of(sheet.empty().get(0), alone));
    ExpectedLoads loads = loads(trip.rig(), both);
    assertThat(pounds(loads.hitch())).isCloseTo(2320, TENTH);
    assertThat(pounds(loads.axle(rear))).isCloseTo(5391.2, TENTH);
    // Empty, by hand: 1 % of each of four weights, √(45² + 41² + 44.52² + 29.48²) = 81.0 lb; typed
    // 12.
    double apart =
        pounds(loads(trip.rig(), both.withLoads(List.of())).hitch().orElseThrow().sigma());
    assertThat(apart).isCloseTo(81.0, TENTH);
    double typed =
        pounds(
            loads(trip.rig(), Sheets.of(trip).withLoads(List.of())).hitch().orElseThrow().sigma());
    assertThat(typed).isCloseTo(12, TENTH);
  }

  // By hand: alone 4,452 and 2,948; hitch 1,200 with lever 0.96: 48 and 1,152 on top.
  @Test
  void aTicketWithoutTheTrailerGetsTheHitchLoadByTheLever() {
    Trip trip = Sheets.threeLoads();
    AxleRef front = axle("pickup", 1);
    AxleRef rear = axle("pickup", 2);
    AxleRef first = axle("trailer", 1);
    AxleRef second = axle("trailer", 2);
    Worksheet sheet =
        Sheets.of(trip)
            .withEmpty(
                List.of(
                    ticket(false, platform("4452 lb", front), platform("2948 lb", rear)),
                    ticket(false, platform("6000 lb", first, second))));
    ExpectedLoads loads = loads(trip.rig(), sheet);
    assertThat(pounds(loads.axle(front))).isCloseTo(4628.8, TENTH);
    assertThat(pounds(loads.axle(rear))).isCloseTo(5391.2, TENTH);
    assertThat(pounds(loads.axle(second))).isCloseTo(3890, TENTH);
    assertThat(pounds(loads.combined())).isCloseTo(17800, TENTH);
  }

  @Test
  void whatIsNotKnownIsToldWithTheWayOut() {
    Trip trip = Sheets.threeLoads();
    Worksheet sheet = Sheets.of(trip);
    ExpectedLoads loads = loads(trip.rig(), sheet.withHitchToAxles(null).withWheelbase(null));
    assertThat(loads.axle(axle("trailer", 1))).isEmpty();
    assertThat(loads.axle(axle("pickup", 2))).isEmpty();
    assertThat(loads.hitch()).isEmpty();
    assertThat(loads.missing())
        .hasSize(2)
        .anySatisfy(line -> assertThat(line).contains("behind the hitch").contains("measure it"))
        .anySatisfy(line -> assertThat(line).contains("wheelbase").contains("measure it"));
    // What all of it weighs needs no lever.
    assertThat(pounds(loads.combined())).isCloseTo(17800, TENTH);
    assertThat(pounds(loads.weight(trip.rig().vehicles().get(1)))).isCloseTo(10100, TENTH);

    loads = loads(trip.rig(), Worksheet.BLANK);
    assertThat(loads.combined()).isEmpty();
    assertThat(loads.missing())
        .anySatisfy(line -> assertThat(line).contains("pickup axle 1, pickup axle 2"))
        .anySatisfy(line -> assertThat(line).contains("trailer axle 1, trailer axle 2"));
  }

  /** One platform under steer axle and drive axle says nothing of either alone. */
  @Test
  void aPlatformUnderAxlesThatDoNotShareAlikeIsNoWeightOfOne() {
    Trip trip = Sheets.threeLoads();
    AxleRef front = axle("pickup", 1);
    AxleRef rear = axle("pickup", 2);
    Worksheet sheet =
        Sheets.of(trip).withEmpty(List.of(ticket(true, platform("8600 lb", front, rear))));
    assertThat(loads(trip.rig(), sheet).axle(front)).isEmpty();
    assertThat(loads(trip.rig(), sheet).missing().get(0)).contains("pickup axle 1");
  }

  @Test
  void aSecondTrailerIsNotWorkedOut() {
    Trip trip = Sheets.threeLoads();
    List<Vehicle> vehicles = new ArrayList<>(trip.rig().vehicles());
    vehicles.add(vehicles.get(1).withName("pup").withLetter("q"));
    ExpectedLoads loads = loads(trip.rig().withVehicles(vehicles), Sheets.of(trip));
    assertThat(loads.combined()).isEmpty();
    assertThat(loads.axle(axle("trailer", 1))).isEmpty();
    assertThat(loads.missing()).singleElement().asString().contains("more than one trailer");
  }

  @Test
  void aTowVehicleAloneHasNoHitchLoad() {
    Trip trip = Sheets.threeLoads();
    Rig rig = trip.rig().withVehicles(trip.rig().vehicles().subList(0, 1)).withHitch(null);
    Worksheet sheet =
        Sheets.of(trip).withEmptyHitch(null).withLoads(List.of(load("1250 lb", "pickup", "5 ft")));
    ExpectedLoads loads = loads(rig, sheet);
    assertThat(loads.missing()).isEmpty();
    assertThat(loads.hitch()).isEmpty();
    // Without a hitch the lever is 1: measured from the rear axle, 5 of 12.5 ft forward.
    assertThat(pounds(loads.axle(axle("pickup", 1)))).isCloseTo(4500 + 500, TENTH);
    assertThat(pounds(loads.axle(axle("pickup", 2)))).isCloseTo(4100 + 750, TENTH);
  }

  @Test
  void emptyHitchIsKeptApartFromWhatIsLoaded() {
    Trip trip = Sheets.threeLoads();
    Worksheet sheet = Sheets.of(trip);
    double one = pounds(loads(trip.rig(), sheet).hitch());
    double other = pounds(loads(trip.rig(), sheet.withEmptyHitch(mass("1300 lb"))).hitch());
    assertThat(other - one).isCloseTo(100, TENTH);
  }
}

package dawngauge.demo;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dawngauge.advice.Mark;
import dawngauge.advice.OfferAdvice;
import dawngauge.advice.SetFigure;
import dawngauge.advice.StopAdvice;
import dawngauge.advice.TireAdvice;
import dawngauge.forecast.LegLow;
import dawngauge.forecast.PublishedBuildUp;
import dawngauge.forecast.ReadingCheck;
import dawngauge.quantity.Entered;
import dawngauge.quantity.GaugePressure;
import dawngauge.quantity.Unit;
import dawngauge.rules.FittedTire;
import dawngauge.rules.Loads;
import dawngauge.tire.TireClass;
import dawngauge.tire.TireSpec;
import dawngauge.trip.AmbientEntry;
import dawngauge.trip.Gauge;
import dawngauge.trip.Hitch;
import dawngauge.trip.Itinerary;
import dawngauge.trip.Leg;
import dawngauge.trip.ProfilePoint;
import dawngauge.trip.Provenance;
import dawngauge.trip.ReadingState;
import dawngauge.trip.Stop;
import dawngauge.trip.Vehicle;
import java.time.Duration;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * What the second demo haul, in SI units from mild coast over freezing passes, must keep holding.
 */
class AutumnStockHaulTest {

  static final String FILE = "autumn-stock-haul.dawngauge";

  private static final Demo DEMO = Demo.file(FILE);

  @Test
  void everyFigureIsTypedInMetricUnits() {
    assertThat(DEMO.text())
        .doesNotContainPattern("[0-9] (psi|°F|mi|mph|ft|lb|/32 in)\"")
        .containsPattern("[0-9] bar\"")
        .containsPattern("[0-9] km/h\"");
  }

  /** 49 CFR 571.110 S4.2.2.2: rating divided by 1.10; load index 116 is 1,250 kg (ISO 4000-1). */
  @Test
  void passengerTiresOnATruckWithAMaximumAboveTheRatedPressure() {
    FittedTire tire = DEMO.tire("chilliwack", "p2l").tire().fitted();
    TireSpec spec = requireNonNull(tire.spec());
    assertThat(spec.tireClass()).isEqualTo(TireClass.PASSENGER);
    assertThat(tire.vehicle().kind()).isEqualTo(Vehicle.Kind.TRUCK);
    assertThat(tire.sidewallPascals()).isCloseTo(3.0e5, within(1e-6));
    assertThat(requireNonNull(tire.capacity()).ratedPascals()).isCloseTo(2.4e5, within(1e-6));
    assertThat(requireNonNull(tire.capacity()).ratedKilograms())
        .isCloseTo(1250 / 1.10, within(1e-6));
  }

  @Test
  void trailerTiresWhoseLabelIsTheirMaximum() {
    FittedTire tire = DEMO.tire("chilliwack", "t1l").tire().fitted();
    assertThat(tire.labelPascals()).isEqualTo(tire.ceilingPascals()).isCloseTo(4.5e5, within(1e-6));
  }

  @Test
  void figuresToSetAreWholeTenthsOfABar() {
    List<SetFigure> figures = sets(set -> true);
    assertThat(figures).hasSizeGreaterThanOrEqualTo(4);
    assertThat(figures)
        .allSatisfy(
            set -> {
              double tenths = set.figure().in(Unit.BAR) * 10;
              assertThat(tenths).isCloseTo(Math.rint(tenths), within(1e-6));
            });
  }

  /** 49 CFR 393.75 Table 1: 34.5 kPa up to 1,814 kg (4,000 lb), 103.4 kPa above. */
  @Test
  void bothRowsOfTheTableOfBuildUp() {
    for (String stop : List.of("merritt", "kamloops", "golden", "canmore", "high-river")) {
      assertThat(published(stop, "t1l")).isCloseTo(34.5e3, within(50.0));
      assertThat(published(stop, "h1l")).isCloseTo(103.4e3, within(50.0));
      assertThat(published(stop, "h2li")).isCloseTo(103.4e3, within(50.0));
    }
  }

  @Test
  void aNightBelowFreezingBehindAPassAndBeforeAnother() {
    StopAdvice night = DEMO.stop("golden");
    assertThat(night.stop().visit().stop().kind()).isEqualTo(Stop.Kind.OVERNIGHT);
    assertThat(night.stop().airOnLeaving()).isLessThan(273.15 - 5);
    Stream<String> passes =
        Stream.of(DEMO.stop("revelstoke"), night)
            .flatMap(stop -> requireNonNull(stop.stop().ahead()).leg().profile().stream())
            .map(ProfilePoint::name);
    assertThat(passes).containsExactly("Rogers Pass", "Kicking Horse Pass");
  }

  @Test
  void aPassOnWhichThePressureIsLowest() {
    for (String position : List.of("h1l", "h2ri")) {
      LegLow low = requireNonNull(DEMO.tire("chilliwack", position).tire().low());
      assertThat(low.meters()).isCloseTo(103_000, within(1000.0));
      assertThat(low.moment().elevation()).isCloseTo(1244, within(10.0));
    }
  }

  @Test
  void oneChangeOfZone() {
    assertThat(DEMO.stops().stream().map(stop -> stop.stop().visit().zone().getId()).distinct())
        .containsExactly("America/Vancouver", "America/Edmonton");
  }

  @Test
  void airFromAFeedByTheHourAndTypicalAir() {
    assertThat(entries(Provenance.Kind.FEED))
        .singleElement()
        .satisfies(
            entry -> {
              assertThat(entry.figure()).isInstanceOf(AmbientEntry.Hourly.class);
              assertThat(entry.provenance().issued()).isNotNull();
              assertThat(entry.uncertainty()).isNotNull();
            });
    assertThat(entries(Provenance.Kind.TYPICAL)).hasSize(1);
  }

  @Test
  void aLegWithATypedDuration() {
    assertThat(DEMO.trip().route().legs())
        .extracting(Leg::duration)
        .filteredOn(duration -> duration != null)
        .containsExactly(Duration.ofHours(2));
    Itinerary.Drive drive = requireNonNull(DEMO.stop("canmore").stop().ahead());
    assertThat(drive.metersPerSecond() * 3.6).isCloseTo(77.5, within(1e-6));
  }

  /** Unhitched 1,480 and 1,150 kg; 480 kg on the hitch with lever 1.3: −144 kg and +624 kg. */
  @Test
  void theTowVehicleWeighedWithoutItsTrailer() {
    Hitch hitch = requireNonNull(DEMO.trip().rig().hitch());
    assertThat(hitch.kind()).isEqualTo(Hitch.Kind.BUMPER);
    assertThat(load("p1l").kilograms()).isCloseTo(1336, within(1e-6));
    assertThat(load("p2l").kilograms()).isCloseTo(1774, within(1e-6));
  }

  @Test
  void oneAxleOnWheelScalesAndTwoNeverWeighed() {
    assertThat(load("t1l").basis()).isEqualTo(Loads.Basis.WHEEL);
    assertThat(load("t2l").basis()).isEqualTo(Loads.Basis.AXLE);
    assertThat(load("h1l").basis()).isEqualTo(Loads.Basis.NOT_WEIGHED);
    assertThat(load("h2lo").basis()).isEqualTo(Loads.Basis.NOT_WEIGHED);
  }

  @Test
  void theWeightsAreLegal() {
    double hitch =
        requireNonNull(requireNonNull(DEMO.trip().rig().hitch()).load()).value().kilograms();
    for (Vehicle vehicle : DEMO.trip().rig().vehicles()) {
      double sum = vehicle.kind() == Vehicle.Kind.TRAILER ? hitch : 0;
      for (int axle = 1; axle <= vehicle.axles().size(); axle++) {
        double likely = load(vehicle.letter() + axle + "l").kilograms();
        double rating = requireNonNull(vehicle.axles().get(axle - 1).gawr()).value().kilograms();
        assertThat(likely).isLessThanOrEqualTo(rating);
        sum += likely;
      }
      // An axle judged at its rating says nothing of the vehicle's weight.
      if (load(vehicle.letter() + "1l").basis() != Loads.Basis.NOT_WEIGHED) {
        assertThat(sum).isLessThanOrEqualTo(requireNonNull(vehicle.gvwr()).value().kilograms());
      }
    }
  }

  @Test
  void theOwnCompressorReachesOnlyThePickupsTires() {
    double top = requireNonNull(DEMO.trip().rig().compressorTop()).value().pascals();
    assertThat(top).isBetween(aim("p1r"), aim("t1l"));
    // Nobody noted that it was set at the start, and a reading at Kamloops shows that the rig left.
    assertThat(DEMO.tire("chilliwack", "p1r").set()).isNull();
    assertThat(DEMO.stop("golden").stop().visit().stop().air().available()).isFalse();
    SetFigure set = requireNonNull(DEMO.tire("golden", "p1r").set());
    assertThat(set.adds()).isTrue();
    assertThat(set.figure().in(Unit.BAR)).isCloseTo(2.4, within(1e-6));
  }

  @Test
  void aHoseThatDoesNotReachTheCommercialTires() {
    Entered<GaugePressure> hose = DEMO.stop("salmon-arm").stop().visit().stop().air().upTo();
    assertThat(requireNonNull(hose).value().pascals()).isBetween(aim("t1l"), aim("h1l"));
  }

  /** A tenth of a bar under its aim is what a gauge of tenths cannot tell: it is left as it is. */
  @Test
  void aTireWithinTheDeadBandOfItsAimIsLeftAsItIs() {
    TireAdvice tire = DEMO.tire("salmon-arm", "t2r");
    assertThat(tire.set()).isNull();
    double under = tire.tire().limits().aim() - requireNonNull(tire.tire().check()).settled();
    // 1.28 × the hypotenuse of 0.05 bar and its gauge's constant error, under 4 % of 4.5 bar.
    assertThat(under).isBetween(0.0, 0.04 * 4.5e5);
  }

  @Test
  void aMildDawnThatAsksToLetOutCold() {
    assertThat(DEMO.stop("lethbridge").stop().firstStartOfDay()).isTrue();
    for (String position : List.of("t1l", "t1r", "t2l")) {
      SetFigure set = requireNonNull(DEMO.tire("lethbridge", position).set());
      assertThat(set.adds()).isFalse();
      assertThat(set.warm()).isFalse();
      assertThat(set.figure().in(Unit.BAR)).isCloseTo(4.5, within(1e-6));
    }
    assertThat(sets(set -> !set.adds())).hasSize(3);
  }

  @Test
  void readingsInTheSunAndWarmWithASealedGaugeAreAsExpected() {
    assertThat(DEMO.trip().rig().gauge("digital").map(Gauge::kind))
        .contains(Gauge.Kind.SEA_LEVEL_SUBTRACTED);
    assertThat(states()).contains(ReadingState.COLD, ReadingState.COLD_IN_SUN, ReadingState.WARM);
    List<ReadingCheck> later = DEMO.readings().filter(check -> !check.first()).toList();
    assertThat(later).hasSize(2);
    assertThat(later).allSatisfy(check -> assertThat(check.deviations()).isBetween(-1.0, 1.0));
  }

  @Test
  void anOfferOnHoldAndALighterOneThatIsClear() {
    assertThat(DEMO.stop("high-river").offers())
        .extracting(OfferAdvice::mark)
        .containsExactly(Mark.HOLD, Mark.CLEAR);
    OfferAdvice heavy = DEMO.offers().get(0);
    assertThat(requireNonNull(heavy.most()).kilograms()).isBetween(500.0, 1200.0);
  }

  private static List<ReadingState> states() {
    return DEMO.readings().map(check -> check.reading().state()).distinct().toList();
  }

  private static List<SetFigure> sets(Predicate<SetFigure> which) {
    return DEMO.tires().map(TireAdvice::set).flatMap(Stream::ofNullable).filter(which).toList();
  }

  private static List<AmbientEntry> entries(Provenance.Kind kind) {
    return DEMO.trip().ambient().stream()
        .filter(entry -> entry.provenance().kind() == kind)
        .toList();
  }

  private static double published(String stop, String position) {
    PublishedBuildUp published = DEMO.tire(stop, position).tire().published();
    return requireNonNull(published).pressure().pascals();
  }

  private static Loads.AxleLoad load(String position) {
    String slot = position.equals("h2l") ? "h2lo" : position;
    return DEMO.tire("chilliwack", slot).tire().limits().load().axle();
  }

  private static double aim(String position) {
    return DEMO.tire("chilliwack", position).tire().limits().aim();
  }
}

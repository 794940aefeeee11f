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
import dawngauge.forecast.TireAtStop;
import dawngauge.forecast.TireSnapshot;
import dawngauge.geo.Daylight;
import dawngauge.problem.Problem;
import dawngauge.problem.ProblemCode;
import dawngauge.quantity.GaugePressure;
import dawngauge.quantity.Mass;
import dawngauge.quantity.Temperature;
import dawngauge.quantity.Unit;
import dawngauge.rules.FittedTire;
import dawngauge.rules.Limits;
import dawngauge.rules.Loads;
import dawngauge.tire.DateCode;
import dawngauge.tire.TireSpec;
import dawngauge.trip.Itinerary;
import dawngauge.trip.LoadChange;
import dawngauge.trip.ProfilePoint;
import dawngauge.trip.Spare;
import dawngauge.trip.Tire;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;

/** What the first demo haul, from freezing high country into the heat, must keep holding. */
class SpringFleeceHaulTest {

  static final String FILE = "spring-fleece-haul.dawngauge";

  private static final Demo DEMO = Demo.file(FILE);
  private static final List<String> SOUND_TRAILER_TIRES = List.of("t1l", "t1r", "t2l");

  @Test
  void aLabelThatEqualsTheSidewallsMaximum() {
    FittedTire tire = DEMO.tire("alamosa", "t1l").tire().fitted();
    assertThat(tire.labelSpeaks()).isTrue();
    assertThat(tire.labelPascals()).isEqualTo(tire.sidewallPascals());
  }

  /**
   * 80 psi at 15 °F and 7,500 ft is 87.5 psi at 70 °F and 1,000 ft by the gas law in the U.S.
   * Standard Atmosphere 1976, and a little less for what two days of permeation take.
   */
  @Test
  void setInTheColdOfHighCountryReadsEightyEightAtAWarmLowDawn() {
    TireSnapshot evening = requireNonNull(DEMO.tire("graham", "t1l").tire().arrival());
    assertThat(psi(evening.origin().gaugePascals())).isCloseTo(80, within(1e-6));
    assertThat(fahrenheit(evening.origin().airKelvins())).isCloseTo(15, within(0.7));
    assertThat(evening.origin().elevation() / 0.3048).isCloseTo(7500, within(100.0));
    for (String position : SOUND_TRAILER_TIRES) {
      TireAdvice tire = DEMO.tire("graham", position);
      TireSnapshot dawn = requireNonNull(tire.tire().check());
      assertThat(fahrenheit(dawn.airKelvins())).isCloseTo(70, within(0.7));
      assertThat(dawn.elevation() / 0.3048).isCloseTo(1000, within(100.0));
      assertThat(psi(dawn.settled())).isBetween(87.0, 87.6);
      SetFigure set = requireNonNull(tire.set());
      assertThat(set.adds()).isFalse();
      assertThat(set.warm()).isFalse();
      assertThat(set.figure().in(Unit.PSI)).isCloseTo(80, within(1e-6));
    }
  }

  @Test
  void aHotThreeHourHaltWhereNothingIsLetOut() {
    StopAdvice halt = DEMO.stop("abilene");
    assertThat(halt.stop().visit().stay()).isGreaterThan(Duration.ofHours(3));
    assertThat(fahrenheit(halt.stop().airOnLeaving())).isGreaterThan(85);
    assertThat(halt.tires()).allMatch(tire -> tire.set() == null);
    for (String position : SOUND_TRAILER_TIRES) {
      TireAdvice tire = DEMO.tire("abilene", position);
      assertThat(requireNonNull(tire.tire().check()).settled())
          .isGreaterThan(tire.tire().limits().ceiling());
    }
  }

  @Test
  void airIsLetOutOnlyColdBeforeADaysFirstStart() {
    int let = 0;
    for (StopAdvice stop : DEMO.stops()) {
      for (TireAdvice tire : stop.tires()) {
        SetFigure set = tire.set();
        if (set != null && !set.adds()) {
          let++;
          assertThat(stop.stop().firstStartOfDay()).isTrue();
          assertThat(tire.tire().cold()).isTrue();
        }
      }
    }
    assertThat(let).isEqualTo(SOUND_TRAILER_TIRES.size());
  }

  @Test
  void aCoolHighFuelStopThenAHotLowOneThenAColdDawnWithoutAir() {
    StopAdvice first = DEMO.stop("dalhart");
    StopAdvice second = DEMO.stop("quanah");
    StopAdvice dawn = DEMO.stop("floydada");
    assertThat(first.stop().airOnArrival()).isLessThan(second.stop().airOnArrival() - 20);
    assertThat(first.stop().elevation()).isGreaterThan(second.stop().elevation() + 500);
    assertThat(air(first)).isTrue();
    assertThat(air(second)).isTrue();
    assertThat(air(dawn)).isFalse();
    assertThat(fahrenheit(dawn.stop().airOnLeaving())).isLessThan(40);
    assertThat(first.tires()).anyMatch(tire -> tire.set() != null);
    assertThat(second.tires()).allMatch(tire -> tire.set() == null);
  }

  @Test
  void aPassBeforeWhichThePressureIsLowest() {
    Itinerary.Drive pass = requireNonNull(DEMO.stop("alamosa").stop().ahead());
    assertThat(pass.leg().profile()).extracting(ProfilePoint::name).containsExactly("La Veta Pass");
    for (String position : SOUND_TRAILER_TIRES) {
      TireAtStop tire = DEMO.tire("alamosa", position).tire();
      LegLow low = requireNonNull(tire.low());
      assertThat(low.meters()).isBetween(20_000.0, pass.meters() - 20_000);
      assertThat(low.moment().judged()).isLessThan(requireNonNull(tire.leaving()).judged());
    }
  }

  @Test
  void aStartTwoHoursAfterSunriseWithTiresThatLagTheAir() {
    Itinerary.Visit visit = DEMO.stop("floydada").stop().visit();
    LocalDate day = visit.leave().atZone(visit.zone()).toLocalDate();
    Instant sunrise =
        Daylight.on(day, visit.zone(), requireNonNull(visit.stop().coordinate()))
            .orElseThrow()
            .sunrise();
    assertThat(Duration.between(sunrise, visit.leave()))
        .isCloseTo(Duration.ofHours(2), Duration.ofMinutes(10));
    TireSnapshot leaving = requireNonNull(DEMO.tire("floydada", "t1l").tire().leaving());
    assertThat(leaving.buildUp()).isNegative();
    assertThat(leaving.judged()).isEqualTo(leaving.reading());
  }

  @Test
  void aLateArrivalAndAnEarlyStart() {
    StopAdvice stop = DEMO.stop("wichita-falls");
    assertThat(stop.stop().visit().stay()).isLessThan(Duration.ofHours(3));
    assertThat(stop.stop().firstStartOfDay()).isTrue();
    assertThat(stop.tires()).noneMatch(tire -> tire.tire().cold());
  }

  @Test
  void seventyOnAnAverageOfSixtyWithoutASpeedSymbol() {
    StopAdvice stop = DEMO.stop("dalhart");
    Itinerary.Drive ahead = requireNonNull(stop.stop().ahead());
    assertThat(ahead.topMetersPerSecond() / ahead.metersPerSecond())
        .isCloseTo(70.0 / 60, within(1e-9));
    assertThat(DEMO.tire("dalhart", "t1l").tire().limits().speed())
        .isEqualTo(Limits.SpeedVerdict.KEEP_TO_65);
    assertThat(stop.legCautions()).hasSize(1);
  }

  @Test
  void aTandemWeighedTogetherHitched() {
    assertThat(DEMO.trip().rig().tickets()).allMatch(ticket -> ticket.hitched());
    assertThat(DEMO.tire("alamosa", "t2l").tire().limits().load().axle().basis())
        .isEqualTo(Loads.Basis.GROUP);
  }

  @Test
  void animalsOnAndOffWithTheHitchsPart() {
    assertThat(DEMO.loadChanges())
        .extracting(change -> Math.signum(change.weight().value().kilograms()))
        .containsExactlyInAnyOrder(1.0, -1.0);
    assertThat(DEMO.loadChanges()).extracting(LoadChange::hitch).doesNotContainNull();
  }

  @Test
  void aDualPairSixPsiApart() {
    double outer = readAtStart("p2lo");
    assertThat(outer - readAtStart("p2li")).isCloseTo(6, within(1e-6));
    assertThat(requireNonNull(DEMO.tire("dalhart", "p2li").set()).adds()).isTrue();
  }

  @Test
  void aDualTireWithoutADualFigure() {
    TireSpec spec = requireNonNull(DEMO.tire("alamosa", "p2ri").tire().fitted().spec());
    assertThat(spec.ratedLoadDual()).isNull();
    assertThat(spec.loadIndexDual()).isNull();
    assertThat(DEMO.problems()).extracting(Problem::code).contains(ProblemCode.DUAL_LOAD_ESTIMATED);
  }

  @Test
  void anAxleWhoseLabelSpeaksOfAnotherLoadRange() {
    assertThat(DEMO.tires().filter(tire -> !tire.tire().fitted().labelSpeaks()))
        .extracting(tire -> tire.tire().fitted().position().axle().words())
        .containsOnly("pickup axle 1");
  }

  @Test
  void anOldTireAndAThreeDigitCodeAndASpareWithALowerMaximum() {
    LocalDate start = LocalDate.of(2027, 4, 6);
    DateCode old = codeOf("T3");
    assertThat(old.yearsOn(start)).isBetween(6.0, 10.0);
    Spare spare = DEMO.trip().rig().spares().get(0);
    assertThat(codeOf(spare.tire()).decadeKnown()).isFalse();
    assertThat(maximumOf(spare.tire())).isLessThan(maximumOf("T1"));
  }

  @Test
  void aLeakOfTwoPsiADay() {
    assertThat(DEMO.trip().rig().tire("T4").map(Tire::lossPerDay))
        .hasValueSatisfying(
            loss -> assertThat(loss.value().in(Unit.PSI)).isCloseTo(2, within(1e-9)));
  }

  @Test
  void anOfferOnHoldAndALighterOneThatIsClear() {
    assertThat(DEMO.offers()).hasSize(1);
    OfferAdvice heavy = DEMO.offers().get(0);
    assertThat(heavy.mark()).isEqualTo(Mark.HOLD);
    Mass most = requireNonNull(heavy.most());
    double pounds = most.in(Unit.POUND);
    // Each of the two axles takes half until its GAWR of 7,000 lb is full: 2 × (7000 − 4905).
    assertThat(pounds).isBetween(4000.0, 4200.0);
    Demo lighter = DEMO.with("\"4200 lb\"", weight(Math.floor(pounds) - 10));
    assertThat(lighter.offers()).extracting(OfferAdvice::mark).containsExactly(Mark.CLEAR);
    Demo heavier = DEMO.with("\"4200 lb\"", weight(Math.ceil(pounds) + 10));
    assertThat(heavier.offers()).extracting(OfferAdvice::mark).containsExactly(Mark.HOLD);
  }

  private static String weight(double pounds) {
    return String.format(Locale.ROOT, "\"%.0f lb\"", pounds);
  }

  private static boolean air(StopAdvice stop) {
    return stop.stop().visit().stop().air().available();
  }

  private static double readAtStart(String position) {
    return DEMO.tire("alamosa", position)
        .tire()
        .readings()
        .get(0)
        .reading()
        .pressure()
        .value()
        .in(Unit.PSI);
  }

  private static DateCode codeOf(String tire) {
    String code = DEMO.trip().rig().tire(tire).map(Tire::dateCode).orElseThrow();
    return DateCode.parse(code).get();
  }

  private static GaugePressure maximumOf(String tire) {
    return DEMO.trip()
        .rig()
        .tire(tire)
        .flatMap(DEMO.trip().rig()::specOf)
        .map(TireSpec::sidewallLimit)
        .orElseThrow();
  }

  private static double psi(double pascals) {
    return new GaugePressure(pascals).in(Unit.PSI);
  }

  private static double fahrenheit(double kelvins) {
    return new Temperature(kelvins).in(Unit.FAHRENHEIT);
  }
}

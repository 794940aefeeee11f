package dawngauge.advice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dawngauge.forecast.Forecaster;
import dawngauge.forecast.LoadChance;
import dawngauge.forecast.TireAtStop;
import dawngauge.quantity.GaugePressure;
import dawngauge.quantity.Unit;
import dawngauge.testdata.Forecasts;
import dawngauge.trip.Air;
import dawngauge.trip.WheelPosition;
import dawngauge.trip.WheelSlot;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Where the next air is, how far it reaches, and what the way until there asks for. */
class LookaheadTest {

  private static final WheelPosition LEFT = new WheelPosition(Scenario.AXLE, WheelSlot.LEFT);

  private static Scenario home(String read) {
    return Scenario.from("Home", "60 °F").allRead(read);
  }

  private static List<TireAtStop> stops(Forecaster forecaster) {
    return forecaster.track(LEFT).orElseThrow().stops();
  }

  private static double reach(Scenario scenario) {
    Air air = Lookahead.airAt(scenario.to("End", 0, "60 °F").forecaster(), 0);
    return air == null ? Double.NaN : Forecasts.psi(Lookahead.reach(air));
  }

  @Test
  void ofHoseAndOwnCompressorTheOneThatReachesFurtherCounts() {
    assertThat(reach(home("80 psi"))).isNaN();
    assertThat(reach(home("80 psi").compressor("60 psi"))).isCloseTo(60, within(1e-6));
    assertThat(reach(home("80 psi").airUpTo("70 psi"))).isCloseTo(70, within(1e-6));
    assertThat(reach(home("80 psi").airUpTo("70 psi").compressor("60 psi")))
        .isCloseTo(70, within(1e-6));
    assertThat(reach(home("80 psi").airUpTo("70 psi").compressor("90 psi")))
        .isCloseTo(90, within(1e-6));
    assertThat(reach(home("80 psi").air().compressor("60 psi"))).isInfinite();
  }

  /** The stop with the next air; 3 where there is none. Parked a day, the tire shows its aim. */
  private static int next(Scenario home, String hose) {
    Forecaster forecaster =
        home.to("Camp", 24, "60 °F").airUpTo(hose).to("End", 0, "60 °F").forecaster();
    return new Lookahead(forecaster).nextWithAir(0, stops(forecaster));
  }

  @Test
  void aHoseWithinHalfAStepOfTheAimIsOne() {
    assertThat(next(home("80 psi"), "79.6 psi")).isEqualTo(1);
    assertThat(next(home("80 psi"), "79.4 psi")).isEqualTo(3);
  }

  @Test
  void ofATireOfWhichNothingIsKnownTheAimItselfCounts() {
    Scenario nothing = Scenario.from("Home", "60 °F");
    assertThat(next(nothing, "79 psi")).isEqualTo(3);
    assertThat(next(Scenario.from("Home", "60 °F"), "80 psi")).isEqualTo(1);
    Scenario noAim = home("80 psi").label(null).rated(null, null);
    assertThat(next(noAim, "30 psi")).as("no aim that it could miss").isEqualTo(1);
  }

  private static Lookahead.Judged judged(String read, double chance) {
    Forecaster forecaster = home(read).to("End", 0, "60 °F").forecaster();
    TireAtStop at = stops(forecaster).get(0);
    return new Lookahead.Judged(
        0,
        false,
        Forecasts.known(at.leaving()),
        at.limits(),
        new LoadChance(chance, chance, false));
  }

  @Test
  void theWorstIsTheLikeliestThenTheLowest() {
    Lookahead lookahead = new Lookahead(home("80 psi").to("End", 0, "60 °F").forecaster());
    Lookahead.Judged fair = judged("70 psi", 0.3);
    Lookahead.Judged bad = judged("75 psi", 0.6);
    Lookahead.Judged good = judged("60 psi", 0.05);
    Lookahead.Judged low = judged("62 psi", Double.NaN);
    Lookahead.Judged lower = judged("61 psi", Double.NaN);
    assertThat(lookahead.worst(List.of(fair, bad))).isSameAs(bad);
    assertThat(lookahead.worst(List.of(bad, fair, low))).isSameAs(bad);
    assertThat(lookahead.worst(List.of(low, lower))).isSameAs(lower);
    assertThat(lookahead.worst(List.of(lower, low))).isSameAs(lower);
    assertThat(lookahead.worst(List.of(low, good))).as("64 psi are the line").isSameAs(good);
    assertThat(lookahead.worst(List.of(judged("80 psi", 0.05)))).isNull();
  }

  @Test
  void whereItIsToBeShownACautiousChanceStopsATire() {
    Forecaster forecaster = home("80 psi").to("End", 0, "60 °F").forecaster();
    TireAtStop at = stops(forecaster).get(0);
    Lookahead.Judged open =
        new Lookahead.Judged(
            0, false, Forecasts.known(at.leaving()), at.limits(), new LoadChance(0.05, 0.4, false));
    assertThat(new Lookahead(forecaster).mayNotRoll(open)).isFalse();
    assertThat(new Lookahead(forecaster, true).mayNotRoll(open)).isTrue();
    assertThat(new Lookahead(forecaster, true).mayNotRoll(judged("80 psi", 0.05))).isFalse();
  }

  /** What a tire needs when it leaves Home, and on the leg to the end, in psi there. */
  private static double[] needed(String read, String airAhead) {
    Forecaster forecaster =
        Scenario.from("Home", "60 °F")
            .weighing("7000 lb")
            .allRead(read)
            .to("End", 0, airAhead)
            .forecaster();
    Lookahead lookahead = new Lookahead(forecaster);
    return lookahead.judgedAt(0, stops(forecaster).get(0)).stream()
        .mapToDouble(
            judged ->
                lookahead.needed(judged) * judged.moment().airKelvins()
                    - judged.moment().airPressure())
        .map(Forecasts::psi)
        .toArray();
  }

  /**
   * 3,500 lb on a tire of 3,520 lb: its load alone asks for more than 80 psi, yet at its label's 80
   * psi it carries as certified, less 1.613 psi that the gauge cannot tell (see {@link
   * SetFigureBoundsTest}): 78.387, when it was set and when it rolls.
   */
  @Test
  void asCertifiedIsNearTheLabelWhenItIsSetAndWhenItRolls() {
    assertThat(needed("70 psi", "60 °F")[0]).isCloseTo(78.387, within(0.01));
    assertThat(needed("80 psi", "60 °F")[0]).as("it has enough").isCloseTo(80, within(0.01));
    // Colder ahead: 78.387 there as well.
    assertThat(needed("70 psi", "20 °F")[1]).isCloseTo(78.387, within(0.02));
    assertThat(needed("80 psi", "20 °F")[1]).isCloseTo(78.387, within(0.02));
  }

  @Test
  void theLineOfALowTireIsAskedWhateverItsLoad() {
    // 80 % of 80 psi and a pascal; 1,000 lb likely need 80·(1000/3520)^(1/0.585) = 9 psi.
    Forecaster forecaster = home("80 psi").weighing("2000 lb").to("End", 0, "60 °F").forecaster();
    Lookahead lookahead = new Lookahead(forecaster);
    Lookahead.Judged leaving = lookahead.judgedAt(0, stops(forecaster).get(0)).get(0);
    double missing = new GaugePressure(lookahead.missing(leaving)).in(Unit.PSI);
    assertThat(missing).isCloseTo(64 - 80, within(0.01));
  }
}

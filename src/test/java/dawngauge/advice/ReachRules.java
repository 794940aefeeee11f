package dawngauge.advice;

import static org.assertj.core.api.Assertions.assertThat;

import dawngauge.forecast.Forecaster;
import dawngauge.forecast.Setting;
import dawngauge.forecast.TireAtStop;
import dawngauge.forecast.Track;
import dawngauge.quantity.GaugePressure;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** What holds for what the air reaches from any stop of any trip. */
final class ReachRules {

  private final Forecaster forecaster;
  private final Advice advice;
  private final Lookahead lookahead;

  /** Tires on hold that air does not release. */
  private int held;

  /** Figures that were looked at. */
  private int figures;

  /** Tires that do not reach the end. */
  private int stopped;

  ReachRules(Forecaster forecaster, Advice advice) {
    this.forecaster = forecaster;
    this.advice = advice;
    this.lookahead = new Lookahead(forecaster, true);
  }

  int held() {
    return held;
  }

  int figures() {
    return figures;
  }

  int stopped() {
    return stopped;
  }

  /** Checks every stop but the last. */
  void check() {
    for (int visit = 0; visit < advice.stops().size() - 1; visit++) {
      Reach reach = Reach.of(forecaster, advice, visit);
      assertThat(reach.tires()).hasSameSizeAs(advice.stops().get(visit).tires());
      for (Reach.OfTire tire : reach.tires()) {
        check(reach, tire);
      }
    }
  }

  private void check(Reach reach, Reach.OfTire tire) {
    int visit = reach.visit();
    if (tire.reached() < reach.end()) {
      stopped++;
    }
    // Never "yes" where the advice of a stop before says that it is not to roll.
    for (int stop = visit; stop < tire.reached(); stop++) {
      assertThat(holds(stop, tire)).as("hold at " + stop).isFalse();
    }
    assertThat(tire.hold() == null || tire.reached() == visit).isTrue();
    assertThat(tire.reached()).isLessThanOrEqualTo(tire.knownTo());
    // No figure to pump up to for a tire that ran low, or that air does not release.
    if (whateverItsAir(visit, tire)) {
      held++;
      assertThat(tire.hold()).isNotNull();
      assertThat(tire.toHose()).isNull();
      assertThat(tire.toEnd()).isNull();
    }
    // Nor where the advice of a stop before cannot say what is ahead.
    for (int stop = visit; stop < tire.knownTo(); stop++) {
      assertThat(advice.stops().get(stop).stop().airAheadKnown()).isTrue();
    }
    double before = Double.NEGATIVE_INFINITY;
    for (int stop = visit + 1; stop <= reach.end(); stop++) {
      double needed = tire.needed().get(stop - visit - 1);
      assertThat(Double.isNaN(needed) || needed >= before).isTrue(); // further never takes less
      before = Double.isNaN(needed) ? Double.POSITIVE_INFINITY : needed;
      if (stop <= tire.reached() && !Double.isNaN(tire.spare(stop))) {
        assertThat(tire.spare(stop)).isGreaterThan(-1);
      }
    }
    int hose = reach.nextHose().orElse(reach.end());
    least(tire, visit, hose, tire.toHose());
    least(tire, visit, reach.end(), tire.toEnd());
    if (tire.toHose() != null && tire.toEnd() != null) {
      assertThat(tire.toEnd().pascals()).isGreaterThan(tire.toHose().pascals() - 1);
    }
  }

  /** With the figure it rolls there, with a step less it does not. */
  private void least(Reach.OfTire tire, int visit, int stop, @Nullable GaugePressure figure) {
    if (figure == null || tire.at().check() == null) {
      return;
    }
    figures++;
    double step = tire.at().check().origin().errors().step();
    assertThat(rolls(tire, visit, stop, figure.pascals())).isTrue();
    assertThat(figure.pascals() <= step || !rolls(tire, visit, stop, figure.pascals() - step))
        .isTrue();
    assertThat(figure.pascals() / step - Math.rint(figure.pascals() / step)).isBetween(-1e-6, 1e-6);
  }

  private boolean rolls(Reach.OfTire tire, int visit, int stop, double figure) {
    Track whole =
        Objects.requireNonNull(advice.tracks().get(tire.at().fitted().position()), "track");
    List<TireAtStop> so = whole.before(visit).with(visit, new Setting(figure)).stops();
    return lookahead.between(visit, stop, so).stream().noneMatch(lookahead::mayNotRoll);
  }

  private boolean whateverItsAir(int visit, Reach.OfTire tire) {
    Track track =
        Objects.requireNonNull(advice.tracks().get(tire.at().fitted().position()), "track");
    return HoldRules.foundLowByNow(visit, track.stops())
        || advice.stops().get(visit).tires().stream()
            .filter(t -> t.tire().fitted().position().equals(tire.at().fitted().position()))
            .flatMap(t -> t.reasons().stream())
            .anyMatch(HoldRules::whateverItsAir);
  }

  private boolean holds(int stop, Reach.OfTire tire) {
    return advice.stops().get(stop).tires().stream()
        .filter(t -> t.tire().fitted().position().equals(tire.at().fitted().position()))
        .anyMatch(t -> t.mark() == Mark.HOLD);
  }
}

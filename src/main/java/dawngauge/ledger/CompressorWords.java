package dawngauge.ledger;

import dawngauge.advice.AdjustmentPlan;
import dawngauge.advice.FigureNow;
import dawngauge.advice.Reach;
import dawngauge.advice.SetFigure;
import dawngauge.explain.Phrase;
import dawngauge.forecast.TireSnapshot;
import dawngauge.quantity.GaugePressure;
import dawngauge.rules.OwnCompressor;
import dawngauge.rules.RanLow;
import dawngauge.trip.ReadingState;
import dawngauge.trip.Rig;
import java.time.Duration;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** How long the crew's own compressor takes, wherever that is told: in whole minutes, up. */
final class CompressorWords {

  private static final double SECONDS_A_MINUTE = 60;

  /** Forgives rounding, in minutes. */
  private static final double ROUNDING = 1e-6;

  private CompressorWords() {}

  /**
   * "About 4 min by your compressor, from 72 psi": from what was read, else from what is expected.
   * Empty where nothing is to be added or it is not known, and of a tire that ran low, which is not
   * to be pumped up.
   *
   * @param asked with the reading and how the tire was then
   */
  static Optional<Phrase> figure(Rig rig, FigureNow figures, FigurePage.Asked asked) {
    GaugePressure read = asked.reading();
    ReadingState state =
        read != null
            ? figures.stateOf(asked.state())
            : figures.warm() == null ? ReadingState.COLD : ReadingState.WARM;
    boolean low =
        figures.ranLow() || (read != null && figures.ranLow(read, state) == RanLow.LIKELY);
    boolean warm = state == ReadingState.WARM;
    SetFigure set = warm ? figures.warm() : state == ReadingState.COLD ? figures.cold() : null;
    TireSnapshot moment = warm ? figures.at().arrival() : figures.at().check();
    if (low || set == null || moment == null) {
      return Optional.empty();
    }
    double from = read != null ? read.pascals() : warm ? moment.reading() : moment.settled();
    double to = set.figure().pascals();
    OptionalDouble seconds =
        OwnCompressor.secondsToRaise(
            rig, figures.at().fitted().spec(), from, to, moment.airPressure());
    boolean adds = to - from > figures.errors().step() / 2;
    return seconds.isEmpty() || !adds
        ? Optional.empty()
        : Optional.of(
            Phrase.of("{0}, from {1}.", about(seconds.getAsDouble()), Wording.shown(from)));
  }

  /**
   * "About 12 min by your compressor for 4 tires"; empty where none is filled or one of those that
   * are has no time.
   */
  static String stop(Collection<AdjustmentPlan.PlannedSetting> settings) {
    List<AdjustmentPlan.PlannedSetting> filled =
        settings.stream().filter(setting -> setting.set().adds()).toList();
    if (filled.isEmpty()
        || filled.stream().anyMatch(setting -> setting.compressorSeconds().isEmpty())) {
      return "";
    }
    double all =
        filled.stream().mapToDouble(setting -> setting.compressorSeconds().getAsDouble()).sum();
    return about(all) + " for " + filled.size() + (filled.size() == 1 ? " tire" : " tires");
  }

  private static String about(double seconds) {
    return "About " + minutes(seconds) + " by your compressor";
  }

  private static String minutes(double seconds) {
    long minutes = (long) Math.ceil(seconds / SECONDS_A_MINUTE - ROUNDING);
    return Wording.span(Duration.ofMinutes(minutes));
  }

  /**
   * How long it takes from what a tire reads to the least that it must leave with; empty where that
   * is not known, or it has as much.
   */
  static String reach(Rig rig, Reach.OfTire tire, GaugePressure least) {
    TireSnapshot check = tire.at().check();
    if (check == null) {
      return "";
    }
    OptionalDouble seconds =
        OwnCompressor.secondsToRaise(
            rig, tire.at().fitted().spec(), tire.reads(), least.pascals(), check.airPressure());
    return seconds.isEmpty() ? "" : minutes(seconds.getAsDouble());
  }
}

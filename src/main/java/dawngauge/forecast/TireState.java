package dawngauge.forecast;

import dawngauge.physics.AirLoss;
import dawngauge.physics.GasLaw;
import dawngauge.physics.WarmUp;
import dawngauge.quantity.Entered;
import dawngauge.quantity.GaugePressure;
import dawngauge.rules.FittedTire;
import dawngauge.rules.Limits;
import dawngauge.tire.Capacity;
import org.jspecify.annotations.Nullable;

/**
 * What is known at one node of the tire at a position: which one it is, how warm, how much air it
 * holds and by what that is known. Goes over the pieces of the timeline.
 */
final class TireState {

  private final Timeline timeline;
  private final Heat heat;
  private FittedTire tire;
  private @Nullable Decay decay;
  private boolean warmthKnown;
  private double fill = Double.NaN;
  private @Nullable FillOrigin origin;
  private boolean rolledSinceReading;

  /** A tire as cool as the air at the first node, its air not known. */
  TireState(Timeline timeline, FittedTire tire, @Nullable Decay decay) {
    this.timeline = timeline;
    this.tire = tire;
    this.decay = decay;
    this.warmthKnown = !Double.isNaN(timeline.air[0]);
    this.heat = new Heat(warmthKnown ? timeline.air[0] : GasLaw.REFERENCE_KELVINS);
  }

  private TireState(TireState other) {
    timeline = other.timeline;
    tire = other.tire;
    decay = other.decay;
    heat = new Heat(other.heat);
    warmthKnown = other.warmthKnown;
    fill = other.fill;
    origin = other.origin;
    rolledSinceReading = other.rolledSinceReading;
  }

  /** The same state, free to go its own way. */
  TireState copy() {
    return new TireState(this);
  }

  FittedTire tire() {
    return tire;
  }

  Heat heat() {
    return heat;
  }

  /** One standard deviation of how much warmer than the air it is, in kelvin. */
  double warmSigma() {
    return heat.warmSigma(HeatFit.riseSpread(tire.tire()));
  }

  boolean warmthKnown() {
    return warmthKnown;
  }

  /** What the fill is known from; null where nothing is known. */
  @Nullable FillOrigin origin() {
    return origin;
  }

  boolean rolledSinceReading() {
    return rolledSinceReading;
  }

  /** It rolled, or was read. */
  void rolled(boolean sinceReading) {
    rolledSinceReading = sinceReading;
  }

  /** The air in it, in pascal per kelvin; NaN where it is not known. */
  double fill() {
    return fill;
  }

  /** The air in it is known now. */
  void known(FillOrigin found) {
    origin = found;
    fill = found.fill();
  }

  /** The air in it is not known any more. */
  void unknown() {
    origin = null;
    fill = Double.NaN;
  }

  /** Its temperature is known now. */
  void warm(double kelvins) {
    heat.reset(kelvins);
    warmthKnown = true;
  }

  /** Another tire goes on. It has not run: it is as cool as the air. */
  void change(FittedTire other, @Nullable Decay itsDecay, int node) {
    tire = other;
    decay = itsDecay;
    unknown();
    coolAt(node);
  }

  /** It never ran: it is as cool as the air. */
  void coolAt(int node) {
    warmthKnown = false;
    regainWarmth(node);
  }

  /** After three hours in known air the tire is as cool as it, whatever came before. */
  void regainWarmth(int node) {
    if (!warmthKnown && !Double.isNaN(timeline.air[node])) {
      warm(timeline.air[node]);
    }
  }

  /**
   * Goes to a later node, over pieces on all of which the rig rolls at one speed, or stands.
   *
   * @param from where it is
   * @param to where it goes
   * @param rise rise at equilibrium in air of 20 °C, in kelvin; NaN where it is not known
   * @param loadSpread one standard deviation of the load, part of it
   * @param stretch takes what it is at each node
   */
  void goOver(int from, int to, double rise, double loadSpread, SegmentBuffer stretch) {
    Decay by = decay;
    int warmTo = from;
    if (warmthKnown && by != null && !Double.isNaN(rise)) {
      warmTo = timeline.airKnownTo(from, to);
      heat.goOver(by, from, warmTo, timeline.drive[from] >= 0, rise, loadSpread, stretch.kelvins);
    }
    warmthKnown = warmthKnown && warmTo == to;
    stretch.begin(from, warmTo, fill);
    if (!Double.isNaN(fill)) {
      fill = stretch.lose(to, leak());
    }
  }

  /** Part of the gauge pressure lost a second by the leak that is typed; NaN without one. */
  private double leak() {
    Entered<GaugePressure> typed = tire.tire().lossPerDay();
    FillOrigin by = origin;
    if (typed == null || by == null) {
      return Double.NaN;
    }
    double present = GasLaw.atReference(by.fill());
    return present <= 0 ? 0 : AirLoss.rateFor(typed.value().pascals(), present);
  }

  /** One standard deviation of the load on a leg, part of it; 0 where it is not known. */
  static double loadSpread(Limits limits) {
    double part = limits.load().sigma() / limits.load().kilograms();
    return part > 0 ? part : 0;
  }

  /** Rise at equilibrium on a leg in air of 20 °C by the likely load; NaN where not known. */
  double rise(Limits limits, double speed) {
    Capacity capacity = tire.capacity();
    FillOrigin by = origin;
    double rated = tire.ratedSingleKilograms();
    if (capacity == null || by == null || Double.isNaN(rated) || Double.isNaN(speed)) {
      return Double.NaN;
    }
    double load = limits.load().kilograms();
    double part = Double.isNaN(load) ? 1 : load / capacity.ratedKilograms();
    double pressure = GasLaw.atReference(by.fill()) / capacity.ratedPascals();
    return pressure <= 0
        ? Double.NaN
        : WarmUp.rise(part, pressure, speed, tire.tire().heatFactor());
  }

  /** The tire here, good enough to judge it by; null where nothing is known or air is bridged. */
  @Nullable TireSnapshot momentToJudge(int node) {
    return timeline.bridged[node] ? null : moment(node);
  }

  /** The tire here; null where nothing is known of it. */
  @Nullable TireSnapshot moment(int node) {
    FillOrigin by = origin;
    if (by == null || Double.isNaN(timeline.air[node]) || Double.isNaN(timeline.pressure[node])) {
      return null;
    }
    return warmthKnown
        ? Uncertainty.moment(by, fill, timeline, node, heat.kelvins(), warmSigma())
        : Uncertainty.moment(by, fill, timeline, node, timeline.air[node], 0).withoutReading();
  }
}

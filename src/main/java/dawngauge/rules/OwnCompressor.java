package dawngauge.rules;

import dawngauge.quantity.AirFlow;
import dawngauge.quantity.Entered;
import dawngauge.quantity.GaugePressure;
import dawngauge.tire.TireSize;
import dawngauge.tire.TireSpec;
import dawngauge.tire.TireVolume;
import dawngauge.trip.Rig;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;

/**
 * The crew's own compressor, of which its sheet tells how much free air it delivers.
 *
 * <p>The flow counts as constant up to the pressure at which the sheet gives it; below that it is
 * more, so that times are rather long. What thin air takes of it is left out.
 */
public final class OwnCompressor {

  /** Forgives rounding, in pascal. */
  private static final double ROUNDING = 1;

  private OwnCompressor() {}

  /**
   * How long it takes to raise a tire, in second: by Boyle's law the free air is V·(p₂ − p₁)/a,
   * over the flow. Empty where nothing is to be added, the figure is above what the flow is given
   * for, the tire's size tells no volume, or reach and flow of the compressor are not known.
   *
   * @param spec what the sidewall says; null where not known
   * @param from gauge pressure before, in pascal
   * @param to gauge pressure after, at the same warmth, in pascal
   * @param air pressure of the air around, in pascal above vacuum
   */
  public static OptionalDouble secondsToRaise(
      Rig rig, @Nullable TireSpec spec, double from, double to, double air) {
    Entered<GaugePressure> top = rig.compressorTop();
    Entered<AirFlow> flow = rig.compressorFlow();
    Entered<GaugePressure> at = rig.compressorFlowAt();
    if (top == null || flow == null || at == null || !(to > from) || !(air > 0)) {
      return OptionalDouble.empty();
    }
    double most = Math.min(at.value().pascals(), top.value().pascals()) + ROUNDING;
    double delivered = flow.value().cubicMetersPerSecond();
    OptionalDouble volume = volume(spec);
    return volume.isEmpty() || to > most || !(delivered > 0)
        ? OptionalDouble.empty()
        : OptionalDouble.of(volume.getAsDouble() * (to - from) / air / delivered);
  }

  private static OptionalDouble volume(@Nullable TireSpec spec) {
    String size = spec == null ? null : spec.size();
    return size == null
        ? OptionalDouble.empty()
        : TireSize.parse(size).map(TireVolume::cubicMeters).orElse(OptionalDouble.empty());
  }
}

package dawngauge.review;

import dawngauge.forecast.ReadingCheck;
import dawngauge.forecast.TireSetting;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;

/**
 * Why a tire read differently at two readings: an exact split of the difference, whatever came
 * between. With F = (p + a)/T at each reading, F̄ and T̄ the means of the two, θ the air around: Δp
 * = F̄·Δθ + F̄·Δ(T − θ) + T̄·ΣΔF_set + T̄·ΔF_lost − Δa. It is of two readings only: accounts of two
 * spans do not add up part by part to that of both, only as a whole. All in pascal of gauge
 * pressure.
 *
 * @param first the earlier reading
 * @param last the later one
 * @param air by cooler (negative) or warmer air
 * @param warmUp by the tire being warmer than the air, or less so, than at the first reading; the
 *     model's where a reading is warm
 * @param settings by air added (positive) and let out, each
 * @param lost by air that went otherwise (negative); what gauge and air make wrong is in it too
 * @param height by the air pressure around: higher ground reads more
 * @param gaugeSigma what the gauge alone may make of the difference, one standard deviation
 * @param lostSigma one standard deviation of the air lost: gauge, air and warm-up
 */
public record PressureAccount(
    ReadingCheck first,
    ReadingCheck last,
    double air,
    double warmUp,
    List<Part> settings,
    double lost,
    double height,
    double gaugeSigma,
    double lostSigma) {

  /**
   * Air added or let out in between.
   *
   * @param setting as it was
   * @param pascals what it makes at the mean temperature of both readings
   * @param wasRead whether the gauge was read before it; if not, air lost before it is in it
   */
  public record Part(TireSetting setting, double pascals, boolean wasRead) {}

  /** Copies the list. */
  public PressureAccount {
    settings = List.copyOf(settings);
  }

  /** The account between two readings of one tire. */
  public static PressureAccount of(ReadingCheck first, ReadingCheck last, List<TireSetting> made) {
    double meanFill = (first.fillRead() + last.fillRead()) / 2;
    double meanKelvins = (first.tireKelvins() + last.tireKelvins()) / 2;
    double air = meanFill * (last.airKelvins() - first.airKelvins());
    double warm =
        meanFill
            * ((last.tireKelvins() - last.airKelvins())
                - (first.tireKelvins() - first.airKelvins()));
    List<Part> parts = new ArrayList<>();
    double added = 0;
    for (TireSetting setting : made) {
      if (isBetween(setting, first, last)) {
        double pascals = meanKelvins * setting.fillAdded();
        parts.add(new Part(setting, pascals, setting.wasRead()));
        added += setting.fillAdded();
      }
    }
    double lost = meanKelvins * (last.fillRead() - first.fillRead() - added);
    double height = first.airPressure() - last.airPressure();
    double gauge = Math.hypot(first.repeatSigma(), last.repeatSigma());
    double byAir = meanFill * Math.hypot(first.airSigma(), last.airSigma());
    double byWarmth = meanFill * Math.hypot(first.warmSigma(), last.warmSigma());
    return new PressureAccount(
        first,
        last,
        air,
        warm,
        parts,
        lost,
        height,
        gauge,
        Math.sqrt(gauge * gauge + byAir * byAir + byWarmth * byWarmth));
  }

  private static boolean isBetween(TireSetting setting, ReadingCheck first, ReadingCheck last) {
    Instant time = setting.adjustment().time().instant();
    return setting.adjustment().tire().equals(last.reading().tire())
        && !time.isBefore(first.reading().time().instant())
        && time.isBefore(last.reading().time().instant());
  }

  /** What all parts make together: the difference of both readings. */
  public double sum() {
    double set = 0;
    for (Part part : settings) {
      set += part.pascals();
    }
    return air + warmUp + set + lost + height;
  }

  /** The difference that the gauge showed, where both readings are by an open gauge. */
  public double difference() {
    return openPressure(last) - openPressure(first);
  }

  /** What an open gauge shows: a sealed one is brought to it by the reading's own fill. */
  private static double openPressure(ReadingCheck check) {
    return check.fillRead() * check.tireKelvins() - check.airPressure();
  }
}

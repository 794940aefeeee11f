package dawngauge.review;

import static dawngauge.testdata.StopBuilder.stop;

import dawngauge.testdata.RigBuilder;
import dawngauge.testdata.StopBuilder;
import dawngauge.testdata.Trips;
import dawngauge.trip.Remarks;
import dawngauge.trip.Rig;
import dawngauge.trip.Tire;
import dawngauge.trip.Trip;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.Set;

/**
 * Invented trips with known causes. Shares nothing with the forecast: the air in a tire by the gas
 * law written out here, the tire's warmth by small steps of the heat balance, the air around
 * wandering about what was typed with an error that is much the same from hour to hour, a gauge
 * with a bias of its own that repeats within 0.5 psi, readings left out now and then.
 */
final class SimulatedTrips {

  /** What was planted in one tire. */
  enum Cause {
    SOUND,
    STEADY,
    ONCE
  }

  /** How the world differs from what the review assumes. */
  enum World {
    /** Errors as assumed: normal, 2 K for a typed hour with a memory of 12 h, 0.5 psi. */
    AS_ASSUMED,
    /** Heavier tails of the gauge, time constants and air off by more. */
    HARDER,
    /**
     * As assumed, with one round in which two tires of unlike pressure were noted one for the
     * other, or one tire in bar.
     */
    SLIPS,
    /** As assumed, with a sealed gauge that the file takes for an open one. */
    SEALED,
    /** As assumed, with the spare put on in place of the second tire half-way. */
    SPARE,
    /** The sun on the tires of the left side, up to 12 K, at every round. */
    SUN
  }

  /**
   * One trip.
   *
   * @param trip as its crew typed it
   * @param tires how many
   * @param cause what was planted in the first tire
   * @param lostPsi what it lost between its first and last reading, as at the last one
   * @param climbFeet from the lowest of its mornings to the highest
   */
  record Simulated(Trip trip, int tires, Cause cause, double lostPsi, double climbFeet) {}

  private static final double SEA_LEVEL_PSI = 14.6959;
  private static final long START = Instant.parse("2027-06-01T06:00:00Z").getEpochSecond();
  private static final long DAY = 86400;

  private final Random random;

  SimulatedTrips(long seed) {
    this.random = new Random(seed);
  }

  private static double aroundPsi(double feet) {
    return SEA_LEVEL_PSI * Math.pow(1 - 6.8756e-6 * feet, 5.2559);
  }

  private static double kelvins(double fahrenheit) {
    return (fahrenheit + 459.67) / 1.8;
  }

  /** The next trip. */
  Simulated next(World world) {
    int nights = 3 + random.nextInt(3);
    int axles = 2 + random.nextInt(2);
    boolean dual = random.nextInt(4) == 0;
    int tires = axles * (dual ? 4 : 2);
    Cause cause = Cause.values()[random.nextInt(4) < 2 ? 0 : 1 + random.nextInt(2)];
    double psi = 60 + 5 * random.nextInt(5);
    double size =
        cause == Cause.SOUND ? 0 : 1 + 5 * random.nextDouble(); // psi a day, or at once x 2
    int lossAt = 1 + random.nextInt(nights);
    double grade = random.nextBoolean() ? 1.15 : 0.6; // of the gauge: ASME B40.100, 2 or 1 %
    int slipAt = 1 + random.nextInt(nights);
    boolean swaps = random.nextBoolean();
    double bias = grade * random.nextGaussian();
    double airError = 2 * random.nextGaussian();
    double[] feet = new double[nights + 1];
    double[] middle = new double[nights + 1];
    for (int i = 0; i <= nights; i++) {
      feet[i] = 6000 * random.nextDouble();
      middle[i] = 45 + 30 * random.nextDouble();
    }
    double swing = 8 + 8 * random.nextDouble();
    Trips trips =
        Trips.of(
            dual ? RigBuilder.trailer().axles(axles).dual() : RigBuilder.trailer().axles(axles));
    for (int i = 0; i <= nights; i++) {
      StopBuilder stop =
          stop("s" + i)
              .elevation(String.format(Locale.ROOT, "%.0f ft", feet[i]))
              .measured(); // off by 2 K, which is what is assumed of measured air
      long leave = START + i * DAY;
      for (long t = leave - 22 * 3600; t <= leave + 3600; t += 3600) {
        stop.hour(text(t), String.format(Locale.ROOT, "%.2f °F", typed(middle[i], swing, t)));
      }
      trips.stop(i == 0 ? stop.leaves(text(leave)) : stop.stays(Duration.ofHours(20)));
      if (i < nights) {
        trips.leg("200 mi", "50 mph");
      }
    }
    trips.stop(stop("end").elevation("1000 ft").steady("60 °F"));
    double[] fill = new double[tires];
    double startFill = Double.NaN;
    double lastFill = Double.NaN;
    double lastKelvins = Double.NaN;
    boolean firstRead = false;
    for (int i = 0; i <= nights; i++) {
      long leave = START + i * DAY;
      double memory = Math.exp(-24.0 / 12);
      airError = memory * airError + Math.sqrt(1 - memory * memory) * 2 * random.nextGaussian();
      double around = aroundPsi(feet[i]);
      for (int tire = 0; tire < tires; tire++) {
        long at = leave - 1800 + 60L * tire;
        double warm = tireKelvins(world, middle[i], swing, airError, at);
        if (i == 0) {
          double own = world == World.SLIPS && tire == 1 ? psi - 20 : psi;
          fill[tire] = (own + around) / warm;
        }
        if (tire == 0 && i > 0) {
          double perDay = cause == Cause.STEADY ? size : 0;
          double once = cause == Cause.ONCE && i == lossAt ? 2 * size : 0;
          fill[0] -= (perDay + once) / kelvins(68);
        }
        boolean missed = random.nextInt(20) == 0 && i > 0 && i < nights;
        if (missed) {
          continue;
        }
        boolean left = tire % (dual ? 4 : 2) < (dual ? 2 : 1);
        double sun = world == World.SUN && left ? 12 * random.nextDouble() : 0;
        boolean spareOn = world == World.SPARE && tire == 1 && i >= slipAt;
        if (spareOn && i == slipAt) {
          trips.change(text(at - 60), 1, "T2", "T" + tires + "S");
          fill[1] = (psi + around) / warm;
        }
        boolean slips = world == World.SLIPS && i == slipAt;
        int from = slips && swaps && tire < 2 ? 1 - tire : tire;
        double reference = world == World.SEALED ? SEA_LEVEL_PSI : around;
        double shown = fill[from] * (warm + sun) - reference + bias + 0.5 * noise(world);
        double noted = slips && !swaps && tire == 1 ? shown / 14.5038 : shown;
        String id = spareOn ? "T" + tires + "S" : "T" + (tire + 1);
        trips.read(text(at), id, String.format(Locale.ROOT, "%.2f psi", noted));
        if (tire == 0) {
          startFill = firstRead ? startFill : fill[0];
          firstRead = true;
          lastFill = fill[0];
          lastKelvins = warm;
        }
      }
    }
    double low = Arrays.stream(feet).min().orElse(0);
    double climb = Arrays.stream(feet).max().orElse(0) - low;
    Trip trip = world == World.SPARE ? withSpare(trips.trip(), tires) : trips.trip();
    return new Simulated(trip, tires, cause, (startFill - lastFill) * lastKelvins, climb);
  }

  private static Trip withSpare(Trip trip, int count) {
    Rig rig = trip.rig();
    Tire like = rig.tires().get(1);
    List<Tire> tires = new ArrayList<>(rig.tires());
    tires.add(
        new Tire(
            "T" + count + "S",
            like.type(),
            like.dateCode(),
            like.tread(),
            like.heatFactor(),
            null,
            Set.of(),
            Remarks.NONE));
    return trip.withRig(
        new Rig(
            rig.name(),
            rig.vehicles(),
            rig.tireTypes(),
            tires,
            rig.spares(),
            rig.gauges(),
            rig.compressorTop(),
            rig.hitch(),
            rig.tickets(),
            rig.remarks()));
  }

  private double noise(World world) {
    if (world != World.HARDER) {
      return random.nextGaussian();
    }
    // Student's t with three degrees of freedom, scaled to the same spread.
    double chi = 0;
    for (int i = 0; i < 3; i++) {
      double one = random.nextGaussian();
      chi += one * one;
    }
    return random.nextGaussian() / Math.sqrt(chi / 3) / Math.sqrt(3);
  }

  private static double typed(double middle, double swing, long seconds) {
    double hour = Math.floorMod(seconds, DAY) / 3600.0;
    return middle + swing * Math.cos((hour - 15) / 24 * 2 * Math.PI);
  }

  /** The tire after a night: six hours of the heat balance in steps of a minute, warm at first. */
  private double tireKelvins(World world, double middle, double swing, double airError, long at) {
    double tau = 2700 * Math.exp((world == World.HARDER ? 0.3 : 0.2) * random.nextGaussian());
    double tire = kelvins(typed(middle, swing, at - 6 * 3600)) + airError + 5;
    for (long t = at - 6 * 3600; t < at; t += 60) {
      double air = kelvins(typed(middle, swing, t)) + airError;
      tire += (air - tire) * 60 / tau;
    }
    return tire;
  }

  private static String text(long seconds) {
    return Instant.ofEpochSecond(seconds).toString().replace(":00Z", "Z");
  }
}

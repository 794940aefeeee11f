package dawngauge.simulated;

import dawngauge.forecast.Forecaster;
import dawngauge.forecast.ReadingCheck;
import dawngauge.forecast.TireAtStop;
import dawngauge.testdata.Forecasts;
import dawngauge.trip.Trip;
import dawngauge.trip.WheelPosition;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;

/** How often the forecast's 90 % range of a reading holds what a simulated gauge shows. */
final class ReadingRanges {

  /** Which readings. */
  enum Stratum {
    ALL,
    /** At dawn, after a night. */
    COLD,
    /** The same with the air under freezing. */
    COLD_DAWN,
    /** Within ten minutes of an arrival. */
    WARM,
    /** The same with truck tires. */
    WARM_TRUCK,
    /** The same with smaller tires. */
    WARM_SMALL,
    DUALS,
    UNWEIGHED,
    DAY_FIVE,
    /** On a pass. */
    PASS
  }

  /** From what a reading is forecast. */
  enum Known {
    /** The first morning's reading and forecast alone. */
    FIRST_MORNING,
    /** Also all readings noted before it. */
    AS_THEY_COME
  }

  /** Heat factors by kind of tire. */
  record HeatFactors(double truck, double small) {

    /** Nothing is typed. */
    static final HeatFactors NONE = new HeatFactors(1, 1);

    private static final double MORE = 2;

    /**
     * Those with which warm readings of other hauls are right in the middle: what crews would know
     * of such tires after many hauls.
     */
    static HeatFactors learned(int hauls, long seed) {
      ReadingRanges plain = warm(NONE, hauls, seed);
      ReadingRanges more = warm(new HeatFactors(MORE, MORE), hauls, seed);
      return new HeatFactors(
          factor(plain, more, Stratum.WARM_TRUCK), factor(plain, more, Stratum.WARM_SMALL));
    }

    private static ReadingRanges warm(HeatFactors factors, int hauls, long seed) {
      return ReadingRanges.of(SimulatedHaul.World.PLAIN, Known.FIRST_MORNING, factors, hauls, seed);
    }

    private static double factor(ReadingRanges plain, ReadingRanges more, Stratum stratum) {
      double off = plain.of(stratum).mean();
      return 1 + (MORE - 1) * off / (off - more.of(stratum).mean());
    }

    private double of(TireKind kind) {
      return kind.equals(TireKind.TRUCK) ? truck : small;
    }
  }

  private static final double NINETY = 1.6449; // 0.95 quantile of the standard normal distribution
  private static final double FREEZING = 273.15;
  private static final int DAYS = 5;
  private static final int FIFTH = 4;

  /** Rigs are set to so much of the label's pressure, cold, some days before; inferred. */
  private static final double LEAST = 0.92;

  private static final double MOST = 1.04;

  /** Part of the stops with air; no air is added here. */
  private static final double HOSES = 0.5;

  private final Map<Stratum, Tally> tallies = new EnumMap<>(Stratum.class);

  /** Readings of some stratum. */
  static final class Tally {
    private int count;
    private int inside;
    private double off;
    private double squares;
    private double told;
    private int hauls;
    private double ofHauls;
    private double haulsSquared;

    private void add(double off, double sigma) {
      count++;
      inside += Math.abs(off) <= NINETY * sigma ? 1 : 0;
      this.off += off / Units.PSI;
      squares += off * off / Units.PSI / Units.PSI;
      told += sigma / Units.PSI;
    }

    private void addAll(Tally haul) {
      count += haul.count;
      inside += haul.inside;
      off += haul.off;
      squares += haul.squares;
      told += haul.told;
      double missed = haul.inside - 0.9 * haul.count;
      hauls++;
      ofHauls += missed;
      haulsSquared += missed * missed;
    }

    /** How many readings. */
    int count() {
      return count;
    }

    /** Part of them within their range. */
    double held() {
      return (double) inside / count;
    }

    /** Standard error of that were all readings independent. */
    double binomial() {
      return Math.sqrt(held() * (1 - held()) / count);
    }

    /** The same with whole hauls independent, which is what they are. */
    double byHauls() {
      double mean = ofHauls / hauls;
      return Math.sqrt((haulsSquared / hauls - mean * mean) * hauls) / count;
    }

    /** Mean of reading less expected, in psi. */
    double mean() {
      return off / count;
    }

    /** Its standard deviation, in psi. */
    double spread() {
      return Math.sqrt(squares / count - mean() * mean());
    }

    /** Mean standard deviation told, in psi. */
    double told() {
      return told / count;
    }
  }

  /**
   * From hauls of a seed.
   *
   * @param known from what each reading is forecast
   * @param factors heat factors that the crews type
   */
  static ReadingRanges of(
      SimulatedHaul.World world, Known known, HeatFactors factors, int hauls, long seed) {
    ReadingRanges ranges = new ReadingRanges();
    Random random = new Random(seed);
    for (int i = 0; i < hauls; i++) {
      Random own = new Random(random.nextLong());
      SimulatedHaul haul = new SimulatedHaul(own, world, SimulatedRig.Loads.LIKELY, DAYS, HOSES);
      CrewNotes notes = new CrewNotes(haul, factors.of(haul.rig().kind()));
      List<Round> rounds = Round.all(haul, LEAST, MOST);
      List<Round> later = rounds.subList(1, rounds.size());
      Map<Stratum, Tally> tallies = new EnumMap<>(Stratum.class);
      if (known == Known.AS_THEY_COME) {
        add(haul, notes, notes.trip(rounds.get(0), later), later, tallies);
      } else {
        for (Round round : later) {
          Trip trip = notes.trip(rounds.get(0), List.of(round));
          add(haul, notes, trip, List.of(round), tallies);
        }
      }
      ranges.addAll(tallies);
    }
    return ranges;
  }

  private static void add(
      SimulatedHaul haul, CrewNotes notes, Trip trip, List<Round> rounds, Map<Stratum, Tally> own) {
    Forecaster forecaster = Forecasts.forecaster(trip);
    for (WheelPosition position : trip.rig().positions()) {
      List<TireAtStop> stops = forecaster.track(position).orElseThrow().stops();
      for (Round round : rounds) {
        int found = 0;
        for (ReadingCheck check : stops.get(round.stop()).readings()) {
          double at = notes.seconds((double) check.reading().time().instant().getEpochSecond());
          if (at == round.seconds()) {
            found++;
            for (Stratum stratum : Stratum.values()) {
              if (in(stratum, haul, round)) {
                own.computeIfAbsent(stratum, key -> new Tally()).add(check.off(), check.sigma());
              }
            }
          }
        }
        if (found != 1) {
          throw new AssertionError("a reading of stop " + round.stop() + " was checked " + found);
        }
      }
    }
  }

  private static boolean in(Stratum stratum, SimulatedHaul haul, Round round) {
    return switch (stratum) {
      case ALL -> true;
      case COLD -> round.cold();
      case COLD_DAWN -> round.cold() && round.airKelvins() < FREEZING;
      case WARM -> !round.cold();
      case WARM_SMALL -> !round.cold() && !haul.rig().kind().equals(TireKind.TRUCK);
      case WARM_TRUCK -> !round.cold() && haul.rig().kind().equals(TireKind.TRUCK);
      case DUALS -> haul.rig().dual();
      case UNWEIGHED -> haul.rig().scale() == SimulatedRig.Scale.NONE;
      case DAY_FIVE -> (int) Math.floor(round.seconds() / Units.DAY) == FIFTH;
      case PASS -> haul.stops().get(round.stop()).pass();
    };
  }

  private void addAll(Map<Stratum, Tally> haul) {
    haul.forEach(
        (stratum, tally) -> tallies.computeIfAbsent(stratum, key -> new Tally()).addAll(tally));
  }

  /** What came of a stratum. */
  Tally of(Stratum stratum) {
    return tallies.getOrDefault(stratum, new Tally());
  }

  @Override
  public String toString() {
    StringBuilder text = new StringBuilder();
    tallies.forEach(
        (stratum, tally) ->
            text.append(
                String.format(
                    Locale.ROOT,
                    "%-10s %7d readings, held %.1f %% (binomial σ %.1f, by hauls %.1f),"
                        + " off %+.2f ± %.2f psi, told %.2f%n",
                    stratum,
                    tally.count,
                    100 * tally.held(),
                    100 * tally.binomial(),
                    100 * tally.byHauls(),
                    tally.mean(),
                    tally.spread(),
                    tally.told())));
    return text.toString();
  }
}

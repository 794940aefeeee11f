package dawngauge.advice;

import static org.assertj.core.api.Assertions.assertThat;

import dawngauge.trip.AxleRef;
import dawngauge.trip.WheelPosition;
import dawngauge.trip.WheelSlot;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/**
 * The search for the fewest stops against trying everything: every set of stops, and at each of
 * them every figure or none, for every tire, on small invented rigs.
 */
class StopSearchTest {

  private static final int STOPS = 5;
  private static final WheelPosition ANY =
      new WheelPosition(new AxleRef("trailer", 1), WheelSlot.LEFT);

  /** An invented tire, and everything tried with it. Fills are in whatever unit. */
  private static final class Invented {
    private final TireConstraints.Stop[] stops = new TireConstraints.Stop[STOPS];
    private final double[] keeps = new double[STOPS];
    private final double[] loses = new double[STOPS];
    private final double[][] floor = new double[STOPS + 1][STOPS];
    private final double[] most = new double[STOPS];
    private final double[] aim = new double[STOPS];
    private final double begins;

    Invented(Random random) {
      begins = 88 + random.nextInt(14);
      for (int i = 0; i < STOPS; i++) {
        keeps[i] = 1 - 0.04 * random.nextDouble();
        loses[i] = random.nextDouble();
        double kelvins = 0.9 + 0.2 * random.nextDouble();
        double around = 5 + 10 * random.nextDouble();
        int aimed = (int) (98 * kelvins - around) + random.nextInt(3);
        int highest = aimed + random.nextInt(5);
        int addTo = random.nextInt(4) == 0 ? highest - random.nextInt(6) : highest;
        stops[i] =
            random.nextInt(4) == 0
                ? TireConstraints.Stop.NOTHING
                : new TireConstraints.Stop(
                    random.nextBoolean(),
                    random.nextBoolean(),
                    Math.min(aimed, addTo),
                    addTo,
                    aimed,
                    highest,
                    around,
                    kelvins,
                    aimed + 0.3,
                    random.nextInt(3) == 0 ? 97 : Double.NEGATIVE_INFINITY);
        aim[i] = random.nextInt(4) == 0 ? 90 : Double.NEGATIVE_INFINITY;
        most[i] = random.nextInt(3) == 0 ? 101 + 4 * random.nextDouble() : Double.POSITIVE_INFINITY;
        double asked = random.nextInt(3) == 0 ? Double.NEGATIVE_INFINITY : 84 + random.nextInt(14);
        for (int origin = 0; origin <= STOPS; origin++) {
          floor[origin][i] = asked + random.nextDouble();
        }
      }
    }

    /** A fill one stop further on. */
    private double after(int stop, double fill) {
      return keeps[stop] * fill - loses[stop];
    }

    TireConstraints way() {
      double[][] example = new double[STOPS + 1][STOPS];
      double[] growth = new double[STOPS];
      growth[0] = 1;
      for (int i = 1; i < STOPS; i++) {
        growth[i] = growth[i - 1] * keeps[i - 1];
      }
      example[0][0] = begins;
      for (int i = 1; i < STOPS; i++) {
        example[0][i] = after(i - 1, example[0][i - 1]);
      }
      RequiredFill asked = new RequiredFill(STOPS);
      for (int set = 0; set < STOPS; set++) {
        example[1 + set][set] = 95;
        for (int i = set + 1; i < STOPS; i++) {
          example[1 + set][i] = after(i - 1, example[1 + set][i - 1]);
        }
      }
      for (int i = 0; i < STOPS; i++) {
        asked.aim(i, aim[i]);
        for (int origin = 0; origin <= STOPS; origin++) {
          asked.floor(origin, i, floor[origin][i]);
        }
      }
      return new TireConstraints(ANY, 0, 1, stops, example, growth, asked, most);
    }

    private boolean fits(int origin, int stop, double fill) {
      return fill >= floor[origin][stop] - 1e-7
          && fill >= aim[stop] - 1e-7
          && fill <= most[stop] + 1e-7;
    }

    /** The best that trying everything finds: days under aim, settings; null where nothing does. */
    int @Nullable [] tried(Set<Integer> chosen, int stop, int origin, double fill) {
      if (stop == STOPS) {
        return new int[] {0, 0};
      }
      int[] best = null;
      if (fits(origin, stop, fill)) {
        best = better(best, on(chosen, stop, origin, fill), 0);
      }
      TireConstraints.Stop here = stops[stop];
      double shown = fill * here.kelvins() - here.air();
      for (int steps = 40; chosen.contains(stop) && steps <= 130; steps++) {
        boolean adds = steps > shown;
        boolean may =
            adds
                ? here.canAdd() && steps >= here.from() && steps <= here.addTo()
                : here.canRelease() && steps >= here.releaseTo() && steps <= here.most();
        double set = (steps + here.air()) / here.kelvins();
        if (may && fits(1 + stop, stop, set)) {
          best = better(best, on(chosen, stop, 1 + stop, set), 1);
        }
      }
      return best;
    }

    private int @Nullable [] on(Set<Integer> chosen, int stop, int origin, double fill) {
      int[] later = tried(chosen, stop + 1, origin, after(stop, fill));
      return later == null
          ? null
          : new int[] {later[0] + (fill < stops[stop].aimed() ? 1 : 0), later[1]};
    }

    private static int @Nullable [] better(
        int @Nullable [] best, int @Nullable [] other, int settings) {
      if (other == null) {
        return best;
      }
      int[] with = {other[0], other[1] + settings};
      return best == null || Arrays.compare(with, best) < 0 ? with : best;
    }
  }

  private static Set<Integer> members(int bits) {
    Set<Integer> set = new HashSet<>();
    for (int i = 0; i < STOPS; i++) {
      if ((bits & 1 << i) != 0) {
        set.add(i);
      }
    }
    return set;
  }

  @Test
  void whatASetOfStopsCanDoIsWhatTryingEverythingFinds() {
    Random random = new Random(20270406);
    int[] outcomes = new int[2];
    for (int round = 0; round < 1500; round++) {
      Invented invented = new Invented(random);
      TireConstraints way = invented.way();
      for (int bits = 0; bits < 1 << STOPS; bits++) {
        Set<Integer> chosen = members(bits);
        List<Integer> rising = chosen.stream().sorted().toList();
        int[] tried = invented.tried(chosen, 0, 0, invented.begins);
        boolean does = way.failsAt(rising) == STOPS;
        assertThat(does).as("round %d, stops %s", round, rising).isEqualTo(tried != null);
        Map<Integer, Integer> figures = FigureChoice.of(way, rising, Map.of());
        assertThat(figures != null).isEqualTo(does);
        outcomes[does ? 1 : 0]++;
        if (tried != null && figures != null) {
          assertThat(followed(invented, figures))
              .as("round %d, %s", round, figures)
              .isEqualTo(tried);
        }
      }
    }
    assertThat(outcomes[0]).isGreaterThan(5000);
    assertThat(outcomes[1]).isGreaterThan(5000);
  }

  /** Days under aim and settings of figures that were chosen; fails where a limit is not kept. */
  private static int[] followed(Invented invented, Map<Integer, Integer> figures) {
    double fill = invented.begins;
    int origin = 0;
    int under = 0;
    for (int stop = 0; stop < STOPS; stop++) {
      Integer steps = figures.get(stop);
      TireConstraints.Stop here = invented.stops[stop];
      if (steps != null) {
        double shown = fill * here.kelvins() - here.air();
        assertThat(steps > shown ? here.canAdd() : here.canRelease()).isTrue();
        fill = (steps + here.air()) / here.kelvins();
        origin = 1 + stop;
      }
      assertThat(invented.fits(origin, stop, fill)).isTrue();
      under += fill < here.aimed() ? 1 : 0;
      fill = invented.after(stop, fill);
    }
    return new int[] {under, figures.size()};
  }

  @Test
  void noRigHasASmallerSetThanTheSearchFindsAndItFindsAllOfThatSize() {
    Random random = new Random(4711);
    Map<Integer, Integer> sizes = new TreeMap<>();
    int moreThanOneTireNeeds = 0;
    for (int round = 0; round < 1500; round++) {
      List<Invented> rig =
          List.of(new Invented(random), new Invented(random), new Invented(random));
      List<TireConstraints> ways = rig.stream().map(Invented::way).toList();
      Set<List<Integer>> best = new HashSet<>();
      int least = Integer.MAX_VALUE;
      int single = 0;
      for (int bits = 0; bits < 1 << STOPS; bits++) {
        Set<Integer> chosen = members(bits);
        boolean all = true;
        for (Invented tire : rig) {
          all &= tire.tried(chosen, 0, 0, tire.begins) != null;
        }
        if (all && chosen.size() <= least) {
          if (chosen.size() < least) {
            best.clear();
          }
          least = chosen.size();
          best.add(chosen.stream().sorted().toList());
        }
      }
      for (TireConstraints way : ways) {
        StopSearch.Result alone = StopSearch.search(List.of(way), Set.of(), usable());
        single = Math.max(single, alone.sets().isEmpty() ? 0 : alone.sets().get(0).size());
      }
      StopSearch.Result found = StopSearch.search(ways, Set.of(), usable());
      assertThat(new HashSet<>(found.sets())).as("round %d", round).isEqualTo(best);
      assertThat(found.proven()).isTrue();
      if (!best.isEmpty()) {
        sizes.merge(least, 1, Integer::sum);
        moreThanOneTireNeeds += least > single ? 1 : 0;
      }
    }
    assertThat(sizes.keySet()).contains(0, 1, 2, 3);
    assertThat(moreThanOneTireNeeds).as("rigs that need more than any tire alone").isPositive();
  }

  @Test
  void aPinnedStopIsInEverySetAndAForbiddenOneInNone() {
    Random random = new Random(99);
    int checked = 0;
    for (int round = 0; round < 300; round++) {
      TireConstraints way = new Invented(random).way();
      boolean[] usable = usable();
      usable[1] = false;
      for (List<Integer> set : StopSearch.search(List.of(way), Set.of(3), usable).sets()) {
        assertThat(set).contains(3).doesNotContain(1);
        checked++;
      }
    }
    assertThat(checked).isGreaterThan(50);
  }

  private static boolean[] usable() {
    boolean[] usable = new boolean[STOPS];
    Arrays.fill(usable, true);
    return usable;
  }
}

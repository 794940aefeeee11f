package dawngauge.advice;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * What one tire is set to at the stops of a plan: first the fewest days that start more than a
 * gauge step under its aim, then the fewest settings, then figures nearest the aim, ties upward.
 */
final class FigureChoice {

  private final TireConstraints tire;

  /** One way up to a stop. */
  private record Path(
      int origin, int steps, int underAim, int settings, double off, @Nullable Path before) {}

  private static final Comparator<Path> BETTER =
      Comparator.comparingInt(Path::underAim)
          .thenComparingInt(Path::settings)
          .thenComparingDouble(Path::off);

  private FigureChoice(TireConstraints tire) {
    this.tire = tire;
  }

  /**
   * Figures in steps of the gauge, by stop; only stops where the tire is set.
   *
   * @param chosen stops of the plan, rising, at which the tire can be kept within its limits
   * @param fixed figures that were chosen by hand, by stop
   * @return null where it cannot be kept within its limits
   */
  static @Nullable Map<Integer, Integer> of(
      TireConstraints tire, List<Integer> chosen, Map<Integer, Integer> fixed) {
    return new FigureChoice(tire).best(chosen, fixed);
  }

  private @Nullable Map<Integer, Integer> best(List<Integer> chosen, Map<Integer, Integer> fixed) {
    List<Integer> stops = chosen.stream().filter(at -> at >= tire.first()).toList();
    List<Path> paths = new ArrayList<>();
    int firstStop = !stops.isEmpty() ? stops.get(0) : tire.count();
    keep(paths, new Path(0, 0, 0, 0, 0, null), tire.first(), firstStop);
    for (int i = 0; i < stops.size(); i++) {
      int at = stops.get(i);
      int until = i + 1 < stops.size() ? stops.get(i + 1) : tire.count();
      List<Path> next = new ArrayList<>();
      for (Path path : fixed.containsKey(at) ? List.<Path>of() : paths) {
        keep(next, path, at, until);
      }
      for (Path path : settings(paths, at, fixed.get(at)).values()) {
        keep(next, path, at, until);
      }
      paths = next;
    }
    return paths.stream().min(BETTER).map(FigureChoice::figures).orElse(null);
  }

  private void keep(List<Path> paths, Path path, int from, int until) {
    if (tire.lasts(path.origin(), path.steps(), from, until)) {
      int under = tire.underAim(path.origin(), path.steps(), from, until);
      paths.add(
          new Path(
              path.origin(),
              path.steps(),
              path.underAim() + under,
              path.settings(),
              path.off(),
              path.before()));
    }
  }

  /** The best way to each figure that can be set at a stop. */
  private Map<Integer, Path> settings(List<Path> paths, int at, @Nullable Integer fixed) {
    Map<Integer, Path> best = new HashMap<>();
    TireConstraints.Stop stop = tire.stop(at);
    if (!stop.acts() && fixed == null) {
      return best;
    }
    for (Path path : paths) {
      double shown = tire.shown(path.origin(), path.steps(), at);
      int low = fixed == null ? stop.lowest() : fixed;
      int high = fixed == null ? stop.most() : fixed;
      for (int steps = low; steps <= high; steps++) {
        if (fixed == null ? stop.allows(shown, steps) : stop.allowsByHand(shown, steps)) {
          double wanted = Double.isNaN(stop.wanted()) ? 0 : stop.wanted() / tire.step();
          double off = Math.abs(steps - wanted) - steps * 1e-6;
          Path set =
              new Path(1 + at, steps, path.underAim(), path.settings() + 1, path.off() + off, path);
          best.merge(steps, set, (a, b) -> BETTER.compare(a, b) <= 0 ? a : b);
        }
      }
    }
    return best;
  }

  private static Map<Integer, Integer> figures(Path last) {
    Map<Integer, Integer> figures = new TreeMap<>();
    for (Path path = last; path != null && path.origin() > 0; path = path.before()) {
      figures.put(path.origin() - 1, path.steps());
    }
    return figures;
  }
}

package dawngauge.advice;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;

/**
 * Finds the smallest sets of stops at which every tire of a rig can be kept within its limits. More
 * stops never hurt a tire, so sets are tried by size: where a tire fails, one of the stops that can
 * help it must be added.
 */
final class StopSearch {

  /** Sets looked at before the search gives up proving; ours. */
  private static final int MOST_SETS = 20_000;

  private final List<TireConstraints> tires;
  private final boolean[] usable;
  private final Set<Set<Integer>> seen = new HashSet<>();
  private final List<List<Integer>> found = new ArrayList<>();
  private boolean gaveUp;
  private Failure furthest = new Failure(List.of(), -1, -1);

  /**
   * Why a set does not do.
   *
   * @param chosen the set
   * @param tire index of the tire
   * @param at the stop through which it does not last
   */
  record Failure(List<Integer> chosen, int tire, int at) {}

  /**
   * What was found.
   *
   * @param sets the smallest sets, each rising; none where none does
   * @param proven whether no smaller set does
   * @param closest of the sets one smaller, the failure that comes latest; its tire is −1 where
   *     there is no smaller set
   */
  record Result(List<List<Integer>> sets, boolean proven, Failure closest) {}

  private StopSearch(List<TireConstraints> tires, boolean[] usable) {
    this.tires = tires;
    this.usable = usable.clone();
  }

  /**
   * Searches.
   *
   * @param tires the rig
   * @param pinned stops that are in each set
   * @param usable which further stops may be used
   */
  static Result search(List<TireConstraints> tires, Set<Integer> pinned, boolean[] usable) {
    StopSearch search = new StopSearch(tires, usable);
    int most = pinned.size();
    for (int i = 0; i < usable.length; i++) {
      most += usable[i] && !pinned.contains(i) ? 1 : 0;
    }
    Failure closest = search.furthest;
    for (int size = pinned.size(); size <= most; size++) {
      search.seen.clear();
      search.furthest = new Failure(List.of(), -1, -1);
      search.extend(new TreeSet<>(pinned), size);
      if (!search.found.isEmpty() || search.gaveUp) {
        break;
      }
      closest = search.furthest;
    }
    return new Result(search.found, !search.gaveUp, closest);
  }

  private void extend(SortedSet<Integer> chosen, int size) {
    if (seen.size() >= MOST_SETS) {
      gaveUp = true;
      return;
    }
    if (!seen.add(new HashSet<>(chosen))) {
      return;
    }
    List<Integer> set = List.copyOf(chosen);
    Failure failure = failure(set);
    if (failure.tire() < 0) {
      if (chosen.size() == size) {
        found.add(set);
      }
      return;
    }
    if (failure.at() > furthest.at()) {
      furthest = failure;
    }
    if (chosen.size() == size) {
      return;
    }
    for (int stop : helpful(failure)) {
      chosen.add(stop);
      extend(chosen, size);
      chosen.remove(stop);
    }
  }

  /** The failure of the tire that can be helped in the fewest ways. */
  private Failure failure(List<Integer> set) {
    Failure worst = new Failure(set, -1, -1);
    int fewest = Integer.MAX_VALUE;
    for (int i = 0; i < tires.size(); i++) {
      int at = tires.get(i).failsAt(set);
      if (at < tires.get(i).count()) {
        Failure failure = new Failure(set, i, at);
        int ways = helpful(failure).size();
        if (ways < fewest) {
          fewest = ways;
          worst = failure;
        }
      }
    }
    return worst;
  }

  /**
   * The stops of which one must be added: those at which some figure lasts through the stop where
   * the tire fails, and, where a stop already chosen gives less than a free choice, those before
   * it.
   */
  private List<Integer> helpful(Failure failure) {
    TireConstraints tire = tires.get(failure.tire());
    int bound = -1;
    for (int set : failure.chosen()) {
      if (set <= failure.at() && tire.stop(set).acts() && !tire.stop(set).resets()) {
        bound = set;
      }
    }
    List<Integer> stops = new ArrayList<>();
    for (int at = tire.first(); at <= failure.at(); at++) {
      boolean free = usable[at] && !failure.chosen().contains(at);
      if (free && (tire.helps(at, failure.at()) || (at < bound && tire.stop(at).acts()))) {
        stops.add(at);
      }
    }
    return stops;
  }
}

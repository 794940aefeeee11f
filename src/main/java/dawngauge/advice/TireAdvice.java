package dawngauge.advice;

import dawngauge.forecast.TireAtStop;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What to do about one tire at one stop.
 *
 * @param tire the tire there
 * @param reasons why, strongest first
 * @param set the figure to set, where air is to be added or let out
 * @param timed the same by the minute at which the crew stands at the tire
 * @param readingTaken whether the log holds a cold reading of it from this stop
 */
public record TireAdvice(
    TireAtStop tire,
    List<Reason> reasons,
    @Nullable SetFigure set,
    @Nullable TimedFigures timed,
    boolean readingTaken) {

  private static final Comparator<Reason> STRONGEST_FIRST =
      Comparator.comparing(Reason::mark).reversed().thenComparingInt(Reason::rank);

  /** Sorts the reasons. */
  public TireAdvice {
    if (reasons.size() > 1) {
      List<Reason> sorted = new ArrayList<>(reasons);
      sorted.sort(STRONGEST_FIRST);
      reasons = sorted;
    }
    reasons = List.copyOf(reasons);
  }

  /** The same with one more reason. */
  TireAdvice with(Reason reason) {
    List<Reason> more = new ArrayList<>(reasons);
    more.add(reason);
    return new TireAdvice(tire, more, set, timed, readingTaken);
  }

  /** The same where the rig has left: nothing is to be set there any more. */
  TireAdvice past() {
    return new TireAdvice(
        tire,
        reasons.stream().filter(reason -> reason.mark() != Mark.ADJUST).toList(),
        null,
        null,
        readingTaken);
  }

  /** Whether what it meets until the next stop is not known, so that no chance can be told. */
  public boolean aheadUnknown() {
    return reasons.stream().anyMatch(reason -> reason.mark() == Mark.UNKNOWN);
  }

  /** The strongest mark; clear only where margin and label are known. */
  public Mark mark() {
    Mark asked = reasons.isEmpty() ? Mark.CLEAR : reasons.get(0).mark(); // strongest first
    if (asked.compareTo(Mark.UNKNOWN) > 0) {
      return asked;
    }
    boolean unknown =
        tire.leaving() == null
            || Double.isNaN(tire.margin())
            || Double.isNaN(tire.fitted().labelPascals());
    return unknown ? Mark.UNKNOWN : asked;
  }
}

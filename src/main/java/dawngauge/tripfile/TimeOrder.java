package dawngauge.tripfile;

import dawngauge.problem.Problem;
import dawngauge.problem.ProblemCode;
import dawngauge.trip.TypedTime;
import org.jspecify.annotations.Nullable;

/** Watches that times, as they are met, never go back. Equal times are in order. */
final class TimeOrder {
  private final FileProblems problems;
  private @Nullable TypedTime latest;
  private String latestPlace = "";

  TimeOrder(FileProblems problems) {
    this.problems = problems;
  }

  /** The next time; null or one that could not be read is passed over. */
  void next(@Nullable TypedTime time, String place) {
    if (time == null || time.text().isEmpty()) {
      return;
    }
    TypedTime before = latest;
    if (before != null && time.instant().isBefore(before.instant())) {
      problems.add(
          Problem.of(
              ProblemCode.TIMES_OUT_OF_ORDER, place, time.text(), before.text(), latestPlace));
    } else {
      latest = time;
      latestPlace = place;
    }
  }
}

package dawngauge.tripfile;

import dawngauge.problem.Problem;
import dawngauge.problem.ProblemCode;
import dawngauge.problem.ProblemCode.Severity;
import java.util.ArrayList;
import java.util.List;

/** The problems met in one file, in order; so many of them that a person could mend them. */
final class FileProblems {
  /** Most errors kept, and most problems of other severity before further ones are counted only. */
  static final int MOST = 1000;

  private final List<Problem> kept = new ArrayList<>();
  private int count;
  private int errors;

  void add(Problem problem) {
    count++;
    boolean error = problem.code().severity() == Severity.ERROR;
    errors += error ? 1 : 0;
    if (kept.size() < MOST || (error && errors <= MOST)) {
      kept.add(problem);
    }
  }

  /** How many have been met. */
  int count() {
    return count;
  }

  /** Whether something is wrong at a place. */
  boolean isToldAt(String place) {
    return kept.stream().anyMatch(problem -> problem.where().equals(place));
  }

  boolean hasError() {
    return errors > 0;
  }

  /** Those kept, and how many more there were. */
  List<Problem> list() {
    List<Problem> all = new ArrayList<>(kept);
    if (count > kept.size()) {
      all.add(Problem.of(ProblemCode.MORE_PROBLEMS, "", "" + (count - kept.size())));
    }
    return all;
  }
}

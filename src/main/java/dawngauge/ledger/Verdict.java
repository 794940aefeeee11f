package dawngauge.ledger;

import dawngauge.advice.Advice;
import dawngauge.advice.Mark;
import dawngauge.trip.Trip;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * The trip in one line: whether the rig may go, at how many stops something is to be set, to be
 * checked or not known, and where the margin is lowest. Each part knows the rows it speaks of.
 *
 * @param parts what is told, in the order of {@link Kind}
 */
public record Verdict(List<Part> parts) {

  /** What a part is of. */
  public enum Kind {
    /** Whether the rig may go, and where it may not. */
    GO,
    /** Where tires are to be set. */
    SET,
    /** Where tires are worth a check. */
    CHECK,
    /** Where something is not known. */
    UNKNOWN,
    /** Where the load margin is lowest. */
    LEAST
  }

  /**
   * A part.
   *
   * @param text a few words
   * @param rows the stops it speaks of, counted from 0
   * @param mark what it counts; clear where it counts no mark
   */
  public record Part(Kind kind, String text, List<Integer> rows, Mark mark) {

    /** Copies the list. */
    public Part {
      rows = List.copyOf(rows);
    }
  }

  /** Copies the list. */
  public Verdict {
    parts = List.copyOf(parts);
  }

  /** What is told of a trip; where nothing is computed, all of it is not known. */
  public static Verdict of(Trip trip, Ledger ledger, @Nullable Advice advice) {
    Map<Mark, List<Integer>> rows = rows(trip, advice);
    List<Integer> hold = rows.getOrDefault(Mark.HOLD, List.of());
    List<Integer> set = rows.getOrDefault(Mark.ADJUST, List.of());
    List<Integer> check = rows.getOrDefault(Mark.RECHECK, List.of());
    List<Integer> unknown = rows.getOrDefault(Mark.UNKNOWN, List.of());
    Optional<Summary.Lowest> lowest =
        advice == null ? Optional.empty() : Summary.lowest(trip, advice);
    return new Verdict(
        List.of(
            go(trip, ledger, hold, unknown),
            new Part(Kind.SET, count(set, "to set", "nothing to set"), set, Mark.ADJUST),
            new Part(Kind.CHECK, count(check, "to check", "nothing to check"), check, Mark.RECHECK),
            new Part(Kind.UNKNOWN, count(unknown, "not known", "all known"), unknown, Mark.UNKNOWN),
            new Part(
                Kind.LEAST,
                lowest.map(Summary.Lowest::text).orElse("load margin not known"),
                lowest.map(found -> List.of(found.stop())).orElse(List.of()),
                Mark.CLEAR)));
  }

  private static Part go(Trip trip, Ledger ledger, List<Integer> hold, List<Integer> unknown) {
    boolean never = ledger.go().stream().anyMatch(line -> line.startsWith(GoLines.NO_GO));
    int stops = trip.route().stops().size();
    String held = hold.isEmpty() ? "see the rig" : hold.size() + " on hold";
    String text;
    if (never) {
      text = "no-go: " + held;
    } else if (!hold.isEmpty()) {
      text = "go as far as stop " + (hold.get(0) + 1) + ": " + held;
    } else if (unknown.size() == stops) {
      text = "go or not: not known";
    } else if (!unknown.isEmpty()) {
      text = "go, as far as it is known";
    } else {
      text = "go";
    }
    int others = ledger.putRight().size();
    return new Part(
        Kind.GO, text + (others == 0 ? "" : ", first put right " + others), hold, Mark.HOLD);
  }

  private static String count(List<Integer> rows, String what, String none) {
    return rows.isEmpty() ? none : rows.size() + " " + what;
  }

  /** The stops at which a tire has a mark; where no time is known, nothing else is. */
  private static Map<Mark, List<Integer>> rows(Trip trip, @Nullable Advice advice) {
    Map<Mark, List<Integer>> rows = new EnumMap<>(Mark.class);
    for (int i = 0; i < trip.route().stops().size(); i++) {
      Set<Mark> marks = EnumSet.noneOf(Mark.class);
      if (advice != null && i < advice.stops().size()) {
        advice.stops().get(i).tires().forEach(tire -> marks.add(tire.mark()));
      }
      if (marks.isEmpty()) {
        marks.add(Mark.UNKNOWN);
      }
      for (Mark mark : marks) {
        rows.computeIfAbsent(mark, key -> new ArrayList<>()).add(i);
      }
    }
    return rows;
  }
}

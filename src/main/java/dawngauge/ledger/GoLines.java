package dawngauge.ledger;

import dawngauge.fitness.Defect;
import dawngauge.fitness.FindingKind;
import dawngauge.fitness.Severity;
import dawngauge.quantity.UnitSystem;
import java.util.ArrayList;
import java.util.List;

/** Whether the rig may go, in a few lines for the head of every page. */
public final class GoLines {
  private GoLines() {}

  /** What keeps the rig where it stands begins so. */
  static final String NO_GO = "NO-GO: ";

  private static final String PUT_RIGHT = " to put right before leaving: see the rig";

  /** So many lines stand at the head of a page; the rest is counted. */
  private static final int FEW = 3;

  /** The first lines, and how many more there are. */
  public static List<String> few(List<String> lines) {
    if (lines.size() <= FEW) {
      return lines;
    }
    List<String> few = new ArrayList<>(lines.subList(0, FEW));
    few.set(FEW - 1, few.get(FEW - 1) + " (and " + (lines.size() - FEW) + " more, see the rig)");
    return few;
  }

  /** Those lines that keep the rig where it stands, or where it will stand. */
  public static List<String> against(List<String> lines) {
    return lines.stream().filter(line -> !line.endsWith(PUT_RIGHT)).toList();
  }

  /**
   * A line for each thing that stands against going, then how much else is to be put right.
   *
   * @param fitness worst first
   */
  public static List<String> of(List<Defect> fitness, UnitSystem units) {
    List<String> lines = new ArrayList<>();
    for (Defect defect : fitness) {
      if (defect.severity() == Severity.STOP) {
        lines.add(NO_GO + line(defect, units));
      } else if (defect.code() == FindingKind.HOLD_AHEAD) {
        lines.add(line(defect, units));
      }
    }
    int others = FitnessPage.count(others(fitness));
    if (others > 0) {
      lines.add(others + (lines.isEmpty() ? "" : " more") + PUT_RIGHT);
    }
    return lines;
  }

  /** What else is to be put right before leaving, a line each. */
  public static List<String> putRight(List<Defect> fitness, UnitSystem units) {
    return FitnessPage.places(others(fitness), units);
  }

  private static List<Defect> others(List<Defect> fitness) {
    return fitness.stream()
        .filter(
            defect -> defect.severity() == Severity.MEND && defect.code() != FindingKind.HOLD_AHEAD)
        .toList();
  }

  private static String line(Defect defect, UnitSystem units) {
    return defect.where() + ": " + defect.what().in(units);
  }
}

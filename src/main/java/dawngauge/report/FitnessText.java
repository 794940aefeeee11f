package dawngauge.report;

import dawngauge.fitness.Defect;
import dawngauge.fitness.Severity;
import dawngauge.ledger.Ledger;
import dawngauge.quantity.UnitSystem;
import dawngauge.trip.Trip;
import java.util.List;
import java.util.Locale;

/** What was found about the rig before the trip, as plain text of at most 100 columns. */
public final class FitnessText {

  private static final int INDENT = 15;

  private final PlainText out = new PlainText();

  private FitnessText() {}

  /**
   * The text.
   *
   * @param trip the trip
   * @param defects what was found, worst first
   * @param units the units to show
   */
  public static String of(Trip trip, List<Defect> defects, UnitSystem units) {
    FitnessText text = new FitnessText();
    text.out.wrapped("", trip.name() + ": is the rig fit to go?");
    text.out.wrapped("", summary(defects));
    Severity severity = null;
    for (Defect defect : defects) {
      if (defect.severity() != severity) {
        severity = defect.severity();
        text.out.line("");
        text.out.line(severity.word().toUpperCase(Locale.ROOT));
      }
      text.out.line("");
      text.out.wrapped("  ", defect.where());
      text.field("found", defect.what().in(units));
      text.field("do", defect.toDo().in(units));
      text.field("authority", defect.authority().text());
    }
    text.out.line("");
    for (String caution : Ledger.CAUTIONS) {
      text.out.wrapped("", caution);
    }
    return text.out.toString();
  }

  private static String summary(List<Defect> defects) {
    if (defects.isEmpty()) {
      return "Nothing was found in the figures of the file. Walk round and look all the same.";
    }
    StringBuilder line = new StringBuilder();
    for (Severity severity : Severity.values()) {
      long count = defects.stream().filter(defect -> defect.severity() == severity).count();
      if (count > 0) {
        line.append(line.length() == 0 ? "" : " · ")
            .append(count)
            .append(' ')
            .append(severity.word());
      }
    }
    return line.toString();
  }

  private void field(String name, String value) {
    out.wrapped(PlainText.left("    " + name, INDENT), value);
  }
}

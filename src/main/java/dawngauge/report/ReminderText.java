package dawngauge.report;

import dawngauge.ledger.Ledger;
import dawngauge.ledger.ReminderLine;
import dawngauge.ledger.Wording;
import java.util.List;

/** Reminders as plain text of at most 100 columns. */
public final class ReminderText {

  private ReminderText() {}

  /**
   * The text.
   *
   * @param title name of the trip
   * @param reminders in time order
   */
  public static String of(String title, List<ReminderLine> reminders) {
    PlainText out = new PlainText();
    out.wrapped("", title + ": when to look at the tires");
    if (reminders.isEmpty()) {
      out.line("Nothing is left to be reminded of.");
    }
    for (ReminderLine reminder : reminders) {
      out.line("");
      out.wrapped(
          "",
          Wording.day(reminder.start(), reminder.zone())
              + ", "
              + Wording.clock(reminder.start(), reminder.zone())
              + " "
              + Wording.zone(reminder.start(), reminder.zone())
              + " · "
              + reminder.summary());
      for (String line : reminder.text().lines().toList()) {
        out.wrapped("  ", line);
      }
    }
    out.line("");
    Ledger.CAUTIONS.forEach(caution -> out.wrapped("- ", caution));
    return out.toString();
  }
}

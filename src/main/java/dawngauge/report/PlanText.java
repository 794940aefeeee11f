package dawngauge.report;

import dawngauge.ledger.Ledger;
import dawngauge.ledger.PlanPage;
import java.util.List;

/** An adjustment plan as plain text of at most 100 columns. */
public final class PlanText {

  private static final int NAME = 30;
  private static final int COLUMN = 11;

  private static final List<String> HEADS =
      List.of("stops", "margin", "chance", "under", "over", "below");

  private final PlainText out = new PlainText();

  private PlanText() {}

  /**
   * The text.
   *
   * @param title name of the trip
   * @param page the plan
   */
  public static String of(String title, PlanPage page) {
    PlanText text = new PlanText();
    text.write(title, page);
    return text.out.toString();
  }

  private void write(String title, PlanPage page) {
    out.wrapped("", title + ": where to set the tires");
    out.wrapped("", page.headline());
    out.wrapped("", page.why());
    for (String clash : page.clashes()) {
      out.wrapped("  cannot be kept  ", clash);
    }
    for (PlanPage.PlanStop stop : page.stops()) {
      if (stop.planned()) {
        out.line("");
        out.wrapped("", stop.title() + " · " + stop.when());
      }
      for (PlanPage.Line line : stop.planned() ? stop.lines() : List.<PlanPage.Line>of()) {
        out.wrapped("  ", (line.tires().isEmpty() ? "" : line.tires() + ": ") + line.text());
      }
    }
    out.line("");
    StringBuilder head = new StringBuilder(PlainText.left("From here on", NAME));
    HEADS.forEach(name -> head.append(PlainText.right(name, COLUMN)));
    out.line(head.toString());
    for (PlanPage.Habit habit : page.habits()) {
      out.line(
          PlainText.left(habit.name(), NAME)
              + PlainText.right(habit.stops(), COLUMN)
              + PlainText.right(habit.margin(), COLUMN)
              + PlainText.right(habit.chance(), COLUMN)
              + PlainText.right(habit.under(), COLUMN)
              + PlainText.right(habit.over(), COLUMN)
              + PlainText.right(habit.below(), COLUMN));
    }
    out.wrapped(
        "",
        "margin: lowest load margin; chance: highest one of a tire under what its load needs; under:"
            + " time rolled with a tire expected under that; over: days started with a cold tire over"
            + " its limit; below: days started with a tire low for what it is set to cold.");
    if (!page.leftOut().isEmpty()) {
      out.line("");
      out.line("Not planned");
      page.leftOut().forEach(left -> out.wrapped("  - ", left));
    }
    out.line("");
    Ledger.CAUTIONS.forEach(caution -> out.wrapped("- ", caution));
  }
}

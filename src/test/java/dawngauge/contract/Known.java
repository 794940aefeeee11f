package dawngauge.contract;

import static dawngauge.contract.Disagreement.Kind.HIGHER;
import static dawngauge.contract.Disagreement.Kind.LOWER;
import static dawngauge.contract.Disagreement.Kind.SAYS_NO;
import static dawngauge.contract.Disagreement.Kind.SAYS_YES;

import java.util.List;

/**
 * A fault that makes a page disagree with the forecast. The list may only shrink: what no longer
 * occurs fails the test until it is struck out.
 *
 * @param page the page that differs
 * @param field of what
 * @param kind how it differs
 * @param where in which trips and places
 * @param reason the fault in a sentence
 */
record Known(String page, Field field, Disagreement.Kind kind, Where where, String reason) {

  private static final String FIRST = "forecast";

  private static final String BY_LABEL = "judges ran-low by the label only";
  private static final String COLD_ONLY = "judges cold readings only";
  private static final String CAME_OFF = "judges the tire that came off";
  private static final String NEEDS_AIR =
      "the forecast judges no reading where the air is not known";
  private static final String FORGOTTEN =
      "the forecast tells of a low reading at its stop alone, not where the rig stands now";
  private static final String PAST =
      "the forecast names a figure to set at a stop that the rig has left";

  static final List<Known> ALL =
      List.of(
          new Known("timetable", Field.SETS, SAYS_NO, Where.LEFT_BEHIND, PAST),
          new Known("sheet", Field.SETS, SAYS_NO, Where.LEFT_BEHIND, PAST),
          new Known("figure", Field.RAN_LOW, SAYS_NO, Where.NO_LABEL, BY_LABEL),
          new Known(
              "figure",
              Field.RAN_LOW,
              SAYS_YES,
              Where.COARSE_GAUGE,
              "judges ran-low by the low end of what a reading may mean"),
          new Known(
              "figure",
              Field.SET_ON_ARRIVAL,
              HIGHER,
              Where.ANYWHERE,
              "the forecast shows the figure of leaving where the crew stands at the warm tire"),
          new Known(
              "fitness",
              Field.AIM,
              LOWER,
              Where.ANYWHERE,
              "says that label or target would be set where the forecast aims higher"),
          new Known("fitness", Field.RAN_LOW, SAYS_NO, Where.NO_LABEL, BY_LABEL),
          new Known("fitness", Field.RAN_LOW, SAYS_NO, Where.READ_NOT_COLD, COLD_ONLY),
          new Known("fitness", Field.RAN_LOW, SAYS_YES, Where.AIR_NOT_KNOWN, NEEDS_AIR),
          new Known("fitness", Field.RAN_LOW, SAYS_YES, Where.OF_THE_SPARE, CAME_OFF),
          new Known("fitness", Field.RAN_LOW, SAYS_YES, Where.ROLLED_ON, FORGOTTEN),
          new Known("fitness", Field.HOLD, SAYS_NO, Where.RAN_LOW_WITHOUT_LABEL, BY_LABEL),
          new Known("fitness", Field.HOLD, SAYS_NO, Where.RAN_LOW_READ_NOT_COLD, COLD_ONLY),
          new Known(
              "fitness",
              Field.HOLD,
              SAYS_NO,
              Where.NOT_RAN_LOW,
              "holds nothing for want of air, for a leak or for a low mate"),
          new Known("fitness", Field.HOLD, SAYS_YES, Where.AIR_NOT_KNOWN, NEEDS_AIR),
          new Known("fitness", Field.HOLD, SAYS_YES, Where.OF_THE_SPARE, CAME_OFF),
          new Known("fitness", Field.HOLD, SAYS_YES, Where.ROLLED_ON, FORGOTTEN),
          new Known(
              "fitness",
              Field.HOLD,
              SAYS_YES,
              Where.LOWER_MATE,
              "holds both tires of a pair that differ, the forecast the higher one alone"),
          new Known(
              "review",
              Field.RAN_LOW,
              SAYS_NO,
              Where.FIRST_READING,
              "passes over the first reading of a tire"),
          new Known("review", Field.RAN_LOW, SAYS_NO, Where.NO_LABEL, BY_LABEL));

  boolean explains(Disagreement found) {
    return found.one().equals(FIRST)
        && page.equals(found.other())
        && field == found.field()
        && kind == found.kind()
        && where.holds(found);
  }
}

package dawngauge.contract;

import static dawngauge.contract.Disagreement.Kind.HIGHER;

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

  static final List<Known> ALL =
      List.of(
          new Known(
              "figure",
              Field.SET_ON_ARRIVAL,
              HIGHER,
              Where.ANYWHERE,
              "the forecast shows the figure of leaving where the crew stands at the warm tire"));

  boolean explains(Disagreement found) {
    return found.one().equals(FIRST)
        && page.equals(found.other())
        && field == found.field()
        && kind == found.kind()
        && where.holds(found);
  }
}

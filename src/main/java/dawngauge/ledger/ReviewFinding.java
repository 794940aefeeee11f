package dawngauge.ledger;

/**
 * One thing that a review found.
 *
 * @param head what it is, in a few words; empty where the line of each tire says it
 * @param why what it rests on
 * @param watch what else has to be known; may be empty
 * @param todo what to do before the next haul; may be empty
 */
public record ReviewFinding(String head, String why, String watch, String todo) {

  /** All but what to do. */
  public String text() {
    return watch.isEmpty() ? why : why + " " + watch;
  }
}

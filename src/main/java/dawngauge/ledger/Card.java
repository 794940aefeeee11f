package dawngauge.ledger;

import dawngauge.advice.Mark;
import java.util.List;

/**
 * What to do at a stop, at a glance: what to do now, what to watch. Why stands apart.
 *
 * @param todo what to do, strongest first
 * @param watch what to gauge or to leave alone, each a line
 */
public record Card(List<Line> todo, List<String> watch) {

  /** Of a stop at which there is nothing to do. */
  public static final Card EMPTY = new Card(List.of(), List.of());

  /** More lines than these are not seen at a glance. */
  private static final int FEW = 3;

  /**
   * One thing to do.
   *
   * @param mark the mark it comes from
   * @param tires short forms, or empty where it is of the whole rig
   * @param text what, in a dozen words, with the tires in it
   * @param onlyCold whether it is done while the tires are cold, not on arrival
   */
  public record Line(Mark mark, String tires, String text, boolean onlyCold) {

    /** Whether a tire is set only once something else is done, which the text tells first. */
    public boolean conditional() {
      return mark == Mark.ADJUST
          && !text.startsWith(SetWords.ADD)
          && !text.startsWith(SetWords.LET_OUT);
    }

    /** What the text tells before the tires: "Add: ", "Only once it is found sound, add: ". */
    public String lead() {
      return text.substring(0, Math.max(0, text.indexOf(tires)));
    }

    /** Whether it is of a tire, by its short form. */
    public boolean of(String tire) {
      boolean named = List.of(tires.split(" ", -1)).contains(tire);
      return tires.startsWith(Wording.ALL_BUT) ? !named : named || tires.equals(Wording.ALL);
    }
  }

  /** Copies the lists. */
  public Card {
    todo = List.copyOf(todo);
    watch = List.copyOf(watch);
  }

  /** The first few lines; all that hold a tire or set one are among them. */
  public List<Line> first() {
    int last = 0;
    for (int i = 0; i < todo.size(); i++) {
      Mark mark = todo.get(i).mark();
      last = i < FEW || mark == Mark.HOLD || mark == Mark.ADJUST ? i + 1 : last;
    }
    return todo.subList(0, last);
  }

  /** How many lines there are more. */
  public int more() {
    return todo.size() - first().size();
  }
}

package dawngauge.trip;

import java.util.List;

/** Where on its axle a wheel sits, looking forward. */
public enum WheelSlot {
  /** Single wheel, left. */
  LEFT("left", "l", true),
  /** Outer wheel of the left dual pair. */
  LEFT_OUTER("left outer", "lo", true),
  /** Inner wheel of the left dual pair. */
  LEFT_INNER("left inner", "li", true),
  /** Inner wheel of the right dual pair. */
  RIGHT_INNER("right inner", "ri", false),
  /** Outer wheel of the right dual pair. */
  RIGHT_OUTER("right outer", "ro", false),
  /** Single wheel, right. */
  RIGHT("right", "r", false);

  private final String words;
  private final String letters;
  private final boolean left;

  WheelSlot(String words, String letters, boolean left) {
    this.words = words;
    this.letters = letters;
    this.left = left;
  }

  /** As people say it. */
  public String words() {
    return words;
  }

  /** The short form. */
  public String letters() {
    return letters;
  }

  /** Whether it is on the left side. */
  public boolean isLeft() {
    return left;
  }

  /** The other wheel of a dual pair; a single wheel has none and gives itself. */
  public WheelSlot mate() {
    return switch (this) {
      case LEFT_OUTER -> LEFT_INNER;
      case LEFT_INNER -> LEFT_OUTER;
      case RIGHT_INNER -> RIGHT_OUTER;
      case RIGHT_OUTER -> RIGHT_INNER;
      case LEFT, RIGHT -> this;
    };
  }

  /** The slots of an axle in walking order. */
  public static List<WheelSlot> of(boolean dual) {
    return dual ? List.of(LEFT_OUTER, LEFT_INNER, RIGHT_INNER, RIGHT_OUTER) : List.of(LEFT, RIGHT);
  }
}

package dawngauge.explain;

/**
 * On whose word something rests.
 *
 * @param kind what sort of word it is
 * @param citation the regulation with section, the paper, the label: enough to find it
 */
public record Authority(Kind kind, String citation) {

  /** Sorts of authority, strongest first. */
  public enum Kind {
    /** Law: a regulation with its section. */
    REGULATION,
    /** An open or trade standard. */
    STANDARD,
    /** A published paper or handbook. */
    PUBLISHED,
    /** What the user typed from label, sidewall, scale, gauge or table. */
    TYPED,
    /** Common practice of the trade, without a source. */
    COMMON_PRACTICE,
    /** Inferred by this project; the method page says how. */
    INFERRED
  }

  /** Arithmetic on what stands above it. */
  public static final Authority GAS_LAW =
      new Authority(Kind.PUBLISHED, "ideal gas law at constant volume");

  /** What a person typed. */
  public static Authority typed(String where) {
    return new Authority(Kind.TYPED, where);
  }

  /** A regulation by section. */
  public static Authority regulation(String section) {
    return new Authority(Kind.REGULATION, section);
  }

  /** Inferred by this project. */
  public static Authority inferred(String what) {
    return new Authority(Kind.INFERRED, what);
  }

  /** Common practice without a source. */
  public static Authority commonPractice() {
    return new Authority(Kind.COMMON_PRACTICE, "common practice, no source");
  }

  /** As a person reads it. */
  public String text() {
    return switch (kind) {
      case REGULATION, STANDARD, PUBLISHED, COMMON_PRACTICE -> citation;
      case TYPED -> "typed: " + citation;
      case INFERRED -> "inferred here: " + citation;
    };
  }
}

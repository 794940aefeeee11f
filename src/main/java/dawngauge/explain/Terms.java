package dawngauge.explain;

/** The words of the trade that stand in more than one place; {@code docs/glossary.md} explains. */
public final class Terms {

  /** The floor: the lowest pressure at which a tire is shown to carry its load. */
  public static final String LOWEST_SAFE = "lowest safe";

  /** The aim: what a cold tire is set to. */
  public static final String SET_COLD_TO = "set cold to";

  /** The ceiling: the least of the highest cold pressures of tire, wheel and valve. */
  public static final String NEVER_OVER = "never over";

  /** The settled pressure: what a tire reads once it is as cool as the air where it is. */
  public static final String COLD_HERE = "cold here";

  /** The lowest judged pressure on the leg ahead. */
  public static final String LOWEST_AHEAD = "lowest ahead";

  /** Height of the ground above the sea. */
  public static final String ELEVATION = "elevation";

  /** A load that may be taken on, and that the plan goes without. */
  public static final String POSSIBLE_PICKUP = "possible pickup";

  private Terms() {}
}

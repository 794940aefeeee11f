package dawngauge.rules;

/** How far apart dual mates may be before one carries for both. */
public final class DualMates {

  /** Under this part of its mate's pressure a tire carries no more; common practice, no source. */
  public static final double PART = 0.8;

  private DualMates() {}

  /** Whether a tire carries the load of both, cold pressures in pascal; false where one is NaN. */
  public static boolean carriesAlone(double own, double mate) {
    return mate < PART * own;
  }
}

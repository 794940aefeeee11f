package dawngauge.contract;

/**
 * A pressure as a page shows it.
 *
 * @param psi gauge pressure in psi
 * @param within by how much rounding may have moved it, in psi
 */
record Figure(double psi, double within) {

  /** Forgives binary fractions. */
  private static final double EXACT = 1e-6;

  /** Whether both may be the same figure. */
  boolean agrees(Figure other) {
    return Math.abs(psi - other.psi) <= within + other.within + EXACT;
  }
}

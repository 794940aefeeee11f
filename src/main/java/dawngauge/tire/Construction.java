package dawngauge.tire;

/** How the plies of a tire run. */
public enum Construction {
  /** Radial, "R" in the size. */
  RADIAL("radial"),
  /** Bias (diagonal), "D" or "-" in the size. */
  BIAS("bias");

  private final String word;

  Construction(String word) {
    this.word = word;
  }

  /** Its name in files and sentences. */
  public String word() {
    return word;
  }
}

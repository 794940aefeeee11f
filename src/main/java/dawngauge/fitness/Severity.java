package dawngauge.fitness;

/** How bad a finding is, worst first. */
public enum Severity {
  /** The rig must not roll like this. */
  STOP("do not go"),
  /** To be put right before the rig leaves. */
  MEND("put right before leaving"),
  /** Nothing to mend, or a figure that is missing. */
  KNOW("worth knowing");

  private final String word;

  Severity(String word) {
    this.word = word;
  }

  /** As a person reads it. */
  public String word() {
    return word;
  }

  /** This, or the given one where this is worse. */
  Severity atMost(Severity worst) {
    return compareTo(worst) < 0 ? worst : this;
  }
}

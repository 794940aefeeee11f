package dawngauge.ledger;

import dawngauge.geo.BundledLines;

/** Which version this is: that of {@code pom.xml}, written down by the build. */
public final class ProgramVersion {

  /** Such as "0.1.0". */
  public static final String NUMBER = BundledLines.of("/dawngauge/version.txt").get(0);

  private ProgramVersion() {}
}

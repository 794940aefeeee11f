package dawngauge.cli;

import picocli.CommandLine.Option;

/** Where an answer goes that may go to a file. */
final class OutOption {

  @Option(
      names = "--out",
      paramLabel = "FILE",
      description = "Write there instead of to standard output; - is standard output.")
  private String target = TripArgument.STANDARD;

  @Option(names = "--force", description = "Let --out replace a file that exists.")
  private boolean force;

  String target() {
    return target;
  }

  boolean force() {
    return force;
  }

  boolean isStandard() {
    return target.equals(TripArgument.STANDARD);
  }
}

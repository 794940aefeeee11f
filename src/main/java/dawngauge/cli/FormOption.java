package dawngauge.cli;

import picocli.CommandLine.Option;

/** How a command is told whether a person or a program reads its answer. */
final class FormOption {

  /** Forms of output. */
  enum Form {
    /** To read. */
    TEXT,
    /** For programs. */
    JSON
  }

  @Option(
      names = "--format",
      paramLabel = "text|json",
      description = "Form of the output; text unless given.")
  private Form form = Form.TEXT;

  /** Whether a program reads it. */
  boolean json() {
    return form == Form.JSON;
  }
}

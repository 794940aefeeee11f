package dawngauge.cli;

import dawngauge.report.CrewSheet;
import picocli.CommandLine.Option;

/** Whether a page is wanted on paper, and on which. */
final class PdfOption {

  /** What is said where no file is named for it. */
  static final String NEEDS_FILE =
      "a PDF is not written to standard output; name a file with --out";

  @Option(names = "--pdf", description = "As PDF; needs --out.")
  private boolean pdf;

  @Option(
      names = "--paper",
      paramLabel = "letter|a4",
      description = "Paper of the PDF; letter unless given.")
  private CrewSheet.Paper paper = CrewSheet.Paper.LETTER;

  boolean pdf() {
    return pdf;
  }

  CrewSheet.Paper paper() {
    return paper;
  }

  /** Whether it would have to go to standard output. */
  boolean lacksFile(OutOption out) {
    return pdf && out.isStandard();
  }
}

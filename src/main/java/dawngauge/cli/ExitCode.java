package dawngauge.cli;

/** Exit codes; the numbers from 64 on are the open convention of sysexits. */
public final class ExitCode {

  /** Done. */
  public static final int DONE = 0;

  /** With --check: some tire must be adjusted, or something put right before leaving. */
  public static final int ADJUST = 1;

  /** With --check: some tire is on hold, or the rig must not go. */
  public static final int HOLD = 2;

  /** Wrong usage. */
  public static final int USAGE = 64;

  /** Bad content. */
  public static final int CONTENT = 65;

  /** No such file. */
  public static final int NO_FILE = 66;

  /** No weather service gave anything. */
  public static final int UNAVAILABLE = 69;

  /** An error of the program itself. */
  public static final int INTERNAL = 70;

  /** Cannot write. */
  public static final int CANNOT_WRITE = 73;

  /** Cannot read. */
  public static final int CANNOT_READ = 74;

  private ExitCode() {}
}

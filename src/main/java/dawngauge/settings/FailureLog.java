package dawngauge.settings;

import dawngauge.disk.GrowingFile;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.temporal.ChronoUnit;
import java.util.HashSet;
import java.util.Set;

/**
 * Keeps what went wrong by a fault of the program in the user's own folder, for a report. Of each
 * failure it holds the time, the kinds of error and the places in the code, and nothing else: what
 * an error says in words may hold what the user typed, so no words are kept.
 */
public final class FailureLog {

  /** The same again in one run tells nothing new; ours. */
  private static final int MOST_A_RUN = 100;

  private static final int FULL_BYTES = 64 * 1024;
  private static final int MOST_CAUSES = 4;
  private static final int MOST_PLACES = 20;

  private final GrowingFile file;
  private final Clock clock;
  private final Set<String> known = new HashSet<>();

  /**
   * A log.
   *
   * @param folder the user's own folder; made when something is written
   * @param clock the time
   */
  public FailureLog(Path folder, Clock clock) {
    this.file = new GrowingFile(folder.resolve("failures.log"), FULL_BYTES);
    this.clock = clock;
  }

  /** Keeps a failure; the same one is kept once in a run. Where it cannot be written it is lost. */
  public synchronized void keep(Throwable failure) {
    String told = told(failure);
    if (known.size() >= MOST_A_RUN || !known.add(told)) {
      return;
    }
    try {
      file.append(clock.instant().truncatedTo(ChronoUnit.SECONDS) + " " + program() + told + "\n");
    } catch (IOException unwritable) {
      // it was told on the screen; there is no other place for it
    }
  }

  /** What is kept, oldest first; empty where nothing went wrong. */
  public String text() {
    return file.text();
  }

  private static String program() {
    String version = FailureLog.class.getPackage().getImplementationVersion();
    return "Dawngauge "
        + (version == null ? "not packed" : version)
        + ", Java "
        + Runtime.version()
        + ", "
        + System.getProperty("os.name", "")
        + "\n";
  }

  /** Kinds of error and places in the code, from the outermost to its cause. */
  private static String told(Throwable failure) {
    StringBuilder told = new StringBuilder();
    Throwable each = failure;
    for (int i = 0; each != null && i < MOST_CAUSES; i++) {
      told.append(i == 0 ? "" : "because of ").append(each.getClass().getName()).append('\n');
      StackTraceElement[] places = each.getStackTrace();
      for (int at = 0; at < Math.min(MOST_PLACES, places.length); at++) {
        StackTraceElement place = places[at];
        told.append("  ")
            .append(place.getClassName())
            .append('.')
            .append(place.getMethodName())
            .append(':')
            .append(place.getLineNumber())
            .append('\n');
      }
      each = each.getCause();
    }
    return told.toString();
  }
}

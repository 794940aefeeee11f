package dawngauge.cli;

import java.io.InputStream;
import java.io.PrintWriter;
import java.util.function.Consumer;

/**
 * Where a command reads and writes.
 *
 * @param in standard input
 * @param out results
 * @param err messages
 * @param failures keeps what went wrong by a fault of the program
 */
public record Console(
    InputStream in, PrintWriter out, PrintWriter err, Consumer<Throwable> failures) {

  /** A console whose failures are told alone. */
  public Console(InputStream in, PrintWriter out, PrintWriter err) {
    this(in, out, err, failure -> {});
  }
}

package dawngauge.cli;

import java.io.InputStream;
import java.io.PrintWriter;

/**
 * Where a command reads and writes.
 *
 * @param in standard input
 * @param out results
 * @param err messages
 */
public record Console(InputStream in, PrintWriter out, PrintWriter err) {}

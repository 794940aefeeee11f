/**
 * The command line: parse, call the planner, print, exit code. Start at {@link dawngauge.cli.Cli}.
 */
@NullMarked
package dawngauge.cli;

import org.jspecify.annotations.NullMarked;

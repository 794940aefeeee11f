/** The command line, as it is typed. */
@NullMarked
package dawngauge.cli;

import org.jspecify.annotations.NullMarked;

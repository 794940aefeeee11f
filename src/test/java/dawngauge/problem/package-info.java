/** Holds the catalogue of problems in order. */
@NullMarked
package dawngauge.problem;

import org.jspecify.annotations.NullMarked;

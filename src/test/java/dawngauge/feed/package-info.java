/** Holds the way to the weather services to their published terms, and to what may go wrong. */
@NullMarked
package dawngauge.feed;

import org.jspecify.annotations.NullMarked;

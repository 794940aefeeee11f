/** Tests of other people's files. */
@NullMarked
package dawngauge.exchange;

import org.jspecify.annotations.NullMarked;

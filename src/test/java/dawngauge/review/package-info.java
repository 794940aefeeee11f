/** Tests of the review. */
@NullMarked
package dawngauge.review;

import org.jspecify.annotations.NullMarked;

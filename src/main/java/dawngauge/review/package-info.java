/**
 * After the trip: why a reading came out as it did. Start at {@link dawngauge.review.TripReview}.
 */
@NullMarked
package dawngauge.review;

import org.jspecify.annotations.NullMarked;

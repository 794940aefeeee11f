/**
 * Open weather services over HTTP. Start at {@link dawngauge.feed.FeedChain}; {@link
 * dawngauge.feed.HttpJson} is the only way out.
 */
@NullMarked
package dawngauge.feed;

import org.jspecify.annotations.NullMarked;

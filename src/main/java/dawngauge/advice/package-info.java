/** Judgements: what to do, where and when. Start at {@link dawngauge.advice.Adviser}. */
@NullMarked
package dawngauge.advice;

import org.jspecify.annotations.NullMarked;

/** Scenarios of advice on small invented rigs. Start at {@link dawngauge.advice.Scenario}. */
@NullMarked
package dawngauge.advice;

import org.jspecify.annotations.NullMarked;

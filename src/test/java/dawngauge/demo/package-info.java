/**
 * What the demo hauls must keep holding. Start at {@link dawngauge.demo.DemoDataTest}; each haul
 * has a test of its own.
 */
@NullMarked
package dawngauge.demo;

import org.jspecify.annotations.NullMarked;

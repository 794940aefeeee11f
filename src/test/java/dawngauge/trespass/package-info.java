/** What no package of the program may do, done on purpose, so that the rules can be tried. */
@NullMarked
package dawngauge.trespass;

import org.jspecify.annotations.NullMarked;

/**
 * The method's figures worked again by docs/method.md alone, in plain numbers: nothing of the
 * program is used but what reads a trip. Classes are named by the page's sections.
 */
@NullMarked
package dawngauge.method;

import org.jspecify.annotations.NullMarked;

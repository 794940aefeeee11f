/**
 * Fields made from the field catalogue: {@code Cells} for a part, {@code PartsGrid} for a list of
 * parts, both on a {@code FormFields}.
 */
@NullMarked
package dawngauge.ui.fields;

import org.jspecify.annotations.NullMarked;

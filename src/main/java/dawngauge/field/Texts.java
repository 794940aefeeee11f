package dawngauge.field;

import java.util.List;
import java.util.function.BiFunction;
import java.util.function.Function;

/**
 * Several values of one sort.
 *
 * @param <R> the part
 * @param <V> the sort of value
 * @param key its name in the file
 * @param label its name in forms and comparisons
 * @param stands where they stand
 * @param codec how one is written
 * @param get reads them from the part, in the order of the file
 * @param with the part with others
 */
public record Texts<R, V>(
    String key,
    String label,
    String stands,
    Codec<V> codec,
    Function<R, List<V>> get,
    BiFunction<R, List<V>, R> with)
    implements Member<R> {}

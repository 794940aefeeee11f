package dawngauge.field;

import java.util.List;
import java.util.Map;
import java.util.function.BiFunction;
import java.util.function.Function;

/**
 * Values by name or place.
 *
 * @param <R> the part
 * @param <K> the places
 * @param <V> the sort of value
 * @param key its name in the file
 * @param label its name in forms and comparisons
 * @param keys how a place is written
 * @param values how a value is written
 * @param get reads them from the part
 * @param order the places of a part in the order of the file
 * @param with the part with others
 */
public record Pairs<R, K, V>(
    String key,
    String label,
    Codec<K> keys,
    Codec<V> values,
    Function<R, Map<K, V>> get,
    Function<R, List<K>> order,
    BiFunction<R, Map<K, V>, R> with)
    implements Member<R> {}

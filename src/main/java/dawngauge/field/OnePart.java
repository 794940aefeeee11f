package dawngauge.field;

import java.util.function.BiFunction;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * A part of a part that is there once or not at all.
 *
 * @param <R> the part
 * @param <E> its own part
 * @param key its name in the file
 * @param label its name in forms and comparisons
 * @param part what it has
 * @param get reads it; null where there is none
 * @param with the part with another, or with none
 */
public record OnePart<R, E>(
    String key,
    String label,
    Part<E> part,
    Function<R, @Nullable E> get,
    BiFunction<R, @Nullable E, R> with)
    implements Member<R> {}

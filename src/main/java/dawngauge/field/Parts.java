package dawngauge.field;

import java.util.List;
import java.util.function.BiFunction;
import java.util.function.Function;

/**
 * Parts of a part, such as the axles of a vehicle.
 *
 * @param <R> the part
 * @param <E> its own parts
 * @param key its name in the file
 * @param label its name in forms and comparisons
 * @param part what each of them has
 * @param get reads them from the part
 * @param with the part with others; asked only where the check finds nothing
 * @param check what is wrong with them together, each place below the key; empty for most
 */
public record Parts<R, E>(
    String key,
    String label,
    Part<E> part,
    Function<R, List<E>> get,
    BiFunction<R, List<E>, R> with,
    Function<List<E>, List<Fault>> check)
    implements Member<R> {

  Parts(
      String key,
      String label,
      Part<E> part,
      Function<R, List<E>> get,
      BiFunction<R, List<E>, R> with) {
    this(key, label, part, get, with, parts -> List.of());
  }
}

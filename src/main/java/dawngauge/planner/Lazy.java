package dawngauge.planner;

import java.util.Objects;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/**
 * A value that is computed when it is first asked for, once, on whatever thread asks.
 *
 * @param <T> the value
 */
final class Lazy<T> {

  private @Nullable Supplier<T> maker;
  private @Nullable T value;

  Lazy(Supplier<T> maker) {
    this.maker = maker;
  }

  /** The value; what its computing throws is thrown again each time. */
  synchronized T get() {
    T known = value;
    if (known == null) {
      known = Objects.requireNonNull(maker).get();
      value = known;
      maker = null;
    }
    return known;
  }
}

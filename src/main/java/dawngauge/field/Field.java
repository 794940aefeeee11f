package dawngauge.field;

import java.util.function.BiFunction;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * One figure, text or choice of a part.
 *
 * @param <R> the part
 * @param <V> the value
 * @param key its name in the file
 * @param label its name in forms and comparisons
 * @param stands where it stands, such as "certification label"
 * @param need whether it must be there
 * @param codec how it is written
 * @param get reads it from the part; null where there is none
 * @param with the part with another value; null only where it may be missing
 */
public record Field<R, V>(
    String key,
    String label,
    String stands,
    Need need,
    Codec<V> codec,
    Function<R, @Nullable V> get,
    BiFunction<R, @Nullable V, R> with)
    implements Member<R> {

  /** Whether a field must be there. */
  public enum Need {
    /** It may be missing. */
    OPTIONAL,
    /** It must be there. */
    REQUIRED,
    /** It must be there, and no other part of this kind may have the same. */
    UNIQUE
  }

  /** A field that may be missing. */
  static <R, V> Field<R, V> optional(
      String key,
      String label,
      String stands,
      Codec<V> codec,
      Function<R, @Nullable V> get,
      BiFunction<R, @Nullable V, R> with) {
    return new Field<>(key, label, stands, Need.OPTIONAL, codec, get, with);
  }

  /** A field that must be there. */
  static <R, V> Field<R, V> required(
      String key,
      String label,
      String stands,
      Codec<V> codec,
      Function<R, V> get,
      BiFunction<R, V, R> with) {
    return needed(key, label, stands, Need.REQUIRED, codec, get, with);
  }

  /** A name by which others refer to the part. */
  static <R> Field<R, String> name(
      String key,
      String label,
      String stands,
      Codec<String> codec,
      Function<R, String> get,
      BiFunction<R, String, R> with) {
    return needed(key, label, stands, Need.UNIQUE, codec, get, with);
  }

  private static <R, V> Field<R, V> needed(
      String key,
      String label,
      String stands,
      Need need,
      Codec<V> codec,
      Function<R, V> get,
      BiFunction<R, V, R> with) {
    return new Field<>(
        key,
        label,
        stands,
        need,
        codec,
        get,
        (part, value) -> value == null ? part : with.apply(part, value));
  }

  /** Whether it must be there. */
  public boolean required() {
    return need != Need.OPTIONAL;
  }

  /** A part with the value that another has. */
  public R copied(R from, R to) {
    return with.apply(to, get.apply(from));
  }

  /** The value of a part as it is typed, or nothing. */
  public String text(R part) {
    V value = get.apply(part);
    return value == null ? "" : codec.text().apply(value);
  }

  /** The value of a part, or null. */
  public @Nullable V of(R part) {
    return get.apply(part);
  }
}

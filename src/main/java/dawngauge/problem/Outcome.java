package dawngauge.problem;

import java.util.ArrayList;
import java.util.List;
import java.util.NoSuchElementException;
import java.util.Optional;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * What worked and what did not: a value where there is one, and every problem met on the way. A
 * value may come with problems (notes, gaps).
 *
 * @param <T> kind of value
 * @param valueOrNull the value, or null where there is none
 * @param problems all problems met, in order
 */
public record Outcome<T>(@Nullable T valueOrNull, List<Problem> problems) {

  /** Copies the list. */
  public Outcome {
    problems = List.copyOf(problems);
  }

  /** A value without problems. */
  public static <T> Outcome<T> of(T value) {
    return new Outcome<>(value, List.of());
  }

  /** A value with problems. */
  public static <T> Outcome<T> of(T value, List<Problem> problems) {
    return new Outcome<>(value, problems);
  }

  /** No value, only problems. */
  public static <T> Outcome<T> failed(List<Problem> problems) {
    if (problems.isEmpty()) {
      throw new IllegalArgumentException("a failure names at least one problem");
    }
    return new Outcome<>(null, problems);
  }

  /** No value, one problem. */
  public static <T> Outcome<T> failed(Problem problem) {
    return failed(List.of(problem));
  }

  /** The value, if any. */
  public Optional<T> value() {
    return Optional.ofNullable(valueOrNull);
  }

  /** Whether there is a value. */
  public boolean hasValue() {
    return valueOrNull != null;
  }

  /** The value; an error of the program if there is none. */
  public T get() {
    T value = valueOrNull;
    if (value == null) {
      throw new NoSuchElementException("no value: " + problems);
    }
    return value;
  }

  /** The same problems with the value changed, where there is one. */
  public <U> Outcome<U> map(Function<? super T, ? extends U> change) {
    T value = valueOrNull;
    return new Outcome<>(value == null ? null : change.apply(value), problems);
  }

  /** What follows from the value, where there is one, with the problems of both. */
  public <U> Outcome<U> then(Function<? super T, Outcome<U>> next) {
    T value = valueOrNull;
    if (value == null) {
      return failed(problems);
    }
    Outcome<U> following = next.apply(value);
    List<Problem> all = new ArrayList<>(problems);
    all.addAll(following.problems);
    return new Outcome<>(following.valueOrNull, all);
  }

  /** The same value with further problems added behind. */
  public Outcome<T> with(List<Problem> further) {
    List<Problem> all = new ArrayList<>(problems);
    all.addAll(further);
    return new Outcome<>(valueOrNull, all);
  }
}

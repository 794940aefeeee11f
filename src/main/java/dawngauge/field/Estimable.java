package dawngauge.field;

import java.util.function.Predicate;
import java.util.function.UnaryOperator;

/**
 * A figure that may be an estimate: taken from the places near or the straight line, typed or
 * measured by nobody.
 *
 * @param <R> the part
 * @param <V> the sort of value
 * @param figure the figure; a value that is put in by it is no estimate
 * @param estimated whether a part's figure is one
 * @param asEstimate the part with its figure as an estimate
 */
public record Estimable<R, V>(
    Field<R, V> figure, Predicate<R> estimated, UnaryOperator<R> asEstimate) implements Member<R> {

  @Override
  public String key() {
    return figure.key();
  }

  @Override
  public String label() {
    return figure.label();
  }
}

package dawngauge.advice;

import dawngauge.forecast.TireSnapshot;
import dawngauge.quantity.Unit;
import dawngauge.quantity.UnitSystem;
import dawngauge.trip.WheelSlot;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** What a crew sees of one tire at one stop. */
final class Seen {

  private final TireAdvice advice;

  private Seen(TireAdvice advice) {
    this.advice = advice;
  }

  /** The left tire (outer one of a pair) at the stop with an index. */
  static Seen at(Advice advice, int stop) {
    return new Seen(advice.stops().get(stop).tires().get(0));
  }

  /** The tire in a slot at the stop with an index. */
  static Seen at(Advice advice, int stop, WheelSlot slot) {
    return advice.stops().get(stop).tires().stream()
        .filter(tire -> tire.tire().fitted().position().slot() == slot)
        .map(Seen::new)
        .findFirst()
        .orElseThrow();
  }

  TireAdvice advice() {
    return advice;
  }

  Mark mark() {
    return advice.mark();
  }

  /** All its reasons of one mark, in psi. */
  String texts(Mark mark) {
    return advice.reasons().stream()
        .filter(reason -> reason.mark() == mark)
        .map(reason -> reason.text().in(UnitSystem.US))
        .collect(Collectors.joining("\n"));
  }

  /** All its reasons. */
  String texts() {
    return List.of(Mark.values()).stream().map(this::texts).collect(Collectors.joining("\n"));
  }

  /** What is to be set; a fault of the test where nothing is. */
  @Nullable TimedFigures timed() {
    return advice.timed();
  }

  SetFigure set() {
    return Objects.requireNonNull(advice.set(), "nothing is to be set");
  }

  /** The tire when it is to be gauged. */
  TireSnapshot check() {
    return Objects.requireNonNull(advice.tire().check(), "nothing is known");
  }

  /** The figure to set, in psi; NaN where nothing is to be set. */
  double figure() {
    SetFigure set = advice.set();
    return set == null ? Double.NaN : set.figure().in(Unit.PSI);
  }

  /** Whether air is to be added. */
  boolean adds() {
    SetFigure set = advice.set();
    return set != null && set.adds();
  }
}

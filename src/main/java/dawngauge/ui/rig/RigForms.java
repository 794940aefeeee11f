package dawngauge.ui.rig;

import dawngauge.problem.Outcome;
import dawngauge.problem.Problem;
import dawngauge.problem.ProblemCode;
import dawngauge.quantity.Entered;
import dawngauge.quantity.Quantity;
import dawngauge.quantity.QuantityKind;
import dawngauge.quantity.Ratio;
import dawngauge.quantity.UnitSystem;
import dawngauge.ui.common.Forms;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/** Reads what is typed into the rig's fields, as strictly as the trip file is read. */
final class RigForms {

  private RigForms() {}

  /** A figure above zero, or nothing. */
  static <Q extends Quantity> Outcome<Optional<Entered<Q>>> positive(
      QuantityKind<Q> kind, UnitSystem units, String text) {
    return checked(
        Forms.figure(kind, units).apply(text),
        entered -> entered.value().si() > 0,
        Problem.of(ProblemCode.NOT_ABOVE_ZERO, "", text));
  }

  /** A part of a whole, 0 to 100 %, or nothing. */
  static Outcome<Optional<Entered<Ratio>>> share(UnitSystem units, String text) {
    return checked(
        Forms.figure(QuantityKind.RATIO, units).apply(text),
        entered -> entered.value().value() >= 0 && entered.value().value() <= 1,
        Problem.of(ProblemCode.OUT_OF_RANGE, "", text, "0 %", "100 %"));
  }

  /** A text, or nothing. */
  static Outcome<Optional<String>> text(String text) {
    return Outcome.of(text.isEmpty() ? Optional.empty() : Optional.of(text));
  }

  /**
   * A name that others refer to.
   *
   * @param what what is named, in a word
   * @param others the names taken
   */
  static Outcome<String> name(String what, List<String> others, String text) {
    if (text.isBlank() || text.chars().anyMatch(Character::isISOControl)) {
      return Outcome.failed(Problem.of(ProblemCode.NOT_A_NAME, "", text));
    }
    return others.contains(text)
        ? Outcome.failed(Problem.of(ProblemCode.NAME_TAKEN, "", what, text, "another place"))
        : Outcome.of(text);
  }

  /** What must be there. */
  static <T> Outcome<T> required(Outcome<Optional<T>> outcome, String what, String example) {
    Optional<T> value = outcome.valueOrNull();
    if (value == null) {
      return Outcome.failed(outcome.problems());
    }
    return value
        .map(Outcome::of)
        .orElseGet(() -> Outcome.failed(Problem.of(ProblemCode.MISSING_FIELD, "", what, example)));
  }

  /** The same where it holds, else the problem; nothing holds. */
  static <T> Outcome<Optional<T>> checked(
      Outcome<Optional<T>> outcome, Predicate<T> holds, Problem otherwise) {
    Optional<T> value = outcome.valueOrNull();
    return value != null && value.isPresent() && !holds.test(value.get())
        ? Outcome.failed(otherwise)
        : outcome;
  }
}

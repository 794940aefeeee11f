package dawngauge.tripfile;

import dawngauge.problem.Outcome;
import dawngauge.problem.Problem;
import dawngauge.problem.ProblemCode;
import dawngauge.quantity.Entered;
import dawngauge.quantity.Quantity;
import dawngauge.quantity.QuantityKind;
import dawngauge.quantity.Ratio;
import java.util.Arrays;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * How one sort of value stands in the file as a text, both ways.
 *
 * @param <T> the sort of value
 * @param what its name in a sentence, with article
 * @param example how it is written, with quotation marks
 * @param standIn what stands in for a value that could not be read, until reading ends; where it
 *     has a name or text that is empty
 * @param parse reads it; problems carry no place yet
 * @param text writes it
 */
record Form<T>(
    String what,
    String example,
    T standIn,
    Function<String, Outcome<T>> parse,
    Function<T, String> text) {

  /** Any text. */
  static final Form<String> TEXT =
      new Form<>("a text", "\"as you like\"", "", Outcome::of, text -> text);

  /** A name that other places refer to. */
  static final Form<String> NAME =
      new Form<>("a name", "\"trailer\"", "", Form::parseName, name -> name);

  /** The letter of a vehicle. */
  static final Form<String> LETTER =
      new Form<>(
          "a letter",
          "\"t\"",
          "",
          text ->
              text.matches("[a-z]")
                  ? Outcome.of(text)
                  : failed(ProblemCode.NOT_A_CHOICE, shortened(text), "a to z"),
          letter -> letter);

  /** A figure with unit, kept as typed. */
  static <Q extends Quantity> Form<Entered<Q>> figure(QuantityKind<Q> kind) {
    return new Form<>(
        "a " + kind.displayName() + " with its unit, as a text",
        "\"" + kind.example() + "\"",
        new Entered<>(kind.ofSi(0), ""),
        kind::parse,
        Entered::text);
  }

  /** A figure with unit that is above zero. */
  static <Q extends Quantity> Form<Entered<Q>> positive(QuantityKind<Q> kind) {
    return figure(kind)
        .onlyIf(
            entered -> entered.value().si() > 0,
            entered -> Problem.of(ProblemCode.NOT_ABOVE_ZERO, "", shortened(entered.text())));
  }

  /** A part of a whole, from 0 to 100 %. */
  static Form<Entered<Ratio>> share() {
    return figure(QuantityKind.RATIO)
        .onlyIf(
            entered -> entered.value().value() >= 0 && entered.value().value() <= 1,
            entered ->
                Problem.of(
                    ProblemCode.OUT_OF_RANGE, "", shortened(entered.text()), "0 %", "100 %"));
  }

  /** One of a closed set, by its word. */
  static <E extends Enum<E>> Form<E> choice(Class<E> type, Function<E, String> word) {
    E[] all = type.getEnumConstants();
    String words =
        Arrays.stream(all).map(e -> "\"" + word.apply(e) + "\"").collect(Collectors.joining(", "));
    return new Form<>(
        "one of " + words,
        "\"" + word.apply(all[0]) + "\"",
        all[0],
        text ->
            Arrays.stream(all)
                .filter(e -> word.apply(e).equals(text))
                .findFirst()
                .map(Outcome::of)
                .orElseGet(() -> failed(ProblemCode.NOT_A_CHOICE, shortened(text), words)),
        word);
  }

  private Form<T> onlyIf(Function<T, Boolean> holds, Function<T, Problem> otherwise) {
    return new Form<>(
        what,
        example,
        standIn,
        read -> {
          Outcome<T> outcome = parse.apply(read);
          return outcome
              .value()
              .filter(value -> !holds.apply(value))
              .map(value -> Outcome.<T>failed(otherwise.apply(value)))
              .orElse(outcome);
        },
        text);
  }

  private static Outcome<String> parseName(String name) {
    boolean plain = name.chars().noneMatch(Character::isISOControl);
    return !plain || name.isBlank() || !name.equals(name.strip())
        ? failed(ProblemCode.NOT_A_NAME, shortened(name))
        : Outcome.of(name);
  }

  static <T> Outcome<T> failed(ProblemCode code, String... arguments) {
    return Outcome.failed(Problem.of(code, "", arguments));
  }

  /** A text as it is quoted in a problem: its beginning, where it is long. */
  static String shortened(String text) {
    return text.length() <= 60 ? text : text.substring(0, 57) + "...";
  }
}

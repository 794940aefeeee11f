package dawngauge.field;

import dawngauge.problem.Outcome;
import dawngauge.problem.Problem;
import dawngauge.problem.ProblemCode;
import dawngauge.quantity.Entered;
import dawngauge.quantity.Quantity;
import dawngauge.quantity.QuantityKind;
import dawngauge.quantity.Ratio;
import dawngauge.quantity.UnitSystem;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * How one sort of value is written, in the file and in a form, both ways.
 *
 * @param <T> the sort of value
 * @param what its name in a sentence, with article
 * @param example how it is written in the file, with quotation marks where it is a text there
 * @param standIn what stands in for a value that could not be read, until reading ends; where it
 *     has a name or text that is empty
 * @param parse reads it; problems carry no place yet
 * @param text writes it
 * @param typed reads what is typed into a form, where a bare number has the unit that is shown
 * @param shown writes it in the units that are shown
 * @param json what it is in the file
 * @param choices all there are, where it is one of a closed set; else empty
 */
public record Codec<T>(
    String what,
    String example,
    T standIn,
    Function<String, Outcome<T>> parse,
    Function<T, String> text,
    BiFunction<UnitSystem, String, Outcome<T>> typed,
    BiFunction<UnitSystem, T, String> shown,
    Json json,
    List<T> choices) {

  /** What a value is in the file. */
  public enum Json {
    /** A text. */
    TEXT,
    /** A number. */
    NUMBER,
    /** A whole number. */
    WHOLE,
    /** True or false. */
    FLAG,
    /** Degrees north and east, two numbers in a list. */
    PAIR
  }

  /** Any text. */
  public static final Codec<String> TEXT =
      new Codec<>("a text", "\"as you like\"", "", Outcome::of, text -> text);

  /** A name that other places refer to. */
  public static final Codec<String> NAME =
      new Codec<>("a name", "\"trailer\"", "", Codec::parseName, name -> name);

  /** The letter of a vehicle. */
  public static final Codec<String> LETTER =
      new Codec<>(
          "a letter",
          "\"t\"",
          "",
          text ->
              text.matches("[a-z]")
                  ? Outcome.of(text)
                  : failed(ProblemCode.NOT_A_CHOICE, shortened(text), "a to z"),
          letter -> letter);

  /** Yes or no. */
  public static final Codec<Boolean> FLAG =
      new Codec<>(
              "true or false",
              "false",
              false,
              text ->
                  text.equals("true") || text.equals("false")
                      ? Outcome.of(text.equals("true"))
                      : Codec.<Boolean>failed(
                          ProblemCode.NOT_A_CHOICE, shortened(text), "true, false"),
              flag -> flag ? "true" : "false")
          .as(Json.FLAG);

  private static final Pattern NUMBER = Pattern.compile("[+\\-−]?[0-9]+(?:\\.[0-9]+)?");

  private static final int LONGEST_SHOWN = 60;

  /** Copies the list. */
  public Codec {
    choices = List.copyOf(choices);
  }

  /** A text that is typed and shown as it stands in the file. */
  public Codec(
      String what,
      String example,
      T standIn,
      Function<String, Outcome<T>> parse,
      Function<T, String> text) {
    this(
        what,
        example,
        standIn,
        parse,
        text,
        (units, typed) -> parse.apply(typed),
        (units, value) -> text.apply(value),
        Json.TEXT,
        List.of());
  }

  /** A figure with unit, kept as typed. */
  public static <Q extends Quantity> Codec<Entered<Q>> figure(QuantityKind<Q> kind) {
    return new Codec<>(
        "a " + kind.displayName() + " with its unit, as a text",
        "\"" + kind.example() + "\"",
        new Entered<>(kind.ofSi(0), ""),
        kind::parse,
        Entered::text,
        (units, typed) -> kind.parse(withUnit(typed, kind, units)),
        (units, entered) -> units.format(entered.value()),
        Json.TEXT,
        List.of());
  }

  /**
   * The same, with words that may be typed in the place of a value.
   *
   * @param said in small letters, with what each stands for
   */
  public Codec<T> orSaid(Map<String, String> said) {
    return new Codec<>(
        what,
        example,
        standIn,
        parse,
        text,
        (units, entry) ->
            typed.apply(units, said.getOrDefault(entry.strip().toLowerCase(Locale.ROOT), entry)),
        shown,
        json,
        choices);
  }

  /** What is typed, with the unit in which its kind is shown where it is a bare number. */
  public static String withUnit(String typed, QuantityKind<?> kind, UnitSystem units) {
    return NUMBER.matcher(typed).matches()
        ? typed + " " + units.unitOf(kind).symbol().strip()
        : typed;
  }

  /** A figure with unit that is above zero. */
  public static <Q extends Quantity> Codec<Entered<Q>> positive(QuantityKind<Q> kind) {
    return figure(kind)
        .onlyIf(
            entered -> entered.value().si() > 0,
            entered -> Problem.of(ProblemCode.NOT_ABOVE_ZERO, "", shortened(entered.text())));
  }

  /** A part of a whole, from 0 to 100 %. */
  public static Codec<Entered<Ratio>> share() {
    return figure(QuantityKind.RATIO)
        .onlyIf(
            entered -> entered.value().value() >= 0 && entered.value().value() <= 1,
            entered ->
                Problem.of(
                    ProblemCode.OUT_OF_RANGE, "", shortened(entered.text()), "0 %", "100 %"));
  }

  /** A number without unit, within limits. */
  public static Codec<Double> number(double lowest, double highest) {
    return new Codec<Double>(
            "a number",
            "" + lowest,
            lowest,
            text -> within(text, lowest, highest),
            number -> number == Math.rint(number) ? "" + number.longValue() : "" + number)
        .as(Json.NUMBER);
  }

  /** A whole number within limits. */
  public static Codec<Integer> whole(int lowest, int highest) {
    return new Codec<Integer>(
            "a whole number",
            "" + highest,
            lowest,
            text ->
                text.matches("[0-9]{1,9}")
                    ? within(text, lowest, highest).map(Double::intValue)
                    : failed(ProblemCode.OUT_OF_RANGE, shortened(text), "" + lowest, "" + highest),
            number -> "" + number)
        .as(Json.WHOLE);
  }

  private static Outcome<Double> within(String text, double lowest, double highest) {
    double number = NUMBER.matcher(text).matches() ? Double.parseDouble(text) : Double.NaN;
    return number >= lowest && number <= highest
        ? Outcome.of(number)
        : failed(ProblemCode.OUT_OF_RANGE, shortened(text), plain(lowest), plain(highest));
  }

  private static String plain(double number) {
    return number == Math.rint(number) ? "" + (long) number : "" + number;
  }

  /** One of a closed set, by its word. */
  public static <E extends Enum<E>> Codec<E> choice(Class<E> type, Function<E, String> word) {
    return choice(List.of(type.getEnumConstants()), word);
  }

  /** One of a closed set, by its word. */
  static <E> Codec<E> choice(List<E> all, Function<E, String> word) {
    String words =
        all.stream().map(e -> "\"" + word.apply(e) + "\"").collect(Collectors.joining(", "));
    Function<String, Outcome<E>> parse =
        text ->
            all.stream()
                .filter(e -> word.apply(e).equals(text))
                .findFirst()
                .map(Outcome::of)
                .orElseGet(() -> failed(ProblemCode.NOT_A_CHOICE, shortened(text), words));
    return new Codec<>(
        "one of " + words,
        "\"" + word.apply(all.get(0)) + "\"",
        all.get(0),
        parse,
        word,
        (units, typed) -> parse.apply(typed),
        (units, value) -> word.apply(value),
        Json.TEXT,
        all);
  }

  private Codec<T> as(Json other) {
    return new Codec<>(what, example, standIn, parse, text, typed, shown, other, choices);
  }

  private Codec<T> onlyIf(Predicate<T> holds, Function<T, Problem> otherwise) {
    return new Codec<>(
        what,
        example,
        standIn,
        read -> checked(parse.apply(read), holds, otherwise),
        text,
        (units, read) -> checked(typed.apply(units, read), holds, otherwise),
        shown,
        json,
        choices);
  }

  private static <T> Outcome<T> checked(
      Outcome<T> outcome, Predicate<T> holds, Function<T, Problem> otherwise) {
    return outcome
        .value()
        .filter(value -> !holds.test(value))
        .map(value -> Outcome.<T>failed(otherwise.apply(value)))
        .orElse(outcome);
  }

  private static Outcome<String> parseName(String name) {
    boolean plain = name.chars().noneMatch(Character::isISOControl);
    return !plain || name.isBlank() || !name.equals(name.strip())
        ? failed(ProblemCode.NOT_A_NAME, shortened(name))
        : Outcome.of(name);
  }

  /** A problem in place of a value. */
  public static <T> Outcome<T> failed(ProblemCode code, String... arguments) {
    return Outcome.failed(Problem.of(code, "", arguments));
  }

  /** A text as it is quoted in a problem: its beginning, where it is long. */
  public static String shortened(String text) {
    return text.length() <= LONGEST_SHOWN ? text : text.substring(0, LONGEST_SHOWN - 3) + "...";
  }
}

package dawngauge.field;

import dawngauge.problem.Outcome;
import dawngauge.problem.Problem;
import dawngauge.problem.ProblemCode;
import dawngauge.quantity.Distance;
import dawngauge.quantity.Entered;
import dawngauge.quantity.Mass;
import dawngauge.quantity.QuantityKind;
import dawngauge.quantity.Unit;
import dawngauge.quantity.UnitSystem;
import dawngauge.trip.DeckLoad;
import dawngauge.trip.LoadChange;
import dawngauge.trip.Remarks;
import dawngauge.trip.ScaleTicket;
import dawngauge.trip.Worksheet;
import java.util.List;
import java.util.Locale;

/** What the weight worksheet has. */
public final class WorksheetFields {

  private static final String EXAMPLE = "12 ft";

  /** Longest length on a vehicle: longer than any road law lets one be. */
  private static final Distance LONGEST = Distance.of(130, Unit.FOOT);

  private static final String LONGEST_TEXT = "130 ft (39.6 m)";

  /** A length on a vehicle; a bare number is in feet or meter. */
  public static final Codec<Entered<Distance>> LENGTH =
      new Codec<>(
          "a length with its unit, as a text",
          "\"" + EXAMPLE + "\"",
          Codec.figure(QuantityKind.DISTANCE).standIn(),
          WorksheetFields::parse,
          Entered::text,
          (units, typed) -> parse(Codec.withUnit(typed, QuantityKind.ELEVATION, units)),
          WorksheetFields::shown,
          Codec.Json.TEXT,
          List.of());

  /** What is loaded. */
  public static final Field<DeckLoad, String> LOAD_WHAT =
      Field.required(
          "what",
          "What",
          "animals, hay, water, tack",
          Codec.TEXT,
          DeckLoad::what,
          DeckLoad::withWhat);

  /** How many. */
  public static final Field<DeckLoad, Integer> LOAD_HEAD =
      Field.optional(
          "head",
          "Head",
          "how many; empty for one",
          Codec.whole(1, 9999),
          DeckLoad::head,
          DeckLoad::withHead);

  /** Weight of each. */
  public static final Field<DeckLoad, Entered<Mass>> LOAD_WEIGHT =
      Field.required(
          "weight",
          "Weight of each",
          "scale, table or by eye",
          TireFields.LOAD,
          DeckLoad::weight,
          DeckLoad::withWeight);

  /** How that weight is known. */
  public static final Field<DeckLoad, LoadChange.Source> LOAD_SOURCE =
      Field.required(
          "source",
          "Known by",
          "how the weight is known",
          Codec.choice(LoadChange.Source.class, LoadChange.Source::word),
          DeckLoad::source,
          DeckLoad::withSource);

  /** On which vehicle. */
  public static final Field<DeckLoad, String> LOAD_VEHICLE =
      Field.required(
          "vehicle",
          "Vehicle",
          "that carries it",
          Codec.NAME,
          DeckLoad::vehicle,
          DeckLoad::withVehicle);

  /** Where on it. */
  public static final Field<DeckLoad, Entered<Distance>> LOAD_PLACE =
      Field.required(
          "place",
          "Hitch to its middle",
          "measured: back on a trailer, forward on a tow vehicle",
          LENGTH,
          DeckLoad::place,
          DeckLoad::withPlace);

  /** A line of what is loaded. */
  public static final Part<DeckLoad> LOAD =
      Part.of(
          "deck load",
          "deckLoad",
          new DeckLoad(
              "",
              null,
              TireFields.LOAD.standIn(),
              LoadChange.Source.WEIGHED,
              "",
              LENGTH.standIn(),
              Remarks.NONE),
          DeckLoad::remarks,
          DeckLoad::withRemarks,
          List.<Member<DeckLoad>>of(
              LOAD_WHAT, LOAD_HEAD, LOAD_WEIGHT, LOAD_SOURCE, LOAD_VEHICLE, LOAD_PLACE));

  /** Scale tickets of the empty rig. */
  public static final Parts<Worksheet, ScaleTicket> EMPTY =
      new Parts<>(
          "empty", "Empty weights", WeightFields.TICKET, Worksheet::empty, Worksheet::withEmpty);

  /** Hitch load of the empty trailer. */
  public static final Field<Worksheet, Entered<Mass>> EMPTY_HITCH =
      Field.optional(
          "emptyHitch",
          "Hitch load, empty",
          "tongue or kingpin scale, trailer empty",
          TireFields.LOAD,
          Worksheet::emptyHitch,
          Worksheet::withEmptyHitch);

  /** Hitch to the trailer's axles. */
  public static final Field<Worksheet, Entered<Distance>> HITCH_TO_AXLES =
      Field.optional(
          "hitchToAxles",
          "Hitch to trailer's axles",
          "measured, to the middle between them",
          LENGTH,
          Worksheet::hitchToAxles,
          Worksheet::withHitchToAxles);

  /** Wheelbase of the tow vehicle. */
  public static final Field<Worksheet, Entered<Distance>> WHEELBASE =
      Field.optional(
          "wheelbase",
          "Wheelbase",
          "measured, front axle to the middle of the others",
          LENGTH,
          Worksheet::wheelbase,
          Worksheet::withWheelbase);

  /** Most the hitch may carry. */
  public static final Field<Worksheet, Entered<Mass>> HITCH_RATING =
      Field.optional(
          "hitchRating",
          "Hitch rating",
          "stamp or manual: the least of ball, coupler and receiver",
          TireFields.LOAD,
          Worksheet::hitchRating,
          Worksheet::withHitchRating);

  /** Most that both may weigh together. */
  public static final Field<Worksheet, Entered<Mass>> COMBINED_RATING =
      Field.optional(
          "combinedRating",
          "Combined rating",
          "tow vehicle's manual (GCWR)",
          TireFields.LOAD,
          Worksheet::combinedRating,
          Worksheet::withCombinedRating);

  /** What is loaded where. */
  public static final Parts<Worksheet, DeckLoad> LOADS =
      new Parts<>("loads", "What is loaded where", LOAD, Worksheet::loads, Worksheet::withLoads);

  /** The worksheet. */
  public static final Part<Worksheet> WORKSHEET =
      Part.of(
          "worksheet",
          "worksheet",
          Worksheet.BLANK,
          Worksheet::remarks,
          Worksheet::withRemarks,
          List.<Member<Worksheet>>of(
              EMPTY, EMPTY_HITCH, HITCH_TO_AXLES, WHEELBASE, HITCH_RATING, COMBINED_RATING, LOADS));

  private WorksheetFields() {}

  private static Outcome<Entered<Distance>> parse(String text) {
    Outcome<Entered<Distance>> outcome = QuantityKind.DISTANCE.parse(text);
    Entered<Distance> value = outcome.valueOrNull();
    if (value != null && value.value().compareTo(LONGEST) <= 0) {
      return outcome;
    }
    boolean far = value != null || outcome.problems().get(0).code() == ProblemCode.OUT_OF_RANGE;
    return far
        ? Codec.failed(ProblemCode.OUT_OF_RANGE, Codec.shortened(text), "0 ft", LONGEST_TEXT)
        : Outcome.failed(length(outcome.problems().get(0)));
  }

  /** The same problem with a length as the example in place of a way. */
  private static Problem length(Problem problem) {
    return problem.code() == ProblemCode.NOT_A_QUANTITY
        ? Problem.of(problem.code(), "", problem.arguments().get(0), "length", EXAMPLE)
        : problem;
  }

  private static String shown(UnitSystem units, Entered<Distance> entered) {
    Unit unit = units.unitOf(QuantityKind.ELEVATION);
    return String.format(Locale.ROOT, "%.1f %s", entered.value().in(unit), unit.symbol().strip());
  }
}

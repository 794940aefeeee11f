package dawngauge.field;

import dawngauge.problem.ProblemCode;
import dawngauge.quantity.Entered;
import dawngauge.quantity.Mass;
import dawngauge.quantity.QuantityKind;
import dawngauge.quantity.Ratio;
import dawngauge.trip.AxleRef;
import dawngauge.trip.Hitch;
import dawngauge.trip.LoadChange;
import dawngauge.trip.Remarks;
import dawngauge.trip.ScaleTicket;
import dawngauge.trip.ScaleTicket.Platform;
import dawngauge.trip.ScaleTicket.WheelWeight;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** What scale tickets, the hitch and loads taken on or set down have. */
public final class WeightFields {

  private static final String SCALE = "scale ticket";

  /** How far the parts may be from 100 %, for figures rounded to whole percents. */
  private static final double TOLERANCE = 0.005;

  private static final Comparator<AxleRef> ORDER =
      Comparator.comparing(AxleRef::vehicle).thenComparing(AxleRef::number);

  private static final List<Fault> NO_AXLES =
      List.of(Fault.of("axles", ProblemCode.MISSING_FIELD, "axles", "the axles that stood on it"));

  /** A side of an axle. */
  public enum Side {
    /** Left. */
    LEFT("left"),
    /** Right. */
    RIGHT("right");

    private final String word;

    Side(String word) {
      this.word = word;
    }

    /** Its name in files. */
    public String word() {
      return word;
    }
  }

  /** Weight on a platform. */
  public static final Field<Platform, Entered<Mass>> PLATFORM_WEIGHT =
      Field.required(
          "weight",
          "Weight",
          SCALE,
          TireFields.LOAD,
          Platform::weight,
          (platform, value) -> new Platform(platform.axles(), value));

  /** Axles on a platform. */
  public static final Texts<Platform, AxleRef> PLATFORM_AXLES =
      new Texts<>(
          "axles",
          "Axles",
          SCALE,
          TripCodecs.AXLE,
          Platform::axles,
          (platform, axles) -> new Platform(axles, platform.weight()));

  /** What one platform of the scale showed. */
  public static final Part<Platform> PLATFORM =
      Part.<Platform>bare(
              "platform",
              "platform",
              new Platform(List.of(), TireFields.LOAD.standIn()),
              List.of(PLATFORM_AXLES, PLATFORM_WEIGHT))
          .checked((platform, sound) -> platform.axles().isEmpty() ? NO_AXLES : List.of());

  /** Axle under a wheel scale. */
  public static final Field<WheelWeight, AxleRef> WHEEL_AXLE =
      Field.required(
          "axle",
          "Axle",
          SCALE,
          TripCodecs.AXLE,
          WheelWeight::axle,
          (wheel, axle) -> new WheelWeight(axle, wheel.left(), wheel.weight()));

  /** Side under a wheel scale. */
  public static final Field<WheelWeight, Side> WHEEL_SIDE =
      Field.required(
          "side",
          "Side",
          SCALE,
          Codec.choice(Side.class, Side::word),
          wheel -> wheel.left() ? Side.LEFT : Side.RIGHT,
          (wheel, side) -> new WheelWeight(wheel.axle(), side == Side.LEFT, wheel.weight()));

  /** Weight on a wheel scale. */
  public static final Field<WheelWeight, Entered<Mass>> WHEEL_LOAD =
      Field.required(
          "weight",
          "Weight",
          SCALE,
          TireFields.LOAD,
          WheelWeight::weight,
          (wheel, weight) -> new WheelWeight(wheel.axle(), wheel.left(), weight));

  /** What a wheel scale showed. */
  public static final Part<WheelWeight> WHEEL_WEIGHT =
      Part.bare(
          "wheel weight",
          "wheelWeight",
          new WheelWeight(TripCodecs.AXLE.standIn(), true, TireFields.LOAD.standIn()),
          List.<Member<WheelWeight>>of(WHEEL_AXLE, WHEEL_SIDE, WHEEL_LOAD));

  /** Day of a ticket. */
  public static final Field<ScaleTicket, LocalDate> TICKET_DATE =
      Field.optional(
          "date", "Date", SCALE, TripCodecs.DATE, ScaleTicket::date, ScaleTicket::withDate);

  /** Whether the trailer was hitched. */
  public static final Field<ScaleTicket, Boolean> HITCHED =
      Field.required(
          "hitched",
          "Trailer hitched when weighed",
          "how it stood on the scale",
          Codec.FLAG,
          ScaleTicket::hitched,
          ScaleTicket::withHitched);

  /** What was aboard. */
  public static final Field<ScaleTicket, String> ABOARD =
      Field.optional(
          "aboard",
          "Aboard",
          "what was in it when weighed",
          Codec.TEXT,
          ScaleTicket::aboard,
          ScaleTicket::withAboard);

  /** Platforms of a ticket. */
  public static final Parts<ScaleTicket, Platform> PLATFORMS =
      new Parts<>(
          "platforms", "Platforms", PLATFORM, ScaleTicket::platforms, ScaleTicket::withPlatforms);

  /** Wheel scales of a ticket. */
  public static final Parts<ScaleTicket, WheelWeight> WHEELS =
      new Parts<>(
          "wheels", "Wheel scales", WHEEL_WEIGHT, ScaleTicket::wheels, ScaleTicket::withWheels);

  /** A scale ticket. */
  public static final Part<ScaleTicket> TICKET =
      Part.of(
          "scale ticket",
          "ticket",
          new ScaleTicket(null, false, null, List.of(), List.of(), Remarks.NONE),
          ScaleTicket::remarks,
          ScaleTicket::withRemarks,
          List.<Member<ScaleTicket>>of(TICKET_DATE, HITCHED, ABOARD, PLATFORMS, WHEELS));

  /** Kind of hitch. */
  public static final Field<Hitch, Hitch.Kind> HITCH_KIND =
      Field.required(
          "kind",
          "Hitch",
          "seen on the tow vehicle",
          Codec.choice(Hitch.Kind.class, Hitch.Kind::word),
          Hitch::kind,
          Hitch::withKind);

  /** Load on the hitch. */
  public static final Field<Hitch, Entered<Mass>> HITCH_LOAD =
      Field.optional(
          "load",
          "Hitch load",
          "tongue or kingpin scale, as loaded at the start",
          TireFields.LOAD,
          Hitch::load,
          Hitch::withLoad);

  /** Whether it was weighed. */
  public static final Field<Hitch, Boolean> HITCH_WEIGHED =
      Field.optional(
          "weighed",
          "Hitch load was weighed",
          "else it is typical or guessed",
          Codec.FLAG,
          Hitch::weighed,
          (hitch, value) -> hitch.withWeighed(value != null && value));

  /** Lever of the hitch; 1 where it is not typed: the rear axle takes just the hitch load. */
  public static final Field<Hitch, Double> HITCH_LEVER =
      Field.optional(
          "lever",
          "Lever on the rear axle",
          "hitch to front axle, over wheelbase; 1 over the rear axle",
          Codec.number(0, 3),
          Hitch::lever,
          (hitch, value) -> hitch.withLever(value == null ? 1 : value));

  /** The hitch. */
  public static final Part<Hitch> HITCH =
      Part.of(
          "hitch",
          "hitch",
          new Hitch(Hitch.Kind.BUMPER, null, false, 1, Remarks.NONE),
          Hitch::remarks,
          Hitch::withRemarks,
          List.<Member<Hitch>>of(HITCH_KIND, HITCH_LOAD, HITCH_WEIGHED, HITCH_LEVER));

  /** What is taken on or set down. */
  public static final Field<LoadChange, String> LOAD_WHAT =
      Field.required(
          "what", "What", "in words", Codec.TEXT, LoadChange::what, LoadChange::withWhat);

  /** Its weight, negative where it is set down. */
  public static final Field<LoadChange, Entered<Mass>> LOAD_WEIGHT =
      Field.required(
          "weight",
          "Weight",
          "− where it is set down",
          Codec.figure(QuantityKind.MASS),
          LoadChange::weight,
          LoadChange::withWeight);

  /** How its weight is known. */
  public static final Field<LoadChange, LoadChange.Source> LOAD_SOURCE =
      Field.required(
          "source",
          "Known by",
          "how the weight is known",
          Codec.choice(LoadChange.Source.class, LoadChange.Source::word),
          LoadChange::source,
          LoadChange::withSource);

  /** Parts of the axles. */
  public static final Pairs<LoadChange, AxleRef, Entered<Ratio>> LOAD_AXLES =
      new Pairs<>(
          "axles",
          "Axles' shares",
          TripCodecs.AXLE,
          Codec.share(),
          LoadChange::axles,
          change -> change.axles().keySet().stream().sorted(ORDER).toList(),
          LoadChange::withAxles);

  /** Part of the hitch. */
  public static final Field<LoadChange, Entered<Ratio>> LOAD_HITCH =
      Field.optional(
          "hitch",
          "Hitch's share",
          "goes to the tow vehicle's rear axle",
          Codec.share(),
          LoadChange::hitch,
          LoadChange::withHitch);

  /** Whether it is only possible; no is not written. */
  public static final Field<LoadChange, Boolean> LOAD_OFFERED =
      Field.optional(
          "offered",
          "Possible pickup",
          "only offered: the plan goes without it",
          Codec.FLAG,
          change -> onlyIf(change.offered(), true),
          (change, value) -> change.withOffered(value != null && value));

  /** A load taken on or set down. */
  public static final Part<LoadChange> LOAD_CHANGE =
      Part.of(
              "load change",
              "loadChange",
              new LoadChange(
                  "",
                  Codec.figure(QuantityKind.MASS).standIn(),
                  LoadChange.Source.WEIGHED,
                  Map.of(),
                  null,
                  false,
                  Remarks.NONE),
              LoadChange::remarks,
              LoadChange::withRemarks,
              List.<Member<LoadChange>>of(
                  LOAD_WHAT, LOAD_WEIGHT, LOAD_SOURCE, LOAD_AXLES, LOAD_HITCH, LOAD_OFFERED))
          .checked((change, sound) -> sound ? splitFaults(change) : new ArrayList<>());

  private WeightFields() {}

  /** A value where something holds, else nothing. */
  private static <V> @Nullable V onlyIf(boolean holds, V value) {
    return holds ? value : null;
  }

  private static List<Fault> splitFaults(LoadChange change) {
    Entered<Ratio> hitch = change.hitch();
    double sum =
        (hitch == null ? 0 : hitch.value().value())
            + change.axles().values().stream().mapToDouble(part -> part.value().value()).sum();
    return Math.abs(sum - 1) > TOLERANCE + 1e-9
        ? List.of(Fault.of(LOAD_AXLES.key(), ProblemCode.SPLIT_NOT_WHOLE, percent(sum)))
        : List.of();
  }

  private static String percent(double ratio) {
    return BigDecimal.valueOf(ratio * 100).setScale(1, RoundingMode.HALF_UP).toPlainString();
  }
}

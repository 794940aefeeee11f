package dawngauge.ledger;

import dawngauge.advice.Advice;
import dawngauge.advice.StopAdvice;
import dawngauge.advice.TireAdvice;
import dawngauge.forecast.FillOrigin;
import dawngauge.forecast.Moment;
import dawngauge.forecast.TireAtStop;
import dawngauge.quantity.Entered;
import dawngauge.quantity.GaugePressure;
import dawngauge.quantity.Quantity;
import dawngauge.quantity.QuantityKind;
import dawngauge.quantity.UnitSystem;
import dawngauge.tire.DateCode;
import dawngauge.trip.Axle;
import dawngauge.trip.AxleRef;
import dawngauge.trip.Gauge;
import dawngauge.trip.LabelFitment;
import dawngauge.trip.Rig;
import dawngauge.trip.Tire;
import dawngauge.trip.Trip;
import dawngauge.trip.Vehicle;
import dawngauge.trip.WheelPosition;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/**
 * A rig held beside the same rig on an earlier trip: what was weighed, fitted, worn or lost since.
 *
 * @param summary from which trip to which, and how much differs
 * @param lines what differs, and the air in each tire that both trips know
 */
public record RigChanges(String summary, List<Line> lines) {

  /**
   * One figure on both trips.
   *
   * @param part axle, position, tire or gauge
   * @param what which figure
   * @param then on the earlier trip
   * @param now on this one
   */
  public record Line(String part, String what, String then, String now) {}

  private static final String NONE = "–";

  /** Copies the list. */
  public RigChanges {
    lines = List.copyOf(lines);
  }

  /**
   * Compares.
   *
   * @param was the earlier trip
   * @param before what followed from it, or null where no time is known
   * @param is this trip
   * @param now what follows from it, or null where no time is known
   * @param units the units shown
   */
  public static RigChanges of(
      Trip was, @Nullable Advice before, Trip is, @Nullable Advice now, UnitSystem units) {
    Maker maker = new Maker(was.rig(), is.rig(), units);
    maker.axles(AxleLine.all(was, before, units), AxleLine.all(is, now, units));
    maker.fitted();
    maker.tires(day(before), day(now));
    maker.gauges();
    int differ = maker.lines.size();
    maker.air(before, now);
    return new RigChanges(
        (differ == 0
                ? "Nothing of the rig differs from “"
                : differ + (differ == 1 ? " figure differs" : " figures differ") + " from “")
            + was.name()
            + "”"
            + (before == null ? "" : " of " + Summary.days(before))
            + ".",
        maker.lines);
  }

  /** The day the trip starts; null where that is not known. */
  private static @Nullable LocalDate day(@Nullable Advice advice) {
    return advice == null || advice.stops().isEmpty()
        ? null
        : advice.stops().get(0).stop().visit().leave().atZone(ZoneOffset.UTC).toLocalDate();
  }

  private static final class Maker {
    private final Rig was;
    private final Rig is;
    private final UnitSystem units;
    private final List<Line> lines = new ArrayList<>();

    Maker(Rig was, Rig is, UnitSystem units) {
      this.was = was;
      this.is = is;
      this.units = units;
    }

    private void differing(String part, String what, String then, String now) {
      if (!then.equals(now)) {
        lines.add(new Line(part, what, then, now));
      }
    }

    void axles(List<AxleLine> before, List<AxleLine> now) {
      for (AxleRef ref : refs()) {
        Axle then = was.axle(ref).orElse(null);
        Axle present = is.axle(ref).orElse(null);
        if (then == null || present == null) {
          differing(
              ref.words(), "axle", then == null ? NONE : "there", present == null ? NONE : "there");
          continue;
        }
        differing(ref.words(), "load at the start", load(before, ref), load(now, ref));
        differing(ref.words(), "GAWR", shown(then.gawr()), shown(present.gawr()));
        differing(ref.words(), "label", label(then), label(present));
        differing(ref.words(), "own target", shown(then.target()), shown(present.target()));
        differing(
            ref.words(),
            "wheel's limit",
            shown(then.wheelMaxPressure()),
            shown(present.wheelMaxPressure()));
        differing(
            ref.words(),
            "valve's limit",
            shown(then.valveMaxPressure()),
            shown(present.valveMaxPressure()));
      }
    }

    private Set<AxleRef> refs() {
      Set<AxleRef> refs = new LinkedHashSet<>();
      for (Rig rig : List.of(is, was)) {
        for (Vehicle vehicle : rig.vehicles()) {
          for (int number = 1; number <= vehicle.axles().size(); number++) {
            refs.add(new AxleRef(vehicle.name(), number));
          }
        }
      }
      return refs;
    }

    private static String load(List<AxleLine> lines, AxleRef ref) {
      return lines.stream()
          .filter(
              line -> line.axle().equals(ref.words()) || line.axle().equals(ref.words() + ", dual"))
          .map(AxleLine::load)
          .findFirst()
          .orElse(NONE);
    }

    private String label(Axle axle) {
      List<String> texts = new ArrayList<>();
      for (LabelFitment line : axle.label()) {
        texts.add(line.size() + " " + units.format(line.coldPressure().value()));
      }
      return texts.isEmpty() ? NONE : String.join("; ", texts);
    }

    private <Q extends Quantity> String shown(@Nullable Entered<Q> figure) {
      return figure == null ? NONE : units.format(figure.value());
    }

    /** Which tire stands where. */
    void fitted() {
      for (WheelPosition position : is.positions()) {
        differing(
            position.words(),
            "tire",
            was.fittedAt(position).map(Tire::id).orElse(NONE),
            is.fittedAt(position).map(Tire::id).orElse(NONE));
      }
      differing("spares", "tires", spares(was), spares(is));
    }

    private static String spares(Rig rig) {
      return rig.spares().isEmpty()
          ? NONE
          : String.join(", ", rig.spares().stream().map(spare -> spare.tire()).sorted().toList());
    }

    void tires(@Nullable LocalDate before, @Nullable LocalDate now) {
      for (Tire present : is.tires()) {
        Tire then = was.tire(present.id()).orElse(null);
        String part = "tire " + present.id();
        if (then == null) {
          lines.add(new Line(part, "tire", NONE, present.type()));
          continue;
        }
        differing(part, "kind", then.type(), present.type());
        differing(part, "date code", code(then), code(present));
        differing(part, "age", age(then, before), age(present, now));
        differing(part, "tread", shown(then.tread()), shown(present.tread()));
        differing(part, "heat factor", factor(then), factor(present));
        differing(part, "known leak a day", shown(then.lossPerDay()), shown(present.lossPerDay()));
        differing(part, "damage", damage(then), damage(present));
      }
      for (Tire gone : was.tires()) {
        if (is.tire(gone.id()).isEmpty()) {
          lines.add(new Line("tire " + gone.id(), "tire", gone.type(), NONE));
        }
      }
    }

    private static String code(Tire tire) {
      return tire.dateCode() == null ? NONE : tire.dateCode();
    }

    private static String age(Tire tire, @Nullable LocalDate day) {
      DateCode code =
          tire.dateCode() == null ? null : DateCode.parse(tire.dateCode()).valueOrNull();
      return code == null || day == null
          ? NONE
          : String.format(Locale.ROOT, "%.1f years", code.yearsOn(day));
    }

    private static String factor(Tire tire) {
      return String.format(Locale.ROOT, "%.2f", tire.heatFactor());
    }

    private static String damage(Tire tire) {
      Set<String> words = new TreeSet<>();
      tire.damage().forEach(damage -> words.add(damage.word()));
      return words.isEmpty() ? NONE : String.join(", ", words);
    }

    void gauges() {
      for (Gauge gauge : is.gauges()) {
        if (was.gauge(gauge.name()).isEmpty()) {
          lines.add(new Line("gauge " + gauge.name(), "gauge", NONE, gauge.kind().word()));
        }
      }
      for (Gauge gauge : was.gauges()) {
        if (is.gauge(gauge.name()).isEmpty()) {
          lines.add(new Line("gauge " + gauge.name(), "gauge", gauge.kind().word(), NONE));
        }
      }
    }

    /** The air in each tire at the end of the earlier trip and at the first reading of this one. */
    void air(@Nullable Advice before, @Nullable Advice now) {
      if (before == null || now == null) {
        return;
      }
      for (Tire tire : is.tires()) {
        Moment then = last(before, tire.id());
        Moment present = first(now, tire.id());
        if (then != null && present != null) {
          lines.add(
              new Line(
                  "tire " + tire.id(),
                  "air in it, as read last, shown at " + reference() + ", sea level",
                  units.format(new GaugePressure(then.atReference()))
                      + ", "
                      + daysAgo(then, present),
                  units.format(new GaugePressure(present.atReference()))));
        }
      }
    }

    private String reference() {
      return units.unitOf(QuantityKind.TEMPERATURE).symbol().equals("°F") ? "68 °F" : "20 °C";
    }

    private static String daysAgo(Moment then, Moment present) {
      long days =
          Math.round(
              Duration.between(
                          Instant.ofEpochSecond((long) then.seconds()),
                          Instant.ofEpochSecond((long) present.seconds()))
                      .toHours()
                  / 24.0);
      return days < 0 ? "later than this trip" : days == 1 ? "1 day before" : days + " days before";
    }

    /** Whether it goes back to a gauge, and to no setting that is only taken as done. */
    private static boolean isRead(@Nullable Moment moment) {
      return moment != null && moment.origin().kind() != FillOrigin.Kind.ASSUMED;
    }

    private static @Nullable Moment last(Advice advice, String id) {
      Moment found = null;
      for (StopAdvice stop : advice.stops()) {
        for (TireAdvice tire : stop.tires()) {
          TireAtStop at = tire.tire();
          Moment here = at.arrival() == null ? at.check() : at.arrival();
          if (at.fitted().tire().id().equals(id) && isRead(here)) {
            found = here;
          }
        }
      }
      return found;
    }

    private static @Nullable Moment first(Advice advice, String id) {
      for (StopAdvice stop : advice.stops()) {
        for (TireAdvice tire : stop.tires()) {
          TireAtStop at = tire.tire();
          if (at.fitted().tire().id().equals(id) && isRead(at.check())) {
            return at.check();
          }
        }
      }
      return null;
    }
  }
}

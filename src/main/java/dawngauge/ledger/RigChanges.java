package dawngauge.ledger;

import dawngauge.advice.Advice;
import dawngauge.advice.StopAdvice;
import dawngauge.advice.TireAdvice;
import dawngauge.field.RigFields;
import dawngauge.field.TireFields;
import dawngauge.field.VehicleFields;
import dawngauge.forecast.FillOrigin;
import dawngauge.forecast.TireAtStop;
import dawngauge.forecast.TireSnapshot;
import dawngauge.quantity.GaugePressure;
import dawngauge.quantity.QuantityKind;
import dawngauge.quantity.UnitSystem;
import dawngauge.tire.DateCode;
import dawngauge.tire.TireSpec;
import dawngauge.trip.Axle;
import dawngauge.trip.AxleRef;
import dawngauge.trip.Gauge;
import dawngauge.trip.Rig;
import dawngauge.trip.Spare;
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
import org.jspecify.annotations.Nullable;

/**
 * A rig held beside the same rig on an earlier trip: what was weighed, fitted, worn or lost since,
 * and what differs on the way that both have in common.
 *
 * @param summary from which trip to which, and how much differs
 * @param lines what differs, and the air in each tire that both trips know
 */
public record RigChanges(String summary, List<Line> lines) {

  /**
   * One figure on both trips.
   *
   * @param part axle, position, tire, gauge, stop or leg
   * @param what which figure
   * @param then on the earlier trip
   * @param now on this one
   */
  public record Line(String part, String what, String then, String now) {}

  private static final String NONE = PartChanges.NONE;

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
    maker.parts(day(before), day(now));
    WayChanges.of(was.route(), is.route(), maker.changes);
    int differ = maker.lines.size();
    maker.air(before, now);
    return new RigChanges(
        (differ == 0
                ? "Nothing of rig and way differs from “"
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
    private final PartChanges changes;

    Maker(Rig was, Rig is, UnitSystem units) {
      this.was = was;
      this.is = is;
      this.units = units;
      this.changes = new PartChanges(units, lines::add);
    }

    void axles(List<AxleLine> before, List<AxleLine> now) {
      for (AxleRef ref : refs()) {
        Axle then = was.axle(ref).orElse(null);
        Axle present = is.axle(ref).orElse(null);
        if (then == null || present == null) {
          changes.differing(
              ref.words(), "axle", then == null ? NONE : "there", present == null ? NONE : "there");
          continue;
        }
        changes.differing(ref.words(), "load at the start", load(before, ref), load(now, ref));
        changes.of(ref.words(), VehicleFields.AXLE, then, present);
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
          .filter(line -> line.ref().equals(ref))
          .map(AxleLine::load)
          .findFirst()
          .orElse(NONE);
    }

    /** Which tire stands where. */
    void fitted() {
      for (WheelPosition position : is.positions()) {
        changes.differing(
            position.words(),
            "tire",
            was.fittedAt(position).map(Tire::id).orElse(NONE),
            is.fittedAt(position).map(Tire::id).orElse(NONE));
      }
    }

    void parts(@Nullable LocalDate before, @Nullable LocalDate now) {
      changes.figures("the rig", RigFields.RIG, was, is);
      changes.named("vehicle", VehicleFields.VEHICLE, Vehicle::name, was.vehicles(), is.vehicles());
      changes.once(RigFields.HITCH, was, is);
      changes.once(RigFields.WORKSHEET, was, is);
      changes.named(
          "kind of tire", TireFields.TIRE_TYPE, TireSpec::name, was.tireTypes(), is.tireTypes());
      changes.named("tire", TireFields.TIRE, Tire::id, was.tires(), is.tires());
      for (Tire tire : is.tires()) {
        was.tire(tire.id())
            .ifPresent(
                old ->
                    changes.differing(
                        "tire " + tire.id(), "age", age(old, before), age(tire, now)));
      }
      changes.named("spare", TireFields.SPARE, Spare::tire, was.spares(), is.spares());
      changes.named("gauge", RigFields.GAUGE, Gauge::name, was.gauges(), is.gauges());
    }

    private static String age(Tire tire, @Nullable LocalDate day) {
      DateCode code =
          tire.dateCode() == null ? null : DateCode.parse(tire.dateCode()).valueOrNull();
      return code == null || day == null
          ? NONE
          : String.format(Locale.ROOT, "%.1f years", code.yearsOn(day));
    }

    /** The air in each tire at the end of the earlier trip and at the first reading of this one. */
    void air(@Nullable Advice before, @Nullable Advice now) {
      if (before == null || now == null) {
        return;
      }
      for (Tire tire : is.tires()) {
        TireSnapshot then = last(before, tire.id());
        TireSnapshot present = first(now, tire.id());
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

    private static String daysAgo(TireSnapshot then, TireSnapshot present) {
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
    private static boolean isRead(@Nullable TireSnapshot moment) {
      return moment != null && moment.origin().kind() != FillOrigin.Kind.ASSUMED;
    }

    private static @Nullable TireSnapshot last(Advice advice, String id) {
      TireSnapshot found = null;
      for (StopAdvice stop : advice.stops()) {
        for (TireAdvice tire : stop.tires()) {
          TireAtStop at = tire.tire();
          TireSnapshot here = at.arrival() == null ? at.check() : at.arrival();
          if (at.fitted().tire().id().equals(id) && isRead(here)) {
            found = here;
          }
        }
      }
      return found;
    }

    private static @Nullable TireSnapshot first(Advice advice, String id) {
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

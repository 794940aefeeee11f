package dawngauge.ledger;

import dawngauge.advice.SetFigure;
import dawngauge.advice.TimedFigures;
import dawngauge.advice.TireAdvice;
import dawngauge.forecast.RuleOfThumb;
import dawngauge.forecast.Setting;
import dawngauge.forecast.TireAtStop;
import dawngauge.forecast.TireSnapshot;
import dawngauge.quantity.GaugePressure;
import dawngauge.quantity.Unit;
import dawngauge.quantity.UnitSystem;
import dawngauge.rules.Limits;
import dawngauge.rules.Quantile;
import dawngauge.trip.Trip;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Makes the rows of the tires at a stop. */
final class TireRows {

  private static final String NONE = "–";

  private static final double WHOLE_PSI = GaugePressure.of(1, Unit.PSI).pascals();

  private final Trip trip;
  private final UnitSystem units;

  TireRows(Trip trip, UnitSystem units) {
    this.trip = trip;
    this.units = units;
  }

  /** Tires whose figures agree to half a psi stand together, under those of the lowest margin. */
  List<StopLine.TireRow> of(List<TireAdvice> tires, boolean last) {
    List<List<TireAdvice>> groups = new ArrayList<>();
    for (TireAdvice tire : tires) {
      groups.stream()
          .filter(group -> alike(group.get(0), tire))
          .findFirst()
          .ifPresentOrElse(group -> group.add(tire), () -> groups.add(newGroup(tire)));
    }
    return groups.stream().map(group -> row(group, last)).toList();
  }

  private static List<TireAdvice> newGroup(TireAdvice first) {
    List<TireAdvice> group = new ArrayList<>();
    group.add(first);
    return group;
  }

  private static boolean alike(TireAdvice a, TireAdvice b) {
    TireAtStop one = a.tire();
    TireAtStop other = b.tire();
    return a.mark() == b.mark()
        && one.readings().isEmpty() == other.readings().isEmpty()
        && (one.setting() == null) == (other.setting() == null)
        && toSet(a.timed()).equals(toSet(b.timed()))
        && one.limits().estimated() == other.limits().estimated()
        && close(one.limits().floor(), other.limits().floor())
        && close(one.limits().aim(), other.limits().aim())
        && close(one.limits().ceiling(), other.limits().ceiling())
        && close(one.arrival(), other.arrival())
        && close(one.check(), other.check())
        && close(one.leaving(), other.leaving());
  }

  /** The figures to set: what is told to be done to tires together is the same for each. */
  private static List<GaugePressure> toSet(@Nullable TimedFigures timed) {
    return timed == null
        ? List.of()
        : Stream.of(timed.onArrival(), timed.at(), timed.cold())
            .filter(Objects::nonNull)
            .map(SetFigure::figure)
            .toList();
  }

  private static boolean close(@Nullable TireSnapshot a, @Nullable TireSnapshot b) {
    if (a == null || b == null) {
      return a == null && b == null;
    }
    return close(a.reading(), b.reading())
        && close(a.settled(), b.settled())
        && close(a.readingSigma(), b.readingSigma());
  }

  private static boolean close(double a, double b) {
    return Double.isNaN(a) ? Double.isNaN(b) : Math.abs(a - b) < WHOLE_PSI / 2;
  }

  private StopLine.TireRow row(List<TireAdvice> group, boolean last) {
    TireAdvice lowest = group.get(0);
    List<String> names = new ArrayList<>();
    for (TireAdvice tire : group) {
      names.add(trip.rig().shortForm(tire.tire().fitted().position()));
      if (tire.tire().worstMargin() < lowest.tire().worstMargin()) {
        lowest = tire;
      }
    }
    return row(lowest, String.join(" ", names), last);
  }

  private StopLine.TireRow row(TireAdvice advised, String names, boolean last) {
    TireAtStop at = advised.tire();
    TireSnapshot arrival = at.arrival();
    TireSnapshot check = at.check();
    TireSnapshot leaving = at.leaving();
    Limits limits = at.limits();
    boolean read = !at.readings().isEmpty();
    Setting set = at.setting();
    TimedFigures timed = advised.timed();
    SetFigure onArrival = timed == null ? null : timed.onArrival();
    double shown =
        read
            ? at.readings().get(at.readings().size() - 1).reading().pressure().value().pascals()
            : arrival == null ? Double.NaN : arrival.reading();
    return new StopLine.TireRow(
        names,
        read,
        set != null && !last,
        pressure(shown),
        read || arrival == null ? "" : range(arrival),
        onArrival == null ? "" : figure(onArrival.figure().pascals()),
        read ? "" : arrival == null ? NONE : pressure(arrival.settled()),
        timed == null ? "" : figure(timed.cold().figure().pascals()),
        last
            ? ""
            : set != null
                ? figure(set.gaugePascals())
                : check == null ? NONE : pressure(check.reading()),
        last || set != null || read || check == null ? "" : range(check),
        last ? "" : leaving == null ? NONE : pressure(leaving.settled()),
        last ? "" : at.low() == null ? NONE : pressure(at.low().moment().judged()),
        Double.isNaN(limits.floor()) ? NONE : Wording.floor(limits.floor(), units),
        set(limits.aim()),
        set(limits.ceiling()),
        Wording.signedPercent(at.worstMargin()),
        at.worstMargin(),
        limits.estimated() && !Double.isNaN(at.worstMargin()),
        advised.mark());
  }

  /** What a crew compares first: our figure, the rule of thumb's, the regulation's. */
  String beside(List<TireAdvice> tires) {
    Map<String, List<String>> same = new LinkedHashMap<>();
    Set<String> published = new LinkedHashSet<>();
    for (TireAdvice tire : tires) {
      TireAtStop at = tire.tire();
      TireSnapshot arrival = at.arrival();
      if (arrival == null) {
        continue;
      }
      RuleOfThumb thumb = RuleOfThumb.of(arrival);
      String regulation = "";
      if (at.published() != null) {
        published.add(units.format(at.published().pressure()));
        regulation = ", " + pressure(arrival.reading() - at.published().pressure().pascals());
      }
      String range = pressure(thumb.low()) + "–" + pressure(thumb.high());
      String figures = pressure(arrival.settled()) + ", " + range + regulation;
      same.computeIfAbsent(figures, key -> new ArrayList<>())
          .add(trip.rig().shortForm(at.fitted().position()));
    }
    if (same.isEmpty()) {
      return "";
    }
    List<String> parts = new ArrayList<>();
    same.forEach((figures, names) -> parts.add(String.join(" ", names) + " " + figures));
    return "cold here by our model, by the rule of thumb (1 to 2 psi a 10 °F of the air since they"
        + " were read)"
        + (published.isEmpty()
            ? ""
            : ", by 49 CFR 393.75 Table 1 ("
                + String.join(" or ", published)
                + " off a warm reading)")
        + ": "
        + String.join("; ", parts);
  }

  private String range(TireSnapshot moment) {
    if (Double.isNaN(moment.reading())) {
      return "";
    }
    double spread = Quantile.NINETY_WITHIN * moment.readingSigma();
    return pressure(moment.reading() - spread) + "–" + pressure(moment.reading() + spread);
  }

  /** To the step of figures that are set, so that none of those seems to be over its limit. */
  private String set(double pascals) {
    return Double.isNaN(pascals) ? NONE : figure(pascals);
  }

  /** A figure to set, as it is told beside. */
  private String figure(double pascals) {
    return Wording.figureNumber(pascals, units);
  }

  private String pressure(double pascals) {
    return Double.isNaN(pascals) ? NONE : Wording.pressure(pascals, units);
  }
}

package dawngauge.ledger;

import dawngauge.field.Estimable;
import dawngauge.field.Field;
import dawngauge.field.Member;
import dawngauge.field.OnePart;
import dawngauge.field.Pairs;
import dawngauge.field.Part;
import dawngauge.field.Parts;
import dawngauge.field.RigFields;
import dawngauge.field.RouteFields;
import dawngauge.field.Texts;
import dawngauge.trip.Leg;
import dawngauge.trip.LogEvent;
import dawngauge.trip.Stop;
import dawngauge.trip.StopAir;
import dawngauge.trip.Trip;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** What an edit was, in a few words, found by what it changed: "Elevation at Raton NM". */
public final class EditWords {

  private EditWords() {}

  /** What led from one trip to the other. */
  public static String of(Trip before, Trip after) {
    String route = route(before, after);
    if (!route.isEmpty()) {
      return route;
    } else if (!before.ambient().equals(after.ambient())) {
      return air(before, after);
    } else if (!before.log().equals(after.log())) {
      return log(before.log(), after.log());
    } else if (!before.rig().equals(after.rig())) {
      String label = difference(RigFields.RIG, before.rig(), after.rig());
      return label == null ? "the rig" : "Rig: " + label;
    } else if (!before.plan().equals(after.plan())) {
      return "wishes for the plan";
    }
    return before.name().equals(after.name()) ? "the trip" : "name of the trip";
  }

  private static String route(Trip before, Trip after) {
    List<Stop> was = before.route().stops();
    List<Stop> is = after.route().stops();
    List<Stop> added = missing(is, was);
    List<Stop> gone = missing(was, is);
    if (!added.isEmpty() && !gone.isEmpty()) {
      return "the route";
    } else if (!added.isEmpty()) {
      return "add " + stops(added);
    } else if (!gone.isEmpty()) {
      return "remove " + stops(gone);
    } else if (!ids(was).equals(ids(is))) {
      return "order of the stops";
    }
    return figures(before, after);
  }

  private static String figures(Trip before, Trip after) {
    List<Stop> was = before.route().stops();
    List<Stop> is = after.route().stops();
    List<Integer> rows = differing(was, is);
    if (!rows.isEmpty()) {
      int row = rows.get(0);
      String label = difference(RouteFields.STOP, was.get(row), is.get(row));
      return (label == null ? "figures" : label)
          + " at "
          + stops(rows.stream().map(was::get).toList());
    }
    List<Leg> legs = before.route().legs();
    List<Integer> ways = differing(legs, after.route().legs());
    if (ways.isEmpty()) {
      return "";
    }
    int way = ways.get(0);
    String label = difference(RouteFields.LEG, legs.get(way), after.route().legs().get(way));
    return (label == null ? "figures" : label)
        + (ways.size() == 1 ? " behind " + was.get(way).place() : " of " + ways.size() + " legs");
  }

  private static String air(Trip before, Trip after) {
    List<Stop> stops =
        after.route().stops().stream()
            .filter(stop -> !StopAir.of(before, stop.id()).equals(StopAir.of(after, stop.id())))
            .toList();
    return stops.isEmpty() ? "temperatures" : "temperature at " + stops(stops);
  }

  private static String log(List<LogEvent> before, List<LogEvent> after) {
    if (after.size() > before.size()) {
      return after.size() == before.size() + 1 ? "a note on the way" : "notes on the way";
    }
    return after.size() < before.size() ? "remove what was noted" : "change what was noted";
  }

  private static String stops(List<Stop> stops) {
    return stops.size() == 1 ? stops.get(0).place() : stops.size() + " stops";
  }

  private static List<String> ids(List<Stop> stops) {
    return stops.stream().map(Stop::id).toList();
  }

  private static List<Stop> missing(List<Stop> some, List<Stop> from) {
    List<String> known = ids(from);
    return some.stream().filter(stop -> !known.contains(stop.id())).toList();
  }

  private static <E> List<Integer> differing(List<E> was, List<E> is) {
    List<Integer> rows = new ArrayList<>();
    for (int i = 0; i < Math.min(was.size(), is.size()); i++) {
      if (!was.get(i).equals(is.get(i))) {
        rows.add(i);
      }
    }
    return rows;
  }

  /** The first figure in which two parts differ, by its label. */
  private static <R> @Nullable String difference(Part<R> kind, R was, R is) {
    for (Member<R> member : kind.members()) {
      String label = of(member, was, is);
      if (label != null) {
        return label;
      }
    }
    return null;
  }

  private static <R> @Nullable String of(Member<R> member, R was, R is) {
    if (member instanceof Parts<R, ?> parts) {
      return ofParts(parts, was, is);
    } else if (member instanceof OnePart<R, ?> one) {
      return ofOne(one, was, is);
    }
    Function<R, @Nullable Object> figure;
    if (member instanceof Field<R, ?> field) {
      figure = field::of;
    } else if (member instanceof Estimable<R, ?> estimable) {
      figure = estimable.figure()::of;
    } else if (member instanceof Texts<R, ?> texts) {
      figure = texts.get()::apply;
    } else if (member instanceof Pairs<R, ?, ?> pairs) {
      figure = pairs.get()::apply;
    } else {
      return null;
    }
    return Objects.equals(figure.apply(was), figure.apply(is)) ? null : member.label();
  }

  private static <R, E> @Nullable String ofParts(Parts<R, E> parts, R was, R is) {
    List<E> before = parts.get().apply(was);
    List<E> after = parts.get().apply(is);
    if (before.size() != after.size()) {
      return parts.label();
    }
    List<Integer> rows = differing(before, after);
    if (rows.isEmpty()) {
      return null;
    }
    String label = difference(parts.part(), before.get(rows.get(0)), after.get(rows.get(0)));
    return label == null ? parts.label() : label;
  }

  private static <R, E> @Nullable String ofOne(OnePart<R, E> one, R was, R is) {
    E before = one.get().apply(was);
    E after = one.get().apply(is);
    if (before == null || after == null) {
      return before == after ? null : one.label();
    }
    return before.equals(after) ? null : difference(one.part(), before, after);
  }
}

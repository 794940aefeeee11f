package dawngauge.ledger;

import dawngauge.field.Estimable;
import dawngauge.field.Field;
import dawngauge.field.Member;
import dawngauge.field.OnePart;
import dawngauge.field.Part;
import dawngauge.field.Parts;
import dawngauge.field.Texts;
import dawngauge.field.TimeCodecs;
import dawngauge.ledger.RigChanges.Line;
import dawngauge.quantity.UnitSystem;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** What differs between two parts of trips, by the field catalogue. */
final class PartChanges {

  static final String NONE = "–";

  private static final String THERE = "there";

  private final UnitSystem units;
  private final Consumer<Line> lines;

  /**
   * Changes.
   *
   * @param units the units shown
   * @param lines takes a line for each figure that differs
   */
  PartChanges(UnitSystem units, Consumer<Line> lines) {
    this.units = units;
    this.lines = lines;
  }

  /** A line where two texts differ. */
  void differing(String part, String what, String then, String now) {
    if (!then.equals(now)) {
      lines.accept(new Line(part, what, then, now));
    }
  }

  /**
   * Every single figure in which two parts differ. Names are none, nor are points in time, which
   * belong to one trip.
   */
  <R> void figures(String name, Part<R> kind, R then, R now) {
    for (Member<R> member : kind.members()) {
      if (member instanceof Estimable<R, ?> estimable) {
        differing(name, estimable.label(), shown(estimable, then), shown(estimable, now));
      } else if (member instanceof Field<R, ?> field
          && field.need() != Field.Need.UNIQUE
          && !field.codec().equals(TimeCodecs.TIME)) {
        differing(name, field.label(), shown(field, then), shown(field, now));
      }
    }
  }

  /** A line where two lists of parts differ. */
  <R> void list(String name, Parts<R, ?> parts, R then, R now) {
    differing(name, parts.label(), shown(parts, then), shown(parts, now));
  }

  /** The same, and lists that stand in the part itself; parts with parts of their own are not. */
  <R> void of(String name, Part<R> kind, R then, R now) {
    figures(name, kind, then, now);
    for (Member<R> member : kind.members()) {
      if (member instanceof Texts<R, ?> texts) {
        differing(name, texts.label(), shown(texts, then), shown(texts, now));
      } else if (member instanceof Parts<R, ?> parts && parts.part().inner().isEmpty()) {
        list(name, parts, then, now);
      }
    }
  }

  /**
   * Parts that are known by a name, those that came and went too.
   *
   * @param what what such a part is called in a line
   */
  <R> void named(
      String what, Part<R> kind, Function<R, String> name, List<R> before, List<R> after) {
    for (R now : after) {
      String part = what + " " + name.apply(now);
      R then = find(before, name, name.apply(now));
      if (then == null) {
        lines.accept(new Line(part, what, NONE, THERE));
      } else {
        of(part, kind, then, now);
      }
    }
    for (R gone : before) {
      if (find(after, name, name.apply(gone)) == null) {
        lines.accept(new Line(what + " " + name.apply(gone), what, THERE, NONE));
      }
    }
  }

  /** A part that a rig has once or not at all. */
  <R, E> void once(OnePart<R, E> one, R before, R after) {
    named(one.key(), one.part(), part -> "of the rig", there(one, before), there(one, after));
  }

  private static <R, E> List<E> there(OnePart<R, E> one, R part) {
    return Optional.<E>ofNullable(one.get().apply(part)).stream().toList();
  }

  private static <R> @Nullable R find(List<R> parts, Function<R, String> name, String wanted) {
    return parts.stream().filter(part -> name.apply(part).equals(wanted)).findFirst().orElse(null);
  }

  private <R, V> String shown(Field<R, V> field, R part) {
    V value = field.of(part);
    return value == null ? NONE : field.codec().shown().apply(units, value);
  }

  private <R, V> String shown(Estimable<R, V> estimable, R part) {
    return shown(estimable.figure(), part) + (estimable.estimated().test(part) ? ", estimate" : "");
  }

  private <R, V> String shown(Texts<R, V> texts, R part) {
    String all =
        texts.get().apply(part).stream()
            .map(value -> texts.codec().shown().apply(units, value))
            .collect(Collectors.joining(", "));
    return all.isEmpty() ? NONE : all;
  }

  private <R, E> String shown(Parts<R, E> parts, R part) {
    String all =
        parts.get().apply(part).stream()
            .map(
                each ->
                    parts.part().fields().stream()
                        .map(field -> shown(field, each))
                        .filter(text -> !Objects.equals(text, NONE))
                        .collect(Collectors.joining(" ")))
            .collect(Collectors.joining("; "));
    return all.isEmpty() ? NONE : all;
  }
}

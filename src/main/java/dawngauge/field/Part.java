package dawngauge.field;

import dawngauge.trip.Remarks;
import java.util.List;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * A kind of part of a trip, such as an axle or a stop, and all that it has.
 *
 * @param <R> the part
 * @param name its name in a sentence
 * @param schema its name among the definitions of the JSON Schema
 * @param blank one of which nothing is known, from which reading begins
 * @param members what it has, in the order of the file
 * @param remarks its note and extras; null where it carries none
 * @param withRemarks the part with others
 * @param check what is wrong between its figures; told also whether all of them could be read
 */
public record Part<R>(
    String name,
    String schema,
    R blank,
    List<Member<R>> members,
    @Nullable Function<R, Remarks> remarks,
    BiFunction<R, Remarks, R> withRemarks,
    BiFunction<R, Boolean, List<Fault>> check) {

  /** Copies the list. */
  public Part {
    members = List.copyOf(members);
  }

  /** A part with remarks, whose figures do not hang on each other. */
  static <R> Part<R> of(
      String name,
      String schema,
      R blank,
      Function<R, Remarks> remarks,
      BiFunction<R, Remarks, R> withRemarks,
      List<Member<R>> members) {
    return new Part<>(
        name, schema, blank, members, remarks, withRemarks, (part, sound) -> List.of());
  }

  /** A part without remarks, whose figures do not hang on each other. */
  static <R> Part<R> bare(String name, String schema, R blank, List<Member<R>> members) {
    return new Part<>(
        name, schema, blank, members, null, (part, none) -> part, (part, sound) -> List.of());
  }

  /** The same with a check between its figures. */
  Part<R> checked(BiFunction<R, Boolean, List<Fault>> other) {
    return new Part<>(name, schema, blank, members, remarks, withRemarks, other);
  }

  /** What is wrong between the figures of a part. */
  public List<Fault> faults(R part) {
    return check.apply(part, true);
  }

  /** The kinds of part that stand inside it. */
  public List<Part<?>> inner() {
    return members.stream()
        .<Part<?>>flatMap(
            member -> {
              if (member instanceof Parts<R, ?> parts) {
                return Stream.of(parts.part());
              }
              return member instanceof OnePart<R, ?> one ? Stream.of(one.part()) : Stream.empty();
            })
        .toList();
  }

  /** Its single figures, texts and choices. */
  public List<Field<R, ?>> fields() {
    return members.stream()
        .<Field<R, ?>>flatMap(
            member -> {
              if (member instanceof Estimable<R, ?> estimable) {
                return Stream.of(estimable.figure());
              }
              return member instanceof Field<R, ?> field ? Stream.of(field) : Stream.empty();
            })
        .toList();
  }
}

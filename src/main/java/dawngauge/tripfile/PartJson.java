package dawngauge.tripfile;

import com.fasterxml.jackson.databind.node.ObjectNode;
import dawngauge.field.Codec;
import dawngauge.field.Estimable;
import dawngauge.field.Fault;
import dawngauge.field.Field;
import dawngauge.field.Member;
import dawngauge.field.OnePart;
import dawngauge.field.Pairs;
import dawngauge.field.Part;
import dawngauge.field.Parts;
import dawngauge.field.Texts;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** Parts of the field catalogue as JSON objects. */
final class PartJson {

  private PartJson() {}

  /** Reads a part, and reports what is wrong between its figures. */
  static <R> R read(FieldReader in, Part<R> part) {
    int before = in.problemCount();
    R value = part.blank();
    for (Member<R> member : part.members()) {
      value = with(in, member, value);
    }
    boolean sound = in.problemCount() == before;
    part.check().apply(value, sound).forEach(fault -> report(in, in.at(fault.at()), fault));
    return part.remarks() == null ? value : part.withRemarks().apply(value, in.remarks());
  }

  /** Writes a part. */
  static <R> ObjectNode write(Part<R> part, R value) {
    return write(new FieldWriter(), part, value);
  }

  /** Writes a part behind what stands in its object already. */
  static <R> ObjectNode write(FieldWriter out, Part<R> part, R value) {
    for (Member<R> member : part.members()) {
      put(out, member, value);
    }
    var remarks = part.remarks();
    return remarks == null ? out.node() : out.with(remarks.apply(value));
  }

  private static <R> R with(FieldReader in, Member<R> member, R value) {
    if (member instanceof Field<R, ?> field) {
      return withField(in, field, value);
    } else if (member instanceof Estimable<R, ?> estimable) {
      return withEstimable(in, estimable, value);
    } else if (member instanceof Texts<R, ?> texts) {
      return withTexts(in, texts, value);
    } else if (member instanceof Pairs<R, ?, ?> pairs) {
      return withPairs(in, pairs, value);
    } else if (member instanceof Parts<R, ?> parts) {
      return withParts(in, parts, value);
    }
    return withOne(in, (OnePart<R, ?>) member, value);
  }

  private static <R, V> R withField(FieldReader in, Field<R, V> field, R value) {
    if (field.codec().json() == Codec.Json.FLAG) {
      // A flag that is missing is no: nothing else is said of it.
      return field.required() || in.has(field.key())
          ? field.with().apply(value, in.value(field.key(), field.codec(), field.required()))
          : value;
    }
    V read = in.value(field.key(), field.codec(), field.required());
    return field.with().apply(value, read);
  }

  private static <R, V> R withEstimable(FieldReader in, Estimable<R, V> estimable, R value) {
    Field<R, V> figure = estimable.figure();
    R known = figure.with().apply(value, in.known(figure.key(), figure.codec()));
    return in.isEstimate(figure.key()) ? estimable.asEstimate().apply(known) : known;
  }

  private static <R, V> R withTexts(FieldReader in, Texts<R, V> texts, R value) {
    return texts.with().apply(value, in.texts(texts.key(), texts.codec()));
  }

  private static <R, K, V> R withPairs(FieldReader in, Pairs<R, K, V> pairs, R value) {
    return pairs.with().apply(value, in.map(pairs.key(), pairs.keys(), pairs.values()));
  }

  private static <R, E> R withParts(FieldReader in, Parts<R, E> parts, R value) {
    List<E> read = in.objects(parts.key(), each -> read(each, parts.part()));
    if (!in.has(parts.key())) {
      return value;
    }
    List<Fault> faults = parts.check().apply(read);
    faults.forEach(
        fault ->
            report(in, in.at(parts.key()) + (fault.at().isEmpty() ? "" : "/" + fault.at()), fault));
    return faults.isEmpty() ? parts.with().apply(value, read) : value;
  }

  private static <R, E> R withOne(FieldReader in, OnePart<R, E> one, R value) {
    return one.with().apply(value, in.object(one.key(), each -> read(each, one.part())));
  }

  private static void report(FieldReader in, String where, Fault fault) {
    in.report(fault.problem().at(where));
  }

  private static <R> void put(FieldWriter out, Member<R> member, R value) {
    if (member instanceof Field<R, ?> field) {
      putField(out, field, value);
    } else if (member instanceof Estimable<R, ?> estimable) {
      putEstimable(out, estimable, value);
    } else if (member instanceof Texts<R, ?> texts) {
      putTexts(out, texts, value);
    } else if (member instanceof Pairs<R, ?, ?> pairs) {
      putPairs(out, pairs, value);
    } else if (member instanceof Parts<R, ?> parts) {
      putParts(out, parts, value);
    } else {
      putOne(out, (OnePart<R, ?>) member, value);
    }
  }

  private static <R, V> void putField(FieldWriter out, Field<R, V> field, R value) {
    out.value(field.key(), field.codec(), field.of(value));
  }

  private static <R, V> void putEstimable(FieldWriter out, Estimable<R, V> estimable, R value) {
    Field<R, V> figure = estimable.figure();
    boolean estimated = estimable.estimated().test(value);
    out.known(figure.key(), figure.codec(), figure.of(value), estimated);
  }

  private static <R, V> void putTexts(FieldWriter out, Texts<R, V> texts, R value) {
    out.texts(texts.key(), texts.get().apply(value), texts.codec());
  }

  private static <R, K, V> void putPairs(FieldWriter out, Pairs<R, K, V> pairs, R value) {
    out.map(
        pairs.key(),
        pairs.order().apply(value),
        pairs.get().apply(value),
        pairs.keys(),
        pairs.values());
  }

  private static <R, E> void putParts(FieldWriter out, Parts<R, E> parts, R value) {
    out.objects(parts.key(), parts.get().apply(value), each -> write(parts.part(), each));
  }

  private static <R, E> void putOne(FieldWriter out, OnePart<R, E> one, R value) {
    @Nullable E part = one.get().apply(value);
    if (part != null) {
      out.object(one.key(), part, each -> write(one.part(), Objects.requireNonNull(each)));
    }
  }
}

package dawngauge.ui.fields;

import dawngauge.field.Codec;
import dawngauge.field.Fault;
import dawngauge.field.Field;
import dawngauge.field.Member;
import dawngauge.field.Part;
import dawngauge.field.Texts;
import dawngauge.problem.Outcome;
import dawngauge.problem.Problem;
import dawngauge.problem.ProblemCode;
import dawngauge.trip.Trip;
import dawngauge.ui.fields.FormFields.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javafx.scene.Node;
import javafx.scene.control.CheckBox;
import javafx.scene.control.CheckMenuItem;
import javafx.scene.control.MenuButton;
import javafx.scene.control.Tooltip;

/**
 * Fields of one part of the rig as the catalogue has them: labels, what is read, what is refused.
 *
 * @param <R> the part
 */
public final class Cells<R> {

  /** Under this key a node tells which entry of the catalogue it edits. */
  public static final String MEMBER = "catalogue";

  private static final String NONE = "not typed";

  private final FormFields book;
  private final Part<R> kind;
  private final Supplier<R> part;
  private final Supplier<List<R>> siblings;
  private final Supplier<String> owner;
  private final Function<R, Trip> edit;

  /**
   * Fields of a part.
   *
   * @param book takes the fields
   * @param kind what such a part has
   * @param part the part as it is now
   * @param siblings all of its kind, for names that must differ
   * @param owner how the part is called now
   * @param edit the trip with another part in its place
   */
  public Cells(
      FormFields book,
      Part<R> kind,
      Supplier<R> part,
      Supplier<List<R>> siblings,
      Supplier<String> owner,
      Function<R, Trip> edit) {
    this.book = book;
    this.kind = kind;
    this.part = part;
    this.siblings = siblings;
    this.owner = owner;
    this.edit = edit;
  }

  /** A field under its name. */
  public <V> Node cell(Field<R, V> field) {
    return under(field.label(), field.stands(), field, editor(field));
  }

  /** A field for longer texts, under its name. */
  public <V> Node wideCell(Field<R, V> field) {
    return FormFields.wideCell(words(field.label(), field.stands()), editor(field));
  }

  /** A choice among things that may change with the trip, under its name. */
  public <V> Node cell(Field<R, V> field, Supplier<List<V>> options) {
    return under(field.label(), field.stands(), field, editor(field, options));
  }

  /** Several values out of a set, under their name. */
  public <V> Node cell(Texts<R, V> texts, Supplier<List<V>> options) {
    return FormFields.cell(words(texts.label(), texts.stands()), editor(texts, options));
  }

  private Node under(String label, String stands, Field<R, ?> field, Node editor) {
    Words words = words(label, stands);
    boolean name = field.need() == Field.Need.UNIQUE && field.codec().equals(Codec.NAME);
    return name ? FormFields.wideCell(words, editor) : FormFields.cell(words, editor);
  }

  /** A field without its name. */
  public <V> Node editor(Field<R, V> field) {
    Codec<V> codec = field.codec();
    if (codec.json() == Codec.Json.FLAG) {
      return marked(field, check(field));
    }
    return codec.choices().isEmpty() ? marked(field, typed(field)) : editor(field, codec::choices);
  }

  /** A choice without its name. */
  public <V> Node editor(Field<R, V> field, Supplier<List<V>> options) {
    return marked(
        field,
        book.<Optional<V>>choice(
            words(field.label(), field.stands()),
            () ->
                Stream.concat(
                        field.required() ? Stream.of() : Stream.of(Optional.<V>empty()),
                        options.get().stream().map(Optional::of))
                    .toList(),
            () -> Optional.ofNullable(field.of(part.get())),
            value -> value.map(field.codec().text()).orElse(NONE),
            value -> edit.apply(field.with().apply(part.get(), value.orElse(null)))));
  }

  /** Several values out of a set, without their name. */
  public <V> Node editor(Texts<R, V> texts, Supplier<List<V>> options) {
    MenuButton button = new MenuButton();
    button.setMaxWidth(Double.MAX_VALUE);
    button.setTooltip(new Tooltip(texts.stands()));
    Words words = words(texts.label(), texts.stands());
    book.onRefresh(
        () -> {
          List<V> now = texts.get().apply(part.get());
          String text = now.stream().map(texts.codec().text()).collect(Collectors.joining(", "));
          button.setText(text.isEmpty() ? "none" : text);
          button.setAccessibleText(words.spoken() + ": " + button.getText());
          button
              .getItems()
              .setAll(options.get().stream().map(option -> item(texts, option, now)).toList());
        });
    return marked(texts, button);
  }

  private <V> CheckMenuItem item(Texts<R, V> texts, V option, List<V> now) {
    CheckMenuItem item = new CheckMenuItem(texts.codec().text().apply(option));
    item.setSelected(now.contains(option));
    item.setOnAction(
        event ->
            book.edit(
                () -> {
                  List<V> next = new ArrayList<>(now);
                  if (!next.remove(option)) {
                    next.add(option);
                  }
                  return edit.apply(texts.with().apply(part.get(), next));
                }));
    return item;
  }

  private <V> Node check(Field<R, V> field) {
    CheckBox box = new CheckBox("yes");
    box.setTooltip(new Tooltip(field.stands()));
    Words words = words(field.label(), field.stands());
    box.setOnAction(
        event ->
            field
                .codec()
                .parse()
                .apply(box.isSelected() ? "true" : "false")
                .value()
                .ifPresent(
                    value -> book.edit(() -> edit.apply(field.with().apply(part.get(), value)))));
    book.onRefresh(
        () -> {
          box.setAccessibleText(words.spoken());
          V value = field.of(part.get());
          box.setSelected(value != null && field.codec().text().apply(value).equals("true"));
        });
    return box;
  }

  private <V> Node typed(Field<R, V> field) {
    return book.<Optional<V>>field(
        words(field.label(), field.stands()),
        text -> read(field, text),
        () -> field.text(part.get()),
        value -> edit.apply(field.with().apply(part.get(), value.orElse(null))));
  }

  private <V> Outcome<Optional<V>> read(Field<R, V> field, String text) {
    return read(book, kind, part.get(), siblings.get(), field, text);
  }

  /**
   * What is typed into a field of a part, empty where it may be and is missing; what is refused
   * names the value and the way out.
   */
  public static <R, V> Outcome<Optional<V>> read(
      FormFields book, Part<R> kind, R part, List<R> siblings, Field<R, V> field, String text) {
    if (text.isEmpty()) {
      return field.required()
          ? Outcome.failed(
              Problem.of(
                  ProblemCode.MISSING_FIELD,
                  "",
                  field.label().toLowerCase(Locale.ROOT),
                  "such as " + field.codec().example()))
          : Outcome.of(Optional.empty());
    }
    Outcome<V> outcome = field.codec().typed().apply(book.units(), text);
    V value = outcome.valueOrNull();
    if (value == null) {
      return Outcome.failed(outcome.problems());
    }
    boolean taken =
        field.need() == Field.Need.UNIQUE
            && siblings.stream()
                .filter(other -> !other.equals(part))
                .anyMatch(other -> value.equals(field.of(other)));
    if (taken) {
      return Outcome.failed(
          Problem.of(ProblemCode.NAME_TAKEN, "", kind.name(), text, "another " + kind.name()));
    }
    List<Fault> before = kind.faults(part);
    return kind.faults(field.with().apply(part, value)).stream()
        .filter(fault -> !before.contains(fault))
        .findFirst()
        .map(fault -> Outcome.<Optional<V>>failed(fault.problem()))
        .orElseGet(() -> Outcome.of(Optional.of(value)));
  }

  private Words words(String label, String stands) {
    return new Words(label, stands, owner);
  }

  private static Node marked(Member<?> member, Node node) {
    node.getProperties().put(MEMBER, member);
    return node;
  }

  /** A part in the place of one in a list. */
  public static <E> List<E> replaced(List<E> list, int index, E element) {
    List<E> changed = new ArrayList<>(list);
    changed.set(index, element);
    return changed;
  }
}

package dawngauge.ui.common;

import dawngauge.trip.Trip;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import javafx.scene.Node;
import org.jspecify.annotations.Nullable;

/**
 * What is typed and not taken in fields that are of one stop after the other: it stays with its
 * stop while another one is shown.
 */
public final class StopDrafts {

  private final String kind;
  private final Node page;

  /** By the id of the stop and then by field; those of the stop that is shown are in its fields. */
  private final Map<String, Map<String, String>> kept = new LinkedHashMap<>();

  private @Nullable String shown;
  private @Nullable String wanted;

  /**
   * Drafts of fields.
   *
   * @param kind comes before a stop's id where drafts of the whole window are told apart; may be
   *     empty
   * @param page holds the fields
   */
  public StopDrafts(String kind, Node page) {
    this.kind = kind;
    this.page = page;
  }

  /** The stop whose fields these are, by its id; null for none. */
  public @Nullable String shown() {
    return shown;
  }

  /** Takes what is typed and not taken out of the fields, and keeps it for their stop. */
  public void leave() {
    if (shown != null) {
      Map<String, String> texts = typed();
      if (!texts.isEmpty()) {
        kept.put(shown, texts);
      }
      FigureFields.below(page).forEach(FigureField::drop);
    }
    shown = null;
  }

  /** The fields are of this stop now and show it: what was typed of it goes into them again. */
  public void become(String stop) {
    shown = stop;
    fill();
  }

  private void fill() {
    Map<String, String> here = shown == null ? null : kept.remove(shown);
    if (here != null) {
      FigureFields.below(page).forEach(field -> field.restore(here.get(field.name())));
    }
  }

  private Map<String, String> typed() {
    Map<String, String> texts = new LinkedHashMap<>();
    FigureFields.drafts(page).forEach(draft -> texts.put(draft.name(), draft.text()));
    return texts;
  }

  /** Drops all, as where another trip takes the place of theirs. */
  public void drop() {
    kept.clear();
    wanted = null;
    FigureFields.below(page).forEach(FigureField::drop);
  }

  /** As {@link DraftKeeper#drafts()}; those of stops that are gone are left out. */
  public Map<String, Map<String, String>> all(Trip trip) {
    Map<String, Map<String, String>> all = new LinkedHashMap<>(kept);
    if (shown != null) {
      all.put(shown, typed());
    }
    Map<String, Map<String, String>> told = new LinkedHashMap<>();
    all.forEach(
        (stop, texts) -> {
          if (!texts.isEmpty() && trip.route().stop(stop).isPresent()) {
            told.put(kind + stop, texts);
          }
        });
    return told;
  }

  /** As {@link DraftKeeper#restore}. */
  public void restore(Trip trip, Map<String, Map<String, String>> texts) {
    texts.forEach(
        (of, fields) -> {
          String stop = of.startsWith(kind) ? of.substring(kind.length()) : "";
          if (trip.route().stop(stop).isPresent()) {
            kept.put(stop, new LinkedHashMap<>(fields));
            wanted = wanted == null ? stop : wanted;
          }
        });
    fill();
  }

  /** The first stop for which something was restored; asked once. */
  public Optional<String> wanted() {
    Optional<String> stop = Optional.ofNullable(wanted);
    wanted = null;
    return stop;
  }
}

package dawngauge.trip;

import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * What every object of a trip may carry beside its figures.
 *
 * @param note free text
 * @param extras fields whose name begins with "x-", as JSON text: kept, never read
 */
public record Remarks(@Nullable String note, Map<String, String> extras) {

  /** Nothing noted. */
  public static final Remarks NONE = new Remarks(null, Map.of());

  /** Copies the map. */
  public Remarks {
    extras = Map.copyOf(extras);
  }

  /** The same with another note. */
  public Remarks withNote(String text) {
    return new Remarks(text, extras);
  }
}

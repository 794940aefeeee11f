package dawngauge.trip;

import dawngauge.quantity.Elevation;
import dawngauge.quantity.Entered;
import io.soabase.recordbuilder.core.RecordBuilder;
import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * Where a temperature came from.
 *
 * @param kind typed, measured, from a feed, or typical for the date
 * @param source who gave it, in words, or null
 * @param issued when it was given, or null; a forecast's uncertainty grows from here
 * @param elevation height of the ground for which it was given, where that is known
 */
@RecordBuilder
public record Provenance(
    Kind kind,
    @Nullable String source,
    @Nullable Instant issued,
    @Nullable Entered<Elevation> elevation)
    implements ProvenanceBuilder.With {

  /** Typed by the user, who did not say where from. */
  public static final Provenance TYPED = new Provenance(Kind.TYPED, null, null);

  /** What was given for no certain height. */
  public Provenance(Kind kind, @Nullable String source, @Nullable Instant issued) {
    this(kind, source, issued, null);
  }

  /** Whether a person gave it, so that nothing else takes its place. */
  public boolean byHand() {
    return kind == Kind.TYPED || kind == Kind.MEASURED;
  }

  /** Kinds of origin. */
  public enum Kind {
    /** Typed: by somebody's forecast, or a guess. */
    TYPED("typed"),
    /** Measured at the place, as it came. */
    MEASURED("measured"),
    /** From a weather service. */
    FEED("feed"),
    /** Typical for place and date, not a forecast. */
    TYPICAL("typical");

    private final String word;

    Kind(String word) {
      this.word = word;
    }

    /** Its name in files and tables. */
    public String word() {
      return word;
    }
  }
}

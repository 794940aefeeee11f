package dawngauge.trip;

import dawngauge.quantity.Entered;
import dawngauge.quantity.Mass;
import dawngauge.quantity.Ratio;
import io.soabase.recordbuilder.core.RecordBuilder;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * Animals, water or feed taken on or set down at a stop.
 *
 * @param what in words
 * @param weight positive taken on, negative set down
 * @param source how the weight is known
 * @param axles part of the weight that each axle takes
 * @param hitch part that the hitch takes, or null for none; it goes to the tow vehicle's rear axle
 * @param offered true where it is only offered: the plan goes without it and says whether the rig
 *     could carry it
 * @param remarks note and extras
 */
@RecordBuilder
public record LoadChange(
    String what,
    Entered<Mass> weight,
    Source source,
    Map<AxleRef, Entered<Ratio>> axles,
    @Nullable Entered<Ratio> hitch,
    boolean offered,
    Remarks remarks)
    implements LoadChangeBuilder.With {

  /** How a weight is known. */
  public enum Source {
    /** From a scale. */
    WEIGHED("weighed"),
    /** From a table or a girth formula. */
    TYPICAL("typical"),
    /** By eye. */
    GUESSED("guessed");

    private final String word;

    Source(String word) {
      this.word = word;
    }

    /** Its name in files. */
    public String word() {
      return word;
    }
  }

  /** Copies the map. */
  public LoadChange {
    axles = Map.copyOf(axles);
  }
}

package dawngauge.trip;

import dawngauge.quantity.Entered;
import dawngauge.quantity.GaugePressure;
import org.jspecify.annotations.Nullable;

/**
 * Whether air is to be had at a stop.
 *
 * @param available whether there is a hose
 * @param upTo highest gauge pressure the hose reaches, or null where that is not known
 */
public record Air(boolean available, @Nullable Entered<GaugePressure> upTo) {

  /** No air here. */
  public static final Air NONE = new Air(false, null);

  /** A hose, of which nothing more is known. */
  public static final Air YES = new Air(true, null);
}

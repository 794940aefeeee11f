package dawngauge.planner;

import java.util.Optional;

/** Pictures of the map, square by square; each level halves the squares of the one before. */
public interface TileSource {

  /** Whose map it is; shown on the map. */
  String credit();

  /** The finest level; 0 is the whole earth on one square. */
  int finest();

  /** One picture as PNG or JPEG; waits for it. Empty where there is none. */
  Optional<byte[]> tile(int level, int x, int y);
}

package dawngauge.feed;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;

/**
 * Sets aside what the air cannot be. The limits are ours, without source: colder or hotter than
 * anywhere on the road, or a jump there and back again.
 *
 * @param kept temperatures that can be
 * @param aside temperatures that cannot
 */
record Plausible(List<Span> kept, List<Span> aside) {
  private static final double LOWEST = 273.15 - 60;
  private static final double HIGHEST = 273.15 + 60;
  private static final double JUMP = 25;
  private static final Duration NEAR = Duration.ofHours(3);

  /** Sifts temperatures that are in order of time. */
  static Plausible sift(List<Span> all) {
    List<Span> aside = new ArrayList<>();
    List<Span> within = new ArrayList<>();
    for (Span span : all) {
      boolean possible = span.kelvins() >= LOWEST && span.kelvins() <= HIGHEST;
      (possible ? within : aside).add(span);
    }
    List<Span> kept = new ArrayList<>();
    for (int i = 0; i < within.size(); i++) {
      boolean spike =
          i > 0
              && i < within.size() - 1
              && jumps(within.get(i - 1), within.get(i))
              && jumps(within.get(i), within.get(i + 1));
      (spike ? aside : kept).add(within.get(i));
    }
    return new Plausible(kept, aside);
  }

  /** Whether two neighbours in time are too far apart in temperature. */
  private static boolean jumps(Span earlier, Span later) {
    return Duration.between(earlier.end(), later.start()).compareTo(NEAR) <= 0
        && Math.abs(later.kelvins() - earlier.kelvins()) > JUMP;
  }
}

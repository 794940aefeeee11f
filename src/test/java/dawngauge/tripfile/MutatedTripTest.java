package dawngauge.tripfile;

import static org.assertj.core.api.Assertions.assertThat;

import dawngauge.problem.Outcome;
import dawngauge.trip.Trip;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Damaged files: none throws, and each that is read at all is written back as the same trip. */
class MutatedTripTest {
  private static final long SEED = 20270309;
  private static final int ROUNDS = 4000;
  private static final String LETTERS = "0123456789-.\"{}[],:eE xпsi%°\\\n";

  @Test
  void aFewLettersChanged() {
    Random random = new Random(SEED);
    String full = Samples.full();
    int read = 0;
    for (int round = 0; round < ROUNDS; round++) {
      StringBuilder text = new StringBuilder(full);
      for (int i = 0; i <= random.nextInt(2); i++) {
        char letter = LETTERS.charAt(random.nextInt(LETTERS.length()));
        text.setCharAt(random.nextInt(text.length()), letter);
      }
      read += survives(text.toString(), round);
    }
    assertThat(read).as("some are still sound").isBetween(ROUNDS / 50, ROUNDS / 2);
  }

  @Test
  void aPieceTakenOutOrDoubled() {
    Random random = new Random(SEED);
    String full = Samples.full();
    for (int round = 0; round < ROUNDS; round++) {
      int from = random.nextInt(full.length());
      int to = Math.min(full.length(), from + 1 + random.nextInt(200));
      String piece = random.nextBoolean() ? "" : full.substring(from, to).repeat(2);
      survives(full.substring(0, from) + piece + full.substring(to), round);
    }
  }

  private static int survives(String text, int round) {
    Outcome<Trip> outcome = TripFile.parse(text);
    if (!outcome.hasValue()) {
      assertThat(outcome.problems()).as("round %d", round).isNotEmpty();
      return 0;
    }
    String written = TripFile.text(outcome.get());
    Outcome<Trip> again = TripFile.parse(written);
    assertThat(again.valueOrNull()).as("round %d: %s", round, again).isEqualTo(outcome.get());
    assertThat(TripFile.text(again.get())).isEqualTo(written);
    return 1;
  }
}

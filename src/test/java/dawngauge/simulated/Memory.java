package dawngauge.simulated;

import java.util.Random;

/**
 * A normal error of spread 1 that keeps exp(−t / memory) of itself over a time t: an
 * Ornstein–Uhlenbeck process, drawn at even steps and straight between them.
 */
final class Memory {

  private final double from;
  private final double step;
  private final double[] drawn;

  /**
   * Draws it.
   *
   * @param memory in seconds
   * @param from first second
   * @param to last second
   * @param step seconds between two draws, short against the memory
   */
  Memory(Random random, double memory, double from, double to, double step) {
    this.from = from;
    this.step = step;
    this.drawn = new double[(int) Math.ceil((to - from) / step) + 2];
    double kept = Math.exp(-step / memory);
    drawn[0] = random.nextGaussian();
    for (int i = 1; i < drawn.length; i++) {
      drawn[i] = kept * drawn[i - 1] + Math.sqrt(1 - kept * kept) * random.nextGaussian();
    }
  }

  /** At a time; the first and last draw hold beyond the ends. */
  double at(double seconds) {
    double place = Math.max(0, Math.min(drawn.length - 1, (seconds - from) / step));
    int before = Math.min((int) place, drawn.length - 2);
    double part = place - before;
    return (1 - part) * drawn[before] + part * drawn[before + 1];
  }
}

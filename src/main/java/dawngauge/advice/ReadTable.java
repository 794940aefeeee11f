package dawngauge.advice;

import dawngauge.explain.Phrase;
import dawngauge.forecast.ReadingCheck;
import dawngauge.quantity.Quantity;
import dawngauge.trip.ReadingState;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;

/**
 * What a reading of each tire at one stop would mean, by the minute and by the figure, so that it
 * can be told without the program. Each tire is judged by itself: the others as they are known.
 *
 * @param state how warm the tires are
 * @param slots by time; between two of them figures are taken between theirs
 */
public record ReadTable(ReadingState state, List<Slot> slots) {

  /** Figures to set so near to each other are told alike, in pascal: half a psi, ours. */
  private static final double NEAR = 3447;

  /**
   * One minute.
   *
   * @param time when the tire is read
   * @param tires in walking order
   */
  public record Slot(Instant time, List<OfTire> tires) {
    /** Copies the list. */
    public Slot {
      tires = List.copyOf(tires);
    }
  }

  /**
   * One tire.
   *
   * @param check what is expected of its gauge then; the figure in it is any
   * @param bands from the lowest figure up, each to the next
   */
  public record OfTire(ReadingCheck check, List<Band> bands) {
    /** Copies the list. */
    public OfTire {
      bands = List.copyOf(bands);
    }

    /** Id of the tire. */
    public String tire() {
      return check.reading().tire();
    }
  }

  /**
   * Figures that mean the same.
   *
   * @param from the least of them, gauge pressure in pascal
   * @param to the first above them that was tried and means something else, or the highest tried
   * @param low what follows from one near the lower end
   * @param high the same near the upper end
   */
  public record Band(double from, double to, TireAdvice low, TireAdvice high) {}

  /** Copies the list. */
  public ReadTable {
    slots = List.copyOf(slots);
  }

  /** Whether the same is asked by two, but for figures that tell how far off a reading is. */
  public static boolean same(TireAdvice one, TireAdvice other) {
    return one.mark() == other.mark() && asked(one).equals(asked(other));
  }

  private static List<Object> asked(TireAdvice tire) {
    List<Object> asked = new ArrayList<>();
    for (Reason reason : tire.reasons()) {
      if (!reason.todo().template().isEmpty()) {
        asked.add(reason.mark());
        words(reason.todo(), asked);
      }
    }
    TimedFigures timed = tire.timed();
    if (timed != null) {
      SetFigure onArrival = timed.onArrival();
      asked.add(timed.at().adds());
      asked.add(coarse(timed.cold()));
      asked.add(coarse(onArrival == null ? timed.at() : onArrival));
    }
    return asked;
  }

  private static void words(Phrase phrase, List<Object> words) {
    words.add(phrase.template());
    for (Object figure : phrase.figures()) {
      if (figure instanceof Phrase inner) {
        words(inner, words);
      } else if (!(figure instanceof Quantity || figure instanceof Phrase.Stated)) {
        words.add(figure);
      }
    }
  }

  private static long coarse(SetFigure set) {
    return Math.round(set.figure().pascals() / NEAR);
  }
}

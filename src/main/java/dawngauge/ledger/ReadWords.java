package dawngauge.ledger;

import dawngauge.advice.Mark;
import dawngauge.advice.ReadTable;
import dawngauge.advice.Reason;
import dawngauge.advice.TireAdvice;
import dawngauge.explain.Phrase;
import dawngauge.quantity.UnitSystem;
import dawngauge.trip.Trip;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;

/**
 * What readings that mean the same are told to mean, without a figure that hangs on the reading.
 *
 * @param trip whose tires they are of
 * @param units the units shown
 */
public record ReadWords(Trip trip, UnitSystem units) {

  /** Stands where it is told how far from what was expected a reading is. */
  public static final String OFF = "{off}";

  /** What is to be done, strongest first; nothing where nothing is. */
  public List<String> lines(ReadTable.Band band, ZoneId zone) {
    TireAdvice low = band.low();
    List<String> lines = new ArrayList<>();
    said(band, Mark.HOLD, lines);
    new Cards(trip, units).sets(zone, low).forEach(line -> lines.add(line.text()));
    said(band, Mark.RECHECK, lines);
    said(band, Mark.CLEAR, lines);
    return lines;
  }

  private void said(ReadTable.Band band, Mark mark, List<String> lines) {
    List<Phrase> low = asked(band.low(), mark);
    List<Phrase> high = asked(band.high(), mark);
    for (int i = 0; i < low.size(); i++) {
      String said = shared(low.get(i), high.get(i)).in(units);
      if (!lines.contains(said)) {
        lines.add(said);
      }
    }
  }

  private static List<Phrase> asked(TireAdvice tire, Mark mark) {
    return tire.reasons().stream()
        .filter(reason -> reason.mark() == mark)
        .map(Reason::todo)
        .filter(todo -> !todo.template().isEmpty())
        .toList();
  }

  /** Two phrases that differ in nothing but figures, with {@link #OFF} for those. */
  private Phrase shared(Phrase low, Phrase high) {
    List<Object> figures = new ArrayList<>();
    for (int i = 0; i < low.figures().size(); i++) {
      Object figure = low.figures().get(i);
      Phrase one = Phrase.of("{0}", figure);
      Phrase other = Phrase.of("{0}", high.figures().get(i));
      figures.add(one.in(units).equals(other.in(units)) ? figure : OFF);
    }
    return new Phrase(low.template(), figures);
  }
}

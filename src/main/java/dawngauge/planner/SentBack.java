package dawngauge.planner;

import dawngauge.problem.Outcome;
import dawngauge.problem.Problem;
import dawngauge.problem.ProblemCode;
import dawngauge.quantity.Entered;
import dawngauge.quantity.GaugePressure;
import dawngauge.quantity.QuantityKind;
import dawngauge.trip.Gauge;
import dawngauge.trip.Itinerary;
import dawngauge.trip.LogEdits;
import dawngauge.trip.LogEvent;
import dawngauge.trip.ReadingState;
import dawngauge.trip.Remarks;
import dawngauge.trip.Stop;
import dawngauge.trip.Taken;
import dawngauge.trip.Trip;
import dawngauge.trip.TypedTime;
import dawngauge.tripfile.TextLengths;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What a page for the phone sent back, taken into a trip: each thing once, and nothing that was
 * noted already is changed.
 *
 * @param trip with what is new
 * @param added how much that is
 * @param known how much was noted already
 * @param problems that the page was made of another trip, and what was left out and why
 */
public record SentBack(Trip trip, int added, int known, List<Problem> problems) {

  /** Copies the list. */
  public SentBack {
    problems = List.copyOf(problems);
  }

  /** "10 things taken in, 2 noted already". */
  public String told() {
    return added
        + (added == 1 ? " thing" : " things")
        + " taken in"
        + (known > 0 ? ", " + known + " noted already" : "");
  }

  /** Takes it in. */
  static SentBack into(Trip trip, Taken taken, String fingerprint) {
    Reader reader = new Reader(trip);
    if (!taken.fingerprint().equals(fingerprint)) {
      reader.problems.add(Problem.of(ProblemCode.MADE_OF_ANOTHER, ""));
    }
    taken.entries().forEach(reader::take);
    return new SentBack(reader.trip, reader.added, reader.known, reader.problems);
  }

  private static final class Reader {

    /** Longer ones are cut where they are told. */
    private static final int MOST = 120;

    private final Map<String, ZoneId> zones = new HashMap<>();
    private final List<Problem> problems = new ArrayList<>();
    private Trip trip;
    private int added;
    private int known;

    Reader(Trip trip) {
      this.trip = trip;
      for (Stop stop : trip.route().stops()) {
        ZoneId zone = stop.zone();
        if (zone != null) {
          zones.put(stop.id(), zone);
        }
      }
      Itinerary.of(trip)
          .value()
          .ifPresent(times -> times.visits().forEach(at -> zones.put(at.stop().id(), at.zone())));
    }

    void take(Taken.Entry entry) {
      Outcome<LogEvent> read = read(entry);
      problems.addAll(read.problems());
      if (!read.hasValue()) {
        return;
      }
      LogEvent event = read.get();
      Optional<String> there =
          trip.log().stream().filter(other -> same(other, event)).map(Reader::figure).findFirst();
      if (there.isEmpty()) {
        trip =
            event instanceof LogEvent.Adjustment set
                ? LogEdits.adjusted(trip, set.tire(), set.to(), set.gauge(), set.time())
                : LogEdits.with(trip, event);
        added++;
      } else if (there.get().equals(figure(event))) {
        known++;
      } else {
        problems.add(leftOut(entry, "it was noted as " + there.get() + "; change it there"));
      }
    }

    private Problem leftOut(Taken.Entry entry, String why) {
      String what =
          LogEdits.positionOf(trip, entry.tire(), Instant.MAX)
              .map(position -> trip.rig().shortForm(position))
              .orElse(entry.tire());
      String told =
          Stream.of(entry.at().replace('T', ' '), what, entry.figure(), entry.text())
              .filter(text -> !text.isBlank())
              .collect(Collectors.joining(" "));
      return Problem.of(
          ProblemCode.SENT_LEFT_OUT, "", told.substring(0, Math.min(told.length(), MOST)), why);
    }

    private Outcome<LogEvent> failed(Taken.Entry entry, String why) {
      return Outcome.failed(leftOut(entry, why));
    }

    private Outcome<LogEvent> read(Taken.Entry entry) {
      ZoneId zone = zones.get(entry.stop());
      if (zone == null) {
        return failed(entry, "the trip has no such stop");
      }
      TypedTime time;
      try {
        time = LogEdits.at(LocalDateTime.parse(entry.at()).atZone(zone).toInstant(), zone);
      } catch (DateTimeException odd) {
        return failed(entry, "no such time can be");
      }
      if (entry.kind().equals("note")) {
        LogEvent note = new LogEvent.Note(time, entry.text(), Remarks.NONE);
        List<Problem> tooLong = TextLengths.refused(trip, LogEdits.with(trip, note));
        return entry.text().isBlank()
            ? failed(entry, "the note is empty")
            : tooLong.isEmpty() ? Outcome.of(note) : failed(entry, tooLong.get(0).text());
      }
      Gauge gauge = trip.rig().gauge(entry.gauge()).orElse(null);
      Outcome<Entered<GaugePressure>> figure = QuantityKind.GAUGE_PRESSURE.parse(entry.figure());
      Optional<ReadingState> state =
          Stream.of(ReadingState.values())
              .filter(each -> each.word().equals(entry.state()))
              .findFirst();
      if (trip.rig().tire(entry.tire()).isEmpty()) {
        return failed(entry, "the rig has no such tire");
      } else if (gauge == null) {
        return failed(entry, "the rig has no gauge \"" + entry.gauge() + "\"");
      } else if (!figure.hasValue()) {
        return failed(entry, figure.problems().get(0).text());
      }
      Optional<Problem> over = RoundAtStop.offScale(figure.get(), gauge);
      if (over.isPresent()) {
        return failed(entry, over.get().text());
      } else if (entry.kind().equals("set")) {
        return Outcome.of(
            new LogEvent.Adjustment(
                time, entry.tire(), null, figure.get(), entry.gauge(), Remarks.NONE));
      } else if (!entry.kind().equals("reading") || state.isEmpty()) {
        return failed(entry, "this version does not know what it is");
      }
      return Outcome.of(
          new LogEvent.Reading(
              time,
              entry.tire(),
              figure.get(),
              entry.gauge(),
              state.get(),
              null,
              null,
              Remarks.NONE));
    }

    /** Whether two tell the same thing of the same minute, whatever the figure. */
    private static boolean same(LogEvent one, LogEvent other) {
      if (!one.time().instant().equals(other.time().instant())) {
        return false;
      }
      if (one instanceof LogEvent.Reading read && other instanceof LogEvent.Reading sent) {
        return read.tire().equals(sent.tire()) && read.gauge().equals(sent.gauge());
      } else if (one instanceof LogEvent.Adjustment set
          && other instanceof LogEvent.Adjustment sent) {
        return set.tire().equals(sent.tire()) && set.gauge().equals(sent.gauge());
      }
      return one instanceof LogEvent.Note note
          && other instanceof LogEvent.Note sent
          && note.text().equals(sent.text());
    }

    private static String figure(LogEvent event) {
      if (event instanceof LogEvent.Reading read) {
        return read.pressure().text() + ", " + read.state().word();
      }
      return event instanceof LogEvent.Adjustment set ? set.to().text() : "";
    }
  }
}

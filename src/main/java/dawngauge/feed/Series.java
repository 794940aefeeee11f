package dawngauge.feed;

import dawngauge.ambient.WeatherAnswer;
import dawngauge.ambient.WeatherAnswer.At;
import dawngauge.ambient.WeatherQuery;
import dawngauge.problem.Outcome;
import dawngauge.problem.Problem;
import dawngauge.problem.ProblemCode;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/**
 * All that a service gave for one cell or station; answers any span of time from it.
 *
 * <p>A temperature that holds for an interval becomes one at its start and at each full hour after
 * it, before the next begins, so that a straight line between the points holds it to the last hour
 * and then leads to the next. Where nothing follows, one more stands at its end.
 *
 * @param service who gave it, in words
 * @param issued when it was made, or null if it does not say
 * @param elevationMeters height for which it holds, or NaN
 * @param air the temperatures, in order, none overlaps the next
 * @param unread what was not understood
 */
record Series(
    String service,
    @Nullable Instant issued,
    double elevationMeters,
    Plausible air,
    Unread unread) {

  /** Farther than this from a point nothing is known: the longest step of the services (MET). */
  private static final Duration REACH = Duration.ofHours(6);

  private static final Duration HOUR = Duration.ofHours(1);
  private static final int MOST_NAMED = 3;

  /**
   * What was not understood.
   *
   * @param count how many temperatures
   * @param sample one of them
   */
  record Unread(int count, String sample) {}

  /** Whether there is no temperature at all. */
  boolean isEmpty() {
    return air.kept().isEmpty();
  }

  /** The temperatures of a span of time, with the next one on each side where there is one. */
  Outcome<WeatherAnswer> answer(WeatherQuery query) {
    List<At> points = points(query);
    List<Problem> notes = notes(query);
    if (points.isEmpty()) {
      notes.add(missing(query.from(), query.to()));
      return Outcome.failed(notes);
    }
    Instant first = points.get(0).time();
    Instant last = points.get(points.size() - 1).time();
    if (first.isAfter(query.from().plus(HOUR))) {
      notes.add(missing(query.from(), first));
    }
    for (int i = 1; i < points.size(); i++) {
      Instant before = points.get(i - 1).time();
      if (points.get(i).time().isAfter(before.plus(REACH))) {
        notes.add(missing(before, points.get(i).time()));
      }
    }
    if (last.isBefore(query.to().minus(HOUR))) {
      notes.add(missing(last, query.to()));
    }
    return Outcome.of(new WeatherAnswer(service, made(), elevationMeters, points), notes);
  }

  /**
   * When it was made; where that is not said, or after all that it tells, no later than its start.
   */
  private Instant made() {
    List<Span> spans = air.kept();
    return issued == null || issued.isAfter(spans.get(spans.size() - 1).end())
        ? spans.get(0).start()
        : issued;
  }

  private List<At> points(WeatherQuery query) {
    Instant earliest = query.from().minus(REACH);
    Instant latest = query.to().plus(REACH);
    List<At> within = new ArrayList<>();
    At before = null;
    At after = null;
    for (At point : expanded(earliest, latest)) {
      if (point.time().isBefore(query.from())) {
        before = point.time().isBefore(earliest) ? null : point;
      } else if (!point.time().isAfter(query.to())) {
        within.add(point);
      } else if (after == null && !point.time().isAfter(latest)) {
        after = point;
      }
    }
    if (before != null) {
      within.add(0, before);
    }
    if (after != null) {
      within.add(after);
    }
    return within;
  }

  private List<At> expanded(Instant earliest, Instant latest) {
    List<At> points = new ArrayList<>();
    List<Span> spans = air.kept();
    for (int i = 0; i < spans.size(); i++) {
      Span span = spans.get(i);
      if (span.end().isBefore(earliest) || span.start().isAfter(latest)) {
        continue;
      }
      points.add(new At(span.start(), span.kelvins()));
      Instant hour = span.start().plus(HOUR);
      for (; hour.isBefore(span.end()); hour = hour.plus(HOUR)) {
        points.add(new At(hour, span.kelvins()));
      }
      boolean followed = i + 1 < spans.size() && spans.get(i + 1).start().equals(span.end());
      if (span.end().isAfter(span.start()) && !followed) {
        points.add(new At(span.end(), span.kelvins()));
      }
    }
    return points;
  }

  private Problem missing(Instant from, Instant to) {
    return Problem.of(
        ProblemCode.FEED_NO_TEMPERATURE, "", service, UtcText.of(from), UtcText.of(to));
  }

  private List<Problem> notes(WeatherQuery query) {
    List<Problem> notes = new ArrayList<>();
    List<Span> absurd =
        air.aside().stream()
            .filter(span -> !span.end().isBefore(query.from().minus(REACH)))
            .filter(span -> !span.start().isAfter(query.to().plus(REACH)))
            .toList();
    if (!absurd.isEmpty()) {
      List<String> named = new ArrayList<>();
      absurd.stream().limit(MOST_NAMED).map(Series::shown).forEach(named::add);
      if (absurd.size() > MOST_NAMED) {
        named.add("and " + (absurd.size() - MOST_NAMED) + " more");
      }
      notes.add(Problem.of(ProblemCode.FEED_ABSURD, "", service, String.join(", ", named)));
    }
    if (unread.count() > 0) {
      notes.add(
          Problem.of(
              ProblemCode.FEED_UNREAD,
              "",
              service,
              String.valueOf(unread.count()),
              unread.sample()));
    }
    return notes;
  }

  private static String shown(Span span) {
    return String.format(
        Locale.ROOT, "%.1f °C at %s", span.kelvins() - 273.15, UtcText.of(span.start()));
  }
}

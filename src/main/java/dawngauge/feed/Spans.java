package dawngauge.feed;

import com.fasterxml.jackson.databind.JsonNode;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;

/** Collects the temperatures of an answer, in whatever order and form it has them. */
final class Spans {
  private final List<Span> all = new ArrayList<>();
  private int unread;
  private String sample = "";

  /** Takes a temperature of one moment; none if its value is null or missing. */
  void addMoment(JsonNode time, JsonNode value, String unit) {
    Optional<Instant> moment = IsoTime.instant(time.asText());
    add(moment, moment, time.asText(), value, unit);
  }

  /** Takes a temperature that holds for an interval; none if its value is null or missing. */
  void addInterval(String interval, JsonNode value, String unit) {
    Optional<IsoInterval> read = IsoInterval.parse(interval);
    add(read.map(IsoInterval::start), read.map(IsoInterval::end), interval, value, unit);
  }

  private void add(
      Optional<Instant> start, Optional<Instant> end, String when, JsonNode value, String unit) {
    if (value.isNull() || value.isMissingNode()) {
      return;
    }
    OptionalDouble kelvins = AirJson.kelvins(value, unit);
    if (start.isPresent() && end.isPresent() && kelvins.isPresent()) {
      all.add(new Span(start.get(), end.get(), kelvins.getAsDouble()));
    } else if (unread++ == 0) {
      sample =
          "\"%s\" in \"%s\" at \"%s\""
              .formatted(
                  PrintableText.of(value.asText()), PrintableText.of(unit), PrintableText.of(when));
    }
  }

  /** The last moment that a temperature holds for, or null if there is none. */
  @Nullable Instant latest() {
    return all.stream().map(Span::end).max(Comparator.naturalOrder()).orElse(null);
  }

  /**
   * Everything in order. Where two overlap the later one holds from its start on; of two with the
   * same start the one that was sent first holds.
   */
  Series series(String service, @Nullable Instant issued, double elevationMeters) {
    List<Span> sorted = new ArrayList<>(all);
    sorted.sort(Comparator.comparing(Span::start));
    List<Span> cut = new ArrayList<>();
    for (Span span : sorted) {
      int last = cut.size() - 1;
      if (last >= 0 && cut.get(last).start().equals(span.start())) {
        continue;
      } else if (last >= 0) {
        cut.set(last, cut.get(last).until(span.start()));
      }
      cut.add(span);
    }
    return new Series(
        service, issued, elevationMeters, Plausible.sift(cut), new Series.Unread(unread, sample));
  }
}

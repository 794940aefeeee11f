package dawngauge.ledger;

import dawngauge.review.GaugeReferenceMismatch;
import dawngauge.review.RecordingError;
import dawngauge.review.SideScatter;
import dawngauge.review.TripReview;
import dawngauge.trip.Gauge;
import dawngauge.trip.LogEvent;
import dawngauge.trip.ReadingState;
import dawngauge.trip.WheelPosition;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** What a review found of readings and gauges: noted wrongly, of another kind, reading high. */
final class ReadingFindings {

  private static final String LEFT = "It is left out of this review; put it right in the log.";

  private final ReviewWords words;
  private final List<ReviewFinding> found = new ArrayList<>();

  /** Pairs that were told already. */
  private final Set<Set<WheelPosition>> paired = new HashSet<>();

  private ReadingFindings(ReviewWords words) {
    this.words = words;
  }

  /** All of them. */
  static List<ReviewFinding> of(TripReview review, ReviewWords words) {
    ReadingFindings findings = new ReadingFindings(words);
    review.slips().forEach(findings::slip);
    findings.reference(review.reference());
    review.gauges().forEach(findings::gauges);
    review.uneven().forEach(findings::uneven);
    return findings.found;
  }

  private void uneven(SideScatter scatter) {
    String side = scatter.left() ? "left" : "right";
    add(
        "the " + side + " tires read up and down",
        "Cold readings of the "
            + side
            + " tires vary by "
            + words.shown(scatter.found())
            + " from round to round, the gauge by "
            + words.shown(scatter.pascals())
            + ".",
        "Most likely sun on them at some rounds. A small loss on that side may be missed for it.",
        "Gauge before the sun reaches the tires, or note one in the sun as “"
            + ReadingState.COLD_IN_SUN.word()
            + "”.");
  }

  private void slip(RecordingError slip) {
    LogEvent.Reading reading = slip.check().reading();
    WheelPosition other = slip.other();
    String name = words.trip().rig().shortForm(slip.position());
    String what = reading.pressure().text() + " of " + name + " on " + ReviewWords.when(reading);
    String expected = "about " + words.shown(slip.expected()) + " was expected.";
    if (slip.kind() == RecordingError.Kind.ALONE) {
      add(
          name + " was noted wrongly once",
          what + " is far off and was back at the next round without air being noted: " + expected,
          "Noted wrongly, or air went and came that nobody noted. " + LEFT,
          "");
    } else if (other == null) {
      boolean less = reading.pressure().value().pascals() < slip.expected();
      add(
          name + " was noted in a wrong unit once",
          what + " looks like another unit: " + expected,
          (less
                  ? "If it did read that, the tire was flat: it must not roll before it is"
                      + " inspected. "
                  : "")
              + LEFT,
          "");
    } else if (paired.add(Set.of(slip.position(), other))) {
      String pair = name + " and " + words.trip().rig().shortForm(other);
      add(
          pair + " were noted one for the other once",
          "The readings of "
              + pair
              + " on "
              + ReviewWords.when(reading)
              + " look exchanged: each is what the other should read.",
          "They are left out of this review; put them right in the log.",
          "");
    }
  }

  private void reference(@Nullable GaugeReferenceMismatch reference) {
    if (reference == null) {
      return;
    }
    String kind = (reference.sealed() ? Gauge.Kind.SEA_LEVEL_SUBTRACTED : Gauge.Kind.OPEN).word();
    add(
        reference.gauge() + " seems to be of another kind",
        "All tires read "
            + (reference.sealed() ? "less" : "more")
            + " the higher they were read with "
            + reference.gauge()
            + ", by up to "
            + words.shown(reference.most())
            + " over "
            + reference.rounds()
            + " rounds, as with a gauge of the kind \""
            + kind
            + "\".",
        "Here its readings are taken so; no tire leaks by it.",
        "Find out what kind of gauge " + reference.gauge() + " is and note it in the rig.");
  }

  private void gauges(TripReview.GaugePair pair) {
    if (!pair.differ()) {
      return;
    }
    boolean second = pair.pascals() > 0;
    String high = second ? pair.second() : pair.first();
    String low = second ? pair.first() : pair.second();
    add(
        high + " reads above " + low,
        high
            + " reads "
            + words.shown(Math.abs(pair.pascals()))
            + " ("
            + words.within(pair.sigma())
            + ") above "
            + low
            + ", by "
            + pair.pairs()
            + " tires read with both.",
        "Which of them is right, only a gauge that is known to be tells.",
        "Hold both gauges against one that was checked; use one of them for all readings.");
  }

  private void add(String head, String why, String watch, String todo) {
    found.add(new ReviewFinding(head, why, watch, todo));
  }
}

package dawngauge.planner;

import dawngauge.forecast.HeatFit;
import dawngauge.quantity.Entered;
import dawngauge.quantity.GaugePressure;
import dawngauge.quantity.QuantityKind;
import dawngauge.quantity.Unit;
import dawngauge.review.LossFit;
import dawngauge.review.TireReview;
import dawngauge.review.TripReview;
import dawngauge.trip.HeatRecord;
import dawngauge.trip.Itinerary;
import dawngauge.trip.LogEvent;
import dawngauge.trip.NextTrip;
import dawngauge.trip.Remarks;
import dawngauge.trip.RigEdits;
import dawngauge.trip.Tire;
import dawngauge.trip.Trip;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Other trips made of one that has a log. */
final class LookBack {

  private LookBack() {}

  static Trip withoutLeaks(Trip trip) {
    Trip without = trip;
    for (Tire tire : trip.rig().tires()) {
      without = RigEdits.withTire(without, tire.withLossPerDay(null));
    }
    return without;
  }

  /**
   * A trip without leaks, with the first reading of each tire that was not noted wrongly and with
   * what was set. In the place of each later reading stands a note, so that the forecast has its
   * moment.
   */
  static Trip sound(Trip trip, @Nullable TripReview review) {
    Set<LogEvent> slips = new HashSet<>();
    if (review != null) {
      review.slips().forEach(slip -> slips.add(slip.check().reading()));
    }
    Set<String> read = new HashSet<>();
    List<LogEvent> log = new ArrayList<>();
    for (LogEvent event : trip.log()) {
      boolean later =
          event instanceof LogEvent.Reading reading
              && (slips.contains(event) || !read.add(reading.tire()));
      log.add(later ? new LogEvent.Note(event.time(), "read", Remarks.NONE) : event);
    }
    return withoutLeaks(trip).withLog(log);
  }

  /**
   * The next trip of a rig, with the steady leaks that a review found.
   *
   * @param heat how warm the tires ran by the readings; empty where that is not to be kept
   */
  static Trip next(Trip trip, @Nullable TripReview review, List<HeatFit> heat) {
    Map<String, Entered<GaugePressure>> leaks = new LinkedHashMap<>();
    for (TireReview tire : review == null ? List.<TireReview>of() : review.tires()) {
      if (tire.lostAir() && tire.fit().kind() != LossFit.Kind.ONCE) {
        double tenths = Math.rint(new GaugePressure(tire.perDay()).in(Unit.PSI) * 10) / 10;
        leaks.put(tire.tire(), Entered.of(QuantityKind.GAUGE_PRESSURE, tenths + " psi"));
      }
    }
    Map<String, HeatRecord> ran = new LinkedHashMap<>();
    for (HeatFit fit : heat) {
      fit.record().ifPresent(record -> ran.put(fit.tire(), record));
    }
    return NextTrip.after(trip, leaks, ran);
  }

  /** The trip as it was planned at the last start of a day that the log knows of. */
  static Trip thisMorning(Trip trip) {
    Itinerary itinerary = Itinerary.of(trip).valueOrNull();
    if (itinerary == null || trip.log().isEmpty()) {
      return trip;
    }
    Instant last = trip.log().get(trip.log().size() - 1).time().instant();
    Instant morning = itinerary.visits().get(0).leave();
    for (Itinerary.Visit visit : itinerary.visits()) {
      if (visit.firstStartOfDay() && !visit.leave().isAfter(last)) {
        morning = visit.leave();
      }
    }
    Instant cut = morning;
    return trip.withLog(
        trip.log().stream().filter(event -> event.time().instant().isBefore(cut)).toList());
  }
}

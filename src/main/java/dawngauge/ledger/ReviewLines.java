package dawngauge.ledger;

import dawngauge.ambient.MeasuredAir;
import dawngauge.forecast.ReadingCheck;
import dawngauge.forecast.TireSetting;
import dawngauge.quantity.Distance;
import dawngauge.quantity.GaugePressure;
import dawngauge.quantity.Ratio;
import dawngauge.quantity.TemperatureDifference;
import dawngauge.quantity.UnitSystem;
import dawngauge.review.LossFit;
import dawngauge.review.RanLowReading;
import dawngauge.review.RolledUnder;
import dawngauge.review.Slip;
import dawngauge.review.TireReview;
import dawngauge.review.TripReview;
import dawngauge.review.WrongReference;
import dawngauge.rules.Quantile;
import dawngauge.trip.Gauge;
import dawngauge.trip.LogEvent;
import dawngauge.trip.Trip;
import dawngauge.trip.WheelPosition;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * A review as it is shown.
 *
 * @param headline what was found, in one sentence
 * @param findings each finding with what it rests on, worst first
 * @param next what to do before the next haul
 * @param tires a line a tire
 */
public record ReviewLines(
    String headline, List<String> findings, List<String> next, List<TireLine> tires) {

  /** A station some way off may differ from the air at the stop by so many kelvins; ours. */
  private static final double STATION = 3;

  /**
   * One tire.
   *
   * @param name short form of its position
   * @param tire its id
   * @param rounds cold readings it was judged by
   * @param off how far its last cold reading lies from that of a sound tire, and the range that a
   *     sound one keeps
   * @param found what was found, in a word or two
   */
  public record TireLine(String name, String tire, int rounds, String off, String found) {}

  /** Copies the lists. */
  public ReviewLines {
    findings = List.copyOf(findings);
    next = List.copyOf(next);
    tires = List.copyOf(tires);
  }

  /** The review in the units shown, where nothing is known of what was measured. */
  public static ReviewLines of(Trip trip, TripReview review, UnitSystem units) {
    return of(trip, review, List.of(), units);
  }

  /**
   * The review in the units shown.
   *
   * @param measured the air that stations measured at the stops
   */
  public static ReviewLines of(
      Trip trip, TripReview review, List<MeasuredAir> measured, UnitSystem units) {
    Maker maker = new Maker(trip, measured, units);
    for (TireReview tire : review.tires()) {
      maker.ranLow(tire);
      maker.rolledUnder(tire);
    }
    for (TireReview tire : review.tires()) {
      maker.lost(tire);
    }
    for (TireReview tire : review.tires()) {
      maker.letOut(tire);
    }
    review.slips().forEach(maker::slip);
    maker.reference(review.reference());
    review.gauges().forEach(maker::gauges);
    maker.shared(review);
    maker.rest(review);
    List<TireLine> lines = new ArrayList<>();
    for (TireReview tire : review.tires()) {
      lines.add(maker.line(tire));
    }
    return new ReviewLines(maker.headline(review), maker.findings, maker.next, lines);
  }

  private static final class Maker {
    private final Trip trip;
    private final List<MeasuredAir> measured;
    private final UnitSystem units;
    private final int decimals;
    private final List<String> findings = new ArrayList<>();
    private final List<String> next = new ArrayList<>();
    private final List<String> heads = new ArrayList<>();

    /** Pairs that were told already. */
    private final Set<Set<WheelPosition>> paired = new HashSet<>();

    Maker(Trip trip, List<MeasuredAir> measured, UnitSystem units) {
      this.trip = trip;
      this.measured = measured;
      this.units = units;
      this.decimals = units == UnitSystem.US ? 1 : 2;
    }

    private String name(TireReview tire) {
      return trip.rig().shortForm(tire.position());
    }

    private String shown(double pascals) {
      return units.format(new GaugePressure(pascals), decimals);
    }

    private static String when(LogEvent event) {
      return when(event.time().instant(), event.time().time().getZone());
    }

    private static String when(Instant instant, ZoneId zone) {
      return Wording.shortDay(instant, zone) + " " + Wording.clock(instant, zone);
    }

    void ranLow(TireReview tire) {
      RanLowReading check = tire.ranLow();
      if (check == null) {
        return;
      }
      heads.add(name(tire) + " ran too low");
      findings.add(
          name(tire)
              + " ran at or below 80 % of its recommended pressure: "
              + check.reading().pressure().text()
              + " on "
              + when(check.reading())
              + ", as cool as the air "
              + shown(check.settled())
              + ". It may be damaged inside.");
      next.add(
          "Have "
              + name(tire)
              + " inspected inside by a qualified technician before it carries a load again, and the"
              + " tire beside it too (29 CFR 1910.177(f)(2)).");
    }

    void rolledUnder(TireReview tire) {
      for (RolledUnder under : tire.rolledUnder()) {
        ZoneId zone = zoneOf(tire);
        heads.add(name(tire) + " rolled with less than its load needs");
        findings.add(
            name(tire)
                + " rolled under the pressure that its load needs from "
                + when(under.from(), zone)
                + " to "
                + when(under.to(), zone)
                + (Double.isNaN(under.meters())
                    ? ""
                    : ", " + units.format(new Distance(under.meters())))
                + ": down to "
                + shown(under.pascals())
                + "."
                + (Double.isNaN(under.foreseen())
                    ? " That morning's forecast could not tell."
                    : " That morning's forecast gave it a chance of "
                        + units.format(new Ratio(under.foreseen()))
                        + "."));
        next.add(
            "Have "
                + name(tire)
                + " looked at by a qualified technician: it carried more than its pressure allows.");
      }
    }

    private static ZoneId zoneOf(TireReview tire) {
      return tire.all().get(0).reading().time().time().getZone();
    }

    void lost(TireReview tire) {
      if (!tire.lostAir()) {
        return;
      }
      LossFit fit = tire.fit();
      LogEvent from = tire.cold().get(fit.from()).reading();
      LogEvent to = tire.cold().get(fit.to()).reading();
      String amount =
          shown(tire.lost()) + " (± " + shown(Quantile.NINETY_WITHIN * tire.lostSigma()) + ")";
      String span = "between " + when(from) + " and " + when(to);
      if (fit.kind() == LossFit.Kind.STEADY) {
        heads.add(name(tire) + " leaks steadily, about " + shown(tire.perDay()) + " a day");
        findings.add(
            name(tire)
                + " leaks steadily: "
                + amount
                + " lost "
                + span
                + ", "
                + shown(tire.perDay())
                + " a day, at most "
                + shown(tire.fastPerDay())
                + ", by "
                + tire.cold().size()
                + " cold readings."
                + floorBy(tire));
      } else if (fit.kind() == LossFit.Kind.ONCE) {
        heads.add(name(tire) + " lost " + shown(tire.lost()) + " at once");
        findings.add(
            name(tire)
                + " lost "
                + amount
                + " at once, "
                + span
                + ", and held since: a bleed that was not noted, a knock on the bead, a valve that"
                + " stuck open for a while.");
      } else {
        heads.add(name(tire) + " lost " + shown(tire.lost()));
        findings.add(
            name(tire)
                + " lost "
                + amount
                + " "
                + span
                + ". Whether it is a steady leak or one loss these readings cannot say; one more cold"
                + " reading with the same gauge tells."
                + floorBy(tire));
      }
      next.add(
          (fit.kind() == LossFit.Kind.ONCE
                  ? "See whether " + name(tire) + " leaks"
                  : "Look for the leak of " + name(tire))
              + ": valve core and stem first (soapy water), then bead, tread and wheel; gauge it cold"
              + " the next mornings.");
    }

    private String floorBy(TireReview tire) {
      Instant by = tire.floorBy();
      return by == null || !tire.rolledUnder().isEmpty()
          ? ""
          : " At that rate it has too little for its load as early as "
              + when(by, tire.cold().get(0).reading().time().time().getZone())
              + ".";
    }

    void letOut(TireReview tire) {
      for (TireSetting setting : tire.letOutWarm()) {
        double then = -setting.fillAdded() * setting.after().tireKelvins();
        double cold = -setting.fillAdded() * coldKelvins(tire, setting);
        heads.add(name(tire) + " was let out while warm");
        findings.add(
            name(tire)
                + ": "
                + shown(then)
                + " let out while it was warm on "
                + when(setting.adjustment())
                + (setting.wasRead() ? "" : " (it was not read before)")
                + ": "
                + shown(cold)
                + " missing at the next cold reading."
                + (tire.lostAir() ? "" : " It does not leak."));
        next.add("Set " + name(tire) + " cold; never let air out of a warm tire.");
      }
    }

    /** How cool the tire was at the next cold reading; as after the setting where there is none. */
    private static double coldKelvins(TireReview tire, TireSetting setting) {
      for (ReadingCheck check : tire.cold()) {
        if (check.reading().time().instant().isAfter(setting.adjustment().time().instant())) {
          return check.tireKelvins();
        }
      }
      return setting.after().airKelvins();
    }

    void slip(Slip slip) {
      LogEvent.Reading reading = slip.check().reading();
      WheelPosition other = slip.other();
      String name = trip.rig().shortForm(slip.position());
      String what = reading.pressure().text() + " of " + name + " on " + when(reading);
      String left = " It is left out of this review; put it right in the log.";
      if (slip.kind() == Slip.Kind.ALONE) {
        heads.add(name + " was noted wrongly once");
        findings.add(
            what
                + " is far off and was back at the next round without air being noted: about "
                + shown(slip.expected())
                + " was expected. Noted wrongly, or air went and came that nobody noted."
                + left);
      } else if (other == null) {
        heads.add(name + " was noted in a wrong unit once");
        findings.add(
            what
                + " looks like another unit: about "
                + shown(slip.expected())
                + " was expected."
                + (reading.pressure().value().pascals() < slip.expected()
                    ? " If it did read that, the tire was flat: it must not roll before it is"
                        + " inspected."
                    : "")
                + left);
      } else if (paired.add(Set.of(slip.position(), other))) {
        String pair = name + " and " + trip.rig().shortForm(other);
        heads.add(pair + " were noted one for the other once");
        findings.add(
            "The readings of "
                + pair
                + " on "
                + when(reading)
                + " look exchanged: each is what the other should read. They are left out of this"
                + " review; put them right in the log.");
      }
    }

    void reference(@Nullable WrongReference reference) {
      if (reference == null) {
        return;
      }
      String kind = (reference.sealed() ? Gauge.Kind.SEA_LEVEL_SUBTRACTED : Gauge.Kind.OPEN).word();
      heads.add(reference.gauge() + " seems to be of another kind");
      findings.add(
          "All tires read "
              + (reference.sealed() ? "less" : "more")
              + " the higher they were read with "
              + reference.gauge()
              + ", by up to "
              + shown(reference.most())
              + " over "
              + reference.rounds()
              + " rounds, as with a gauge of the kind \""
              + kind
              + "\". Here its readings are taken so; no tire leaks by it.");
      next.add("Find out what kind of gauge " + reference.gauge() + " is and note it in the rig.");
    }

    void gauges(TripReview.GaugePair pair) {
      if (!pair.differ()) {
        return;
      }
      boolean second = pair.pascals() > 0;
      String high = second ? pair.second() : pair.first();
      String low = second ? pair.first() : pair.second();
      heads.add(high + " reads above " + low);
      findings.add(
          high
              + " reads "
              + shown(Math.abs(pair.pascals()))
              + " (± "
              + shown(Quantile.NINETY_WITHIN * pair.sigma())
              + ") above "
              + low
              + ", by "
              + pair.pairs()
              + " tires read with both. Which of them is right, only a gauge that is known to be"
              + " tells.");
      next.add("Hold both gauges against one that was checked; use one of them for all readings.");
    }

    void shared(TripReview review) {
      Map<Integer, TripReview.Shared> told = new LinkedHashMap<>();
      TripReview.Shared before = null;
      for (TripReview.Shared shared : review.shared()) {
        double was = before == null ? 0 : before.pascals();
        if (shared.isSomething() && Math.abs(shared.pascals() - was) > 3 * shared.sigma()) {
          told.put(shared.visit(), shared);
        }
        before = shared;
      }
      for (TripReview.Shared shared : told.values()) {
        String place = trip.route().stops().get(shared.visit()).place();
        boolean less = shared.pascals() > 0;
        heads.add("all tires read " + (less ? "less" : "more") + " than expected at " + place);
        findings.add(
            "All tires read about "
                + shown(Math.abs(shared.pascals()))
                + (less ? " less" : " more")
                + " than expected at "
                + place
                + ": air about "
                + units.format(new TemperatureDifference(Math.abs(shared.kelvins())))
                + (less ? " colder" : " warmer")
                + " than in the file, or the gauge; "
                + airOrGauge(shared)
                + (review.sharedTakenOff()
                    ? " No tire leaks by it."
                    : " So many tires lost air that it is still in what each of them lost."));
      }
    }

    /** Which of both it was, by a station near the stop. */
    private String airOrGauge(TripReview.Shared shared) {
      for (MeasuredAir air : measured) {
        double colder = air.expectedKelvins() - air.measuredKelvins();
        if (air.stop() != shared.visit() || Double.isNaN(colder)) {
          continue;
        }
        String station =
            air.source()
                + " measured "
                + units.format(new TemperatureDifference(Math.abs(colder)))
                + (colder > 0 ? " colder" : " warmer")
                + " than in the file near there: ";
        if (Math.abs(colder - shared.kelvins()) < STATION) {
          return station + "it was the air.";
        }
        boolean little = Math.abs(colder) < Math.min(STATION, Math.abs(shared.kelvins()) / 2);
        return station + (little ? "rather the gauge." : "it is not the air alone.");
      }
      return "they cannot be told apart.";
    }

    void rest(TripReview review) {
      List<String> sound = new ArrayList<>();
      List<String> few = new ArrayList<>();
      for (TireReview tire : review.tires()) {
        if (tire.fit().kind() == LossFit.Kind.TOO_FEW) {
          few.add(name(tire));
        } else if (tire.sound()) {
          sound.add(name(tire));
        }
      }
      if (!sound.isEmpty()) {
        findings.add(
            "Sound by their readings, nothing lost beyond what every tire loses: "
                + String.join(", ", sound)
                + ".");
      }
      if (!few.isEmpty()) {
        findings.add(
            "Not enough cold readings to tell anything of "
                + String.join(", ", few)
                + ": two with one gauge, a morning apart, are the least.");
      }
      if (!next.isEmpty() || !few.isEmpty()) {
        next.add("Gauge every tire cold the next mornings, with one gauge, before the sun.");
      }
    }

    String headline(TripReview review) {
      if (review.tires().isEmpty()) {
        return "No tire was read on this trip, so there is nothing to review.";
      }
      if (heads.isEmpty()) {
        boolean few = review.tires().stream().allMatch(t -> t.fit().kind() == LossFit.Kind.TOO_FEW);
        return few
            ? "Not enough cold readings: read every tire on two mornings with one gauge."
            : "Nothing is wrong with the tires by their readings.";
      }
      return String.join("; ", heads) + ".";
    }

    TireLine line(TireReview tire) {
      int count = tire.residuals().size();
      double spread = count == 0 || Double.isNaN(tire.fit().sigma()) ? 0 : tire.lostSigma();
      String off =
          count < 2
              ? "–"
              : sign(tire.residuals().get(count - 1))
                  + " ± "
                  + shown(Quantile.NINETY_WITHIN * spread);
      List<String> found = new ArrayList<>();
      if (tire.ranLow() != null) {
        found.add("ran low");
      }
      if (!tire.rolledUnder().isEmpty()) {
        found.add("rolled with too little");
      }
      switch (tire.fit().kind()) {
        case TOO_FEW -> found.add("too few readings");
        case LOST -> found.add("lost air");
        case STEADY -> found.add("steady leak");
        case ONCE -> found.add("lost air at once");
        case SOUND -> {
          if (tire.letOutWarm().isEmpty()) {
            found.add("sound");
          }
        }
      }
      if (!tire.letOutWarm().isEmpty()) {
        found.add("let out while warm");
      }
      return new TireLine(name(tire), tire.tire(), count, off, String.join(", ", found));
    }

    private String sign(double pascals) {
      return (pascals < 0 ? "-" : "+") + shown(Math.abs(pascals));
    }
  }
}

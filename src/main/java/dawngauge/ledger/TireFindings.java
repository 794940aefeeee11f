package dawngauge.ledger;

import dawngauge.forecast.ReadingCheck;
import dawngauge.forecast.TireSetting;
import dawngauge.quantity.Distance;
import dawngauge.quantity.Ratio;
import dawngauge.review.LossFit;
import dawngauge.review.RanLowReading;
import dawngauge.review.RolledUnder;
import dawngauge.review.TireReview;
import dawngauge.trip.LogEvent;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;

/** What a review found of single tires: ran low, rolled with too little, lost air, let out warm. */
final class TireFindings {

  private final ReviewWords words;
  private final List<ReviewFinding> found = new ArrayList<>();

  private TireFindings(ReviewWords words) {
    this.words = words;
  }

  /** All of them, worst first. */
  static List<ReviewFinding> of(List<TireReview> tires, ReviewWords words) {
    TireFindings findings = new TireFindings(words);
    for (TireReview tire : tires) {
      findings.ranLow(tire);
      findings.rolledUnder(tire);
    }
    tires.forEach(findings::lost);
    tires.forEach(findings::letOut);
    return findings.found;
  }

  private void ranLow(TireReview tire) {
    RanLowReading check = tire.ranLow();
    if (check == null) {
      return;
    }
    String name = words.name(tire);
    found.add(
        new ReviewFinding(
            name + " ran too low",
            name
                + " ran at or below 80 % of its recommended pressure: "
                + check.reading().pressure().text()
                + " on "
                + ReviewWords.when(check.reading())
                + ", as cool as the air "
                + words.shown(check.settled())
                + ".",
            "It may be damaged inside.",
            "Have "
                + name
                + " inspected inside by a qualified technician before it carries a load again, and"
                + " the tire beside it too (29 CFR 1910.177(f)(2))."));
  }

  private void rolledUnder(TireReview tire) {
    String name = words.name(tire);
    for (RolledUnder under : tire.rolledUnder()) {
      ZoneId zone = tire.all().get(0).reading().time().time().getZone();
      String way =
          Double.isNaN(under.meters())
              ? ""
              : ", " + words.units().format(new Distance(under.meters()));
      String foreseen =
          Double.isNaN(under.foreseen())
              ? " That morning's forecast could not tell."
              : " That morning's forecast gave it a chance of "
                  + words.units().format(new Ratio(under.foreseen()))
                  + ".";
      found.add(
          new ReviewFinding(
              name + " rolled with less than its load needs",
              name
                  + " rolled under the pressure that its load needs from "
                  + ReviewWords.when(under.from(), zone)
                  + " to "
                  + ReviewWords.when(under.to(), zone)
                  + way
                  + ": down to "
                  + words.shown(under.pascals())
                  + "."
                  + foreseen,
              "",
              "Have "
                  + name
                  + " looked at by a qualified technician: it carried more than its pressure"
                  + " allows."));
    }
  }

  private void lost(TireReview tire) {
    if (!tire.lostAir()) {
      return;
    }
    LossFit fit = tire.fit();
    LogEvent from = tire.cold().get(fit.from()).reading();
    LogEvent to = tire.cold().get(fit.to()).reading();
    String name = words.name(tire);
    String lost = words.shown(tire.lost());
    String amount = lost + " (" + words.within(tire.lostSigma()) + ")";
    String span = "between " + ReviewWords.when(from) + " and " + ReviewWords.when(to);
    String look = "Look for the leak of " + name;
    switch (fit.kind()) {
      case STEADY ->
          add(
              name + " leaks steadily, about " + words.shown(tire.perDay()) + " a day",
              name
                  + " leaks steadily: "
                  + amount
                  + " lost "
                  + span
                  + ", "
                  + words.shown(tire.perDay())
                  + " a day, at most "
                  + words.shown(tire.fastPerDay())
                  + ", by "
                  + tire.cold().size()
                  + " cold readings.",
              floorBy(tire),
              look);
      case ONCE ->
          add(
              name + " lost " + lost + " at once",
              name
                  + " lost "
                  + amount
                  + " at once, "
                  + span
                  + ", and held since: a bleed that was not noted, a knock on the bead, a valve that"
                  + " stuck open for a while.",
              "",
              "See whether " + name + " leaks");
      default ->
          add(
              name + " lost " + lost,
              name + " lost " + amount + " " + span + ".",
              "Whether it is a steady leak or one loss these readings cannot say; one more cold"
                  + " reading with the same gauge tells."
                  + (floorBy(tire).isEmpty() ? "" : " " + floorBy(tire)),
              look);
    }
  }

  private void add(String head, String why, String watch, String look) {
    found.add(
        new ReviewFinding(
            head,
            why,
            watch,
            look
                + ": valve core and stem first (soapy water), then bead, tread and wheel; gauge it"
                + " cold the next mornings."));
  }

  private static String floorBy(TireReview tire) {
    Instant by = tire.floorBy();
    return by == null || !tire.rolledUnder().isEmpty()
        ? ""
        : "At that rate it has too little for its load as early as "
            + ReviewWords.when(by, tire.cold().get(0).reading().time().time().getZone())
            + ".";
  }

  private void letOut(TireReview tire) {
    String name = words.name(tire);
    for (TireSetting setting : tire.letOutWarm()) {
      double then = -setting.fillAdded() * setting.after().tireKelvins();
      double cold = -setting.fillAdded() * coldKelvins(tire, setting);
      found.add(
          new ReviewFinding(
              name + " was let out while warm",
              name
                  + ": "
                  + words.shown(then)
                  + " let out while it was warm on "
                  + ReviewWords.when(setting.adjustment())
                  + (setting.wasRead() ? "" : " (it was not read before)")
                  + ": "
                  + words.shown(cold)
                  + " missing at the next cold reading.",
              tire.lostAir() ? "" : "It does not leak.",
              "Set " + name + " cold; never let air out of a warm tire."));
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
}

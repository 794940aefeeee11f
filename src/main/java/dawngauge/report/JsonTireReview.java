package dawngauge.report;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dawngauge.forecast.ReadingCheck;
import dawngauge.quantity.Distance;
import dawngauge.quantity.Ratio;
import dawngauge.review.LossFit;
import dawngauge.review.PressureAccount;
import dawngauge.review.RanLowReading;
import dawngauge.review.RolledUnder;
import dawngauge.review.TireReview;
import dawngauge.trip.Itinerary;
import dawngauge.trip.LogEvent;
import dawngauge.trip.TypedTime;
import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What a review found of one tire, as JSON. */
final class JsonTireReview {

  private JsonTireReview() {}

  /**
   * Fills in what was found.
   *
   * @param node of the tire
   * @param tire what was found
   * @param visits the stops of the trip
   */
  static void write(ObjectNode node, TireReview tire, List<Itinerary.Visit> visits) {
    boolean leak = tire.lostAir() && tire.fit().kind() != LossFit.Kind.ONCE;
    Instant floorBy = tire.floorBy();
    node.put("kind", JsonPage.word(tire.fit().kind()));
    JsonPage.pressure(node, "lost", tire.lost());
    JsonPage.pressure(node, "lostSigma", tire.lostSigma());
    JsonPage.pressure(node, "lostPerDay", leak ? tire.perDay() : Double.NaN);
    JsonPage.pressure(node, "fastPerDay", leak ? tire.fastPerDay() : Double.NaN);
    node.put(
        "floorBy",
        floorBy == null
            ? null
            : Times.of(floorBy, tire.cold().get(0).reading().time().time().getZone()));
    ranLow(node, tire.ranLow());
    ArrayNode under = node.putArray("rolledUnder");
    tire.rolledUnder().forEach(each -> rolledUnder(under.addObject(), each, visits));
    account(node, tire.account());
    ArrayNode readings = node.putArray("readings");
    for (ReadingCheck check : tire.all()) {
      ObjectNode entry = readings.addObject();
      reading(entry, check.reading());
      int cold = tire.cold().indexOf(check);
      JsonPage.pressure(entry, "residual", cold < 0 ? Double.NaN : tire.residuals().get(cold));
    }
  }

  /** When a tire was read, how and with what. */
  static void reading(ObjectNode node, LogEvent.Reading reading) {
    node.put("time", time(reading.time()));
    JsonPage.put(node, "pressure", reading.pressure().value());
    node.put("state", reading.state().word());
    node.put("gauge", reading.gauge());
  }

  private static void ranLow(ObjectNode node, @Nullable RanLowReading low) {
    if (low == null) {
      node.putNull("ranLow");
      return;
    }
    ObjectNode entry = node.putObject("ranLow");
    entry.put("time", time(low.reading().time()));
    JsonPage.put(entry, "pressure", low.reading().pressure().value());
    JsonPage.pressure(entry, "settled", low.settled());
  }

  private static void rolledUnder(
      ObjectNode node, RolledUnder under, List<Itinerary.Visit> visits) {
    for (Itinerary.Visit visit : visits) {
      if (visit.leave().equals(under.from())) {
        node.put("from", Times.of(under.from(), visit.zone()));
      }
      if (visit.arrive().equals(under.to())) {
        node.put("to", Times.of(under.to(), visit.zone()));
      }
    }
    JsonPage.put(node, "distance", under.meters(), Distance::new);
    JsonPage.pressure(node, "lowest", under.pascals());
    JsonPage.put(node, "chanceForeseen", under.foreseen(), Ratio::new);
  }

  private static void account(ObjectNode node, @Nullable PressureAccount account) {
    if (account == null) {
      node.putNull("account");
      return;
    }
    ObjectNode entry = node.putObject("account");
    entry.put("from", time(account.first().reading().time()));
    entry.put("to", time(account.last().reading().time()));
    JsonPage.pressure(entry, "difference", account.sum());
    JsonPage.pressure(entry, "air", account.air());
    JsonPage.pressure(entry, "height", account.height());
    JsonPage.pressure(entry, "warmUp", account.warmUp());
    ArrayNode settings = entry.putArray("settings");
    for (PressureAccount.Part part : account.settings()) {
      ObjectNode setting = settings.addObject();
      setting.put("time", time(part.setting().adjustment().time()));
      JsonPage.pressure(setting, "difference", part.pascals());
      setting.put("wasRead", part.wasRead());
    }
    JsonPage.pressure(entry, "rest", account.lost());
    JsonPage.pressure(entry, "restSigma", account.lostSigma());
    JsonPage.pressure(entry, "gaugeSigma", account.gaugeSigma());
  }

  private static String time(TypedTime time) {
    return Times.of(time.instant(), time.time().getZone());
  }
}

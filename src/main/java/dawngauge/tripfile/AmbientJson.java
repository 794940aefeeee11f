package dawngauge.tripfile;

import com.fasterxml.jackson.databind.node.ObjectNode;
import dawngauge.field.Codec;
import dawngauge.field.RouteFields;
import dawngauge.field.TimeCodecs;
import dawngauge.field.TripCodecs;
import dawngauge.problem.ProblemCode;
import dawngauge.quantity.Distance;
import dawngauge.quantity.Entered;
import dawngauge.quantity.QuantityKind;
import dawngauge.quantity.Temperature;
import dawngauge.quantity.TemperatureDifference;
import dawngauge.trip.AmbientEntry;
import dawngauge.trip.AmbientEntry.Figure;
import dawngauge.trip.AmbientEntry.Hourly;
import dawngauge.trip.AmbientEntry.LowHigh;
import dawngauge.trip.AmbientEntry.Steady;
import dawngauge.trip.Provenance;
import java.util.List;

/** Expected air temperatures as JSON. */
final class AmbientJson {
  private static final Codec<Entered<Temperature>> TEMPERATURE = RouteFields.TEMPERATURE;
  private static final Codec<Entered<TemperatureDifference>> UNCERTAINTY =
      Codec.positive(QuantityKind.TEMPERATURE_DIFFERENCE);
  private static final Codec<Entered<Distance>> ALONG = Codec.positive(QuantityKind.DISTANCE);
  private static final Codec<Provenance.Kind> KIND =
      Codec.choice(Provenance.Kind.class, Provenance.Kind::word);

  private AmbientJson() {}

  static AmbientEntry read(FieldReader in) {
    Provenance source = in.object("source", AmbientJson::readSource);
    return new AmbientEntry(
        in.required("stop", Codec.NAME),
        in.optional("along", ALONG),
        readFigure(in),
        source == null ? Provenance.TYPED : source,
        in.optional("uncertainty", UNCERTAINTY),
        in.remarks());
  }

  static ObjectNode write(AmbientEntry entry) {
    FieldWriter out =
        new FieldWriter().put("stop", Codec.NAME, entry.stop()).put("along", ALONG, entry.along());
    Figure figure = entry.figure();
    if (figure instanceof Steady steady) {
      out.put("temperature", TEMPERATURE, steady.temperature());
    } else if (figure instanceof Hourly hourly) {
      out.objects("hours", hourly.hours(), AmbientJson::writeHour);
    } else if (figure instanceof LowHigh day) {
      out.put("date", TripCodecs.DATE, day.date())
          .put("low", TEMPERATURE, day.low())
          .put("high", TEMPERATURE, day.high());
    }
    Provenance source = entry.provenance();
    return out.object(
            "source", source.equals(Provenance.TYPED) ? null : source, AmbientJson::writeSource)
        .put("uncertainty", UNCERTAINTY, entry.uncertainty())
        .with(entry.remarks());
  }

  private static Figure readFigure(FieldReader in) {
    in.knows("temperature", "hours", "date", "low", "high");
    boolean steady = in.has("temperature");
    boolean hourly = in.has("hours");
    boolean day = in.has("date") || in.has("low") || in.has("high");
    int figures = (steady ? 1 : 0) + (hourly ? 1 : 0) + (day ? 1 : 0);
    if (figures != 1) {
      in.report(ProblemCode.NOT_ONE_FIGURE, in.place(), figures == 0 ? "none" : "" + figures);
      return new Steady(TEMPERATURE.standIn());
    }
    return steady
        ? new Steady(in.required("temperature", TEMPERATURE))
        : hourly ? readHours(in) : readDay(in);
  }

  private static Figure readHours(FieldReader in) {
    List<Hourly.At> hours = in.objects("hours", AmbientJson::readHour);
    if (hours.isEmpty()) {
      in.report(
          ProblemCode.MISSING_FIELD, in.at("hours"), "hours", "at least one time and temperature");
      return new Steady(TEMPERATURE.standIn());
    }
    return new Hourly(hours);
  }

  private static Figure readDay(FieldReader in) {
    Entered<Temperature> low = in.required("low", TEMPERATURE);
    Entered<Temperature> high = in.required("high", TEMPERATURE);
    boolean bothRead = !low.text().isEmpty() && !high.text().isEmpty();
    if (bothRead && low.value().compareTo(high.value()) > 0) {
      in.report(ProblemCode.LOW_ABOVE_HIGH, in.at("low"), low.text(), high.text());
    }
    return new LowHigh(in.required("date", TripCodecs.DATE), low, high);
  }

  private static Hourly.At readHour(FieldReader in) {
    return new Hourly.At(
        in.required("time", TimeCodecs.TIME), in.required("temperature", TEMPERATURE));
  }

  private static ObjectNode writeHour(Hourly.At hour) {
    return new FieldWriter()
        .put("time", TimeCodecs.TIME, hour.time())
        .put("temperature", TEMPERATURE, hour.temperature())
        .node();
  }

  private static Provenance readSource(FieldReader in) {
    return new Provenance(
        in.required("kind", KIND),
        in.optional("from", Codec.TEXT),
        in.optional("issued", TimeCodecs.INSTANT),
        in.optional("elevation", RouteFields.HEIGHT));
  }

  private static ObjectNode writeSource(Provenance source) {
    return new FieldWriter()
        .put("kind", KIND, source.kind())
        .put("from", Codec.TEXT, source.source())
        .put("issued", TimeCodecs.INSTANT, source.issued())
        .put("elevation", RouteFields.HEIGHT, source.elevation())
        .node();
  }
}

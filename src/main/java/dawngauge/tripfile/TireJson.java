package dawngauge.tripfile;

import com.fasterxml.jackson.databind.node.ObjectNode;
import dawngauge.quantity.Entered;
import dawngauge.quantity.GaugePressure;
import dawngauge.quantity.QuantityKind;
import dawngauge.quantity.TreadDepth;
import dawngauge.trip.Spare;
import dawngauge.trip.Tire;
import java.util.HashSet;
import org.jspecify.annotations.Nullable;

/** Tires and spares as JSON. */
final class TireJson {
  private static final Form<Entered<TreadDepth>> TREAD = Form.figure(QuantityKind.TREAD_DEPTH);
  private static final Form<Entered<GaugePressure>> LOSS = Form.figure(QuantityKind.GAUGE_PRESSURE);
  private static final Form<Tire.Damage> DAMAGE = Form.choice(Tire.Damage.class, Tire.Damage::word);

  private TireJson() {}

  static Tire read(FieldReader in) {
    Double heatFactor = in.number("heatFactor", 0.3, 3);
    return new Tire(
        in.required("id", Form.NAME),
        in.required("type", Form.NAME),
        in.optional("dateCode", Form.TEXT),
        in.optional("tread", TREAD),
        heatFactor == null ? 1 : heatFactor,
        in.optional("lossPerDay", LOSS),
        new HashSet<>(in.texts("damage", DAMAGE)),
        in.remarks());
  }

  static ObjectNode write(Tire tire) {
    return new FieldWriter()
        .put("id", Form.NAME, tire.id())
        .put("type", Form.NAME, tire.type())
        .put("dateCode", Form.TEXT, tire.dateCode())
        .put("tread", TREAD, tire.tread())
        .number("heatFactor", unlessOne(tire.heatFactor()))
        .put("lossPerDay", LOSS, tire.lossPerDay())
        .texts("damage", tire.damage().stream().sorted().toList(), DAMAGE)
        .with(tire.remarks());
  }

  static Spare readSpare(FieldReader in) {
    return new Spare(
        in.required("tire", Form.NAME),
        in.texts("serves", RigForms.AXLE_FORM),
        in.optional("wheelMaxPressure", RigJson.PRESSURE),
        in.optional("wheelMaxLoad", RigJson.MASS),
        in.remarks());
  }

  static ObjectNode writeSpare(Spare spare) {
    return new FieldWriter()
        .put("tire", Form.NAME, spare.tire())
        .texts("serves", spare.serves(), RigForms.AXLE_FORM)
        .put("wheelMaxPressure", RigJson.PRESSURE, spare.wheelMaxPressure())
        .put("wheelMaxLoad", RigJson.MASS, spare.wheelMaxLoad())
        .with(spare.remarks());
  }

  private static @Nullable Double unlessOne(double factor) {
    return factor == 1 ? null : factor;
  }
}

package dawngauge.tripfile;

import com.fasterxml.jackson.databind.node.ObjectNode;
import dawngauge.field.Codec;
import dawngauge.field.TripCodecs;
import dawngauge.quantity.Entered;
import dawngauge.quantity.GaugePressure;
import dawngauge.quantity.QuantityKind;
import dawngauge.trip.PlanChoices;
import java.util.List;

/** What the crew wants of the adjustment plan, as JSON. */
final class PlanJson {

  private static final Codec<PlanChoices.Kind> KIND =
      Codec.choice(PlanChoices.Kind.class, PlanChoices.Kind::word);
  private static final Codec<Entered<GaugePressure>> FIGURE =
      Codec.positive(QuantityKind.GAUGE_PRESSURE);

  private PlanJson() {}

  static PlanChoices read(FieldReader in) {
    return new PlanChoices(
        in.requiredFlag("followed"), in.objects("stops", PlanJson::readWish), in.remarks());
  }

  private static PlanChoices.Wish readWish(FieldReader in) {
    return new PlanChoices.Wish(
        in.required("stop", Codec.NAME),
        in.required("wish", KIND),
        in.map("figures", TripCodecs.POSITION, FIGURE),
        in.remarks());
  }

  static ObjectNode write(PlanChoices plan) {
    return new FieldWriter()
        .flag("followed", plan.followed())
        .objects("stops", plan.wishes(), PlanJson::writeWish)
        .with(plan.remarks());
  }

  private static ObjectNode writeWish(PlanChoices.Wish wish) {
    return new FieldWriter()
        .put("stop", Codec.NAME, wish.stop())
        .put("wish", KIND, wish.kind())
        .map(
            "figures",
            List.copyOf(wish.figures().keySet()),
            wish.figures(),
            TripCodecs.POSITION,
            FIGURE)
        .with(wish.remarks());
  }
}

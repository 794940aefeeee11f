package dawngauge.tripfile;

import com.fasterxml.jackson.databind.node.ObjectNode;
import dawngauge.problem.ProblemCode;
import dawngauge.trip.AxleRef;
import dawngauge.trip.ScaleTicket;
import dawngauge.trip.ScaleTicket.Platform;
import dawngauge.trip.ScaleTicket.WheelWeight;
import java.util.List;

/** Scale tickets as JSON. */
final class TicketJson {
  private enum Side {
    LEFT("left"),
    RIGHT("right");

    private final String word;

    Side(String word) {
      this.word = word;
    }
  }

  private static final Form<Side> SIDE = Form.choice(Side.class, side -> side.word);

  private TicketJson() {}

  static ScaleTicket read(FieldReader in) {
    return new ScaleTicket(
        in.optional("date", TimeForms.DATE_FORM),
        in.requiredFlag("hitched"),
        in.optional("aboard", Form.TEXT),
        in.objects("platforms", TicketJson::readPlatform),
        in.objects("wheels", TicketJson::readWheel),
        in.remarks());
  }

  static ObjectNode write(ScaleTicket ticket) {
    return new FieldWriter()
        .put("date", TimeForms.DATE_FORM, ticket.date())
        .flag("hitched", ticket.hitched())
        .put("aboard", Form.TEXT, ticket.aboard())
        .objects("platforms", ticket.platforms(), TicketJson::writePlatform)
        .objects("wheels", ticket.wheels(), TicketJson::writeWheel)
        .with(ticket.remarks());
  }

  private static Platform readPlatform(FieldReader in) {
    List<AxleRef> axles = in.texts("axles", RigForms.AXLE_FORM);
    if (axles.isEmpty()) {
      in.report(ProblemCode.MISSING_FIELD, in.at("axles"), "axles", "the axles that stood on it");
    }
    return new Platform(axles, in.required("weight", RigJson.MASS));
  }

  private static ObjectNode writePlatform(Platform platform) {
    return new FieldWriter()
        .texts("axles", platform.axles(), RigForms.AXLE_FORM)
        .put("weight", RigJson.MASS, platform.weight())
        .node();
  }

  private static WheelWeight readWheel(FieldReader in) {
    return new WheelWeight(
        in.required("axle", RigForms.AXLE_FORM),
        in.required("side", SIDE) == Side.LEFT,
        in.required("weight", RigJson.MASS));
  }

  private static ObjectNode writeWheel(WheelWeight wheel) {
    return new FieldWriter()
        .put("axle", RigForms.AXLE_FORM, wheel.axle())
        .put("side", SIDE, wheel.left() ? Side.LEFT : Side.RIGHT)
        .put("weight", RigJson.MASS, wheel.weight())
        .node();
  }
}

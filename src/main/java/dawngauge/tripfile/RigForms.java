package dawngauge.tripfile;

import dawngauge.problem.Outcome;
import dawngauge.problem.ProblemCode;
import dawngauge.quantity.Entered;
import dawngauge.quantity.GaugePressure;
import dawngauge.quantity.QuantityKind;
import dawngauge.trip.Air;
import dawngauge.trip.AxleRef;
import dawngauge.trip.WheelPosition;
import dawngauge.trip.WheelSlot;
import java.util.Arrays;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** How axles, wheel positions and the air at a stop stand in the file. */
final class RigForms {
  private static final Pattern AXLE = Pattern.compile("(\\S|\\S.*\\S) ([1-9]\\d{0,2})");
  private static final Pattern POSITION =
      Pattern.compile("(\\S|\\S.*\\S) axle ([1-9]\\d{0,2}) (left|right)((?: outer| inner)?)");
  private static final String UP_TO = "up to ";

  /** An axle, such as "trailer 2". */
  static final Form<AxleRef> AXLE_FORM =
      new Form<>(
          "an axle",
          "\"trailer 2\"",
          new AxleRef("", 1),
          RigForms::parseAxle,
          ref -> ref.vehicle() + " " + ref.number());

  /** A place on an axle. */
  static final Form<WheelSlot> SLOT_FORM = Form.choice(WheelSlot.class, WheelSlot::words);

  /** A place on the rig, such as "trailer axle 2 left". */
  static final Form<WheelPosition> POSITION_FORM =
      new Form<>(
          "a wheel position",
          "\"trailer axle 2 left\"",
          new WheelPosition(new AxleRef("", 1), WheelSlot.LEFT),
          RigForms::parsePosition,
          WheelPosition::words);

  /** Whether air is to be had. */
  static final Form<Air> AIR_FORM =
      new Form<>(
          "\"none\", \"yes\" or \"up to\" a pressure",
          "\"up to 100 psi\"",
          Air.NONE,
          RigForms::parseAir,
          RigForms::airText);

  private RigForms() {}

  private static Outcome<AxleRef> parseAxle(String text) {
    Matcher matcher = AXLE.matcher(text);
    return matcher.matches()
        ? Outcome.of(new AxleRef(matcher.group(1), Integer.parseInt(matcher.group(2))))
        : Form.failed(ProblemCode.NOT_AN_AXLE, Form.shortened(text), AXLE_FORM.example());
  }

  private static Outcome<WheelPosition> parsePosition(String text) {
    Matcher matcher = POSITION.matcher(text);
    if (matcher.matches()) {
      String slotWords = matcher.group(3) + matcher.group(4);
      Optional<WheelSlot> slot =
          Arrays.stream(WheelSlot.values()).filter(s -> s.words().equals(slotWords)).findFirst();
      if (slot.isPresent()) {
        AxleRef axle = new AxleRef(matcher.group(1), Integer.parseInt(matcher.group(2)));
        return Outcome.of(new WheelPosition(axle, slot.get()));
      }
    }
    return Form.failed(ProblemCode.NOT_A_POSITION, Form.shortened(text), POSITION_FORM.example());
  }

  private static Outcome<Air> parseAir(String text) {
    if (text.equals("none")) {
      return Outcome.of(Air.NONE);
    } else if (text.equals("yes")) {
      return Outcome.of(Air.YES);
    } else if (text.startsWith(UP_TO)) {
      Form<Entered<GaugePressure>> form = Form.positive(QuantityKind.GAUGE_PRESSURE);
      return form.parse().apply(text.substring(UP_TO.length())).map(top -> new Air(true, top));
    }
    return Form.failed(ProblemCode.NOT_A_CHOICE, Form.shortened(text), AIR_FORM.what());
  }

  private static String airText(Air air) {
    Entered<GaugePressure> top = air.upTo();
    if (!air.available()) {
      return "none";
    }
    return top == null ? "yes" : UP_TO + top.text();
  }
}

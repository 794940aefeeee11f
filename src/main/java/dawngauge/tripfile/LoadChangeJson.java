package dawngauge.tripfile;

import com.fasterxml.jackson.databind.node.ObjectNode;
import dawngauge.problem.ProblemCode;
import dawngauge.quantity.Entered;
import dawngauge.quantity.Mass;
import dawngauge.quantity.QuantityKind;
import dawngauge.quantity.Ratio;
import dawngauge.trip.AxleRef;
import dawngauge.trip.LoadChange;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Comparator;
import java.util.List;
import java.util.Map;

/** What is taken on or set down at a stop, as JSON. */
final class LoadChangeJson {
  private static final Form<Entered<Mass>> WEIGHT = Form.figure(QuantityKind.MASS);
  private static final Form<LoadChange.Source> SOURCE =
      Form.choice(LoadChange.Source.class, LoadChange.Source::word);
  private static final Comparator<AxleRef> ORDER =
      Comparator.comparing(AxleRef::vehicle).thenComparing(AxleRef::number);

  /** How far the parts may be from 100 %, for figures rounded to whole percents. */
  private static final double TOLERANCE = 0.005;

  private LoadChangeJson() {}

  static LoadChange read(FieldReader in) {
    int before = in.problemCount();
    Map<AxleRef, Entered<Ratio>> axles = in.map("axles", RigForms.AXLE_FORM, Form.share());
    Entered<Ratio> hitch = in.optional("hitch", Form.share());
    if (in.problemCount() == before) {
      checkSplit(in, axles, hitch == null ? 0 : hitch.value().value());
    }
    return new LoadChange(
        in.required("what", Form.TEXT),
        in.required("weight", WEIGHT),
        in.required("source", SOURCE),
        axles,
        hitch,
        in.flag("offered"),
        in.remarks());
  }

  static ObjectNode write(LoadChange change) {
    List<AxleRef> order = change.axles().keySet().stream().sorted(ORDER).toList();
    FieldWriter out =
        new FieldWriter()
            .put("what", Form.TEXT, change.what())
            .put("weight", WEIGHT, change.weight())
            .put("source", SOURCE, change.source())
            .map("axles", order, change.axles(), RigForms.AXLE_FORM, Form.share())
            .put("hitch", Form.share(), change.hitch());
    if (change.offered()) {
      out.flag("offered", true);
    }
    return out.with(change.remarks());
  }

  private static void checkSplit(FieldReader in, Map<AxleRef, Entered<Ratio>> axles, double hitch) {
    double sum = hitch + axles.values().stream().mapToDouble(part -> part.value().value()).sum();
    if (Math.abs(sum - 1) > TOLERANCE + 1e-9) {
      in.report(ProblemCode.SPLIT_NOT_WHOLE, in.at("axles"), percent(sum));
    }
  }

  private static String percent(double ratio) {
    return BigDecimal.valueOf(ratio * 100).setScale(1, RoundingMode.HALF_UP).toPlainString();
  }
}

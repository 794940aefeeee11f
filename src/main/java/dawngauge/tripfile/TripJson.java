package dawngauge.tripfile;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dawngauge.field.Codec;
import dawngauge.field.RigFields;
import dawngauge.problem.Outcome;
import dawngauge.problem.Problem;
import dawngauge.problem.ProblemCode;
import dawngauge.trip.PlanChoices;
import dawngauge.trip.Trip;

/** The whole trip as JSON, with the format's name and version. */
final class TripJson {
  static final String FORMAT = "dawngauge trip";
  static final int VERSION = 1;

  private TripJson() {}

  static Outcome<Trip> read(JsonNode tree) {
    JsonNode format = tree.path("format");
    if (!FORMAT.equals(format.textValue())) {
      String found = format.isMissingNode() ? "missing" : Codec.shortened(format.toString());
      return Codec.failed(ProblemCode.NOT_A_TRIP_FILE, found, FORMAT);
    }
    JsonNode version = tree.path("version");
    if (!version.isIntegralNumber() || version.bigIntegerValue().signum() <= 0) {
      String found = version.isMissingNode() ? "missing" : Codec.shortened(version.toString());
      return Outcome.failed(
          Problem.of(ProblemCode.NO_SUCH_VERSION, "/version", found, "" + VERSION));
    }
    if (!version.canConvertToInt() || version.intValue() > VERSION) {
      return Outcome.failed(
          Problem.of(
              ProblemCode.NEWER_VERSION,
              "/version",
              Codec.shortened(version.toString()),
              "" + VERSION));
    }
    Findings problems = new Findings();
    Trip trip = FieldReader.read(tree, "", new ValueReader(problems), TripJson::fields);
    TripCheck.check(trip, problems);
    TextLengths.told(tree).forEach(problems::add);
    return problems.hasError()
        ? Outcome.failed(problems.list())
        : Outcome.of(trip, problems.list());
  }

  private static Trip fields(FieldReader in) {
    in.knows("format", "version");
    return new Trip(
        in.required("name", Codec.TEXT),
        in.requiredObject("rig", each -> PartJson.read(each, RigFields.RIG)),
        in.requiredObject("route", RouteJson::read),
        in.objects("ambient", AmbientJson::read),
        in.objects("earlierAmbient", AmbientJson::read),
        in.objects("log", LogJson::read),
        plan(in),
        in.remarks());
  }

  private static PlanChoices plan(FieldReader in) {
    PlanChoices plan = in.object("plan", PlanJson::read);
    return plan == null ? PlanChoices.NONE : plan;
  }

  static ObjectNode write(Trip trip) {
    return new FieldWriter()
        .put("format", Codec.TEXT, FORMAT)
        .integer("version", VERSION)
        .put("name", Codec.TEXT, trip.name())
        .object("rig", trip.rig(), each -> PartJson.write(RigFields.RIG, each))
        .object("route", trip.route(), RouteJson::write)
        .objects("ambient", trip.ambient(), AmbientJson::write)
        .objects("earlierAmbient", trip.earlierAmbient(), AmbientJson::write)
        .objects("log", trip.log(), LogJson::write)
        .object("plan", trip.plan().equals(PlanChoices.NONE) ? null : trip.plan(), PlanJson::write)
        .with(trip.remarks());
  }
}

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
import java.math.BigInteger;
import java.util.Optional;

/** The whole trip as JSON, with the format's name and version. */
final class TripJson {
  static final String FORMAT = "dawngauge trip";
  static final int VERSION = 2;

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
      return refused(ProblemCode.NO_SUCH_VERSION, found);
    }
    Optional<String> newer = newerVersion(tree);
    if (newer.isPresent()) {
      return refused(ProblemCode.NEWER_VERSION, newer.get());
    }
    FileProblems problems = new FileProblems();
    Trip read = FieldReader.read(tree, "", new ValueReader(problems), TripJson::fields);
    TripCheck.check(read, problems);
    TextLengths.told(tree).forEach(problems::add);
    if (problems.hasError()) {
      return Outcome.failed(problems.list());
    } else if (version.intValue() == VERSION) {
      return Outcome.of(read, problems.list());
    }
    problems.add(Problem.of(ProblemCode.OLDER_VERSION, "/version", version.asText(), "" + VERSION));
    return Outcome.of(VersionOne.upgraded(read), problems.list());
  }

  private static Outcome<Trip> refused(ProblemCode code, String found) {
    return Outcome.failed(Problem.of(code, "/version", found, "" + VERSION));
  }

  /** The version of a trip that is newer than this program writes; empty for anything else. */
  static Optional<String> newerVersion(JsonNode tree) {
    JsonNode version = tree.path("version");
    boolean newer =
        FORMAT.equals(tree.path("format").textValue())
            && version.isIntegralNumber()
            && version.bigIntegerValue().compareTo(BigInteger.valueOf(VERSION)) > 0;
    return newer ? Optional.of(Codec.shortened(version.toString())) : Optional.empty();
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

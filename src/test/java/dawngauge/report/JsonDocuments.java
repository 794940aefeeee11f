package dawngauge.report;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import dawngauge.advice.Advice;
import dawngauge.advice.Breakdown.Choice;
import dawngauge.advice.Reminder;
import dawngauge.ambient.MeasuredAir;
import dawngauge.ledger.Ledger;
import dawngauge.ledger.ReminderLine;
import dawngauge.planner.Plan;
import dawngauge.planner.Planner;
import dawngauge.problem.Problem;
import dawngauge.problem.ProblemCode;
import dawngauge.quantity.UnitSystem;
import dawngauge.settings.SettingsFile;
import dawngauge.trip.Trip;
import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneId;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/** The JSON documents of trips of many sorts. */
final class JsonDocuments {
  private static final Path DEMOS = Path.of("demo-data");
  private static final Path WORKSHEET =
      Path.of("src", "test", "resources", "dawngauge", "weights", "three-loads.dawngauge");
  private static final Planner PLANNER = new Planner(SettingsFile.defaults(), List.of());
  private static final ObjectMapper MAPPER = new ObjectMapper();

  private static final Map<String, Map<String, JsonNode>> ALL = make();

  private JsonDocuments() {}

  /** Every document there is, by the name of the trip and by its command. */
  static Map<String, Map<String, JsonNode>> all() {
    return ALL;
  }

  static JsonNode of(String trip, String command) {
    JsonNode document = ALL.getOrDefault(trip, Map.of()).get(command);
    if (document == null) {
      throw new IllegalArgumentException("no " + command + " of " + trip);
    }
    return document;
  }

  private static Map<String, Map<String, JsonNode>> make() {
    Trip demo = Plans.demo();
    String logged = Plans.text(DEMOS.resolve("spring-fleece-haul-logged.dawngauge"));
    Map<String, Trip> trips = new LinkedHashMap<>(Plans.all());
    trips.put("autumn", Plans.trip(Plans.text(DEMOS.resolve("autumn-stock-haul.dawngauge"))));
    trips.put("logged", Plans.trip(logged));
    trips.put("followed", demo.withPlan(demo.plan().following(true)));
    trips.put("ran low", secondMorning(Plans.trip(reads(logged, "T4", "70 psi", "20 psi"))));
    trips.put(
        "exchanged",
        Plans.trip(
            reads(reads(logged, "P2", "60.5 psi", "81.5 psi"), "T2", "81.5 psi", "60.5 psi")));
    trips.put(
        "own compressor",
        Plans.trip(
            Plans.text(DEMOS.resolve("spring-fleece-haul.dawngauge"))
                .replace(
                    "\"gauges\": [",
                    "\"compressorTop\": \"120 psi\", \"compressorFlow\": \"10 L/min\","
                        + " \"compressorFlowAt\": \"90 psi\", \"gauges\": [")));
    trips.put("worksheet", Plans.trip(Plans.text(WORKSHEET)));
    Map<String, Map<String, JsonNode>> all = new LinkedHashMap<>();
    trips.forEach((name, trip) -> all.put(name, of(trip)));
    return all;
  }

  /** A log in which a tire read something else. */
  private static String reads(String log, String tire, String was, String is) {
    String reading = "\"tire\": \"" + tire + "\",\n      \"pressure\": \"";
    return log.replace(reading + was, reading + is);
  }

  /** The log up to the second morning, on which the first tire is still to be read. */
  private static Trip secondMorning(Trip trip) {
    Instant first = Instant.parse("2027-04-07T13:35:00Z");
    Instant end = Instant.parse("2027-04-07T14:00:00Z");
    return trip.withLog(
        trip.log().stream()
            .filter(event -> !event.time().instant().equals(first))
            .filter(event -> event.time().instant().isBefore(end))
            .toList());
  }

  /** The reminders of a trip as they are shown. */
  static List<ReminderLine> lines(Trip trip) {
    Plan planned = PLANNER.plan(trip);
    Advice advice = Objects.requireNonNull(planned.advice());
    Ledger ledger =
        Ledger.of(trip, advice, planned.problems(), planned.fitness(), UnitSystem.US, null);
    return ReminderLine.all(advice, planned.reminders(), ledger);
  }

  private static Map<String, JsonNode> of(Trip trip) {
    UnitSystem units = UnitSystem.US;
    Plan planned = PLANNER.plan(trip);
    List<Problem> problems = planned.problems();
    Advice advice = planned.advice();
    Map<String, JsonNode> documents = new LinkedHashMap<>();
    documents.put(
        "forecast", tree(JsonResult.of(trip, advice, problems, planned.fitness(), units, null)));
    documents.put("fitness", tree(JsonFitness.of(trip, planned.fitness(), planned.gaps(), units)));
    documents.put("weights", tree(JsonWeights.of(trip, planned.expectedWeights(), units)));
    if (advice != null) {
      List<Reminder> due = planned.reminders();
      documents.put(
          "reminders",
          tree(
              JsonReminders.of(
                  trip, advice, due, lines(trip), problems, planned.fitness(), units)));
    }
    planned
        .reach(0)
        .ifPresent(
            reach -> documents.put("reach", tree(JsonReach.of(trip, reach, problems, units))));
    planned.breakdowns().stream()
        .max(Comparator.comparing(flat -> flat.spares().stream().filter(Choice::serves).count()))
        .ifPresent(flat -> documents.put("breakdown", tree(JsonBreakdown.of(trip, flat, units))));
    PLANNER
        .plan(trip)
        .adjustment()
        .value()
        .ifPresent(plan -> documents.put("plan", tree(JsonPlan.of(trip, plan, problems, units))));
    PLANNER
        .plan(trip)
        .review()
        .ifPresent(
            review ->
                documents.put("review", tree(JsonReview.of(trip, review, measured(trip), units))));
    return documents;
  }

  /** At the first stop something was measured, at the next nothing. */
  private static List<MeasuredAir> measured(Trip trip) {
    ZoneId zone = ZoneId.of("America/Denver");
    Instant time = Instant.parse("2027-04-06T11:52:00Z");
    String place = trip.route().stops().get(0).place();
    Problem silent = Problem.of(ProblemCode.NO_PLACE_FOR_WEATHER, place);
    return List.of(
        new MeasuredAir(0, place, time, zone, 270, 268, "Test service", List.of()),
        new MeasuredAir(0, place, time, zone, 270, Double.NaN, "", List.of(silent)));
  }

  private static JsonNode tree(String text) {
    try {
      return MAPPER.readTree(text);
    } catch (JsonProcessingException broken) {
      throw new IllegalStateException(broken);
    }
  }
}

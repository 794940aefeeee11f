package dawngauge.report;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dawngauge.advice.Reason;
import dawngauge.explain.Phrase;
import dawngauge.fitness.Defect;
import dawngauge.ledger.Ledger;
import dawngauge.problem.Problem;
import dawngauge.quantity.GaugePressure;
import dawngauge.quantity.Quantity;
import dawngauge.quantity.UnitSystem;
import dawngauge.trip.Itinerary;
import dawngauge.trip.Stop;
import dawngauge.trip.Trip;
import dawngauge.trip.WheelPosition;
import java.util.List;
import java.util.Locale;
import java.util.function.DoubleFunction;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * What all JSON documents have in common: figures in SI and U.S. units side by side, null where not
 * known; sentences in the units shown.
 */
final class JsonPage {

  /** Raised by a change that breaks what reads the documents. */
  private static final int VERSION = 1;

  private static final ObjectMapper MAPPER =
      new ObjectMapper().enable(SerializationFeature.INDENT_OUTPUT);

  private final ObjectNode root = JsonNodeFactory.instance.objectNode();
  private final Trip trip;
  private final UnitSystem units;

  /**
   * A document with its head.
   *
   * @param what the command whose answer it is
   * @param trip the trip
   * @param units units of its sentences
   */
  JsonPage(String what, Trip trip, UnitSystem units) {
    this.trip = trip;
    this.units = units;
    root.put("format", "dawngauge " + what);
    root.put("version", VERSION);
    root.put("name", trip.name());
  }

  /** The document, to be filled. */
  ObjectNode root() {
    return root;
  }

  /** The text, closed by the cautions. */
  String text() {
    return text(List.of());
  }

  /** The text, closed by cautions of its own and those of every document. */
  String text(List<String> own) {
    strings(root, "cautions", Stream.concat(own.stream(), Ledger.CAUTIONS.stream()).toList());
    try {
      return MAPPER.writeValueAsString(root) + "\n";
    } catch (JsonProcessingException e) {
      throw new IllegalStateException(e);
    }
  }

  /** What is wrong with the rig, worst first. */
  void fitness(List<Defect> found) {
    ArrayNode findings = root.putArray("fitness");
    for (Defect defect : found) {
      findings
          .addObject()
          .put("severity", defect.severity().word())
          .put("code", defect.code().name())
          .put("where", defect.where())
          .put("what", defect.what().in(units))
          .put("toDo", defect.toDo().in(units))
          .put("authority", defect.authority().text());
    }
  }

  /** What is missing or assumed. */
  void problems(List<Problem> problems) {
    problems(root, problems);
  }

  /** The same in a part of the document. */
  static void problems(ObjectNode node, List<Problem> problems) {
    ArrayNode missing = node.putArray("problems");
    for (Problem problem : problems) {
      missing
          .addObject()
          .put("code", problem.code().name())
          .put("severity", word(problem.code().severity()))
          .put("where", problem.where())
          .put("text", problem.text());
    }
  }

  /** Which tire it is. */
  void tire(ObjectNode node, WheelPosition position, String id) {
    node.put("tire", trip.rig().shortForm(position));
    node.put("position", position.words());
    node.put("tireId", id);
  }

  /** Why a mark is given. */
  void reasons(ObjectNode node, List<Reason> reasons) {
    ArrayNode array = node.putArray("reasons");
    for (Reason reason : reasons) {
      ObjectNode entry = array.addObject();
      entry.put("mark", reason.mark().word());
      entry.put("text", reason.text().in(units));
    }
  }

  /** A sentence. */
  void put(ObjectNode node, String name, @Nullable Phrase phrase) {
    node.put(name, phrase == null ? null : phrase.in(units));
  }

  /** Sentences. */
  void phrases(ObjectNode node, String name, List<Phrase> phrases) {
    strings(node, name, phrases.stream().map(phrase -> phrase.in(units)).toList());
  }

  /** Words or sentences. */
  static void strings(ObjectNode node, String name, List<String> strings) {
    ArrayNode array = node.putArray(name);
    strings.forEach(array::add);
  }

  /** Which stop of the route it is. */
  static void stop(ObjectNode node, int index, Stop stop) {
    node.put("number", index + 1);
    node.put("id", stop.id());
    node.put("place", stop.place());
  }

  /** When the rig arrives at a stop and leaves it. */
  static void times(ObjectNode node, Itinerary.Visit visit) {
    node.put("arrive", Times.of(visit.arrive(), visit.zone()));
    node.put("leave", Times.of(visit.leave(), visit.zone()));
  }

  /** A figure by its SI number, null where that is not known. */
  static void put(
      ObjectNode node, String name, double si, DoubleFunction<? extends Quantity> maker) {
    put(node, name, BothUnits.known(si, maker));
  }

  /** A gauge pressure in pascal, null where it is not known. */
  static void pressure(ObjectNode node, String name, double pascals) {
    put(node, name, pascals, GaugePressure::new);
  }

  /** A figure. */
  static void put(ObjectNode node, String name, @Nullable Quantity quantity) {
    if (quantity == null) {
      node.putNull(name);
      return;
    }
    ObjectNode figure = node.putObject(name);
    BothUnits.unitsOf(quantity.kind())
        .forEach((unitName, unit) -> figure.put(unitName, BothUnits.number(quantity, unit)));
  }

  /** The name of a constant as words: "too few". */
  static String word(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }
}

package dawngauge.tripfile;

import com.fasterxml.jackson.databind.JsonNode;
import dawngauge.field.Codec;
import dawngauge.problem.Outcome;
import dawngauge.problem.Problem;
import dawngauge.problem.ProblemCode;
import dawngauge.trip.Taken;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** What a page for the phone sends back: JSON, as a file or as a text that was copied. */
public final class TakenFile {

  /** A full round of forty tires a stop, at two hundred stops, has fewer; ours. */
  private static final int MOST_ENTRIES = 20_000;

  private static final int MOST_BYTES = 8 << 20;

  private TakenFile() {}

  /** Reads a file. */
  public static Outcome<Taken> read(Path file) {
    return SafeFile.read(file, MOST_BYTES)
        .map(text -> text.hasValue() ? parse(text.get()) : Outcome.<Taken>failed(text.problems()))
        .orElseGet(() -> Codec.failed(ProblemCode.NO_SUCH_FILE, file.toString()));
  }

  /** Reads a text. */
  public static Outcome<Taken> parse(String text) {
    int begin = text.indexOf('{');
    if (text.length() > MOST_BYTES || begin < 0) {
      return wrong(begin < 0 ? "it has no brace" : "it is too long");
    }
    // A text that is sent by a messenger may have its words before and after it.
    Outcome<JsonNode> tree = JsonText.tree(text.substring(begin, text.lastIndexOf('}') + 1));
    if (!tree.hasValue()) {
      return wrong("its end or a part of it is missing");
    }
    JsonNode root = tree.get();
    if (!root.path("format").asText().equals(Taken.FORMAT) || !root.path("entries").isArray()) {
      return wrong("it is something else");
    }
    if (root.path("version").asInt() != Taken.VERSION) {
      return wrong("it is of another version of this program");
    }
    if (root.path("entries").size() > MOST_ENTRIES) {
      return wrong("it has more than " + MOST_ENTRIES + " entries");
    }
    List<Taken.Entry> entries = new ArrayList<>();
    for (JsonNode entry : root.path("entries")) {
      entries.add(
          new Taken.Entry(
              entry.path("kind").asText(),
              entry.path("stop").asText(),
              entry.path("tire").asText(),
              entry.path("at").asText(),
              entry.path("figure").asText(),
              entry.path("gauge").asText(),
              entry.path("state").asText(),
              entry.path("text").asText()));
    }
    return Outcome.of(new Taken(root.path("fingerprint").asText(), entries));
  }

  private static Outcome<Taken> wrong(String why) {
    return Outcome.failed(Problem.of(ProblemCode.NOT_SENT_BACK, "", why));
  }
}

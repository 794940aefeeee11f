package dawngauge.tripfile;

import com.fasterxml.jackson.databind.JsonNode;
import dawngauge.field.Codec;
import dawngauge.field.RigFields;
import dawngauge.problem.Outcome;
import dawngauge.problem.Problem;
import dawngauge.problem.ProblemCode;
import dawngauge.trip.Rig;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Rigs kept under a name in the user's own folder, one file each: the rig as it stands in a trip
 * file, in an envelope with its name and the day it was kept.
 */
public final class KeptRigs {

  private static final String FORMAT = "dawngauge rig";
  private static final int VERSION = 1;
  private static final String ENDING = ".dawngauge-rig";

  private final Path folder;

  /**
   * A folder of rigs.
   *
   * @param folder made when a rig is kept
   */
  public KeptRigs(Path folder) {
    this.folder = folder;
  }

  /**
   * A rig that was kept.
   *
   * @param name its name
   * @param kept the day it was kept
   * @param rig the rig
   */
  public record Kept(String name, LocalDate kept, Rig rig) {}

  /**
   * Keeps a rig in the place of one of the same name.
   *
   * @return what went wrong, if anything
   */
  public Optional<Problem> keep(String name, Rig rig, LocalDate today) {
    String named = name.strip();
    if (named.isEmpty()) {
      return Optional.of(Problem.of(ProblemCode.NOT_A_NAME, "", name));
    }
    try {
      Files.createDirectories(folder);
    } catch (IOException failure) {
      return Optional.of(
          Problem.of(ProblemCode.CANNOT_WRITE, "", folder.toString(), SafeFile.reason(failure)));
    }
    String text =
        JsonText.text(
            new FieldWriter()
                .put("format", Codec.TEXT, FORMAT)
                .integer("version", VERSION)
                .put("name", Codec.TEXT, named)
                .put("kept", Codec.TEXT, today.toString())
                .object("rig", rig, each -> PartJson.write(RigFields.RIG, each))
                .node());
    return SafeFile.save(text, file(named), true);
  }

  /** All rigs by name; files that cannot be read are told among the problems and left alone. */
  public Outcome<List<Kept>> all() {
    List<Kept> rigs = new ArrayList<>();
    List<Problem> problems = new ArrayList<>();
    try (Stream<Path> files = Files.list(folder)) {
      for (Path file : files.filter(f -> f.toString().endsWith(ENDING)).toList()) {
        Outcome<Kept> kept = read(file);
        kept.value().ifPresent(rigs::add);
        if (!kept.hasValue()) {
          problems.addAll(kept.problems());
        }
      }
    } catch (IOException none) {
      return Outcome.of(List.of());
    }
    rigs.sort(Comparator.comparing(Kept::name, String.CASE_INSENSITIVE_ORDER));
    return Outcome.of(rigs, problems);
  }

  /** Deletes a rig. */
  public void remove(String name) {
    try {
      Files.deleteIfExists(file(name));
    } catch (IOException stays) {
      // it is still listed, which says so
    }
  }

  private static Outcome<Kept> read(Path file) {
    String text;
    try {
      text = Files.readString(file, StandardCharsets.UTF_8);
    } catch (IOException failure) {
      return Codec.failed(ProblemCode.CANNOT_READ, file.toString(), SafeFile.reason(failure));
    }
    Outcome<JsonNode> tree = JsonText.tree(text);
    if (!tree.hasValue()) {
      return Outcome.failed(tree.problems());
    }
    String format = tree.get().path("format").asText();
    if (!format.equals(FORMAT)) {
      return Codec.failed(ProblemCode.NOT_A_TRIP_FILE, Codec.shortened(format), FORMAT);
    }
    FileProblems problems = new FileProblems();
    Kept kept = FieldReader.read(tree.get(), "", new ValueReader(problems), KeptRigs::fields);
    return problems.hasError() ? Outcome.failed(problems.list()) : Outcome.of(kept);
  }

  private static Kept fields(FieldReader in) {
    in.knows("format", "version");
    String name = in.required("name", Codec.TEXT);
    String day = in.required("kept", Codec.TEXT);
    LocalDate kept;
    try {
      kept = LocalDate.parse(day);
    } catch (DateTimeException unknown) {
      kept = LocalDate.EPOCH;
    }
    return new Kept(
        name, kept, in.requiredObject("rig", each -> PartJson.read(each, RigFields.RIG)));
  }

  /** Letters and digits of any script stand for themselves in the file's name, all else as code. */
  private Path file(String name) {
    StringBuilder safe = new StringBuilder();
    name.strip()
        .codePoints()
        .forEach(
            point -> {
              if (Character.isLetterOrDigit(point) || point == '-' || point == ' ') {
                safe.appendCodePoint(point);
              } else {
                safe.append('_').append(Integer.toHexString(point));
              }
            });
    String most = safe.length() <= 80 ? safe.toString() : safe.substring(0, 80) + name.hashCode();
    return folder.resolve(most + ENDING);
  }
}

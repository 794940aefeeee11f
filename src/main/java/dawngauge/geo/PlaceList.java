package dawngauge.geo;

import dawngauge.problem.Outcome;
import dawngauge.problem.Problem;
import dawngauge.problem.ProblemCode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * A list of places as it is pasted, one a line: a name, with or without its state; or latitude and
 * longitude; or a name, "=" and latitude and longitude. Behind "@" stands what is said of the stay.
 * See {@code docs/place-list.md}.
 *
 * @param lines what was understood of each line that says something
 */
public record PlaceList(List<Line> lines) {

  /** So many places are read at once. */
  public static final int MOST = 200;

  private static final int CANDIDATES = 8;
  private static final int LONGEST_SHOWN = 60;
  private static final String EXAMPLE = "Old mill = 37.469, -105.87";

  /** What stands in front of the lines of a list. */
  private static final Pattern BULLET = Pattern.compile("^(?:[-*•–]|\\d{1,3}[.)])\\s+");

  /**
   * A line.
   *
   * @param number its number in the text, from 1
   * @param place what stands there for the place, without its stay
   * @param candidates places that it may be, the best first
   * @param taken the one that is taken, or null where none is known
   * @param stay what is said of standing there
   * @param problems what cannot be read (then it cannot be used), or should be looked at
   */
  public record Line(
      int number,
      String place,
      List<Spot> candidates,
      @Nullable Spot taken,
      PlaceStay stay,
      List<Problem> problems) {

    /** Copies the lists. */
    public Line {
      candidates = List.copyOf(candidates);
      problems = List.copyOf(problems);
    }

    /** Whether the line can be used as it is. */
    public boolean isUsable() {
      return taken != null
          && problems.stream()
              .noneMatch(problem -> problem.code().severity() == ProblemCode.Severity.ERROR);
    }
  }

  /** Copies the list. */
  public PlaceList {
    lines = List.copyOf(lines);
  }

  /**
   * Reads a list. Each line is looked for near the place of the line before.
   *
   * @param gazetteer where names are looked up
   * @param text the text
   * @param near where the first place is to be looked for, or null
   * @param chosen the user's choice among the candidates, by the text of the place
   * @return the list, or that it is too long
   */
  public static Outcome<PlaceList> read(
      Gazetteer gazetteer, String text, @Nullable Coordinate near, Map<String, Spot> chosen) {
    List<Line> lines = new ArrayList<>();
    int number = 0;
    int said = 0;
    Coordinate last = near;
    for (String raw : text.lines().toList()) {
      number++;
      String line = BULLET.matcher(raw.strip()).replaceFirst("").strip();
      if (line.isEmpty() || line.startsWith("#")) {
        continue;
      }
      said++;
      if (said <= MOST) {
        Line read = new Reader(gazetteer, last, chosen).read(number, line);
        lines.add(read);
        last = read.taken == null ? last : read.taken.at();
      }
    }
    return said > MOST
        ? Outcome.failed(
            Problem.of(ProblemCode.TOO_MANY_PLACES, "", String.valueOf(said), "" + MOST))
        : Outcome.of(new PlaceList(lines));
  }

  /** Whether there is a line and every one can be used. */
  public boolean isUsable() {
    return !lines.isEmpty() && lines.stream().allMatch(Line::isUsable);
  }

  /** What is read of one line. */
  private record Reader(Gazetteer gazetteer, @Nullable Coordinate near, Map<String, Spot> chosen) {

    Line read(int number, String line) {
      int at = line.lastIndexOf('@');
      String place = at < 0 ? line : line.substring(0, at).strip();
      Outcome<PlaceStay> stay = at < 0 ? null : PlaceStay.parse(line.substring(at + 1).strip());
      Line found = found(number, place);
      if (stay == null) {
        return found;
      }
      List<Problem> problems = new ArrayList<>(found.problems);
      problems.addAll(stay.problems());
      return new Line(
          number,
          place,
          found.candidates,
          found.taken,
          stay.value().orElse(PlaceStay.UNSAID),
          problems);
    }

    private Line found(int number, String place) {
      int equals = place.lastIndexOf('=');
      Optional<Coordinate> at =
          Coordinate.parse(equals < 0 ? place : place.substring(equals + 1).strip());
      if (at.isPresent()) {
        String name = equals < 0 ? "" : place.substring(0, equals).strip();
        Spot spot = spot(name, at.get());
        return new Line(number, place, List.of(spot), spot, PlaceStay.UNSAID, List.of());
      }
      List<Gazetteer.Found> found =
          equals < 0 ? gazetteer.find(place, near, CANDIDATES) : List.of();
      if (found.isEmpty()) {
        Problem unknown = Problem.of(ProblemCode.PLACE_NOT_KNOWN, "", shortened(place), EXAMPLE);
        return new Line(number, place, List.of(), null, PlaceStay.UNSAID, List.of(unknown));
      }
      List<Gazetteer.Found> whole = found.stream().filter(Gazetteer.Found::whole).toList();
      List<Spot> candidates =
          (whole.size() > 1 ? whole : found).stream().map(f -> Spot.of(f.place())).toList();
      boolean sure = found.size() == 1 || whole.size() == 1;
      Spot wanted = chosen.get(place);
      if (sure || (wanted != null && candidates.contains(wanted))) {
        Spot taken = wanted != null && candidates.contains(wanted) ? wanted : candidates.get(0);
        return new Line(number, place, candidates, taken, PlaceStay.UNSAID, List.of());
      }
      Problem unsure =
          Problem.of(
              ProblemCode.PLACE_NOT_SURE, "", shortened(place), String.valueOf(candidates.size()));
      return new Line(
          number, place, candidates, candidates.get(0), PlaceStay.UNSAID, List.of(unsure));
    }

    private Spot spot(String name, Coordinate at) {
      Optional<Estimate> estimate = gazetteer.estimateAt(at);
      String called =
          Stream.of(name)
              .filter(given -> !given.isEmpty())
              .findFirst()
              .or(() -> estimate.map(known -> "Near " + known.nearest().label()))
              .orElse(at.latitude() + ", " + at.longitude());
      return Spot.of(called, at, estimate);
    }

    private static String shortened(String text) {
      return text.length() <= LONGEST_SHOWN ? text : text.substring(0, LONGEST_SHOWN - 3) + "...";
    }
  }
}

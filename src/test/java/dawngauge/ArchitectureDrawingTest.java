package dawngauge;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** The drawing of the packages shows what the table of allowed arrows says. */
class ArchitectureDrawingTest {

  private static final double[] NOWHERE = new double[4];

  private static final String NUMBER = "([\\d.]+)";

  private static final Pattern BOX =
      Pattern.compile(
          ("<g data-package=\"(\\w+)\"><rect x=\"#\" y=\"#\" width=\"#\" height=\"#\" rx=\"4\"/>"
                  + "<text x=\"#\" y=\"#\">(\\w+)</text></g>")
              .replace("#", NUMBER));

  private static final Pattern ARROW =
      Pattern.compile(
          "<line data-from=\"(\\w+)\" data-to=\"(\\w+)\" x1=\"#\" y1=\"#\" x2=\"#\" y2=\"#\"/>"
              .replace("#", NUMBER));

  @Test
  void theDrawingShowsTheTable() throws IOException {
    String svg = drawing();
    assertThat(faults(svg, PackageTable.OURS)).isEmpty();
    assertThat(svg.split("<line", -1)).hasSize(PackageTable.OURS.shortest().size() + 1);
    assertThat(svg.split("data-package", -1)).hasSize(PackageTable.OURS.rows().size() + 1);
  }

  @Test
  void anArrowTooFewOrTooManyIsFound() throws IOException {
    String svg = drawing();
    PackageTable more = PackageTable.OURS.with("disk", Set.of("problem"));
    PackageTable fewer = PackageTable.OURS.with("quantity", Set.of());
    assertThat(faults(svg, more)).containsExactly("disk > problem is not drawn");
    assertThat(faults(svg, fewer)).contains("quantity > problem is not in the table");
    assertThat(faults(svg, PackageTable.OURS.without("cli"))).contains("cli is not in the table");
  }

  @Test
  void anArrowThatLeadsElsewhereIsFound() throws IOException {
    String moved = drawing().replaceFirst("(data-to=\"problem\" x1=\")", "$11");
    assertThat(faults(moved, PackageTable.OURS))
        .containsExactly("quantity > problem does not begin at its box");
  }

  @Test
  void anArrowThatALongerWayStandsForIsLeftOut() {
    PackageTable table =
        new PackageTable(Map.of("a", Set.of("b", "c"), "b", Set.of("c"), "c", Set.of()));
    assertThat(table.shortest()).containsExactly("a > b", "b > c");
  }

  private static String drawing() throws IOException {
    return Files.readString(Path.of("docs", "architecture.svg"));
  }

  /** How a drawing differs from a table. */
  private static List<String> faults(String svg, PackageTable table) {
    List<String> faults = new ArrayList<>();
    Map<String, double[]> boxes = new HashMap<>();
    for (MatchResult box : BOX.matcher(svg).results().toList()) {
      assertThat(box.group(8)).isEqualTo(box.group(1));
      boxes.put(box.group(1), numbers(box, 2, 4));
    }
    differences(boxes.keySet(), table.rows().keySet(), faults);
    Set<String> drawn = new TreeSet<>();
    for (MatchResult arrow : ARROW.matcher(svg).results().toList()) {
      String name = arrow.group(1) + " > " + arrow.group(2);
      double[] ends = numbers(arrow, 3, 4);
      drawn.add(name);
      double[] from = boxes.getOrDefault(arrow.group(1), NOWHERE);
      if (!within(from, ends[0]) || ends[1] != from[1] + from[3]) {
        faults.add(name + " does not begin at its box");
      }
      double[] to = boxes.getOrDefault(arrow.group(2), NOWHERE);
      if (!within(to, ends[2]) || ends[3] != to[1]) {
        faults.add(name + " does not end at its box");
      }
    }
    differences(drawn, table.shortest(), faults);
    return faults;
  }

  private static void differences(Set<String> drawn, Set<String> told, List<String> faults) {
    told.stream()
        .filter(name -> !drawn.contains(name))
        .forEach(n -> faults.add(n + " is not drawn"));
    drawn.stream()
        .filter(name -> !told.contains(name))
        .forEach(n -> faults.add(n + " is not in the table"));
  }

  private static boolean within(double[] box, double x) {
    return x > box[0] && x < box[0] + box[2];
  }

  private static double[] numbers(MatchResult match, int first, int count) {
    double[] numbers = new double[count];
    for (int i = 0; i < count; i++) {
      numbers[i] = Double.parseDouble(match.group(first + i));
    }
    return numbers;
  }
}

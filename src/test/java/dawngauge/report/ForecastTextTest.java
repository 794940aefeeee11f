package dawngauge.report;

import static org.assertj.core.api.Assertions.assertThat;

import dawngauge.advice.Advice;
import dawngauge.advice.Mark;
import dawngauge.advice.StopAdvice;
import dawngauge.advice.TireAdvice;
import dawngauge.ledger.Ledger;
import dawngauge.quantity.UnitSystem;
import dawngauge.trip.Itinerary;
import dawngauge.trip.Trip;
import dawngauge.trip.WheelPosition;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.parallel.Isolated;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

/** The printed ledger is whole, aligned, and says what the forecast says. */
@Isolated
class ForecastTextTest {
  /** Pascal in a psi, NIST Special Publication 811 (2008), appendix B.8: 6.894 757 E+03. */
  private static final double PSI = 6894.757;

  private static final Pattern STOP = Pattern.compile("(\\d+)\\.(?: .*|)");

  static Stream<String> trips() {
    return Plans.all().keySet().stream();
  }

  private static Trip trip(String name) {
    return Objects.requireNonNull(Plans.all().get(name));
  }

  @ParameterizedTest
  @MethodSource("trips")
  void noLineIsWiderThan100ColumnsOrSteersTheTerminal(String name) {
    for (UnitSystem units : UnitSystem.values()) {
      String text = Plans.print(trip(name), units, null);
      assertThat(text.lines()).allMatch(line -> PlainText.length(line) <= 100);
      assertThat(text.replace("\n", "").chars()).noneMatch(Character::isISOControl);
      assertThat(text.lines()).noneMatch(line -> line.endsWith(" "));
    }
  }

  @ParameterizedTest
  @MethodSource("trips")
  void everyStopAppearsInOrder(String name) {
    Trip trip = trip(name);
    List<Integer> numbers =
        Plans.print(trip, UnitSystem.US, null)
            .lines()
            .map(STOP::matcher)
            .filter(matcher -> matcher.matches())
            .map(matcher -> Integer.valueOf(matcher.group(1)))
            .toList();
    List<Integer> expected = new ArrayList<>();
    for (int i = 1; i <= trip.route().stops().size(); i++) {
      expected.add(i);
    }
    assertThat(numbers).isEqualTo(expected);
  }

  @ParameterizedTest
  @MethodSource("trips")
  void everyTireIsInTheTableOfEveryStopWhereTheRigStands(String name) {
    Trip trip = trip(name);
    Advice advice = Plans.plan(trip).advice();
    List<StopAdvice> stops = advice == null ? List.of() : advice.stops();
    Set<String> rig =
        trip.rig().positions().stream()
            .filter(position -> trip.rig().fittedAt(position).isPresent())
            .map(trip.rig()::shortForm)
            .collect(Collectors.toCollection(TreeSet::new));
    for (UnitSystem units : UnitSystem.values()) {
      List<List<String>> blocks = blocks(Plans.print(trip, units, null));
      for (StopAdvice stop : stops) {
        Itinerary.Visit visit = stop.stop().visit();
        Set<String> shown = new TreeSet<>();
        for (String line : table(blocks.get(visit.index()))) {
          shown.addAll(names(line));
        }
        assertThat(shown).isEqualTo(visit.passes() ? Set.of() : rig);
      }
    }
  }

  @ParameterizedTest
  @MethodSource("trips")
  void figuresStandUnderTheirHeadings(String name) {
    for (UnitSystem units : UnitSystem.values()) {
      String heading = "";
      Set<String> mayBeEmpty = Set.of("here", "ahead");
      int rows = 0;
      for (List<String> block : blocks(Plans.print(trip(name), units, null))) {
        List<String> lines = table(block);
        if (lines.isEmpty()) {
          continue;
        }
        String head = lines.get(0);
        for (String column : List.of("here", "ahead", "safe", "to", "over")) {
          if (!head.contains(" " + column)) {
            continue;
          }
          int end = head.indexOf(" " + column) + 1 + column.length();
          assertThat(
                  heading.isEmpty()
                      || !heading.contains(" " + column)
                      || end(heading, column) == end)
              .as("%s stands at one place in all tables", column)
              .isTrue();
          for (String line : lines.subList(1, lines.size())) {
            if (line.length() > 60) {
              assertThat(line.charAt(end)).as(line).isEqualTo(' ');
              assertThat(mayBeEmpty.contains(column) || line.charAt(end - 1) != ' ')
                  .as(line)
                  .isTrue();
              rows++;
            }
          }
        }
        heading = head.contains("ahead") ? head : heading;
      }
      assertThat(rows > 0 || name.equals("no departure")).isTrue();
    }
  }

  @Test
  void theFiguresAreThoseOfTheForecastRoundedToTheSafeSide() {
    Trip trip = Plans.demo();
    Advice advice = Objects.requireNonNull(Plans.plan(trip).advice());
    List<List<String>> blocks = blocks(Plans.print(trip, UnitSystem.US, null));
    int compared = 0;
    for (StopAdvice stop : advice.stops()) {
      List<String> lines = table(blocks.get(stop.stop().visit().index()));
      for (String line : lines) {
        List<String> names = names(line);
        if (names.isEmpty()) {
          continue;
        }
        List<TireAdvice> tires =
            stop.tires().stream().filter(tire -> names.contains(shortForm(trip, tire))).toList();
        TireAdvice lowest = tires.get(0);
        for (TireAdvice tire : tires) {
          lowest = tire.tire().worstMargin() < lowest.tire().worstMargin() ? tire : lowest;
        }
        var at = lowest.tire();
        String head = lines.get(0);
        assertThat(cell(head, line, "safe"))
            .isEqualTo("" + (long) Math.ceil(at.limits().floor() / PSI - 1e-4));
        assertThat(cell(head, line, "to")).isEqualTo("" + Math.round(at.limits().aim() / PSI));
        assertThat(cell(head, line, "over"))
            .isEqualTo("" + Math.round(at.limits().ceiling() / PSI));
        double margin = at.worstMargin() * 100;
        assertThat(line.replaceAll("^.* ([+-]\\d+ %|–)( e)? +\\S+( \\S+)?$", "$1"))
            .isEqualTo(
                Double.isNaN(margin)
                    ? "–"
                    : String.format(Locale.ROOT, "%+d %%", (long) Math.floor(margin)));
        assertThat(line).endsWith(" " + mark(lowest.mark()));
        if (stop.stop().visit().index() < advice.stops().size() - 1) {
          assertThat(cell(head, line, "ahead"))
              .isEqualTo(
                  at.low() == null ? "–" : "" + Math.round(at.low().moment().judged() / PSI));
        }
        if (at.readings().isEmpty()) {
          assertThat(cell(head, line, "here"))
              .isEqualTo(
                  at.arrival() == null ? "–" : "" + Math.round(at.arrival().settled() / PSI));
          if (at.arrival() != null) {
            assertThat(cell(head, line, "reads"))
                .isEqualTo("" + Math.round(at.arrival().reading() / PSI));
          }
        }
        compared++;
      }
    }
    assertThat(compared).isGreaterThan(60);
  }

  @Test
  void readAndSetFiguresSaySo() {
    List<List<String>> blocks = blocks(Plans.print(Plans.demo(), UnitSystem.US, null));
    assertThat(table(blocks.get(0))).anyMatch(line -> line.matches("  t2r +72 +read .*"));
    assertThat(table(blocks.get(4))).anyMatch(line -> line.matches("  t2r .* 83 +set .* adjust"));
  }

  @Test
  void aDayHeadingStandsAtEachChangeOfTheLocalDate() {
    Trip trip = Plans.demo();
    assertThat(
            Plans.print(trip, UnitSystem.US, null)
                .lines()
                .filter(line -> line.matches("[A-Z]+DAY .*")))
        .containsExactly(
            "TUESDAY 6 APRIL 2027",
            "WEDNESDAY 7 APRIL 2027",
            "THURSDAY 8 APRIL 2027",
            "FRIDAY 9 APRIL 2027");
    assertThat(Plans.print(trip, UnitSystem.US, null))
        .contains("\n8. Floydada TX · overnight · 20:39 to 09:20+1 · ")
        .contains("\n11. Weatherford TX · show ground · 07:30 to 21:30 · ");
  }

  @Test
  void zoneLettersStandWhereTheyChange() {
    String text = Plans.print(Plans.demo(), UnitSystem.US, null);
    assertThat(Pattern.compile("\\d+\\. .*?\\([A-Z]{3}.*?\\)").matcher(text).results())
        .extracting(match -> match.group())
        .containsExactly("1. Alamosa CO (MDT)", "5. Dalhart TX (CDT)");
  }

  @Test
  void aNightInWhichTheClocksChangeShowsBothZones() {
    // U.S. clocks went forward on the second Sunday of March (15 U.S.C. 260a): 14 March 2027.
    String text =
        Plans.text(Plans.DEMO)
            .replace("2027-04-06T04:45-06:00", "2027-03-13T04:45-07:00")
            .replace("2027-04-06T05:45-06:00", "2027-03-13T22:45-07:00")
            .replaceAll("2027-04-06(T05:[01]\\d)-06:00", "2027-03-13$1-07:00")
            .replaceFirst("\"stay\": \"20 min\"", "\"stay\": \"4 h\"");
    assertThat(Plans.print(Plans.trip(text), UnitSystem.US, null))
        .contains("\n2. Walsenburg CO (MST, leaving MDT) · rest · 00:13 to 05:13 · ")
        .contains("\nSUNDAY 14 MARCH 2027\n");
  }

  @Test
  void stopsWithoutAKnownTimeAreStillShown() {
    String text = Plans.print(Plans.full(), UnitSystem.US, null);
    assertThat(text)
        .contains("\n4. Lamar CO · show ground · time not known\n")
        .contains("when it gets there is not known")
        .contains("4 stops · at least ");
    assertThat(text.replaceAll("\\s+", " ")).contains("no time known at the last stop");
    String none = Plans.print(trip("no departure"), UnitSystem.US, null);
    assertThat(Pattern.compile("time not known\n").matcher(none).results()).hasSize(13);
  }

  @Test
  void whatIsMissingIsSaidToBeMissing() {
    String air = Plans.print(trip("no air"), UnitSystem.US, null);
    assertThat(air).contains("temperature not known · 6171 ft").containsPattern("– +not known");
    String readings = Plans.print(trip("no readings"), UnitSystem.US, null);
    assertThat(table(blocks(readings).get(0)).stream().skip(1))
        .isNotEmpty()
        .allMatch(line -> line.endsWith("not known"));
    String weights = Plans.print(trip("no weights"), UnitSystem.US, null);
    assertThat(weights)
        .contains("no weight and no GAWR")
        .contains("Loads: not known where neither weighed nor rated.")
        .doesNotContain("load margin +");
    assertThat(Plans.print(Plans.gap(), UnitSystem.US, null).replaceAll("\\s+", " "))
        .contains("not known at Raton NM and Clayton NM")
        .contains("lowest known load margin +");
  }

  @ParameterizedTest
  @EnumSource
  void cautionsAndColumnsAreExplained(UnitSystem units) {
    String text = Plans.print(Plans.demo(), units, null).replaceAll("\\s+", " ");
    for (String caution : Ledger.CAUTIONS) {
      assertThat(text).contains(caution);
    }
    for (String column :
        List.of("cold here", "lowest ahead", "lowest safe", "set cold to", "never over")) {
      assertThat(text.substring(text.indexOf(" Columns "))).contains(" " + column + " ");
    }
  }

  @Test
  void oneTireAloneIsShownWithoutTheOthersAndSaysSo() {
    Trip trip = Plans.demo();
    WheelPosition only = trip.rig().positions().get(9);
    String text = Plans.print(trip, UnitSystem.SI, only);
    Set<String> shown = new TreeSet<>();
    blocks(text).forEach(block -> table(block).forEach(line -> shown.addAll(names(line))));
    assertThat(shown).containsExactly("t2r");
    assertThat(text.replaceAll("\\s+", " ")).contains("all this of the whole rig; below only t2r");
  }

  @Test
  void theTextDoesNotDependOnTheSystemsLanguage() {
    Locale before = Locale.getDefault();
    String here = Plans.print(Plans.demo(), UnitSystem.SI, null);
    String table = CsvTable.of(Plans.demo(), Plans.plan(Plans.demo()).advice(), null);
    try {
      for (String language : List.of("de-DE", "tr-TR", "ar-EG")) {
        Locale.setDefault(Locale.forLanguageTag(language));
        assertThat(Plans.print(Plans.demo(), UnitSystem.SI, null)).as(language).isEqualTo(here);
        assertThat(CsvTable.of(Plans.demo(), Plans.plan(Plans.demo()).advice(), null))
            .isEqualTo(table);
      }
    } finally {
      Locale.setDefault(before);
    }
  }

  /** Lines of each stop, from its own line to the next stop's; headings stand once a day. */
  private static List<List<String>> blocks(String text) {
    List<List<String>> blocks = new ArrayList<>();
    String heading = "";
    for (String line : text.lines().toList()) {
      if (line.equals("─".repeat(100))) {
        break;
      }
      heading = line.startsWith("  tires ") ? line : heading;
      if (STOP.matcher(line).matches()) {
        blocks.add(new ArrayList<>(List.of(heading)));
      }
      if (!blocks.isEmpty()) {
        blocks.get(blocks.size() - 1).add(line);
      }
    }
    return blocks;
  }

  /** The table of a block, its heading first. */
  private static List<String> table(List<String> block) {
    List<String> table = new ArrayList<>();
    String heading = "";
    for (String line : block) {
      heading = line.startsWith("  tires ") ? line : heading;
      if (line.matches("  [a-z][0-9]+[lr][io]?(?: .*|)")) {
        table.add(line);
      }
    }
    if (!table.isEmpty()) {
      table.add(0, heading);
    }
    return table;
  }

  private static String mark(Mark mark) {
    return mark == Mark.CLEAR ? "○" : mark == Mark.RECHECK ? "check" : mark.word();
  }

  private static List<String> names(String row) {
    return Arrays.stream(row.split("  +| (?=[^a-z])", 3)[1].split(" ", -1))
        .filter(word -> word.matches("[a-z][0-9]+[lr][io]?"))
        .toList();
  }

  private static String cell(String head, String row, String column) {
    int end = end(head, column);
    String before = row.substring(0, end);
    return before.substring(before.lastIndexOf(' ') + 1);
  }

  private static int end(String head, String column) {
    return head.indexOf(" " + column) + 1 + column.length();
  }

  private static String shortForm(Trip trip, TireAdvice tire) {
    return trip.rig().shortForm(tire.tire().fitted().position());
  }
}

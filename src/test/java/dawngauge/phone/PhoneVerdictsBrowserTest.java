package dawngauge.phone;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dawngauge.advice.Advice;
import dawngauge.advice.ReadTable;
import dawngauge.advice.StopReadTables;
import dawngauge.advice.TireAdvice;
import dawngauge.forecast.ReadingCheck;
import dawngauge.ledger.ReadWords;
import dawngauge.planner.Plan;
import dawngauge.planner.RoundAtStop;
import dawngauge.quantity.Entered;
import dawngauge.quantity.QuantityKind;
import dawngauge.quantity.UnitSystem;
import dawngauge.trip.LogEdits;
import dawngauge.trip.LogEvent;
import dawngauge.trip.ReadingState;
import dawngauge.trip.Remarks;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;

/** What the page for the phone tells of a reading is what the program tells of it. */
@ExtendWith(NeedsBrowser.class)
class PhoneVerdictsBrowserTest {

  private static final int COUNT = 2000;

  private static Object answers(Path folder, String script, List<Object> asked) throws IOException {
    try (PhoneBrowser browser = PhoneBrowser.open()) {
      browser.show(PhoneDemo.page(folder.resolve("trip.html"), PhoneDemo.TRIP, UnitSystem.US));
      return browser.run(script, asked);
    }
  }

  /** One that is asked, and what the page answers. */
  private record Asked(
      int visit, String tire, ReadingState state, Instant time, double psi, ZoneId zone) {

    Asked at(Instant then) {
      return new Asked(visit, tire, state, then, psi, zone);
    }
  }

  /**
   * Thousands of readings, each judged by the page and by the program as if it were noted. Where
   * they differ, the page says nothing but what the program says within 1 psi and a quarter of an
   * hour, with no figure in it more than 1 psi off, and leaves out nothing that it says throughout
   * that: between two tried figures the stronger mark holds, between two tried minutes what lies
   * between them or else the more careful. Above all that was tried the page asks for the program.
   */
  @Test
  void thePageTellsWhatTheProgramTells(@TempDir Path folder) throws IOException {
    List<Asked> asked = asked(new Random(20270406), COUNT);
    List<Object> script = new ArrayList<>();
    for (Asked each : asked) {
      script.add(
          List.of(
              each.visit(),
              each.state().word(),
              each.tire(),
              each.time().getEpochSecond() / 60,
              each.psi()));
    }
    @SuppressWarnings("unchecked")
    List<Map<String, Object>> told =
        (List<Map<String, Object>>)
            answers(
                folder,
                "return arguments[0].map(([stop, state, tire, minute, figure]) =>"
                    + " window.dawngauge.lookUp(window.dawngauge.data.stops[stop], state, tire,"
                    + " minute, figure, window.dawngauge.data.tried));",
                script);
    int exact = 0;
    List<String> wrong = new ArrayList<>();
    for (int i = 0; i < asked.size(); i++) {
      Asked one = asked.get(i);
      Map<String, Object> page = told.get(i);
      Judged program = judged(one, 0);
      assertThat(page).as("%s", one).isNotNull();
      Object expected = page.get("expected");
      if (program.check().first()) {
        assertThat(expected).isNull();
      } else {
        assertThat(((Number) expected).doubleValue())
            .as("%s", one)
            .isCloseTo(program.check().expected() / PSI, within(0.3));
      }
      Said said = Said.of(page);
      if (said.equals(program.said())) {
        exact++;
      } else if (page.get("mark") == null) {
        assertThat(one.psi()).as("%s", one).isGreaterThan(100);
      } else if (!near(one, said)) {
        wrong.add(one + "\n page    " + said + "\n program " + program.said());
      }
    }
    assertThat(wrong).isEmpty();
    assertThat(exact).isGreaterThan(asked.size() * 9 / 10);
  }

  private static final double PSI =
      Entered.of(QuantityKind.GAUGE_PRESSURE, "1 psi").value().pascals();

  /** Nothing but what is said within 1 psi and a quarter of an hour; all that is throughout it. */
  private static boolean near(Asked one, Said page) {
    List<Said> around = new ArrayList<>();
    for (int minutes : new int[] {0, -15, 15}) {
      Asked then = one.at(one.time().plusSeconds(minutes * 60L));
      if (lasts(then)) {
        for (double by : new double[] {-1, -0.5, 0, 0.5, 1}) {
          around.add(judged(then, by).said());
        }
      }
    }
    return around.stream().anyMatch(said -> said.mark().equals(page.mark()))
        && page.lines().stream().allMatch(line -> around.stream().anyMatch(said -> said.has(line)))
        && around.get(0).lines().stream()
            .filter(line -> around.stream().allMatch(said -> said.has(line)))
            .allMatch(page::has);
  }

  /** Whether a minute is one of the table. */
  private static boolean lasts(Asked one) {
    return PhoneDemo.TABLES.stream()
        .filter(stop -> stop.visit() == one.visit())
        .flatMap(stop -> stop.tables().stream())
        .filter(table -> table.state() == one.state())
        .map(ReadTable::slots)
        .anyMatch(
            slots ->
                !one.time().isBefore(slots.get(0).time())
                    && !one.time().isAfter(slots.get(slots.size() - 1).time()));
  }

  /** What is said of a reading. */
  private record Said(String mark, List<String> lines) {

    private static final Pattern NUMBER = Pattern.compile("\\d+(\\.\\d+)?");

    @SuppressWarnings("unchecked")
    static Said of(Map<String, Object> page) {
      List<String> lines = (List<String>) page.get("lines");
      return new Said(String.valueOf(page.get("mark")), lines == null ? List.of() : lines);
    }

    /** Whether it has a line, or one with figures at most 1 beside its. */
    boolean has(String line) {
      return lines.stream().anyMatch(own -> alike(own, line));
    }

    private static boolean alike(String one, String other) {
      List<Double> first = numbers(one);
      List<Double> second = numbers(other);
      boolean same =
          NUMBER.matcher(one).replaceAll("#").equals(NUMBER.matcher(other).replaceAll("#"));
      for (int i = 0; same && i < first.size(); i++) {
        same = Math.abs(first.get(i) - second.get(i)) <= 1;
      }
      return same;
    }

    private static List<Double> numbers(String text) {
      return NUMBER.matcher(text).results().map(found -> Double.valueOf(found.group())).toList();
    }
  }

  private record Judged(ReadingCheck check, Said said) {}

  private static Judged judged(Asked one, double beside) {
    LogEvent.Reading reading =
        new LogEvent.Reading(
            LogEdits.at(one.time(), one.zone()),
            one.tire(),
            Entered.of(
                QuantityKind.GAUGE_PRESSURE,
                String.format(Locale.ROOT, "%.1f psi", Math.max(0, one.psi() + beside))),
            PhoneDemo.TRIP.rig().gauges().get(0).name(),
            one.state(),
            null,
            null,
            Remarks.NONE);
    Advice advice = PhoneDemo.PLANNER.plan(LogEdits.with(PhoneDemo.TRIP, reading)).advice();
    TireAdvice tire =
        advice.stops().get(one.visit()).tires().stream()
            .filter(each -> each.tire().fitted().tire().id().equals(one.tire()))
            .findFirst()
            .orElseThrow();
    ReadingCheck check =
        tire.tire().readings().stream()
            .filter(each -> each.reading().equals(reading))
            .findFirst()
            .orElseThrow();
    List<String> lines =
        new ReadWords(PhoneDemo.TRIP, UnitSystem.US)
            .lines(new ReadTable.Band(0, 0, tire, tire), one.zone());
    return new Judged(check, new Said(tire.mark().word(), lines));
  }

  /** Times within the tables, figures from flat to over the limit, most near what is expected. */
  private static List<Asked> asked(Random random, int count) {
    List<Asked> asked = new ArrayList<>();
    Plan plan = PhoneDemo.PLANNER.plan(PhoneDemo.TRIP);
    while (asked.size() < count) {
      StopReadTables stop = PhoneDemo.TABLES.get(random.nextInt(PhoneDemo.TABLES.size()));
      if (stop.tables().isEmpty()) {
        continue;
      }
      ReadTable table = stop.tables().get(random.nextInt(stop.tables().size()));
      Instant from = table.slots().get(0).time();
      Instant to = table.slots().get(table.slots().size() - 1).time();
      long minutes = Duration.between(from, to).toMinutes();
      Instant time = from.plus(Duration.ofMinutes(random.nextInt((int) minutes + 1)));
      List<ReadTable.OfTire> tires = table.slots().get(0).tires();
      ReadTable.OfTire tire = tires.get(random.nextInt(tires.size()));
      double expected = tire.check().first() ? 70 : tire.check().expected() / PSI;
      double psi = random.nextInt(4) == 0 ? random.nextInt(95) : expected + random.nextInt(30) - 18;
      ZoneId zone = new RoundAtStop(plan, stop.visit()).stay().orElseThrow().zone();
      asked.add(
          new Asked(
              stop.visit(), tire.tire(), table.state(), time, Math.rint(Math.max(0, psi)), zone));
    }
    return asked;
  }
}

package dawngauge.report;

import static org.assertj.core.api.Assertions.assertThat;

import biweekly.Biweekly;
import biweekly.ICalVersion;
import biweekly.ICalendar;
import biweekly.component.VEvent;
import dawngauge.ledger.ReminderLine;
import dawngauge.problem.ProblemCode;
import java.io.StringReader;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.time.temporal.Temporal;
import java.util.ArrayList;
import java.util.List;
import net.fortuna.ical4j.data.CalendarBuilder;
import net.fortuna.ical4j.data.ParserException;
import net.fortuna.ical4j.model.Calendar;
import net.fortuna.ical4j.model.Property;
import net.fortuna.ical4j.model.component.CalendarComponent;
import net.fortuna.ical4j.model.property.DateProperty;
import net.fortuna.ical4j.validate.ValidationResult;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/**
 * Calendar files against RFC 5545 at the level of bytes, and before two judges that share nothing:
 * the library that writes them reads them again, and another one parses and validates them.
 */
class ReminderCalendarTest {

  private static final Instant NOW = Instant.parse("2027-03-01T12:00:00Z");

  @BeforeAll
  static void noFilesOfItsOwn() {
    System.setProperty(
        "net.fortuna.ical4j.timezone.cache.impl", "net.fortuna.ical4j.util.MapTimeZoneCache");
  }

  private static ReminderLine at(String key, String start, String place) {
    ZonedDateTime time = ZonedDateTime.parse(start);
    return new ReminderLine(
        key,
        "Gauge the tires cold: " + place,
        place,
        List.of("t1l: expected 80 psi (77–83); floor 65"),
        List.of("Never let air out of a warm tire."),
        ReminderLine.Figures.NONE,
        time.toInstant(),
        time.toInstant().plus(Duration.ofMinutes(45)),
        time.getZone(),
        List.of(Duration.ofMinutes(15), Duration.ZERO));
  }

  private static String written(List<ReminderLine> reminders) {
    return ReminderCalendar.of(
        "trip", "Spring haul", reminders, ReminderCalendar.Earlier.NONE, NOW);
  }

  private static Calendar judged(String text) {
    Calendar calendar;
    try {
      calendar = new CalendarBuilder().build(new StringReader(text));
    } catch (java.io.IOException | ParserException e) {
      throw new AssertionError(text, e);
    }
    ValidationResult result = calendar.validate();
    assertThat(result.getEntries()).isEmpty();
    ICalendar other = Biweekly.parse(text).first();
    assertThat(other.validate(ICalVersion.V2_0).isEmpty())
        .as(other.validate(ICalVersion.V2_0).toString())
        .isTrue();
    return calendar;
  }

  private static List<Instant> times(Calendar calendar, String property) {
    List<Instant> times = new ArrayList<>();
    for (CalendarComponent event : calendar.getComponents("VEVENT")) {
      DateProperty<?> found = event.<DateProperty<?>>getProperty(property).orElseThrow();
      Temporal time = found.getDate();
      times.add(Instant.from(time));
    }
    return times;
  }

  /**
   * Both sides of the border between Central and Mountain time, the days around the changes of the
   * clocks in the United States on 14 March and 7 November 2027 (15 U.S.C. 260a: second Sunday of
   * March, first Sunday of November, at 2 a.m.), both hours of the one that comes twice, and zones
   * that change at other times or not at all.
   */
  @Test
  void instantsAreReadBackByBothJudges() {
    List<ReminderLine> reminders =
        List.of(
            at("a", "2027-04-06T05:00-06:00[America/Denver]", "Lamar CO"),
            at("b", "2027-04-06T06:15-05:00[America/Chicago]", "Syracuse KS"),
            at("c", "2027-03-13T05:30-07:00[America/Denver]", "before the change"),
            at("d", "2027-03-14T05:30-06:00[America/Denver]", "after the change"),
            at("e", "2027-11-06T23:30-05:00[America/Chicago]", "the evening before"),
            at("f", "2027-11-07T01:30-05:00[America/Chicago]", "the first time"),
            at("g", "2027-11-07T01:30-06:00[America/Chicago]", "the second time"),
            at("h", "2027-07-01T05:00-07:00[America/Phoenix]", "no summer time"),
            at("i", "2027-10-30T06:00+02:00[Europe/Berlin]", "another rule"),
            at("j", "2027-10-31T06:00+01:00[Europe/Berlin]", "after that"));
    Calendar calendar = judged(written(reminders));
    assertThat(times(calendar, Property.DTSTART))
        .containsExactlyElementsOf(reminders.stream().map(ReminderLine::start).toList());
    assertThat(times(calendar, Property.DTEND))
        .containsExactlyElementsOf(reminders.stream().map(ReminderLine::end).toList());
    List<ReminderLine> again = ReminderCalendar.read(written(reminders)).get().open();
    assertThat(again.stream().map(ReminderLine::start))
        .containsExactlyElementsOf(reminders.stream().map(ReminderLine::start).toList());
    assertThat(again.stream().map(ReminderLine::end))
        .containsExactlyElementsOf(reminders.stream().map(ReminderLine::end).toList());
    assertThat(written(reminders)).contains("DTSTART;TZID=America/Denver:20270406T050000\r\n");
  }

  @Test
  void linesAreEndedByCrLfAndFoldedAt75OctetsBetweenCharacters() throws CharacterCodingException {
    String name = "Ærøskøbing – 東京都千代田区 🐎🐎🐎 ".repeat(20);
    byte[] bytes =
        written(List.of(at("a", "2027-04-06T05:00-06:00[America/Denver]", name)))
            .getBytes(StandardCharsets.UTF_8);
    int begin = 0;
    int lines = 0;
    int longest = 0;
    for (int i = 0; i < bytes.length; i++) {
      assertThat(bytes[i] == '\n').isEqualTo(i > 0 && bytes[i - 1] == '\r');
      if (bytes[i] == '\n') {
        int length = i - 1 - begin;
        longest = Math.max(longest, length);
        StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes, begin, length));
        begin = i + 1;
        lines++;
      }
    }
    assertThat(begin).as("the last line is ended too").isEqualTo(bytes.length);
    assertThat(longest).isBetween(72, 75);
    assertThat(lines).isGreaterThan(40);
  }

  @Test
  void alarmsSoundBeforeAndAtTheStart() {
    String text = written(List.of(at("a", "2027-04-06T05:00-06:00[America/Denver]", "Lamar CO")));
    VEvent event = Biweekly.parse(text).first().getEvents().get(0);
    assertThat(event.getAlarms()).hasSize(2);
    assertThat(text).contains("TRIGGER;RELATED=START:-PT15M\r\n", "ACTION:DISPLAY\r\n");
  }

  @Test
  void anExportAgainChangesWhatIsThereAndTakesBackWhatIsGoneOnce() {
    ReminderLine stays = at("stays/start", "2027-04-06T05:00-06:00[America/Denver]", "Lamar CO");
    ReminderLine goes = at("goes/start", "2027-04-07T05:00-06:00[America/Denver]", "Pueblo CO");
    ReminderLine later = at("stays/start", "2027-04-06T06:00-06:00[America/Denver]", "Lamar CO");
    String first = written(List.of(stays, goes));
    String second = again(first, List.of(later), "another name");
    String third = again(second, List.of(later), "another name");
    judged(second);
    List<VEvent> before = Biweekly.parse(first).first().getEvents();
    List<VEvent> after = Biweekly.parse(second).first().getEvents();
    assertThat(after)
        .extracting(e -> e.getUid().getValue())
        .containsExactlyElementsOf(before.stream().map(e -> e.getUid().getValue()).toList());
    assertThat(before).allMatch(e -> e.getSequence().getValue() == 0);
    assertThat(after).allMatch(e -> e.getSequence().getValue() == 1);
    assertThat(after.get(0).getDateStart().getValue().toInstant()).isEqualTo(later.start());
    assertThat(after.get(1).getStatus().isCancelled()).isTrue();
    assertThat(after.get(1).getAlarms()).isEmpty();
    assertThat(after.get(1).getDateStart().getValue().toInstant()).isEqualTo(goes.start());
    assertThat(Biweekly.parse(third).first().getEvents()).hasSize(1);
    assertThat(third).contains("SEQUENCE:2\r\n");
  }

  private static String again(String earlier, List<ReminderLine> reminders, String name) {
    return ReminderCalendar.of(
        name, name, reminders, ReminderCalendar.read(earlier).get(), NOW.plusSeconds(60));
  }

  @Test
  void uidsTellNothingOfThePeople() {
    String text =
        ReminderCalendar.of(
            "A. Person's haul",
            "haul",
            List.of(at("a", "2027-04-06T05:00-06:00[America/Denver]", "Lamar CO")),
            ReminderCalendar.Earlier.NONE,
            NOW);
    assertThat(text).doesNotContain("Person");
    assertThat(text).containsPattern("UID:[0-9a-f]{32}@dawngauge\\.invalid");
  }

  @Test
  void namesCannotBreakOutOfTheirEvent() {
    String hostile =
        "Lamar\r\nEND:VEVENT\r\nBEGIN:VEVENT\r\nUID:x\r\n, ; \\ \\n \u0007 \"quoted\" \u202Eturned";
    String text = written(List.of(at("a\n;b", "2027-04-06T05:00-06:00[America/Denver]", hostile)));
    Calendar calendar = judged(text);
    assertThat(calendar.getComponents("VEVENT")).hasSize(1);
    assertThat(Biweekly.parse(text).first().getEvents().get(0).getLocation().getValue())
        .isEqualTo(hostile.replace('\r', ' ').replace('\u0007', ' '));
    assertThat(ReminderCalendar.read(text).get().open().get(0).key()).isEqualTo("a\n;b");
  }

  @Test
  void whatIsNotOursIsRefused() {
    String ours = written(List.of(at("a", "2027-04-06T05:00-06:00[America/Denver]", "Lamar CO")));
    for (String text :
        List.of(
            "",
            "no calendar",
            "BEGIN:VCALENDAR\r\nVERSION:2.0\r\nPRODID:-//Another//EN\r\nEND:VCALENDAR\r\n",
            ours.replace("X-DAWNGAUGE-TRIP", "X-OTHER"),
            ours.replace("X-DAWNGAUGE-KEY:61", "X-DAWNGAUGE-KEY:zz"),
            "a".repeat((4 << 20) + 1))) {
      assertThat(ReminderCalendar.read(text).problems())
          .extracting(problem -> problem.code())
          .containsExactly(ProblemCode.NOT_OUR_CALENDAR);
    }
    assertThat(ReminderCalendar.read(ours).get().sequence()).isZero();
    assertThat(ReminderCalendar.read(ours).get().open().get(0).zone())
        .isEqualTo(ZoneId.of("America/Denver"));
  }
}

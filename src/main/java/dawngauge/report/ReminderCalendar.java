package dawngauge.report;

import biweekly.Biweekly;
import biweekly.ICalVersion;
import biweekly.ICalendar;
import biweekly.component.VAlarm;
import biweekly.component.VEvent;
import biweekly.io.TimezoneAssignment;
import biweekly.io.TimezoneInfo;
import biweekly.io.text.ICalWriter;
import biweekly.parameter.Related;
import biweekly.property.DateOrDateTimeProperty;
import biweekly.property.ICalProperty;
import biweekly.property.RawProperty;
import biweekly.property.Status;
import biweekly.property.Trigger;
import biweekly.util.DateTimeComponents;
import dawngauge.ledger.Ledger;
import dawngauge.ledger.ReminderLine;
import dawngauge.problem.Outcome;
import dawngauge.problem.Problem;
import dawngauge.problem.ProblemCode;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.DateTimeException;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Date;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TimeZone;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * Reminders as iCalendar text (RFC 5545): one event each, with alarms. The same reminder of the
 * same trip has the same UID in every export, so that a calendar which took the earlier one up
 * changes it instead of showing both; a reminder that is gone is exported once more as cancelled.
 *
 * <p>Times are local times of the stop's zone, with that zone's changes of the clock beside them;
 * times of an hour that the clocks show twice are in UTC, since local time cannot tell them apart.
 */
public final class ReminderCalendar {

  /** Longest line in octets, the line break left out (RFC 5545 section 3.1). */
  private static final int LINE = 75;

  /** Longest earlier export that is read, in characters; ours. */
  private static final int LONGEST = 4 << 20;

  private static final String KEY = "X-DAWNGAUGE-KEY";
  private static final String TRIP = "X-DAWNGAUGE-TRIP";
  private static final String PRODUCT = "-//Dawngauge//Tire reminders//EN";

  /** Control characters but the line break have no place in a text (RFC 5545 section 3.3.11). */
  private static final Pattern CONTROLS = Pattern.compile("[\\p{Cc}&&[^\n]]|\\p{Cs}");

  private final Map<ZoneId, TimezoneAssignment> zones = new LinkedHashMap<>();
  private final ICalendar calendar = new ICalendar();
  private final String tripKey;
  private final int sequence;
  private final Instant now;

  private ReminderCalendar(String tripKey, int sequence, Instant now) {
    this.tripKey = tripKey;
    this.sequence = sequence;
    this.now = now;
  }

  /**
   * An earlier export.
   *
   * @param sequence its number
   * @param tripKey what its UIDs were made from; empty where there was none
   * @param open the reminders that were not cancelled in it, without alarms
   */
  public record Earlier(int sequence, String tripKey, List<ReminderLine> open) {

    /** No export so far. */
    public static final Earlier NONE = new Earlier(-1, "", List.of());

    /** Copies the list. */
    public Earlier {
      open = List.copyOf(open);
    }
  }

  /**
   * The calendar text.
   *
   * @param tripKey tells this trip from others; only its digest is written, and where there is an
   *     earlier export that export's is kept, so that a trip may get another name
   * @param name name of the calendar
   * @param reminders the reminders now
   * @param earlier the export before this one, whose reminders that are gone are cancelled
   * @param now the time of this export
   */
  public static String of(
      String tripKey, String name, List<ReminderLine> reminders, Earlier earlier, Instant now) {
    String key = earlier.tripKey().isEmpty() ? digest(tripKey) : earlier.tripKey();
    ReminderCalendar writer = new ReminderCalendar(key, earlier.sequence() + 1, now);
    writer.calendar.addExperimentalProperty(TRIP, key);
    writer.calendar.setProductId(PRODUCT);
    writer.calendar.setName(calm(name));
    writer.calendar.setDescription(String.join(" ", Ledger.CAUTIONS));
    reminders.forEach(reminder -> writer.add(reminder, false));
    for (ReminderLine gone : earlier.open()) {
      if (reminders.stream().noneMatch(reminder -> reminder.key().equals(gone.key()))) {
        writer.add(gone, true);
      }
    }
    return folded(writer.text());
  }

  private void add(ReminderLine reminder, boolean cancelled) {
    VEvent event = new VEvent();
    event.setUid(digest(tripKey + "/" + reminder.key()) + "@dawngauge.invalid");
    event.setDateTimeStamp(Date.from(now));
    event.setLastModified(Date.from(now));
    event.setSequence(sequence);
    event.setSummary(calm((cancelled ? "No longer: " : "") + reminder.summary()));
    event.setDescription(calm(reminder.text()));
    event.setLocation(calm(reminder.place()));
    event.setDateStart(Date.from(reminder.start()), true);
    event.setDateEnd(Date.from(reminder.end()), true);
    event.setTransparency(true);
    event.addExperimentalProperty(KEY, hex(reminder.key()));
    boolean told = told(reminder.start(), reminder.zone()) && told(reminder.end(), reminder.zone());
    if (told) {
      inZone(event.getDateStart(), reminder);
      inZone(event.getDateEnd(), reminder);
    }
    if (cancelled) {
      event.setStatus(Status.cancelled());
    } else {
      for (Duration before : reminder.alarms()) {
        event.addAlarm(alarm(before, reminder.summary()));
      }
    }
    calendar.addEvent(event);
  }

  private static VAlarm alarm(Duration before, String summary) {
    biweekly.util.Duration lead =
        biweekly.util.Duration.builder()
            .prior(!before.isZero())
            .minutes((int) before.toMinutes())
            .build();
    return VAlarm.display(new Trigger(lead, Related.START), calm(summary));
  }

  /** Whether a local time of the zone means this instant and no other. */
  private static boolean told(Instant time, ZoneId zone) {
    return zone.getRules().getValidOffsets(time.atZone(zone).toLocalDateTime()).size() == 1;
  }

  private void inZone(DateOrDateTimeProperty property, ReminderLine reminder) {
    TimezoneAssignment zone =
        zones.computeIfAbsent(
            reminder.zone(),
            id ->
                new TimezoneAssignment(
                    TimeZone.getTimeZone(id), ZoneComponent.of(id, reminder.start())));
    TimezoneInfo info = calendar.getTimezoneInfo();
    info.setTimezone((ICalProperty) property, zone);
  }

  private String text() {
    StringWriter out = new StringWriter();
    try (ICalWriter writer = new ICalWriter(out, ICalVersion.V2_0)) {
      writer.getVObjectWriter().getFoldedLineWriter().setLineLength(null);
      writer.write(calendar);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return out.toString();
  }

  /** Lines of at most 75 octets, each ended by CR and LF; none begins within a character. */
  private static String folded(String text) {
    StringBuilder out = new StringBuilder();
    for (String line : text.lines().toList()) {
      int octets = 0;
      for (int i = 0; i < line.length(); ) {
        int point = line.codePointAt(i);
        int size = Character.toString(point).getBytes(StandardCharsets.UTF_8).length;
        if (octets + size > LINE) {
          out.append("\r\n ");
          octets = 1;
        }
        out.appendCodePoint(point);
        octets += size;
        i += Character.charCount(point);
      }
      out.append("\r\n");
    }
    return out.toString();
  }

  private static String calm(String text) {
    return CONTROLS.matcher(text).replaceAll(" ");
  }

  private static String digest(String text) {
    try {
      MessageDigest digest = MessageDigest.getInstance("SHA-256");
      byte[] bytes = digest.digest(text.getBytes(StandardCharsets.UTF_8));
      return HexFormat.of().formatHex(bytes, 0, 16);
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java has SHA-256", e);
    }
  }

  /** Keys hold ids that a person typed, with any characters. */
  private static String hex(String key) {
    return HexFormat.of().formatHex(key.getBytes(StandardCharsets.UTF_8));
  }

  /**
   * Reads an earlier export that is to be brought up to date; one of another trip is refused, since
   * its events would be called off. Names tell no trips apart: it is the same one as long as half
   * of what is open is still to be reminded of.
   */
  public static Outcome<Earlier> read(String text, List<ReminderLine> reminders) {
    Outcome<Earlier> read = read(text);
    if (!read.hasValue()) {
      return read;
    }
    List<ReminderLine> open = read.get().open();
    long gone =
        open.stream().filter(old -> reminders.stream().noneMatch(now -> same(old, now))).count();
    return 2 * gone > open.size()
        ? Outcome.failed(Problem.of(ProblemCode.CALENDAR_OF_ANOTHER_TRIP, "", String.valueOf(gone)))
        : read;
  }

  private static boolean same(ReminderLine one, ReminderLine other) {
    return one.key().equals(other.key()) && one.place().equals(other.place());
  }

  /** Reads an earlier export. */
  public static Outcome<Earlier> read(String text) {
    if (text.length() > LONGEST) {
      return Outcome.failed(Problem.of(ProblemCode.NOT_OUR_CALENDAR, ""));
    }
    ICalendar calendar = Biweekly.parse(text).first();
    if (calendar == null
        || calendar.getProductId() == null
        || !PRODUCT.equals(calendar.getProductId().getValue())) {
      return Outcome.failed(Problem.of(ProblemCode.NOT_OUR_CALENDAR, ""));
    }
    RawProperty trip = calendar.getExperimentalProperty(TRIP);
    if (trip == null || !trip.getValue().matches("[0-9a-f]{32}")) {
      return Outcome.failed(Problem.of(ProblemCode.NOT_OUR_CALENDAR, ""));
    }
    int last = -1;
    List<ReminderLine> open = new ArrayList<>();
    for (VEvent event : calendar.getEvents()) {
      RawProperty key = event.getExperimentalProperty(KEY);
      boolean sound =
          key != null
              && key.getValue().matches("([0-9a-f]{2})+")
              && event.getDateStart() != null
              && event.getDateEnd() != null
              && event.getSequence() != null;
      if (!sound || key == null) {
        return Outcome.failed(Problem.of(ProblemCode.NOT_OUR_CALENDAR, ""));
      }
      last = Math.max(last, event.getSequence().getValue());
      if (event.getStatus() == null || !event.getStatus().isCancelled()) {
        open.add(line(calendar, event, key.getValue()));
      }
    }
    return Outcome.of(new Earlier(last, trip.getValue(), open));
  }

  private static ReminderLine line(ICalendar calendar, VEvent event, String key) {
    TimezoneAssignment assigned = calendar.getTimezoneInfo().getTimezone(event.getDateStart());
    ZoneId zone = zone(assigned);
    return new ReminderLine(
        new String(HexFormat.of().parseHex(key), StandardCharsets.UTF_8),
        event.getSummary() == null ? "" : event.getSummary().getValue(),
        event.getLocation() == null ? "" : event.getLocation().getValue(),
        List.of(),
        event.getDescription() == null ? List.of() : List.of(event.getDescription().getValue()),
        ReminderLine.Figures.NONE,
        instant(event.getDateStart(), assigned, zone),
        instant(event.getDateEnd(), assigned, zone),
        zone,
        List.of());
  }

  private static ZoneId zone(@Nullable TimezoneAssignment assigned) {
    try {
      return assigned == null || assigned.getComponent() == null
          ? ZoneOffset.UTC
          : ZoneId.of(assigned.getComponent().getTimezoneId().getValue());
    } catch (DateTimeException unknown) {
      return ZoneOffset.UTC;
    }
  }

  /**
   * The time by Java's own rules of the zone: the library misjudges the hours around a change of
   * the clocks where it goes by a VTIMEZONE.
   */
  private static Instant instant(
      DateOrDateTimeProperty property, @Nullable TimezoneAssignment assigned, ZoneId zone) {
    DateTimeComponents typed = property.getValue().getRawComponents();
    return assigned == null || typed == null
        ? property.getValue().toInstant()
        : LocalDateTime.of(
                typed.getYear(),
                typed.getMonth(),
                typed.getDate(),
                typed.getHour(),
                typed.getMinute(),
                typed.getSecond())
            .atZone(zone)
            .toInstant();
  }
}

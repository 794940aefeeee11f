package dawngauge.report;

import biweekly.component.DaylightSavingsTime;
import biweekly.component.Observance;
import biweekly.component.StandardTime;
import biweekly.component.VTimezone;
import biweekly.util.DateTimeComponents;
import biweekly.util.DayOfWeek;
import biweekly.util.Frequency;
import biweekly.util.Recurrence;
import biweekly.util.UtcOffset;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.zone.ZoneOffsetTransition;
import java.time.zone.ZoneOffsetTransitionRule;
import java.time.zone.ZoneRules;
import org.jspecify.annotations.Nullable;

/**
 * A time zone as iCalendar describes it (RFC 5545 section 3.6.5), from Java's own rules: the yearly
 * rules by which its clocks change, begun in the year before a time, or its one offset.
 */
final class ZoneComponent {

  private ZoneComponent() {}

  static VTimezone of(ZoneId zone, Instant around) {
    ZoneRules rules = zone.getRules();
    VTimezone component = new VTimezone(zone.getId());
    int year = around.atZone(zone).getYear() - 1;
    for (ZoneOffsetTransitionRule rule : rules.getTransitionRules()) {
      ZoneOffsetTransition change = rule.createTransition(year);
      add(
          component,
          rules.isDaylightSavings(change.getInstant()),
          change.getDateTimeBefore(),
          change.getOffsetBefore(),
          change.getOffsetAfter(),
          yearly(rule, change.getDateTimeBefore()));
    }
    if (rules.getTransitionRules().isEmpty()) {
      ZoneOffset offset = rules.getOffset(around);
      LocalDateTime begin = LocalDateTime.of(1970, 1, 1, 0, 0);
      add(component, false, begin, offset, offset, null);
    }
    return component;
  }

  private static void add(
      VTimezone component,
      boolean daylight,
      LocalDateTime local,
      ZoneOffset from,
      ZoneOffset to,
      @Nullable Recurrence yearly) {
    Observance observance = daylight ? new DaylightSavingsTime() : new StandardTime();
    observance.setDateStart(
        new DateTimeComponents(
            local.getYear(),
            local.getMonthValue(),
            local.getDayOfMonth(),
            local.getHour(),
            local.getMinute(),
            local.getSecond(),
            false));
    observance.setTimezoneOffsetFrom(new UtcOffset(from.getTotalSeconds() * 1000L));
    observance.setTimezoneOffsetTo(new UtcOffset(to.getTotalSeconds() * 1000L));
    observance.setRecurrenceRule(yearly);
    if (observance instanceof DaylightSavingsTime summer) {
      component.addDaylightSavingsTime(summer);
    } else if (observance instanceof StandardTime winter) {
      component.addStandardTime(winter);
    }
  }

  /** "Second Sunday of March", "last Sunday of October", or a weekday on or after a day. */
  private static Recurrence yearly(ZoneOffsetTransitionRule rule, LocalDateTime change) {
    Recurrence.Builder yearly =
        new Recurrence.Builder(Frequency.YEARLY).byMonth(change.getMonthValue());
    java.time.DayOfWeek weekday = rule.getDayOfWeek();
    int day = rule.getDayOfMonthIndicator();
    if (weekday == null) {
      return yearly.byMonthDay(change.getDayOfMonth()).build();
    }
    DayOfWeek name = DayOfWeek.valueOf(weekday.name());
    if (day == -1) {
      return yearly.byDay(-1, name).build();
    } else if (day > 0 && day % 7 == 1) {
      return yearly.byDay(day / 7 + 1, name).build();
    }
    for (int later = 0; later < 7; later++) {
      yearly.byMonthDay(day > 0 ? day + later : day - later);
    }
    return yearly.byDay(name).build();
  }
}

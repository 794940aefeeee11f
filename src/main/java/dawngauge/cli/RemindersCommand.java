package dawngauge.cli;

import dawngauge.advice.Advice;
import dawngauge.advice.Reminder;
import dawngauge.ledger.Ledger;
import dawngauge.ledger.ReminderLine;
import dawngauge.ledger.ReminderPage;
import dawngauge.planner.Plan;
import dawngauge.planner.Planner;
import dawngauge.planner.WeatherAccess;
import dawngauge.problem.Outcome;
import dawngauge.problem.ProblemCode;
import dawngauge.quantity.UnitSystem;
import dawngauge.report.JsonReminders;
import dawngauge.report.PageText;
import dawngauge.report.ReminderCalendar;
import dawngauge.trip.Trip;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Prints or exports when the crew is to look at the tires. */
@Command(
    name = "reminders",
    description =
        "Print when to gauge and set the tires, or write it as a calendar file with alarms.")
final class RemindersCommand extends TripCommand {

  private final WeatherAccess weather;

  @Option(
      names = "--calendar",
      paramLabel = "FILE",
      description =
          "Write a calendar file there (iCalendar); one that this command wrote before is brought up"
              + " to date, so that calendars change what they have.")
  private String calendar = "";

  @Option(
      names = "--replace",
      description = "Let --calendar call off what the file has of another trip.")
  private boolean replace;

  @Mixin private final FormOption form = new FormOption();

  RemindersCommand(Planner planner, Console console, WeatherAccess weather) {
    super(planner, console);
    this.weather = weather;
  }

  @Override
  Optional<String> clash() {
    return form.json() && !calendar.isEmpty()
        ? Optional.of("--calendar writes a calendar file; leave it or --format json away")
        : Optional.empty();
  }

  @Override
  int run(Trip trip, UnitSystem units) {
    Plan planned = planner.plan(trip);
    Advice advice = planned.advice();
    if (advice == null) {
      return untimed(planned.problems());
    }
    Ledger ledger = Ledger.of(trip, advice, planned.problems(), planned.fitness(), units, null);
    List<Reminder> due = planned.reminders();
    List<ReminderLine> reminders = ReminderLine.all(advice, due, ledger);
    if (calendar.isEmpty()) {
      String text =
          form.json()
              ? JsonReminders.of(
                  trip,
                  advice,
                  due,
                  reminders,
                  problems(planned.problems()),
                  planned.fitness(),
                  units)
              : PageText.of(ReminderPage.of(trip, reminders), false);
      return print(text);
    }
    Outcome<ReminderCalendar.Earlier> earlier =
        output()
            .existing(calendar)
            .map(there -> there.then(text -> earlier(text, reminders)))
            .orElse(Outcome.of(ReminderCalendar.Earlier.NONE));
    if (!earlier.hasValue()) {
      boolean other = earlier.problems().get(0).code() == ProblemCode.CALENDAR_OF_ANOTHER_TRIP;
      return unknown(
          calendar
              + ": "
              + earlier.problems().get(0).text()
              + (other ? ", or call them off with --replace" : ""));
    }
    String text =
        ReminderCalendar.of(trip.name(), trip.name(), reminders, earlier.get(), weather.now());
    return write(text, calendar, true);
  }

  private Outcome<ReminderCalendar.Earlier> earlier(String text, List<ReminderLine> reminders) {
    return replace ? ReminderCalendar.read(text) : ReminderCalendar.read(text, reminders);
  }
}

package dawngauge.cli;

import dawngauge.advice.Advice;
import dawngauge.advice.Reminder;
import dawngauge.ledger.Ledger;
import dawngauge.ledger.ReminderLine;
import dawngauge.ledger.ReminderPage;
import dawngauge.planner.Plan;
import dawngauge.planner.Planner;
import dawngauge.planner.WeatherDesk;
import dawngauge.problem.Outcome;
import dawngauge.problem.ProblemCode;
import dawngauge.quantity.UnitSystem;
import dawngauge.report.JsonReminders;
import dawngauge.report.PageText;
import dawngauge.report.ReminderCalendar;
import dawngauge.trip.Trip;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Prints or exports when the crew is to look at the tires. */
@Command(
    name = "reminders",
    description =
        "Print when to gauge and set the tires, or write it as a calendar file with alarms.")
final class RemindersCommand implements Callable<Integer> {

  private final Planner planner;
  private final Console console;
  private final WeatherDesk weather;

  @Parameters(index = "0", paramLabel = "FILE", description = "Trip file; - is standard input.")
  private String file = "";

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

  @Mixin private final UnitsOption unitsOption = new UnitsOption();

  RemindersCommand(Planner planner, Console console, WeatherDesk weather) {
    this.planner = planner;
    this.console = console;
    this.weather = weather;
  }

  @Override
  public Integer call() {
    if (form.json() && !calendar.isEmpty()) {
      console.err().println("--calendar writes a calendar file; leave it or --format json away");
      return ExitCode.USAGE;
    }
    Outcome<Trip> opened = TripArgument.toShow(planner, console, file);
    if (!opened.hasValue()) {
      return TripArgument.refuse(console, file, opened.problems());
    }
    Trip trip = opened.get();
    UnitSystem units = unitsOption.of(planner, trip);
    Plan planned = planner.plan(trip);
    Advice advice = planned.advice();
    if (advice == null) {
      return TripArgument.untimed(console, file, planned.problems());
    }
    Ledger ledger = Ledger.of(trip, advice, planned.problems(), planned.fitness(), units, null);
    List<Reminder> due = planned.reminders();
    List<ReminderLine> reminders = ReminderLine.all(advice, due, ledger);
    Output output = new Output(planner, console);
    if (calendar.isEmpty()) {
      String text =
          form.json()
              ? JsonReminders.of(
                  trip,
                  advice,
                  due,
                  reminders,
                  TripArgument.problems(opened, planned.problems()),
                  planned.fitness(),
                  units)
              : PageText.of(ReminderPage.of(trip, reminders), false);
      return output.write(text, TripArgument.STANDARD, file, false);
    }
    Outcome<ReminderCalendar.Earlier> earlier =
        output
            .existing(calendar)
            .map(there -> there.then(text -> earlier(text, reminders)))
            .orElse(Outcome.of(ReminderCalendar.Earlier.NONE));
    if (!earlier.hasValue()) {
      boolean other = earlier.problems().get(0).code() == ProblemCode.CALENDAR_OF_ANOTHER_TRIP;
      console
          .err()
          .println(
              calendar
                  + ": "
                  + earlier.problems().get(0).text()
                  + (other ? ", or call them off with --replace" : ""));
      return ExitCode.CONTENT;
    }
    String text =
        ReminderCalendar.of(trip.name(), trip.name(), reminders, earlier.get(), weather.now());
    return output.write(text, calendar, file, true);
  }

  private Outcome<ReminderCalendar.Earlier> earlier(String text, List<ReminderLine> reminders) {
    return replace ? ReminderCalendar.read(text) : ReminderCalendar.read(text, reminders);
  }
}

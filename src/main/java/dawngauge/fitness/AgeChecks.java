package dawngauge.fitness;

import dawngauge.explain.Authority;
import dawngauge.explain.Phrase;
import dawngauge.problem.Outcome;
import dawngauge.rules.FittedTire;
import dawngauge.tire.DateCode;
import dawngauge.trip.Spare;
import dawngauge.trip.Tire;
import java.time.LocalDate;
import java.time.Period;
import java.time.temporal.ChronoUnit;
import org.jspecify.annotations.Nullable;

/** How old tires are on the last day of the trip, by their date codes. */
final class AgeChecks {

  private static final Authority CODE = Authority.regulation("49 CFR 574.5");
  private static final Authority MAKERS =
      new Authority(
          Authority.Kind.PUBLISHED, "tire makers advise replacement at 6 to 10 years (NHTSA)");

  /** From this age in years on trailer tires are due; common practice, no source. */
  private static final int TRAILER_DUE = 5;

  /** Least age in years at which makers advise to replace (NHTSA). */
  private static final int LEAST_ADVISED = 6;

  private AgeChecks() {}

  static void check(Inspection inspection, GatheredDefects findings) {
    LocalDate date = inspection.lastDate().orElse(null);
    if (date == null) {
      findings
          .trip()
          .add(
              FindingKind.NO_TRIP_DATE,
              Severity.KNOW,
              Phrase.of("no stop has a date: the tires' ages are not judged"),
              Phrase.of("type when the rig leaves the first stop"),
              CODE);
    }
    for (FittedTire wheel : inspection.wheels()) {
      tire(wheel.tire(), wheel.onTrailer(), date, findings.tire(wheel.position()));
    }
    for (Spare spare : inspection.rig().spares()) {
      Tire tire = inspection.rig().tire(spare.tire()).orElse(null);
      if (tire != null) {
        boolean trailer =
            SparePlaces.of(inspection, spare).stream().anyMatch(fit -> fit.place().onTrailer());
        tire(tire, trailer, date, findings.spare(spare));
      }
    }
  }

  private static void tire(
      Tire tire, boolean trailer, @Nullable LocalDate date, GatheredDefects.Place place) {
    String text = tire.dateCode();
    if (text == null) {
      place.add(
          FindingKind.NO_DATE_CODE,
          Severity.KNOW,
          Phrase.of("no date code: its age is not known"),
          Phrase.of(
              "read the last four digits of its identification number, week and year: on one side"
                  + " of the tire only, it may be the inner one"),
          Authority.commonPractice());
      return;
    }
    Outcome<DateCode> read = DateCode.parse(text);
    if (!read.hasValue()) {
      place.add(
          FindingKind.DATE_CODE_UNREADABLE,
          Severity.MEND,
          Phrase.of("{0}", read.problems().get(0).text()),
          Phrase.of("read it again; a tire of unknown age counts as old"),
          CODE);
    } else if (date != null) {
      age(read.get(), trailer, date, place);
    }
  }

  private static void age(
      DateCode code, boolean trailer, LocalDate date, GatheredDefects.Place place) {
    if (!code.decadeKnown()) {
      place.add(
          FindingKind.OLD_TIRE,
          Severity.STOP,
          Phrase.of(
              "date code {0} has three digits, as was the rule up to 2000: it is over {1} years old",
              code.code(), whole(code.weekEnd(), date)),
          Phrase.of("replace it"),
          CODE);
      return;
    }
    if (code.weekStart().isAfter(date)) {
      place.add(
          FindingKind.DATE_CODE_UNREADABLE,
          Severity.MEND,
          Phrase.of(
              "date code {0} means the week from {1}, after the trip",
              code.code(), code.weekStart()),
          Phrase.of("read it again; a tire of unknown age counts as old"),
          CODE);
      return;
    }
    long years = whole(code.weekStart(), date);
    Period age = Period.between(code.weekStart(), date);
    Phrase what =
        Phrase.of(
            "made in the week from {0} (date code {1}): {2} and {3} old on {4}",
            code.weekStart(),
            code.code(),
            Words.count(age.getYears(), "year"),
            Words.count(age.getMonths(), "month"),
            date);
    if (years >= DateCode.MOST_YEARS) {
      place.add(
          FindingKind.OLD_TIRE,
          trailer ? Severity.STOP : Severity.MEND,
          what,
          Phrase.of("replace it, whatever its tread"),
          MAKERS);
    } else if (years >= LEAST_ADVISED) {
      place.add(
          FindingKind.OLD_TIRE,
          trailer ? Severity.MEND : Severity.KNOW,
          what,
          trailer
              ? Phrase.of("replace it, whatever its tread")
              : Phrase.of("have it looked at; replace it by ten years, whatever its tread"),
          MAKERS);
    } else if (trailer && years >= TRAILER_DUE) {
      place.add(
          FindingKind.OLD_TIRE,
          Severity.KNOW,
          what,
          Phrase.of(
              "trailer tires are replaced at five to six years, whatever their tread; covers keep the"
                  + " sun off while the trailer stands"),
          Authority.commonPractice());
    }
  }

  private static long whole(LocalDate from, LocalDate to) {
    return ChronoUnit.YEARS.between(from, to);
  }
}

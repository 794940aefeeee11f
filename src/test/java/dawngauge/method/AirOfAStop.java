package dawngauge.method;

import dawngauge.geo.Coordinate;
import dawngauge.trip.AmbientEntry;
import dawngauge.trip.Provenance;
import dawngauge.trip.Stop;
import dawngauge.trip.Trip;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/** Section 3: the air of one stop by what is given for it. */
final class AirOfAStop implements Air.Course {
  private static final double[] MAXIMUM = {3.54, 3.90, 4.34, 4.83, 5.36, 6.03, 6.72};
  private static final double[] MINIMUM = {5.14, 5.63, 5.62, 5.61, 5.66, 5.89, 5.96};

  private record Figures(
      LocalDate date,
      double low,
      double high,
      double sigma,
      boolean measured,
      LocalDate given,
      long lead) {}

  private final ZoneId zone;
  private final Coordinate place;
  private final TreeMap<Double, Double> hours = new TreeMap<>();
  private final TreeMap<LocalDate, Figures> days = new TreeMap<>();
  private final Map<LocalDate, Sun> suns = new HashMap<>();
  private double steady = Double.NaN;
  private double typedSigma = Double.NaN;
  private double since = Double.NaN;
  private boolean feed;
  private boolean measured;
  private boolean typicalBehind;

  private AirOfAStop(Stop stop, ZoneId zone) {
    this.zone = zone;
    this.place = Objects.requireNonNull(stop.coordinate());
  }

  /** The air of a stop of a trip; null where nothing is given. */
  static @Nullable AirOfAStop of(Trip trip, Times times, int stop) {
    Stop there = trip.route().stops().get(stop);
    AirOfAStop air = new AirOfAStop(there, times.zone[stop]);
    boolean some = false;
    for (AmbientEntry entry : trip.ambient()) {
      if (entry.stop().equals(there.id()) && entry.along() == null) {
        air.take(entry, times.arrive[0]);
        some = true;
      }
    }
    return some ? air : null;
  }

  private void take(AmbientEntry entry, double start) {
    boolean here = entry.provenance().kind() == Provenance.Kind.MEASURED;
    double assumed = here ? 2 : Double.NaN;
    double typed = entry.uncertainty() == null ? assumed : entry.uncertainty().value().kelvins();
    Instant told = entry.provenance().issued();
    if (entry.figure() instanceof AmbientEntry.Hourly given) {
      for (AmbientEntry.Hourly.At at : given.hours()) {
        hours.put(Times.of(at.time()), at.temperature().value().kelvins());
      }
      measured = here;
      feed = entry.provenance().kind() == Provenance.Kind.FEED;
      since = told == null ? start : told.getEpochSecond();
      typedSigma = typed;
    } else if (entry.figure() instanceof AmbientEntry.Steady given) {
      measured = here;
      steady = given.temperature().value().kelvins();
      since = told == null ? start : told.getEpochSecond();
      typedSigma = typed;
    } else if (entry.figure() instanceof AmbientEntry.LowHigh given) {
      LocalDate from = Times.date(told == null ? start : told.getEpochSecond(), zone);
      typicalBehind = entry.provenance().kind() == Provenance.Kind.TYPICAL;
      days.put(
          given.date(),
          new Figures(
              given.date(),
              given.low().value().kelvins(),
              given.high().value().kelvins(),
              typed,
              here,
              from,
              Math.max(0, ChronoUnit.DAYS.between(from, given.date()))));
    }
  }

  /** Hours at which the air bends, in epoch seconds: given ones, lows about the stay. */
  List<Double> bends(double from, double to) {
    List<Double> lows = new ArrayList<>(hours.keySet());
    if (days.isEmpty() || !(hours.isEmpty() || goesOnTypical())) {
      return lows;
    }
    for (int day = -1; day <= 1 + ChronoUnit.DAYS.between(date(from), date(to)); day++) {
      double low = low(date(from).plusDays(day));
      boolean behind = hours.isEmpty() || low > hours.lastKey();
      if (behind && low >= from - 43_200 && low <= to + 43_200) {
        lows.add(low);
      }
    }
    return lows;
  }

  @Override
  public Air at(double t) {
    LocalDate today = date(t);
    boolean minimum = dawn(t);
    boolean byDays = hours.isEmpty() && Double.isNaN(steady);
    boolean known = byDays ? figures(today).measured : measured;
    double lift = minimum && !known ? 5.0 / 9 : 0;
    if (goesOnTypical() && t > hours.lastKey()) {
      double seam = hours.lastKey();
      Air last = at(seam);
      double left = Math.exp(-(t - seam) / 86_400);
      double typical = ofDays(today, minimum);
      double sigma = typical + (last.sigma() - typical) * left;
      double off = last.kelvins() - byDays(seam, date(seam));
      return new Air(byDays(t, today) + off * left, Math.max(last.sigma(), sigma), lift, false);
    } else if (!hours.isEmpty()) {
      double outside = Math.max(0, Math.max(hours.firstKey() - t, t - hours.lastKey()));
      return new Air(byHours(t), ofMoment(t, minimum) + 0.5 * outside / 3600, lift, false);
    } else if (!Double.isNaN(steady)) {
      return new Air(steady, ofMoment(t, minimum), lift, false);
    }
    return new Air(byDays(t, today), ofDays(today, minimum), lift, false);
  }

  private double ofDays(LocalDate today, boolean minimum) {
    Figures of = figures(today);
    long lead = Math.max(of.lead, ChronoUnit.DAYS.between(of.given, today));
    return Double.isNaN(of.sigma) ? byLead(lead, minimum) : of.sigma;
  }

  private double ofMoment(double t, boolean minimum) {
    long lead = (long) Math.max(0, Math.floor((t - since) / 86_400));
    return Double.isNaN(typedSigma) ? byLead(lead, minimum) : typedSigma;
  }

  /** Whether the minimum's error holds here. */
  boolean dawn(double t) {
    return t <= sun(date(t)).rise() + 7200;
  }

  /** Whether a weather service's hours end and typical days go on. */
  private boolean goesOnTypical() {
    return feed && typicalBehind;
  }

  private double byHours(double t) {
    Map.Entry<Double, Double> before = hours.floorEntry(t);
    Map.Entry<Double, Double> after = hours.ceilingEntry(t);
    if (before == null || after == null) {
      return (before == null ? hours.firstEntry() : before).getValue();
    } else if (after.getKey().equals(before.getKey())) {
      return before.getValue();
    }
    double part = (t - before.getKey()) / (after.getKey() - before.getKey());
    return before.getValue() + part * (after.getValue() - before.getValue());
  }

  static double byLead(long lead, boolean minimum) {
    if (lead > 6) {
      throw new IllegalStateException("no haul is forecast further ahead");
    }
    return (minimum ? MINIMUM : MAXIMUM)[(int) lead] * 5 / 9;
  }

  private double byDays(double t, LocalDate today) {
    if (t < low(today)) {
      return byNight(t, today.minusDays(1), today);
    } else if (t > sun(today).set()) {
      return t < low(today.plusDays(1))
          ? byNight(t, today, today.plusDays(1))
          : byDay(t, today.plusDays(1));
    }
    return byDay(t, today);
  }

  private double byDay(double t, LocalDate day) {
    Sun sun = sun(day);
    Figures of = figures(day);
    double length = sun.set() - sun.rise() + 3.72 * 3600;
    return of.low + (of.high - of.low) * Math.sin(Math.PI * (t - low(day)) / length);
  }

  private double byNight(double t, LocalDate before, LocalDate next) {
    double dusk = sun(before).set();
    if (t <= dusk) {
      return byDay(t, before);
    }
    double night = sun(next).rise() - dusk;
    double toLow = low(next) - dusk;
    double s = t - dusk;
    double left =
        Math.exp(-2.20 * s / night) - Math.exp(-2.20 * toLow / night) * Math.pow(s / toLow, 2);
    double low = figures(next).low;
    return low + (byDay(dusk, before) - low) * left;
  }

  private double low(LocalDate day) {
    return sun(day).rise() - 0.17 * 3600;
  }

  private Figures figures(LocalDate date) {
    Figures best = days.firstEntry().getValue();
    for (Figures each : days.values()) {
      long off = Math.abs(ChronoUnit.DAYS.between(each.date, date));
      best = off < Math.abs(ChronoUnit.DAYS.between(best.date, date)) ? each : best;
    }
    return best;
  }

  private LocalDate date(double t) {
    return Times.date(t, zone);
  }

  private Sun sun(LocalDate day) {
    return suns.computeIfAbsent(day, date -> new Sun(date, place));
  }
}

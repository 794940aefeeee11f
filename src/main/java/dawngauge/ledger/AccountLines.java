package dawngauge.ledger;

import dawngauge.explain.Terms;
import dawngauge.forecast.ReadingCheck;
import dawngauge.quantity.GaugePressure;
import dawngauge.quantity.QuantityKind;
import dawngauge.quantity.Unit;
import dawngauge.quantity.UnitSystem;
import dawngauge.review.PressureAccount;
import dawngauge.rules.Quantile;
import dawngauge.trip.LogEvent;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;

/**
 * A pressure account as it is shown: parts rounded so that they add up as shown.
 *
 * @param from the first reading, in words
 * @param to the last one
 * @param start what the first read
 * @param parts what made the difference, in order
 * @param end what the last read
 * @param notes what belongs to it: what the gauge alone may make, what was not read
 * @param unit the unit of the figures
 */
public record AccountLines(
    String from,
    String to,
    double start,
    List<Part> parts,
    double end,
    List<String> notes,
    String unit) {

  /** Warmer than the air by this, in kelvin, a tire is warm; ours. */
  private static final double WARM = 2;

  /**
   * One part.
   *
   * @param words what it is
   * @param figure how much it makes, in the unit shown, rounded
   * @param text the figure with its sign
   */
  public record Part(String words, double figure, String text) {}

  /** Copies the lists. */
  public AccountLines {
    parts = List.copyOf(parts);
    notes = List.copyOf(notes);
  }

  /** The account in the units shown. */
  public static AccountLines of(PressureAccount account, UnitSystem units) {
    Unit unit = units.unitOf(QuantityKind.GAUGE_PRESSURE);
    int decimals = units == UnitSystem.US ? 1 : 2;
    double step = Math.pow(10, -decimals);
    List<String> words = new ArrayList<>();
    List<Double> exact = new ArrayList<>();
    add(words, exact, account.air() < 0 ? "cooler air" : "warmer air", account.air(), unit);
    add(words, exact, Terms.ELEVATION, account.height(), unit);
    if (Math.abs(new GaugePressure(account.warmUp()).in(unit)) >= step / 2) {
      boolean warm = warm(account.first()) || warm(account.last());
      String what = warm ? "warm-up, by the model" : "tire not yet cooled or warmed, by the model";
      add(words, exact, what, account.warmUp(), unit);
    }
    List<String> notes = new ArrayList<>();
    for (PressureAccount.Part part : account.settings()) {
      LogEvent.Adjustment set = part.setting().adjustment();
      boolean out = part.setting().fillAdded() < 0;
      boolean wasWarm =
          part.setting().after().tireKelvins() > part.setting().after().airKelvins() + WARM;
      String what =
          (out ? "air let out" : "air added")
              + (wasWarm ? " while warm" : "")
              + (part.wasRead() ? "" : ", with what was lost before");
      add(words, exact, what, part.pascals(), unit);
      double then = part.setting().fillAdded() * part.setting().after().tireKelvins();
      notes.add(
          units.format(new GaugePressure(Math.abs(then)), decimals)
              + (out ? " let out" : " added")
              + (wasWarm ? " while warm" : "")
              + " at "
              + clock(set)
              + ": "
              + units.format(new GaugePressure(Math.abs(part.pascals())), decimals)
              + " between these readings");
      if (!part.wasRead()) {
        notes.add("It was not read before that, so adding and losing cannot be told apart.");
      }
    }
    add(
        words,
        exact,
        account.lost() < 0 ? "air lost, or gauge and air" : "gauge and air",
        account.lost(),
        unit);
    double start = rounded(open(account.first()), unit, step);
    double end = rounded(open(account.last()), unit, step);
    double[] shown = addingUp(exact, end - start, step);
    List<Part> parts = new ArrayList<>();
    for (int i = 0; i < shown.length; i++) {
      parts.add(
          new Part(
              words.get(i),
              shown[i],
              String.format(Locale.ROOT, "%+." + decimals + "f", shown[i])));
    }
    notes.add(
        "The gauge alone makes up to "
            + units.format(
                new GaugePressure(Quantile.NINETY_WITHIN * account.gaugeSigma()), decimals)
            + " of it in 9 of 10 cases, gauge, air and warm-up together "
            + units.format(
                new GaugePressure(Quantile.NINETY_WITHIN * account.lostSigma()), decimals)
            + ".");
    return new AccountLines(
        words(account.first()), words(account.last()), start, parts, end, notes, unit.symbol());
  }

  private static void add(
      List<String> words, List<Double> exact, String what, double pascals, Unit unit) {
    words.add(what);
    exact.add(new GaugePressure(pascals).in(unit));
  }

  private static boolean warm(ReadingCheck check) {
    return Math.abs(check.tireKelvins() - check.airKelvins()) > WARM;
  }

  /** What an open gauge shows. */
  private static double open(ReadingCheck check) {
    return check.fillRead() * check.tireKelvins() - check.airPressure();
  }

  private static double rounded(double pascals, Unit unit, double step) {
    return Math.rint(new GaugePressure(pascals).in(unit) / step) * step;
  }

  /** Rounds so that the parts add up to a total: those cut most get the rest, a step each. */
  static double[] addingUp(List<Double> exact, double total, double step) {
    int count = exact.size();
    long wanted = Math.round(total / step);
    long[] steps = new long[count];
    long sum = 0;
    List<Integer> order = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      steps[i] = (long) Math.floor(exact.get(i) / step);
      sum += steps[i];
      order.add(i);
    }
    order.sort(
        Comparator.comparingDouble(
            (Integer i) -> Math.floor(exact.get(i) / step) - exact.get(i) / step));
    long rest = wanted - sum;
    for (int i = 0; rest > 0 && count > 0; i++) {
      steps[order.get(i % count)]++;
      rest--;
    }
    for (int i = count - 1; rest < 0 && count > 0; i--) {
      steps[order.get(Math.floorMod(i, count))]--;
      rest++;
    }
    double[] shown = new double[count];
    for (int i = 0; i < count; i++) {
      shown[i] = steps[i] * step;
    }
    return shown;
  }

  /** A reading in words: figure, state, day and clock. */
  public static String words(ReadingCheck check) {
    LogEvent.Reading reading = check.reading();
    ZoneId zone = reading.time().time().getZone();
    return reading.pressure().text()
        + ", "
        + reading.state().word()
        + ", "
        + Wording.shortDay(reading.time().instant(), zone)
        + " "
        + Wording.clock(reading.time().instant(), zone);
  }

  private static String clock(LogEvent.Adjustment set) {
    ZoneId zone = set.time().time().getZone();
    return Wording.shortDay(set.time().instant(), zone)
        + " "
        + Wording.clock(set.time().instant(), zone);
  }
}

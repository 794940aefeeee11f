package dawngauge.simulated;

import dawngauge.advice.Advice;
import dawngauge.advice.StopAdvice;
import dawngauge.advice.TireAdvice;
import dawngauge.advice.TripChance;
import dawngauge.forecast.Setting;
import dawngauge.forecast.TireSnapshot;
import dawngauge.planner.Planner;
import dawngauge.settings.SettingsFile;
import dawngauge.trip.Trip;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.function.Predicate;

/**
 * How often some tire has too little for its load on a simulated haul, beside the chance told on
 * its first morning. Too little is told by the likely curve, warmth above the air not credited, at
 * any minute on the way.
 */
final class TripChances {

  /** What is told, parts of one, from least up to most. */
  record Bin(double least, double most) {
    private boolean holds(double told) {
      return told >= least && told < most;
    }
  }

  static final List<Bin> BINS =
      List.of(new Bin(0.02, 0.05), new Bin(0.05, 0.15), new Bin(0.15, 0.30));

  /** What was asked to be set. */
  enum Asked {
    DONE,
    FORGOTTEN
  }

  /**
   * Rigs begin with so much of what the load needs that the crew knows of, or with the label's
   * pressure if that is less: so that chances differ.
   */
  private static final double LEAST = 1.0;

  private static final double MOST = 1.35;

  /** What a crew takes an axle that was not weighed for, part of its rating. */
  private static final double LIKELY = 0.79;

  /** Part of the stops with air. */
  private static final double HOSES = 0.35;

  private static final int LEAST_DAYS = 2;
  private static final int DAYS_MORE = 4;
  private static final double MINUTE = 60;

  private record Trial(double told, boolean weighed, boolean tooLittle) {}

  /** Air to be set. */
  private record Task(int tire, double seconds, double figure) {}

  private final Planner planner = new Planner(SettingsFile.defaults(), List.of());
  private final List<Trial> trials = new ArrayList<>();
  private int notKnown;

  /** Hauls of a seed. */
  static TripChances of(
      SimulatedHaul.World world, SimulatedRig.Loads loads, Asked asked, int hauls, long seed) {
    TripChances chances = new TripChances();
    Random random = new Random(seed);
    for (int i = 0; i < hauls; i++) {
      Random own = new Random(random.nextLong());
      int days = LEAST_DAYS + own.nextInt(DAYS_MORE);
      chances.add(new SimulatedHaul(own, world, loads, days, HOSES), asked);
    }
    return chances;
  }

  private void add(SimulatedHaul haul, Asked asked) {
    double part = LEAST + (MOST - LEAST) * haul.random().nextDouble();
    TireRun run =
        Round.run(haul, Math.min(haul.rig().label() * Units.PSI, part * need(haul.rig())));
    CrewNotes notes = new CrewNotes(haul, 1);
    Trip trip = notes.trip(Round.first(haul, run), List.of());
    Advice advice = planner.plan(trip).advice();
    if (advice == null) {
      throw new AssertionError("no advice");
    }
    TripChance told = TripChance.of(advice);
    if (told.notKnown() > 0) {
      notKnown++;
      return;
    }
    boolean counts = BINS.stream().anyMatch(bin -> bin.holds(told.chance()));
    if (counts) {
      List<Task> tasks = asked == Asked.DONE ? tasks(haul, notes, advice) : List.of();
      boolean weighed = haul.rig().scale() != SimulatedRig.Scale.NONE;
      trials.add(new Trial(told.chance(), weighed, tooLittle(haul, run, tasks)));
    }
  }

  private static double need(SimulatedRig rig) {
    boolean weighed = rig.scale() != SimulatedRig.Scale.NONE;
    double axle = (weighed ? rig.ticket() : LIKELY * rig.rating()) * Units.POUND;
    double tire = axle * rig.axles() / rig.tires();
    return rig.kind().need(Math.min(tire, rig.kind().dualLoad()), rig.dual());
  }

  /** At the planned minute, but while the rig truly stands there. */
  private static List<Task> tasks(SimulatedHaul haul, CrewNotes notes, Advice advice) {
    List<Task> tasks = new ArrayList<>();
    for (int stop = 0; stop < advice.stops().size(); stop++) {
      StopAdvice here = advice.stops().get(stop);
      SimulatedHaul.Stop truly = haul.stops().get(stop);
      for (int tire = 0; tire < here.tires().size(); tire++) {
        TireAdvice advised = here.tires().get(tire);
        Setting setting = advised.tire().setting();
        TireSnapshot check = advised.tire().check();
        if (setting != null && check != null) {
          double at = notes.seconds(check.seconds());
          double set = Math.max(truly.arrive() + MINUTE, Math.min(truly.leave(), at));
          tasks.add(new Task(tire, set, setting.gaugePascals()));
        }
      }
    }
    tasks.sort(Comparator.comparingDouble(Task::seconds));
    return tasks;
  }

  private static boolean tooLittle(SimulatedHaul haul, TireRun run, List<Task> tasks) {
    Minutes minutes = run.minutes();
    int task = 0;
    int leaving = 0;
    boolean ever = false;
    while (run.now() < minutes.count() - 1) {
      for (; task < tasks.size() && minutes.of(tasks.get(task).seconds()) <= run.now(); task++) {
        Task done = tasks.get(task);
        double air = minutes.air(run.now());
        run.set(done.tire(), haul.gauge().sets(done.figure(), air, done.seconds()));
      }
      boolean leaves = run.now() == minutes.of(haul.stops().get(leaving).leave());
      if (leaves) {
        leaving++;
      }
      if ((leaves && leaving < haul.stops().size()) || minutes.speed(run.now()) > 0) {
        for (int tire = 0; tire < haul.rig().tires(); tire++) {
          ever |= run.tooLittle(tire);
        }
      }
      run.step();
    }
    return ever;
  }

  /** What came of the hauls of a bin. */
  record Outcome(Bin bin, int hauls, double told, double observed) {

    /** Observed over told. */
    double ratio() {
      return observed / told;
    }

    /** Its counting error, one standard deviation. */
    double error() {
      return Math.sqrt(told * (1 - told) / hauls) / told;
    }

    @Override
    public String toString() {
      return String.format(
          Locale.ROOT,
          "%2.0f-%2.0f %%: %5d hauls, told %.1f %%, observed %.1f %%, ratio %.2f ± %.2f",
          100 * bin.least,
          100 * bin.most,
          hauls,
          100 * told,
          100 * observed,
          ratio(),
          error());
    }
  }

  /** Of all hauls whose chance lies in a bin. */
  Outcome of(Bin bin) {
    return of(bin, trial -> true);
  }

  /** Of those of them whose axles were weighed, or were not. */
  Outcome of(Bin bin, boolean weighed) {
    return of(bin, trial -> trial.weighed == weighed);
  }

  private Outcome of(Bin bin, Predicate<Trial> which) {
    List<Trial> all = trials.stream().filter(trial -> bin.holds(trial.told)).filter(which).toList();
    double told = all.stream().mapToDouble(Trial::told).average().orElse(Double.NaN);
    double observed = (double) all.stream().filter(Trial::tooLittle).count() / all.size();
    return new Outcome(bin, all.size(), told, observed);
  }

  /** How many were left out since some tire was not known. */
  int notKnown() {
    return notKnown;
  }
}

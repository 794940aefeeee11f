package dawngauge.ledger;

import dawngauge.advice.Mark;
import dawngauge.trip.Stop;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One stop as it is shown.
 *
 * @param timed whether its time is known; where not, only number, place and kind are told
 * @param newDay heading of the day, where the stop is the first of one; else empty
 * @param number of the stop, 1 first
 * @param arrive clock on arrival; empty at the start
 * @param leave clock on leaving, "09:20+1" where that is on the next day; empty at the end and
 *     where it is passed
 * @param zone letters of the clock's zone, where they are new or change here; else empty
 * @param place its name
 * @param kind what the stop is for
 * @param elevation height of the ground
 * @param air temperature on arrival and on leaving
 * @param airFrom where the temperature came from
 * @param hose whether compressed air is to be had
 * @param mark the strongest of its tires
 * @param rows tires, those with the same figures together
 * @param chance highest chance of a tire to have too little for its load from here to the next
 *     stop, and whose it is; empty where it is not known or there is none
 * @param card what to do, at a glance
 * @param tasks what to do with the reasons, strongest first
 * @param beside figures of others beside ours: the rule of thumb, the regulation's correction
 * @param routine gauging that is good habit for the whole rig here
 * @param loads what is taken on or set down
 * @param leg the leg ahead in one line; empty at the end and where no time is known
 * @param cautions what to heed on the leg
 */
public record StopLine(
    boolean timed,
    String newDay,
    int number,
    String arrive,
    String leave,
    String zone,
    String place,
    String kind,
    String elevation,
    String air,
    String airFrom,
    String hose,
    Mark mark,
    List<TireRow> rows,
    String chance,
    Card card,
    List<Task> tasks,
    String beside,
    List<String> routine,
    List<String> loads,
    String leg,
    List<String> cautions) {

  /** A figure to set on a tire that is as cool as the air. */
  public static final String COLD = "cold";

  /**
   * Tires with the same figures. Pressures without unit, in the ledger's units, U.S. ones to the
   * whole psi; a dash where a figure is not known.
   *
   * @param tires short forms
   * @param read whether the first figure was read there, else it is expected
   * @param set whether the readings before leaving are after a setting that the plan takes as done
   * @param arriveReads what the gauge reads on arrival, or was read here last
   * @param arriveRange in which 9 of 10 such readings lie; empty where it was read
   * @param setOnArrival figure to set on arrival; empty where nothing is added to a warm tire
   * @param arriveSettled the same once as cool as the air; empty where it was read
   * @param setCold the same as cool as the air; empty where nothing is set
   * @param checkReads what the gauge reads before leaving, after what is set here; empty, as the
   *     next three, at the last stop
   * @param checkRange in which 9 of 10 readings lie before anything is set; empty where set or read
   * @param checkSettled what it reads when leaving once as cool as the air
   * @param lowest lowest judged pressure on the leg ahead
   * @param floor floor, rounded up
   * @param aim aim
   * @param ceiling ceiling
   * @param margin lowest load margin from here to the next stop
   * @param lowestMargin the same as a number; NaN where not known
   * @param byEstimate whether the margin rests on an estimate
   * @param mark the mark
   */
  public record TireRow(
      String tires,
      boolean read,
      boolean set,
      String arriveReads,
      String arriveRange,
      String setOnArrival,
      String arriveSettled,
      String setCold,
      String checkReads,
      String checkRange,
      String checkSettled,
      String lowest,
      String floor,
      String aim,
      String ceiling,
      String margin,
      double lowestMargin,
      boolean byEstimate,
      Mark mark) {

    /** Whether air is to be added or let out here. */
    public boolean sets() {
      return set || !setCold.isEmpty();
    }

    /** The figure to set, at the time that {@link #when} tells. */
    public String figure() {
      return !setOnArrival.isEmpty() ? setOnArrival : set ? checkReads : setCold;
    }

    /** When the figure to set holds. */
    public String when() {
      return !setOnArrival.isEmpty()
          ? "on arrival"
          : figure().equals(setCold) || setCold.isEmpty() ? COLD : "leaving";
    }

    /** Whether it is of a tire, by its short form. */
    public boolean of(String tire) {
      return List.of(tires.split(" ", -1)).contains(tire);
    }
  }

  /**
   * One thing to do.
   *
   * @param mark the mark it comes from
   * @param tires short forms, or "all tires"
   * @param text what and why
   */
  public record Task(Mark mark, String tires, String text) {

    /** Which tires, what and why. */
    public String told() {
      return tires + ": " + text;
    }
  }

  /** A stop of which no time is known. */
  static StopLine untimed(int number, Stop stop) {
    return new StopLine(
        false,
        "",
        number,
        "",
        "",
        "",
        stop.place(),
        stop.kind().word(),
        "",
        "",
        "",
        "",
        Mark.UNKNOWN,
        List.of(),
        "",
        Card.EMPTY,
        List.of(),
        "",
        List.of(),
        List.of(),
        "",
        List.of());
  }

  /**
   * The tires with the lowest margin, whose figures stand for the stop; null where it is passed.
   */
  public @Nullable TireRow tightest() {
    return tightest(rows);
  }

  static @Nullable TireRow tightest(List<TireRow> rows) {
    TireRow tightest = null;
    for (TireRow row : rows) {
      if (tightest == null || row.lowestMargin() < tightest.lowestMargin()) {
        tightest = row;
      }
    }
    return tightest;
  }

  /** The figures of a tire, by its short form; null where there are none. */
  public @Nullable TireRow row(String tire) {
    return row(rows, tire);
  }

  static @Nullable TireRow row(List<TireRow> rows, String tire) {
    for (TireRow row : rows) {
      if (row.of(tire)) {
        return row;
      }
    }
    return null;
  }

  /** Whether a tire is set here only once something else is done, which the card tells. */
  public boolean conditional(String tire) {
    return card.todo().stream().anyMatch(line -> line.conditional() && line.of(tire));
  }

  /** Whether the chance is one that nobody need be told at every stop. */
  public boolean slightChance() {
    return chance.isEmpty() || chance.equals(StopLines.NO_CHANCE);
  }

  /** Copies the lists. */
  public StopLine {
    rows = List.copyOf(rows);
    tasks = List.copyOf(tasks);
    routine = List.copyOf(routine);
    loads = List.copyOf(loads);
    cautions = List.copyOf(cautions);
  }
}

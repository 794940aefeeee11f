package dawngauge.contract;

import static dawngauge.testdata.StopBuilder.stop;

import dawngauge.testdata.RigBuilder;
import dawngauge.testdata.StopBuilder;
import dawngauge.testdata.TireBuilder;
import dawngauge.testdata.Trips;
import dawngauge.tire.TireClass;
import dawngauge.trip.LogEvent;
import dawngauge.trip.ReadingState;
import dawngauge.trip.Tire;
import dawngauge.trip.Trip;
import dawngauge.trip.WheelPosition;
import dawngauge.tripfile.TripFile;
import java.time.Duration;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Trips over which every page must say the same. Each has three stops, the second a rest of 45
 * minutes after two hours, and one or, where axles are weighed together, two axles of the light
 * truck tires of the spring demo: label 60 psi, GAWR share 2,600 lb (2,370 lb in pairs). The
 * dimensions are too many for all their combinations: every three values of any three of them occur
 * together. What is to be said of some of them stands in {@link ExpectedMarks}.
 */
final class Grid {

  /** Cold pressure on the label in psi. */
  static final double LABEL = 60;

  /** The tire's rated pressure in psi. */
  static final double RATED = 80;

  /** How much lower the second of a pair is read, in psi. */
  static final double MATE_LOWER = 30;

  /** What the drive to the second stop adds to what the gauge shows, in psi. */
  private static final double WARMER = 6;

  private static final double PSI_PER_BAR = 14.503774;
  private static final double SINGLE_GAWR = 2 * 2600.0;
  private static final double DUAL_GAWR = 4 * 2370.0;

  /**
   * A trip of the grid.
   *
   * @param cell what it is made of
   * @param trip the trip
   * @param text the same as its file has it
   * @param now index of the stop at which the rig stands when something was last noted
   */
  record Haul(Cell cell, Trip trip, String text, int now) {

    /** Whether the spare goes on there. */
    boolean changed(WheelPosition position) {
      return cell.spare() == Cell.Spare.GOES_ON && position.equals(trip.rig().positions().get(0));
    }

    /** The last reading at a stop of the tire that stands at a position when the rig leaves. */
    Optional<LogEvent.Reading> reading(WheelPosition position, int stop) {
      String tire =
          stop > 0 && changed(position) ? "S" : trip.rig().fittedAt(position).orElseThrow().id();
      Optional<LogEvent.Reading> last = Optional.empty();
      for (LogEvent event : trip.log()) {
        if (event instanceof LogEvent.Reading reading && reading.tire().equals(tire)) {
          int at = reading.time().text().compareTo(time("10:00")) > 0 ? 1 : 0;
          last = at == stop ? Optional.of(reading) : last;
        }
      }
      return last;
    }
  }

  private Grid() {}

  /** All its trips: every three values of three dimensions occur together. */
  static List<Haul> all() {
    return rows().stream().map(row -> haul(Cell.of(row))).toList();
  }

  /** Some of them, in which still every two values of two dimensions occur together. */
  static List<Haul> some() {
    return Covering.some(rows(), Cell.sizes(), 2).stream().map(row -> haul(Cell.of(row))).toList();
  }

  private static List<int[]> rows() {
    return Covering.rows(Cell.sizes(), 3);
  }

  /** A trip of a cell, with the index of the stop at which the rig stands when last noted. */
  static Haul haul(Cell cell) {
    Trips trips = Trips.of(rig(cell));
    boolean short0 = cell.hose() == Cell.Hose.SHORT;
    StopBuilder start =
        stop("start")
            .at(37.469, -105.87, "America/Denver")
            .elevation("7543 ft")
            .arrives(time("05:00"))
            .leaves(time("09:00"));
    StopBuilder rest =
        stop("rest")
            .at(37.624, -104.78, "America/Denver")
            .elevation("6171 ft")
            .stays(Duration.ofMinutes(45));
    StopBuilder end = stop("end").at(36.452, -103.184, "America/Denver").elevation("5052 ft");
    if (cell.air() == Cell.AirOnTheWay.KNOWN) {
      start.steady("20 °F");
      rest.steady("50 °F");
      end.steady("10 °F");
    }
    if (short0) {
      start.hose(pressure(cell, LABEL - 5));
    } else if (cell.hose() == Cell.Hose.HERE) {
      start.hose();
    }
    if (cell.hose() == Cell.Hose.HERE || cell.hose() == Cell.Hose.NEXT) {
      rest.hose();
    }
    trips.stop(start).stop(rest).stop(end);
    log(trips, cell);
    boolean later = cell.reading().later() || cell.spare() == Cell.Spare.GOES_ON;
    Trip trip = trips.trip();
    return new Haul(cell, trip, TripFile.text(trip), later ? 1 : 0);
  }

  private static RigBuilder rig(Cell cell) {
    TireBuilder tire = TireBuilder.lightTruck();
    if (cell.capacity() == Cell.Capacity.ROWS) {
      tire.row("45 psi", "2140 lb", "1945 lb")
          .row("50 psi", "2300 lb", "2095 lb")
          .row("55 psi", "2455 lb", "2235 lb")
          .row("60 psi", "2610 lb", "2375 lb")
          .row("65 psi", "2760 lb", "2510 lb")
          .row("70 psi", "2910 lb", "2645 lb")
          .row("75 psi", "3055 lb", "2780 lb")
          .row("80 psi", "3195 lb", "2910 lb");
    }
    double gawr = cell.dual() ? DUAL_GAWR : SINGLE_GAWR;
    RigBuilder rig = RigBuilder.trailer().tires(tire).gawr(pounds(gawr)).losing(null);
    String label = pressure(cell, LABEL);
    switch (cell.capacity()) {
      case ROWS, LABEL -> rig.label("LT245/75R17", TireClass.LIGHT_TRUCK, "E", label);
      case LABEL_OF_ANOTHER -> rig.label("LT225/75R16", TireClass.LIGHT_TRUCK, "E", label);
      case NO_LABEL -> rig.noLabel();
    }
    switch (cell.load()) {
      case WHEEL_94 -> rig.scale(RigBuilder.Scale.WHEEL);
      case GROUP_94 -> rig.axles(2).scale(RigBuilder.Scale.GROUP);
      case AXLE_75, AXLE_94, AXLE_99, NOT_WEIGHED -> rig.scale(RigBuilder.Scale.AXLE);
    }
    rig.weighed(cell.load() == Cell.Load.NOT_WEIGHED ? null : pounds(gawr * cell.load().part));
    if (cell.dual()) {
      rig.dual();
    }
    if (cell.leak() == Cell.Leak.TYPED) {
      rig.losing(pressure(cell, 3));
    }
    if (cell.target() == Cell.Target.OWN) {
      rig.target(pressure(cell, 52));
    }
    if (cell.spare() == Cell.Spare.GOES_ON) {
      rig.spare();
    }
    return rig.ownGauge(pressure(cell, cell.step().psi));
  }

  private static void log(Trips trips, Cell cell) {
    double at = (cell.labelSpeaks() ? LABEL : RATED) * cell.pressure().part;
    boolean drives = cell.reading().later() || cell.spare() == Cell.Spare.GOES_ON;
    switch (cell.reading()) {
      case COLD -> all(trips, cell, "06:30", at, ReadingState.COLD);
      case IN_SUN -> all(trips, cell, "08:30", at, ReadingState.COLD_IN_SUN);
      case WARM_FIRST -> all(trips, cell, "08:30", at, ReadingState.WARM);
      case JUST_FILLED -> all(trips, cell, "08:30", at, ReadingState.JUST_FILLED);
      case WARM_LATER ->
          all(trips, cell, "06:30", cell.labelSpeaks() ? LABEL : RATED, ReadingState.COLD);
      case WRONGLY_COLD, NONE -> {}
    }
    if (cell.spare() == Cell.Spare.GOES_ON) {
      one(trips, cell, "08:40", "S", cell.labelSpeaks() ? LABEL : RATED, ReadingState.COLD);
    }
    if (drives) {
      trips.left(time("09:00"), "start").arrived(time("11:00"), "rest");
    }
    if (cell.reading() == Cell.Reading.WRONGLY_COLD) {
      all(trips, cell, "11:01", at, ReadingState.COLD);
    } else if (cell.reading() == Cell.Reading.WARM_LATER) {
      all(trips, cell, "11:05", at + WARMER, ReadingState.WARM);
    }
    if (cell.spare() == Cell.Spare.GOES_ON) {
      trips.change(time("11:20"), 0, "T1", "S");
    }
  }

  private static void all(Trips trips, Cell cell, String clock, double psi, ReadingState state) {
    for (Tire tire : trips.rig().tires()) {
      boolean low = cell.wheels() == Cell.Wheels.DUAL_MATE_LOW && tire.id().equals("T2");
      if (!tire.id().equals("S")) {
        one(trips, cell, clock, tire.id(), low ? psi - MATE_LOWER : psi, state);
      }
    }
  }

  private static void one(
      Trips trips, Cell cell, String clock, String tire, double psi, ReadingState state) {
    trips.read(time(clock), tire, pressure(cell, psi), "own", state);
  }

  /** A pressure as it is typed. */
  static String pressure(Cell cell, double psi) {
    return cell.units() == Cell.Units.BAR
        ? String.format(Locale.ROOT, "%.2f bar", psi / PSI_PER_BAR)
        : String.format(Locale.ROOT, "%.0f psi", psi);
  }

  private static String pounds(double pounds) {
    return String.format(Locale.ROOT, "%.0f lb", pounds);
  }

  private static String time(String clock) {
    return "2027-04-06T" + clock + "-06:00[America/Denver]";
  }
}
